"""Lengths that known wordings leave or misplace: placed by all words around them."""

from __future__ import annotations

import math
import re
from typing import Final

from bot.dialogue.reading.answers import answers
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.length_candidates import Candidate
from bot.dialogue.reading.length_sense import SLOTS, sensed
from bot.dialogue.reading.lengths import store
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.putting_right import BACK, BETTER_KNOWN
from bot.dialogue.reading.roles import names_the_fall
from bot.dialogue.reading.unit_words import LENGTH_UNITS, METRES

#: A slot that known wordings fill is emptied again where its number is so likely something else;
#: one that the open question asks for, which any number would fill, sooner. Own rules, as those
#: below, from writers who were left out in turn: of the lengths that they tell, known wordings
#: alone read half, 82 in 100 rightly; weighed, 73 in 100 are read, 90 in 100 rightly.
_ANOTHER: Final = 0.95
_NOT_ASKED_FOR: Final = 0.7
#: A number that none of them places goes where it most likely belongs from here on; one that they
#: found to be of something else, or that has no unit, has to be surer.
_SURE: Final = 0.7
_SURER: Final = 0.85
#: Two ways to say one length differ by no more (own rule).
_SAME: Final = 0.05
#: What puts a number right is known by these words, whatever else stands around it.
_PUT_RIGHT: Final = re.compile(rf"\b(?:{BACK}|{BETTER_KNOWN}|meant|not)\b")


def weigh_lengths(draft: Draft) -> None:
    """Take back what is hardly so, and place what is left and sure."""
    found = sensed(draft.text, draft.quantities, draft.expecting)
    if not found.has_words(draft.text):
        return
    for slot in SLOTS:
        quantity = draft.source_of(slot)
        likely = _NOT_ASKED_FOR if slot in draft.expecting else _ANOTHER
        if quantity is None or _is_sure(draft, quantity, slot):
            continue
        if found.is_another(slot, quantity, likely):
            draft.take_back(slot)
    for share, candidate, slot in found.likeliest():
        if slot in draft.values:
            _say_once(draft, slot, candidate)
        elif share >= _needed(draft, candidate):
            quantity = _quantity(draft, candidate)
            draft.take_up(slot, quantity)
            store(draft, slot, quantity)


def _is_sure(draft: Draft, quantity: Quantity, slot: str) -> bool:
    """Whether known wordings alone say what a number is."""
    return (
        _PUT_RIGHT.search(draft.before(quantity)) is not None
        or names_the_fall(draft, quantity)
        or _is_the_answer(draft, quantity, slot)
    )


def _is_the_answer(draft: Draft, quantity: Quantity, slot: str) -> bool:
    """Whether the one length of a message answers what was asked: its clause says nothing else."""
    lengths = [other for other in draft.quantities if other.unit in LENGTH_UNITS]
    return slot in draft.expecting and lengths == [quantity] and answers(draft, quantity, slot)


def _say_once(draft: Draft, slot: str, candidate: Candidate) -> None:
    """A number that says again what fills a slot is not unread: "an arm's length, 70 cm"."""
    same = math.isclose(draft.values[slot], candidate.metres, rel_tol=_SAME)
    if same and candidate.quantity is not None and _is_left(draft, candidate):
        draft.take_up(slot, candidate.quantity)
        draft.claim(candidate.quantity)


def _needed(draft: Draft, candidate: Candidate) -> float:
    """How likely a candidate must be of a slot to be placed; above 1 where it is another's."""
    span = (candidate.start, candidate.end)
    last = max((one.end for one in draft.quantities if one.end <= candidate.start), default=0)
    put_right = _PUT_RIGHT.search(draft.text[last : candidate.start])
    if put_right or not _is_left(draft, candidate):
        return math.inf
    refused = any(one.start < span[1] and span[0] < one.end for one in draft.refused)
    return _SURER if refused or not candidate.unit else _SURE


def _is_left(draft: Draft, candidate: Candidate) -> bool:
    """Whether nobody has claimed a candidate for something else."""
    span = (candidate.start, candidate.end)
    of_another = any(
        quantity.start < span[1] and span[0] < quantity.end and not draft.is_left(quantity)
        for quantity in draft.quantities
    )
    return not of_another and not draft.is_placed(candidate.start)


def _quantity(draft: Draft, candidate: Candidate) -> Quantity:
    """The number that was scanned, or one for what it counts in words."""
    scanned = candidate.quantity
    if scanned is not None and candidate.unit == scanned.unit:
        return scanned
    measured = candidate.unit == "" or candidate.unit in METRES
    return Quantity(
        candidate.value if measured else candidate.metres,
        candidate.unit if measured else "m",
        candidate.start,
        candidate.end,
        draft.text[candidate.start : candidate.end],
    )
