"""Frames on a Dask cluster: in plain confined processes there, here while it is away."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import AsyncIterator, Callable, Iterator
from contextlib import AsyncExitStack
from pathlib import Path

import pytest

from bot.dialogue.actions import MeasureOptions
from bot.runtime import checkers, cluster_task
from bot.runtime.checkers import NoClusterLibraryError, frame_checker
from bot.runtime.cluster import Cluster, _outcome
from bot.runtime.frames import FrameServer
from bot.runtime.orders import FrameLimits, Shown
from bot.runtime.outcomes import Outcome
from bot.trouble import Troubles
from core.errors import FrameFault
from tests.runtime.fakes import FakeChecker
from tests.runtime.local_cluster import LocalCluster, local_cluster
from tests.runtime.test_together import view

#: How the processes of workers are started.
_MARK = b"plain_child.main()"


@pytest.fixture(autouse=True)
def _patient(monkeypatch: pytest.MonkeyPatch) -> None:
    """A machine that tests much at a time answers late."""
    monkeypatch.setattr("bot.runtime.cluster._CONNECT_S", 30.0)


@pytest.fixture(scope="module")
def dask() -> Iterator[LocalCluster]:
    """A scheduler and two workers."""
    with local_cluster(2) as running:
        yield running


@pytest.fixture
async def cluster(dask: LocalCluster) -> AsyncIterator[Cluster]:
    """The bot's side of it; here is nobody but a fake."""
    side = Cluster(dask.address, FakeChecker(), Troubles().cluster)
    await side.start()
    yield side
    await side.stop()


def here(side: Cluster) -> FakeChecker:
    """What measures in its stead."""
    assert isinstance(side._here, FakeChecker)
    return side._here


def children() -> int:
    """How many plain processes of frames run on this machine."""
    commands = [path.read_bytes() for path in Path("/proc").glob("[0-9]*/cmdline")]
    return sum(_MARK in command for command in commands)


async def test_a_frame_is_measured_as_here(cluster: Cluster) -> None:
    """Report and picture are those that a process of this machine finds."""
    server = FrameServer()
    await server.start()
    expected = await server.check(view(), MeasureOptions(camera_pixels=(6000, 4000)))
    await server.stop()
    outcome = await cluster.check(view(), MeasureOptions(camera_pixels=(6000, 4000)))
    assert outcome == expected
    assert cluster.at_once == 2
    assert here(cluster).checked == []


async def test_frames_are_measured_together(cluster: Cluster) -> None:
    """Of several files each has a process there too, and those that can't be read are named."""
    files = [view(), b"no picture", view(shift=5)]
    outcome = await cluster.measure("compare", files, MeasureOptions())
    assert (outcome.fault, outcome.read) == (None, (0, 2))
    assert outcome.left_out == {1: FrameFault.NOT_A_PICTURE}
    assert outcome.comparison is not None
    assert here(cluster).measured == []


@pytest.mark.parametrize(
    ("data", "limits", "fault"),
    [
        (b"no picture", FrameLimits(), FrameFault.NOT_A_PICTURE),
        (view(), FrameLimits(time_s=0.01), FrameFault.TOO_SLOW),
        (view(side=3000), FrameLimits(memory_bytes=30 * 2**20), FrameFault.TOO_MUCH_MEMORY),
        (b"x" * 11, FrameLimits(file_bytes=10), FrameFault.TOO_MANY_BYTES),
    ],
    ids=["no picture", "too slow", "too much memory", "too large"],
)
async def test_the_same_limits_hold_there(
    dask: LocalCluster, data: bytes, limits: FrameLimits, fault: FrameFault
) -> None:
    """A bad file is the file's fault there as it is here, and no trouble of the cluster."""
    side = Cluster(dask.address, FakeChecker(), Troubles().cluster, limits)
    outcome = await side.check(data)
    await side.stop()
    assert outcome.fault is fault
    assert here(side).checked == []


async def test_who_gives_up_waiting_ends_the_process_there(cluster: Cluster) -> None:
    """A measuring that is ended here runs on nowhere."""
    large = await asyncio.to_thread(view, 3, 0, 2600)
    checking = asyncio.create_task(cluster.check(large))
    await _until(lambda: children() == 1)
    checking.cancel()
    with pytest.raises(asyncio.CancelledError):
        await checking
    await _until(lambda: children() == 0)
    assert (await cluster.check(view())).report is not None


async def _until(true: Callable[[], bool]) -> None:
    async with asyncio.timeout(20):
        while not true():  # noqa: ASYNC110  what is watched rings no bell
            await asyncio.sleep(0.02)


async def test_what_breaks_there_is_done_here(
    cluster: Cluster, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    """An order that the workers' version can't read: the file is measured here, the log tells."""
    monkeypatch.setattr("bot.runtime.cluster.ORDERS", _Gibberish())
    with caplog.at_level(logging.WARNING, logger="bot"):
        outcome = await cluster.check(b"a frame")
    assert outcome.fault is FrameFault.NOT_A_PICTURE
    assert here(cluster).checked == [b"a frame"]
    assert "Trouble with the cluster of frames (ValidationError)" in caplog.text
    assert cluster.at_once == 2  # it stays in use


class _Gibberish:
    def dump_json(self, _: object) -> bytes:
        return b'{"what": "juggle"}'


async def test_a_reply_with_a_forged_picture_is_a_crash() -> None:
    """What comes from a worker is looked at as what comes from a process."""
    words = cluster_task.OUTCOMES.dump_json((Outcome(), (Shown("marked"),)))
    assert _outcome((words, [b"<html>"])).fault is FrameFault.CRASHED


async def test_a_cluster_without_workers_is_away_until_it_has_some(
    dask: LocalCluster, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Nothing is lost: each frame is measured here; after a pause the cluster is used again."""
    monkeypatch.setattr("bot.runtime.cluster.pause_s", lambda _: 0.5)
    await asyncio.to_thread(dask.scale, 0)
    side = Cluster(dask.address, FakeChecker(), Troubles().cluster)
    await side.start()
    both = await asyncio.gather(side.check(b"one"), side.check(b"two"))
    assert [one.fault for one in both] == [FrameFault.NOT_A_PICTURE] * 2
    assert (here(side).checked, side.at_once) == ([b"one", b"two"], 1)
    await asyncio.to_thread(dask.scale, 2)
    await asyncio.sleep(0.6)
    assert (await side.check(view())).report is not None
    assert (here(side).checked, side.at_once) == ([b"one", b"two"], 2)
    await side.stop()
    assert (await side.check(b"three")).fault is FrameFault.NOT_A_PICTURE


async def test_several_frames_are_measured_here_too(monkeypatch: pytest.MonkeyPatch) -> None:
    """With no scheduler at all, also what is of several frames."""
    monkeypatch.setattr("bot.runtime.cluster._CONNECT_S", 0.2)
    side = Cluster("tcp://127.0.0.1:9", FakeChecker(), Troubles().cluster)
    await side.start()
    assert (await side.measure("compare", [b"a", b"b"], MeasureOptions())).read == (0, 1)
    await side.stop()


async def test_the_settings_choose(monkeypatch: pytest.MonkeyPatch, dask: LocalCluster) -> None:
    """A number: processes of this machine. An address: the cluster, with one process here."""
    async with AsyncExitStack() as stack:
        checker = await frame_checker(stack, 3, None, Troubles())
        assert isinstance(checker, FrameServer)
        assert checker.at_once == 3
        checker = await frame_checker(stack, 1, dask.address, Troubles())
        assert isinstance(checker, Cluster)
        assert checker.at_once == 2
        monkeypatch.setattr(checkers, "find_spec", lambda _: None)
        with pytest.raises(NoClusterLibraryError, match="extra “cluster”"):
            await frame_checker(stack, 1, dask.address, Troubles())


async def test_what_is_under_way_when_the_scheduler_dies_is_done_here(
    dask: LocalCluster, caplog: pytest.LogCaptureFixture, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Its results will never come: so it is measured here, and the log tells it once.

    The last of these tests: it ends their cluster.
    """
    side = Cluster(dask.address, FakeChecker(), Troubles().cluster)
    await side.start()
    monkeypatch.setattr(side._client, "_timeout", 0.5)  # for its own tries to come back
    large = await asyncio.to_thread(view, 3, 0, 2600)
    with caplog.at_level(logging.WARNING, logger="bot"):
        both = [asyncio.create_task(side.check(large)) for _ in range(2)]
        await _until(lambda: children() > 0)
        dask.kill()
        assert [(await one).fault for one in both] == [FrameFault.NOT_A_PICTURE] * 2
    assert here(side).checked == [large] * 2
    assert caplog.text.count("Trouble with the cluster of frames") == 1
    await side.stop()
    await _until(lambda: children() == 0)
