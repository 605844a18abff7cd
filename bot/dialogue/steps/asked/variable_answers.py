"""What is said on a variable ND: how far it is turned, for the wished time in the light."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.reading import read
from bot.dialogue.reading.inventory import ND
from bot.dialogue.steps.asked.filter_answers import light_named, names_no_polariser
from bot.dialogue.steps.walk import base, reasons
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.exposure import Settings
from core.light import LIGHTS, metered_level
from core.series import f_number_label, iso_label, shutter_label

_ND: Final = re.compile(rf"\b(?:{ND})\b|\bgr[ae]y\b|\bvari\w*")
#: At its weakest a variable ND still takes this much or more [stops] (common practice: 1 to 2).
_LEAST_STOPS: Final = 1.0
#: Beyond it the dark cross begins [stops] (common practice: 5 to 6 of what is printed on it).
_MOST_STOPS: Final = 6.0


def is_meant(text: str) -> bool:
    """Whether a filter that is turned is a variable ND: by its name, or for a look of the water.

    Args:
        text: the message in English.
    """
    by_name = _ND.search(text.casefold()) is not None
    return names_no_polariser(text) and (by_name or read(text).look is not None)


def say_ring(turn: Turn, text: str) -> None:
    """How a filter's ring is turned: the polariser's, but where a variable ND is meant."""
    if is_meant(text):
        say_turn(turn, text)
    else:
        turn.say(Role.SETTINGS, "asked.polariser_turn")


def say_turn(turn: Turn, text: str) -> None:
    """How far to turn it: until the meter agrees with the wished time, off its end."""
    named, now = light_named(turn, text), base.standing(turn)
    light = LIGHTS.get(named)
    if light is None or now.camera.sensor.fixed_f_number is not None:
        turn.say(Role.SETTINGS, "asked.variable_plain")
        return
    wished = Settings(now.settings.f_number, now.wanted.shutter_s, now.wanted.iso)
    over = metered_level(wished, light.ev100)
    turn.say(
        Role.SETTINGS,
        _key(over),
        f_number=f_number_label(wished.f_number, now.camera.dial),
        iso=iso_label(wished.iso, now.camera.dial),
        time=shutter_label(wished.shutter_s, now.camera.dial),
        light=TEXTS[f"light.{named}"],
        stops=measures.stops(over),
    )
    reasons.explain_level(turn, wished, named, 0.0)


def _key(over: float) -> str:
    """Whether the wished time is within what it takes.

    Args:
        over: how much too bright that time is without it [stops].
    """
    if over < _LEAST_STOPS:
        return "asked.variable_weak"
    return "asked.variable" if over <= _MOST_STOPS else "asked.variable_strong"
