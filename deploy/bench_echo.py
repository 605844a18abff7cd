"""A bare echo bot, the yardstick of bench_answers.py: sync, send the text back, nothing else."""

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


async def echo(homeserver: str, user_id: str, password: str, store: str) -> None:
    """Echo every text message, for ever."""
    config = AsyncClientConfig(encryption_enabled=True)
    client = AsyncClient(homeserver, user_id, store_path=store, config=config)
    await client.login(password)

    async def answer(room: MatrixRoom, event: Event) -> None:
        if isinstance(event, RoomMessageText) and event.sender != client.user_id:
            await client.room_send(
                room.room_id,
                "m.room.message",
                {"msgtype": "m.text", "body": event.body},
                ignore_unverified_devices=True,
            )

    async def join(room: MatrixRoom, _: object) -> None:
        await client.join(room.room_id)

    client.add_event_callback(answer, RoomMessageText)
    # nio's signature leaves out the events of rooms that one is not in yet.
    client.add_event_callback(join, InviteMemberEvent)  # type: ignore[arg-type]
    await client.sync_forever(timeout=8000, full_state=True)


if __name__ == "__main__":
    asyncio.run(echo(*sys.argv[1:]))
