"""Words that calm hold no danger beside them: what is worse is heard first."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import read_danger, who_is_safe
from bot.dialogue.danger.cold_hands import only_cold_hands
from bot.dialogue.danger.moves import Move, move_of
from bot.dialogue.danger.replies import Safe, anyone_out_there
from bot.dialogue.danger.whereabouts import tells_of_being_there, tells_of_outside
from tests.dialogue.player import Player

FALL = "12 m tall, 18 m away, rock at 1.5 m"
STORM = (FALL, "it just thundered up the valley")
FLOOD = (FALL, "the water is getting brown and rising")
SHELTERED = (*STORM, "we are all safe in the car")
PLANNED = "tomorrow we go to the Ravine Fall, 3 km each way, 150 m climb, sunset 18:40"


def keys(*lines: str) -> list[str]:
    """The texts of the answer to the last of the lines."""
    player = Player()
    said = [player.say(line) for line in lines][-1]
    return [key for message in said for key in message.keys]


@pytest.mark.parametrize(
    "text",
    [
        "my hands are freezing, I slipped into the creek",
        "hands are freezing, we are in the water",
        "hands are ice cold, the water is rising fast",
        "cold hands and my ankle is broken",
        "my hands are freezing and it thunders",
        "my fingers are numb but ok, Mia went under",
        "my fingers are freezing, I hang on the ledge",
        "my hands are cold and Ana passed out",
        "hands cold, I think frostbite",
        "cold hands, a tree came down on us",
        "hands getting cold, no light, no path",
        "my fingers are frozen solid",
        "meine Hände sind eiskalt, bin ins Wasser gerutscht",
        "Hände kalt, Weg weg, es ist dunkel",
        "tengo las manos heladas y sangro",
        "manos dormidas pero bien, Luis se cayó",
    ],
)
def test_cold_hands_hide_no_danger(text: str) -> None:
    """Only what is known to be harmless may stand beside them."""
    assert not only_cold_hands(text)
    assert read_danger(text) is not None


@pytest.mark.parametrize(
    "text",
    [
        "cold feet but happy",
        "my hands are freezing but all good",
        "Cold hands, warm gloves now on, ready for the next step",
        "what can I do against cold hands",
        "kalte Hände, aber mit Handschuhen geht's",
        "manos frías pero con guantes bien",
    ],
)
def test_small_words_beside_cold_hands_are_no_alarm(text: str) -> None:
    """They are warmed, and the walk goes on."""
    assert only_cold_hands(text)


def test_what_is_told_beside_cold_hands_is_taken_in() -> None:
    """A frame's numbers are not lost behind the advice."""
    player = Player()
    player.say(FALL)
    player.say("fingers frozen lol f/11 1/4 iso 100")
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    assert walk.given is not None
    assert walk.given.shutter_s == pytest.approx(0.25)


@pytest.mark.parametrize(
    "text",
    [
        "we're going back to the water for the tripod",
        "going back to get my camera bag",
        "I'm walking up to the ridge",
        "heading up the gorge",
        "we go on the way, but Tim went back for the bag",
        "going up, one of us fell",
        "running out of battery",
        "walking out on the rocks for one last frame",
        "vamos al agua otra vez",
        "subo a la cresta",
        "geh zurück zum Bach und hol das Stativ",
        "I see a path down along the creek",
        "we see a trail down there",
        "es gibt einen Weg unten am Bach",
        "someone said she walked to the lip by the path",
    ],
)
def test_no_wrong_move_is_called_right(text: str) -> None:
    """Back to the water, for gear, onto a ridge, or with somebody hurt: nobody hears "good"."""
    assert move_of(text) is None


@pytest.mark.parametrize(
    ("text", "move"),
    [
        ("on our way out of the gorge", Move.GOING),
        ("moving away from the water to the hut", Move.GOING),
        ("I see a road above the creek", Move.WAY),
        ("nos vamos al coche", Move.GOING),
    ],
)
def test_what_is_left_behind_bars_no_move(text: str, move: Move) -> None:
    """Out of the gorge is not in it."""
    assert move_of(text) is move


def test_nobody_is_sent_down_again_in_a_flood() -> None:
    """Who climbs out of rising water is told to go higher, not to come down."""
    said = keys(*FLOOD, "climbing up the slope away from the creek")
    assert said[0] == "danger.flood.again"


@pytest.mark.parametrize(
    "text",
    [
        "wir warten oben am Weg auf ihn",
        "wir suchen oben am Weg",
        "wir müssen oben am Weg sein",
        "wir laufen im Bachbett raus",
        "estamos arriba en el camino buscando",
        "todos arriba en la pista, Ana sigue abajo",
        "we are up at the path, calling her name",
        "we are all at the car, Tom is down there",
        "we run down the creek bed to the car",
        "we head back down the gorge to the car",
        "we found a path along the bank",
    ],
)
def test_who_looks_for_somebody_or_is_under_way_ends_nothing(text: str) -> None:
    """All are safe only where nobody is missing, and nobody is in the creek bed still."""
    assert who_is_safe(text) is not Safe.ALL


@pytest.mark.parametrize(
    "text",
    [
        "we're all back down at the car",
        "we found our path",
        "wir sind alle oben am Weg",
        "alle jetzt oben beim Auto",
        "estamos todos arriba en el camino",
    ],
)
def test_plain_good_news_still_ends_it(text: str) -> None:
    """Nobody is asked again who has said it."""
    assert who_is_safe(text) is Safe.ALL


@pytest.mark.parametrize(
    "text",
    [
        "ok he stays dry up there on the lip",
        "only my bag stays dry, I go in",
        "she doesn't stay on the bank",
        "he never stays on the bank",
        "no se queda en la orilla",
    ],
)
def test_a_denial_or_a_dry_bag_calls_nobody_back(text: str) -> None:
    """The place stays closed."""
    assert anyone_out_there(text) is not False


@pytest.mark.parametrize(
    "text",
    [
        "thunder again and we're under a big pine",
        "it thunders right above us and we're on the path",
        "thunder! Mia is still on the trail",
        "it thunders and I'm walking on the summit",
        "lightning hit the car",
        "es blitzt, wir gehen jetzt auf den Berg",
    ],
)
def test_a_storm_over_people_outside_is_a_new_alarm(text: str) -> None:
    """Only who sits in a shelter is told to stay there."""
    assert tells_of_outside(text)
    assert keys(*SHELTERED, text)[0] == "danger.thunder"


@pytest.mark.parametrize(
    "text",
    [
        "I'm on the lip, can I go further?",
        "my son stands on the lip, should I call him back?",
        "Ben is climbing up there, is that bad?",
        "is it dangerous where I am, on the brink?",
        "mein Sohn klettert gerade hoch, darf er das?",
        "ich stehe an der Kante, geht das?",
    ],
)
def test_who_is_there_now_is_called_back_whatever_is_planned(text: str) -> None:
    """A question with somebody in it who stands there is none of tomorrow."""
    assert tells_of_being_there(text)
    assert keys(PLANNED, text)[-1] == "ask.out_there"
