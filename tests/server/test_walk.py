"""A whole walk, lens to keep, in an encrypted room: undisturbed, and killed at each step.

What has to come back is what the pure dialogue says to the same messages (`tests.dialogue.player`),
so a lost, doubled or reordered answer shows as a difference.
"""

from __future__ import annotations

import random
import re
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from typing import Final

import pytest

from bot.dialogue.texts import TEXTS
from bot.pictures.thumbnail import size_of
from tests.dialogue.player import Player
from tests.scenes.camera import Exposure
from tests.scenes.picture_file import Stamp, jpeg
from tests.scenes.waterfall import Plan, compose, take, with_clipped_share
from tests.server.homeserver import Town
from tests.server.person import Person
from tests.server.served import ServedBot

pytestmark = pytest.mark.server

#: One person's side of a walk without pictures, from arriving to finishing.
WALK: Final = (
    "start",
    "12 m tall, 18 m away, rock at 1.5 m",
    "full frame, 24-70, tripod",
    "1",
    "1",
    "3",
    "1",
    "why",
    "2",
    "3",
)


@asynccontextmanager
async def in_a_room(town: Town) -> AsyncIterator[tuple[ServedBot, Person, str]]:
    """A served bot and a person in an encrypted direct room."""
    account, guest = town.account("linn"), town.account("fern")
    bot = ServedBot(account, guest.user_id)
    bot.start()
    try:
        async with Person(guest) as fern:
            room_id = await fern.direct_room(account.user_id, encrypted=True)
            await fern.meets(room_id, account.user_id)
            yield bot, fern, room_id
    finally:
        bot.kill()


def expected(lines: tuple[str, ...]) -> list[list[str]]:
    """What the dialogue answers to each line, whatever the clock shows."""
    player = Player()
    return [timeless([message.body for message in player.say(line)]) for line in lines]


def timeless(bodies: list[str]) -> list[str]:
    """The messages with one time in the place of those of the clock."""
    return [re.sub(r"\d\d:\d\d UTC", "12:00 UTC", body) for body in bodies]


async def hears_all(person: Person, room_id: str, number: int) -> None:
    """Wait until so many messages of others have come."""
    await person.waits(lambda: len(person.bodies(room_id)) >= number)


async def test_whole_walk_in_an_encrypted_room(town: Town) -> None:
    """Every answer of the walk arrives, in order, once; SIGTERM ends the bot well."""
    async with in_a_room(town) as (bot, fern, room_id):
        said: list[str] = []
        for line, answers in zip(WALK, expected(WALK), strict=True):
            said += answers
            await fern.say(room_id, line)
            await hears_all(fern, room_id, len(said))
            assert timeless(fern.bodies(room_id)) == said
        assert bot.stop() == 0


async def test_frame_on_the_walk(town: Town) -> None:
    """A rendered frame with clipped water: next settings, the areas, and a marked picture."""
    plan = Plan(640, 960, seed=3, light_ev100=9.0, exposure=Exposure(2**3.5, 2**-2))
    taken = take(with_clipped_share(compose(plan), 0.03))
    async with in_a_room(town) as (_, fern, room_id):
        for line in WALK[:5]:
            before = len(fern.bodies(room_id))
            await fern.say(room_id, line)
            await hears_all(fern, room_id, before + 1)
        before = len(fern.bodies(room_id))
        await fern.share_picture(room_id, jpeg(taken.pixels, Stamp()), "image/jpeg")
        await hears_all(fern, room_id, before + 2)
        answer, caption = fern.bodies(room_id)[before:]
        assert "white water without texture" in answer
        assert answer.startswith("Next: ")
        assert "outlined" in caption
        picture = fern.heard[-1][1].source["content"]
        data = await fern.fetch(picture.get("url"), picture.get("file"))
        assert size_of(data)[:2] == (picture["info"]["w"], picture["info"]["h"])
        assert {"thumbnail_file", "thumbnail_info"} <= picture["info"].keys()


async def test_a_number_that_replies_to_an_older_question(town: Town) -> None:
    """A real reply names the question it is for; after a newer one, its number is not counted."""
    async with in_a_room(town) as (_, fern, room_id):
        for number, line in enumerate(WALK[:4], 1):
            await fern.say(room_id, line)
            await hears_all(fern, room_id, number)
        older = fern.heard[-2][1].event_id
        reply = {"m.relates_to": {"m.in_reply_to": {"event_id": older}}}
        await fern.say(room_id, "2", **reply)
        await hears_all(fern, room_id, 5)
        assert fern.bodies(room_id)[-1].startswith(TEXTS["old_answer"].format(number=2))


async def test_killed_between_any_two_messages(town: Town) -> None:
    """SIGKILL after each message, before or after its answer: nothing lost, nothing doubled."""
    seed = random.randrange(2**32)
    print(f"seed {seed}")  # noqa: T201  # for whoever has to play a failure again
    chance = random.Random(seed)
    async with in_a_room(town) as (bot, fern, room_id):
        said: list[str] = []
        for line, answers in zip(WALK, expected(WALK), strict=True):
            said += answers
            await fern.say(room_id, line)
            if chance.random() < 0.5:
                await hears_all(fern, room_id, len(said))
            else:
                await fern.pauses(chance.uniform(0.0, 0.15))
            bot.kill()
            bot.start()
            # A number that is typed long before its question is asked about, so wait for it.
            await hears_all(fern, room_id, len(said))
        await fern.pauses(1.0)  # time for a second copy to arrive, if there were one
        assert timeless(fern.bodies(room_id)) == said
