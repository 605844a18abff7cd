"""Somebody sets the machine's clock while the bot works: nothing waits for it, nothing is lost."""

from __future__ import annotations

import asyncio
from datetime import datetime, timedelta

import pytest

from bot.dialogue.actions import MeasureOptions
from bot.runtime import timers as timers_module
from bot.runtime.outcomes import Outcome
from bot.runtime.runtime import utc_now
from tests.runtime.fakes import FakeChecker, World, frame, text


class Clock:
    """The machine's clock, off by as much as a test says."""

    def __init__(self, off: timedelta = timedelta(0)) -> None:
        self.off = off

    def __call__(self) -> datetime:
        """The time that it shows."""
        return utc_now() + self.off


class HeldChecker(FakeChecker):
    """Measures nothing until it is let."""

    def __init__(self) -> None:
        super().__init__()
        self.begun = asyncio.Event()
        self.let = asyncio.Event()

    async def check(self, data: bytes, options: MeasureOptions | None = None) -> Outcome:
        """Wait, then measure."""
        self.begun.set()
        await self.let.wait()
        return await super().check(data, options)


@pytest.mark.parametrize("jump", [timedelta(days=-1), timedelta(minutes=-5), timedelta(days=1)])
async def test_frames_that_wait_do_not_wait_for_the_clock(world: World, jump: timedelta) -> None:
    """Set back or on while one frame is measured, the others follow it at once."""
    clock, checker = Clock(), HeldChecker()
    async with world.running(clock=clock, checker=checker) as runtime:
        await runtime.take_in([frame() for _ in range(4)], None)
        await checker.begun.wait()
        clock.off = jump
        checker.let.set()
        async with asyncio.timeout(20):
            await runtime.drain()
    assert len(checker.checked) == 4


async def test_work_of_a_clock_that_ran_fast_is_done_after_a_restart(world: World) -> None:
    """What was to be done tomorrow, by the clock of then, is done now."""
    async with world.running(clock=Clock(timedelta(days=1)), checker=HeldChecker()) as runtime:
        await runtime.take_in([frame()], None)
        async with asyncio.timeout(20):
            while world.server.bodies != ["measuring"]:
                await world.server.bell.sleep()
    assert await world.says() == ["measuring", "checked: not_a_picture"]


async def test_a_reminder_follows_the_clock(world: World, monkeypatch: pytest.MonkeyPatch) -> None:
    """A clock that was wrong at the start is set: the reminder comes without another word."""
    monkeypatch.setattr(timers_module, "_LOOK_S", 0.01)
    clock = Clock()
    async with world.running(clock=clock) as runtime:
        await runtime.take_in([text("later turn back")], None)
        await runtime.drain()
        clock.off = timedelta(days=366)
        async with asyncio.timeout(20):
            while world.server.bodies != ["reminder: turn back"]:
                await world.server.bell.sleep()
