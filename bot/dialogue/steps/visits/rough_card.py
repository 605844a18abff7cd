"""Rough settings for a card before the trip: for the named light, with one's own filters."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Part, Role
from bot.dialogue.solving import time_text, watch_text
from bot.dialogue.steps.walk import base
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import POLARISER_STOPS, Camera
from core.exposure import Settings
from core.light import LIGHTS, metered_level
from core.series import f_number_label, iso_label

#: What a card is reckoned for while no light is named, and what a light canopy leaves of it.
_USUAL: Final = "overcast"
_UNDER_TREES: Final = LIGHTS["light canopy"].ev100
_TREES_TAKE: Final = LIGHTS[_USUAL].ev100 - _UNDER_TREES
#: Lights of a whole sky; of clouded ones trees take their part, others are under something.
OF_THE_SKY: Final = frozenset({"bright cloud", "overcast", "hazy sun", "full sun"})
_CLOUDED: Final = frozenset({"bright cloud", "overcast"})
#: Stops of the grey filter that most people carry first (common practice).
_ND_STOPS: Final = 3.0
#: Most filters that a card names (own rule: one line).
_MOST_FILTERS: Final = 3


def parts(turn: Turn, light: str | None = None) -> tuple[Part, ...]:
    """Rough settings: in the open, with each filter, under trees; and the time of the look.

    Args:
        turn: the answer under construction.
        light: the light that was asked about, where one was; else what is told or forecast.
    """
    now = base.standing(turn)
    wanted, camera = now.wanted, now.camera
    named = light or turn.facts.light or turn.trip.forecast or _USUAL
    ev100 = LIGHTS[named].ev100
    trees = ev100 - _TREES_TAKE if named in _CLOUDED else min(ev100, _UNDER_TREES)
    rough = {
        "light": TEXTS[f"known.light.{named}"],
        "f_number": f_number_label(wanted.f_number, camera.dial),
        "iso": iso_label(wanted.iso, camera.dial),
        "open": right_time(wanted, ev100, camera),
        "filters": "".join(f", {time}" for time in _with_filters(turn, wanted, ev100, camera)),
        "trees": right_time(wanted, trees, camera),
    }
    look = TEXTS[f"look.{reckoning.wished_look(turn.facts).value}"]
    label = time_text(wanted.shutter_s, camera)
    aim = Part(Role.CHECK, "asked.card_look", {"look": look, "time": label})
    key = "asked.card" if camera.sensor.fixed_f_number is None else "asked.card_phone"
    return Part(Role.SETTINGS, key, rough), aim


def _with_filters(turn: Turn, wanted: Settings, ev100: float, camera: Camera) -> Iterator[str]:
    """The time with each filter of the kit; with the usual ND where none is known."""
    facts = turn.facts
    if facts.has_polariser:
        time = right_time(wanted, ev100, camera, POLARISER_STOPS)
        yield TEXTS["card.with_polariser"].format(time=time)
    owned = (_ND_STOPS,) if facts.nd_stops is None else sorted(facts.nd_stops)
    for stops in owned[:_MOST_FILTERS]:
        time = right_time(wanted, ev100, camera, stops)
        yield TEXTS["card.with_nd"].format(time=time, stops=measures.plain(stops))


def right_time(settings: Settings, ev100: float, camera: Camera, filter_stops: float = 0.0) -> str:
    """The marked time that is right on the meter in a light, at these other settings."""
    over = metered_level(settings, ev100, filter_stops)
    return watch_text(settings.shutter_s * 2**-over, camera)
