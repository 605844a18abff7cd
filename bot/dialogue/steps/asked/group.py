"""Who teaches a group: one line for mixed cameras, and what holds for somebody else's."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.aims import aim_of
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning import group
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.others_wish import wish_of_another, wisher_as_typed
from bot.dialogue.slots import KIT_SLOTS
from bot.dialogue.solving import time_text
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.walk import arrive, base
from bot.dialogue.texts import TEXTS, known, measures
from bot.dialogue.turn import Turn
from core.camera import FORMATS
from core.series import f_number_label, f_number_marks, nearest, shutter_label, time_marks
from core.water import Look

#: The formats that a group brings when nobody says which (common practice).
_USUAL: Final = ("full frame", "aps-c", "four thirds", "phone")
_PHONE: Final = "phone"
#: No lens opens further for landscapes (own rule).
_WIDEST_F: Final = 2.8
_CAMERA: Final = frozenset({"camera_format", "lenses"})
#: Facts beside which a format that is asked for is still the whole message.
_OF_A_KIT: Final = frozenset({"camera_format", "camera_name", "lenses", "focal_mm", "has_tripod"})
#: What holds for everybody who stands there.
_OF_ALL: Final = frozenset({"fall_height_m", "distance_m", "nearest_m", "light", "stream"})
_FILTERS: Final = frozenset({"has_polariser", "polariser_on", "nd_stops", "nd_on_stops"})
#: What else may be told of them: the look that they wish.
_WISHED: Final = frozenset({"look"}) | _FILTERS
#: Who writes has this, whatever the other one has.
_OWN: Final = re.compile(r"(?:^|\b)(?:i have|i've got|i've|i use|i shoot|mine is|mine's|my)\b")


def answer(turn: Turn, typed: str, said: str) -> bool:
    """Answer for other cameras than the person's own; whether the message was about them.

    Args:
        turn: the answer under construction.
        typed: the message as it came.
        said: the message in English.
    """
    if group.is_mixed(typed) or group.asks_for_theirs(typed):
        _learn_of_all(turn, said)
        say_all(turn, typed)
    elif group.of_phones(typed):
        _say(turn, (_PHONE,))
    elif not (_of_someone(turn, typed) or _wished(turn, typed, said)):
        if not group.asks_for_formats(typed):
            return False
        if read(said, units=turn.units).known().keys() - {"camera_format"}:
            return False
        _say(turn, group.formats_of(typed))
    return True


def say_for_all(turn: Turn) -> None:
    """Say back what who teaches has just told for everybody's walk in the room."""
    told = turn.context.room.facts
    if told != turn.before.room.facts and (listed := known(told, turn.units)):
        turn.say_or_keep(Role.CHECK, "group.for_all", list=listed)


def _learn_of_all(turn: Turn, said: str) -> None:
    """Keep the fall that a message tells beside the cameras; a walk begins with its caution."""
    told = read(said, units=turn.units).only(_OF_ALL)
    if not told.known():
        return
    if turn.context.conversation.walk is None:
        arrive.begin_quietly(turn)
    turn.learn(told)


def say_all(turn: Turn, text: str) -> None:
    """One line that works for all: the time is kept, each sets the f-number of their format."""
    named = group.formats_of(text)
    _say(turn, named if len(named) > 1 else _USUAL)


def _say(turn: Turn, formats: tuple[str, ...]) -> None:
    """The line for all, the question that stands open, and the view where room is left."""
    cameras = [name for name in formats if name != _PHONE]
    if len(cameras) == 1:
        _say_one(turn, _name(cameras[0]), cameras[0])
    elif cameras:
        turn.say(Role.SETTINGS, "asked.group", **_line(turn, cameras))
    else:
        turn.say(Role.SETTINGS, "group.phones")
    repeat.put_again_if_open(turn, whole=False)
    phones = bool(cameras) and _PHONE in formats
    if phones and formats is not _USUAL:  # a phone that was named stands before the view
        turn.say_or_keep(Role.CHECK, "group.phones")
    if len(cameras) > 1:
        shared = _shared(turn)
        focals = [f"{shared.focal(name)} mm {_name(name)}" for name in cameras]
        turn.say_or_keep(Role.CHECK, "group.view", list=", ".join(focals))
    if phones and formats is _USUAL:
        turn.say_or_keep(Role.CHECK, "group.phones")
    turn.reason("why.group")


def _line(turn: Turn, cameras: Sequence[str]) -> dict[str, str]:
    """The time that all keep, and each format's f-number."""
    shared = _shared(turn)
    rows = (f"{shared.f_number(name)} {_name(name)}" for name in cameras)
    return {"time": shared.time, "list": ", ".join(rows)}


def _of_someone(turn: Turn, typed: str) -> bool:
    """What holds for one other person's camera; the walk and the kit of who writes stay."""
    found = group.someone(typed)
    if found is None:
        return False
    told = read(glossed(found.kit, turn.context.person.language), units=turn.units)
    kit = told.known().keys()
    if not kit & (_CAMERA | _FILTERS) or kit - _OF_A_KIT - _WISHED:
        return False
    if not kit & _CAMERA and "?" in typed:
        return False  # whether a filter is needed has an answer of its own
    if _OWN.search(found.rest):
        own = read(found.rest, units=turn.units)
        turn.learn(own.only(own.known().keys() & KIT_SLOTS))
    who = found.who.capitalize()
    if told.camera_format is None:
        turn.say(Role.SETTINGS, "group.some", who=who, **_line(turn, _USUAL[:-1]))
    elif told.camera_format == _PHONE:
        turn.say(Role.SETTINGS, "group.phone", who=who)
    else:
        _say_one(turn, who, told.camera_format, told.look)
    repeat.put_again_if_open(turn, whole=False)
    turn.reason("why.group")
    return True


def _wished(turn: Turn, typed: str, said: str) -> bool:
    """The times for a look that somebody else wishes, told alone; one's own stays."""
    told = wish_of_another(said)
    if told is None or read(told.rest).known():
        return False
    name = read(f"i want{told.wish}").look
    if name is None:
        return False
    now, look = base.standing(turn), Look(name)
    who = wisher_as_typed(typed) or told.who
    shortest, longest = (time_text(time_s, now.camera) for time_s in now.flow.times(look))
    turn.say(
        Role.SETTINGS,
        "group.wish_frozen" if look is Look.FROZEN else "group.wish",
        who=who[:1].upper() + who[1:],
        look=TEXTS[f"look.{name}"],
        shortest=shortest,
        longest=longest,
        time=time_text(now.flow.time_for(aim_of(turn, look)), now.camera),
    )
    repeat.put_again_if_open(turn, whole=False)
    turn.reason("why.group")
    return True


def _say_one(turn: Turn, who: str, name: str, look: str | None = None) -> None:
    """The same frame with one other format, in the look that is wished for it."""
    shared, who = _shared(turn, look), who[:1].upper() + who[1:]
    turn.say(
        Role.SETTINGS,
        "group.one",
        who=who,
        f_number=shared.f_number(name),
        time=shared.time,
        focal=f"{shared.focal(name)} mm",
        iso=measures.plain(FORMATS[name].base_iso, 0),
    )


@dataclass(frozen=True)
class _Shared:
    """One frame that all take: its time, and what makes it the same on each format."""

    time: str
    #: F-number and focal length as on full frame [mm], exact.
    full_f: float
    full_mm: float
    turn: Turn

    def f_number(self, name: str) -> str:
        """The f-number of the same depth, as far as the format stays sharp."""
        sensor, dial = FORMATS[name], reckoning.dial_of(self.turn.facts)
        exact = min(max(self.full_f / sensor.crop_factor, _WIDEST_F), sensor.softening_f)
        return f_number_label(nearest(f_number_marks(dial), exact).exact, dial)

    def focal(self, name: str) -> str:
        """The focal length of the same view [mm]."""
        return measures.plain(self.full_mm / FORMATS[name].crop_factor, 0)


def _shared(turn: Turn, look: str | None = None) -> _Shared:
    now, facts = base.standing(turn), turn.facts
    crop = now.camera.sensor.crop_factor
    focal_mm = reckoning.focal_of(facts) or reckoning.usual_focal_mm(facts)
    settings, exact = now.settings, now.settings.f_number * crop
    if now.camera.sensor.fixed_f_number is not None:  # a phone's opening is no measure of depth
        full = facts.updated(Facts(camera_format="full frame", focal_mm=focal_mm * crop))
        exact = reckoning.depth_of(full, focal_mm * crop).exact
    time_s = settings.shutter_s
    if look is not None:
        time_s = nearest(
            time_marks(now.camera.dial), now.flow.time_for(aim_of(turn, Look(look)))
        ).exact
    time = shutter_label(time_s, now.camera.dial)
    return _Shared(time, exact, focal_mm * crop, turn)


def _name(name: str) -> str:
    return TEXTS[f"group.format.{name.replace('.', '_')}"]
