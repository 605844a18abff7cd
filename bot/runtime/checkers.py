"""Who measures frames: processes of this machine, or a cluster with these as its stand-in."""

from __future__ import annotations

from contextlib import AsyncExitStack
from importlib.util import find_spec

from bot.exits import Exit
from bot.runtime.frames import FrameServer
from bot.runtime.ports import FrameChecker
from bot.trouble import Troubles


class NoClusterLibraryError(Exception):
    """The settings name a cluster, and the library for it is not installed."""

    exit_code = Exit.CONFIG

    def __init__(self) -> None:
        super().__init__(
            "LINN_WORKERS names a Dask scheduler, for which the library “distributed” is needed: "
            "install Linn with its extra “cluster”, or set LINN_WORKERS to a number."
        )


async def frame_checker(
    stack: AsyncExitStack, processes: int, scheduler: str | None, troubles: Troubles
) -> FrameChecker:
    """What measures frames, started; it is stopped when the stack is closed.

    Args:
        stack: takes what is to be stopped.
        processes: how many frames are measured on this machine at the same time.
        scheduler: address of a cluster's scheduler, None without one.
        troubles: tells the log while the cluster is away.

    Raises:
        NoClusterLibraryError: a cluster is named, and the library for it is not installed.
    """
    if scheduler is not None and find_spec("distributed") is None:
        raise NoClusterLibraryError
    here = FrameServer(workers=processes)
    stack.push_async_callback(here.stop)
    await here.start()
    if scheduler is None:
        return here
    from bot.runtime.cluster import Cluster  # noqa: PLC0415  its library is an extra

    cluster = Cluster(scheduler, here, troubles.cluster)
    stack.push_async_callback(cluster.stop)
    await cluster.start()
    return cluster
