"""The bot and a person on a real homeserver: invitations, words, threads, edits, places."""

from __future__ import annotations

import pytest

from bot.dialogue.events import TextReceived
from tests.server.echo import EchoRuntime, running_bot
from tests.server.homeserver import Town
from tests.server.person import Person

pytestmark = pytest.mark.server


@pytest.mark.parametrize("encrypted", [False, True], ids=["plain", "encrypted"])
async def test_words_go_there_and_back(town: Town, encrypted: bool) -> None:
    """In a new direct room the first message is answered at once."""
    bot, runtime = town.account("bot"), EchoRuntime()
    async with Person(town.account("ada")) as ada, running_bot(bot, runtime, ada.user_id):
        room_id = await ada.direct_room(bot.user_id, encrypted=encrypted)
        await ada.meets(room_id, bot.user_id)
        await ada.say(room_id, "24 mm at f/11")
        content = await ada.hears(room_id, "echo: 24 mm at f/11")
    event = runtime.events[0]
    assert isinstance(event, TextReceived)
    assert (event.origin.person_id, event.origin.direct) == (ada.user_id, True)
    assert content["m.mentions"] == {}
