"""What was seen in single frames at home: its cause, by the numbers, and what is left to do."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.aims import with_kept
from bot.dialogue.compose import Role
from bot.dialogue.meaning.told_sights import OF_THE_VIEW, Remark
from bot.dialogue.reckoning import Assumed
from bot.dialogue.steps import told_frames
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.blur import airy_diameter_um
from core.series import at_least, exact_f_number, f_number_label, f_number_marks
from core.water import Look

#: Answered in words alone, whatever the frame's numbers.
_PLAIN: Final = frozenset(
    {"drops", "bright", "holds", "glare", "blue", "leaning", "small", "sky", "clutter", "tilted"}
)
#: Said once for all frames it is seen in.
_Say = Callable[[Turn, Sequence[int]], None]


def answer(turn: Turn, remarks: Sequence[Remark]) -> bool:
    """Keep and answer what a message says of frames; whether it says anything.

    Args:
        turn: the answer under construction.
        remarks: the parts of the message.
    """
    about = told_frames.review_of(turn).about
    answered = False
    for remark in remarks:
        places = _places(turn, remark, about)
        if not (remark.seen or remark.against is not None):
            about = remark.places or about
            continue
        if not places:
            _ask_which(turn)
            return True
        _one(turn, places, remark)
        about = () if len(places) == len(told_frames.frames_of(turn)) > 1 else tuple(places)
        answered = True
    told_frames.change(turn, about=about)
    return answered or _bare(turn, remarks)


def _places(turn: Turn, remark: Remark, about: tuple[int, ...]) -> tuple[int, ...]:
    """The frames that a part is about: named, all, those before it, or the only one."""
    everyone = tuple(range(len(told_frames.frames_of(turn))))
    of_view = bool(remark.seen) and set(remark.seen) <= OF_THE_VIEW
    if remark.places:
        return remark.places
    if remark.in_all or len(everyone) == 1:
        return everyone
    return everyone if of_view else about


def _ask_which(turn: Turn) -> None:
    shown = told_frames.name(turn, 0)
    turn.say(Role.SETTINGS, "home.name_it", frame=shown)


def _bare(turn: Turn, remarks: Sequence[Remark]) -> bool:
    """A frame that is only named: the one that shows the intent best, or one to be told of."""
    named = [place for remark in remarks for place in remark.places]
    if not named:
        return False
    if told_frames.review_of(turn).asked_best:
        _best(turn, named[:1])
        return True
    for place in named:
        turn.say(
            Role.SETTINGS,
            "home.no_sight",
            **told_frames.named(turn, [place]),
            level=told_frames.level_text(turn, place),
            **told_frames.values_of(turn, place),
        )
    return True


def like(turn: Turn) -> None:
    """The frame that was spoken of last is the one that is liked; else it is asked which."""
    spoken = told_frames.spoken_of(turn)
    if spoken is None and len(told_frames.frames_of(turn)) > 1:
        _ask_which(turn)
    else:
        _best(turn, (spoken or 0,))


def _one(turn: Turn, places: tuple[int, ...], remark: Remark) -> None:
    """One part: each thing that is seen, then what its frame is compared with."""
    for seen in remark.seen:
        if seen not in {"good", "best", "metered"}:
            told_frames.see(turn, places, seen)
        _say(turn, seen)(turn, places)
    if remark.against is not None and places[0] != remark.against:
        compare(turn, places[0], remark.against)


def _say(turn: Turn, seen: str) -> _Say:
    del turn
    if seen in _PLAIN:
        return lambda turn, places: turn.say(
            Role.SETTINGS, f"home.{seen}", **told_frames.named(turn, places)
        )
    return _NUMBERED[seen]


def compare(turn: Turn, place: int, other: int) -> None:
    """How much darker or brighter one frame is than another, by its settings."""
    stops = told_frames.level_of(turn, place) - told_frames.level_of(turn, other)
    named = {"frame": told_frames.name(turn, place), "other": told_frames.name(turn, other)}
    if abs(stops) < told_frames.SAME_STOPS:
        turn.say(Role.CHECK, "home.compared_same", **named)
        return
    side = TEXTS["home.brighter" if stops > 0 else "home.darker"]
    turn.say(Role.CHECK, "home.compared", stops=measures.stops(stops), side=side, **named)


# by the numbers


def _each(key: str) -> _Say:
    """A line for each of the frames, with its share and look."""

    def say(turn: Turn, places: Sequence[int]) -> None:
        for place in places:
            frame, values = told_frames.named(turn, [place]), told_frames.values_of(turn, place)
            turn.say(Role.SETTINGS, key, **frame, **values)

    return say


def _of_the_time(key: str, *, longer: bool) -> _Say:
    """Mush or hardness: the time, where the share says so; else what it can't be."""

    def say(turn: Turn, places: Sequence[int]) -> None:
        looks = list(Look)
        wished = looks.index(reckoning.wished_look(turn.facts))
        ends = told_frames.ends_of_look(turn)
        for place in places:
            look = looks.index(told_frames.look_in(turn, place))
            off = look > wished if longer else look < wished
            values = told_frames.values_of(turn, place) | ends
            values |= told_frames.named(turn, [place])
            turn.say(Role.SETTINGS, key if off else f"{key}_not", **values)

    return say


def _soft(turn: Turn, places: Sequence[int]) -> None:
    """Soft all over: diffraction, too open for the near rock, else a camera that moved."""
    for place in places:
        cause = cause_of_softness(turn, place)
        values = values_of_softness(turn, place) | told_frames.named(turn, [place])
        turn.say(Role.SETTINGS, f"home.{cause}", **values)


def cause_of_softness(turn: Turn, place: int) -> str:
    """Why a frame is soft: `diffraction`, `too_open`, `soft_phone` or `moved`."""
    facts, told_f = told_frames.facts_of(turn, place), _f_number(turn, place)
    if reckoning.is_phone(facts):
        return "soft_phone"
    if told_f is None:
        return "moved"
    if told_f > reckoning.sensor_of(facts, Assumed()).softening_f * 1.02:
        return "diffraction"
    focal_mm, near_m = reckoning.focal_of(facts), reckoning.nearest_of(facts)
    if focal_mm is None or near_m is None:
        return "moved"
    needed = reckoning.depth_of(facts, focal_mm, Assumed()).needed
    return "too_open" if needed > told_f * 1.05 else "moved"


def _f_number(turn: Turn, place: int) -> float | None:
    frames = told_frames.frames_of(turn)
    marked = frames[place].f_number or told_frames.common(frame.f_number for frame in frames)
    return None if marked is None else exact_f_number(marked)


def values_of_softness(turn: Turn, place: int) -> dict[str, str]:
    """The numbers behind a frame's softness: its blur, and what the near rock wanted."""
    facts, f_number = told_frames.facts_of(turn, place), _f_number(turn, place)
    focal_mm, near_m = reckoning.focal_of(facts), reckoning.nearest_of(facts)
    sensor, dial = reckoning.sensor_of(facts, Assumed()), reckoning.dial_of(facts)
    if f_number is None:
        return {}
    better = sensor.best_f[1]
    values = {
        "f_number": f_number_label(f_number, dial),
        "better": f_number_label(better, dial),
        "blur": measures.plain(airy_diameter_um(f_number), 0),
        "better_blur": measures.plain(airy_diameter_um(better), 0),
    }
    if focal_mm is not None and near_m is not None:
        needed = reckoning.depth_of(facts, focal_mm, Assumed()).needed
        mark = at_least(f_number_marks(dial), max(needed, 1.0)).exact
        values["needed"] = f_number_label(mark, dial)
        values["focal"] = measures.focal(focal_mm, sensor.crop_factor)
        values["near"] = measures.length(near_m, turn.units)
    return values


def _leaves(turn: Turn, places: Sequence[int]) -> None:
    """Leaves from the shortest frame in which nobody saw them move."""
    frames = told_frames.frames_of(turn)
    still = [place for place, frame in enumerate(frames) if "leaves" not in frame.sights]
    shortest = min(still, key=lambda place: frames[place].shutter_s, default=None)
    longest = max(places, key=lambda place: frames[place].shutter_s)
    named = told_frames.named(turn, places)
    if shortest is None or frames[shortest].shutter_s >= frames[longest].shutter_s:
        turn.say(Role.SETTINGS, "home.leaves", **named)
        return
    stops = told_frames.level_of(turn, longest) - told_frames.level_of(turn, shortest)
    turn.say(
        Role.SETTINGS,
        "home.leaves_from",
        **named,
        other=told_frames.name(turn, shortest),
        stops=measures.stops(stops),
    )


def _dark(turn: Turn, places: Sequence[int]) -> None:
    """Too dark: by how much, against the meter or the brightest frame."""
    reference = told_frames.reference_of(turn)
    other = reference.place
    for place in places:
        stops = reference.level_stops - told_frames.level_of(turn, place)
        frame = told_frames.named(turn, [place])
        if stops < told_frames.SAME_STOPS or other == place:
            turn.say(Role.SETTINGS, "home.dark_alone", **frame)
            continue
        against = TEXTS["home.the_meter"] if other is None else told_frames.name(turn, other)
        values = {"stops": measures.stops(stops), "other": against}
        turn.say(Role.SETTINGS, "home.dark", **frame, **values)


def _clipped(turn: Turn, places: Sequence[int]) -> None:
    """Lost white: which darker frame holds more of it."""
    levels = {p: told_frames.level_of(turn, p) for p in range(len(told_frames.frames_of(turn)))}
    lowest = min(levels[place] for place in places)
    darker = [place for place in levels if levels[place] < lowest - told_frames.SAME_STOPS]
    named = told_frames.named(turn, places)
    if not darker:
        turn.say(Role.SETTINGS, "home.clipped", **named)
        return
    other = max(darker, key=lambda place: levels[place])
    stops = measures.stops(lowest - levels[other])
    shown = told_frames.name(turn, other)
    turn.say(Role.SETTINGS, "home.clipped_other", **named, other=shown, stops=stops)


def _best(turn: Turn, places: Sequence[int]) -> None:
    """The one that is liked best: kept as that, and its share teaches the look."""
    place = places[0]
    for other, frame in enumerate(told_frames.frames_of(turn)):
        if frame.liked and other != place:
            told_frames.mark(turn, other, liked=False)
    _learn(turn, place)
    values = told_frames.named(turn, [place]) | told_frames.values_of(turn, place)
    turn.say(Role.SETTINGS, "home.best", **values)
    turn.parts = [part for part in turn.parts if part.key != "home.good"]
    told_frames.change(turn, asked_best=False)


def _learn(turn: Turn, place: int) -> None:
    """Each frame teaches once, and only by the person's own numbers."""
    taught = "taught" in told_frames.frames_of(turn)[place].sights
    told_frames.mark(turn, place, liked=True)
    if taught or not told_frames.is_by_numbers(turn):
        return
    told_frames.see(turn, (place,), "taught")
    share = told_frames.share_of(turn, place)
    turn.change_person(kept_shares=with_kept(turn.context.person, share))


def _metered(turn: Turn, places: Sequence[int]) -> None:
    told_frames.mark(turn, places[0], metered=True)
    turn.say(Role.SETTINGS, "home.is_metered", **told_frames.named(turn, places[:1]))


_NUMBERED: Final[Mapping[str, _Say]] = {
    "mush": _of_the_time("home.mush", longer=True),
    "hard": _of_the_time("home.hard", longer=False),
    "soft": _soft,
    "depth": _soft,
    "leaves": _leaves,
    "dark": _dark,
    "clipped": _clipped,
    "good": _each("home.good"),
    "best": _best,
    "metered": _metered,
}
