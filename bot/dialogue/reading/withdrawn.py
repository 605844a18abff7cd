"""Numbers that the message itself takes back or leaves open: "f/8 instead of f/11"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.only_weighed import is_a_question_of_two, is_only_weighed
from bot.dialogue.reading.putting_right import NOT_THIS
from bot.dialogue.reading.unit_words import METRES
from bot.dialogue.tongues.english.people import KIN

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
#: "You said 1/4 but i only dare 1/10": what was recommended and not taken.
_YOU_SAID: Final = re.compile(
    r"\b(?:you|u|linn|it)(?:'d| had| have|'ve)? (?:said|say|told me|suggest\w*|recommend\w*|want\w*"
    r"|gave me|wrote|put|proposed|advised)(?: (?:me|to|use|try|about|like|a|go|for|at|with))* ?$"
)
_BUT_OWN: Final = re.compile(
    r"\b(?:but|only|instead|though|however) (?:i|i'm|im|i've|ive|my|mine|we|got|have|can|it's)\b"
    r"|\bi (?:only|took|used|went|dare|did|set|put|have|chose|got)\b"
)
_OWN_MIND: Final = re.compile(r"\b(?:no way|never|i'd say|i say|i think|nonsense|rubbish)\b")
#: "If I had a 6 stop I'd go 8 seconds": what would be.
_WOULD_BE: Final = re.compile(
    r"\bif (?:i|we) (?:had|owned|brought|could)\b[^.;?]*\b(?:i|we)(?:'d| would)\b[^.;?]*$"
)
#: "I don't want f/16".
_NOT_WANTED: Final = re.compile(r"\b(?:i|we) (?:don't|dont|do not) (?:want|like|trust) ?$")
_FOR: Final = re.compile(r"^ ?(?:for|to|with|by)(?: the| my| a)? ?$")
#: "F/8 or f/11, which is better in general?" asks of both and sets neither.
_IN_GENERAL: Final = re.compile(
    r"\bdifference between\b|\bin general\b"
    r"|\bother way (?:a?round|about)\b"
    r"|\b(?:which|what)(?:'s| is|s)?\b[^.;]*\b(?:better|best|normal\w*|usual\w*|safer|sharper)\b"
)


#: "Is 1/60 faster than 1/30": asked of both.
_COMPARES: Final = re.compile(
    r"\b(?:is|does|isn't|would|are) ?# ?(?:really |always |let |give |a )*"
    r"(?:faster|slower|longer|shorter|brighter|darker|bigger|smaller|wider|narrower|sharper|better"
    r"|more|less|the same)(?: \w+)? (?:than|as)(?: iso| f)?$"
)


#: "What does f/8 mean?", "is 1/4 s the same as 0.25?": words are asked for, nothing is set.
_DEFINES: Final = re.compile(
    r"\bwhat(?:'s| does| do| is|s)? (?:an? |the )?#[^?.]{0,36}\b(?:mean|stand for|do|called)\b"
    r"|\b(?:meaning of|define|explain) (?:an? |the )?#"
    r"|^(?:and |so |but )?what(?:'s| is|s) (?:an? )?#\W*$"
)


def _is_defined(draft: Draft, quantity: Quantity) -> bool:
    """Whether the message only asks what a number means."""
    around = f"{draft.text[: quantity.start]}#{draft.text[quantity.end :]}"
    return _DEFINES.search(around) is not None


def withdraw(draft: Draft) -> None:
    """Drop the numbers that the message takes back; of a choice, both are told as unread."""
    for quantity in draft.quantities:
        later = draft.neighbour(quantity, 1)
        if later is not None and _is_span(draft, quantity):
            drop = draft.claim if quantity.unit in {"f", "iso", "mm"} else draft.refuse
            drop(quantity)
            drop(later)
        elif later is not None and (
            _is_choice(draft, quantity, later) or _is_compared(draft, quantity, later)
        ):
            drop = draft.claim if _is_general(draft, quantity, later) else draft.refuse
            drop(quantity)
            drop(later)
        elif later is not None and is_a_question_of_two(draft, quantity, later):
            draft.claim(quantity)
            draft.claim(later)
        elif (
            _is_unreal(draft, quantity)
            or _is_their_guess(draft, quantity)
            or _is_to_keep(draft, quantity)
            or _is_mistyped(draft, quantity)
            or _is_taken_back(draft, quantity)
            or _is_defined(draft, quantity)
            or is_only_weighed(draft, quantity)
        ):
            draft.claim(quantity)


def _is_unreal(draft: Draft, quantity: Quantity) -> bool:
    """Whether a number is not wanted, or would be set if only there were something."""
    if _NOT_WANTED.search(draft.before(quantity)):
        return True
    return "?" not in draft.text and _WOULD_BE.search(draft.text[: quantity.start]) is not None


def _is_span(draft: Draft, quantity: Quantity) -> bool:
    return bool(_SPANS.search(draft.before(quantity)) and _ARRIVES.search(draft.after(quantity)))


def _is_compared(draft: Draft, quantity: Quantity, later: Quantity) -> bool:
    """Whether two numbers of one kind are only weighed: "is 1/60 faster than 1/30"."""
    around = f"{draft.before(quantity)}#{draft.after(quantity).rstrip()}"
    alike = quantity.unit == later.unit or "" in {quantity.unit, later.unit}
    return alike and _COMPARES.search(around) is not None


def _is_general(draft: Draft, quantity: Quantity, later: Quantity) -> bool:
    """Whether a choice asks how things are, and sets nothing."""
    return _IN_GENERAL.search(draft.text) is not None or _is_compared(draft, quantity, later)


#: What leaves two numbers open between them.
_ORS: Final = frozenset({"or", "or maybe", "maybe", "or even", "perhaps", "or perhaps", "possibly"})


def _is_choice(draft: Draft, quantity: Quantity, later: Quantity) -> bool:
    """Whether two numbers of one kind are left open: "8 or 10 m", "between 8 and 10 m"."""
    after = draft.after(quantity).strip()
    between = after == "and" and draft.before(quantity).endswith("between ")
    if after == "or" and later.unit == "" and quantity.unit in {"f", "iso", "mm"}:
        return not later.fraction
    times = {quantity.unit, later.unit} <= {"s", "min"}
    return (after in _ORS or between) and (times or quantity.unit in {"", later.unit})


def _is_their_guess(draft: Draft, quantity: Quantity) -> bool:
    """Whether somebody else's number is followed by the person's own of the same kind."""
    later = draft.neighbour(quantity, 1)
    if (
        later is not None
        and _kind(later) == _kind(quantity) != ""
        and _is_declined(draft, quantity)
    ):
        return True
    lengths = later is not None and quantity.unit in METRES and later.unit in METRES
    return lengths and bool(
        _THEIR_GUESS.search(draft.before(quantity)) and _OWN_MIND.search(draft.after(quantity))
    )


def _kind(quantity: Quantity) -> str:
    """Of which setting or measure a number is by its form alone; "": not known."""
    if quantity.unit == "s" or (quantity.unit == "" and quantity.fraction):
        return "time"
    return "length" if quantity.unit in METRES else quantity.unit


def _is_declined(draft: Draft, quantity: Quantity) -> bool:
    """Whether a number was recommended and the person's own follows: `you said f/8 but i …`."""
    said, after = _YOU_SAID.search(draft.before(quantity)), draft.after(quantity)
    return said is not None and _BUT_OWN.search(after) is not None


#: "12 m high was nonsense, 9 m".
_NONSENSE: Final = re.compile(
    r"^ ?(?:(?:high|tall|away|back|off|wide|deep) )?(?:was|is|were) (?:(?:all|just|total|complete"
    r"|pure|a|my|plain|utter) )*(?:nonsense|rubbish|garbage|wrong|mistake|typo|slip|bull\w*|daft"
    r"|silly|bogus|misread)\b"
)
#: "Mum says 10 feet from the edge. I'm 65 feet away": what somebody wants kept.
_TO_KEEP: Final = re.compile(
    rf"\b(?:{KIN}|he|she|they|ranger|rule|sign)s? (?:says?|said|wants?|tells?|insists?|is)"
    r"(?: (?:to|me|us|stay|keep|be|at least|always|no closer than|about|on))* ?$"
)
_OFF_EDGE: Final = re.compile(r"^ ?(?:from|back|away|off)\b")
_OWN_STAND: Final = re.compile(r"\b(?:i'm|im|i am|we're|we are|i stand|we stand|i stay)\b")


#: "I wrote 8 m, meant 80 cm".
_WROTE: Final = re.compile(r"\b(?:wrote|typed|said|sent|texted)(?: you| down| it as)? ?$")
_MEANT: Final = re.compile(r"^[,.;]? (?:but |and )?(?:i )?(?:meant|mean)\b")


def _is_mistyped(draft: Draft, quantity: Quantity) -> bool:
    """Whether a number was written where another was meant."""
    wrote = _WROTE.search(draft.before(quantity)) is not None
    return wrote and _MEANT.match(draft.after(quantity)) is not None


def _is_to_keep(draft: Draft, quantity: Quantity) -> bool:
    """Whether a length is what somebody wants kept, and the person's own follows."""
    after, later = draft.after(quantity), draft.neighbour(quantity, 1)
    return (
        later is not None
        and later.unit in METRES
        and _TO_KEEP.search(draft.before(quantity)) is not None
        and _OFF_EDGE.match(after) is not None
        and _OWN_STAND.search(after) is not None
    )


def _is_taken_back(draft: Draft, quantity: Quantity) -> bool:
    before, after = draft.before(quantity), draft.after(quantity)
    swapped = _SWAPPED.search(before) and _FOR.match(after) and draft.neighbour(quantity, 1)
    moved = swapped or (_LEFT_BEHIND.search(before) and _ARRIVES.search(after))
    return bool(
        _WITHDRAWN.search(before)
        or moved
        or _is_left(draft, quantity)
        or _NONSENSE.match(after)
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
