"""An event loop in a thread of its own, for a main thread that waits for the keyboard."""

from __future__ import annotations

import asyncio
import threading
from collections.abc import Coroutine
from types import TracebackType
from typing import Any, Self, TypeVar

Result = TypeVar("Result")


class LoopThread:
    """Runs coroutines while the main thread may block in `input()`.

    Line editing and Ctrl-C stay what they are in any terminal program, and messages can still
    arrive while somebody types. Leaving the context ends all that runs in the loop.
    """

    def __init__(self) -> None:
        self._loop = asyncio.new_event_loop()
        self._thread = threading.Thread(target=self._run, name="linn-loop", daemon=True)

    def run(self, coroutine: Coroutine[Any, Any, Result]) -> Result:
        """Wait for a coroutine's result; Ctrl-C meanwhile cancels it."""
        future = asyncio.run_coroutine_threadsafe(coroutine, self._loop)
        try:
            return future.result()
        except BaseException:  # Ctrl-C, or a signal that ends the program
            future.cancel()
            raise

    def __enter__(self) -> Self:
        """Start the thread."""
        self._thread.start()
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        """Cancel what still runs, and end the thread."""
        self.run(_cancel_all())
        self._loop.call_soon_threadsafe(self._loop.stop)
        self._thread.join()
        self._loop.close()

    def _run(self) -> None:
        asyncio.set_event_loop(self._loop)
        self._loop.run_forever()


async def _cancel_all() -> None:
    tasks = asyncio.all_tasks() - {asyncio.current_task()}
    for task in tasks:
        task.cancel()
    await asyncio.gather(*tasks, return_exceptions=True)
    loop = asyncio.get_running_loop()
    await loop.shutdown_asyncgens()
    await loop.shutdown_default_executor()
