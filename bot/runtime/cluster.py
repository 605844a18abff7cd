"""Frames measured on a Dask cluster; here, while its scheduler is away."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Sequence
from contextlib import suppress
from dataclasses import replace
from typing import Final

from distributed import Client, Future

from bot.dialogue.actions import MeasureOptions
from bot.dialogue.events import MeasuredKind
from bot.pauses import loop_time_s, pause_s
from bot.runtime.cluster_task import OUTCOMES, Reply, measure_there
from bot.runtime.orders import ORDERS, FrameLimits, Order
from bot.runtime.outcomes import Outcome, Picture, is_picture
from bot.runtime.ports import FrameChecker
from bot.trouble import Trouble
from core.errors import FrameFault

#: Longest wait for the scheduler, and for leaving it [s]. Own rule: people wait meanwhile.
_CONNECT_S: Final = 5.0
#: Longest wait for a result, for each file [s]. Own rule: four times the limit of a process, for
#: the way there and for others' work; then it is done here.
_RESULT_S: Final = 120.0


class NoWorkersError(Exception):
    """The scheduler is there, and nobody works for it."""


class Cluster:
    """Has files measured on the workers of an existing Dask cluster.

    A worker gets the files of one job, as bytes, and starts confined processes for them. Whatever
    goes wrong there, or on the way, the same job is done here instead, and the cluster is tried
    again after a pause.

    Args:
        address: of the scheduler, like tcp://host:8786.
        here: measures while the cluster is away.
        trouble: tells the log while it is.
        limits: what each process may use.
    """

    def __init__(
        self,
        address: str,
        here: FrameChecker,
        trouble: Trouble,
        limits: FrameLimits | None = None,
    ) -> None:
        self._address = address
        self._here = here
        self._trouble = trouble
        self._limits = limits or FrameLimits()
        self._client: Client | None = None
        self._connecting = asyncio.Lock()
        self._failures = 0
        self._again_s = 0.0
        self._threads = 0

    @property
    def at_once(self) -> int:
        """How many pieces of work are done at the same time: as many as the cluster has threads."""
        return self._threads or self._here.at_once

    async def start(self) -> None:
        """Look for the scheduler; that it is away is no reason not to start."""
        await self._connected()

    async def stop(self) -> None:
        """Leave the cluster; what is under way there is given up."""
        self._again_s = float("inf")
        await self._leave()

    async def check(self, data: bytes, options: MeasureOptions | None = None) -> Outcome:
        """Measure one file; never raises for what a file does."""
        order = Order("check", options or MeasureOptions(), self._limits)
        found = await self._there([data], order)
        return await self._here.check(data, options) if found is None else found

    async def measure(
        self,
        what: MeasuredKind,
        files: Sequence[bytes],
        options: MeasureOptions,
        tell: Callable[[int], None] = lambda _: None,
    ) -> Outcome:
        """Measure files of one person together, or one of them again; see `FrameServer`."""
        found = await self._there(files, Order(what, options, self._limits, len(files)))
        return await self._here.measure(what, files, options, tell) if found is None else found

    async def _there(self, files: Sequence[bytes], order: Order) -> Outcome | None:
        """What comes of it on the cluster; None when it has to be done here."""
        client = await self._connected()
        if client is None:
            return None
        task: Future[Reply] | None = None
        try:
            async with asyncio.timeout(_RESULT_S * len(files)):
                # As data of their own: in the task itself they would pass through the scheduler.
                sent = await client.scatter(list(files), hash=False)
                task = client.submit(
                    measure_there, ORDERS.dump_json(order), sent, pure=False, retries=0
                )
                reply = await task
        except Exception as error:  # whatever goes wrong there is no fault of the file
            self._trouble.met(type(error).__name__)
            if task is None or task.status != "error":  # not the task alone
                await self._gone()
            return None
        finally:
            if task is not None:
                task.release()  # ends it, when nobody waits for it any more
        self._trouble.over()
        return _outcome(reply)

    async def _connected(self) -> Client | None:
        """The cluster, looked for again when it is time; None while it is away."""
        async with self._connecting:
            if self._client is None and loop_time_s() >= self._again_s:
                try:
                    await self._connect()
                except Exception as error:  # the library raises what its many parts raise
                    self._trouble.met(type(error).__name__)
                    await self._gone()
            return self._client

    async def _connect(self) -> None:
        client = Client(
            self._address,
            asynchronous=True,
            set_as_default=False,
            timeout=_CONNECT_S,
            name="linn",
        )
        try:
            async with asyncio.timeout(_CONNECT_S):
                threads = await _threads_of(client)
        except BaseException:  # cancelled, too: it must not be left half open
            await _close(client)
            raise
        self._client, self._threads, self._failures = client, threads, 0
        self._trouble.over()

    async def _gone(self) -> None:
        """Do without the cluster for a while."""
        self._failures += 1
        self._again_s = loop_time_s() + pause_s(self._failures)
        await self._leave()

    async def _leave(self) -> None:
        client, self._client, self._threads = self._client, None, 0
        if client is not None:
            await _close(client)


async def _threads_of(client: Client) -> int:
    """How many threads the workers of a scheduler have, once it answers.

    Raises:
        NoWorkersError: it has no workers.
    """
    await client
    threads: int = sum((await client.nthreads()).values())
    if not threads:
        raise NoWorkersError
    return threads


async def _close(client: Client) -> None:
    """Leave a cluster, whatever its library says to that."""
    try:
        with suppress(Exception):
            async with asyncio.timeout(_CONNECT_S):
                await client.close()
    finally:  # else it tries again when it is collected, with nobody to wait for it
        client.status = "closed"


def _outcome(reply: Reply) -> Outcome:
    """The outcome from a worker's reply."""
    words, pictures = reply
    outcome, shown = OUTCOMES.validate_json(words)
    if not all(map(is_picture, pictures)):
        return Outcome(fault=FrameFault.CRASHED)
    named = tuple(Picture(one, data) for one, data in zip(shown, pictures, strict=True))
    return replace(outcome, pictures=named)
