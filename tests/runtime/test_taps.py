"""Taps, polls and places between the dialogue and the rooms."""

from __future__ import annotations

import asyncio
from datetime import timedelta

import pytest

from bot.dialogue.actions import Poll
from bot.dialogue.engine import failure, handle
from bot.dialogue.events import PlaceReceived, TextReceived, Withdrawn
from bot.runtime.runtime import Runtime
from bot.runtime.workers import Dialogue
from tests.runtime.fakes import FERN, ROOM, World, frame, origin, text

REAL = Dialogue(handle, failure)
FACTS = "12 m tall, 18 m away, rock at 1.5 m, full frame, 24-70"


def tap(option: str, target: str, **where: object) -> TextReceived:
    """A tap on a message of the bot."""
    return TextReceived(origin=origin(**where), text=option, replies_to=target, tapped=True)


async def _take(runtime: Runtime, *events: TextReceived | PlaceReceived | Withdrawn) -> None:
    await runtime.take_in(events, None)
    async with asyncio.timeout(20):
        await runtime.drain()


async def test_a_poll_goes_out_and_its_answer_names_the_question(world: World) -> None:
    """The poll is a message of its own behind the answer; the vote is for its question."""
    async with world.running(dialogue=REAL) as runtime:
        await _take(runtime, text("taps"))
        await _take(runtime, text(FACTS))
        poll_id, asked = world.server.sent[-1]
        assert asked.poll == Poll(
            question="Look along the top edge.",
            options=("leaves or rock", "white sky", "lip touches the edge"),
        )
        assert asked.body == (
            "Look along the top edge.\n1 leaves or rock\n2 white sky\n3 lip touches the edge"
        )
        assert world.server.sent[-2][1].poll is None
        assert await runtime.own_message(ROOM, poll_id) == (FERN, None)
        await _take(runtime, tap("3", poll_id))
    assert "sides and corners" in world.server.bodies[-1]


async def test_a_tap_on_what_asked_nothing_is_nothing(world: World) -> None:
    """A thumb for an answer without a question gets no answer."""
    async with world.running(dialogue=REAL) as runtime:
        await _take(runtime, text("help"))
        await _take(runtime, tap("yes", world.server.sent[-1][0]))
    assert len(world.server.sent) == 1


async def test_a_place_goes_out_as_one(world: World) -> None:
    """The last shared position follows the answer to an emergency, urgent as it is."""
    shared = PlaceReceived(origin=origin(), latitude=44.1512, longitude=-71.3498)
    async with world.running(dialogue=REAL) as runtime:
        await _take(runtime, shared)
        await _take(runtime, text("my friend slipped in"))
    answer, on_map = (outgoing for _, outgoing in world.server.sent[-2:])
    assert answer.place is None
    assert on_map.place is not None
    assert (on_map.place.latitude, on_map.place.longitude) == (44.1512, -71.3498)
    assert abs(on_map.place.shared_at - shared.origin.sent_at) < timedelta(seconds=1)


@pytest.mark.parametrize("together", [False, True])
async def test_a_reaction_in_a_group_is_undone_in_its_thread(world: World, together: bool) -> None:
    """A withdrawal no longer says where its event stood: what was answered or waits does."""
    group = {"direct": False}
    async with world.running(dialogue=REAL) as runtime:
        await _take(runtime, text(FACTS, event_id="$root", **group))
        tapped = tap("2", world.server.sent[-1][0], event_id="$tap", thread_id="$root", **group)
        back = Withdrawn(origin=origin(**group), event_id="$tap")
        if together:
            await _take(runtime, tapped, back)
        else:
            await _take(runtime, tapped)
            await _take(runtime, back)
    _, undone = world.server.sent[-1]
    assert undone.body.startswith("Undone.")
    assert undone.thread_id == "$root"
    # For clients without threads: a reaction is nothing that a reply could show.
    assert world.server.sent[1][1].reply_to == world.server.sent[0][0]


async def test_a_frame_inside_a_thread_is_withdrawn_there(world: World) -> None:
    """Its withdrawal, which names no thread, reaches the conversation that holds the frame."""
    shared = frame(event_id="$frame", thread_id="$root", direct=False)
    async with world.running(dialogue=REAL) as runtime:
        await runtime.take_in([shared], None)
        await runtime.drain()
        pictures = list(world.pictures.iterdir())
        await _take(runtime, Withdrawn(origin=origin(direct=False), event_id="$frame"))
    assert pictures
    assert list(world.pictures.iterdir()) == []
