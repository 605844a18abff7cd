"""What people say of their ears and eyes is read, kept, and kept to themselves."""

from __future__ import annotations

import pytest

from bot.dialogue.actions import DrawCard, Say
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
        ("I can't read small text", {Need.SIGHT}),
        ("ich höre leider schlecht", {Need.HEARING}),
        ("ich bin auf einem Ohr taub", {Need.HEARING}),
        ("ich sehe nicht mehr gut, ziemlich schlecht und bin farbenblind", {Need.COLOUR}),
        ("ich sehe sehr schlecht", {Need.SIGHT}),
        ("Rot und Grün kann ich nicht unterscheiden", {Need.COLOUR}),
        ("oigo bastante mal", {Need.HEARING}),
        ("soy sorda", {Need.HEARING}),
        ("uso lector de pantalla", {Need.SIGHT}),
        ("no distingo el rojo del verde", {Need.COLOUR}),
        ("keine Notizen", set()),
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
        "meine Finger sind taub",
        "ich sehe kaum Struktur im Wasser",
        "das Licht sieht schlecht aus",
        "veo poco agua en la foto",
        "rot und grün blinken am Rand",
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


@pytest.mark.parametrize(
    ("told", "asked", "named"),
    [
        ("I'm deaf in one ear", "where am I", "Your notes: hearing."),
        ("ich bin schwerhörig und sehe schlecht", "wo bin ich", "Deine Notizen: Hören, Sehen."),
        ("soy daltónico", "dónde estoy", "Tus notas: visión del color."),
    ],
)
def test_notes_are_shown_to_whom_they_belong(told: str, asked: str, named: str) -> None:
    """Who asks where they are sees what is kept of ears and eyes, too; in a group nobody does."""
    player = Player()
    player.say(told)
    assert named in player.say(asked)[0].body
    assert player.context is not None
    origin = player.origin().model_copy(update={"direct": False})
    _, actions = handle(player.context, TextReceived(origin=origin, text=asked), player.now)
    assert not any(named in one.body for one in actions if isinstance(one, Say))


@pytest.mark.parametrize(
    "asked",
    [
        "what did you understand",
        "what have you got so far?",
        "what do you know so far",
        "what did I tell you",
        "was hast du verstanden?",
        "was weißt du bisher",
        "¿qué has entendido?",
        "¿qué tienes hasta ahora?",
    ],
)
def test_what_was_understood_can_be_seen(asked: str) -> None:
    """However it is asked, the step and all that is known come back, and the question stays."""
    player = Player()
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame 24-105, tripod")
    (said,) = player.say(asked)
    assert {"where.step", "where.known", "ask.top"} <= set(said.keys)


@pytest.mark.parametrize("asked", ["what do you mean", "was heißt das", "no entiendo"])
def test_a_question_that_is_unclear_is_explained(asked: str) -> None:
    """Who does not understand a question is told what it means."""
    player = Player()
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame 24-105, tripod")
    assert "explain.top" in player.say(asked)[0].keys


@pytest.mark.parametrize("sees", [True, False])
def test_a_card_says_all_that_it_shows(*, sees: bool) -> None:
    """Its alternative text has every line of it, and stands under it for who sees badly."""
    player = Player()
    for line in ("12 m tall, 18 m away, rock at 1.5 m, full frame 24-105, tripod", "1", "1"):
        player.say(line)
    if not sees:
        player.say("I use a screen reader")
    player.say("card")
    (card,) = (action for action in player.actions if isinstance(action, DrawCard))
    for shown in (*(line.value for line in card.lines), card.footer):
        assert shown in card.alt
        assert (shown in card.caption) is not sees
