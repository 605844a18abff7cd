"""An f-number or an ISO for a shorter time: what each makes of it, and which costs less."""

from __future__ import annotations

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.meaning.compared import either_in
from bot.dialogue.meaning.said import Said
from bot.dialogue.solving import watch_text
from bot.dialogue.steps.asked.supposing import settings_now
from bot.dialogue.steps.walk import reasons
from bot.dialogue.steps.walk.taken import NEARLY_F
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from core.series import exact_f_number, exact_iso, f_number_label, iso_label


def answer(turn: Turn, said: Said) -> str | None:
    """Weigh the two against each other, from the brightness of now, without moving the walk.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message says; None when it offers no such choice.
    """
    either = either_in(said)
    now = None if either is None else settings_now(turn)
    camera = turn.camera
    if either is None or now is None or camera.sensor.fixed_f_number is not None:
        return None
    f_number, iso = exact_f_number(either.f_number, camera.dial), exact_iso(either.iso, camera.dial)
    values = {
        "f_number": f_number_label(f_number, camera.dial),
        "f_time": watch_text(now.shutter_s * (f_number / now.f_number) ** 2, camera),
        "f_iso": iso_label(now.iso, camera.dial),
        "iso": iso_label(iso, camera.dial),
        "iso_time": watch_text(now.shutter_s * now.iso / iso, camera),
        "iso_f": f_number_label(now.f_number, camera.dial),
    }
    near_m, focal_mm = reckoning.nearest_of(turn.facts), reckoning.focal_of(turn.facts)
    key = "either.plain"
    if near_m is not None and focal_mm is not None:
        depth = reckoning.depth_of(turn.facts, focal_mm)
        key = "either.open" if f_number >= depth.needed * NEARLY_F else "either.iso"
        values["near"] = measures.length(near_m, turn.units)
        values["needed"] = measures.plain(depth.needed)
        reasons.explain_depth(turn, turn.facts, focal_mm, depth)
    turn.say(Role.SETTINGS, key, **values)
    turn.say(Role.CHECK, "either.equal", **values)
    return either.rest
