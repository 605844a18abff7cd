"""Starting, stopping, cleaning, breaking down; and a real SIGKILL."""

from __future__ import annotations

import asyncio
import signal
import sys
from collections.abc import Callable
from datetime import timedelta
from pathlib import Path

import pytest
import sqlalchemy as sa
from sqlalchemy.exc import OperationalError

from bot.faults import where_it_broke
from bot.pauses import LONGEST_S, Wake, pause_s
from bot.runtime import courtesy as courtesy_module
from bot.runtime import runtime as runtime_module
from bot.runtime.ports import SendLaterError
from bot.runtime.runtime import Runtime, utc_now
from bot.runtime.workers import Workers
from bot.store.database import Database
from bot.store.rows import ConflictError, InboxRow, Result, Written, conversation_key
from bot.store.store import Store
from bot.store.tables import CONVERSATIONS, INBOX, PEOPLE
from tests.runtime.fakes import DIALOGUE, FERN, FakeTransport, World, frame, png, text


async def test_a_stop_finishes_what_is_under_way(world: World) -> None:
    """A message that is being answered when the stop comes is answered before it ends."""
    transport = FakeTransport(world.server)
    transport.delay_s = 0.1
    async with world.running(transport=transport) as runtime:
        await runtime.take_in([text("a")], None)
    assert world.server.bodies == ["1: a"]


async def test_a_stop_sends_all_messages_of_an_answer(world: World) -> None:
    """What is stored and not yet on its way belongs to the answer as much as what flies."""
    transport = FakeTransport(world.server)
    transport.delay_s = 0.01
    async with world.running(transport=transport) as runtime:
        await runtime.take_in([text("burst a")], None)
    assert world.server.bodies == [f"a{part}" for part in range(12)]


async def test_a_stop_does_not_wait_for_a_pause(world: World) -> None:
    """What the homeserver has put off goes after the next start, and the stop is quick."""
    limited = [SendLaterError(60, limited=True)]

    def refuse_once(point: str) -> None:
        if point == "before send" and limited:
            raise limited.pop()

    transport = FakeTransport(world.server, refuse_once)
    begin = asyncio.get_running_loop().time()
    async with world.running(transport=transport) as runtime:
        await runtime.take_in([text("burst a")], None)
    assert asyncio.get_running_loop().time() - begin < runtime_module._GRACE_S
    assert await world.says() == [f"a{part}" for part in range(12)]


async def test_a_stop_does_not_wait_for_ever(world: World, monkeypatch: pytest.MonkeyPatch) -> None:
    """A homeserver that hangs is left after the grace time; the answer goes after a start."""
    monkeypatch.setattr(runtime_module, "_GRACE_S", 0.1)
    transport = FakeTransport(world.server)
    transport.delay_s = 60
    begin = asyncio.get_running_loop().time()
    async with world.running(transport=transport) as runtime:
        await runtime.take_in([text("a")], None)
    assert asyncio.get_running_loop().time() - begin < 5
    assert await world.says() == ["1: a"]


async def test_a_runtime_that_was_not_started_can_be_stopped(world: World) -> None:
    """Nothing to stop is no error."""
    async with world.running() as started:
        fresh = Runtime(started._around, DIALOGUE)
        await fresh.stop()
        await fresh.wait()


async def test_a_part_that_breaks_down_is_heard_of(
    world: World, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Whoever waits for the runtime gets the exception; no half of it goes on in silence."""

    async def break_down(_: Workers) -> None:
        raise ArithmeticError

    monkeypatch.setattr(Workers, "run", break_down)
    seen = []
    try:
        async with world.running() as runtime:
            await runtime.take_in([text("a")], None)
            for waits in (runtime.wait, runtime.drain):
                try:
                    await waits()
                except ExceptionGroup as error:
                    seen.append(where_it_broke(error))
    except ExceptionGroup as error:
        seen.append(where_it_broke(error))
    assert [line.partition(" ")[0] for line in seen] == ["ArithmeticError"] * 3


async def test_old_pictures_go_when_their_time_is_over(world: World) -> None:
    """After 31 days the marked picture is gone, row and file; the words stay known."""
    await world.says(frame())
    assert len(list(world.pictures.iterdir())) == 1
    await world.says(clock=lambda: utc_now() + timedelta(days=29))
    assert len(list(world.pictures.iterdir())) == 1
    await world.says(clock=lambda: utc_now() + timedelta(days=31))
    assert list(world.pictures.iterdir()) == []


async def test_files_without_a_row_go_at_the_start(world: World) -> None:
    """A crash between a file and its row leaves no file for ever."""
    await world.says(frame())
    (world.pictures / f"{'0' * 32}.png").write_bytes(png())
    await world.says()
    assert len(list(world.pictures.iterdir())) == 1


async def test_cleaning_goes_on_while_the_bot_runs(
    world: World, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    """Pictures expire without a restart, and trouble with the database only delays it."""
    monkeypatch.setattr(runtime_module, "_EXPIRE_EVERY_S", 0.02)
    clock = [timedelta()]
    fail = [False]

    def hook(step: str) -> None:
        if step == "before commit" and fail.pop() is True:
            raise OperationalError("DELETE", {}, Exception("locked"))
        if step == "before commit":
            fail.append(False)

    async with world.running(hook=hook, clock=lambda: utc_now() + clock[0]) as runtime:
        await runtime.take_in([frame()], None)
        await runtime.drain()
        clock[0] = timedelta(days=31)
        fail[:] = [False, True]
        await _until(lambda: list(world.pictures.iterdir()) == [])
    assert "nothing was deleted" in caplog.text


async def _until(true: Callable[[], bool]) -> None:
    async with asyncio.timeout(10):
        while not true():  # noqa: ASYNC110  what is watched rings no bell
            await asyncio.sleep(0.005)


async def test_an_unreadable_context_starts_afresh(
    world: World, caplog: pytest.LogCaptureFixture
) -> None:
    """A row that no version can read locks nobody out; the other parts stay."""
    await world.says(text("one"))
    database = Database(world.url)
    await database.write(
        lambda connection: connection.execute(
            sa.update(CONVERSATIONS).values(body='{"walk": {"state": "no such step"}}')
        )
    )
    await database.close()
    assert (await world.says(text("two")))[-1] == "1: two"
    assert f"conversation of {FERN}" in caplog.text
    again = Database(world.url)
    body = await again.read(
        lambda connection: connection.execute(sa.select(PEOPLE.c.body)).scalar_one()
    )
    await again.close()
    assert body.count("$event") == 2


async def test_an_event_that_stops_the_process_is_answered_with_a_reference(
    world: World,
) -> None:
    """Begun without an end after three starts, it is taken for the cause and not handled again."""
    await world.says()
    async with world.running() as runtime:
        runtime._workers._idle = _Never()  # type: ignore[assignment]
        await runtime.take_in([text("poison"), text("next")], None)
        await _unhandled(runtime)
    database = Database(world.url)
    await database.write(
        lambda connection: connection.execute(
            sa.update(INBOX).where(INBOX.c.position == 1).values(attempts=2)
        )
    )
    await database.close()
    said = await world.says()
    assert said[0].startswith("broken, reference ")
    assert said[1:] == ["1: next"]


class _Never(set[object]):
    """A set that takes nothing."""

    def add(self, element: object) -> None:
        """Forget it."""


async def _unhandled(runtime: Runtime) -> None:
    runtime._workers._waiting.clear()


async def test_a_race_is_tried_again_until_it_is_won(
    world: World, monkeypatch: pytest.MonkeyPatch
) -> None:
    """An answer that lost against another process's writes three times is computed anew."""
    lost = [ConflictError(), ConflictError(), ConflictError()]
    really = Store.finish_event

    async def finish(store: Store, result: Result) -> Written:
        if lost:
            raise lost.pop()
        return await really(store, result)

    monkeypatch.setattr(Store, "finish_event", finish)
    assert await world.says(text("a")) == ["1: a"]


async def test_an_event_that_is_gone_is_skipped(world: World) -> None:
    """A row that was handled or forgotten meanwhile is no trouble."""
    async with world.running() as runtime:
        ghost = text("ghost")
        runtime._workers.put([InboxRow(99, conversation_key(ghost.origin), ghost)])
        await runtime.take_in([text("a")], None)
        await runtime.drain()
    assert world.server.bodies == ["1: a"]


async def test_typing_is_renewed(world: World, monkeypatch: pytest.MonkeyPatch) -> None:
    """The mark lasts as long as the work, although the homeserver hides it by itself."""
    monkeypatch.setattr(courtesy_module, "_RENEW_S", 0.01)
    async with world.running() as runtime:
        with runtime._courtesy.at_work("!gorge:mill.example"):
            await _until(lambda: len(world.server.marks) > 3)
        await _until(lambda: world.server.marks[-1].startswith("typing False"))


def test_pauses_double_up_to_a_minute() -> None:
    """Half of each pause is jitter; none is longer than a minute."""
    for failures, ceiling in ((1, 1.0), (2, 2.0), (5, 16.0), (7, LONGEST_S), (10_000, LONGEST_S)):
        pauses = [pause_s(failures) for _ in range(50)]
        assert ceiling / 2 <= min(pauses)
        assert max(pauses) <= ceiling


async def test_a_ring_before_the_sleep_is_not_lost() -> None:
    """Whoever lies down after the bell rang gets up at once; the next sleep is a full one."""
    wake = Wake()
    wake.ring()
    async with asyncio.timeout(1):
        await wake.sleep()
    await wake.sleep(0.01)


PROGRAM = """
import asyncio, json, os, pathlib, sys
sys.path.insert(0, {root!r})
from bot.runtime.ports import Outgoing
from tests.runtime.fakes import FakeServer, FakeTransport, World, text, frame

folder = pathlib.Path({folder!r})

class Written(FakeTransport):
    '''Keeps what was sent in a file, as a homeserver keeps it: the id first, then the answer.'''
    async def send(self, outgoing: Outgoing) -> str:
        path = folder / "room" / outgoing.row_id
        if not path.exists():
            number = len(list((folder / "room").iterdir()))
            with (folder / "log").open("a") as log:
                log.write(json.dumps([outgoing.row_id, outgoing.body]) + "\\n")
            path.write_text(str(number))
        await asyncio.sleep(0.002)
        return "$" + path.read_text()

async def main() -> None:
    (folder / "room").mkdir(exist_ok=True)
    world = World(folder)
    async with world.running(transport=Written(FakeServer())) as runtime:
        events = [text(f"m{{n}}", event_id=f"$m{{n}}") for n in range(40)]
        for event in events:
            await runtime.take_in([event], None)
            print("taken", flush=True)
        await runtime.drain()

asyncio.run(main())
"""


async def test_a_real_kill_loses_nothing(tmp_path: Path) -> None:
    """SIGKILL at two moments, then a run to the end: forty answers, once each, in order."""
    root = str(Path(__file__).parents[2])
    program = PROGRAM.format(root=root, folder=str(tmp_path))
    for kill_after in (3, 25, None):
        process = await asyncio.create_subprocess_exec(
            sys.executable, "-c", program, stdout=asyncio.subprocess.PIPE
        )
        assert process.stdout is not None
        for _ in range(kill_after or 0):
            await process.stdout.readline()
        if kill_after is not None:
            process.send_signal(signal.SIGKILL)
        await process.communicate()
    assert process.returncode == 0
    lines = (tmp_path / "log").read_text().splitlines()
    bodies = [line.split('"')[3] for line in lines]
    assert bodies == [f"{number + 1}: m{number}" for number in range(40)]
