"""What is asked of frames that were shared: compared, averaged, drawn at other times, a grid."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import timedelta
from types import MappingProxyType
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.actions import (
    MOST_COMPARED,
    MOST_TOGETHER,
    CancelMeasuring,
    FrameRef,
    MeasureFrames,
    MeasureOptions,
)
from bot.dialogue.aims import own_here
from bot.dialogue.by_numbers import as_taken, share_per_s
from bot.dialogue.compose import Role
from bot.dialogue.events import MeasuredKind
from bot.dialogue.facts import Facts
from bot.dialogue.kept import Measured, Together
from bot.dialogue.reading.frame_words import Wished, names_no_cell
from bot.dialogue.steps.anywhere import limits, repeat
from bot.dialogue.steps.frames import views
from bot.dialogue.steps.frames.at_hand import at_hand, known, the_one
from bot.dialogue.turn import Turn

#: A direction alone corrects what was asked within this; later it tells of the fall (own rule).
_FRESH: Final = timedelta(minutes=10)
#: An end that comes so long after the wish is meant for it (own rule: a slow frame, and a thumb).
_LATELY: Final = timedelta(minutes=2)
#: What cells and directions correct, when it was asked for last.
_CORRECTED: Final = frozenset({"compare", "illustrate"})


def answer(turn: Turn, wish: Wished) -> bool:
    """Have frames measured as a message wishes; whether it was a wish that counts here."""
    match wish.what:
        case "compare":
            _of_several(turn, "compare", _to_compare(turn, wish.number))
        case "average":
            _of_several(turn, "average", _to_average(turn, wish.number))
        case "illustrate":
            _illustrate(turn, wish.times_s)
        case "grid":
            _of_one(turn, "grid")
        case _:
            return _placed(turn, wish)
    return True


def camera_pixels(facts: Facts) -> tuple[int, int] | None:
    """Long and short side of the camera's pictures from its megapixels, taken as 3:2."""
    if facts.megapixels is None:
        return None
    short = (facts.megapixels * 1e6 / 1.5) ** 0.5
    return round(short * 1.5), round(short)


# which frames


def _to_compare(turn: Turn, number: int | None) -> tuple[str, ...]:
    frames = at_hand(turn)
    if number is not None:
        return frames[-min(max(number, 2), MOST_COMPARED) :]
    if turn.replies_to in frames[:-1]:
        return tuple(name for name in frames if name in {turn.replies_to, frames[-1]})
    if turn.replies_to in frames or len(known(turn)) < len(frames):
        return frames[-2:]
    return views.to_compare(known(turn))


def _to_average(turn: Turn, number: int | None) -> tuple[str, ...]:
    frames = at_hand(turn)
    if number is not None:
        return frames[-min(max(number, 2), MOST_TOGETHER) :]
    return views.to_average(known(turn))


# what is asked


def _of_several(turn: Turn, what: MeasuredKind, frames: Sequence[str]) -> None:
    if len(frames) < 2:
        key = "together.two_needed" if what == "compare" else "together.alike_needed"
        turn.say(Role.SETTINGS, key)
        repeat.put_again_if_open(turn, whole=False)
        return
    request(turn, what, frames)


def _of_one(turn: Turn, what: MeasuredKind, times_s: tuple[float, ...] = ()) -> None:
    frame = the_one(turn)
    if frame is None:
        _frame_needed(turn)
        return
    request(turn, what, [frame], times_s=times_s)


def _illustrate(turn: Turn, times_s: tuple[float, ...]) -> None:
    if reckoning.is_stream(turn.facts):
        turn.say(Role.SETTINGS, "drawn.not_plunging")
        repeat.put_again_if_open(turn, whole=False)
        return
    if the_one(turn) is not None and share_per_s(_taken(turn, [the_one(turn)])) is None:
        turn.say(Role.SETTINGS, "drawn.speed_unknown")
        repeat.put_again_if_open(turn, whole=False)
        return
    _of_one(turn, "illustrate", times_s)


def request(
    turn: Turn,
    what: MeasuredKind,
    frames: Sequence[str],
    *,
    times_s: tuple[float, ...] = (),
    told: Mapping[str, object] = MappingProxyType({}),
) -> None:
    """Have frames measured; the answer follows with the result.

    Args:
        turn: the answer under construction.
        what: is done with them.
        frames: their events.
        times_s: to be drawn [s].
        told: options that the person has just told.
    """
    if limits.frame_refused(turn):
        return
    media = turn.context.conversation.media
    refs = tuple(FrameRef(event_id=name, media=media[name]) for name in frames)
    options = _options(turn, what, frames, times_s).model_copy(update=dict(told))
    together = Together(what=what, frames=tuple(frames), times_s=times_s, asked_at=turn.now)
    turn.change_conversation(together=together)
    turn.do(MeasureFrames(what=what, frames=refs, options=options))


def _options(
    turn: Turn, what: MeasuredKind, frames: Sequence[str], times_s: tuple[float, ...]
) -> MeasureOptions:
    facts, measured = turn.facts, turn.context.conversation.measured
    told = [measured[name] for name in frames if name in measured]
    cells = next((one.water_cells for one in reversed(told) if one.water_cells), ())
    axis = next((one.axis_deg for one in reversed(told) if one.axis_deg is not None), None)
    leaf = _leaf(turn, told) if what == "compare" and len(told) == len(frames) else None
    wished = reckoning.wished_look(facts)
    return MeasureOptions(
        wished=wished,
        aim=own_here(turn, wished),
        times_s=times_s,
        water_cells=cells,
        axis_deg=axis,
        share_per_s=share_per_s(_taken(turn, frames)),
        leaf=leaf,
        camera_pixels=camera_pixels(facts),
        language=turn.context.person.language,
    )


def _taken(turn: Turn, names: Sequence[str | None]) -> Facts:
    """What is known of these frames: what was told, and the focal length that their data state."""
    measured = turn.context.conversation.measured
    told = [measured[name] for name in names if name in measured and measured[name].focal_mm]
    if not told:
        return turn.facts
    return as_taken(turn.facts, told[-1].focal_mm, told[-1].focal_full_frame_mm)


def _leaf(turn: Turn, frames: Sequence[Measured]) -> int | None:
    """The place of the frame for the leaves, where one was advised on this walk."""
    place = views.shortest(frames)
    if place is None or "leaf_frame" not in turn.walk.checks:
        return None
    times = sorted(frame.shutter_s or 0.0 for frame in frames)
    return place if views.is_for_leaves(times[0], times[1]) else None


# corrections, and the end


def _placed(turn: Turn, wish: Wished) -> bool:
    """Cells, or a direction after a frame was drawn or measured again; else that is no wish."""
    if wish.what == "direction" and _last(turn) is None:
        return False
    if the_one(turn) is None:
        _frame_needed(turn)
        return True
    if _is_passing(turn):
        turn.resume_question()
    if wish.what == "cells":
        place_water(turn, wish.cells)
    else:
        _again(turn, axis_deg=wish.axis_deg)
    return True


def answer_no_cell(turn: Turn, said: str) -> bool:
    """Say which cells there are to who names another one of a frame; whether it was so."""
    if not names_no_cell(said) or (the_one(turn) is None and not _is_passing(turn)):
        return False
    turn.say(Role.SETTINGS, "together.no_cell")
    repeat.put_again_if_open(turn, whole=False)
    return True


def _is_passing(turn: Turn) -> bool:
    """Whether the question about the cells stands open, which is answered by naming them."""
    question = turn.context.conversation.question
    return question is not None and question.name == "water_cells"


def place_water(turn: Turn, cells: tuple[str, ...]) -> None:
    """The water is in these cells, as the person says; measured, drawn or compared again."""
    _again(turn, water_cells=cells)


def _again(turn: Turn, **told: object) -> None:
    """What was drawn or compared last is done again, else the frame is measured again."""
    last = _last(turn)
    frames = (the_one(turn) or "",) if last is None else last.frames
    _note_water(turn, frames, told)
    if last is not None and last.what in _CORRECTED:
        request(turn, last.what, frames, times_s=last.times_s, told=told)
    else:
        request(turn, "recheck", frames, told=told)


def _last(turn: Turn) -> Together | None:
    """What was asked last, while it is what a correction is meant for: no newer frame has come."""
    last, frames = turn.context.conversation.together, known(turn)
    if last is None or last.what == "average" or turn.now - last.asked_at > _FRESH:
        return None
    newer = any(frame.sent_at > last.asked_at for frame in frames.values())
    return None if newer or not set(last.frames) <= set(at_hand(turn)) else last


def _note_water(turn: Turn, frames: Sequence[str], told: dict[str, object]) -> None:
    """Keep where the person says that the water is, or how it runs, with these frames."""
    measured = dict(turn.context.conversation.measured)
    for name in frames:
        if name in measured:
            measured[name] = measured[name].model_copy(update=told)
    turn.change_conversation(measured=measured)


def is_under_way(turn: Turn) -> bool:
    """Whether frames are being measured, or wait for it."""
    conversation = turn.context.conversation
    together = conversation.together
    return bool(conversation.shared) or (together is not None and together.pending)


def was_under_way(turn: Turn) -> bool:
    """Whether frames were measured just now: who ends it then has not seen the result yet."""
    together = turn.context.conversation.together
    begun = [frame.sent_at for frame in known(turn).values()]
    if together is not None:
        begun.append(together.asked_at)
    return any(turn.now - at <= _LATELY for at in begun)


def end(turn: Turn) -> None:
    """End what is being measured; its result does not come any more."""
    together = turn.context.conversation.together
    done = together.model_copy(update={"pending": False}) if together is not None else None
    turn.change_conversation(shared={}, together=done)
    turn.do(CancelMeasuring())


def let_go(turn: Turn, event_id: str) -> None:
    """A frame is gone, and with it the result of what was asked of it."""
    together = turn.context.conversation.together
    if together is not None and event_id in together.frames:
        turn.change_conversation(together=None)


def _frame_needed(turn: Turn) -> None:
    turn.say(Role.SETTINGS, "together.one_needed")
    repeat.put_again_if_open(turn, whole=False)
