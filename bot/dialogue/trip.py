"""What is told of a visit as a whole: who walks, when, the way in time, words for who waits."""

from __future__ import annotations

from datetime import date
from typing import Literal, TypeAlias

from pydantic import AwareDatetime

from bot.dialogue.stored import Stored

#: What a forecast says of the sky; "partly" is sun that comes and goes.
Sky: TypeAlias = Literal["sun", "partly", "cloud", "overcast", "rain", "storm"]


class Spell(Stored):
    """A stretch of the day under one sky: from when, "HH:MM"; "" from its beginning."""

    since: str
    sky: Sky


class Trip(Stored):
    """All that was told of the visit around the walk; None and "" mean: not said."""

    #: Who walk, the one who writes among them, and why somebody is slow: `child`, `old`, `lame`,
    #: `students`, `slow`.
    people: int | None = None
    slowest: str | None = None
    #: When it starts at the car, "HH:MM".
    start_at: str | None = None
    #: By when they must be back at the car, the bus or home, "HH:MM".
    back_by: str | None = None
    #: One way as told in time [min], and whether a length is that of both ways.
    walk_min: float | None = None
    round_trip: bool | None = None
    #: The light that is forecast, a key of `core.light.LIGHTS`.
    forecast: str | None = None
    #: The same by the hour, in its order.
    spells: tuple[Spell, ...] = ()
    #: What the weather wants in the bag: `rain`, `cold`.
    weather: tuple[str, ...] = ()
    #: In the person's own words: the place, who goes, the car and where it stands.
    place: str = ""
    party: str = ""
    car: str = ""
    #: When a visit to come was spoken of, and the day that it is for.
    planning_at: AwareDatetime | None = None
    day: date | None = None
    #: When somebody told that they were there, first and last, "HH:MM".
    there_at: str | None = None
    seen_at: str | None = None
    #: What was asked or given once: `start`, `height`, `kit`, `note`.
    told: tuple[str, ...] = ()

    def known(self) -> dict[str, object]:
        """What was told, by name."""
        filled = self.model_dump(
            exclude={"planning_at", "told", "spells", "weather", "there_at", "seen_at"}
        )
        return {name: value for name, value in filled.items() if value not in (None, "")}

    def without_names(self) -> Trip:
        """This trip without the person's own words."""
        return self.model_copy(update={"place": "", "party": "", "car": ""})

    def updated(self, newer: Trip) -> Trip:
        """This trip with what `newer` tells laid over it."""
        weather = tuple(dict.fromkeys((*self.weather, *newer.weather)))
        more = {"spells": self._spells_with(newer.spells), "weather": weather}
        return self.model_copy(update=newer.known() | more)

    def _spells_with(self, newer: tuple[Spell, ...]) -> tuple[Spell, ...]:
        """The spells with newer ones in the place of those at their hours; a whole day is new."""
        if any(not spell.since for spell in newer):
            return newer
        hours = {spell.since for spell in newer}
        kept = [spell for spell in self.spells if spell.since not in hours]
        return tuple(sorted((*kept, *newer), key=lambda spell: spell.since))

    def marked(self, what: str) -> Trip:
        """This trip with one more thing asked or given."""
        return self.model_copy(update={"told": tuple(dict.fromkeys((*self.told, what)))})
