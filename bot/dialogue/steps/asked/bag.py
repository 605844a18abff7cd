"""What goes into the bag the day before: which lenses, which filters, and the rest."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from typing import Final

from bot.dialogue.facts import Facts, LensFact
from bot.dialogue.meaning.asking import is_asking
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.lens_marks import PRIMES
from bot.dialogue.reading.phrases import plain
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.steps.asked import bag_filters, bag_lens, trip_answers
from bot.dialogue.tongues import in_any, whole_words
from bot.dialogue.turn import Turn
from core.camera import MOST_FILTER_STOPS

#: What is answered of a bag: it says it.
Answer = Callable[[Turn], None]

_LEAVE: Final = whole_words("bag_words.leave")
_BRING: Final = whole_words("bag_words.bring")
_PACKS: Final = whole_words("bag_words.packs")
_FILTERS: Final = whole_words("bag_words.which_filters")
_LIST: Final = whole_words("bag_words.list")
_PIECE: Final = re.compile(r"(?<=[?!;.])\s+|,\s+")
#: "The 10 stop", "the 10-stopper", "ND1000".
_STOPS: Final = re.compile(
    rf"(?<![\d/.,])(?P<stops>\d{{1,2}})[ -]?{in_any('bag_words.stop')}\b|\bnd ?(?P<nd>\d{{1,4}})\b"
)
#: "The 10", "den 10er": of the filters that are owned.
_BARE: Final = re.compile(rf"\b{in_any('bag_words.the')} (\d{{1,2}})(?:er)?\b(?![-/.:])")
#: "The 14", "70-200", "das 14er".
_LENS: Final = re.compile(
    r"(?<![\d/.,-])(?P<short>\d{2,3})(?:(?:\.\d)? ?[-–] ?(?P<long>\d{2,3}))?(?:er|mm)?\b"
    rf"(?![ -]?(?:{in_any('bag_words.stop')}|m|km|ft|feet|miles?|min\w*|h|s|%)\b|[:/.]\d)"
)


#: Who names what they own behind a question tells it, whatever the sign: "…, I own an ND?".
_OWNS: Final = re.compile(rf"\W*{in_any('bag_words.owns')}\b", re.IGNORECASE)


def told_in(said: Said) -> str:
    """What a message tells beside its questions, in English: "I own a 3 stop and a 10 stop".

    Args:
        said: the message.
    """
    pieces = _PIECE.split(said.typed)
    told = [piece for piece in pieces if _OWNS.match(piece) or not is_asking(piece, said.language)]
    return glossed(", ".join(told), said.language)


def without_things(turn: Turn, facts: Facts) -> Facts:
    """The facts without numbers that only name a filter of the bag again: "I'll take the 3"."""
    owned = {f"{stops:g}" for stops in (*(turn.facts.nd_stops or ()), *(facts.nd_stops or ()))}
    unread = tuple(piece for piece in facts.unread if piece not in owned)
    return facts.model_copy(update={"unread": unread})


def asked(turn: Turn, said: Said) -> list[Answer]:
    """What a message asks of the bag, in its order; [] where it asks nothing of it.

    Args:
        turn: the answer under construction.
        said: the message; what it tells is to be learnt before the answers are said.
    """
    if turn.walk.given is not None:
        return []  # at the water: what is in the bag is there
    sentences = list(map(plain, sentences_of(said.typed)))
    if not planning.is_planning(turn):
        sentences = [one for one in sentences if _PACKS.search(one)]
    return [answer for one in sentences for answer in _answers(turn, one, said)]


def _answers(turn: Turn, sentence: str, said: Said) -> Iterator[Answer]:
    leaves, brings = _LEAVE.search(sentence), _BRING.search(sentence)
    leave = leaves is not None and (brings is None or leaves.start() < brings.start())
    if _FILTERS.search(sentence):
        yield lambda turn: bag_filters.choose(turn, read(said.english).light)
    elif leaves or brings:
        yield from _of_a_thing(turn, sentence, said, leave=leave)
    if _LIST.search(sentence):
        yield lambda turn: trip_answers.say_pack(turn, said.english)


def _of_a_thing(turn: Turn, sentence: str, said: Said, *, leave: bool) -> Iterator[Answer]:
    """A lens of the kit, or a grey filter, that may stay at home."""
    told = turn.facts.updated(read(told_in(said)))
    lens = _lens_in(sentence, told.lenses)
    stops = None if lens is not None else _stops_in(sentence, told.nd_stops or ())
    if stops is not None:
        light = read(glossed(sentence, said.language)).light
        yield lambda turn: bag_filters.judge(turn, stops, light, leave=leave)
        return
    lens = lens or _lens_alone(sentence, said.language)
    if lens is not None:
        yield lambda turn: bag_lens.judge(turn, lens, leave=leave)


def _stops_in(sentence: str, owned: tuple[float, ...]) -> float | None:
    """The stops of a filter that is named, or meant by its number alone; None without one."""
    match = _STOPS.search(sentence)
    if match is not None:
        named = match["stops"]
        told = read(f"{named} stop nd" if named else f"nd{match['nd']}").nd_stops
        return max(told) if told and max(told) <= MOST_FILTER_STOPS else None
    numbers = {float(number[1]) for number in _BARE.finditer(sentence)}
    return next((stops for stops in owned if round(stops) in numbers), None)


def _lens_alone(sentence: str, language: str) -> LensFact | None:
    """A lens of which nothing was told before: "is the 70-200 worth it", "leave the 14"."""
    told = read(glossed(sentence, language)).lenses
    if told:
        return told[0]
    numbers = [float(number[1]) for number in _BARE.finditer(sentence)]
    return next((LensFact(shortest_mm=mm, longest_mm=mm) for mm in numbers if mm in PRIMES), None)


def _lens_in(sentence: str, lenses: tuple[LensFact, ...]) -> LensFact | None:
    """The lens of the kit that is named by a number."""
    named = [
        (float(match["short"]), float(match["long"] or match["short"]))
        for match in _LENS.finditer(sentence)
    ]
    return next((lens for lens in lenses if (lens.shortest_mm, lens.longest_mm) in named), None)
