"""Which length a number is by the word right behind it: `12 m from the fall`, `2 m up`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.role_words import (
    FALL,
    FAR_LAND,
    FAR_THING,
    GOING,
    GROUND,
    MYSELF,
    NEAR_THING,
    OTHER_PEOPLE,
    OTHER_TALL,
    OTHER_THING,
    TALL_OTHER,
    TALL_PART,
    TIGHT,
    WATER_THING,
)


def _of_object(match: re.Match[str], subject: str | None, words: str) -> str | None:
    """`12 m from the fall`, `2 m to the first rock`, `a crate 3 ft from the camera`."""
    thing = match["thing"]
    beside = subject == "near" and WATER_THING.match(thing) is not None
    theirs = subject == "distance" and MYSELF.match(thing) and OTHER_PEOPLE.search(words)
    if theirs or _is_apart(match, subject) or (beside and not match["object"].startswith("to ")):
        return None  # so far from the fall, not from the camera, or to where somebody goes
    if subject in {"near", "far"} or (subject == "camera" and GROUND.match(thing)):
        return subject
    if subject is None and MYSELF.match(thing) and not TIGHT.fullmatch(words):
        return None  # some thing that is not known: the fall, or something in the foreground?
    if WATER_THING.match(thing):
        return "distance"
    if FAR_THING.search(thing):
        return "far"
    near = NEAR_THING.search(thing) or (subject is None and _GLASS.match(thing))
    return "near" if near else _from_there(thing, words)


def _from_there(thing: str, words: str) -> str | None:
    """So far from where somebody stands is no distance, unless it is the fall that is."""
    apart = _STOOD_BY.match(thing) and not _A_FALL.search(words)
    return None if apart else "distance"


def _is_apart(match: re.Match[str], subject: str | None) -> bool:
    """Whether a length leads to where somebody goes, or a tripod stands so far beside a path."""
    path = match["object"].startswith("from") and match["thing"].startswith("path")
    return GOING.match(match["thing"]) is not None or (subject == "camera" and path)


#: "A foot from the lens": no fall is measured from the glass.
_GLASS: Final = re.compile(r"(?:lens|glass|front)\b")
#: "I'm 3 m from the path, from my friend": where somebody stands says not how far the fall is.
_STOOD_BY: Final = re.compile(
    r"(?:bank|shore|path|trail|track|road|steps?|stairs?|boardwalk|bridge"
    r"|sign|bench|kerb|curb|friends?|wife|husband|group|class|others)\b"
)
#: "The fall is 8 m from the path" is told by who stands on it.
_A_FALL: Final = re.compile(rf"\b(?:{FALL})\b")


def _away(subject: str | None, words: str) -> str | None:
    """What is so far away; a thing that is neither the fall nor in the picture tells nothing."""
    land = FAR_LAND.match(words.lstrip(" ,.-"))
    if subject is None and (land or OTHER_THING.match(words)):
        return "far" if FAR_LAND.search(words) else None
    return subject if subject in {"near", "far"} else "distance"


_PLACED: Final = frozenset({"distance", "near", "far"})
_OF_IT: Final = re.compile(r"\bof\b")
#: So far behind something else is no distance from the camera.
_OTHER_NAMES: Final = {
    "whole": "height", "up_to_lip": "height", "between": "distance", "beyond": None,
    "broad": "width",
}  # fmt: skip


def behind(match: re.Match[str], subject: str | None, words: str, *, walking: bool) -> str | None:
    """Which length a number is by the word right behind it.

    Args:
        match: of `role_words.BEHIND`.
        subject: what the words before speak of.
        words: the clause before the number.
        walking: whether the message speaks of a way.
    """
    kind = match.lastgroup
    if match["object"]:
        return _of_object(match, subject, words)
    if kind == "distance":
        return _away(subject, words)
    if kind == "up":
        return _up("height" if _LIP.search(words) else subject, walking=walking)
    if kind == "height":
        return _upright(match, subject, words)
    return _named(match, subject, kind)


def _named(match: re.Match[str], subject: str | None, kind: str | None) -> str | None:
    """What a word behind names, unless the subject before it is what is so far away."""
    if kind == "section" and subject in _PLACED and _OF_IT.search(match.group()):
        return subject  # "i am 8 m of the water"
    if kind == "camera" and subject not in {"camera", None}:
        return None if subject == "distance" else subject  # above the water, not from the fall
    return _OTHER_NAMES.get(kind or "", kind)


_LIP: Final = re.compile(r"\b(?:lip|crest|brink|top of the (?:water)?fall)\b")


def _up(subject: str | None, *, walking: bool) -> str | None:
    """What lies so far up: a camera, the lip of a fall, or the end of a way."""
    if subject in {"camera", "height"}:
        return subject
    return "climb" if walking else None


def _upright(match: re.Match[str], subject: str | None, words: str) -> str | None:
    """What is so tall: the fall, unless the words name the camera or another thing."""
    if OTHER_TALL.match(words) or TALL_OTHER.match(match.string):
        return None
    if TALL_PART.match(match.string):
        return "section"
    return "camera" if subject == "camera" else "height"
