"""A bare echo bot, the yardstick of the benchmarks: sync, send the text back, nothing else."""

from __future__ import annotations

import asyncio
import sys

from nio import (
    AsyncClient,
    AsyncClientConfig,
    Event,
    InviteMemberEvent,
    MatrixRoom,
    RoomMessageText,
)


async def echo(homeserver: str, user_id: str, password: str, store: str, at_once: str) -> None:
    """Echo every text message, for ever, so many at a time."""
    config = AsyncClientConfig(encryption_enabled=True)
    client = AsyncClient(homeserver, user_id, store_path=store, config=config)
    await client.login(password)
    free = asyncio.Semaphore(int(at_once))
    under_way: set[asyncio.Task[None]] = set()

    async def send(room_id: str, body: str) -> None:
        async with free:
            content = {"msgtype": "m.text", "body": body}
            await client.room_send(
                room_id, "m.room.message", content, ignore_unverified_devices=True
            )

    async def answer(room: MatrixRoom, event: Event) -> None:
        if isinstance(event, RoomMessageText) and event.sender != client.user_id:
            task = asyncio.create_task(send(room.room_id, event.body))
            under_way.add(task)
            task.add_done_callback(under_way.discard)

    async def join(room: MatrixRoom, _: object) -> None:
        await client.join(room.room_id)

    client.add_event_callback(answer, RoomMessageText)
    # nio's signature leaves out the events of rooms that one is not in yet.
    client.add_event_callback(join, InviteMemberEvent)  # type: ignore[arg-type]
    await client.sync_forever(timeout=8000, full_state=True)


if __name__ == "__main__":
    asyncio.run(echo(*sys.argv[1:]))
