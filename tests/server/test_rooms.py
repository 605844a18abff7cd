"""Rooms on a real homeserver: upgraded, deserted, and with somebody in them who is not allowed."""

from __future__ import annotations

from typing import Any

import pytest

from bot.matrix.policy import Policy
from bot.matrix.server_api import ServerApi
from tests.server.homeserver import Town
from tests.server.person import Person
from tests.server.whole import whole_bot

pytestmark = pytest.mark.server


async def ask(person: Person, method: str, *path: str, **body: Any) -> dict[str, Any]:
    """Any request, as this person."""
    content = body if method != "GET" else None
    return await ServerApi(person.client).call(method, *path, body=content)


async def membership(person: Person, room_id: str, user_id: str) -> str:
    """What this person sees of somebody's membership."""
    state = await ask(person, "GET", "rooms", room_id, "state", "m.room.member", user_id)
    return str(state["membership"])


async def is_gone(person: Person, room_id: str, user_id: str) -> None:
    """Wait until somebody has left a room."""
    room = person.client.rooms[room_id]
    await person.waits(lambda: user_id not in room.users)


@pytest.mark.parametrize("encrypted", [False, True], ids=["plain", "encrypted"])
async def test_an_upgraded_room_goes_on(town: Town, *, encrypted: bool) -> None:
    """From version 10 to 11 by invitation, from there to 12, an open room, by itself."""
    bot = town.account("bot")
    async with Person(town.account("ada")) as ada:
        policy = Policy.of([ada.user_id])
        async with whole_bot(bot, policy):
            first = await room_of_version(ada, "10", bot.user_id, encrypted=encrypted)
            await ada.meets(first, bot.user_id)
            await ada.say(first, "a")
            await ada.hears(first, "1: a")
            second = await upgrade(ada, first, "11")
            await ada.say(second, "said before the bot is there")
            await ask(ada, "POST", "rooms", second, "invite", user_id=bot.user_id)
            await ada.meets(second, bot.user_id)
            await ada.say(second, "b")
            if not encrypted:  # what was said before the invitation has no key for the bot
                await ada.hears(second, "2: said before the bot is there")
            await ada.hears(second, f"{2 if encrypted else 3}: b")
            await is_gone(ada, first, bot.user_id)
            open_to_all = {"join_rule": "public"}
            await ask(ada, "PUT", "rooms", second, "state", "m.room.join_rules", **open_to_all)
            third = await upgrade(ada, second, "12")
            await ada.meets(third, bot.user_id)
            assert ":" not in third
            await ada.say(third, "c")
            await ada.hears(third, f"{3 if encrypted else 4}: c")
            await is_gone(ada, second, bot.user_id)
        async with whole_bot(bot, policy):
            await ada.say(third, "d")
            await ada.hears(third, f"{4 if encrypted else 5}: d")
    assert ada.bodies(first) == ["1: a"]


async def room_of_version(person: Person, version: str, bot_id: str, *, encrypted: bool) -> str:
    """A direct room that is not of the newest version."""
    algorithm = {"algorithm": "m.megolm.v1.aes-sha2"}
    state = {"type": "m.room.encryption", "state_key": "", "content": algorithm}
    answer = await ask(
        person,
        "POST",
        "createRoom",
        room_version=version,
        is_direct=True,
        preset="trusted_private_chat",
        invite=[bot_id],
        initial_state=[state] if encrypted else [],
    )
    room_id = str(answer["room_id"])
    await person.waits(lambda: room_id in person.client.rooms)
    return room_id


async def upgrade(person: Person, room_id: str, version: str) -> str:
    """Replace a room; returns the new one, which this person's client knows."""
    answer = await ask(person, "POST", "rooms", room_id, "upgrade", new_version=version)
    after = str(answer["replacement_room"])
    await person.waits(lambda: after in person.client.rooms)
    return after


async def test_a_room_that_everybody_allowed_has_left_is_left(town: Town) -> None:
    """The last one goes, the bot goes; and when the list shrinks, at the next start."""
    bot = town.account("bot")
    async with Person(town.account("ada")) as ada, Person(town.account("eve")) as eve:
        async with whole_bot(bot, Policy.of([ada.user_id])):
            group = await ada.direct_room(bot.user_id, eve.user_id, encrypted=False)
            await eve.joins(group)
            await ada.meets(group, bot.user_id)
            await ask(ada, "POST", "rooms", group, "leave")
            await is_gone(eve, group, bot.user_id)
            other = await ada.direct_room(bot.user_id, encrypted=False)
            await ada.meets(other, bot.user_id)
        async with whole_bot(bot, Policy.of([eve.user_id])):
            await is_gone(ada, other, bot.user_id)


async def test_somebody_who_is_not_allowed_sees_no_sign(town: Town) -> None:
    """Whatever a stranger does in a room or asks for: no mark, no answer, no visit, no look."""
    bot = town.account("bot")
    async with Person(town.account("ada")) as ada, Person(town.account("eve")) as eve:
        policy = Policy.of([ada.user_id])
        async with whole_bot(bot, policy) as linn:
            room_id = await ada.direct_room(bot.user_id, eve.user_id, encrypted=False)
            await eve.joins(room_id)
            await ada.meets(room_id, bot.user_id)
            question = await ada.say(room_id, f"{bot.user_id}: a")
            answer = await heard_id(eve, room_id, "1: a")
            doings = await bother(eve, room_id, bot.user_id, ada_said=question, bot_said=answer)
            own = await eve.direct_room(bot.user_id, encrypted=False)
            await ada.say(room_id, f"{bot.user_id}: b")
            await ada.hears(room_id, "1: b")
            seen = await signs(eve, bot.user_id)
            assert await membership(eve, own, bot.user_id) == "invite"
            assert linn.checker.checked == []
    assert seen["typing"] == []
    assert not set(seen["read"]) & set(doings)
    assert eve.bodies(room_id) == [f"{bot.user_id}: a", "1: a", f"{bot.user_id}: b", "1: b"]


async def heard_id(person: Person, room_id: str, body: str) -> str:
    """The id of a message that this person hears."""
    await person.hears(room_id, body)
    return next(
        str(event.event_id)
        for _, event in person.heard
        if event.source["content"].get("body") == body
    )


async def bother(
    eve: Person, room_id: str, bot_id: str, *, ada_said: str, bot_said: str
) -> list[str]:
    """All that a stranger can try; the ids of what they sent."""
    mention: dict[str, Any] = {"m.mentions": {"user_ids": [bot_id]}}
    answering = {"m.relates_to": {"m.in_reply_to": {"event_id": bot_said}}}
    inside = {"m.relates_to": {"rel_type": "m.thread", "event_id": ada_said}}
    sent = [
        await eve.say(room_id, f"{bot_id}: help, I fell into the water", **mention),
        await eve.say(room_id, "1", **answering),
        await eve.say(room_id, "2", **inside),
        await eve.share_picture(room_id, b"no picture", "image/png", f"{bot_id}: look"),
        await eve.share_place(room_id, "geo:47.5,11.5"),
        await eve.edit(room_id, ada_said, f"{bot_id}: forget me"),
        await eve.say(room_id, "verify", msgtype="m.key.verification.request", to=bot_id),
    ]
    votes: dict[str, dict[str, Any]] = {
        "m.reaction": {
            "m.relates_to": {"rel_type": "m.annotation", "event_id": bot_said, "key": "👍"}
        },
        "org.matrix.msc3381.poll.response": {
            "m.relates_to": {"rel_type": "m.reference", "event_id": bot_said},
            "org.matrix.msc3381.poll.response": {"answers": ["1"]},
        },
    }
    for kind, content in votes.items():
        answer = await ask(eve, "PUT", "rooms", room_id, "send", kind, f"txn-{kind}", **content)
        sent.append(str(answer["event_id"]))
    await ask(eve, "PUT", "rooms", room_id, "redact", sent[0], "txn-redact")
    request = {"from_device": "X", "methods": ["m.sas.v1"], "transaction_id": "t", "timestamp": 1}
    kinds: dict[str, dict[str, Any]] = {
        "m.key.verification.request": request,
        "m.room_key_request": {"action": "request"},
    }
    for kind, content in kinds.items():
        await ask(eve, "PUT", "sendToDevice", kind, kind, messages={bot_id: {"*": content}})
    return sent


async def signs(eve: Person, bot_id: str) -> dict[str, list[str]]:
    """The bot's read and typing marks, and what it sent to devices, as a fresh sync shows them."""
    answer = await ServerApi(eve.client).call("GET", "sync", query={"timeout": "0"})
    assert not [one for one in answer.get("to_device", {}).get("events", []) if bot_id in str(one)]
    rooms = answer["rooms"]["join"].values()
    marks = [mark for room in rooms for mark in room["ephemeral"]["events"]]
    typing = [mark for mark in marks if mark["type"] == "m.typing"]
    receipts = [mark["content"] for mark in marks if mark["type"] == "m.receipt"]
    return {
        "typing": [name for mark in typing for name in mark["content"]["user_ids"]],
        "read": [
            event_id
            for receipt in receipts
            for event_id, readers in receipt.items()
            if bot_id in readers.get("m.read", {})
        ],
    }
