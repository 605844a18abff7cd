"""Frames told in words at home: kept with what was seen in them, named, with share and light."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import timedelta
from typing import Any, Final

from bot.dialogue import reckoning, solving
from bot.dialogue.by_numbers import as_taken, flow_told, rests_on_usual
from bot.dialogue.facts import Facts
from bot.dialogue.flowing import Flowing
from bot.dialogue.kept import Measured, Review, ToldFrame
from bot.dialogue.reading.frame_list import is_same_time
from bot.dialogue.reckoning import Assumed
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import POLARISER_STOPS, Camera
from core.exposure import ev100
from core.light import LIGHTS
from core.series import SAME_STOPS, exact_f_number, exact_iso, exact_shutter_s, f_number_label
from core.water import Look, look_of

#: "Home now" may come with a frame, which was sent before it is heard (own rule).
_ON_ITS_WAY: Final = timedelta(minutes=10)
#: What a frame is taken to have been set to where nobody says; only differences count.
_ANY_F: Final = 8.0


#: What can't both be true of a frame.
_OPPOSITE: Final = {"holds": "clipped", "clipped": "holds", "mush": "hard", "hard": "mush"}


@dataclass(frozen=True)
class Reference:
    """What the brightness of frames is told against: a frame, or the meter (no place)."""

    level_stops: float
    place: int | None


def review_of(turn: Turn) -> Review:
    """What was told of the day's frames; nothing yet where nothing was."""
    return turn.context.conversation.review or Review()


def change(turn: Turn, **changes: Any) -> None:
    """Lay new values over what was told."""
    turn.change_conversation(review=review_of(turn).model_copy(update=changes))


def frames_of(turn: Turn) -> tuple[ToldFrame, ...]:
    """The frames that were told, in the order of telling."""
    return review_of(turn).frames


def counted(turn: Turn, number: int | None) -> int | None:
    """The place of a frame that a bare number means: its seconds, else which of them it is."""
    if number is None:
        return None
    times = [frame.shutter_s for frame in frames_of(turn)]
    if number in times:
        return times.index(number)
    return number - 1 if 1 <= number <= len(times) else None


def see(turn: Turn, places: Iterable[int], *seen: str) -> None:
    """Keep what was seen in some of the frames; the later word replaces its opposite."""
    frames = list(frames_of(turn))
    over = {_OPPOSITE.get(name) for name in seen}
    for place in places:
        left = [name for name in frames[place].sights if name not in over]
        sights = tuple(dict.fromkeys((*left, *seen)))
        frames[place] = frames[place].model_copy(update={"sights": sights})
    change(turn, frames=tuple(frames))


def mark(turn: Turn, place: int, **changes: Any) -> None:
    """Lay new values over one frame."""
    frames = list(frames_of(turn))
    frames[place] = frames[place].model_copy(update=changes)
    change(turn, frames=tuple(frames))


def take_measured(turn: Turn) -> None:
    """Frames of the person's own that were shared since they are home stand among those told."""
    conversation = turn.context.conversation
    frames = list(frames_of(turn))
    for shared in conversation.measured.values():
        since = conversation.home_at
        before = since is None or shared.sent_at < since - _ON_ITS_WAY
        if before or shared.foreign or shared.shutter_s is None:
            continue
        if not any(_is_same(frame, shared) for frame in frames):
            taken = {"f_number": shared.f_number, "iso": shared.iso, "focal_mm": shared.focal_mm}
            taken["focal_full_frame_mm"] = shared.focal_full_frame_mm
            frames.append(ToldFrame(shutter_s=shared.shutter_s, liked=shared.kept, **taken))
    if len(frames) > len(frames_of(turn)):
        change(turn, frames=tuple(frames))


def take_shared(turn: Turn, shared: Measured, seen: Iterable[str]) -> None:
    """A frame that was shared at home, with what its picture shows."""
    take_measured(turn)
    for place, frame in enumerate(frames_of(turn)):
        if _is_same(frame, shared):
            see(turn, (place,), *seen)
            change(turn, about=(place,))


def spoken_of(turn: Turn) -> int | None:
    """The one frame that was spoken of last; None where it was several, or none."""
    about = review_of(turn).about
    return about[0] if len(about) == 1 else None


def shared_as(turn: Turn, place: int) -> str | None:
    """The shared file that a frame is of; None where it was only told."""
    frame = frames_of(turn)[place]
    for name, shared in turn.context.conversation.measured.items():
        if not shared.foreign and _is_same(frame, shared):
            return name
    return None


def _is_same(frame: ToldFrame, shared: Measured) -> bool:
    if shared.shutter_s is None or not is_same_time(frame.shutter_s, shared.shutter_s):
        return False
    return None in {frame.f_number, shared.f_number} or frame.f_number == shared.f_number


# names


def name(turn: Turn, place: int) -> str:
    """A frame by its time; by what sets it apart, too: `2 s f/22`, `1/4 s 50 mm`."""
    frame = frames_of(turn)[place]
    time = solving.time_text(exact_shutter_s(frame.shutter_s), turn.camera)
    apart = _apart(turn, frame.f_number, "f_number", _f_text)
    if apart:
        return TEXTS["home.frame_f"].format(time=time, f_number=apart)
    apart = _apart(turn, frame.focal_mm, "focal_mm", _focal_text)
    return TEXTS["home.frame_focal"].format(time=time, focal=apart) if apart else time


def _apart(turn: Turn, own: float | None, slot: str, text: Callable[[Camera, float], str]) -> str:
    """A value of a frame in words, where most frames have another one; else ""."""
    usual = common(getattr(frame, slot) for frame in frames_of(turn))
    if own is None or usual is None:
        return ""
    camera = turn.camera
    shown = text(camera, own)
    return "" if shown == text(camera, usual) else shown


def _f_text(camera: Camera, f_number: float) -> str:
    return f_number_label(exact_f_number(f_number), camera.dial)


def _focal_text(camera: Camera, focal_mm: float) -> str:
    return measures.focal(focal_mm, camera.sensor.crop_factor)


def names(turn: Turn, places: Sequence[int]) -> str:
    """Several frames by their names; "all of them" where they are more than two and all."""
    if len(places) > 2 and len(places) == len(frames_of(turn)):
        return TEXTS["home.all"]
    return measures.listing([name(turn, place) for place in places], TEXTS["and"])


def common(values: Iterable[float | None]) -> float | None:
    """The value that most frames have; the first of those that are as many."""
    told = Counter(value for value in values if value is not None)
    return told.most_common(1)[0][0] if told else None


def named(turn: Turn, places: Sequence[int]) -> dict[str, str]:
    """Several frames by their names, within a sentence and at its beginning."""
    frames = names(turn, places)
    of_all = frames == TEXTS["home.all"]
    return {"frames": frames, "named": TEXTS["home.all_named"] if of_all else frames}


# share


def facts_of(turn: Turn, place: int | None = None) -> Facts:
    """What is known of a frame: its own focal length on top of what holds for all."""
    if place is None:
        return turn.facts
    frame = frames_of(turn)[place]
    return as_taken(turn.facts, frame.focal_mm, frame.focal_full_frame_mm)


def flow_of(turn: Turn, place: int | None = None) -> Flowing:
    """The water as a frame sees it, by the usual case where nothing is told."""
    facts = facts_of(turn, place)
    return reckoning.flow_of(facts)


def is_by_numbers(turn: Turn, place: int) -> bool:
    """Whether a frame's share rests on what was told of it, not on a usual fall."""
    return flow_told(facts_of(turn, place)) is not None


def is_placed(turn: Turn) -> bool:
    """Whether the place was told: all that a share needs, the format apart."""
    facts, assumed = turn.facts, Assumed()
    reckoning.flowing_or_usual(facts, reckoning.focal_of(facts), assumed)
    assumed.keys.pop("full_frame", None)
    return not rests_on_usual(assumed)


def share_of(turn: Turn, place: int) -> float:
    """Share of the frame that the water crossed."""
    return flow_of(turn, place).share(exact_shutter_s(frames_of(turn)[place].shutter_s))


def look_in(turn: Turn, place: int) -> Look:
    """The look by that share."""
    return look_of(share_of(turn, place))


def values_of(turn: Turn, place: int) -> dict[str, str]:
    """A frame's share and look in words."""
    return {
        "share": measures.crossed(share_of(turn, place)),
        "look": TEXTS[f"look.{look_in(turn, place).value}"],
    }


def ends_of_look(turn: Turn) -> dict[str, str]:
    """The wished look, and its shortest and longest time from there."""
    look, camera = reckoning.wished_look(turn.facts), turn.camera
    ends = [solving.time_text(time_s, camera) for time_s in flow_of(turn).times(look)]
    return {
        "wished": TEXTS[f"look.{look.value}"].capitalize(),
        "shortest": ends[0],
        "longest": ends[1],
    }


# brightness


def level_of(turn: Turn, place: int) -> float:
    """Brightness of a frame against others of the same light [stops]; + is brighter."""
    frames = frames_of(turn)
    frame = frames[place]
    f_number = frame.f_number or common(other.f_number for other in frames) or _ANY_F
    iso = exact_iso(frame.iso) if frame.iso else usual_iso(turn)
    bare = -ev100(exact_f_number(f_number), exact_shutter_s(frame.shutter_s), iso)
    return bare - (frame.nd_on_stops or 0.0)


def usual_iso(turn: Turn) -> float:
    """The ISO of most frames; the camera's base where nobody said, as on a tripod."""
    told = common(frame.iso for frame in frames_of(turn))
    return exact_iso(told) if told else turn.camera.base_iso


def metered_s(turn: Turn, f_number: float, iso: float) -> float:
    """The time that the meter wants at other settings in the light that was told [s]."""
    return float(2 ** ((meter_level(turn) or 0.0) + ev100(f_number, 1.0, iso)))


def meter_level(turn: Turn) -> float | None:
    """The level that the meter wants in the light that was told, filters counted [stops]."""
    facts = turn.facts
    light = LIGHTS.get(facts.light or "")
    if light is None or not any(frame.f_number for frame in frames_of(turn)):
        return None
    polariser = POLARISER_STOPS if facts.polariser_on else 0.0
    return -light.ev100 + (facts.nd_on_stops or 0.0) + polariser


def reference_of(turn: Turn) -> Reference:
    """What brightness is told against: the metered frame, the meter, else the brightest frame."""
    frames, meter = frames_of(turn), meter_level(turn)
    metered = next((place for place, frame in enumerate(frames) if frame.metered), None)
    if metered is not None:
        return Reference(level_of(turn, metered), metered)
    if meter is not None:
        return Reference(meter, None)
    brightest = max(range(len(frames)), key=lambda place: round(level_of(turn, place), 3))
    return Reference(level_of(turn, brightest), brightest)


def side_of(stops: float) -> str:
    """Which way a brightness differs: `same`, `over` or `under`."""
    return "same" if abs(stops) < SAME_STOPS else "over" if stops > 0 else "under"


def level_text(turn: Turn, place: int, against: Reference | None = None) -> str:
    """How a frame's brightness differs: `; 3 stops under 1/2 s`; "" for the reference itself."""
    reference = against or reference_of(turn)
    if reference.place == place:
        return ""
    stops = level_of(turn, place) - reference.level_stops
    side = side_of(stops)
    if reference.place is None:
        side, other = "metered" if side == "same" else side, TEXTS["home.the_meter"]
    else:
        other = name(turn, reference.place)
    return TEXTS[f"home.level.{side}"].format(stops=measures.stops(stops), other=other)
