"""Values that a question only tries, whatever its words: what they would do to the frame."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Facts
from bot.dialogue.meaning.asking import is_asking
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.topics import nearness, topic_of
from bot.dialogue.meaning.values_named import Named, named_in, plainly
from bot.dialogue.reading import read
from bot.dialogue.steps.asked import supposing, trials, what_if
from bot.dialogue.steps.asked.question_words import topic_named
from bot.dialogue.steps.asked.told_around import rest_of
from bot.dialogue.steps.walk.adjust import EXPOSURE
from bot.dialogue.tongues import in_any, whole_words
from bot.dialogue.turn import Turn

#: Topics that the value itself names; any other is what is asked.
_OF_THE_VALUE: Final = frozenset(
    {None, "f_number", "iso_or_grain", "iso", "silky_time", "lens", "too_long"}
)
#: By its sense a question is of another topic from this nearness on (own rule, as beside facts).
_SURE: Final = 0.35
_DIALS: Final = frozenset({"f_number", "shutter_s", "iso", "focal_mm"})
#: What a try may hold beside its values: the complaint that it answers, kit by its name.
_BESIDE: Final = frozenset(
    {"symptoms", "nd_stops", "has_polariser", "lenses", "units", "section", "look", "light"}
)
#: Asks for the cause or the value, not what one does.
_ASKS_FOR: Final = whole_words("trials.asks_for")
#: "Took it at 1/8, is that enough?" tells of a frame.
_TELLS: Final = re.compile(rf"\W*{in_any('compared.tells')}\b")
#: Who asks whether they may go somewhere asks for no value.
_GOES: Final = whole_words("trials.goes")
_MAY: Final = whole_words("trials.may")
_WHAT_TIME: Final = re.compile(rf"\b{in_any('trials.what_time')}\W*$", re.IGNORECASE)
_WITH: Final = re.compile(r"\W*(?:at|with|in|behind|bei|mit|hinter|a|con|tras)\b", re.IGNORECASE)
#: What builds on a try before it goes another way.
_BUILDS: Final = re.compile(r"\W*and what if\b", re.IGNORECASE)
_SUPPOSED: Final = re.compile(r"\W*(?:(?:so|ok|and|but|hm+)\W+)*what if\b[ ,]*")
#: Where one clause ends, or a question begins in the middle of it: "too soft could i use 1/8".
_PIECE: Final = re.compile(
    r"(?<=[.!?;])\s+|,\s+(?=\D)(?!(?:is|would|will) (?:that|it|this)(?: be)? (?:enough|too)\b)"
    rf"(?!{in_any('claims.tag')}\W*(?:$|\s))|\n"
    r"|\s+(?=(?:could|can't|couldn't) (?:i|we)\b)"
)


def answer(turn: Turn, said: Said) -> str | None:
    """Say what the values that a question tries would do.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message tells of the scene; None when it tries nothing.
    """
    builds = turn.context.conversation.tried is not None and trials.goes_on(said)
    builds = builds or _BUILDS.match(said.english) is not None
    if supposing.settings_now(turn) is None or builds or _complains(said):
        return None
    text = plainly(said.english)
    supposed = _SUPPOSED.match(text) is not None or trials.supposes(said)
    supposed = supposed or _supposes_behind(said) or _asks_time_with(said)
    pieces = [_SUPPOSED.sub("", text)] if supposed else _PIECE.split(text)
    for place, piece in enumerate(pieces):
        own = said.typed if len(pieces) == 1 else piece
        tried = _tried(turn, said._replace(english=piece, typed=own), supposed=supposed)
        if tried is not None and (len(pieces) == 1 or not what_if.is_set(turn, tried)):
            what_if.answer(turn, tried)
            return rest_of(". ".join([*pieces[:place], *pieces[place + 1 :]]))
    return None


def _complains(said: Said) -> bool:
    """Whether a message complains of what no other value of a dial mends by itself."""
    return bool(set(read(said.english).symptoms) - EXPOSURE)


def _supposes_behind(said: Said) -> bool:
    """Whether a later sentence begins as one that only tries: "on the 35. redo it at 1/6"."""
    _, stop, tail = said.typed.rpartition(". ")
    return bool(stop) and trials.supposes(said._replace(english=tail, typed=tail))


def _asks_time_with(said: Said) -> bool:
    """Whether a time is asked for behind what it goes with: "at EV 14 and a 3 stop, what time"."""
    return _WITH.match(said.typed) is not None and _WHAT_TIME.search(said.typed) is not None


def _tried(turn: Turn, said: Said, *, supposed: bool) -> Facts | None:
    """What a piece of a message tries; None where it tells, or asks for something else."""
    named = [one for one in named_in(said.english) if one.slot in _DIALS]
    if not supposed and not (named and _asks_of(said)):
        return None
    told = read(said.english, units=turn.units)
    if len({one.slot for one in named}) < len(named):
        return None  # of two values of a dial nobody knows which is tried
    # "Is a sixth not enough": what is denied is no fact, but tried.
    told = told.updated(Facts().model_copy(update={one.slot: one.value for one in named}))
    tried = told.updated(supposing.happening(turn, said, told))
    tried = tried.updated(_bare(turn, said.english, tried))
    known = tried.known().keys()
    if not known & supposing.TRIED or known - supposing.TRIED - _BESIDE:
        return None
    return tried.only((known & supposing.TRIED) - _NOT_TRIED)


#: Brightness is claimed or complained of, not tried, beside a value.
_NOT_TRIED: Final = frozenset({"change_stops", "meter_stops"})


def _asks_of(said: Said) -> bool:
    """Whether a piece asks what its value does, and nothing that has an answer of its own."""
    piece = said.english
    both = f"{piece}\n{said.typed.casefold()}"
    may = _MAY.search(both)
    if not (may or piece.endswith("?") or is_asking(piece)) or _ASKS_FOR.search(both):
        return False
    if _TELLS.match(piece) or _GOES.search(both):
        return False
    if topic_named(piece) not in _OF_THE_VALUE:
        return False
    topic = None if may else topic_of(said)
    return topic is None or topic in _OF_THE_VALUE or nearness(said)[topic] < _SURE


#: "At 85", "on the 35": a lens or a focal length.
_AT: Final = re.compile(
    r"\b(?:at|on|with|through|using|to|auf|bei|mit|con|a)(?: (?:the|my|an?))? $"
)


def _bare(turn: Turn, piece: str, told: Facts) -> Facts:
    """Bare numbers of a try: one of the person's lenses, and the place to stand."""
    lengths = [one.value for one in named_in(piece) if one.slot == "length"]
    lens = lens_named(turn, piece, told)
    if not lengths or told.distance_m is not None or told.nearest_m is not None:
        return lens
    return lens.updated(Facts(distance_m=lengths[-1]))


def lens_named(turn: Turn, piece: str, told: Facts) -> Facts:
    """The lens of the person's that a bare number names: "at 85", "on the 35".

    Args:
        turn: the answer under construction.
        piece: of a message, as `plainly` leaves it.
        told: what was read in it.
    """
    if told.focal_mm is not None:
        return Facts()
    named = [one.value for one in named_in(piece) if not one.slot and _is_lens(turn, piece, one)]
    return Facts(focal_mm=named[0]) if named else Facts()


def _is_lens(turn: Turn, piece: str, one: Named) -> bool:
    """Whether a bare number stands as a focal length, of a lens that the person has."""
    if _AT.search(piece[: one.start]) is None:
        return False
    return any(lens.shortest_mm <= one.value <= lens.longest_mm for lens in turn.facts.lenses)
