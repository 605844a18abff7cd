"""What is said on a topic of the trade: one short line with the person's own numbers."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.aims import aim_of
from bot.dialogue.compose import Role
from bot.dialogue.reading import read
from bot.dialogue.steps.walk import arrive, base, reasons
from bot.dialogue.steps.walk.taken import NEARLY_F, least_label
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.series import (
    f_number_label,
    iso_label,
    nearest,
    shutter_label,
    time_marks,
)
from core.water import Look

#: The longest time that is held braced [s] (common practice: 1/15).
_BRACED_S: Final = 2**-4
#: Answers that rest on the depth of the frame; the others on diffraction.
_OF_DEPTH: Final = frozenset(
    {"asked.f_number", "asked.f_number_plain", "asked.f_number_stack"}
    | {"asked.f_number_open", "asked.f_number_blur"}
)
#: From this factor above what the depth needs on, something else asks for it (own rule: a stop).
_FAR_F: Final = 2**0.5
#: The smallest opening that is asked about: f/22, exact.
_SMALLEST_F: Final = 2**4.5
#: Signs that a flood or a thunderstorm is near (common practice).
_AT_ONCE: Final = re.compile(
    r"\b(?:ris(?:e|es|ing)|rose|brown|muddy|flood\w*|surge|driftwood|debris|roar\w*|thunder\w*"
    r"|lightning|storm\w*|downpour|cloudburst)\b"
)


#: What a question for a time may call the silky look.
_SILKY: Final = re.compile(r"\b(?:smooth|veil|flowing|creamy|blur(?:ry|red)?|soft) ?\w*")


def plainly(key: str) -> Callable[[Turn, str], None]:
    """An answer that is one text."""

    def say(turn: Turn, clause: str) -> None:
        del clause
        turn.say(Role.SETTINGS, key)

    return say


# answers with the person's own numbers


def say_iso(turn: Turn, clause: str) -> None:
    """Which ISO: the lowest, and why it is raised where it is."""
    del clause
    now = base.standing(turn)
    dial, low = now.camera.dial, now.camera.base_iso
    raised = now.settings.iso > low * 1.01
    turn.say(
        Role.SETTINGS,
        "asked.iso_raised" if raised else "asked.iso",
        iso=iso_label(now.settings.iso, dial),
        base=iso_label(low, dial),
        time=shutter_label(now.settings.shutter_s, dial),
    )


def say_f_number(turn: Turn, clause: str) -> None:
    """Which f-number: what the depth needs, else the best of the format."""
    known = turn.facts.nearest_m is not None and reckoning.focal_of(turn.facts) is not None
    key = _of_the_depth(turn) if known else "asked.f_number_plain"
    small = re.search(r"\bf ?/? ?(?:22|32)\b", clause.casefold())
    _say_aperture(turn, "asked.why_not_f22" if small else key)


def _of_the_depth(turn: Turn) -> str:
    """What the f-number that stands has to do with the depth: it holds it, by far or not."""
    now = base.standing(turn)
    f_number, needed = now.settings.f_number, now.depth.needed
    if f_number < needed * NEARLY_F:
        return "asked.f_number_open" if now.depth.stack is None else "asked.f_number_stack"
    return "asked.f_number_blur" if f_number > needed * _FAR_F else "asked.f_number"


def say_why_not_f22(turn: Turn, clause: str) -> None:
    """What the smallest opening costs on this format."""
    del clause
    _say_aperture(turn, "asked.why_not_f22")


def say_diffraction(turn: Turn, clause: str) -> None:
    """What diffraction is, and from where on it softens on this format."""
    del clause
    _say_aperture(turn, "term.diffraction", fixed="term.diffraction_phone")


def _say_aperture(turn: Turn, key: str, *, fixed: str = "asked.f_number_phone") -> None:
    now = base.standing(turn)
    sensor, dial = now.camera.sensor, now.camera.dial
    if sensor.fixed_f_number is not None:
        turn.say(Role.SETTINGS, fixed)
        return
    turn.say(
        Role.SETTINGS,
        key,
        f_number=f_number_label(now.settings.f_number, dial),
        needed=measures.plain(now.depth.needed),
        least=least_label(max(now.depth.needed * NEARLY_F, sensor.best_f[0]), dial),
        frames=str(now.depth.stack or 1),
        better=f_number_label(now.depth.exact, dial),
        low=f_number_label(sensor.best_f[0], dial),
        high=f_number_label(sensor.best_f[1], dial),
        limit=f_number_label(sensor.softening_f, dial),
    )
    if key in _OF_DEPTH and reckoning.nearest_of(turn.facts) is not None:
        focal_mm = reckoning.focal_of(turn.facts) or reckoning.usual_focal_mm(turn.facts)
        reasons.explain_depth(turn, turn.facts, focal_mm, now.depth)
    elif key not in _OF_DEPTH:
        reasons.explain_diffraction(turn, _SMALLEST_F, sensor.softening_f, now.settings.f_number)


def say_time(turn: Turn, clause: str) -> None:
    """Which time: the band of the look that is asked for, else wished."""
    now = base.standing(turn)
    dial = now.camera.dial
    named = read(clause).look or ("silky" if _SILKY.search(clause.casefold()) else None)
    look = Look(named) if named else reckoning.wished_look(turn.facts)
    shortest_s, longest_s = now.flow.times(look)
    marks = time_marks(dial)
    shortest_s = max(shortest_s, now.camera.shortest_s)
    begin_s = min(max(now.flow.time_for(aim_of(turn, look)), shortest_s), now.camera.longest_s)
    turn.say(
        Role.SETTINGS,
        _time_key(turn, longest_s > now.camera.longest_s),
        look=TEXTS[f"look.{look.value}"].capitalize(),
        shortest=nearest(marks, shortest_s).label,
        longest=nearest(marks, min(longest_s, now.camera.longest_s)).label,
        time=nearest(marks, begin_s).label,
    )
    reasons.explain_share(turn, now.flow, begin_s, now.camera)


def _time_key(turn: Turn, is_long: bool) -> str:
    """The text of a look's times: on a phone they are made by a mode, not set."""
    if reckoning.is_phone(turn.facts):
        return "asked.time_phone"
    return "asked.time_long" if is_long else "asked.time"


def say_focus(turn: Turn, clause: str) -> None:
    """Where to focus, in metres or feet where the nearest thing is known."""
    del clause
    focus_m = reckoning.focus_of(turn.facts)
    if reckoning.is_phone(turn.facts):
        turn.say(Role.SETTINGS, "asked.focus_phone")
        return
    given = turn.walk.given
    if turn.facts.nearest_m is None and given is not None and given.focus_m is not None:
        focus = measures.length(given.focus_m, turn.units)
        turn.say(Role.SETTINGS, "asked.focus", focus=focus)
        return
    if turn.facts.nearest_m is None or focus_m is None:
        turn.say(Role.SETTINGS, "asked.focus_plain")
        return
    turn.say(Role.SETTINGS, "asked.focus", focus=measures.length(focus_m, turn.units))
    reasons.explain_focus(turn, turn.facts)


#: Somebody's phone in a question, whoever asks it.
_PHONE: Final = re.compile(r"\b(?:(?:cell|smart)?phones?|mobiles?|handsets?)\b")


def say_by_hand(turn: Turn, clause: str) -> None:
    """Whether a time can be held by hand; a phone makes long times of many frames."""
    if reckoning.is_phone(turn.facts) or _PHONE.search(clause.casefold()):
        turn.say(Role.SETTINGS, "asked.phone_by_hand")
        return
    now = base.standing(turn)
    key = "asked.tripod" if "need" in clause.casefold() else "asked.by_hand"
    time_s = reckoning.exact_settings(read(clause))[1] or now.settings.shutter_s
    short = time_s <= _BRACED_S * 1.01
    turn.say(
        Role.SETTINGS,
        "asked.by_hand_short" if short else key,
        time=shutter_label(time_s, now.camera.dial),
    )


#: Who asks so wants no whole fall.
_OF_PART: Final = re.compile(r"\b(?:sections?|part|detail|details|piece|bit of (?:it|the fall))\b")


def say_lens(turn: Turn, clause: str) -> None:
    """Which focal length holds the whole fall from there, or what sections take."""
    facts = turn.facts
    of_part = _OF_PART.search(clause.casefold()) is not None
    if of_part or facts.fall_height_m is None or facts.distance_m is None:
        turn.say(Role.SETTINGS, "asked.lens_plain")
        return
    framing = reckoning.framing_of(facts, reckoning.nearest_of(facts))
    crop = reckoning.sensor_of(facts).crop_factor
    turn.say(Role.SETTINGS, "asked.lens", focal=measures.focal(framing.focal_mm, crop))
    side_mm = reckoning.vertical_side_mm(facts, reckoning.sensor_of(facts))
    reasons.explain_framing(turn, framing, side_mm, reckoning.nearest_of(facts))


def say_turn_back(turn: Turn, clause: str) -> None:
    """When to turn back: at once for some signs; else the time, or what is needed to reckon it."""
    if _AT_ONCE.search(clause):
        turn.say(Role.SETTINGS, "answer.turn_back_at_once")
    else:
        arrive.tell_or_offer(turn)


def say_stay(turn: Turn, clause: str) -> None:
    """How long to stay: to the turn-back time, where the way out is known."""
    del clause
    if not arrive.way_out_told(turn):
        turn.say(Role.SETTINGS, "asked.stay")


def say_just_white(turn: Turn, text: str) -> None:
    """White without texture: the frame's own time, and the next one to try."""
    del text
    given = turn.walk.given
    if given is None:
        turn.say(Role.SETTINGS, "answer.just_white")
        return
    now = base.standing(turn)
    less_s = given.shutter_s * 2 ** (-2 / 3)
    turn.say(
        Role.SETTINGS,
        "answer.just_white_now",
        time=shutter_label(given.shutter_s, now.camera.dial),
        less=nearest(time_marks(now.camera.dial), less_s).label,
        share=measures.crossed(now.flow.share(given.shutter_s)),
    )
    reasons.explain_share(turn, now.flow, given.shutter_s, now.camera)


def say_one_frame(turn: Turn, text: str) -> None:
    """One frame only: the ladder around the time that is set."""
    del text
    now = base.standing(turn)
    marks = time_marks(now.camera.dial)
    time_s = now.settings.shutter_s
    turn.say(
        Role.SETTINGS,
        "answer.one_frame",
        shorter=nearest(marks, time_s / 2).label,
        time=nearest(marks, time_s).label,
        longer=nearest(marks, min(time_s * 2, now.camera.longest_s)).label,
    )
    turn.reason("why.ladder")


def say_iso_raised(turn: Turn, text: str) -> None:
    """A raised ISO: back to the lowest."""
    del text
    given, camera = turn.walk.given, turn.camera
    iso = reckoning.exact_settings(turn.facts)[2] or (given.iso if given else camera.base_iso)
    turn.say(
        Role.SETTINGS,
        "cause.iso_raised" if iso > camera.base_iso * 1.01 else "cause.iso_raised_plain",
        base=iso_label(camera.base_iso, camera.dial),
        iso=iso_label(iso, camera.dial),
    )
