"""The bot on a homeserver that keeps its own rate limits."""

from __future__ import annotations

import asyncio
from pathlib import Path

import pytest

from bot.matrix.policy import Policy
from bot.matrix.server_api import ServerApi
from bot.runtime.ports import Outgoing, SendLaterError, SendRefusedError
from bot.trial.homeserver import Homeserver
from tests.server.echo import EchoRuntime, running_bot
from tests.server.homeserver import Town
from tests.server.person import Person
from tests.server.whole import whole_bot

pytestmark = pytest.mark.server


async def test_the_servers_limit_is_told_and_obeyed(tmp_path: Path) -> None:
    """Past the limit a send says how long to wait, at once; a foreign room is refused for good."""
    with Homeserver(tmp_path / "homeserver", in_memory=True, limits_lifted=False) as server:
        town, runtime = Town(server, tmp_path / "accounts"), EchoRuntime()
        bot = town.account("bot")
        async with (
            Person(town.account("ada")) as ada,
            running_bot(bot, runtime, ada.user_id) as client,
        ):
            room_id = await ada.direct_room(bot.user_id, encrypted=False)
            await ada.meets(room_id, bot.user_id)
            await ada.say(room_id, "hello")
            await ada.hears(room_id, "echo: hello")

            async def flood() -> None:
                for number in range(30):
                    await client.transport.send(Outgoing(f"row-{number}", room_id, "quick"))

            with pytest.raises(SendLaterError) as caught:
                await flood()
            with pytest.raises(SendRefusedError):
                await client.transport.send(Outgoing("row-away", "!elsewhere", "hello"))
    assert 0 < caught.value.retry_after_s < 60


async def limit(admin: Person, user_id: str, per_second: int, burst: int) -> None:
    """Override how often somebody may send, as an operator does it; 0 and 0: as they like."""
    await ServerApi(admin.client).call(
        "POST",
        "users",
        user_id,
        "override_ratelimit",
        base="/_synapse/admin/v1",
        body={"messages_per_second": per_second, "burst_count": burst},
    )


async def test_two_people_are_answered_in_order_within_the_limit(
    tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    """26 answers where the limit has room for four: all come, and the log says it once.

    The bot's limit is raised from 0.2 messages a second, so that it bites as often in less time.
    """
    with Homeserver(tmp_path / "homeserver", in_memory=True, limits_lifted=False) as server:
        town = Town(server, tmp_path / "accounts")
        boss = town.account("boss", admin=True)
        bot = town.account("bot")
        async with (
            Person(boss) as admin,
            Person(town.account("ada")) as ada,
            Person(town.account("bo")) as bo,
        ):
            people = (ada, bo)
            for person in people:
                await limit(admin, person.user_id, 0, 0)
            await limit(admin, bot.user_id, 2, 4)
            policy = Policy.of([person.user_id for person in people])
            async with whole_bot(bot, policy) as linn:
                rooms = [await one.direct_room(bot.user_id, encrypted=False) for one in people]
                for person, room_id in zip(people, rooms, strict=True):
                    await person.meets(room_id, bot.user_id)
                for number in range(13):
                    words = zip(people, rooms, strict=True)
                    await asyncio.gather(*(one.say(room, f"m{number}") for one, room in words))
                for person, room_id in zip(people, rooms, strict=True):
                    await person.hears(room_id, "13: m12")
                await linn.runtime.drain()
        for person, room_id in zip(people, rooms, strict=True):
            assert person.bodies(room_id) == [f"{n + 1}: m{n}" for n in range(13)]
    advice = [line for line in caplog.messages if "rc_message" in line]
    assert len(advice) == 1
    assert f"users/{bot.user_id}/override_ratelimit" in advice[0]
    begun = [line for line in caplog.messages if line.startswith("Trouble with sending")]
    assert len(begun) == 1
