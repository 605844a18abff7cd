"""Messages that are known to be in their rooms before their requests are answered."""

from __future__ import annotations

from bot.store.rows import Result
from bot.store.store import Store
from tests.store.examples import KEY, NOW, message, row_of, text


async def test_a_message_that_was_seen_counts_as_sent(store: Store) -> None:
    """A reply to it finds its question, it is not sent again, and its own request may end."""
    row = row_of(await store.take_in([text()], None, NOW))
    put = message("Which way?", question="flow")
    (written,) = (await store.finish_event(Result(row, messages=(put,)))).messages
    await store.messages_seen({written.row_id: "$put", "unknown": "$other"})
    assert await store.question_of(KEY, "$put") == "flow"
    assert (await store.backlog()).messages == ()
    assert await store.message_sent(written, "$put")
    await store.messages_seen({written.row_id: "$copy"})
    assert await store.own_message(KEY.room_id, "$put") is not None


async def test_a_message_that_is_not_kept_waits_for_its_own_request(store: Store) -> None:
    """A farewell that was seen is not taken for forgotten when its request ends."""
    row = row_of(await store.take_in([text()], None, NOW))
    bye = message("bye", kept=False)
    (written,) = (await store.finish_event(Result(row, messages=(bye,)))).messages
    await store.messages_seen({written.row_id: "$bye"})
    assert await store.message_sent(written, "$bye")
    assert await store.own_message(KEY.room_id, "$bye") is None
