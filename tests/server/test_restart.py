"""What happens to messages while the bot is down, and to keys that come late."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

import pytest

from bot.dialogue.events import OtherReceived, TextReceived
from bot.matrix.timeline import PAGE
from bot.matrix.waiting import WaitingEvents
from tests.server.echo import EchoRuntime, running_bot
from tests.server.homeserver import Town
from tests.server.person import Person

pytestmark = pytest.mark.server


@pytest.mark.parametrize(
    ("encrypted", "number"), [(False, 3), (True, PAGE + 5)], ids=["plain", "encrypted"]
)
async def test_nothing_is_lost_while_the_bot_is_down(
    town: Town, encrypted: bool, number: int
) -> None:
    """More messages than a sync holds are all read after a restart, once each and in order."""
    bot, runtime = town.account("bot"), EchoRuntime(lambda text: not text.startswith("down"))
    async with Person(town.account("ada")) as ada:
        async with running_bot(bot, runtime, ada.user_id) as client:
            device_id = client.transport.scope
            room_id = await ada.direct_room(bot.user_id, encrypted=encrypted)
            await ada.meets(room_id, bot.user_id)
            await ada.say(room_id, "before")
            await ada.hears(room_id, "echo: before")
        words = [f"down {place}" for place in range(number)]
        for text in words:
            await ada.say(room_id, text)
        async with running_bot(bot, runtime, ada.user_id) as client:
            assert client.transport.scope == device_id
            await runtime.takes(1 + len(words))
            await ada.say(room_id, "after")
            await ada.hears(room_id, "echo: after")
    texts = [event.text for event in runtime.events if isinstance(event, TextReceived)]
    assert texts == ["before", *words, "after"]
    assert ada.bodies(room_id) == ["echo: before", "echo: after"]


async def test_a_first_start_leaves_the_past_alone(town: Town) -> None:
    """Without a stored token, what was said before the start is not answered."""
    bot = town.account("bot")
    async with Person(town.account("ada")) as ada:
        async with running_bot(bot, EchoRuntime(), ada.user_id):
            room_id = await ada.direct_room(bot.user_id, encrypted=False)
            await ada.meets(room_id, bot.user_id)
        await ada.say(room_id, "of yesterday")
        runtime = EchoRuntime()
        async with running_bot(bot, runtime, ada.user_id):
            await runtime.waits(lambda: runtime.token is not None)
            await ada.say(room_id, "of today")
            await ada.hears(room_id, "echo: of today")
    assert len(runtime.events) == 1


async def test_a_late_key_opens_what_waited_even_over_a_restart(town: Town) -> None:
    """An event without its key is kept on disk and read when the key comes."""
    bot, runtime = town.account("bot"), EchoRuntime()
    async with Person(town.account("ada")) as ada:
        async with running_bot(bot, runtime, ada.user_id):
            room_id = await ada.direct_room(bot.user_id, encrypted=True)
            await ada.meets(room_id, bot.user_id)
            hand_over = await ada.say_with_late_key(room_id, "patience")
            token = runtime.token
            await runtime.waits(lambda: runtime.token != token and _is_kept(bot.waiting_path))
        assert runtime.events == []
        async with running_bot(bot, runtime, ada.user_id):
            await hand_over()
            await ada.hears(room_id, "echo: patience")
    assert not _is_kept(bot.waiting_path)


async def test_a_key_that_never_comes_is_told_once(town: Town) -> None:
    """After the grace period there is one event for all that a person sent without a key."""
    bot, runtime = town.account("bot"), EchoRuntime()
    grace = timedelta(seconds=1)
    async with (
        Person(town.account("ada")) as ada,
        running_bot(bot, runtime, ada.user_id, key_grace=grace),
    ):
        room_id = await ada.direct_room(bot.user_id, encrypted=True)
        await ada.meets(room_id, bot.user_id)
        await ada.say_with_late_key(room_id, "one")
        await ada.say(room_id, "two")
        await runtime.takes(1)
        await runtime.waits(lambda: not _is_kept(bot.waiting_path))
    (event,) = runtime.events
    assert isinstance(event, OtherReceived)
    assert (event.what, event.origin.room_id) == ("undecryptable", room_id)


def _is_kept(path: Path) -> bool:
    return len(WaitingEvents(path)) > 0
