"""Every topic beside the walk with its answer: one table for words and for meaning."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.steps.asked import (
    asides,
    count_answers,
    filter_answers,
    group,
    handy_answers,
    one_number,
    permits,
    terms,
    trade_answers,
    trip_answers,
    variable_answers,
)
from bot.dialogue.steps.asked.trade_answers import plainly
from bot.dialogue.steps.home import at_home
from bot.dialogue.steps.visits import note_home, plan
from bot.dialogue.steps.walk import diagnosis, now
from bot.dialogue.turn import Turn

#: An answer takes the message as it was read, for what it names.
Answer = Callable[[Turn, str], None]


def _of_itself(say: Callable[[Turn], None]) -> Answer:
    """An answer that needs no words of the message."""

    def said(turn: Turn, text: str) -> None:
        del text
        say(turn)

    return said


def _iso(turn: Turn, text: str) -> None:
    """Which ISO; beside grain, how much of it an ISO makes."""
    if re.search(r"\b(?:grain|nois)", text.casefold()):
        trip_answers.say_grain(turn, text)
    else:
        trade_answers.say_iso(turn, text)


def _how_much_darker(turn: Turn, text: str) -> None:
    """By how much; a phone has no stops to count, but a finger on the white."""
    on_phone = reckoning.is_phone(turn.facts)
    plainly("phone.darker" if on_phone else "asked.how_much_darker")(turn, text)


def _find_setting(turn: Turn, text: str) -> None:
    """Where a setting is on cameras, or on a phone."""
    on_phone = reckoning.is_phone(turn.facts)
    plainly("asked.find_setting_phone" if on_phone else "asked.find_setting")(turn, text)


def _mode(turn: Turn, text: str) -> None:
    """How a camera is set by hand; a phone has no dial."""
    on_phone = reckoning.is_phone(turn.facts)
    plainly("asked.find_setting_phone" if on_phone else "asked.mode")(turn, text)


def _clone_sky(turn: Turn, text: str) -> None:
    """White sky in a picture that is made; at the water it is left out of the next one.

    Who speaks of retouching asks about that, wherever they are.
    """
    retouches = re.search(r"\b(?:clon|retouch|stamp|heal|paint)", text.casefold())
    walking = turn.context.conversation.walk is not None and not turn.is_at_home
    at_water = walking and not retouches
    plainly("asked.sky" if at_water else "asked.clone_sky")(turn, text)


def _crop(turn: Turn, text: str) -> None:
    """Whether to crop; where moving is the other way, that first."""
    moves = re.search(
        r"(?<!can't )(?<!cannot )(?<!can not )(?<!cant )\b(?:move|zoom|step|shift)\b",
        text.casefold(),
    )
    plainly("asked.crop_or_move" if moves else "asked.crop")(turn, text)


TOPICS: Final[Mapping[str, Answer]] = {
    **{f"term.{name}": plainly(f"term.{name}") for name in terms.NAMES},
    "term.diffraction": trade_answers.say_diffraction,
    "silky_time": trade_answers.say_time,
    "just_white": trade_answers.say_just_white,
    "too_long": trade_answers.say_time,
    "need_nd": filter_answers.say_nd,
    "noon": filter_answers.say_noon,
    "polariser_first": filter_answers.say_first,
    "polariser_stops": filter_answers.say_polariser_stops,
    "polariser_turn": variable_answers.say_ring,
    "polariser_left": filter_answers.say_polariser_left,
    "both_filters": filter_answers.say_both_filters,
    "f_number": trade_answers.say_f_number,
    "why_not_f22": trade_answers.say_why_not_f22,
    "focus_where": trade_answers.say_focus,
    "focus_on_water": handy_answers.say_focus_on_water,
    "front_soft": _of_itself(diagnosis.soft_depth),
    "tripod_blur": _of_itself(diagnosis.soft_all),
    "iso": trade_answers.say_iso,
    "leaves": handy_answers.say_leaves,
    "phone_darker": plainly("phone.darker"),
    "spray": plainly("symptom.spots"),
    "spray_again": plainly("symptom.spots_again"),
    "raw": plainly("asked.raw"),
    "white_balance": plainly("asked.white_balance"),
    "histogram": plainly("asked.histogram"),
    "meter": plainly("asked.meter"),
    "by_hand": trade_answers.say_by_hand,
    "phone": plainly("asked.phone"),
    "lens": trade_answers.say_lens,
    "best_time": plainly("asked.best_time"),
    "sky": plainly("asked.sky"),
    "edges": plainly("answer.edges"),
    "tilted": plainly("answer.tilted"),
    "one_frame": trade_answers.say_one_frame,
    "too_wide": _of_itself(diagnosis.too_small),
    "tilted_up": _of_itself(diagnosis.leaning),
    "eye_height": plainly("answer.eye_height"),
    "carrying": plainly("answer.carrying"),
    "looking_up": plainly("answer.looking_up"),
    "time_forgotten": trade_answers.say_turn_back,
    "stay": trade_answers.say_stay,
    "permit": permits.say,
    "choose": plainly("asked.choose"),
    "wading": plainly("answer.wading"),
    "climb": plainly("answer.climb"),
    "hunting": plainly("answer.hunting"),
    "stabiliser": plainly("asked.stabiliser"),
    "form": plainly("asked.form"),
    "mode": _mode,
    "pack": trip_answers.say_pack,
    "tell_home": note_home.say,
    "path_open": plainly("asked.path_open"),
    "rough_card": trip_answers.say_card,
    "shade_when": one_number.say_shade,
    "filter_order": plainly("asked.filter_order"),
    "timer": plainly("asked.timer"),
    "polariser_seen": plainly("asked.polariser_seen"),
    "join_frames": plainly("asked.join"),
    "battery_cold": plainly("asked.battery"),
    "why_time": trip_answers.say_why_time,
    "mixed_group": group.say_all,
    "grain": trip_answers.say_grain,
    "one_channel": trip_answers.say_channel,
    "next_time": trip_answers.say_next_time,
    "copy_card": plainly("asked.copy"),
    "no_wait": trip_answers.say_no_wait,
    "planning": _of_itself(plan.tell),
    "begin": _of_itself(now.tell),
    "review": _of_itself(at_home.begin),
    "support": plainly("asked.support"),
    "fogged": plainly("cause.fogged_glass"),
    "recover_white": plainly("asked.recover_white"),
    "gardening": plainly("asked.gardening"),
    "people_in_frame": handy_answers.say_people,
    "keep_back": plainly("asked.keep_back"),
    "dry_gear": plainly("asked.dry_gear"),
    "foreground": plainly("asked.foreground"),
    "lip_word": plainly("asked.lip_word"),
    "how_much_darker": _how_much_darker,
    "rain_now": plainly("asked.rain_now"),
    "move_nearer": plainly("lens.go_back"),
    "rising_signs": plainly("asked.rising_signs"),
    "rounds": count_answers.say_rounds,
    "how_many_frames": count_answers.say_frames,
    "last_settings": count_answers.say_last_settings,
    "warning_where": count_answers.say_warning_where,
    "walk_slippery": handy_answers.say_slippery,
    "film": plainly("asked.film"),
    "reciprocity": plainly("asked.reciprocity"),
    "phone_lens": plainly("asked.phone_lens"),
    "nd_cast": plainly("cause.nd_cast"),
    "why_look": plainly("asked.why_look"),
    "talk.bye": _of_itself(asides.part),
    "talk.wait": _of_itself(asides.wait),
    "talk.thanks": plainly("thanks"),
    "talk.greeting": plainly("hello"),
    "talk.robot": plainly("talk.robot"),
    "talk.insult": plainly("talk.insult"),
    "talk.rescue": plainly("talk.rescue"),
    "talk.weather": plainly("talk.weather"),
    "talk.other": trip_answers.say_other,
    "tired": plainly("asked.tired"),
    "lift_rock": plainly("asked.lift_rock"),
    "cannot_move": plainly("asked.cannot_move"),
    "crop": _crop,
    "drone": plainly("asked.drone"),
    "raw_means": plainly("asked.raw_means"),
    "exercise": plainly("asked.exercise"),
    "keep_few": plainly("asked.keep_few"),
    "head_count": plainly("asked.head_count"),
    "group_review": trip_answers.say_group_review,
    "after_rain": plainly("asked.after_rain"),
    "polariser": filter_answers.say_polariser,
    "iso_or_grain": _iso,
    "come_back": plainly("asked.come_back"),
    "find_setting": _find_setting,
    "histogram_trust": plainly("asked.histogram_trust"),
    "save_drops": plainly("asked.save_drops"),
    "wobbly": plainly("asked.wobbly"),
    "sinking": plainly("asked.sinking"),
    "print_big": plainly("asked.print_big"),
    "clone_sky": _clone_sky,
    "bracket_or_not": plainly("asked.bracket_or_not"),
    "briefing": plainly("asked.briefing"),
    "sharp_check": plainly("asked.sharp_check"),
    "meter_after": plainly("asked.meter_after"),
    "rejects": plainly("asked.rejects"),
    "stabiliser_seen": plainly("asked.stabiliser_seen"),
    "which_filter": filter_answers.say_which,
    "form_means": plainly("asked.form_means"),
    "variable_turn": variable_answers.say_turn,
    "variable_cross": plainly("asked.variable_cross"),
    "variable_polariser": plainly("asked.variable_polariser"),
    "no_polariser": plainly("asked.no_polariser"),
    "wait_cloud": plainly("asked.wait_cloud"),
    "eddy": plainly("asked.eddy"),
    "white_or_long": handy_answers.say_white_or_long,
    "after_flood": handy_answers.say_after_flood,
    "leave_gear": handy_answers.say_leave_gear,
    "can_do": plainly("asked.can_do"),
    "wipe_with": plainly("asked.wipe"),
    "in_the_way": plainly("asked.in_the_way"),
    "log_line": handy_answers.say_log_line,
}

#: Answers that put a question or move the walk stand alone.
MOVING: Final = frozenset(
    {"leaves", "begin", "planning", "review", "tell_home", "time_forgotten", "mixed_group"}
    | {"rough_card", "next_time"}
)
