"""Which lens of the kit is on, and which of its focal lengths comes nearest."""

from __future__ import annotations

from bot.dialogue import reckoning
from bot.dialogue.facts import LensFact
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import Lens
from core.framing import Framing


def best_focal(lenses: list[Lens], framing: Framing) -> float | None:
    """The focal length to set: with spare, else as near to it as a zoom goes, else wider.

    None if the kit has none.
    """
    if not lenses or any(lens.covers(framing.focal_mm, 0.0) for lens in lenses):
        return framing.focal_mm
    just = [lens.shortest_mm for lens in lenses if lens.covers(framing.longest_mm, 0.0)]
    if just:
        return min(just)
    wider = [lens.longest_mm for lens in lenses if lens.longest_mm <= framing.focal_mm]
    if wider:
        return max(wider)
    tight = [lens.shortest_mm for lens in lenses if lens.shortest_mm <= framing.longest_mm]
    return min(tight) if tight else None


def name_of(lens: LensFact) -> str:
    """A lens by its ends, as the walk remembers which one is on."""
    return f"{lens.shortest_mm:g}-{lens.longest_mm:g}"


def lenses_on(turn: Turn) -> list[Lens]:
    """The lens that is on, as the person said; all of the kit while they have not."""
    facts, on = turn.facts, turn.walk.checks.get("lens")
    used = tuple(lens for lens in facts.lenses if name_of(lens) == on)
    return reckoning.lenses_of(facts.model_copy(update={"lenses": used}) if used else facts)


def lens_names(lenses: list[Lens]) -> str:
    """Lenses as people write them: `16-35 or 24-105`."""
    names = [
        f"{measures.plain(lens.shortest_mm)}-{measures.plain(lens.longest_mm)}"
        if lens.is_zoom
        else f"{measures.plain(lens.shortest_mm)} mm"
        for lens in lenses
    ]
    return measures.listing(names, TEXTS["or"])
