"""The bot and a client of another make, which exchanges keys with signed devices only.

matrix-js-sdk (Rust crypto) on Node.js sends and reads everything here; what it shows of the bot
is what people with current clients see.
"""

from __future__ import annotations

from collections.abc import AsyncIterator
from pathlib import Path
from typing import Any, Final

import pytest
import pytest_asyncio

from bot.dialogue.texts import TEXTS
from bot.pictures.thumbnail import size_of
from tests.scenes.camera import Exposure
from tests.scenes.picture_file import Stamp, jpeg
from tests.scenes.waterfall import Plan, compose, take, with_clipped_share
from tests.server.homeserver import Town
from tests.server.person import Person
from tests.server.second_client import SecondClient, Seen
from tests.server.served import ServedBot

pytestmark = [pytest.mark.server, pytest.mark.asyncio(loop_scope="module")]

#: Tells all that the first questions ask, so that the next one has options.
FACTS: Final = "12 m tall, 18 m away, rock at 1.5 m, full frame, 24-70, tripod"
TOP, SIDES = TEXTS["ask.top"], TEXTS["ask.sides"]
WHITE_SKY: Final = TEXTS["top.sky"]


class Meeting:
    """The bot, a person with the second client, and what happens in one of their rooms.

    Args:
        bot: served in a process of its own.
        fern: the person.
        room_id: an encrypted room with the bot in it.
    """

    def __init__(self, bot: ServedBot, fern: SecondClient, room_id: str) -> None:
        self.bot = bot
        self.fern = fern
        self.room_id = room_id
        self._before = len(fern.seen)

    async def does(self, command: str, **given: Any) -> str:
        """Do something in the room; what comes back is the id of the event."""
        self._before = len(self.fern.seen)
        return str(await self.fern.asks(command, room_id=self.room_id, **given))

    async def hears(self, words: str) -> Seen:
        """The bot's next message with these words in it, since something was done."""
        bot_id, room_id = self.bot.account.user_id, self.room_id
        return await self.fern.sees(
            lambda event: (
                (event.sender, event.room_id) == (bot_id, room_id) and words in event.body
            ),
            after=self._before,
        )

    @property
    def said(self) -> list[str]:
        """All that the bot has said in the room."""
        bot_id, room_id = self.bot.account.user_id, self.room_id
        return [
            event.body
            for event in self.fern.seen
            if (event.sender, event.room_id) == (bot_id, room_id)
        ]


@pytest_asyncio.fixture(scope="module", loop_scope="module")
async def company(
    town: Town, tmp_path_factory: pytest.TempPathFactory
) -> AsyncIterator[tuple[ServedBot, SecondClient]]:
    """A served bot and a person with the second client."""
    account = town.account("linn")
    bot = ServedBot(account, "*:localhost")
    bot.start()
    try:
        folder = tmp_path_factory.mktemp("second_client")
        async with SecondClient(town.account("fern"), folder) as fern:
            yield bot, fern
    finally:
        bot.kill()


@pytest_asyncio.fixture(loop_scope="module")
async def meeting(company: tuple[ServedBot, SecondClient]) -> Meeting:
    """A direct room of their own for each test, encrypted."""
    bot, fern = company
    return await _met(bot, fern)


async def _met(bot: ServedBot, fern: SecondClient, *others: Person) -> Meeting:
    bot_id = bot.account.user_id
    invited = [bot_id, *(other.user_id for other in others)]
    room_id = str(await fern.asks("make_room", invite=invited))
    for other in others:
        await other.joins(room_id)
    for user_id in invited:
        await fern.asks("meet", room_id=room_id, user_id=user_id)
    return Meeting(bot, fern, room_id)


async def _walk_to_the_top_edge(meeting: Meeting) -> Seen:
    """Tell everything; the bot asks about the top edge, which has three options."""
    await meeting.does("say", body="start")
    await meeting.hears(TEXTS["caution.arrive"])
    await meeting.does("say", body=FACTS)
    return await meeting.hears(TOP)


async def test_words_go_both_ways_between_signed_devices(meeting: Meeting) -> None:
    """The bot reads what is said to signed devices alone, and its answers carry no shield."""
    await meeting.does("say", body="hello")
    answer = await meeting.hears(TEXTS["hello"])
    assert answer.encrypted
    assert answer.shield == (0, None)
    assert all(event.failure is None for event in meeting.fern.seen)


async def test_a_frame_comes_back_marked_and_goes_when_it_is_taken_back(
    meeting: Meeting, tmp_path: Path
) -> None:
    """Encrypted both ways, with true sizes and a thumbnail; a redaction leaves nothing of it."""
    plan = Plan(640, 960, seed=3, light_ev100=9.0, exposure=Exposure(2**3.5, 2**-2))
    path = tmp_path / "frame.jpg"
    path.write_bytes(jpeg(take(with_clipped_share(compose(plan), 0.03)).pixels, Stamp()))
    shared = {"path": str(path), "mime": "image/jpeg", "width": 640, "height": 960}
    frame_id = await meeting.does("share_picture", caption="from the railing", **shared)
    await meeting.hears("white water without texture")
    marked = await meeting.hears("outlined")
    info = marked.content["info"]
    picture = await meeting.fern.fetches(marked.content["file"])
    small = await meeting.fern.fetches(info["thumbnail_file"])
    assert size_of(picture) == (info["w"], info["h"], info["mimetype"])
    shown = info["thumbnail_info"]
    assert size_of(small) == (shown["w"], shown["h"], shown["mimetype"])
    assert (len(picture), len(small)) == (info["size"], shown["size"])

    await meeting.does("take_back", event_id=frame_id)
    taken_back = await meeting.fern.sees(lambda event: event.type == "m.room.redaction")
    assert taken_back.content["redacts"] == marked.event_id
    assert list((meeting.bot.account.data_dir / "pictures").iterdir()) == []


async def test_a_thread_is_answered_inside(meeting: Meeting) -> None:
    """The library files the answer under the root; clients without threads see a reply."""
    root = await meeting.does("say", body="hello")
    await meeting.hears(TEXTS["hello"])
    said = await meeting.does("say", body="help", thread_id=root)
    answer = await meeting.hears(TEXTS["danger.cry"])
    assert (answer.thread_id, answer.reply_to) == (root, said)
    assert answer.content["m.relates_to"]["is_falling_back"] is True


async def test_a_reaction_answers_the_message_that_it_stands_on(meeting: Meeting) -> None:
    """A keycap is its number, another one corrects it, and taken back it is undone."""
    asked = await _walk_to_the_top_edge(meeting)
    await meeting.does("react", event_id=asked.event_id, key="2\ufe0f\u20e3")
    await meeting.hears(WHITE_SKY)
    await meeting.does("react", event_id=asked.event_id, key="\N{PARTY POPPER}")
    tap_id = await meeting.does("react", event_id=asked.event_id, key="1\ufe0f\u20e3")
    corrected = await meeting.hears(SIDES)
    assert WHITE_SKY not in corrected.body
    await meeting.does("take_back", event_id=tap_id)
    assert TOP in (await meeting.hears(TEXTS["back.done"])).body
    assert len(meeting.said) == 5


async def test_an_edit_corrects_the_answer(meeting: Meeting) -> None:
    """The answer before is undone, and the new words are answered in its place."""
    await _walk_to_the_top_edge(meeting)
    said = await meeting.does("say", body="2")
    await meeting.hears(WHITE_SKY)
    await meeting.does("say", body="1", edit=said)
    assert WHITE_SKY not in (await meeting.hears(SIDES)).body


async def test_a_number_that_replies_names_its_question(meeting: Meeting) -> None:
    """A reply to the question before is not counted for the one that is open."""
    asked = await _walk_to_the_top_edge(meeting)
    await meeting.does("say", body="1", reply_to=asked.event_id)
    await meeting.hears(SIDES)
    await meeting.does("say", body="3", reply_to=asked.event_id)
    await meeting.hears(TEXTS["old_answer"].format(number=3))


async def test_a_poll_is_shown_and_answered_by_a_tap(meeting: Meeting) -> None:
    """The library reads the bot's poll; votes count, and change; people's own polls are theirs."""
    await meeting.does("say", body="taps")
    await meeting.hears(TEXTS["taps.on"].split("`")[0])
    asked = await _walk_to_the_top_edge(meeting)
    assert asked.poll is not None
    assert asked.poll["question"] == TOP
    assert asked.poll["answers"][:2] == [["1", "leaves or rock"], ["2", "white sky"]]
    await meeting.does("vote", event_id=asked.event_id, answers=["2"])
    await meeting.hears(WHITE_SKY)
    await meeting.does("vote", event_id=asked.event_id, answers=["1"])
    await meeting.hears(SIDES)
    own = await meeting.does("ask", question="Tea?", answers=["yes", "no"])
    await meeting.does("vote", event_id=own, answers=["1"])
    await meeting.does("close_poll", event_id=own)
    before = meeting.said
    await meeting.does("say", body="taps")
    await meeting.hears(TEXTS["taps.off"])
    later = meeting.said[len(before) :]  # the poll of before may still have been on its way
    assert [body for body in later if TEXTS["taps.off"] not in body and SIDES not in body] == []


async def test_a_place_is_taken_and_given_back_for_rescuers(meeting: Meeting) -> None:
    """In an emergency the last shared position comes as a place that clients show on a map."""
    await meeting.does("share_place", uri="geo:44.1512,-71.3498;u=10")
    await meeting.hears(TEXTS["arrive.place_kept"])
    await meeting.does("say", body="my friend slipped in")
    answer = await meeting.hears(TEXTS["danger.in_water"])
    assert "44.1512, -71.3498" in answer.body
    shown = await meeting.hears(TEXTS["danger.on_map"].split("{")[0])
    assert shown.place is not None
    assert (shown.place["uri"], shown.place["asset"]) == ("geo:44.151200,-71.349800", "m.pin")
    assert shown.content["geo_uri"] == shown.place["uri"]
    await meeting.does("react", event_id=answer.event_id, key="\N{THUMBS UP SIGN}\ufe0f")
    await meeting.hears(TEXTS["danger.over"])


async def test_a_mention_calls_the_bot_in_a_group(
    company: tuple[ServedBot, SecondClient], town: Town
) -> None:
    """Who mentions it is answered in a thread; others' taps on that answer are nothing.

    Bo's device is not signed by its owner: the second client shows none of his words, which shows
    that it would show none of the bot's either.
    """
    bot, fern = company
    async with Person(town.account("bo")) as bo:
        meeting = await _met(bot, fern, bo)
        await bo.waits(lambda: fern.user_id in bo.client.rooms[meeting.room_id].users)
        await bo.say(meeting.room_id, "nice light")
        sealed = await fern.sees(lambda event: event.sender == bo.user_id)
        assert sealed.failure is not None
        root = await meeting.does("say", body="start", mention=bot.account.user_id)
        started = await meeting.hears(TEXTS["caution.arrive"])
        assert started.thread_id == root
        assert started.content["m.mentions"] == {"user_ids": [fern.user_id]}
        await meeting.does("say", body=FACTS, thread_id=root)
        asked = await meeting.hears(TOP)
        await bo.react(meeting.room_id, asked.event_id, "1\ufe0f\u20e3")
        tap_id = await meeting.does("react", event_id=asked.event_id, key="2\ufe0f\u20e3")
        answer = await meeting.hears(WHITE_SKY)
        assert (answer.thread_id, answer.reply_to) == (root, asked.event_id)
        await meeting.does("take_back", event_id=tap_id)
        assert (await meeting.hears(TEXTS["back.done"])).thread_id == root
        assert len(meeting.said) == 4


@pytest.mark.parametrize("in_room", [False, True], ids=["to_device", "in_room"])
async def test_the_bot_is_verified_by_emoji(meeting: Meeting, in_room: bool) -> None:
    """Both sides see the same seven, the log names them, and the client trusts the bot's keys."""
    where = {"room_id": meeting.room_id} if in_room else {}
    bot = meeting.bot
    compared = await meeting.fern.asks("verify", user_id=bot.account.user_id, **where)
    assert len(compared) == 7
    assert ", ".join(compared).casefold() in bot.log_path.read_text().casefold()
