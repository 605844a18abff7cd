"""The bot and people on a real homeserver: invitations, words, threads, edits, places."""

from __future__ import annotations

import asyncio
import dataclasses
from pathlib import Path

import pytest
from nio import RoomPreset

from bot.dialogue.events import OtherReceived, PlaceReceived, TextReceived, Withdrawn
from tests.server.echo import EchoRuntime, running_bot
from tests.server.homeserver import Town
from tests.server.person import Person

pytestmark = pytest.mark.server

both_kinds = pytest.mark.parametrize("encrypted", [False, True], ids=["plain", "encrypted"])


@both_kinds
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


async def test_what_was_said_before_the_bot_came_in_is_answered(town: Town) -> None:
    """Words that follow the invitation are for the bot; words before it are not."""
    bot, runtime = town.account("bot"), EchoRuntime()
    async with Person(town.account("ada")) as ada:
        room_id = await ada.direct_room(encrypted=False)
        await ada.waits(lambda: room_id in ada.client.rooms)
        await ada.say(room_id, "to nobody")
        async with running_bot(bot, runtime, ada.user_id):
            await runtime.waits(lambda: runtime.token is not None)
            await ada.client.room_invite(room_id, bot.user_id)
            await ada.say(room_id, "to the bot")
            await ada.hears(room_id, "echo: to the bot")
    assert [event.text for event in runtime.events if isinstance(event, TextReceived)] == [
        "to the bot"
    ]


async def test_strangers_get_no_answer_at_all(town: Town, caplog: pytest.LogCaptureFixture) -> None:
    """A stranger's invitation stays open, a stranger's words in a shared room stay unread."""
    caplog.set_level("INFO", "bot.matrix")
    bot, runtime = town.account("bot"), EchoRuntime()
    async with (
        Person(town.account("ada")) as ada,
        Person(town.account("eve")) as eve,
        running_bot(bot, runtime, ada.user_id),
    ):
        lonely = await eve.direct_room(bot.user_id, encrypted=False)
        shared = await ada.direct_room(bot.user_id, eve.user_id, encrypted=False)
        await eve.joins(shared)
        await ada.meets(shared, bot.user_id)
        await eve.say(shared, f"{bot.user_id}: the secret word")
        await ada.say(shared, f"{bot.user_id}: hello")
        await ada.hears(shared, "echo: hello")
        assert eve.bodies(lonely) == []
        assert bot.user_id in eve.client.rooms[lonely].invited_users
    assert [event.origin.person_id for event in runtime.events] == [ada.user_id]
    ignored = [message for message in caplog.messages if eve.user_id in message]
    assert any(lonely in message for message in ignored)
    assert any(shared in message for message in ignored)
    assert "secret word" not in caplog.text


@both_kinds
async def test_an_edit_corrects_the_message_that_it_names(town: Town, encrypted: bool) -> None:
    """An edit is a text of its own that names what it corrects; nobody edits others' words."""
    bot, runtime = town.account("bot"), EchoRuntime()
    async with Person(town.account("ada")) as ada, running_bot(bot, runtime, ada.user_id):
        room_id = await ada.direct_room(bot.user_id, encrypted=encrypted)
        await ada.meets(room_id, bot.user_id)
        said = await ada.say(room_id, "f/1.1")
        await ada.edit(room_id, said, "f/11")
        await ada.hears(room_id, "echo: f/11")
    event = runtime.events[-1]
    assert isinstance(event, TextReceived)
    assert (event.text, event.corrects) == ("f/11", said)


@both_kinds
async def test_a_thread_is_answered_inside(town: Town, encrypted: bool) -> None:
    """The answer names the root, and for old clients the message; an edit stays in its thread."""
    bot, runtime = town.account("bot"), EchoRuntime()
    async with Person(town.account("ada")) as ada, running_bot(bot, runtime, ada.user_id):
        room_id = await ada.direct_room(bot.user_id, encrypted=encrypted)
        await ada.meets(room_id, bot.user_id)
        root = await ada.say(room_id, "the lower fall")
        said = await ada.say_in_thread(room_id, root, "overcast")
        content = await ada.hears(room_id, "echo: overcast")
        await ada.edit(room_id, said, "sunny")
        edited = await ada.hears(room_id, "echo: sunny")
    assert content["m.relates_to"] == {
        "rel_type": "m.thread",
        "event_id": root,
        "is_falling_back": True,
        "m.in_reply_to": {"event_id": said},
    }
    assert edited["m.relates_to"]["event_id"] == root


@both_kinds
async def test_a_place_and_other_kinds_come_in(town: Town, encrypted: bool) -> None:
    """A location gives its degrees; a video is named; a withdrawal names what is taken back."""
    bot, runtime = town.account("bot"), EchoRuntime()
    async with Person(town.account("ada")) as ada, running_bot(bot, runtime, ada.user_id):
        room_id = await ada.direct_room(bot.user_id, encrypted=encrypted)
        await ada.meets(room_id, bot.user_id)
        place_id = await ada.share_place(room_id, "geo:47.25,-12.5;u=20")
        await ada.hears(room_id, "echo: 47.25, -12.5")
        await ada.send(room_id, {"msgtype": "m.video", "body": "v", "url": "mxc://localhost/a"})
        await ada.send(room_id, {"msgtype": "m.notice", "body": "from another bot"})
        await ada.client.room_redact(room_id, place_id)
        place, video, withdrawn = await runtime.takes(3)
    assert isinstance(place, PlaceReceived)
    assert (place.latitude, place.longitude) == (47.25, -12.5)
    assert isinstance(video, OtherReceived)
    assert video.what == "video"
    assert isinstance(withdrawn, Withdrawn)
    assert withdrawn.event_id == place_id


async def test_a_group_is_answered_when_it_calls(town: Town) -> None:
    """In a group, a call by name, a reply and a word in the bot's thread are for the bot."""
    bot, runtime = town.account("bot"), EchoRuntime()
    async with (
        Person(town.account("ada")) as ada,
        Person(town.account("bo")) as bo,
        running_bot(bot, runtime, "*:localhost"),
    ):
        room_id = await ada.direct_room(bot.user_id, bo.user_id, encrypted=True)
        await bo.joins(room_id)
        await ada.meets(room_id, bot.user_id)
        await ada.meets(room_id, bo.user_id)
        await bo.meets(room_id, bot.user_id)
        await bo.say(room_id, "nice weather")
        root = await ada.say(room_id, "start", **{"m.mentions": {"user_ids": [bot.user_id]}})
        await ada.say_in_thread(room_id, root, "in the thread of the call")
        await ada.hears(room_id, "echo: in the thread of the call")
        answer_id = next(
            e.event_id for _, e in ada.heard if e.source["content"]["body"] == "echo: start"
        )
        await ada.say_in_thread(room_id, root, "overcast")
        await ada.hears(room_id, "echo: overcast")
        reply = {"m.relates_to": {"m.in_reply_to": {"event_id": answer_id}}}
        await bo.say(room_id, "> <@x:localhost> old\n\nwhy", **reply)
        await bo.hears(room_id, "echo: why")
    addressed = {
        event.text: event.origin.addressed
        for event in runtime.events
        if isinstance(event, TextReceived)
    }
    assert addressed == {
        "nice weather": False,
        "start": True,
        "in the thread of the call": True,
        "overcast": True,
        "why": True,
    }
    assert not any(event.origin.direct for event in runtime.events)


async def test_marks_and_withdrawals_reach_the_person(town: Town) -> None:
    """Typing, the read mark and a withdrawal of the bot's own message are taken by the server."""
    bot, runtime = town.account("bot"), EchoRuntime()
    async with Person(town.account("ada")) as ada, running_bot(bot, runtime, ada.user_id) as client:
        room_id = await ada.direct_room(bot.user_id, encrypted=False)
        await ada.meets(room_id, bot.user_id)
        said = await ada.say(room_id, "hello")
        await ada.hears(room_id, "echo: hello")
        room = ada.client.rooms[room_id]
        await client.transport.set_typing(room_id, True)
        await ada.waits(lambda: bot.user_id in room.typing_users)
        await client.transport.set_typing(room_id, False)
        await ada.waits(lambda: room.typing_users == [])
        await client.transport.mark_read(room_id, said)
        await ada.waits(lambda: bot.user_id in room.read_receipts)
        echo_id = next(event.event_id for _, event in ada.heard)
        await client.transport.redact(room_id, echo_id, "txn-1")
        gone = await ada.client.room_get_event(room_id, echo_id)
    assert room.read_receipts[bot.user_id].event_id == said
    assert gone.event.source["content"] == {}


async def test_a_message_is_found_by_its_row(town: Town) -> None:
    """What was sent is found again by its row id, by another device too; what was not, is not."""
    bot, runtime = town.account("bot"), EchoRuntime()
    async with Person(town.account("ada")) as ada, running_bot(bot, runtime, ada.user_id) as client:
        room_id = await ada.direct_room(bot.user_id, encrypted=True)
        await ada.meets(room_id, bot.user_id)
        said = await ada.say(room_id, "hello")
        await ada.hears(room_id, "echo: hello")
        sent_at = runtime.events[0].origin.sent_at
        found = await client.transport.find_sent(room_id, f"row-{said[1:]}", sent_at)
        missing = await client.transport.find_sent(room_id, "row-none", sent_at)
    assert found == next(event.event_id for _, event in ada.heard)
    assert missing is None


async def test_rooms_of_many_start_together(town: Town) -> None:
    """Several people who meet the bot at the same moment, encrypted, are all answered."""
    bot, runtime = town.account("bot"), EchoRuntime()
    async with (
        Person(town.account("ada")) as ada,
        Person(town.account("bo")) as bo,
        running_bot(bot, runtime, "*:localhost"),
    ):

        async def talk(person: Person) -> None:
            room_id = await person.direct_room(bot.user_id, encrypted=True)
            await person.meets(room_id, bot.user_id)
            for number in range(5):
                await person.say(room_id, f"{number}")
            await person.hears(room_id, "echo: 4")
            assert person.bodies(room_id) == [f"echo: {number}" for number in range(5)]

        await asyncio.gather(talk(ada), talk(bo), talk(ada))


async def test_a_new_device_of_a_person_reads_the_answer(town: Town, tmp_path: Path) -> None:
    """Who signs in with a second device reads there what the bot says from then on."""
    bot, runtime = town.account("bot"), EchoRuntime()
    account = town.account("ada")
    second = dataclasses.replace(account, data_dir=tmp_path)
    async with Person(account) as ada, running_bot(bot, runtime, ada.user_id):
        room_id = await ada.direct_room(bot.user_id, encrypted=True)
        await ada.meets(room_id, bot.user_id)
        await ada.say(room_id, "from the first device")
        await ada.hears(room_id, "echo: from the first device")
        async with Person(second) as ada_again:
            await ada.say(room_id, "with two devices")
            await ada_again.hears(room_id, "echo: with two devices")


async def test_a_public_room_needs_an_invitation_still(town: Town) -> None:
    """The bot enters only where it was asked to by somebody allowed."""
    bot, runtime = town.account("bot"), EchoRuntime()
    async with Person(town.account("ada")) as ada, running_bot(bot, runtime, ada.user_id):
        await ada.client.room_create(preset=RoomPreset.public_chat)
        await runtime.waits(lambda: runtime.token is not None)
        room_id = await ada.direct_room(bot.user_id, encrypted=False)
        await ada.meets(room_id, bot.user_id)
    assert len(ada.client.rooms) == 2
    assert runtime.events == []
