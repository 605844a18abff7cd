"""Frames told in words at home: kept with what was seen in them, one with those shared."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from datetime import timedelta
from typing import Any, Final

from bot.dialogue.kept import Measured, Review, ToldFrame
from bot.dialogue.reading.frame_list import is_same_time
from bot.dialogue.turn import Turn

#: "Home now" may come with a frame, which was sent before it is heard (own rule).
_ON_ITS_WAY: Final = timedelta(minutes=10)


#: What can't both be true of a frame.
_OPPOSITE: Final = {"holds": "clipped", "clipped": "holds", "mush": "hard", "hard": "mush"}


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


def common(values: Iterable[float | None]) -> float | None:
    """The value that most frames have; the first of those that are as many."""
    told = Counter(value for value in values if value is not None)
    return told.most_common(1)[0][0] if told else None
