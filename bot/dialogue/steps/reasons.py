"""What an answer rests on: the share behind a time, and what was assumed."""

from __future__ import annotations

from bot.dialogue.compose import Role
from bot.dialogue.reckoning import Assumed, Flowing
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import Camera
from core.series import nearest, time_marks


def explain_share(turn: Turn, flow: Flowing, shutter_s: float, camera: Camera) -> None:
    """Why this time: speed, coverage and share."""
    units = turn.units
    marks = [nearest(time_marks(camera.dial), shutter_s).label]
    turn.reason(
        "why.share",
        speed=measures.speed(flow.speed_mps, units),
        coverage=measures.length(flow.coverage_m, units),
        time=marks[0],
        share=measures.percent(flow.share(shutter_s)),
    )
    turn.reason(f"why.speed.{flow.how}", speed=measures.speed(flow.speed_mps, units))


def tell_assumed(turn: Turn, assumed: Assumed, camera: Camera) -> None:
    """Name the assumptions behind an answer, in one line."""
    named = [
        TEXTS[f"assumed.{key}"].format(
            **{
                name: (
                    measures.focal(value, camera.sensor.crop_factor)
                    if name == "focal_mm"
                    else measures.speed(value, turn.units)
                    if name == "speed_mps"
                    else measures.length(value, turn.units)
                )
                for name, value in numbers.items()
            }
        )
        for key, numbers in assumed.keys.items()
    ]
    if named:
        turn.say(Role.ASSUMPTION, "assumed", list=measures.listing(named, TEXTS["and"]))
