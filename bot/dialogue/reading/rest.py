"""What was left: numbers that look meant and found no place are told, counts are not."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.answers import PORTION
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.unit_words import METRES
from bot.dialogue.tongues.english.people import KIN

_FOLLOWED_BY_WORD: Final = re.compile(r"^ ?[a-z]")
#: What a bare number counts, numbers or dates, whose age it is, what it costs, when one leaves.
_COUNT_BEFORE: Final = re.compile(
    r"\b(?:frames?|batter(?:y|ies)|charge|card|tries|of|student|group|number|ages?|aged|room|road"
    r"|route|highway|page|task|option|question|shot|frame|picture|photo|level|day|year|since|in"
    r"|until|till|lot|miles?|km|gate|bridge|no|nr|spot|bay|space|seat|bed|row|site|hour|pitch|table"
    r"|cabin|hut|stage|mile|pole|post|trail|track|password|code|call|zip|viewpoint|give me"
    r"|weighs?|counted? to|kept|keepers?|deleted|binned"
    rf"|(?:(?:{KIN}|dog|cat)s?|she|he|i|we|they)(?:'s| is| are| turns| turned|'m| am)"
    r"(?: just| only| nearly)?"
    r"|(?:knees|passport|back|body|watch|clock|phone|thermometer) (?:says?|reads?|shows?|is at|at)"
    r"|(?:tickets?|parking|coffee|price|costs?|paid|fee|entry|beer|lunch|dinner|breakfast|cake|tea)"
    r"(?: (?:was|is|were|for|at|from|until|till|by|cost|costs|of|about|me|us))*"
    r"|(?:bus|train|boat|ferry|shuttle|taxi|lift|cable car)(?: (?:leaves?|goes|is|comes?|at|by))*"
    r"|version|chapter|part|volume|exit|platform|tram|floor|terminal"
    r"|marker|file|chill|temperature|line|seite|zimmer|linie|hausnummer|akku|bater[ií]a"
    r"|kids|children|sons|daughters|boys|girls"
    r"|pagina|habitacion|linea|numero|edad|dia|tag|somos|wir are)(?: (?:at|is|to the))?\W*$"
)
_O_CLOCK: Final = re.compile(
    r"\b(?:meet|leave|start|started|arrive|arrived|(?:got|get|been|was) here"
    r"|back|home|lunch|there|left|shuts?|closes?|opens?|starts?|ends?|comes?) (?:at|by|around) ?$"
)
#: "Dinner at the inn, 7.30".
_DOTTED_CLOCK: Final = re.compile(r"(?:[01]?\d|2[0-3])\.[0-5]\d")
_APPOINTMENT: Final = re.compile(
    r"\b(?:dinner|lunch|breakfast|supper|table|booked|reserv\w+|bus|train|ferry)\b"
)
_YEAR: Final = re.compile(r"(?:19|20)\d\d")


def _is_date(quantity: Quantity) -> bool:
    """`12/10`: no fraction that measures anything is larger than one."""
    return quantity.value >= 1 and not quantity.is_range


def _is_meant(draft: Draft, quantity: Quantity) -> bool:
    """A bare number is a count when a noun follows or names it; with a unit it is meant."""
    before, after = draft.before(quantity), draft.after(quantity)
    if quantity.unit == "" and quantity.fraction and (PORTION.search(after) or _is_date(quantity)):
        return False
    if quantity.unit not in {"", "x"} or quantity.signed or quantity.fraction:
        return True
    if _DOTTED_CLOCK.fullmatch(quantity.text) and _APPOINTMENT.search(draft.text):
        return False
    if _YEAR.fullmatch(quantity.text) or _O_CLOCK.search(before):
        return False
    return not _FOLLOWED_BY_WORD.search(after)


#: "The kids are 4 and 7": the second number is what the first one is.
_ALSO: Final = frozenset({"and", "or", ",", "&", ", and"})


def _counted(draft: Draft) -> set[Quantity]:
    """Bare numbers that count or name something by the words before them, and those that go on."""
    found: set[Quantity] = set()
    for quantity in draft.quantities:
        before, earlier = draft.before(quantity), draft.neighbour(quantity, -1)
        goes_on = earlier in found and before.strip() in _ALSO
        plain = quantity.unit == "" and not (quantity.signed or quantity.fraction)
        if plain and (goes_on or _COUNT_BEFORE.search(before)):
            found.add(quantity)
    return found


def tell_unread(draft: Draft) -> None:
    """Tell the numbers that nobody claimed, unless they only count something."""
    counted = _counted(draft)
    placed = {(one.value, one.unit) for one in draft.quantities if draft.slot_of(one)}
    for quantity in draft.free():
        again = quantity.unit in METRES and (quantity.value, quantity.unit) in placed
        if not again and quantity not in counted and _is_meant(draft, quantity):
            draft.refuse(quantity)
        else:
            draft.claim(quantity)
