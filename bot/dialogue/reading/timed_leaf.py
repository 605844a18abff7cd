"""A floating thing timed over a length: the speed of the water."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Units
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.roles import role
from bot.dialogue.reading.unit_words import LENGTH_UNITS, METRES

_FLOAT: Final = re.compile(
    r"\b(?:leaf|leaves|stick|twig|foam|bubbles?|cork|float\w*|drift\w*|travel\w*|takes?|took|did)\b"
)
_THING: Final = (
    r"(?:leaf|stick|twig|cork|acorn|(?:pine ?)?cone|petal|feather|nut|bark|branch|blossom"
    r"|(?:bit|piece|patch|blob) of (?:foam|wood|bark|moss|grass)|bubbles?|duck|boat)"
)
_RUNS: Final = (
    r"(?:needs?|needed|takes?|took|does|did|makes?|made|covers?|covered|goes|went|travels?"
    r"|travell?ed|drifts?|drifted|floats?|floated|runs?|ran|passes|passed|swam|swims)"
)
#: A message that tells of a thing thrown in or timed, or of the water's speed.
_TIMING: Final = re.compile(
    rf"\b(?:{_THING}s? (?:test|race|time|timing|trick|speed)"
    r"|(?:threw|throw|thrown|toss\w*|drop(?:ped)?|chuck\w*|put|lobb?ed|launch\w*|flung|time[ds]?"
    rf"|timing|clocked|watch\w*|follow\w*|float\w*|rac\w+|let)\b[^.;!?]{{0,24}}\b{_THING}"
    rf"|{_THING}\b[^.;!?\d]{{0,16}}\b{_RUNS}"
    r"|timed (?:it|that|this|once|twice|again)"
    r"|(?:water|current|flow|stream|river)(?:'s)? (?:speed|velocity)"
    r"|speed of the (?:water|current|flow|stream))\b"
)
#: Between the length and its time nothing but these.
_BESIDE: Final = re.compile(
    rf"(?:\W|\b(?:and|then|it|that|this|the|an?|my|{_THING}|{_RUNS}|taking|in|about|around|roughly"
    r"|maybe|within|after|for|over|was|is|time|took|later|exactly|just|only|per|to go|to do"
    r"|to cover|i counted|counted)\b)*"
)
_PER_LENGTH: Final = re.compile(
    r"^ ?(?:per|an?|each|for (?:each|every|an?|one|1)) (met(?:er|re)|m|foot|ft)\b"
)


def read_timed_leaf(draft: Draft) -> None:
    """A length and a time side by side: `3 m in 3 s`, `leaf takes 4 seconds for 10 ft`."""
    for first in draft.free(*LENGTH_UNITS, "s"):
        second = draft.neighbour(first, 1)
        if second is None or second not in draft.free(*LENGTH_UNITS, "s"):
            continue
        length, time = (second, first) if first.unit == "s" else (first, second)
        apart = time.unit == "s" and length.unit != "s" and time.value > 0
        if apart and _is_joined(draft, first, length, time):
            metres = length.value * METRES[length.unit]
            draft.claim(time)
            draft.put("water_speed_mps", metres / time.value, length)


_TO_DRIFT: Final = re.compile(
    r"for|over|to (?:go|do|cover|drift|float|travel|move|make|pass|run|get)(?: (?:about|some|the"
    r"|past|down))?"
)


def _is_joined(draft: Draft, first: Quantity, length: Quantity, time: Quantity) -> bool:
    """Whether a length and a time make one speed, by the words between or around them."""
    between = draft.after(first).strip()
    leaf = _FLOAT.search(draft.text) or "water_speed_mps" in draft.expecting
    if between in {"in", "per", "in about"} or (first is time and between in {"for", "to do"}):
        return True
    if draft.after(first) == "/" and not any(q.unit in {"f", "iso"} for q in draft.quantities):
        return length is first  # "4m/2s"
    if leaf and _TO_DRIFT.fullmatch(between):
        return True
    return bool(
        _TIMING.search(draft.text)
        and _BESIDE.fullmatch(between)
        and not (time.fraction or time.is_range or length.is_range)
        and role(draft, length) is None
    )


def read_seconds_per_length(draft: Draft) -> None:
    """`2 s per metre`: how long the leaf needs for one."""
    for quantity in draft.free("s"):
        match = _PER_LENGTH.search(draft.after(quantity))
        if match and quantity.value > 0 and not quantity.is_range:
            unit = "m" if match.group(1).startswith("m") else "ft"
            draft.put("water_speed_mps", METRES[unit] / quantity.value, quantity)
            draft.values.setdefault("units", Units.METRIC if unit == "m" else Units.IMPERIAL)
