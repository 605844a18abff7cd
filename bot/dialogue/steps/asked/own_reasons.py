"""The sums behind the bot's numbers in the short form, and what they rest on."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.values_named import Named, named_in, plainly
from bot.dialogue.reckoning import Assumed
from bot.dialogue.steps.asked import trade_answers
from bot.dialogue.steps.walk import base, reasons
from bot.dialogue.texts import TEXTS, known, measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import Note
from core.light import LIGHTS
from core.series import exact_f_number, exact_shutter_s, f_number_label
from core.water import coverage_m

#: What times, shares and framing are reckoned from, in the order of telling, by what is asked for.
_SLOTS: Final = {
    "height": "fall_height_m",
    "distance": "distance_m",
    "focal": "focal_mm",
    "nearest": "nearest_m",
    "format": "camera_format",
    "speed": "water_speed_mps",
}
#: Assumptions by what is asked for.
_ASSUMED: Final = {
    "height": "height",
    "distance": "distance",
    "focal": "focal",
    "format": "full_frame",
    "speed": "stream_speed",
}
_TWO: Final = 2
#: Shares that differ by less were said of the same frame (own rule: rounding).
_SAME: Final = 0.02


def _notes_of(turn: Turn, explain: Callable[[], None]) -> list[Note]:
    """The lines of reasoning that an explanation writes, taken out of those for `why`."""
    before = len(turn.notes)
    explain()
    new = turn.notes[before:]
    del turn.notes[before:]
    return new


def say_share(turn: Turn, one: Named | None, own: tuple[Note, ...]) -> None:
    """The sum of a share: as it was said, else anew for the time that is set.

    Args:
        turn: the answer under construction.
        one: the share in percent, or the time, that is asked about; None for what is set.
        own: what was said in numbers last.
    """
    said = None if one is None else _sum_of(one, own)
    now = _sums_now(turn, one)
    first, *others = now if said is None else said
    turn.say(Role.SETTINGS, first.key, **first.values)
    if said is not None and _differs(first, now[0]):
        turn.say(Role.CHECK, _key("own.now", now[0]), **now[0].values)
    else:
        for note in others:
            turn.say(Role.ASSUMPTION, note.key, **note.values)


def say_speed(turn: Turn) -> None:
    """How fast the water is taken to be, and the share of the frame that it makes."""
    share, *how = _sums_now(turn, None)
    for note in how:
        turn.say(Role.SETTINGS, note.key, **note.values)
    turn.say(Role.CHECK if how else Role.SETTINGS, share.key, **share.values)


def _sum_of(one: Named, own: tuple[Note, ...]) -> list[Note] | None:
    """The last sum that led to a share, or began with a time, with how the speed was found."""
    name = "share" if one.slot == "share" else "time"
    for place in reversed(range(len(own))):
        note = own[place]
        if note.key.startswith("why.share") and _is_in(one, note.values[name]):
            how = own[place + 1 : place + 2]
            return [note, *(line for line in how if line.key.startswith("why.speed"))]
    return None


def _is_in(one: Named, text: str) -> bool:
    """Whether a value is the number of a text, rounded as it was typed."""
    _, _, decimals = f"{one.value:g}".partition(".")
    near = 0.51 * 10.0 ** -len(decimals) if one.slot == "share" else 0.03 * one.value
    return any(
        said.slot == one.slot and abs(said.value - one.value) <= near
        for said in named_in(plainly(text))
    )


def _sums_now(turn: Turn, one: Named | None) -> list[Note]:
    """The sum of the share as things are now."""
    now = base.standing(turn)
    time_s = now.settings.shutter_s
    if one is not None and one.slot == "shutter_s":
        time_s = exact_shutter_s(one.value, now.camera.dial)
    return _notes_of(turn, lambda: reasons.explain_share(turn, now.flow, time_s, now.camera))


def _key(key: str, note: Note) -> str:
    """The text of a sum with a word before it; a flow towards the camera has a sum of its own."""
    return key if note.key == "why.share" else note.key


def _differs(one: Note, other: Note) -> bool:
    """Whether two sums are of another water or frame; the time alone may differ."""
    return any(one.values[name] != other.values[name] for name in ("speed", "coverage"))


def say_both(turn: Turn, shares: Sequence[Named], own: tuple[Note, ...]) -> bool:
    """Two shares of the bot's that do not agree: both sums, and what changed between them.

    Returns:
        Whether it said both.
    """
    now = _sums_now(turn, None)
    found = {
        own.index(notes[0]) if notes[0] in own else len(own): notes
        for one in shares
        if (notes := _sum_of(one, own) or (now if _is_in(one, now[0].values["share"]) else None))
    }
    if len(found) < _TWO:
        return False
    (_, (earlier, *_)), (_, (later, *how)) = sorted(found.items())[:_TWO]
    turn.say(Role.SETTINGS, later.key, **later.values)
    turn.say(Role.CHECK, _key("own.before", earlier), **earlier.values)
    if _differs(later, earlier):
        covers = later.values["coverage"] != earlier.values["coverage"]
        name = "coverage" if covers else "speed"
        turn.say(
            Role.CHECK, f"own.changed_{name}", new=later.values[name], old=earlier.values[name]
        )
        for note in how:
            turn.say(Role.ASSUMPTION, note.key, **note.values)
    return True


def say_f_number(turn: Turn, one: Named, own: tuple[Note, ...]) -> None:
    """What the depth needs, and where diffraction makes the least blur."""
    del own
    now, facts = base.standing(turn), turn.facts
    sensor, near_m = now.camera.sensor, reckoning.nearest_of(turn.facts)
    if sensor.fixed_f_number is not None:
        turn.say(Role.SETTINGS, "asked.f_number_phone")
        return
    focal_mm = reckoning.focal_of(facts) or reckoning.usual_focal_mm(facts)
    dial = now.camera.dial
    values = {
        "f_number": f_number_label(exact_f_number(one.value, dial), dial),
        "low": f_number_label(sensor.best_f[0], dial),
        "high": f_number_label(sensor.best_f[1], dial),
    }
    if near_m is None:
        turn.say(Role.SETTINGS, "own.f_number_plain", **values)
        return
    turn.say(
        Role.SETTINGS,
        "own.f_number",
        **values,
        near=measures.length(near_m, turn.units),
        focal=measures.focal(focal_mm, sensor.crop_factor),
        needed=measures.plain(now.depth.needed),
        best=measures.plain(now.depth.best),
    )
    reasons.explain_depth(turn, facts, focal_mm, now.depth)


def say_iso(turn: Turn, one: Named, own: tuple[Note, ...]) -> None:
    """The lowest, and why it is raised where it is."""
    del one, own
    trade_answers.say_iso(turn, "")


def say_focal(turn: Turn, one: Named, own: tuple[Note, ...]) -> None:
    """What the whole fall takes from there, with what lies before it and without."""
    del own
    facts, sensor = turn.facts, reckoning.sensor_of(turn.facts)
    focal = measures.focal(one.value, sensor.crop_factor)
    if facts.fall_height_m is None or facts.distance_m is None:
        turn.say(Role.SETTINGS, "asked.lens_plain")
        return
    near_m = reckoning.nearest_of(facts)
    alone = reckoning.framing_of(facts, None)
    framing = alone if near_m is None else reckoning.framing_of(facts, near_m)
    side_mm = reckoning.vertical_side_mm(facts, sensor)
    turn.say(
        Role.SETTINGS,
        "own.focal" if near_m is not None else "own.focal_fall",
        focal=focal,
        near=measures.length(near_m or 0.0, turn.units),
        both=measures.focal(framing.longest_mm, sensor.crop_factor),
        alone=measures.focal(alone.longest_mm, sensor.crop_factor),
    )
    shown_m = float(coverage_m(facts.distance_m, side_mm, one.value))
    turn.say(
        Role.CHECK,
        "own.covers",
        focal=focal,
        distance=measures.length(facts.distance_m, turn.units),
        shown=measures.length(shown_m, turn.units),
        part=measures.percent(facts.fall_height_m / shown_m),
    )
    reasons.explain_framing(turn, framing, side_mm, near_m)


def say_length(turn: Turn, one: Named, own: tuple[Note, ...]) -> None:
    """A length: the focus by its sum, any other by the last sum that it stands in."""
    focus_m = reckoning.focus_of(turn.facts)
    notes: list[Note] = []
    if focus_m is not None and math.isclose(focus_m, one.value, rel_tol=_SAME * 2):
        notes = _notes_of(turn, lambda: reasons.explain_focus(turn, turn.facts))
    if not notes:
        notes = [
            note
            for note in own
            if note.key.startswith("why.")
            and any(_is_length(one, value) for value in note.values.values())
        ][-1:]
    for note in notes:
        turn.say(Role.SETTINGS, note.key, **note.values)


def _is_length(one: Named, text: str) -> bool:
    return any(
        said.slot == "length" and math.isclose(said.value, one.value, rel_tol=_SAME * 2)
        for said in named_in(plainly(text))
    )


def say_light(turn: Turn, told: str | None) -> None:
    """The light that is reckoned with: what frames have shown, what was told, or none.

    Args:
        turn: the answer under construction.
        told: the light that the message itself tells.
    """
    level = LIGHTS.get(turn.facts.light or "")
    if turn.walk.light_is_measured:
        turn.say(Role.SETTINGS, "own.light_frames")
    elif level is None:
        turn.say(Role.SETTINGS, "own.light_none_yet" if told else "own.light_none")
    else:
        turn.say(
            Role.SETTINGS,
            "own.light",
            light=TEXTS[f"light.{level.key}"],
            level=measures.plain(level.ev100),
        )


def say_inputs(turn: Turn, facets: Sequence[str], role: Role) -> None:
    """What all rests on: as told, and as assumed.

    Args:
        turn: the answer under construction.
        facets: what is asked for, which is told first.
        role: how much it matters.
    """
    # Others read in a group room: only what was told there is named there.
    facts = turn.facts if turn.origin.direct else turn.walk.facts
    asked = [facet for facet in facets if facet in _SLOTS]
    order = [*asked, *(facet for facet in _SLOTS if facet not in asked)]
    told = [said for facet in order if (said := _told(turn, facts, _SLOTS[facet]))]
    if told:
        turn.say(role, "own.inputs", list=", ".join(told))
    assumed = Assumed()
    reckoning.sensor_of(turn.facts, assumed)
    reckoning.flowing_or_usual(turn.facts, reckoning.focal_of(turn.facts), assumed)
    named = [_ASSUMED[facet] for facet in order if _ASSUMED.get(facet) in assumed.keys]
    if named:
        assumed.keys = {key: assumed.keys[key] for key in named}
        reasons.tell_assumed(turn, assumed, turn.camera, role=role)


def _told(turn: Turn, facts: Facts, slot: str) -> str:
    return known(facts, turn.units, only={slot})
