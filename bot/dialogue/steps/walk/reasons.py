"""What an answer rests on: share, depth, angle of view, and what was assumed."""

from __future__ import annotations

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.flowing import Flowing
from bot.dialogue.reckoning import Assumed
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import Camera
from core.f_number import FNumberChoice
from core.framing import Framing
from core.series import Dial, f_number_label, nearest, time_marks
from core.water import Look, band_of, coverage_m


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


def explain_depth(turn: Turn, depth: FNumberChoice, dial: Dial) -> None:
    """Why this f-number: what the depth needs, and where diffraction blurs as much."""
    turn.reason(
        "why.f_number",
        best=measures.plain(depth.best),
        needed=measures.plain(depth.needed),
        chosen=f_number_label(depth.exact, dial),
    )


def explain_band(turn: Turn, look: Look) -> None:
    """Why this look: its shares."""
    named = TEXTS[f"look.{look.value}"].capitalize()
    turn.reason("why.band", look=named, band=measures.band(*band_of(look)))


def explain_framing(turn: Turn, framing: Framing, side_mm: float) -> None:
    """Why this focal length: the angle that the fall and what lies before it take."""
    facts, units = turn.facts, turn.units
    turn.reason(
        "why.framing",
        height=measures.length(facts.fall_height_m or 0.0, units),
        distance=measures.length(facts.distance_m or 0.0, units),
        eye=measures.length(reckoning.camera_height_of(facts), units),
        needed=measures.degrees(framing.needed_deg),
        side=measures.plain(side_mm),
        tight=measures.plain(framing.longest_mm),
        spare=measures.plain(framing.focal_mm),
    )


def explain_coverage(turn: Turn, side_mm: float, focal_mm: float) -> None:
    """Why so much of the water is in the frame."""
    distance_m = turn.facts.distance_m or 1.0
    turn.reason(
        "why.coverage",
        side=measures.plain(side_mm),
        distance=measures.length(distance_m, turn.units),
        focal=measures.plain(focal_mm),
        coverage=measures.length(float(coverage_m(distance_m, side_mm, focal_mm)), turn.units),
    )


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
