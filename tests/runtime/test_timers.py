"""Reminders: fired when due, late ones at once, replaced and cancelled by name."""

from __future__ import annotations

import asyncio
from datetime import timedelta

import pytest
from sqlalchemy.exc import OperationalError

from bot.runtime import timers as timers_module
from bot.runtime.runtime import utc_now
from tests.runtime.fakes import World, text


async def heard(world: World, count: int) -> list[str]:
    """What was said, once so much was said."""
    async with asyncio.timeout(10):
        while len(world.server.bodies) < count:
            await world.server.bell.sleep()
    return world.server.bodies


async def test_a_reminder_comes_when_it_is_due(world: World) -> None:
    """One due now comes now; one due next year does not."""
    async with world.running() as runtime:
        await runtime.take_in([text("later turn back"), text("timer check in")], None)
        assert await heard(world, 1) == ["reminder: check in"]
        await runtime.drain()


async def test_a_reminder_that_came_due_while_the_bot_was_down_comes_at_the_start(
    world: World,
) -> None:
    """A year later, the runtime starts and reminds at once, in the thread that asked."""
    await world.says(text("later turn back", direct=False, event_id="$asked"))
    async with world.running(clock=lambda: utc_now() + timedelta(days=366)) as runtime:
        await heard(world, 1)
        await runtime.drain()
    ((_, sent),) = world.server.sent
    assert (sent.body, sent.thread_id, sent.reply_to) == ("reminder: turn back", "$asked", "$asked")


async def test_the_same_name_replaces_and_cancel_drops(world: World) -> None:
    """Of two reminders with one name only the newer stands; a cancelled one does not come."""
    await world.says(
        text("later turn back"), text("later turn back"), text("later leave"), text("cancel leave")
    )
    async with world.running(clock=lambda: utc_now() + timedelta(days=366)) as runtime:
        await heard(world, 1)
        await runtime.drain()
        assert world.server.bodies == ["reminder: turn back"]


async def test_a_cancelled_reminder_that_is_still_in_memory_does_not_come(world: World) -> None:
    """The store, not the memory, says whether a reminder stands."""
    clock = [timedelta()]
    async with world.running(clock=lambda: utc_now() + clock[0]) as runtime:
        await runtime.take_in([text("later leave"), text("cancel leave")], None)
        await runtime.drain()
        clock[0] = timedelta(days=366)
        await runtime.take_in([text("timer now")], None)
        assert await heard(world, 1) == ["reminder: now"]


async def test_trouble_with_the_database_delays_a_reminder(
    world: World, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A reminder that could not be turned into an event comes a little later."""
    monkeypatch.setattr(timers_module, "_TROUBLE_S", 0.01)
    await world.says(text("later turn back"))
    left = [OperationalError("DELETE", {}, Exception("locked"))]

    def locked(step: str) -> None:
        if step == "before commit" and started and left:
            raise left.pop()

    started: list[bool] = []
    clock = [timedelta()]
    async with world.running(hook=locked, clock=lambda: utc_now() + clock[0]) as runtime:
        started.append(True)
        clock[0] = timedelta(days=366)
        runtime._timers.put([])
        assert await heard(world, 1) == ["reminder: turn back"]
        assert left == []
