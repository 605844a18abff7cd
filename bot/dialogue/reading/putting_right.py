"""The words that put right what was said before: "no, 15", "i meant feet", "15 instead of 12"."""

from __future__ import annotations

import re
from typing import Final, NamedTuple

from bot.dialogue.reading.phrases import any_of
from bot.dialogue.reading.unit_words import STANDING

#: Somebody stops and takes back what was just said.
_STOPS: Final = (
    r"no|nope|nah|oops|sorry|pardon|wait|hang on|hold on|er|erm|typo|correction|my mistake|my bad"
    r"|(?:scratch|scrap|strike|forget) (?:that|it)"
)
#: Somebody says it better.
_SAYS_ANEW: Final = (
    r"i mean|i meant(?: to (?:say|write|type))?|make (?:that|it)|actually"
    r"|or rather|rather|more like|should(?:'ve)? be(?:en)?"
)
#: Somebody has looked, measured or read once more.
_LOOKED_AGAIN: Final = (
    r"(?:i |we )?(?:measured|paced|checked) (?:it|again)|(?:but |and )?(?:on )?(?:looking again"
    r"|a second look|second look|i looked again|looked again)|(?:i )?misread|i was wrong|i take"
    r" that back|(?:read|got|had|said|wrote) (?:it|that|this) wrong"
)
#: Words that put right, one of which stands between the wrong and the right.
BACK: Final = rf"(?:{_STOPS}|{_SAYS_ANEW}|{_LOOKED_AGAIN})"
#: What shows lengths better than a guess.
SOURCE: Final = (
    r"(?:sign|map|(?:info )?board|app|laser|(?:guide ?)?book|rangefinder|gps|leaflet|plaque|tape"
    r"|brochure|panel|website|internet)"
)
#: "But the sign says", "but i paced it".
BETTER_KNOWN: Final = (
    rf"(?:(?:but|no|nope|wait),? (?:the |my |our )?{SOURCE}"
    r"(?: (?:says|reads|gives|shows|has|said))?"
    r"|but i (?:measured|paced)(?: it)?)"
)
#: What stands before the wrong one: "instead of 12", "not 12".
NOT_THIS: Final = r"(?:not|instead of|rather than|isn't|wasn't|never)"

_NUMBER: Final = r"f? ?/?\d[\d.,/]*"
#: What a length is called, by its slot; "camera height" stands before the "height" in it.
_NAMES: Final = {
    "camera_height_m": r"camera(?:'s)? height|height of the (?:camera|tripod|lens)",
    "fall_width_m": r"width|wide",
    "fall_height_m": r"height|tall|high",
    "distance_m": r"distance|away",
    "nearest_m": r"nearest(?: \w+)?|closest(?: \w+)?|foreground|rock",
    "farthest_m": r"farthest(?: \w+)?|furthest(?: \w+)?|background|back wall",
    "water_depth_m": r"depth|deep",
    "climb_m": r"climb|ascent",
    "walk_km": r"walk|way (?:back|out)",
}
_NAME: Final = "|".join(_NAMES.values())
_OF: Final = r"(?:for |of )?(?:the |my |our |its )?"
#: A lone "no" or "wait" over messages may answer something; these put right.
_PUTS_RIGHT: Final = any_of(
    r"^(?:no|pardon|er|erm|wait), (?=\D{0,12}\d)",
    r"no,? wait|wait,? no|hang on,? no|no no|oops|sorry|correction|typo|my mistake|my bad",
    rf"(?:scratch|scrap|strike) (?:that|it)|{_SAYS_ANEW}|{_LOOKED_AGAIN}",
    rf"{STANDING},? not (?:in )?{STANDING}|not (?:in )?{STANDING},? (?:but )?(?:in )?{STANDING}",
    rf"(?:not|instead of|rather than) {_NUMBER}|{STANDING} (?:instead of|rather than) {STANDING}",
    rf"(?:{_NAME})(?: (?:is|was))? wrong|wrong (?:{_NAME})|(?:change|correct) {_OF}(?:{_NAME})",
)
_ASKS: Final = re.compile(r"^(?:and |but |so )?(?:why|what|how|which|should|can)\b|\?")
#: "Feet, not metres", "not in metres but feet".
_UNIT_NOT_UNIT: Final = re.compile(
    rf"\b(?P<right>{STANDING}),? (?:and )?{NOT_THIS} (?:in )?(?P<wrong>{STANDING})\b"
    rf"|\bnot (?:in )?(?P<wrong_first>{STANDING}),? (?:but )?(?:it's |they're )?(?:in )?"
    rf"(?P<right_last>{STANDING})\b"
)
#: What may stand beside a unit, or beside "the other way round", that is the whole message.
_BESIDE: Final = (
    rf"{BACK}|and|but|oh|ah|ok|i|it's|its|it|is|are|was|were|that's|thats|that|those|these|this|they"
    r"|they're|at|all|both|of course|by the way|btw|the|numbers?|values?|lengths?|figures?|two|in"
    r"|got|had|have|them|please|mean|meant|should|be|of|read|written|typed|gave|told|you|so|linn"
)
_UNIT_ALONE: Final = re.compile(
    rf"(?:(?:\W|\b(?:{_BESIDE})\b)*\W)?(?P<right>{STANDING})(?:\W+(?:\W|\b(?:{_BESIDE})\b)*)?"
)
_SWAPS: Final = (
    r"(?:swap(?:ped)?|switch(?:ed)?|exchange|turn|flip) (?:those|them|these|the|both|that)"
    r"(?: two| both| round| around| numbers| values)?"
    r"|(?:the )?(?:other|wrong) way (?:a?round|about)"
    r"|mixed (?:them|those|these|it|that|the two)(?: two| both)? up|mixed up (?:the two|both|those)"
    r"|vice versa|reversed?|the reverse"
)
_SWAP_ALONE: Final = re.compile(
    rf"(?:\W|\b(?:{_BESIDE})\b)*?\b(?:{_SWAPS})\b(?:\W|\b(?:{_BESIDE})\b)*"
)
_SWAP_NAMED: Final = re.compile(
    rf"\b(?:swap|switch|exchange|mixed up) {_OF}(?P<one>{_NAME}) and {_OF}(?P<other>{_NAME})\b"
)
#: "The width, not the height", "not the height but the width".
_NAME_NOT_NAME: Final = re.compile(
    rf"\b(?P<right>{_NAME}),? (?:and |but )?not {_OF}(?P<wrong>{_NAME})\b"
    rf"|\bnot {_OF}(?P<wrong_first>{_NAME}),? (?:but )?(?:it's |that's |it was |it is )?{_OF}"
    rf"(?P<right_last>{_NAME})\b"
)
_NOT_THE_OTHER: Final = re.compile(
    rf",? *\b(?:and |but )?{NOT_THIS} (?:the |a |about )?"
    rf"(?P<other>(?:iso ?)?{_NUMBER}(?: ?(?:{STANDING}|s|seconds|mm|km)\b)?),?"
)


class Exchange(NamedTuple):
    """What takes the place of what: two slots, or two units."""

    right: str
    wrong: str | None


def puts_right(said: str) -> bool:
    """Whether a message takes back or replaces what was told before it.

    Args:
        said: in lower case, in English or glossed.
    """
    return not _ASKS.search(said) and (
        _PUTS_RIGHT.search(said) is not None
        or units_meant(said) is not None
        or slots_meant(said) is not None
        or swaps(said) is not None
    )


def units_meant(said: str) -> Exchange | None:
    """`feet not metres`, `sorry, in feet`: the unit that was meant, and the wrong one if named.

    Args:
        said: in lower case.
    """
    named = _UNIT_NOT_UNIT.search(said)
    if named:
        right = named["right"] or named["right_last"]
        return Exchange(_short(right), _short(named["wrong"] or named["wrong_first"]))
    alone = _UNIT_ALONE.fullmatch(said)
    return Exchange(_short(alone["right"]), None) if alone else None


def slots_meant(said: str) -> Exchange | None:
    """`the width, not the height`: the slot that was meant, and the wrong one.

    Args:
        said: in lower case.
    """
    named = _NAME_NOT_NAME.search(said)
    if named is None:
        return None
    right = slot_named(named["right"] or named["right_last"])
    wrong = slot_named(named["wrong"] or named["wrong_first"])
    return None if right is None or right == wrong else Exchange(right, wrong)


def swaps(said: str) -> tuple[str, ...] | None:
    """`swap those two`: (); `swap height and distance`: both slots; anything else: None.

    Args:
        said: in lower case.
    """
    named = _SWAP_NAMED.search(said)
    if named:
        found = (slot_named(named["one"]), slot_named(named["other"]))
        return tuple(slot for slot in found if slot is not None)
    return () if _SWAP_ALONE.fullmatch(said) else None


def slot_named(said: str) -> str | None:
    """The slot of the first length that is called by its name.

    Args:
        said: in lower case.
    """
    found = [
        (match.start(), slot)
        for slot, name in _NAMES.items()
        if (match := re.search(rf"\b(?:{name})\b", said))
    ]
    return min(found, key=lambda pair: pair[0])[1] if found else None


def without_the_other(said: str) -> tuple[str, str | None]:
    """A message without the number that it takes back, and that number with its unit.

    Args:
        said: in lower case: `not 12 m, 15 m`, `15 instead of 12`.
    """
    found = _NOT_THE_OTHER.search(said)
    if found is None:
        return said, None
    return " ".join(_NOT_THE_OTHER.sub(" ", said).split()), found["other"].rstrip(" .,")


def _short(unit: str) -> str:
    """The sign of a unit by its first letter."""
    return {"f": "ft", "y": "yd", "m": "m"}[unit[0]]
