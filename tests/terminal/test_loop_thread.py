"""The event loop beside the keyboard."""

from __future__ import annotations

import asyncio
from collections.abc import Coroutine
from typing import Any

import pytest

from bot.terminal.loop_thread import LoopThread


async def _result(value: int) -> int:
    await asyncio.sleep(0)
    return value


def test_results_come_back() -> None:
    """A coroutine's result is handed to the waiting thread."""
    with LoopThread() as loop:
        assert loop.run(_result(7)) == 7


def test_errors_come_back() -> None:
    """So is its exception."""

    async def fail() -> None:
        raise ValueError("seven")

    with LoopThread() as loop, pytest.raises(ValueError, match="seven"):
        loop.run(fail())


def test_leaving_cancels_what_still_runs() -> None:
    """Tasks that were started in the loop do not outlive it."""
    ended: list[str] = []

    async def wait() -> None:
        try:
            await asyncio.Event().wait()
        finally:
            ended.append("cancelled")

    async def start() -> asyncio.Task[None]:
        task = asyncio.create_task(wait())
        await asyncio.sleep(0)
        return task

    with LoopThread() as loop:
        task = loop.run(start())
    assert ended == ["cancelled"]
    assert task.cancelled()


def test_interrupt_cancels_the_coroutine(monkeypatch: pytest.MonkeyPatch) -> None:
    """Ctrl-C while waiting ends the wait and the coroutine."""
    loop = LoopThread()

    class Interrupted:
        cancelled = False

        def result(self) -> None:
            raise KeyboardInterrupt

        def cancel(self) -> None:
            self.cancelled = True

    future = Interrupted()

    def submit(coroutine: Coroutine[Any, Any, Any], _: object) -> Interrupted:
        coroutine.close()
        return future

    with loop, monkeypatch.context() as patch:
        patch.setattr(asyncio, "run_coroutine_threadsafe", submit)
        with pytest.raises(KeyboardInterrupt):
            loop.run(_result(1))
    assert future.cancelled
