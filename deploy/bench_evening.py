"""Times an evening of 60 frames on one process, on two, and on a Dask cluster of two workers."""

from __future__ import annotations

import asyncio
import io
import sys
import tempfile
import time
from typing import Final, NamedTuple

from distributed import LocalCluster
from PIL import Image

from bot.runtime.cluster import Cluster
from bot.runtime.frames import FrameServer
from bot.runtime.ports import FrameChecker
from bot.runtime.turns import Turns
from bot.trouble import Troubles
from deploy.bench_frame import natural_frame

#: Frames of an evening, and the people that they are of (own rule: a workshop's review).
FRAMES: Final = 60
PEOPLE: Final = 6
#: The frames are as phones and chat clients send them: long side [px] (own rule). Larger ones take
#: longer, and so hide what is lost between them.
LONG_SIDE: Final = 3000
#: How much of it is measured in warming up.
WARM_UP: Final = 4


class Evening(NamedTuple):
    """How long all frames took, and how long each person's first frame [s]."""

    whole_s: float
    firsts_s: list[float]


def shared_frame() -> bytes:
    """A frame of the other benchmark at the size of a shared one."""
    with Image.open(io.BytesIO(natural_frame())) as frame:
        frame.thumbnail((LONG_SIDE, LONG_SIDE))
        out = io.BytesIO()
        frame.save(out, "JPEG", quality=90)
    return out.getvalue()


async def evening(checker: FrameChecker, data: bytes, frames: int = FRAMES) -> Evening:
    """All frames at once, ten of each person, as the runtime hands them out."""
    turns = Turns(lambda: checker.at_once)
    firsts: dict[str, float] = {}
    began = time.perf_counter()

    async def one(person: str) -> None:
        async with turns.turn(person):
            outcome = await checker.check(data)
        if outcome.report is None:
            raise RuntimeError(f"not measured: {outcome.fault}")
        firsts.setdefault(person, time.perf_counter() - began)

    async with asyncio.TaskGroup() as group:
        for number in range(frames):
            group.create_task(one(f"person {number * PEOPLE // frames}"))
    return Evening(time.perf_counter() - began, sorted(firsts.values()))


async def on_this_machine(workers: int, data: bytes) -> Evening:
    """An evening on so many processes at a time."""
    server = FrameServer(workers=workers)
    await server.start()
    await evening(server, data, WARM_UP)
    taken = await evening(server, data)
    await server.stop()
    return taken


async def on_a_cluster(data: bytes) -> Evening:
    """An evening on two workers of a cluster on this machine."""
    with tempfile.TemporaryDirectory() as folder:
        async with LocalCluster(
            n_workers=2,
            threads_per_worker=1,
            host="127.0.0.1",
            dashboard_address=":0",
            local_directory=folder,
            asynchronous=True,
        ) as local:
            nobody = FrameServer()
            cluster = Cluster(local.scheduler_address, nobody, Troubles().cluster)
            await cluster.start()
            await evening(cluster, data, WARM_UP)
            if cluster.at_once != 2:
                raise RuntimeError("the cluster is not there")
            taken = await evening(cluster, data)
            await cluster.stop()
            return taken


async def measure() -> str:
    """All three; the figures as text."""
    data = shared_frame()
    one = await on_this_machine(1, data)
    two = await on_this_machine(2, data)
    there = await on_a_cluster(data)
    width, height = Image.open(io.BytesIO(data)).size
    rows = (
        f"evening of {FRAMES} frames of {width * height / 1e6:.0f} megapixels, {PEOPLE} people",
        f"one process                 {_told(one)}",
        f"two processes               {_told(two)}",
        f"cluster of two workers      {_told(there)}",
        f"two processes against one:  {one.whole_s / two.whole_s:.2f} (aim: at least 1.7)",
        f"cluster against one:        {one.whole_s / there.whole_s:.2f}",
    )
    return "\n".join(rows)


def _told(evening: Evening) -> str:
    rate = FRAMES / evening.whole_s
    return (
        f"{evening.whole_s:6.1f} s, {rate:5.2f} frames a second, "
        f"the last person's first after {evening.firsts_s[-1]:.1f} s"
    )


def main() -> int:
    """Measure and print the table."""
    print(asyncio.run(measure()))
    return 0


if __name__ == "__main__":
    sys.exit(main())
