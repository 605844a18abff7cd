"""Who asks of a gorge or creek after rain before they set out: a question, no emergency."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger import Danger, DangerKind, Level, read_danger
from bot.dialogue.folding import folded
from bot.dialogue.meaning.sentences import clauses_of
from bot.dialogue.tongues import whole_words

_RAIN: Final = whole_words("rain_asked.rain")
_NARROW: Final = whole_words("rain_asked.narrow")
_PLACE: Final = whole_words("rain_asked.narrow", "rain_asked.place")
_SAFE: Final = whole_words("rain_asked.safe")
_CHILD: Final = whole_words("rain_asked.child")
_ASK: Final = whole_words("rain_asked.ask")
_THING: Final = whole_words("standing.thing")
_PLAN: Final = whole_words("rain_asked.plan")
#: Whole questions: whether a creek goes on rising, and the flood once more.
_WHOLE: Final = whole_words("rain_asked.rises", "rain_asked.again")
#: When to turn back, which is asked of gorges and rain alone.
_SIGNS: Final = whole_words("rain_asked.signs")
#: Who is there, or tells what the water does now, asks of an emergency.
_THERE: Final = whole_words("rain_asked.there")
#: Who is cut off, or has people down there while it pours.
_TROUBLE: Final = whole_words("rain_asked.trouble")


def asks_of_rain(text: str) -> bool:
    """Whether a message asks, from elsewhere, of going to a gorge or creek after rain.

    Args:
        text: as typed, in any of Linn's languages.
    """
    if _THERE.search(_unpunctuated(text)) or not _is_asked(text):
        return False
    return told_beside(text) is None and trouble_in(text) is None


def trouble_in(text: str) -> Danger | None:
    """A danger to be asked about: "we are cut off, how long will the river keep rising?".

    Args:
        text: as typed, in any of Linn's languages; None where it asks of no rain.
    """
    told = _is_asked(text) and _TROUBLE.search(_unpunctuated(text))
    return Danger(DangerKind.UNCLEAR, Level.UNSURE, certain=False) if told else None


def told_beside(text: str) -> Danger | None:
    """A danger that is told beside such a question: "the creek is rising, is the worst over?".

    Args:
        text: as typed, in any of Linn's languages.
    """
    parts = [part for part in clauses_of(text) if not _is_question(part)]
    rest = " ".join(part for part in parts if not _is_about(part))
    about = [part for part in parts if _is_about(part)]
    found = map(read_danger, filter(None, [rest, *about]))
    return next((danger for danger in found if danger is not None and danger.is_told), None)


def names_a_child(text: str) -> bool:
    """Whether a child goes along.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _CHILD.search(folded(text)) is not None


def _is_asked(text: str) -> bool:
    """Whether it is asked of rising water, or of going to a gorge or creek after rain."""
    return _of_whole(text) or _of_going(text)


def _is_question(part: str) -> bool:
    """Whether one part is such a question by itself."""
    said = folded(part)
    return any(words.search(said) for words in (_WHOLE, _SIGNS))


def _is_about(part: str) -> bool:
    """Whether one part names the rain or the gorge that is asked about."""
    said = folded(part)
    return any(words.search(said) for words in (_RAIN, _NARROW))


def _of_whole(text: str) -> bool:
    """Whether a part asks of rising water, of the signs to turn back, or of the flood again."""
    parts, said = list(map(folded, clauses_of(text))), folded(text)
    of_gorge = _RAIN.search(said) or _NARROW.search(said)
    signs = of_gorge and any(map(_SIGNS.search, parts))
    return bool(signs) or any(map(_WHOLE.search, parts))


def _of_going(text: str) -> bool:
    """Whether it is asked if a place is safe after rain, or planned to go to a gorge after it."""
    said = _unpunctuated(text)
    if not (_RAIN.search(said) and _PLACE.search(said)):
        return False
    with_child = _CHILD.search(said) and (_ASK.search(said) or _PLAN.search(said))
    asked = _asks_if_safe(text) and (_ASK.search(said) or "?" in text)
    planned = _NARROW.search(said) and _PLAN.search(said)
    return bool(asked or planned or (with_child and _NARROW.search(said)))


def _asks_if_safe(text: str) -> bool:
    """Whether a part names the danger of a place, not of a thing: a tripod in the rain."""
    parts = map(folded, clauses_of(text))
    return any(_SAFE.search(part) and not _THING.search(part) for part in parts)


def _unpunctuated(text: str) -> str:
    return " ".join(folded(text).replace(" . ", " ").replace(",", " ").split())
