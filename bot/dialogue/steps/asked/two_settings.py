"""Two settings weighed against each other from where the walk stands, without moving it."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.compared import Weighed, weighed_in
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading import read
from bot.dialogue.reckoning import Assumed
from bot.dialogue.steps.asked.as_bright import with_time
from bot.dialogue.steps.asked.supposing import settings_now
from bot.dialogue.steps.asked.told_around import rest_of, scene_in
from bot.dialogue.steps.walk import reasons
from bot.dialogue.steps.walk.taken import NEARLY_F
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.blur import airy_diameter_um
from core.series import (
    Dial,
    exact_f_number,
    exact_iso,
    exact_shutter_s,
    f_number_label,
    iso_label,
    nearest,
    shutter_label,
    time_marks,
)
from core.water import coverage_m, look_of

_Rows = Callable[[Turn, Facts, GivenSettings | None, Sequence[float]], None]


def answer(turn: Turn, said: Said) -> str | None:
    """Weigh the values of a message.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message tells and asks; None when it weighs nothing.
    """
    weighed = weighed_in(said)
    slot = None if weighed is None else _slot(turn, weighed, said)
    if weighed is None or slot is None:
        return None
    rest = rest_of(weighed.rest)
    facts = turn.facts.updated(scene_in(read(rest, units=turn.units)))
    base = _base(turn, weighed)
    values = _against_now(slot, weighed.values, facts, base)
    if len(values) < _TWO:
        turn.say(Role.SETTINGS, "what_if.nothing")
        return rest
    _SAY[slot](turn, facts, base, values)
    return rest


_TWO: Final = 2


def _slot(turn: Turn, weighed: Weighed, said: Said) -> str | None:
    """Which dial the values are of; bare numbers are lenses where the person has them."""
    if weighed.slot:
        return weighed.slot
    lenses = turn.facts.lenses + read(said.english, units=turn.units).lenses
    ends = {end for lens in lenses for end in (lens.shortest_mm, lens.longest_mm)}
    return "focal_mm" if set(weighed.values) <= ends else None


def _base(turn: Turn, weighed: Weighed) -> GivenSettings | None:
    """What is set now, with the settings that the message names beside."""
    base, dial = settings_now(turn), turn.camera.dial
    named = weighed.others
    if base is None and "shutter_s" in named:
        f_number = named.get("f_number", weighed.values[0] if weighed.slot == "f_number" else 0.0)
        base = GivenSettings(
            f_number=exact_f_number(f_number or turn.camera.sensor.best_f[0], dial),
            shutter_s=exact_shutter_s(named["shutter_s"], dial),
            iso=turn.camera.base_iso,
        )
    if base is None:
        return None
    exact = {slot: _exact(slot, value, dial) for slot, value in named.items() if slot in _DIALS}
    return base.model_copy(update=exact)


_DIALS: Final[Mapping[str, Callable[[float, Dial], float]]] = {
    "f_number": exact_f_number,
    "shutter_s": exact_shutter_s,
    "iso": exact_iso,
}


def _exact(slot: str, value: float, dial: Dial) -> float:
    """What the dial means by a marked value; a focal length is as it is."""
    return _DIALS[slot](value, dial) if slot in _DIALS else value


def _against_now(
    slot: str, values: Sequence[float], facts: Facts, base: GivenSettings | None
) -> list[float]:
    """The values as the dials mean them, behind what is set now where one stands alone."""
    found = [_exact(slot, value, reckoning.dial_of(facts)) for value in values]
    if len(found) == 1:
        now = getattr(base, slot, None) if slot != "focal_mm" else reckoning.focal_of(facts)
        found = found if now is None or math.isclose(now, found[0], rel_tol=0.01) else [now, *found]
    return found


# what is said


def _say_f_numbers(
    turn: Turn, facts: Facts, base: GivenSettings | None, values: Sequence[float]
) -> None:
    """Time, look and share at each f-number, then depth and diffraction."""
    sensor, dial = reckoning.sensor_of(facts), reckoning.dial_of(facts)
    if sensor.fixed_f_number is not None:
        turn.say(Role.SETTINGS, "what_if.fixed")
        return
    labels = [f_number_label(value, dial) for value in values]
    stops = 2 * math.log2(values[-1] / values[0])
    if base is None:
        _say_alone(turn, "f_number", labels, -stops)
    else:
        times = [base.shutter_s * (value / base.f_number) ** 2 for value in values]
        _say_rows(turn, facts, "equal", labels, times, stops)
    say_depth(turn, facts, values)
    discs = [measures.plain(airy_diameter_um(value), 0) for value in values]
    past = sensor.softens(max(values))
    turn.say(
        Role.CHECK,
        "weighed.softening" if past else "weighed.discs",
        list=", ".join(f"{label} {disc} µm" for label, disc in zip(labels, discs, strict=True)),
        limit=f_number_label(sensor.softening_f, dial),
    )
    reasons.explain_diffraction(turn, *values)


def _say_alone(turn: Turn, name: str, labels: Sequence[str], stops: float) -> None:
    """Before any settings: the stops that lie between, and what they make of the time.

    Args:
        turn: the answer under construction.
        name: of the text.
        labels: of the values.
        stops: by which the last one is brighter than the first.
    """
    part = measures.significant(2 ** abs(stops))
    turn.say(
        Role.SETTINGS,
        f"weighed.{name}_alone",
        one=labels[0],
        other=labels[-1],
        stops=measures.stops(stops),
        side=TEXTS["brighter" if stops > 0 else "darker"],
        factor=f"1/{part}" if stops > 0 else part,
    )


def _say_rows(
    turn: Turn,
    facts: Facts,
    name: str,
    labels: Sequence[str],
    times: Sequence[float],
    stops: float,
) -> None:
    """A row for each value: its time, the look that this makes, and the share."""
    assumed, camera = Assumed(), reckoning.camera_of(facts)
    reckoning.sensor_of(facts, assumed)
    flow = reckoning.flowing_or_usual(facts, reckoning.focal_of(facts), assumed)
    rows = []
    for label, time_s in zip(labels, times, strict=True):
        time = shutter_label(nearest(time_marks(camera.dial), time_s).exact, camera.dial)
        share = flow.share(time_s)
        values = {
            "setting": label if label == time else f"{label} {time}",
            "look": TEXTS[f"look.{look_of(share).value}"],
            "share": measures.crossed(share),
        }
        rows.append(TEXTS["weighed.row"].format(**values))
        reasons.explain_share(turn, flow, time_s, camera)
    turn.say(
        Role.SETTINGS, f"weighed.{name}", rows="; ".join(rows), stops=measures.stops(abs(stops))
    )
    reasons.tell_assumed(turn, assumed, camera)


def say_depth(turn: Turn, facts: Facts, values: Sequence[float]) -> None:
    """Which of some f-numbers hold the nearest thing.

    Args:
        turn: the answer under construction.
        facts: what is known.
        values: exact f-numbers.
    """
    labels = [f_number_label(value, reckoning.dial_of(facts)) for value in values]
    focal_mm, near_m = reckoning.focal_of(facts), reckoning.nearest_of(facts)
    if focal_mm is None or near_m is None:
        return
    depth = reckoning.depth_of(facts, focal_mm)
    holding = [
        label
        for value, label in zip(values, labels, strict=True)
        if value >= depth.needed * NEARLY_F
    ]
    all_hold = len(holding) == len(values) > 1
    turn.say(
        Role.CHECK,
        f"weighed.depth_{'all' if all_hold else 'some' if holding else 'none'}",
        near=measures.length(near_m, turn.units),
        focal=measures.focal(focal_mm, reckoning.sensor_of(facts).crop_factor),
        needed=measures.plain(depth.needed),
        list=measures.listing(holding, TEXTS["and"]),
    )
    reasons.explain_depth(turn, facts, focal_mm, depth)


def _say_times(
    turn: Turn, facts: Facts, base: GivenSettings | None, values: Sequence[float]
) -> None:
    """Look and share of each time, and what makes them equally bright."""
    camera = reckoning.camera_of(facts)
    labels = [shutter_label(value, camera.dial) for value in values]
    stops = math.log2(max(values) / min(values))
    _say_rows(turn, facts, "times", labels, values, stops)
    if base is not None:
        equal = ", ".join(with_time(base, value, camera, facts) for value in values)
        turn.say(Role.CHECK, "weighed.as_bright", list=equal)


def _say_speeds(
    turn: Turn, facts: Facts, base: GivenSettings | None, values: Sequence[float]
) -> None:
    """What time each ISO leaves at the same brightness, and its look."""
    dial = reckoning.dial_of(facts)
    labels = [iso_label(value, dial) for value in values]
    stops = math.log2(values[-1] / values[0])
    if base is None:
        _say_alone(turn, "iso", labels, stops)
        return
    times = [base.shutter_s * base.iso / value for value in values]
    _say_rows(turn, facts, "equal", labels, times, stops)
    turn.say(Role.CHECK, "weighed.grain", iso=iso_label(max(values), dial))


def _say_focals(
    turn: Turn, facts: Facts, base: GivenSettings | None, values: Sequence[float]
) -> None:
    """What each focal length shows, and the share that the water crosses at it."""
    sensor = reckoning.sensor_of(facts)
    labels = [measures.focal(value, sensor.crop_factor) for value in values]
    if facts.distance_m is None:
        turn.say(
            Role.SETTINGS,
            "weighed.focal_alone",
            one=labels[0],
            other=labels[-1],
            part=measures.significant(values[0] / values[-1]),
        )
        return
    side_mm = reckoning.vertical_side_mm(facts, sensor)
    shown = [float(coverage_m(facts.distance_m, side_mm, value)) for value in values]
    rows = []
    for label, focal_mm, seen_m in zip(labels, values, shown, strict=True):
        share = TEXTS["weighed.shows"].format(
            setting=label, shown=measures.length(seen_m, turn.units)
        )
        if base is not None:
            crossed = reckoning.flowing_or_usual(facts, focal_mm).share(base.shutter_s)
            look = TEXTS[f"look.{look_of(crossed).value}"]
            share = f"{share}, {look} {measures.crossed(crossed)}"
        rows.append(share)
    at = "" if base is None else shutter_label(base.shutter_s, reckoning.dial_of(facts))
    key = "weighed.focals" if base is None else "weighed.focals_at"
    turn.say(Role.SETTINGS, key, rows="; ".join(rows), time=at)
    _say_whole(turn, facts, values, labels)


def _say_whole(turn: Turn, facts: Facts, values: Sequence[float], labels: Sequence[str]) -> None:
    """Which of the focal lengths hold the whole fall, level or tilted."""
    if facts.fall_height_m is None or facts.section or reckoning.is_stream(facts):
        return
    longest_mm = reckoning.framing_of(facts, None).longest_mm
    holding = [label for value, label in zip(values, labels, strict=True) if value <= longest_mm]
    turn.say(
        Role.CHECK,
        "weighed.whole" if holding else "weighed.whole_none",
        list=measures.listing(holding, TEXTS["and"]),
        longest=measures.focal(longest_mm, reckoning.sensor_of(facts).crop_factor),
    )


_SAY: Final[Mapping[str, _Rows]] = {
    "f_number": _say_f_numbers,
    "shutter_s": _say_times,
    "iso": _say_speeds,
    "focal_mm": _say_focals,
}
