"""A person's part in the store: counted against limits, told on request, gone when time is over."""

from __future__ import annotations

import asyncio
import json
from collections.abc import AsyncIterator, Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
import sqlalchemy as sa

from bot.dialogue.context import Context
from bot.dialogue.engine import failure, handle
from bot.dialogue.events import Event, FrameReceived, MediaRef, PlaceReceived
from bot.runtime.granting import Limits, room_again_at
from bot.runtime.ports import MediaGoneError, SendUncertainError
from bot.runtime.workers import Dialogue
from bot.store.database import Database
from bot.store.rows import PictureRow
from bot.store.tables import METADATA
from tests.runtime.fakes import FERN, MOSS, ROOM, FakeTransport, World, frame, origin, text

DIALOGUE = Dialogue(handle, failure)
POOL = "!pool:mill.example"
GROUP = "!group:mill.example"
START = datetime(2027, 6, 18, 12, 0, tzinfo=UTC)


class Clock:
    """A clock that stands until it is moved."""

    def __init__(self) -> None:
        self.now = START

    def __call__(self) -> datetime:
        """The present."""
        return self.now


@pytest.fixture
def clock() -> Clock:
    """A clock at the beginning of the walk."""
    return Clock()


@pytest.fixture(params=["sqlite", "postgres"])
async def anywhere(request: pytest.FixtureRequest, tmp_path: Path) -> AsyncIterator[World]:
    """A world on either kind of database."""
    if request.param == "sqlite":
        yield World(tmp_path)
        return
    async with request.getfixturevalue("postgres").database(migrated=True) as address:
        yield World(tmp_path, address=address)


def said_by(person: str, room: str, at: datetime, **more: object) -> dict[str, Any]:
    """Where and when somebody says something."""
    return {"person_id": person, "room_id": room, "sent_at": at, **more}


def life_of(person: str, room: str, at: datetime, lens: str, word: str) -> list[Event]:
    """What fills all tables: words, kit, place, position, frames, in two rooms."""
    here = said_by(person, room, at)
    there = said_by(person, GROUP, at, direct=False)
    media = MediaRef(address=f"frame-{word}", encryption={"key": word})
    return [
        text("start", **here),
        text(f"full frame, {lens}, tripod", **here),
        text("3 km walk out, 150 m climb, sunset 20:40", **here),
        text(f"{word} upon the water", **here),
        PlaceReceived(origin=origin(**here), latitude=44.1512, longitude=-71.3498),
        FrameReceived(origin=origin(**here), media=media, caption=f"{word} at {lens}"),
        text(f"{word} said to all of you", **there),
    ]


async def contents(world: World) -> bytes:
    """All that lies in the folder and in the database, byte for byte; a server's as a dump."""
    if world.address is None:
        engine = sa.create_engine(world.url, isolation_level="AUTOCOMMIT")
        with engine.connect() as connection:
            connection.exec_driver_sql("PRAGMA wal_checkpoint(TRUNCATE)")
            connection.exec_driver_sql("VACUUM")
        engine.dispose()
    files = [path for path in world.folder.rglob("*") if path.is_file()]
    names = " ".join(path.name for path in files).encode()
    return names + b"".join(path.read_bytes() for path in files) + await _dump(world)


async def _dump(world: World) -> bytes:
    def read(connection: sa.Connection) -> bytes:
        found = sa.MetaData()
        found.reflect(connection)
        assert METADATA.tables.keys() <= found.tables.keys()
        rows = (row for table in found.sorted_tables for row in connection.execute(table.select()))
        return "\n".join(str(tuple(row)) for row in rows).encode()

    database = Database(world.url)
    dump = await database.read(read)
    await database.close()
    return dump


async def test_nothing_that_a_person_sent_outlives_forget_me(anywhere: World, clock: Clock) -> None:
    """After "forget me", "yes": no word, lens, place, key, picture or name of theirs is anywhere.

    One of their frames is still to be fetched, one message still to be sent when they ask.
    """
    world = anywhere
    for word in ("kingfisher", "heron"):
        world.server.files[f"frame-{word}"] = b"a frame of " + word.encode()
    fern = life_of(FERN, ROOM, START, "17-28 and 70-180", "kingfisher")
    moss = life_of(MOSS, POOL, START, "21-35 and 50-140", "heron")
    await world.says(*fern, *moss, dialogue=DIALOGUE, clock=clock)
    stuck = frame("frame-kingfisher-late", person_id=FERN, sent_at=START)

    def no_way(request: str) -> None:
        if request in {"download", "before send"}:
            raise SendUncertainError

    transport = FakeTransport(world.server, no_way)
    async with world.running(dialogue=DIALOGUE, clock=clock, transport=transport) as runtime:
        await runtime.take_in([text("blub kingfisher", sent_at=START), stuck], None)
        await runtime._until(lambda: not runtime._workers.busy)
    before = await contents(world)
    theirs = (b"kingfisher", b"44.1512", b"71.3498", FERN.encode(), b"17.0", b"180.0")
    for marker in theirs:
        assert marker in before, marker
    own = {event_id for event_id, out in world.server.sent if out.room_id != POOL}
    wish = [text("forget me", sent_at=START), text("yes", sent_at=START)]
    await world.says(*wish, dialogue=DIALOGUE, clock=clock)
    after = await contents(world)
    for marker in (*theirs[:1], *theirs[3:]):
        assert marker not in after, marker
    assert after.count(b"44.1512") > 0, "the other one shared the same place, and keeps it"
    for marker in (MOSS.encode(), b"140.0"):
        assert marker in after, marker
    assert world.server.forgotten == [FERN]
    assert world.server.bodies[-1].startswith("Deleted: all that I kept of you.")
    mosses = {event_id for event_id, out in world.server.sent if MOSS in out.mentions}
    assert own - mosses <= set(world.server.redacted)
    assert not mosses & set(world.server.redacted)


async def test_my_data_is_everything_as_files(world: World, clock: Clock) -> None:
    """One JSON file with each table's rows of the person, then the pictures; of nobody else."""
    for word in ("kingfisher", "heron"):
        world.server.files[f"frame-{word}"] = b"a frame"
    fern = life_of(FERN, ROOM, START, "17-28 and 70-180", "kingfisher")
    moss = life_of(MOSS, POOL, START, "21-35 and 50-140", "heron")
    await world.says(*fern, *moss, dialogue=DIALOGUE, clock=clock)
    for _ in range(2):  # the second file does not hold the first one
        await world.says(text("my data", sent_at=START), dialogue=DIALOGUE, clock=clock)
    (told, picture) = [out for _, out in world.server.sent if out.picture and out.picture.as_file][
        -2:
    ]
    assert (told.room_id, picture.room_id) == (ROOM, ROOM)
    assert told.picture is not None
    assert picture.picture is not None
    assert (told.picture.file_name, told.picture.mime) == ("linn-my-data.json", "application/json")
    assert picture.picture.file_name == "linn-picture-001.png"
    assert world.server.uploads[picture.picture.media.address].startswith(b"\x89PNG")
    written = world.server.uploads[told.picture.media.address].decode()
    data = json.loads(written)
    assert data["person"] == FERN
    assert data["written_at"] == "2027-06-18T12:00:00+00:00"
    tables = {table.name for table in METADATA.sorted_tables if "person_id" in table.c}
    assert tables <= data.keys()
    for name in ("conversations", "people", "places", "pictures", "outbox", "timers"):
        assert data[name], name
    assert data["people"][0]["body"]["kit"]["lenses"][0]["shortest_mm"] == 17
    assert data["people"][0]["body"]["position"]["latitude"] == 44.1512
    assert data["timers"][0]["due"].startswith("2027-06-18T")
    assert list(data["sent_as_files"].values()) == ["linn-picture-001.png"]
    assert GROUP in written
    assert MOSS not in written
    assert "heron" not in written


async def test_data_for_somebody_unknown(world: World) -> None:
    """Who has never said anything gets a file that says so little."""
    await world.says(text("my data"), dialogue=DIALOGUE)
    (told,) = [out for _, out in world.server.sent if out.picture and out.picture.as_file]
    assert told.picture is not None
    data = json.loads(world.server.uploads[told.picture.media.address])
    assert data["places"] == data["pictures"] == []


async def test_the_written_file_does_not_stay(world: World, clock: Clock) -> None:
    """A day later the file with everything is gone from the folder."""
    await world.says(text("my data", sent_at=START), dialogue=DIALOGUE, clock=clock)
    assert [path.suffix for path in world.pictures.iterdir()] == [".json"]
    clock.now += timedelta(days=1)
    await world.says(dialogue=DIALOGUE, clock=clock)
    assert list(world.pictures.iterdir()) == []


async def test_data_that_can_not_be_written_is_given_up(world: World) -> None:
    """A job that breaks each time ends, and nothing is said that is not so."""
    async with world.running(dialogue=DIALOGUE) as runtime:
        job = runtime._jobs._kinds
        kind = next(kind for kind in job if kind.value == "tell_data")
        await runtime.take_in([text("my data")], None)
        await runtime.drain()
        assert await job[kind].give_up(_gone()) is None


def _gone() -> Any:
    from bot.store.rows import JobKind, JobRow, conversation_key  # noqa: PLC0415

    place = origin()
    return JobRow("gone", JobKind.TELL_DATA, conversation_key(place), place, "{}", START, START)


async def test_a_person_forgotten_meanwhile_gets_no_file(world: World) -> None:
    """The file that was just written goes again when the job is gone."""
    async with world.running(dialogue=DIALOGUE) as runtime:
        kinds = runtime._jobs._kinds
        kind = next(kind for kind in kinds if kind.value == "tell_data")
        assert await kinds[kind].run(_gone()) is None
    assert list(world.pictures.iterdir()) == []


async def test_limits_outlive_a_restart(world: World, clock: Clock) -> None:
    """Counts come from the rows: each message here is taken by a runtime of its own."""
    limits = Limits(messages_a_minute=2, frames_a_day=1)
    for _ in range(4):
        said = await world.says(
            text("thanks", sent_at=START), dialogue=DIALOGUE, clock=clock, limits=limits
        )
    assert [body.startswith("Not read") for body in said] == [False, False, True]


async def test_leaders_have_larger_limits(world: World, clock: Clock) -> None:
    """So many times as much as others."""
    limits = Limits(messages_a_minute=2, leader_factor=2)
    leader = [text("thanks", sent_at=START, leader=True) for _ in range(5)]
    said = await world.says(*leader, dialogue=DIALOGUE, clock=clock, limits=limits)
    assert [body.startswith("Not read: more than 4") for body in said] == [False] * 4 + [True]


async def test_a_full_share_of_the_disk(world: World, clock: Clock) -> None:
    """Sizes are those of the files; the day on which it goes on is the first picture's last."""
    limits = Limits(kept_bytes=1)
    shared = [frame(sent_at=START), frame(sent_at=START)]
    for event in shared:
        said = await world.says(event, dialogue=DIALOGUE, clock=clock, limits=limits)
    assert said[-1].startswith("Not measured: my pictures of your frames fill 0 MB")
    assert "after 18 July, 12:00 UTC" in said[-1]
    assert len(list(world.pictures.iterdir())) == 1


@pytest.mark.parametrize(
    ("sizes", "most", "day"),
    [
        ((3, 3, 3), 10, None),
        ((3, 3, 3), 9, 1),
        ((3, 3, 3), 4, 2),
        ((3, 3, 3), 3, 3),
        ((5,), 0, None),
    ],
)
def test_when_there_is_room_again(sizes: tuple[int, ...], most: int, day: int | None) -> None:
    """As soon as enough pictures, the oldest first, have gone to be under the limit."""
    rows = [
        PictureRow(f"{number}.png", FERN, START + timedelta(days=number))
        for number in range(len(sizes), 0, -1)
    ]
    found = room_again_at(rows, sizes, most)
    assert found == (None if day is None else START + timedelta(days=day))


@pytest.fixture
def rows(world: World) -> Iterator[sa.Engine]:
    """A look at the tables."""
    engine = sa.create_engine(world.url)
    yield engine
    engine.dispose()


def counts(rows: sa.Engine, person: str) -> dict[str, int]:
    """How many rows each table has of a person."""
    with rows.connect() as connection:
        return {
            table.name: connection.execute(
                sa.select(sa.func.count()).where(table.c.person_id == person)
            ).scalar_one()
            for table in METADATA.sorted_tables
            if "person_id" in table.c
        }


async def test_what_is_kept_goes_with_time(world: World, clock: Clock, rows: sa.Engine) -> None:
    """Pictures after their days, people after a year of silence; ids of messages stay to redact."""
    limits = Limits(frames_days=10, silent_days=400)
    world.server.files |= {"frame-kingfisher": b"a frame", "frame-heron": b"a frame"}
    fern = life_of(FERN, ROOM, START, "17-28 and 70-180", "kingfisher")
    moss = life_of(MOSS, POOL, START, "21-35 and 50-140", "heron")
    del fern[2], moss[2]  # no reminder that would come in between
    await world.says(*fern, *moss, dialogue=DIALOGUE, clock=clock, limits=limits)
    clock.now += timedelta(days=9, hours=23)
    await world.says(dialogue=DIALOGUE, clock=clock, limits=limits)
    assert len(list(world.pictures.iterdir())) == 2
    clock.now += timedelta(hours=1)
    await world.says(dialogue=DIALOGUE, clock=clock, limits=limits)
    assert list(world.pictures.iterdir()) == []
    clock.now += timedelta(days=100)
    await world.says(
        text("thanks", **said_by(MOSS, POOL, clock.now)),
        dialogue=DIALOGUE,
        clock=clock,
        limits=limits,
    )
    clock.now = START + timedelta(days=401)
    await world.says(dialogue=DIALOGUE, clock=clock, limits=limits)
    gone, kept = counts(rows, FERN), counts(rows, MOSS)
    assert [gone[name] for name in ("conversations", "people", "places", "pictures")] == [0] * 4
    assert gone["outbox"] > 0
    assert kept["people"] == 1
    with rows.connect() as connection:
        assert connection.exec_driver_sql("SELECT count(*) FROM handled").scalar_one() < 3
        sent = connection.exec_driver_sql("SELECT content, uploaded FROM outbox").all()
    assert {tuple(row) for row in sent} == {("", None)}


async def test_a_file_that_is_gone_is_not_sent_again_and_again(world: World) -> None:
    """A frame that the server no longer has is told once; nothing of it stays."""

    def gone(request: str) -> None:
        if request == "download":
            raise MediaGoneError

    transport = FakeTransport(world.server, gone)
    said = await world.says(frame("nowhere"), dialogue=DIALOGUE, transport=transport)
    assert len(said) == 1
    assert list(world.pictures.iterdir()) == []


async def test_my_data_holds_no_key_of_an_encrypted_file(world: World, clock: Clock) -> None:
    """Where a frame lies is told, the key is not: the file may be handed on, the key opens it."""
    media = MediaRef(address="mxc://mill.example/1", encryption={"key": {"k": "secretkey"}})
    shared = FrameReceived(origin=origin(sent_at=START), media=media)

    def away(request: str) -> None:
        if request == "download":
            raise SendUncertainError

    transport = FakeTransport(world.server, away)
    async with world.running(dialogue=DIALOGUE, clock=clock, transport=transport) as runtime:
        await runtime.take_in([shared, text("my data", sent_at=START)], None)
        async with asyncio.timeout(20):
            while not any(out.picture for _, out in world.server.sent):
                await world.server.bell.sleep()
    told = next(out.picture for _, out in world.server.sent if out.picture)
    written = world.server.uploads[told.media.address].decode()
    assert "mxc://mill.example/1" in written
    assert "not written here: whoever has it can open the file" in written
    assert "secretkey" not in written


async def test_where_a_frame_lies_is_forgotten_with_its_pictures(
    anywhere: World, clock: Clock
) -> None:
    """After so many days address and key go, of each frame by its own age; the rest stays."""
    world = anywhere
    old = MediaRef(address="mxc://old", encryption={"key": "oldkey"}, shared_at=START)
    young = MediaRef(address="mxc://young", shared_at=START + timedelta(days=20))
    undated = MediaRef(address="mxc://undated")

    def keeping(context: Context, *_: object) -> tuple[Context, tuple[()]]:
        media = {"$old": old, "$young": young, "$undated": undated}
        changed = {"media": media, "held_text": "kept – Ü"}
        conversation = context.conversation.model_copy(update=changed)
        return context.model_copy(update={"conversation": conversation}), ()

    await world.says(text("blub", sent_at=START), dialogue=Dialogue(keeping, failure), clock=clock)
    clock.now = START + timedelta(days=29)
    await world.says(clock=clock)
    assert b"oldkey" in await contents(world)
    clock.now = START + timedelta(days=31)
    await world.says(clock=clock)
    left = await contents(world)
    assert b"oldkey" not in left
    assert b"mxc://undated" not in left
    assert b"mxc://young" in left
    row = await conversation_row(world)
    assert json.loads(row)["held_text"] == "kept – Ü"


async def conversation_row(world: World) -> str:
    """The only conversation, as it is stored."""
    database = Database(world.url)
    body: str = await database.read(
        lambda connection: connection.execute(
            sa.select(METADATA.tables["conversations"].c.body)
        ).scalar_one()
    )
    await database.close()
    return body
