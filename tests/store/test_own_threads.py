"""Which threads of a group room are the bot's, from the call on and not only from the answer."""

from __future__ import annotations

from dataclasses import replace

from bot.dialogue.events import TextReceived
from bot.store.rows import Result, conversation_key
from bot.store.store import Store
from tests.store.examples import KEY, NOW, job, message, origin, row_of, text

_ROOM = KEY.room_id


async def test_a_thread_is_the_bots_from_the_call_on(store: Store) -> None:
    """While the call waits, while its frame is measured, and once it is answered."""
    call = TextReceived(origin=origin(direct=False), text="start")
    root = call.origin.event_id
    row = row_of(await store.take_in([call], None, NOW))
    assert await store.is_own_thread(_ROOM, root)
    work = replace(job(frame=root), key=conversation_key(call.origin))
    await store.finish_event(Result(row, jobs=(work,)))
    assert await store.is_own_thread(_ROOM, root)
    answer = replace(message(), key=work.key, thread_id=root)
    await store.finish_job(work, NOW, messages=(answer,))
    assert await store.is_own_thread(_ROOM, root)
    assert not await store.is_own_thread("!other:mill.example", root)


async def test_talk_among_people_makes_no_thread_of_the_bots(store: Store) -> None:
    """A message that calls nobody leaves its thread to the people, waiting or handled."""
    place = origin(event_id="$chat", direct=False).model_copy(update={"addressed": False})
    chat = text("nice").model_copy(update={"origin": place})
    row = row_of(await store.take_in([chat], None, NOW))
    assert not await store.is_own_thread(_ROOM, "$chat")
    await store.finish_event(Result(row))
    assert not await store.is_own_thread(_ROOM, "$chat")
