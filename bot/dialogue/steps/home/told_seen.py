"""What was seen in single frames at home: its cause, by the numbers, and what is left to do."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.aims import aim_of, with_kept
from bot.dialogue.compose import Role
from bot.dialogue.meaning.told_sights import OF_THE_VIEW, Remark
from bot.dialogue.steps.home import told_frames, told_levels, told_names, told_shares, told_softness
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.series import SAME_STOPS

#: Answered in words alone, whatever the frame's numbers.
_PLAIN: Final = frozenset(
    {"drops", "bright", "holds", "glare", "blue", "leaning", "small", "sky", "clutter", "tilted"}
)
#: So far from the aim a share says that the time is off (own rule: a third of a stop).
_CLEARLY: Final = 2 ** (1 / 3)
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


#: Said beside a question which to keep, these may be of what is asked.
_OF_A_CHOICE: Final = frozenset({"best", "good", "metered"})


def keep(turn: Turn, remarks: Sequence[Remark]) -> None:
    """Keep what a message says of frames beside the question which of them is the best.

    Args:
        turn: the answer under construction.
        remarks: the parts of the message.
    """
    about: tuple[int, ...] = ()
    for remark in remarks:
        places = _places(turn, remark, about)
        about = remark.places or about
        seen = [name for name in remark.seen if name not in _OF_A_CHOICE]
        if seen and places:
            told_frames.see(turn, places, *seen)


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
    shown = told_names.name(turn, 0)
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
            **told_names.named(turn, [place]),
            level=told_levels.level_text(turn, place),
            **told_shares.values_of(turn, place),
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
        if remark.against is not None and seen in {"dark", "bright"}:
            continue  # the comparison says by how much
        if seen not in {"best", "metered"}:
            told_frames.see(turn, places, seen)
        _say(seen)(turn, places)
    if remark.against is not None and places[0] != remark.against:
        compare(turn, places[0], remark.against)


def _say(seen: str) -> _Say:
    if seen in _PLAIN:
        return lambda turn, places: turn.say(
            Role.SETTINGS, f"home.{seen}", **told_names.named(turn, places)
        )
    return _NUMBERED[seen]


def compare(turn: Turn, place: int, other: int) -> None:
    """How much darker or brighter one frame is than another, by its settings."""
    stops = told_levels.level_of(turn, place) - told_levels.level_of(turn, other)
    named = {"frame": told_names.name(turn, place), "other": told_names.name(turn, other)}
    if abs(stops) < SAME_STOPS:
        turn.say(Role.CHECK, "home.compared_same", **named)
        return
    side = TEXTS["home.brighter" if stops > 0 else "home.darker"]
    turn.say(Role.CHECK, "home.compared", stops=measures.stops(stops), side=side, **named)


# by the numbers


def _each(key: str) -> _Say:
    """A line for each of the frames, with its share and look."""

    def say(turn: Turn, places: Sequence[int]) -> None:
        for place in places:
            frame, values = told_names.named(turn, [place]), told_shares.values_of(turn, place)
            turn.say(Role.SETTINGS, key, **frame, **values)

    return say


def _of_the_time(seen: str) -> _Say:
    """Mush or hardness: the time, where the share says so; else what it can't be."""

    def say(turn: Turn, places: Sequence[int]) -> None:
        look = reckoning.wished_look(turn.facts)
        aim = told_shares.flow_of(turn).time_for(aim_of(turn, look))
        values = told_shares.ends_of_look(turn)
        values["aim"] = solving.time_text(aim, turn.camera)
        for place in places:
            of_time = is_of_the_time(turn, place, seen)
            within = told_shares.look_in(turn, place) is look
            ending = "" if of_time and not within else "_within" if of_time else "_not"
            of_frame = told_shares.values_of(turn, place) | told_names.named(turn, [place])
            turn.say(Role.SETTINGS, f"home.{seen}{ending}", **values | of_frame)

    return say


def is_of_the_time(turn: Turn, place: int, seen: str) -> bool:
    """Whether mush, or hardness, is one of the time: by the aim of the wished look."""
    aim = aim_of(turn, reckoning.wished_look(turn.facts))
    share = told_shares.share_of(turn, place)
    return share > aim * _CLEARLY if seen == "mush" else share < aim / _CLEARLY


def _soft(turn: Turn, places: Sequence[int]) -> None:
    """Soft all over: diffraction, too open for the near rock, else a camera that moved."""
    for place in places:
        cause = told_softness.cause_of(turn, place)
        depth = "depth" in told_frames.frames_of(turn)[place].sights
        cause = "depth_plain" if depth and cause == "moved" else cause
        values = told_softness.values_of(turn, place) | told_names.named(turn, [place])
        turn.say(Role.SETTINGS, f"home.{cause}", **values)


def _depth(turn: Turn, places: Sequence[int]) -> None:
    """Soft at one end alone: too open for the near rock, else a matter of depth, never of shake."""
    told_frames.see(turn, places, "depth")
    _soft(turn, places)


def _leaves(turn: Turn, places: Sequence[int]) -> None:
    """Leaves from the shortest frame in which nobody saw them move."""
    frames = told_frames.frames_of(turn)
    still = [place for place, frame in enumerate(frames) if "leaves" not in frame.sights]
    shortest = min(still, key=lambda place: frames[place].shutter_s, default=None)
    longest = max(places, key=lambda place: frames[place].shutter_s)
    named = told_names.named(turn, places)
    if shortest is None or frames[shortest].shutter_s >= frames[longest].shutter_s:
        turn.say(Role.SETTINGS, "home.leaves", **named)
        return
    stops = told_levels.level_of(turn, longest) - told_levels.level_of(turn, shortest)
    turn.say(
        Role.SETTINGS,
        "home.leaves_from" if stops >= SAME_STOPS else "home.leaves_equal",
        **named,
        other=told_names.name(turn, shortest),
        stops=measures.stops(stops),
    )


def _dark(turn: Turn, places: Sequence[int]) -> None:
    """Too dark: by how much, against the meter or the brightest frame."""
    reference = told_levels.reference_of(turn)
    other = reference.place
    for place in places:
        stops = reference.level_stops - told_levels.level_of(turn, place)
        frame = told_names.named(turn, [place])
        if stops < SAME_STOPS or other == place:
            turn.say(Role.SETTINGS, "home.dark_alone", **frame)
            continue
        against = TEXTS["home.the_meter"] if other is None else told_names.name(turn, other)
        values = {"stops": measures.stops(stops), "other": against}
        turn.say(Role.SETTINGS, "home.dark", **frame, **values)


def _clipped(turn: Turn, places: Sequence[int]) -> None:
    """Lost white: which darker frame holds more of it."""
    levels = {p: told_levels.level_of(turn, p) for p in range(len(told_frames.frames_of(turn)))}
    lowest = min(levels[place] for place in places)
    darker = [place for place in levels if levels[place] < lowest - SAME_STOPS]
    named = told_names.named(turn, places)
    if not darker:
        turn.say(Role.SETTINGS, "home.clipped", **named)
        return
    other = max(darker, key=lambda place: levels[place])
    stops = measures.stops(lowest - levels[other])
    shown = told_names.name(turn, other)
    turn.say(Role.SETTINGS, "home.clipped_other", **named, other=shown, stops=stops)


def _best(turn: Turn, places: Sequence[int]) -> None:
    """The one that is liked best: kept as that, and its share teaches the look."""
    place = places[0]
    for other, frame in enumerate(told_frames.frames_of(turn)):
        if frame.liked and other != place:
            told_frames.mark(turn, other, liked=False)
    _learn(turn, place)
    values = told_names.named(turn, [place]) | told_shares.values_of(turn, place)
    turn.say(Role.SETTINGS, "home.best", **values)
    turn.parts = [part for part in turn.parts if part.key != "home.good"]
    told_frames.change(turn, asked_best=False)


def _learn(turn: Turn, place: int) -> None:
    """Each frame teaches once, and only by the person's own numbers."""
    measured = turn.context.conversation.measured
    name = told_frames.shared_as(turn, place)
    kept = name is not None and measured[name].kept
    taught = kept or told_frames.frames_of(turn)[place].taught
    told_frames.mark(turn, place, liked=True)
    if taught or not told_shares.is_by_numbers(turn, place):
        return
    told_frames.mark(turn, place, taught=True)
    if name is not None:
        own = measured[name].model_copy(update={"kept": True})
        turn.change_conversation(measured=measured | {name: own})
    share = told_shares.share_of(turn, place)
    turn.change_person(kept_shares=with_kept(turn.context.person, share))


def _metered(turn: Turn, places: Sequence[int]) -> None:
    told_frames.mark(turn, places[0], metered=True)
    turn.say(Role.SETTINGS, "home.is_metered", **told_names.named(turn, places[:1]))


_NUMBERED: Final[Mapping[str, _Say]] = {
    "mush": _of_the_time("mush"),
    "hard": _of_the_time("hard"),
    "soft": _soft,
    "depth": _depth,
    "leaves": _leaves,
    "dark": _dark,
    "clipped": _clipped,
    "good": _each("home.good"),
    "best": _best,
    "metered": _metered,
}
