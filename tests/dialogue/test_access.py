"""What people say of their ears and eyes is read, kept, and kept to themselves."""

from __future__ import annotations

import pytest

from bot.dialogue.actions import Say
from bot.dialogue.engine import handle
from bot.dialogue.events import TextReceived
from bot.dialogue.facts import Need
from bot.dialogue.reading.access import needs_of
from tests.dialogue.player import Player


@pytest.mark.parametrize(
    ("text", "needs"),
    [
        ("I'm deaf", {Need.HEARING}),
        ("I am a bit hard of hearing, full frame, 24-105", {Need.HEARING}),
        ("my hearing is bad near falls", {Need.HEARING}),
        ("I can’t hear well", {Need.HEARING}),
        ("Please write only, I hear very little.", {Need.HEARING}),
        ("colourblind here", {Need.COLOUR}),
        ("red-green color blind", {Need.COLOUR}),
        ("I can't tell red from green", {Need.COLOUR}),
        ("I'm blind", {Need.SIGHT}),
        ("using a screen reader", {Need.SIGHT}),
        ("my eyes are bad", {Need.SIGHT}),
        ("low vision and hearing aids", {Need.SIGHT, Need.HEARING}),
        ("no notes", set()),
        ("My hearing is fine.", set()),
    ],
)
def test_needs_are_read(text: str, needs: set[Need]) -> None:
    """Each is told of oneself, in several wordings; they can be taken back."""
    assert needs_of(text) == frozenset(needs)


@pytest.mark.parametrize(
    "text",
    [
        "the fall is deafening",
        "I can't hear you over the water",
        "blind spot behind the rock",
        "red and green moss",
        "I can't see the lip from here",
        "good light, bad timing",
        "the view is good",
        "colour is fine",
        "take notes",
    ],
)
def test_other_talk_is_no_need(text: str) -> None:
    """The same words about the place and the picture say nothing of the person."""
    assert needs_of(text) is None


def test_in_a_group_room_nothing_is_repeated() -> None:
    """What somebody can't hear is theirs to tell: in a group it is noted, no more."""
    player = Player()
    player.say("hi")
    assert player.context is not None
    origin = player.origin().model_copy(update={"direct": False, "room_id": "!group"})
    room = player.context.room.model_copy(update={"direct": False})
    context = player.context.model_copy(update={"room": room})
    event = TextReceived(origin=origin, text="I'm deaf")
    context, actions = handle(context, event, player.now)
    (said,) = [action for action in actions if isinstance(action, Say)]
    assert said.body == "Noted."
    assert context.person.needs == {Need.HEARING}


@pytest.mark.parametrize(
    ("text", "noted"),
    [
        ("hi, I'm deaf in one ear and hear little on the other", True),
        ("I can't hear well and my friend has not come back", False),
    ],
)
def test_ears_are_no_danger(text: str, noted: bool) -> None:
    """Who tells of their ears is asked for no danger; who misses somebody is."""
    (said,) = Player().say(text)
    assert ("access.hearing" in said.keys) is noted
