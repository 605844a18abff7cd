"""Who does which kind of slow work, and how much of it at the same time."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final

from bot.runtime.card_job import CardJob
from bot.runtime.courtesy import Courtesy
from bot.runtime.data_job import DataJob
from bot.runtime.ending import Endings
from bot.runtime.fetching import Fetching
from bot.runtime.frame_job import FrameJob
from bot.runtime.granting import Limits
from bot.runtime.jobs import Bound, Job
from bot.runtime.measure_job import MeasureJob
from bot.runtime.orders import FrameLimits
from bot.runtime.ports import FrameChecker, Transport
from bot.runtime.take_back_job import TakeBackJob
from bot.runtime.turns import Turns
from bot.runtime.workbench import Workbench
from bot.store.pictures import PictureFiles
from bot.store.rows import JobKind
from bot.store.store import Store

#: Frames that may come in while others are measured: one that drips in holds up no other, and
#: another person's is there when the turn comes. Own rule: each is held in memory meanwhile.
_MORE_DOWNLOADS: Final = 4
#: The same of one person: one comes in while as many as can be are measured. Own rule.
_MORE_OF_ONE: Final = 1


@dataclass(frozen=True)
class Surroundings:
    """What the runtime works with; all of it is opened and closed by the caller."""

    store: Store
    files: PictureFiles
    transport: Transport
    checker: FrameChecker


@dataclass(frozen=True)
class Workshop:
    """What all kinds of work share.

    Attributes:
        around: store, files, transport and frame checker.
        limits: what work may cost.
        courtesy: shows that the bot is at work.
        scope: tells in which scope transaction ids hold at present.
        clock: tells the time.
        endings: how work that has begun is ended.
        tell: is told how many frames of a job are done.
    """

    around: Surroundings
    limits: Limits
    courtesy: Courtesy
    scope: Callable[[], str]
    clock: Callable[[], datetime]
    endings: Endings
    tell: Callable[[str, int], None]

    def kinds(self) -> dict[JobKind, Job]:
        """Who does which kind of work."""
        around, limits = self.around, self.limits
        store, files, transport = around.store, around.files, around.transport
        kept = timedelta(days=limits.frames_days)
        bench = Workbench(
            store,
            Fetching(transport, limits.frame_bytes),
            around.checker,
            files,
            self.courtesy,
            self.clock,
            kept,
            Turns(lambda: around.checker.at_once),
            self.endings,
        )
        return {
            JobKind.CHECK_FRAME: FrameJob(bench),
            JobKind.MEASURE_FRAMES: MeasureJob(bench, self.tell, FrameLimits().together_bytes),
            JobKind.DRAW_CARD: CardJob(store, files, self.scope, self.clock, kept),
            JobKind.TAKE_BACK: TakeBackJob(store, transport, files, self.scope, self.clock),
            JobKind.TELL_DATA: DataJob(store, files, self.scope, self.clock),
        }

    def bounds(self) -> dict[JobKind, Bound]:
        """How much of each kind at the same time."""
        checker = self.around.checker
        return {
            JobKind.CHECK_FRAME: Bound(
                lambda: checker.at_once + _MORE_DOWNLOADS, lambda: checker.at_once + _MORE_OF_ONE
            ),
            # Each holds all its files in memory: one more than is measured, one of a person.
            JobKind.MEASURE_FRAMES: Bound(lambda: checker.at_once + _MORE_OF_ONE, lambda: 1),
            JobKind.DRAW_CARD: Bound.of(1),
            JobKind.TAKE_BACK: Bound.of(2),
            JobKind.TELL_DATA: Bound.of(1),
        }
