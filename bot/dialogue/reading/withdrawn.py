"""Numbers that the message itself takes back or leaves open: "f/8 instead of f/11"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import METRES, Quantity
from bot.dialogue.reading.people import KIN
from bot.dialogue.reading.putting_right import NOT_THIS

_WITHDRAWN: Final = re.compile(rf"\b{NOT_THIS}(?: at| on| with)? ?$")
_LEFT_BEHIND: Final = re.compile(r"\b(?:from|was|was at|had) ?$")
#: "Goes from f/2.8 to f/22" is what a lens can do.
_SPANS: Final = re.compile(
    r"\b(?:goes|ranges?|sharp(?:ness)?|depth|in focus|range|opens|works|anything"
    r"|everything)(?: all the way)? from ?$"
)
_TO: Final = re.compile(r"\bto ?$")
_ARRIVES: Final = re.compile(r"^ ?(?:(?:down |up |back )?to|-?>|,? ?now)\b|^ ?-?> ?")
#: "Swapped f/16 for f/11".
_SWAPPED: Final = re.compile(r"\b(?:swapped|switched|changed|traded|replaced)(?: the| my)? ?$")
#: "Hubby reckons 9 ft, no way, the fall is 12 ft": somebody else's guess gives way.
_THEIR_GUESS: Final = re.compile(
    rf"\b(?:{KIN}|he|she|they)s? (?:says?|said|reckons?|thinks?|thought|guess(?:es|ed)|claims?)"
    r"(?: (?:it's|its|it is|it was|about|like|more like|only|at least))* ?$"
)
_OWN_MIND: Final = re.compile(r"\b(?:no way|never|i'd say|i say|i think|nonsense|rubbish)\b")
_FOR: Final = re.compile(r"^ ?(?:for|to|with|by)(?: the| my| a)? ?$")
#: "F/8 or f/11, which is better in general?" asks of both and sets neither.
_IN_GENERAL: Final = re.compile(
    r"\bdifference between\b|\bin general\b"
    r"|\b(?:which|what)(?:'s| is|s)?\b[^.;]*\b(?:better|best|normal\w*|usual\w*|safer|sharper)\b"
)


def withdraw(draft: Draft) -> None:
    """Drop the numbers that the message takes back; of a choice, both are told as unread."""
    for quantity in draft.quantities:
        later = draft.neighbour(quantity, 1)
        if later is not None and _is_span(draft, quantity):
            drop = draft.claim if quantity.unit in {"f", "iso", "mm"} else draft.refuse
            drop(quantity)
            drop(later)
        elif later is not None and _is_choice(draft, quantity, later):
            drop = draft.claim if _IN_GENERAL.search(draft.text) else draft.refuse
            drop(quantity)
            drop(later)
        elif _is_their_guess(draft, quantity) or _is_taken_back(draft, quantity):
            draft.claim(quantity)


def _is_span(draft: Draft, quantity: Quantity) -> bool:
    return bool(_SPANS.search(draft.before(quantity)) and _ARRIVES.search(draft.after(quantity)))


def _is_choice(draft: Draft, quantity: Quantity, later: Quantity) -> bool:
    """Whether two numbers of one kind are left open: "8 or 10 m", "between 8 and 10 m"."""
    after = draft.after(quantity).strip()
    between = after == "and" and draft.before(quantity).endswith("between ")
    if after == "or" and later.unit == "" and quantity.unit in {"f", "iso", "mm"}:
        return not later.fraction
    return (after == "or" or between) and quantity.unit in {"", later.unit}


def _is_their_guess(draft: Draft, quantity: Quantity) -> bool:
    """Whether somebody else's number is followed by the person's own of the same kind."""
    later = draft.neighbour(quantity, 1)
    lengths = later is not None and quantity.unit in METRES and later.unit in METRES
    return lengths and bool(
        _THEIR_GUESS.search(draft.before(quantity)) and _OWN_MIND.search(draft.after(quantity))
    )


def _is_taken_back(draft: Draft, quantity: Quantity) -> bool:
    before, after = draft.before(quantity), draft.after(quantity)
    swapped = _SWAPPED.search(before) and _FOR.match(after) and draft.neighbour(quantity, 1)
    moved = swapped or (_LEFT_BEHIND.search(before) and _ARRIVES.search(after))
    return bool(
        _WITHDRAWN.search(before)
        or moved
        or _is_left(draft, quantity)
        or after.strip() in {">", "->"}
    )


def _is_left(draft: Draft, quantity: Quantity) -> bool:
    """`to f/16 from f/11`: where the person comes from."""
    earlier = draft.neighbour(quantity, -1)
    return (
        earlier is not None
        and draft.before(quantity).endswith("from ")
        and (
            earlier.unit == "stop"
            or (earlier.unit == quantity.unit and bool(_TO.search(draft.before(earlier))))
        )
    )
