"""Linn's own words, explained to whoever asks them back."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.own_words import NAMES, own_word_asked
from bot.dialogue.texts import TEXTS
from core.water import BANDS
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, walked


@pytest.mark.parametrize(
    ("asked", "name"),
    [
        ("And what is a ladder, you don't mean I climb something?", "ladder"),
        ("i dont follow the ladder", "ladder"),
        ("sorry I don't quite follow the ladder bit", "ladder"),
        ("you lost me with the ladder", "ladder"),
        ("ich verstehe die Reihe nicht", "ladder"),
        ("das mit der Reihe versteh ich nicht", "ladder"),
        ("no le entiendo a la serie", "ladder"),
        ("What does '1 %, textured' mean please", "share"),
        ("what do you mean by water crosses 2 % of the frame", "share"),
        ("2 % of the frame? what's that", "share"),
        ("textured? what's that", "look"),
        ("what are the letters in the picture", "letters"),
        ("what's that letter thing in the picture", "letters"),
        ("what is 'about right on the meter'?", "meter"),
        ("what's 'tilted 2.5° up'?", "tilt"),
        ("what's a turn back time?", "turn_back"),
        ("in the light of your last frames, what does that mean", "last_frames"),
        ("no idea what overcast is", "overcast"),
        ("27mm is what", "focal"),
        ("was heißt denn 'laut Belichtungsmesser'?", "meter"),
        ("was ist eine Reihe?", "ladder"),
        ("was bedeutet 3,7 % des Bildes", "share"),
        ("Abbruchkante? was ist das", "lip"),
        ("¿qué es una serie?", "ladder"),
        ("¿qué significa 'cruza el 2 % del encuadre'?", "share"),
        ("¿qué quiere decir en su punto?", "meter"),
    ],
)
def test_the_word_is_known_however_it_is_asked(asked: str, name: str) -> None:
    """Before or behind the word, quoted or not, in each language."""
    found = own_word_asked(asked)
    assert found is not None
    assert found[0] == name


@pytest.mark.parametrize(
    "text",
    [
        "what is 27 mm like from here",
        "what is the best time for silky water",
        "what does the ladder cost me in light",
        "should it be textured",
        "2 % of the frame is enough",
        "was ist das für ein Fels an der Kante da",
        "¿qué es mejor, vertical u horizontal?",
    ],
)
def test_other_questions_are_left_to_their_answers(text: str) -> None:
    """Who asks for a number, or what to take, knows the word."""
    assert own_word_asked(text) is None


def test_each_word_has_its_sentence() -> None:
    """A text for each, and the bands of the share as they are reckoned with."""
    assert all(f"term.{name}" in TEXTS for name in set(NAMES) - {"lip", "portrait"})
    bands = TEXTS["term.share"]
    assert all(f"to {100 * limit:.0f} %" in bands for limit in BANDS[1:])


def test_the_walk_stays_where_it_is_and_the_rest_is_heard() -> None:
    """A word is explained, the reply beside it taken, the open question put again."""
    player = walked()
    said = keys_of(player, "dots only. what is a ladder?")
    assert said[0] == "term.ladder"
    assert "ask.leaves" in said
    body = walked().say("what is a ladder?")[0].body
    assert "each twice the last" in body
    assert "Does the main water blink?" in body


def test_a_phone_is_told_its_buttons() -> None:
    """What "26 mm" is on a phone is its 1x; in German the rest is read as well."""
    phone = walked(told="phone, 2 m tall, 5 m away, rock at 1 m")
    assert "26 mm is 1x" in phone.say("whats 26mm")[0].body
    player = Player()
    player.say("sprache deutsch")
    said = player.say("Was heißt Abbruchkante? Der Fall ist 12 m hoch.")[0].body
    assert "Wasser" in said
    assert player.context is not None
    assert player.context.facts.fall_height_m == 12.0


def test_a_time_to_turn_back_that_is_known_is_told() -> None:
    """Its meaning is asked only while there is none."""
    player = walked()
    assert keys_of(player, "what's a turn back time?")[0] == "term.turn_back"
    player.say("3 km walk out, 150 m climb, sunset 18:40")
    assert keys_of(player, "what's my turn back time?")[0] != "term.turn_back"


def test_a_wish_beside_the_word_is_for_its_answer() -> None:
    """Silk is wished and asked for behind a word that is not understood; nobody is lost."""
    player = walked()
    player.say("english")
    body = player.say("i dont follow the ladder. I'd like silky water, how slow do I go?")[0].body
    assert "each twice the last" in body
    assert "Silky:" in body


@pytest.mark.parametrize(
    "text",
    [
        "ich verstehe die Reihe, danke",
        "I don't follow the path",
        "i cant get the lip in the frame",
        "die Kante ist nicht frei",
    ],
)
def test_no_word_is_asked(text: str) -> None:
    """What is followed or reached in the place is no word."""
    assert own_word_asked(text) is None
