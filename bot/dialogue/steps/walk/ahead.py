"""What can be said before all is known: the focal length, the depth, the times of the look."""

from __future__ import annotations

import math
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.aims import aim_of
from bot.dialogue.compose import Role
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.steps.walk import reasons
from bot.dialogue.steps.walk.lens_choice import form_of
from bot.dialogue.steps.walk.lens_kit import lens_names
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.series import f_number_label, shutter_label

#: Slots that the depth follows from, and those of the times; one of them has to be news.
_DEPTH: Final = frozenset({"nearest_m", "farthest_m", "focal_mm"})
_TIMES: Final = frozenset({"distance_m", "focal_mm", "water_speed_mps", "fall_height_m", "look"})


def say(turn: Turn, news: set[str]) -> None:
    """Answer from what a message told, though a question is still open.

    Args:
        turn: the answer under construction.
        news: names of the slots that the message filled.
    """
    if "fall_height_m" in news and turn.facts.distance_m is None:
        _where_to_stand(turn)
    if reckoning.focal_of(turn.facts) is None:
        _focal_length(turn)
        return
    if news & _DEPTH:
        _depth(turn)
    if news & _TIMES:
        _times(turn)


def _focal_length(turn: Turn) -> None:
    """The focal length that holds the whole fall, whichever lens it will be."""
    facts = turn.facts
    whole = not (reckoning.is_stream(facts) or facts.section or facts.section_height_m)
    if not whole or facts.fall_height_m is None or facts.distance_m is None:
        return
    if facts.lenses or facts.camera_format is None:
        return
    framing = reckoning.framing_of(facts, reckoning.nearest_of(facts))
    crop = reckoning.sensor_of(facts).crop_factor
    focal = measures.focal(framing.focal_mm, crop)
    turn.say(Role.SETTINGS, "ahead.focal", focal=focal, form=form_of(facts))
    side_mm = reckoning.vertical_side_mm(facts, reckoning.sensor_of(facts))
    reasons.explain_framing(turn, framing, side_mm, reckoning.nearest_of(facts))


#: Usual places to stand, in heights of the fall (common practice: 1 to 1.5).
NEAR_HEIGHTS: Final = 1.0
FAR_HEIGHTS: Final = 1.5


def _where_to_stand(turn: Turn) -> None:
    """At home a height alone tells from where, and with what, the whole fall fits."""
    facts, height_m = turn.facts, turn.facts.fall_height_m
    whole = not (reckoning.is_stream(facts) or facts.section or facts.section_height_m)
    if height_m is None or not whole or not planning.is_planning(turn):
        return
    crop = reckoning.sensor_of(facts).crop_factor
    near_m, far_m = height_m * NEAR_HEIGHTS, height_m * FAR_HEIGHTS
    near, far = (reckoning.framing_of(facts, None, distance_m=at_m) for at_m in (near_m, far_m))
    turn.say(
        Role.SETTINGS,
        "ahead.stand",
        height=measures.length(height_m, turn.units),
        near=measures.length(near_m, turn.units),
        far=measures.length(far_m, turn.units),
    )
    turn.say(
        Role.CHECK,
        "ahead.stand_focal",
        form=form_of(facts).capitalize(),
        short=measures.plain(near.level_mm * (crop if reckoning.is_phone(facts) else 1), 0),
        long=measures.focal(far.level_mm, crop),
        tilted=measures.focal(far.focal_mm, crop),
    )
    _say_lens(turn, near.level_mm, far.focal_mm)


def _say_lens(turn: Turn, shortest_mm: float, longest_mm: float) -> None:
    """Which lens of the kit reaches into these focal lengths, where lenses are known."""
    lenses = reckoning.lenses_of(turn.facts) if turn.facts.lenses else ()
    reach = [lens for lens in lenses if lens.shortest_mm <= longest_mm]
    fitting = [lens for lens in reach if lens.longest_mm >= shortest_mm]
    if fitting:
        turn.say(Role.CHECK, "ahead.stand_yours", lens=lens_names(fitting))
    elif lenses and not reach:
        turn.say(Role.CHECK, "ahead.stand_other")


def _depth(turn: Turn) -> None:
    """The f-number and the focus for the two ends of the depth."""
    facts = turn.facts
    focal_mm, near_m = reckoning.focal_of(facts), reckoning.nearest_of(facts)
    far_m = reckoning.farthest_of(facts)
    focus_m = reckoning.focus_of(facts)
    sensor = reckoning.sensor_of(facts)
    if focal_mm is None or near_m is None or far_m is None or focus_m is None:
        return
    depth = reckoning.depth_of(facts, focal_mm)
    if sensor.fixed_f_number is not None or depth.stack is not None:
        return
    turn.say(
        Role.SETTINGS,
        "ahead.depth",
        f_number=f_number_label(depth.exact, reckoning.dial_of(facts)),
        focus=measures.length(focus_m, turn.units),
        near=measures.length(near_m, turn.units),
        far=measures.length(far_m, turn.units),
    )
    reasons.explain_depth(turn, facts, focal_mm, depth)
    reasons.explain_focus(turn, facts)


def _times(turn: Turn) -> None:
    """From which time to which the water has the wished look, and the aim between."""
    facts = turn.facts
    if reckoning.is_phone(facts):
        return  # its time is not chosen
    if facts.distance_m is None or reckoning.speed_of(facts) is None:
        return
    flow = reckoning.flow_of(facts)
    look, dial = reckoning.wished_look(facts), reckoning.dial_of(facts)
    short_s, long_s = flow.times(look)
    aim_s = flow.time_for(aim_of(turn, look))
    key = "ahead.times"
    if not short_s:
        key = "ahead.times_up_to"
    elif math.isinf(long_s):
        key = "ahead.times_from"
    turn.say(
        Role.CHECK,
        key,
        look=TEXTS[f"look.{look.value}"].capitalize(),
        short=shutter_label(short_s, dial) if short_s else "",
        long=shutter_label(long_s, dial) if math.isfinite(long_s) else "",
        aim=shutter_label(aim_s, dial),
    )
    reasons.explain_share(turn, flow, aim_s, turn.camera)
    reasons.explain_band(turn, look)
