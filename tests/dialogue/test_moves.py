"""What people do in an emergency is heard, cold hands are warmed, and a storm is sat out."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import read_danger, who_is_safe
from bot.dialogue.danger.cold_hands import only_cold_hands
from bot.dialogue.danger.moves import Move, move_of
from bot.dialogue.danger.replies import Safe, anyone_out_there
from bot.dialogue.own_words import is_own
from bot.dialogue.texts.commands import command_word
from tests.dialogue.player import Player

STORM = ("12 m tall, 18 m away, rock at 1.5 m", "it just thundered up the valley")
FLOOD = ("12 m tall, 18 m away, rock at 1.5 m", "the water is getting brown and rising")


def keys(*lines: str) -> list[str]:
    """The texts of the answer to the last of the lines."""
    player = Player()
    said = [player.say(line) for line in lines][-1]
    return [key for message in said for key in message.keys]


@pytest.mark.parametrize(
    ("text", "move"),
    [
        ("water looks the same, a bit louder maybe", Move.LOUDER),
        ("is the creek louder than before?", Move.LOUDER),
        ("der Bach wird lauter", Move.LOUDER),
        ("el agua suena más fuerte", Move.LOUDER),
        ("the water is no louder than before", None),
        ("she went to the car for a battery", Move.LEAD),
        ("sie ist wohl zum Auto gegangen", Move.LEAD),
        ("dijo que iba al coche", Move.LEAD),
        ("did she go to the car?", None),
        ("there is a farm track above me", Move.WAY),
        ("oben ist ein Forstweg, er führt zur Straße", Move.WAY),
        ("there is a track across the water", None),
        ("we're going up to the shelter", Move.GOING),
        ("wir steigen den Hang hoch", Move.GOING),
        ("ya subimos", Move.GOING),
        ("we can't go up", None),
        ("f/11, 1/4 s", None),
    ],
)
def test_what_a_message_tells_that_people_do(text: str, move: Move | None) -> None:
    """A way through the water, a denial and a question are no move."""
    assert move_of(text) is move


def test_louder_water_in_a_storm_sends_everybody_up() -> None:
    """A new roar is a sign of a flood, whatever it looks like."""
    assert "danger.flood" in keys(*STORM, "water looks the same so far, a bit louder maybe")


@pytest.mark.parametrize(("danger", "kind"), [(STORM, "thunder"), (FLOOD, "flood")])
def test_who_goes_is_told_to_go_on(danger: tuple[str, ...], kind: str) -> None:
    """The right move is called right, and the question whether all are safe stays."""
    said = keys(*danger, "ok we're going up to the shelter")
    assert said[0] == f"danger.{kind}.going"
    assert said[-1] == "ask.safe"


def test_a_way_up_from_a_flood() -> None:
    """A track that stays high is right, a bridge only well above the water."""
    assert keys(*FLOOD, "there is a farm track above me, it goes to a bridge")[0] == (
        "danger.flood.way"
    )


def test_a_way_tells_nothing_in_a_storm() -> None:
    """There it is shelter that counts."""
    assert keys(*STORM, "there is a farm track above me")[0] == "danger.thunder.again"


def test_a_lead_is_taken_up_where_somebody_is_missing() -> None:
    """Also beside a graver danger; without anybody missing it is none."""
    lead = "her buddy says she went to change a battery by the car"
    assert keys(*STORM, "Bettany isn't here, nobody has seen her for 20 minutes", lead)[0] == (
        "danger.missing.lead"
    )
    assert keys(*STORM, lead)[0] == "danger.thunder.again"


def test_a_move_changes_nothing_in_other_emergencies() -> None:
    """Who is hurt is not sent anywhere."""
    assert keys("he broke his leg", "we're going up to the shelter")[0] == "danger.held"


def test_both_dangers_are_closed() -> None:
    """After a storm and a rising stream both hold: nobody goes back, 30 minutes of shelter."""
    said = keys(*STORM, "the water is louder", "we're all safe at the shelter")
    assert {"danger.flood.over", "danger.thunder.over"} <= set(said)


def test_thunder_over_people_in_shelter_is_no_new_alarm() -> None:
    """They are told to stay; who goes back out, or begins anew, is warned again."""
    safe = (*STORM, "we are all safe in the car")
    assert keys(*safe, "still rumbling, we'll have lunch and call it a day") == [
        "danger.thunder.sheltered"
    ]
    assert "ask.safe" in keys(*safe, "it just thundered and we are back at the water")
    assert "ask.safe" in keys(*safe, "start", "1", "it just thundered up the valley")
    assert "danger.hurt" in keys(*safe, "lightning hit him, he is bleeding")


def test_a_storm_hours_later_is_a_new_one() -> None:
    """Nobody is taken to sit in the shelter all day."""
    player = Player()
    for line in (*STORM, "we are all safe in the car"):
        player.say(line)
    player.happen("later 4 h")
    assert player.say("it just thundered up the valley")[-1].question == "safe"


@pytest.mark.parametrize(
    "text",
    [
        "my hands are freezing",
        "my fingers are numb but ok, gloves were wet",
        "meine Hände sind eiskalt",
        "tengo las manos heladas",
        "what can I do about cold feet",
        "what can I do about the cold",
    ],
)
def test_cold_hands_are_warmed_and_the_walk_goes_on(text: str) -> None:
    """No alarm: how to warm them, when to go, and the open question."""
    assert read_danger(text) is None
    said = [key for key in keys("start", text) if key != "language.offered"]
    assert said[0] == "precaution.cold_hands"
    assert said[-1] == "ask.geometry"


@pytest.mark.parametrize(
    "text",
    [
        "my hands are numb",
        "can't move my fingers, so cold",
        "my hands are freezing and he won't wake up",
        "my feet are freezing and I can't stop shivering",
        "my hands are so cold, toes are numb",
    ],
)
def test_more_than_cold_hands_stays_danger(text: str) -> None:
    """No feeling, no use, a clouded head, or somebody else: the alarm."""
    assert not only_cold_hands(text)
    assert read_danger(text) is not None


def test_a_long_story_is_no_cold_hands() -> None:
    """Much beside it may tell of more."""
    assert not only_cold_hands("my hands are cold " + "and then this and that " * 3)


@pytest.mark.parametrize(
    ("text", "command"),
    [
        ("now where am I", "where"),
        ("ok, why", "why"),
        ("and now where are we?", "where"),
        ("actually back", "back"),
        ("jetzt wo bin ich", "where"),
        ("now help me", None),
        ("so", None),
        ("the way back", None),
        ("now wherever", None),
    ],
)
def test_small_words_before_a_command(text: str, command: str | None) -> None:
    """They change nothing of it; a cry for help is heard as that."""
    assert command_word(text) == command
    assert is_own(text) is (command is not None)


@pytest.mark.parametrize(
    "text", ["im on the track, all good, wet but fine", "nass aber alles gut", "todo bien, mojada"]
)
def test_wet_but_fine_is_safe(text: str) -> None:
    """A "but" before good news takes nothing back."""
    assert who_is_safe(text) is Safe.ALL


@pytest.mark.parametrize(
    "text", ["she stays on the bank", "sie bleibt draußen, am Ufer", "se queda en la orilla"]
)
def test_who_stays_on_the_bank_is_not_out_there(text: str) -> None:
    """What was warned of is not done."""
    assert anyone_out_there(text) is False
