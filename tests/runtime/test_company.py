"""Who leads asks how far the others are: from the rows of that room, and of nobody else."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

from bot.dialogue.context import Conversation
from bot.dialogue.events import Origin, TextReceived
from bot.dialogue.states import State
from bot.dialogue.terms import Companion
from bot.dialogue.walk_state import Walk
from bot.runtime.granting import Granting, Limits
from bot.store.database import Database
from bot.store.pictures import PictureFiles
from bot.store.rows import Part, Result, conversation_key
from bot.store.store import Store
from tests.store.examples import NOW, row_of, text


def _said(person: str, room_id: str = "!workshop", words: str = "hello") -> TextReceived:
    origin = Origin(
        event_id=f"${person}-{room_id}",
        room_id=room_id,
        person_id=f"@{person}:example.org",
        direct=room_id != "!workshop",
        leader=person == "fern",
        sent_at=datetime(2027, 6, 1, 12, tzinfo=UTC),
    )
    return text(words).model_copy(update={"origin": origin})


async def _keep(store: Store, event: TextReceived, body: str) -> None:
    row = row_of(await store.take_in([event], None, NOW))
    changes: dict[Part, str | None] = {Part.CONVERSATION: body}
    result = replace(Result(row, changes=changes, at=NOW), versions={})
    assert result.inbox.key == conversation_key(event.origin)
    await store.finish_event(result)


async def test_what_was_said_in_the_room_is_told_there(tmp_path: Path) -> None:
    """A walk in the direct room stays there; an unreadable row costs nobody else theirs."""
    store = Store(Database(f"sqlite:///{tmp_path / 'linn.db'}"))
    await store.open()
    base = Conversation(walk=Walk(state=State.BASE)).model_dump_json()
    keep = Conversation(walk=Walk(state=State.KEEP)).model_dump_json()
    await _keep(store, _said("ben"), base)
    await _keep(store, _said("uli", "!direct"), keep)
    await _keep(store, _said("sam"), '{"walk": 5}')
    people = {f"@{name}:example.org": name for name in ("ben", "fern", "sam", "uli")}
    granting = Granting(store, PictureFiles(tmp_path), Limits(), lambda _: people)
    terms = await granting.terms_of(_said("fern", words="who is stuck?"))
    assert terms.company == (
        Companion(name="ben", step="base"),
        Companion(name="sam"),
        Companion(name="uli"),
    )
    assert not (await granting.terms_of(_said("fern"))).company
    assert not (await granting.terms_of(_said("ben", words="who is stuck?"))).company
    await store.close()
