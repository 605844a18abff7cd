"""The bot on a homeserver that keeps its own rate limits."""

from __future__ import annotations

from pathlib import Path

import pytest

from bot.runtime.ports import Outgoing, SendLaterError, SendRefusedError
from bot.trial.homeserver import Homeserver
from tests.server.echo import EchoRuntime, running_bot
from tests.server.homeserver import Town
from tests.server.person import Person

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
