"""A difference of brightness that somebody claims to have it checked: yes or no is asked."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final, NamedTuple

from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.meaning.values_named import named_in, plainly
from bot.dialogue.reading.phrases import straight
from bot.dialogue.reading.stops import exact_thirds
from bot.dialogue.tongues import in_any, single_words, whole_words

_NUMBER: Final = r"(?P<{0}>\d+ [12]/[23]|[12]/[23]|\d+(?:\.\d+)?)"
_SIDE: Final = (
    r"(?P<{0}too>too )?(?P<{0}side>dark(?:er)?|bright(?:er)?|lighter|more (?:dark|bright)"
    r"|under(?:[ -]?exposed)?|over(?:[ -]?exposed)?|less|more)\b"
)
#: "2 stops darker", "2 over"; "brighter"; "3 stops"; "the same brightness", "as bright as".
_CLAIM: Final = re.compile(
    rf"\b{_NUMBER.format('stops')}[ -]?(?:stops?|ev)(?:['’]? worth)? {_SIDE.format('s')}"
    rf"|\b{_NUMBER.format('bare')} (?P<oside>over|under)(?:[ -]?exposed)?\b"
    rf"|\b{_NUMBER.format('alone')}[ -]?(?:stops?|ev)\b"
    rf"|\b(?P<same>{in_any('claims.same')})\b"
    rf"|\b{_SIDE.format('c')}"
)
_DARKER: Final = ("dark", "more dark", "under", "less")
#: A bare side that is no comparison: "it's dark", "more water".
_COMPARED: Final = frozenset(
    {"darker", "brighter", "lighter", "overexposed", "underexposed", "more dark", "more bright"}
)
_TAG: Final = re.compile(rf"(?:^|[,;.?] *|- ?){in_any('claims.tag')}\W*$")
_ENDS: Final = re.compile(rf"\W*(?:{in_any('claims.tag')}|{in_any('claims.behind')}|\W)*")
_ASKS: Final = re.compile(rf"(?:^|[,;:.(] *)(?:\w+ ){{0,2}}?(?:{in_any('claims.asks')})")
_WOULD: Final = whole_words("claims.would")
_WISHES: Final = whole_words("claims.wishes")
_THAN: Final = whole_words("claims.than")
_DIALS: Final = frozenset({"f_number", "shutter_s", "iso"})
_TWO: Final = 2
#: Words that may stand before a claim of the last settings.
_SUBJECT: Final = single_words("claims.subject")
_THAT: Final = whole_words("claims.that")
_WORD: Final = re.compile(r"[^\W\d_]+")
#: Behind a side alone nothing else is said: "will it be darker at 6" is of the day.
_NOTHING_MORE: Final = re.compile(rf"\W*(?:{in_any('claims.behind')}\W*)*")


class Claim(NamedTuple):
    """What is claimed.

    Args:
        stops: how much; None where only a side is named.
        side: 1 brighter, -1 darker, 0 equally bright or not said.
        of_light: against what is right in the light, not against other settings.
        one: the settings that are claimed to differ, by their slots; empty for those of now.
        other: those that they are held against.
        told: the sentence that tells the other ones, "" where the claim names them.
        rest: what else the message says.
        taken: the sentence that tells the settings of a frame of which the claim says "that", ""
            without one: "took f/8 iso 200 1/10. is that the same as the 1/4?".
    """

    stops: float | None
    side: int
    of_light: bool
    one: dict[str, float]
    other: dict[str, float]
    told: str
    rest: str
    taken: str = ""


def claim_in(said: Said) -> Claim | None:
    """The claim of a message that is to be checked; None for messages without one.

    Args:
        said: the message.
    """
    sentences = sentences_of(plainly(said.english))
    typed = sentences_of(straight(said.typed.casefold()))
    for place, sentence in enumerate(sentences):
        own = typed[place] if len(typed) == len(sentences) else straight(said.typed.casefold())
        found = _claimed(sentence, own)
        if found is not None:
            around = [*sentences[:place], *sentences[place + 1 :]]
            return _claim(sentence, found, around)
    return None


def _claimed(sentence: str, typed: str) -> re.Match[str] | None:
    """The claim in a sentence that asks for a yes or a no."""
    found = _CLAIM.search(sentence)
    if found is None or not _is_asked(sentence, typed, found):
        return None
    if _settings(sentence):
        return found
    head, tail = sentence[: found.start()], sentence[found.end() :]
    if not all(word in _SUBJECT for word in _WORD.findall(head)):
        return None  # "the cliff is two stops darker" tells of the scene
    if found["alone"] is not None:
        return found if _ENDS.fullmatch(tail) else None  # "is that the 6 stop filter?"
    if found["cside"] is None:
        return found
    return found if _is_of_that(found, head, tail) else None


def _is_of_that(found: re.Match[str], head: str, tail: str) -> bool:
    """Whether a side alone is claimed of the last settings: "isn't that brighter?"."""
    if _THAT.search(f"{head} {tail}") is None or not _NOTHING_MORE.fullmatch(tail):
        return False
    return found["cside"] in _COMPARED or found["ctoo"] is not None


def _is_asked(sentence: str, typed: str, found: re.Match[str]) -> bool:
    for text in (sentence, typed):
        if _TAG.search(text) and not _WISHES.match(text.strip(" ¿")):
            return True
        if _WOULD.search(text) and not _WISHES.search(text):
            return True
        if _ASKS.search(text) and ("?" in typed or found["cside"] is None):
            return True
    return found["same"] is not None and "?" in typed and not _WISHES.match(sentence.strip(" ¿"))


def _claim(sentence: str, found: re.Match[str], around: Sequence[str]) -> Claim:
    """The claim with the settings that stand on its two sides, or in another sentence."""
    side = found["sside"] or found["oside"] or found["cside"] or ""
    number = found["stops"] or found["bare"] or found["alone"]
    than = _THAN.search(sentence, found.start())
    middle = found.end() if than is None else than.start()
    one, other = _settings(sentence[:middle]), _settings(sentence[middle:])
    pair = _pair(sentence[:middle])
    if pair is not None and not other:
        other, one = pair
    settings = next((text for text in around if len(_settings(text)) >= _TWO), "")
    told = "" if other else settings
    taken = settings if other and not one else ""
    return Claim(
        stops=0.0 if found["same"] else _stops(number),
        side=(-1 if side.startswith(_DARKER) else 1) if side else 0,
        of_light=bool(found["stoo"] or found["ctoo"] or side.startswith(("over", "under"))),
        one=one or _settings(taken),
        other=other or _settings(told),
        told=told,
        rest=" ".join(text for text in around if text != told),
        taken=taken,
    )


def _stops(number: str | None) -> float | None:
    """A number of stops as it is marked: 1.3 is 1 1/3."""
    if number is None:
        return None
    whole, _, part = number.rpartition(" ")
    above, _, below = part.partition("/")
    return exact_thirds(float(whole or 0) + float(above) / float(below or 1))


def _settings(text: str) -> dict[str, float]:
    """The settings that a text names, the last of each dial."""
    return {one.slot: one.value for one in named_in(text) if one.slot in _DIALS}


def _pair(text: str) -> tuple[dict[str, float], dict[str, float]] | None:
    """Two values of one dial: from the first to the second."""
    named = [one for one in named_in(text) if one.slot in _DIALS]
    if len(named) != _TWO or named[0].slot != named[1].slot:
        return None
    return {named[0].slot: named[0].value}, {named[1].slot: named[1].value}
