"""The job that measures frames together, or one of them again."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Final

from bot.dialogue.actions import FrameRef, MeasureFrames, MeasureOptions
from bot.dialogue.events import FramesMeasured, NamedPicture
from bot.runtime.origins import derived_origin
from bot.runtime.outcomes import Outcome, Picture
from bot.runtime.workbench import Workbench
from bot.store.rows import JobRow, PictureRow, Written
from core.errors import FrameFault

#: All processes of a job together have their own, shorter limits; this is for a checker that
#: hangs [s]. Own rule.
_MEASURE_S: Final = 600.0
#: These need two frames.
_OF_SEVERAL: Final = frozenset({"compare", "average"})


@dataclass
class _Fetched:
    """The files that came, and what was wrong with the others."""

    frames: list[FrameRef] = field(default_factory=list)
    files: list[bytes] = field(default_factory=list)
    left_out: dict[str, Outcome] = field(default_factory=dict)


@dataclass(frozen=True)
class MeasureJob:
    """Fetches shared frames again, has them measured, and tells their conversation.

    Attributes:
        bench: what it works with.
        tell: is told how many frames of a job are done.
        together_bytes: largest size of all files of a job.
    """

    bench: Workbench
    tell: Callable[[str, int], None]
    together_bytes: int

    async def run(self, job: JobRow) -> Written | None:
        """Measure; None when it was ended."""
        action = MeasureFrames.model_validate_json(job.input)
        fetched = _Fetched()
        with self.bench.courtesy.at_work(job.key.room_id):
            outcome = await self.bench.unless_ended(
                job, lambda: self._measured(job, action, fetched)
            )
            if outcome is None:
                return None
            return await self._finish(job, action, fetched, outcome)

    async def give_up(self, job: JobRow) -> Written | None:
        """Say that these frames can't be measured."""
        action = MeasureFrames.model_validate_json(job.input)
        return await self._finish(job, action, _Fetched(), Outcome(fault=FrameFault.CRASHED))

    async def _measured(self, job: JobRow, action: MeasureFrames, fetched: _Fetched) -> Outcome:
        await self._fetch(fetched, action, job.delays)
        return await self._outcome(job, action, fetched)

    async def _fetch(self, fetched: _Fetched, action: MeasureFrames, delays: int) -> None:
        for frame in action.frames:
            data = await self.bench.fetching.fetch(frame.media, delays)
            if isinstance(data, bytes) and self._too_much(fetched, data):
                numbers = {"limit": float(self.together_bytes)}
                data = Outcome(fault=FrameFault.TOO_MANY_BYTES, numbers=numbers)
            if isinstance(data, Outcome):
                fetched.left_out[frame.event_id] = data
            else:
                fetched.frames.append(frame)
                fetched.files.append(data)

    def _too_much(self, fetched: _Fetched, data: bytes) -> bool:
        return sum(map(len, fetched.files)) + len(data) > self.together_bytes

    async def _outcome(self, job: JobRow, action: MeasureFrames, fetched: _Fetched) -> Outcome:
        fewest = 2 if action.what in _OF_SEVERAL else 1
        if len(fetched.files) < fewest:
            first = next(iter(fetched.left_out.values()), Outcome())
            return Outcome(fault=first.fault or FrameFault.CRASHED, numbers=first.numbers)
        options = _options(action, fetched.frames)
        async with self.bench.turn(job, _MEASURE_S):
            return await self.bench.checker.measure(
                action.what, fetched.files, options, lambda done: self.tell(job.job_id, done)
            )

    async def _finish(
        self, job: JobRow, action: MeasureFrames, fetched: _Fetched, outcome: Outcome
    ) -> Written | None:
        now = self.bench.clock()
        read = tuple(fetched.frames[place].event_id for place in outcome.read)
        names = [await self.bench.keep(picture.data) for picture in outcome.pictures]
        event = FramesMeasured(
            origin=derived_origin(job.origin, f"job-{job.job_id}", now, now),
            what=action.what,
            frame_event_ids=read,
            left_out=_left_out(fetched, outcome),
            comparison=outcome.comparison,
            report=outcome.report,
            pictures=tuple(
                NamedPicture(name=name, shows=picture.shown.shows, frame=picture.shown.frame)
                for name, picture in zip(names, outcome.pictures, strict=True)
            ),
            fault=outcome.fault,
            fault_numbers=dict(outcome.numbers),
        )
        rows = tuple(
            _row(job, name, picture, read, now + self.bench.kept)
            for name, picture in zip(names, outcome.pictures, strict=True)
        )
        return await self.bench.finish(job, now, event, rows)


def _options(action: MeasureFrames, frames: Sequence[FrameRef]) -> MeasureOptions:
    """The options, with the place of the leaf frame among those that came."""
    leaf = action.options.leaf
    if leaf is None:
        return action.options
    named = action.frames[leaf] if leaf < len(action.frames) else None
    place = frames.index(named) if named in frames else None
    return action.options.model_copy(update={"leaf": place})


def _left_out(fetched: _Fetched, outcome: Outcome) -> dict[str, FrameFault]:
    """What was wrong with single frames, by their events."""
    here = {fetched.frames[place].event_id: fault for place, fault in outcome.left_out.items()}
    gone = {event_id: one.fault for event_id, one in fetched.left_out.items() if one.fault}
    return gone | here


def _row(
    job: JobRow, name: str, picture: Picture, read: Sequence[str], expires_at: datetime
) -> PictureRow:
    """Whose picture it is, and which frames it shows."""
    place = picture.shown.frame
    shown = read if place is None else read[place : place + 1]
    first = shown[0] if shown else job.frame_event_id
    return PictureRow(name, job.key.person_id, expires_at, first, tuple(shown[1:]))
