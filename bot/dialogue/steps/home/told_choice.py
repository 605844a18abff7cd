"""Which of the told frames to keep, what goes into the log, and what to do next time."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.aims import aim_of
from bot.dialogue.compose import Role
from bot.dialogue.meaning import review_words
from bot.dialogue.meaning.frame_named import named_in
from bot.dialogue.reading.frame_times import plain_times
from bot.dialogue.steps.home import (
    day_log,
    told_frames,
    told_levels,
    told_names,
    told_seen,
    told_shares,
    told_softness,
)
from bot.dialogue.steps.walk import reasons
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.series import SAME_STOPS, exact_shutter_s

#: What a frame is left out for, the worst last: what no hand at home takes away.
_FAULTS: Final = ("hard", "leaves", "clipped", "depth", "soft", "drops", "mush")
#: So many frames of one view are kept at most beside the first (common practice: one an idea, at
#: most three of a fall).
_MORE: Final = 2
#: Remedies are named in this order, so many at once (own rule: nobody minds more).
_REMEDIES: Final = (
    *("diffraction", "soft", "depth", "drops", "clipped", "leaves", "sky", "clutter"),
    *("leaning", "tilted", "small", "glare"),
)
_MOST_REMEDIES: Final = 4


def _faults_of(turn: Turn, place: int) -> list[str]:
    """What speaks against a frame; a time that the share calls right does not."""
    seen = told_frames.frames_of(turn)[place].sights
    return [fault for fault in _FAULTS if fault in seen]


def choose(turn: Turn) -> None:
    """Name the frame to keep and why, those beside it, those that are out; then the end."""
    order = ranked(turn)
    first = order[0]
    why = measures.listing(list(_why(turn, first)), TEXTS["and"])
    turn.say(Role.SETTINGS, "home.keep", frame=told_names.name(turn, first), why=why)
    more = _beside(turn, order)
    if more:
        turn.say(Role.SETTINGS, "home.keep_more", frames=told_names.names(turn, more))
    _say_out(turn, first)
    _say_equal(turn, [place for place in order if place == first or not _faults_of(turn, place)])
    intent = told_frames.review_of(turn).intent
    if intent:
        turn.say(Role.CHECK, "home.intent_decides", intent=intent)
    if not told_frames.review_of(turn).copied:
        turn.say(Role.CHECK, "home.copies")
    day_log.say(turn, first)
    say_next_time(turn, Role.ASSUMPTION)
    told_frames.change(turn, about=(first,))
    first_s = exact_shutter_s(told_frames.frames_of(turn)[first].shutter_s)
    flow, camera = told_shares.flow_of(turn, first), turn.camera
    reasons.explain_share(turn, flow, first_s, camera)
    reasons.explain_band(turn, reckoning.wished_look(turn.facts))


def ranked(turn: Turn) -> list[int]:
    """The frames, the best first: sound, liked, of the wished look, near to its aim."""
    wished = reckoning.wished_look(turn.facts)
    aim = aim_of(turn, wished)
    frames = told_frames.frames_of(turn)

    def rank(place: int) -> tuple[int, bool, bool, bool, float]:
        faults = [fault for fault in _faults_of(turn, place) if not _is_lent(turn, place, fault)]
        worst = max((_FAULTS.index(fault) + 1 for fault in faults), default=0)
        share = told_shares.share_of(turn, place)
        other_look = told_shares.look_in(turn, place) is not wished
        praised = "good" in frames[place].sights
        off = max(share / aim, aim / share)
        return worst, not frames[place].liked, not praised, other_look, off

    return sorted(range(len(frames)), key=rank)


def _is_lent(turn: Turn, place: int, fault: str) -> bool:
    """Whether leaves that moved can come from another frame into one that is praised."""
    frames = told_frames.frames_of(turn)
    praised = frames[place].liked or "good" in frames[place].sights
    still = any("leaves" not in frame.sights for frame in frames)
    return fault == "leaves" and praised and still


def _why(turn: Turn, place: int) -> Iterator[str]:
    if told_frames.frames_of(turn)[place].liked:
        yield TEXTS["home.why.best"]
    yield TEXTS["home.why.look"].format(**told_shares.values_of(turn, place))
    yield TEXTS["home.why.least" if _faults_of(turn, place) else "home.why.clean"]


def _beside(turn: Turn, order: list[int]) -> list[int]:
    """Sound frames of other looks, one of each."""
    looks, beside = {told_shares.look_in(turn, order[0])}, []
    for place in order[1:]:
        look = told_shares.look_in(turn, place)
        if look not in looks and not _faults_of(turn, place):
            looks.add(look)
            beside.append(place)
    return beside[:_MORE]


def _say_out(turn: Turn, kept: int) -> None:
    pieces = []
    for place in range(len(told_frames.frames_of(turn))):
        faults = [_named(turn, place, fault) for fault in _faults_of(turn, place)]
        if faults and place != kept:
            listed = ", ".join(dict.fromkeys(faults))
            frame = told_names.name(turn, place)
            pieces.append(TEXTS["home.out_piece"].format(frame=frame, faults=listed))
    if pieces:
        turn.say(Role.SETTINGS, "home.out", list=", ".join(pieces))


def equal(turn: Turn) -> None:
    """How far each frame has to be lifted to the brightest of all."""
    if len(told_frames.frames_of(turn)) < 2:
        turn.say(Role.SETTINGS, "home.which_frames")
    else:
        _say_equal(turn, list(range(len(told_frames.frames_of(turn)))))


def _named(turn: Turn, place: int, fault: str) -> str:
    """A fault in a word or two; of the time only where the share says so, too."""
    if fault in {"mush", "hard"} and not told_seen.is_of_the_time(turn, place, fault):
        fault = f"{fault}_not"
    return TEXTS[f"home.fault.{fault}"]


def _say_equal(turn: Turn, places: list[int]) -> None:
    """How far each has to be lifted to the brightest of them, before any is compared."""
    if len(places) < 2:
        return
    top = max(told_levels.level_of(turn, place) for place in places)
    lifts = {place: top - told_levels.level_of(turn, place) for place in places}
    pieces = [
        TEXTS["home.equal_piece"].format(
            frame=told_names.name(turn, place), stops=measures.stops(stops)
        )
        for place, stops in lifts.items()
        if stops >= SAME_STOPS
    ]
    if pieces:
        turn.say_list(Role.CHECK, "home.equal", pieces)
    else:
        turn.say(Role.CHECK, "home.equal_already")


# the log, and next time


def log(turn: Turn, typed: str) -> None:
    """The line of the frame that a message names, which is the one to keep; else of the best."""
    named = named_in(plain_times(typed.casefold()), told_frames.frames_of(turn)).places
    if len(named) == 1:
        told_frames.mark(turn, named[0], liked=True)
    place = named[0] if len(named) == 1 else ranked(turn)[0]
    day_log.say(turn, place, review_words.conditions_of(typed))
    if review_words.asks_for_next_time(typed):
        say_next_time(turn, Role.CHECK)


def say_next_time(turn: Turn, role: Role) -> None:
    """What the frames have shown to do otherwise, and the times to take again."""
    remedies = [*_remedies(turn)][:_MOST_REMEDIES]
    turn.say_list(role, "home.next_time", [*remedies, _times(turn)], joint="; ")


def _remedies(turn: Turn) -> Iterator[str]:
    found: dict[str, int] = {}
    for place, frame in enumerate(told_frames.frames_of(turn)):
        for seen in frame.sights:
            named = seen
            if seen in {"soft", "depth"}:
                cause = told_softness.cause_of(turn, place)
                named = {"diffraction": "diffraction", "too_open": "depth"}.get(cause, "soft")
            found.setdefault(named, place)
    for remedy in _REMEDIES:
        if remedy in found:
            values = told_softness.values_of(turn, found[remedy])
            yield TEXTS[f"home.remedy.{remedy}"].format(**values)


def _times(turn: Turn) -> str:
    """The best frame's time with its neighbours, for a ladder of the same view."""
    camera, best = turn.camera, ranked(turn)[0]
    best_s = exact_shutter_s(told_frames.frames_of(turn)[best].shutter_s)
    if {"mush", "hard"} & set(_faults_of(turn, best)):  # none has the look: its own time
        best_s = told_shares.flow_of(turn).time_for(aim_of(turn, reckoning.wished_look(turn.facts)))
    times = [solving.time_text(best_s * factor, camera) for factor in (0.5, 1.0, 2.0)]
    return TEXTS["home.remedy.times"].format(list=measures.listing(times, TEXTS["and"]))


def next_time(turn: Turn) -> None:
    """Answer what to do differently: the remedies, the times, and the line for the log."""
    say_next_time(turn, Role.SETTINGS)
    day_log.say(turn, ranked(turn)[0])
    turn.reason("why.practice")
