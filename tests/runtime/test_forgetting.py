"""`forget me`: every row and every file of the person goes, down to the bytes of the database."""

from __future__ import annotations

import sqlalchemy as sa

from bot.dialogue.actions import Action
from bot.dialogue.context import Context, Place
from bot.dialogue.events import Event
from bot.dialogue.facts import Facts
from bot.runtime.workers import Dialogue
from bot.store.database import Database
from bot.store.tables import METADATA, OUTBOX
from tests.runtime import fakes
from tests.runtime.fakes import FERN, MOSS, World, failure, frame, text

WORD = "kingfisher"


def remembering(context: Context, event: Event, now: object) -> tuple[Context, tuple[Action, ...]]:
    """The small dialogue, which also keeps what was written in all four parts."""
    after, actions = fakes.handle(context, event, now)  # type: ignore[arg-type]
    words = getattr(event, "text", "")
    facts = Facts(camera_name=words)
    return after.model_copy(
        update={
            "conversation": after.conversation.model_copy(update={"held_text": words}),
            "person": after.person.model_copy(update={"kit": facts}),
            "place": Place(facts=facts),
            "room": after.room.model_copy(update={"schema_number": 2}),
        }
    ), actions


DIALOGUE = Dialogue(remembering, failure)


async def rows_of(world: World, person: str) -> dict[str, int]:
    """How many rows each table has of a person."""

    def count(connection: sa.Connection) -> dict[str, int]:
        return {
            table.name: connection.execute(
                sa.select(sa.func.count()).where(table.c.person_id == person)
            ).scalar_one()
            for table in METADATA.sorted_tables
            if "person_id" in table.c
        }

    database = Database(world.url)
    counts = await database.read(count)
    await database.close()
    return counts


async def told_to(world: World, person: str) -> list[str]:
    """What was sent to a person, as event ids in the order in which it was written."""
    sent = sa.select(OUTBOX.c.sent_event_id).where(OUTBOX.c.person_id == person)
    database = Database(world.url)
    ids = await database.read(
        lambda connection: connection.execute(sent.order_by(OUTBOX.c.position)).scalars().all()
    )
    await database.close()
    return [str(event_id) for event_id in ids]


async def _live(world: World) -> None:
    """Fern fills every table; Moss, in another room, writes too."""
    moss = {"person_id": MOSS, "room_id": "!pool:mill.example"}
    await world.says(
        text(f"{WORD} one"),
        text(f"later {WORD}"),
        frame(),
        text(f"card {WORD}"),
        text(f"{WORD} in the group", direct=False, room_id="!group:mill.example"),
        text("heron", **moss),
        frame(**moss),
        dialogue=DIALOGUE,
    )


async def test_every_row_and_file_of_the_person_goes_and_those_of_others_stay(
    world: World,
) -> None:
    """No table has a row of the person left; the other person lost nothing."""
    await _live(world)
    before, others = await rows_of(world, FERN), await rows_of(world, MOSS)
    for table in ("conversations", "people", "places", "rooms", "timers", "pictures", "outbox"):
        assert before[table] > 0, table
    assert len(list(world.pictures.iterdir())) == 3
    await world.says(text("forget me"), dialogue=DIALOGUE)
    assert set((await rows_of(world, FERN)).values()) == {0}
    assert await rows_of(world, MOSS) == others
    assert len(list(world.pictures.iterdir())) == 1


async def test_no_byte_of_the_persons_words_is_left(world: World) -> None:
    """The planted word and the person's name are in no file of the database any more."""
    await _live(world)
    assert WORD in _bytes(world)
    await world.says(text("forget me"), dialogue=DIALOGUE)
    assert WORD not in _bytes(world)
    assert FERN not in _bytes(world)
    assert MOSS in _bytes(world)


def _bytes(world: World) -> str:
    """All of the database's files, as text."""
    files = [path for path in world.folder.iterdir() if path.is_file()]
    return "".join(path.read_bytes().decode("latin-1") for path in files)


async def test_what_the_bot_said_is_taken_back_in_every_room(world: World) -> None:
    """All messages to the person are redacted, the farewell is not, and comes last."""
    await _live(world)
    before = await told_to(world, FERN)
    elsewhere = "!pool:mill.example"
    assert set(before) == {own for own, out in world.server.sent if out.room_id != elsewhere}
    await world.says(text("forget me"), dialogue=DIALOGUE)
    assert world.server.redacted == before
    assert world.server.bodies[-1] == "all deleted"


async def test_whoever_was_forgotten_starts_anew(world: World) -> None:
    """A message after the wish is answered, as from somebody who has never written."""
    said = await world.says(text("one"), text("two"), text("forget me"), text("again"))
    assert "1: again" in said


async def test_forgetting_twice_finishes_both(world: World) -> None:
    """The second wish takes over what the first had still to take back."""
    said = await world.says(text("one"), text("forget me"), text("forget me"))
    assert said.count("all deleted") >= 1
    answers = {own for own, out in world.server.sent if out.body == "1: one"}
    assert answers <= set(world.server.redacted)
