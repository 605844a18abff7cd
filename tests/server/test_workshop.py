"""A workshop in an encrypted group room, with clients of its own for each person."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator
from contextlib import AsyncExitStack
from dataclasses import dataclass

import pytest

from tests.server.homeserver import Town
from tests.server.person import Content, Person
from tests.server.served import ServedBot

pytestmark = pytest.mark.server

NAMES = ("fern", "ben", "mara", "uli")


@dataclass
class Class:
    """Who is there, the room, and the bot."""

    people: dict[str, Person]
    room_id: str
    bot_id: str

    async def call(self, name: str, words: str) -> str:
        """Call the bot as clients do: a mention, and the shown name without a colon."""
        called = self.bot_id[1:].partition(":")[0]
        mention = {"m.mentions": {"user_ids": [self.bot_id]}}
        return await self.people[name].say(self.room_id, f"{called} {words}", **mention)

    async def answered(self, name: str, root: str, words: str) -> Content:
        """Wait for the bot's words to this person in this thread."""
        person = self.people[name]

        def found() -> list[Content]:
            contents = [event.source["content"] for _, event in person.heard]
            return [
                content
                for content in contents
                if content.get("m.relates_to", {}).get("event_id") == root
                and words in str(content.get("body"))
                and person.user_id in content.get("m.mentions", {}).get("user_ids", ())
            ]

        await person.waits(lambda: bool(found()))
        return found()[-1]

    def said_in(self, root: str) -> list[str]:
        """All that the bot said in a thread, as the leader hears it."""
        return [
            str(event.source["content"].get("body"))
            for _, event in self.people["fern"].heard
            if event.sender == self.bot_id
            and event.source["content"].get("m.relates_to", {}).get("event_id") == root
        ]


@pytest.fixture
async def course(town: Town) -> AsyncIterator[Class]:
    """The leader's room with three others and the bot."""
    account = town.account("linn")
    async with AsyncExitStack() as stack:
        people = {
            name: await stack.enter_async_context(Person(town.account(name))) for name in NAMES
        }
        served = ServedBot(account, ",".join(person.user_id for person in people.values()))
        served.start()
        stack.callback(served.kill)
        fern = people["fern"]
        others = [people[name].user_id for name in NAMES[1:]]
        room_id = await fern.direct_room(account.user_id, *others, encrypted=True)
        for name in NAMES[1:]:
            await people[name].joins(room_id)
        for person in people.values():
            for there in (account.user_id, *others):
                if there != person.user_id:
                    await person.meets(room_id, there)
        yield Class(people, room_id, account.user_id)


async def test_a_workshop(course: Class) -> None:
    """The leader's fall, walks at the same time, a reply from the room, who waits, talk aside."""
    fern, ben, mara = (course.people[name] for name in ("fern", "ben", "mara"))
    told = await course.call("fern", "fall 12 m tall, 18 m away, silky")
    await course.answered("fern", told, "For all here")
    kits = {"ben": "full frame 24-70, rock at 1.5 m", "mara": "m43 12-40, rock at 1 m"}
    begun = await asyncio.gather(*(course.call(name, kit) for name, kit in kits.items()))
    roots = dict(zip(kits, begun, strict=True))
    first = {name: await course.answered(name, roots[name], "1 leaves") for name in kits}
    assert first["ben"]["body"] != first["mara"]["body"]
    # A client that knows no threads replies from the room: the walk goes on in its thread.
    question = next(
        event.event_id
        for _, event in ben.heard
        if event.source["content"].get("body") == first["ben"]["body"]
    )
    await ben.say(
        course.room_id, "1", **{"m.relates_to": {"m.in_reply_to": {"event_id": question}}}
    )
    await course.answered("ben", roots["ben"], "sides and corners")
    # The leader speaks in a student's thread, the student to the leader: neither is answered.
    await fern.say_in_thread(course.room_id, roots["mara"], "look at the left edge, a twig")
    called = fern.user_id[1:].partition(":")[0]
    await mara.say_in_thread(course.room_id, roots["mara"], f"{called}, is 1/8 better?")
    await mara.say_in_thread(course.room_id, roots["mara"], "1")
    await course.answered("mara", roots["mara"], "sides and corners")
    asked = await course.call("fern", "who is stuck?")
    roster = await course.answered("fern", asked, "Nobody has waited longer")
    assert len(course.said_in(roots["mara"])) == 2  # the leader has heard the roster after them
    names = {name: course.people[name].user_id[1:].partition(":")[0] for name in NAMES}
    assert f"The composition: {names['ben']}, {names['mara']}." in roster["body"]
    assert f"Not begun: {names['uli']}." in roster["body"]
    assert roster["m.mentions"]["user_ids"] == [fern.user_id]


async def test_somebody_slipped_in(course: Class) -> None:
    """Told in the room by name, to nobody: it holds everybody's walk until the leader ends it."""
    uli, mara = course.people["uli"], course.people["mara"]
    root = await course.call("uli", "12 m tall, 18 m away, rock at 1.5 m, full frame 24-70")
    await course.answered("uli", root, "1 leaves")
    name = mara.user_id[1:].partition(":")[0]
    cry = await course.people["ben"].say(course.room_id, f"{name} slipped in")
    await course.answered("ben", cry, "Call the emergency number")
    await uli.say_in_thread(course.room_id, root, "1")
    await course.answered("uli", root, "told of in this room")
    over = await course.people["fern"].say(course.room_id, "all are safe, everybody is out")
    await course.answered("fern", over, "Warm, dry")
    await uli.say_in_thread(course.room_id, root, "1")
    await course.answered("uli", root, "sides and corners")
