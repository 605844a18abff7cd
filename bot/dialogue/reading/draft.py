"""The facts of one message while they are being read: who claimed which number, for what."""

from __future__ import annotations

import re
from typing import Any, Final

from bot.dialogue.facts import Facts, Units
from bot.dialogue.reading.around import without_courtesy
from bot.dialogue.reading.noise import without_noise
from bot.dialogue.reading.normal import normalise
from bot.dialogue.reading.numbers import Quantity, scan
from bot.dialogue.reading.paces import answered
from bot.dialogue.reading.putting_right import BACK, BETTER_KNOWN

#: Plausible values per slot (own rule: wider than anything met in the field, narrow enough that
#: a slip of the thumb falls outside). What lies outside is told as unread, never stored.
RANGES: Final[dict[str, tuple[float, float]]] = {
    "megapixels": (1.0, 250.0),
    "base_iso": (20.0, 1600.0),
    "fall_height_m": (0.2, 1000.0),
    "distance_m": (0.3, 3000.0),
    "nearest_m": (0.05, 300.0),
    "farthest_m": (0.5, 10_000.0),
    "camera_height_m": (0.02, 30.0),
    "fall_width_m": (0.1, 500.0),
    "section_height_m": (0.1, 300.0),
    "water_speed_mps": (0.02, 35.0),
    "water_depth_m": (0.01, 5.0),
    "focal_mm": (3.0, 1500.0),
    "f_number": (0.9, 91.0),
    "shutter_s": (1 / 16_000, 3600.0),
    "iso": (20.0, 409_600.0),
    "nd_on_stops": (0.0, 20.0),
    "meter_stops": (-8.0, 8.0),
    "change_stops": (-12.0, 12.0),
    "walk_km": (0.05, 60.0),
    "climb_m": (1.0, 3500.0),
}

#: Where one clause ends and the next begins.
BORDER: Final = re.compile(r"[,;!?()]|\.(?=\s|$)|\b(?:and|but|then|while)\b|\s[-/|·•]\s")
#: Between two numbers: the later one puts the earlier right, or was set after it.
_GIVES_WAY: Final = re.compile(
    rf"\b(?:{BACK}|{BETTER_KNOWN}|now|today|meant|wrong|kidding|joking|in fact|(?:went|gone|changed"
    r"|switched|moved|dropped|opened|stopped down|closed down|swapped) (?:up |down )?to"
    r"|ended up(?: at| on)?)\b|>"
)
#: Where two numbers claim one slot, what these stand beside is over.
_PAST: Final = re.compile(
    r"\b(?:was|were|had|before|earlier|previously|at first|the first|started|began|used"
    r"|originally|initially|last|previous|been|came from|thought|guessed)\b"
)
_PAST_BEHIND: Final = re.compile(
    r"^ ?(?:or so |odd )?(?:(?:to|at) (?:start|begin) with|at first|first|before|earlier"
    r"|previously|last"
    r" time|a (?:moment|minute|while) ago|the (?:first|last) time|initially|originally"
    r"|(?:is|was) (?:way |a bit |much |just )?(?:too|wrong)|made it)\b"
)
_NOW: Final = re.compile(r"\b(?:now|this (?:frame|one|time|shot)|currently|today|then)\b")
#: Of several tries the one that holds: "now 1/8", "1/8 it is".
_HOLDS: Final = re.compile(r"\b(?:now|currently)\b")
_HOLDS_BEHIND: Final = re.compile(r"^ ?(?:it is\b|it's now\b|now\b)")


class Draft:
    """A message, its numbers, and what the readers have made of them so far.

    Args:
        text: the message as typed.
        expecting: names of the slots that the open question asks for.
        units: the person's units, when known.
    """

    def __init__(self, text: str, expecting: frozenset[str], units: Units | None) -> None:
        plain = without_noise(without_courtesy(normalise(text)))
        self.text = answered(plain) if "distance_m" in expecting else plain
        self.expecting = expecting
        self.person_units = units
        self.quantities = scan(self.text)
        self.values: dict[str, Any] = {}
        self.guessed: list[str] = []
        self._places = {quantity: index for index, quantity in enumerate(self.quantities)}
        self._free = dict.fromkeys(self.quantities)
        self._slots: dict[Quantity, str] = {}
        self._sources: dict[str, Quantity] = {}
        self._disputed: dict[str, list[Quantity]] = {}
        self._unread: list[Quantity] = []

    def free(self, *units: str) -> list[Quantity]:
        """Numbers that nobody has claimed yet, of these units (of any, when none is named)."""
        return [quantity for quantity in self._free if not units or quantity.unit in units]

    def neighbour(self, quantity: Quantity, step: int) -> Quantity | None:
        """The number `step` places further on (or back), if there is one."""
        index = self._places[quantity] + step
        return self.quantities[index] if 0 <= index < len(self.quantities) else None

    def before(self, quantity: Quantity) -> str:
        """The words between the number before and this one."""
        earlier = self.neighbour(quantity, -1)
        return self.text[earlier.end if earlier else 0 : quantity.start]

    def after(self, quantity: Quantity) -> str:
        """The words between this number and the next one."""
        later = self.neighbour(quantity, 1)
        return self.text[quantity.end : later.start if later else len(self.text)]

    def clause_before(self, quantity: Quantity) -> str:
        """The words before this number back to the last border of a clause."""
        return BORDER.split(self.before(quantity))[-1]

    def clause_after(self, quantity: Quantity) -> str:
        """The words behind this number up to the next border of a clause."""
        return BORDER.split(self.after(quantity), maxsplit=1)[0]

    def last_clauses(self, quantity: Quantity) -> tuple[str, str]:
        """The clause before the one that this number stands in, and the words of its own."""
        parts = BORDER.split(self.before(quantity))
        return (parts[-2], parts[-1]) if len(parts) > 1 else ("", parts[-1])

    def claim(self, quantity: Quantity) -> None:
        """Take a number off the list: it means something that fills no slot."""
        self._free.pop(quantity, None)

    def refuse(self, quantity: Quantity) -> None:
        """Take a number off the list and tell it as unread."""
        self.claim(quantity)
        self._unread.append(quantity)

    def put(self, slot: str, value: float, quantity: Quantity) -> None:
        """Fill a slot from a number; out of range or contradicting an earlier one: unread."""
        low, high = RANGES[slot]
        if slot in self._disputed and self._holds(quantity):
            self._settle(slot)
        if not low <= value <= high or slot in self._disputed:
            self.refuse(quantity)
            self._disputed.get(slot, []).append(quantity)
            return
        earlier = self._sources.get(slot)
        if earlier is not None and value != self.values[slot]:
            replaced = quantity.start < earlier.start and self._gives_way(quantity, earlier)
            if replaced or (self._is_past(quantity) and not self._is_past(earlier)):
                self.claim(quantity)
                return
            if not self._gives_way(earlier, quantity):
                self._dispute(slot, earlier, quantity)
                return
            del self._slots[earlier]
        self.claim(quantity)
        self.values[slot] = value
        self._sources[slot] = quantity
        self._slots[quantity] = slot

    def note(self, slot: str, value: object) -> None:
        """Fill a slot from words."""
        self.values[slot] = value

    def slot_of(self, quantity: Quantity) -> str | None:
        """The slot that a number filled, if it filled one."""
        return self._slots.get(quantity)

    def source_of(self, slot: str) -> Quantity | None:
        """The number that filled a slot, if one did."""
        return self._sources.get(slot)

    def take_back(self, slot: str) -> None:
        """Empty a slot; its number is nobody's again."""
        quantity = self._sources.pop(slot)
        del self.values[slot], self._slots[quantity]
        self._free[quantity] = None
        self.guessed = [guessed for guessed in self.guessed if guessed != slot]

    def take_up(self, slot: str, quantity: Quantity) -> None:
        """Open a slot for a number after all: neither is it unread, nor the slot disputed."""
        self._disputed.pop(slot, None)
        self._unread = [other for other in self._unread if other != quantity]

    @property
    def refused(self) -> tuple[Quantity, ...]:
        """The numbers that are told as unread so far."""
        return tuple(self._unread)

    def is_left(self, quantity: Quantity) -> bool:
        """Whether a number has found no place: nobody's, or told as unread."""
        return quantity in self._free or quantity in self._unread

    def is_placed(self, start: int) -> bool:
        """Whether a number that begins here fills a slot."""
        return any(quantity.start == start for quantity in self._slots)

    def skeleton(self) -> str:
        """The message with the name of the slot in place of each number that filled one."""
        pieces, end = [], 0
        for quantity in self.quantities:
            if quantity in self._slots:
                pieces += [self.text[end : quantity.start], f" {self._slots[quantity]} "]
                end = quantity.end
        return " ".join("".join([*pieces, self.text[end:]]).split())

    def facts(self) -> Facts:
        """All that was read."""
        unread = sorted(set(self._unread), key=lambda quantity: quantity.start)
        return Facts(
            **self.values,
            guessed=tuple(dict.fromkeys(self.guessed)),
            unread=tuple(" ".join(quantity.text.split()) for quantity in unread),
        )

    def _gives_way(self, earlier: Quantity, later: Quantity) -> bool:
        """Whether the later of two numbers puts the earlier right, or was set after it."""
        between = self.text[earlier.end : later.start]
        if _GIVES_WAY.search(between) or self._is_past(earlier):
            return True
        return _HOLDS_BEHIND.match(self.clause_after(later)) is not None

    def _is_past(self, quantity: Quantity) -> bool:
        """Whether the words beside a number say that it held before."""
        before, after = self.clause_before(quantity), self.clause_after(quantity)
        return bool(_PAST.search(before) or _PAST_BEHIND.match(after)) and not _NOW.search(before)

    def _dispute(self, slot: str, earlier: Quantity, later: Quantity) -> None:
        self.refuse(earlier)
        self.refuse(later)
        del self.values[slot], self._sources[slot], self._slots[earlier]
        self._disputed[slot] = [earlier, later]

    def _holds(self, quantity: Quantity) -> bool:
        """Whether the words beside a number say that of several tries this one holds."""
        before, after = self.clause_before(quantity), self.clause_after(quantity)
        return bool(_HOLDS.search(before) or _HOLDS_BEHIND.match(after))

    def _settle(self, slot: str) -> None:
        """Forget the earlier tries of a slot: they are over, not unread."""
        over = self._disputed.pop(slot)
        self._unread = [quantity for quantity in self._unread if quantity not in over]
