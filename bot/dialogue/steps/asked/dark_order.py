"""What to change first where light is short: aperture, polariser, ISO, each with its numbers."""

from __future__ import annotations

import math
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.meaning.dark_order import told_beside
from bot.dialogue.meaning.said import Said
from bot.dialogue.solving import watch_text
from bot.dialogue.steps.walk import base
from bot.dialogue.steps.walk.taken import NEARLY_F
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.camera import POLARISER_STOPS
from core.series import at_least, f_number_marks, iso_label

#: Up to this grain is little (common practice).
_CLEAN_ISO: Final = 800.0


def answer(turn: Turn, said: Said) -> str | None:
    """Say the order, from the settings of now.

    Args:
        turn: the answer under construction; without settings there is nothing to begin with.
        said: the message.

    Returns:
        What else the message says; None when it asks nothing of the kind.
    """
    given = turn.walk.given
    rest = None if given is None else told_beside(said)
    if given is None or rest is None:
        return None
    say(turn, given)
    return rest.english


def say(turn: Turn, given: GivenSettings) -> None:
    """Say the order and what each gives: first what costs nothing, the grain last.

    Args:
        turn: the answer under construction.
        given: the settings of which the time is too long.
    """
    time_s = _open(turn, given)
    camera = turn.camera
    if given.polariser_on:
        time_s /= 2**POLARISER_STOPS
        turn.say(
            Role.SETTINGS,
            "dark_order.polariser",
            stops=measures.plain(POLARISER_STOPS),
            time=watch_text(time_s, camera),
        )
    aim_s = base.standing(turn).wanted.shutter_s
    wanted = given.iso * max(time_s / aim_s, 2.0)
    iso = max(min(2 ** round(math.log2(wanted / 100)) * 100.0, _CLEAN_ISO), given.iso * 2)
    turn.say(
        Role.SETTINGS,
        "dark_order.iso",
        iso=iso_label(iso, camera.dial),
        time=watch_text(time_s * given.iso / iso, camera),
        most=iso_label(_CLEAN_ISO, camera.dial),
    )
    turn.reason("why.practice")


def _open(turn: Turn, given: GivenSettings) -> float:
    """Say how far the aperture opens while the depth holds; the time there [s]."""
    now = base.standing(turn)
    camera, sensor = now.camera, now.camera.sensor
    if sensor.fixed_f_number is not None:
        return given.shutter_s
    least = max(now.depth.needed * NEARLY_F, sensor.best_f[0] * NEARLY_F)
    mark = at_least(f_number_marks(camera.dial), least)
    if mark.exact >= given.f_number * NEARLY_F:
        turn.say(Role.SETTINGS, "dark_order.kept")
        return given.shutter_s
    time_s = given.shutter_s * (mark.exact / given.f_number) ** 2
    turn.say(
        Role.SETTINGS,
        "dark_order.open",
        f_number=mark.label,
        stops=measures.stops(2 * math.log2(given.f_number / mark.exact)),
        time=watch_text(time_s, camera),
    )
    return time_s
