"""Who is still at home, or stands at the water, has no evening at home; who comes home, has one."""

from __future__ import annotations

from typing import Final

import pytest

from bot.dialogue.meaning.at_home import has_no_frame, is_home, is_still_home, stands_there
from bot.dialogue.steps.anywhere import planning
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, turn_of, walked

_LANGUAGES: Final = {"en": "english", "de": "sprache deutsch", "es": "idioma español"}


def _is_at_home(player: Player) -> bool:
    return known(player).conversation.home_at is not None


def _at_home(language: str = "en") -> Player:
    """Somebody in the review, without any frame."""
    player = Player()
    player.say(_LANGUAGES[language])
    player.say({"en": "I'm home", "de": "bin daheim", "es": "ya estoy en casa"}[language])
    assert _is_at_home(player)
    return player


@pytest.mark.parametrize(
    "text",
    [
        "I packed up and caught the bus, home with tea now. How do I pick the best?",
        "home now, water came out kinda grey",
        "sind daheim, trocken, kakao",
        "mit dem Bus gefahren, daheim mit Tee",
        "cogí el autobús, en casa con un té",
    ],
)
def test_coming_home(text: str) -> None:
    """A part of a sentence tells it as well."""
    assert is_home(text)
    assert not stands_there(text)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "No no, I am still at home, it is only half past one"),
        ("en", "we haven't set off"),
        ("de", "wir sind ja noch daheim"),
        ("de", "wir sitzen noch in der Küche beim Frühstück"),
        ("es", "seguimos en casa"),
        ("es", "todavía estamos en casa"),
    ],
)
def test_still_at_home_is_before_the_walk(language: str, text: str) -> None:
    """No frames are gone through; the visit lies ahead, and a review in between is left."""
    assert is_still_home(text)
    player = Player()
    player.say(_LANGUAGES[language])
    player.say(text)
    assert not _is_at_home(player)
    assert planning.is_planning(turn_of(player))
    player = _at_home(language)
    player.say(text)
    assert not _is_at_home(player)


@pytest.mark.parametrize("text", ["I haven't left yet", "still too dark at home on the screen"])
def test_not_still_at_home(text: str) -> None:
    """Nobody has left the water, or the frames are looked at."""
    assert not is_still_home(text)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "I'm there now, tripod is up"),
        ("en", "I haven't taken any yet"),
        ("en", "Six metres. I haven't moved"),
        ("en", "where do I focus?"),
        ("de", "wieso nächstes Mal, ich steh doch noch davor!"),
        ("de", "sind jetzt auf dem Steg"),
        ("de", "hab doch noch gar kein Bild gemacht"),
        ("de", "du redest vom alten Bild"),
        ("de", "welche Blende nehm ich denn"),
        ("es", "estamos delante de la cascada"),
        ("es", "no he sacado ninguna foto"),
        ("es", "¿a qué enfoco?"),
    ],
)
def test_the_review_is_left_at_the_water(language: str, text: str) -> None:
    """Who stands there, has no frame, or asks for one to come is on the walk."""
    player = _at_home(language)
    player.say(text)
    assert not _is_at_home(player)


@pytest.mark.parametrize(
    "text",
    [
        "I was standing on the bridge when I took them",
        "we were at the platform",
        "1/8 and 1/2 s, f/11, ISO 100, standing 15 m away I liked it: what should I have set?",
        "which lens should I have used?",
        "I'm standing in front of it in the second one",
    ],
)
def test_the_review_stays_at_home(text: str) -> None:
    """What was is told of the frames."""
    player = _at_home()
    player.say(text)
    assert _is_at_home(player)


@pytest.mark.parametrize(
    "text",
    [
        "kein Bild gefällt mir",
        "I didn't get any sharp ones",
        "I have no picture without blur",
        "hab keine Bilder, die scharf sind",
        "no tengo fotos nítidas",
    ],
)
def test_no_picture_of_a_kind(text: str) -> None:
    """Of frames that are there none is liked: they are gone through all the same."""
    assert not has_no_frame(text)


def test_what_was_told_in_the_review_is_kept() -> None:
    """It is of the walk now."""
    player = _at_home()
    player.say("the fall is 7 m tall, full frame, 50 mm")
    player.say("I'm standing in front of it, 15 m away")
    facts = known(player).facts
    assert (facts.fall_height_m, facts.distance_m) == (7, 15)


def test_a_walk_keeps_what_was_told_in_the_review() -> None:
    """A walk that was under way goes on with it."""
    player = Player()
    for line in ("12 m tall", "I'm home", "I was 15 m away", "we're on the bridge now"):
        player.say(line)
    facts = known(player).facts
    assert (facts.fall_height_m, facts.distance_m) == (12, 15)


def test_a_frame_at_the_water_is_one_of_now() -> None:
    """It asks for the next one, though no walk was open."""
    player = _at_home("de")
    player.say("wir sind jetzt auf dem Steg")
    assert any(message.question for message in player.happen("frame clipped"))


@pytest.mark.parametrize("words", ["start", "a new walk please", "neue Tour"])
def test_a_start_leaves_the_review(words: str) -> None:
    """A walk that was left open is asked about; going on with it leaves the review, too."""
    player = walked("I'm home")
    player.say(words)
    if known(player).conversation.question is not None:
        player.say("go on")
    assert not _is_at_home(player)


@pytest.mark.parametrize(
    "text",
    [
        "It is cloudy, I have a 24-70 and a 6-stop ND. What should I put in the bag?",
        "What do I put in my bag? It is cloudy, full frame, 24-70",
        "está nublado, tengo full frame 24-70. ¿qué pongo en la mochila?",
        "bewölkt, Vollformat 24-70. Was pack ich in den Rucksack?",
    ],
)
def test_the_bag_is_no_dial(text: str) -> None:
    """A question of packing gives no settings, and takes no walk to the highlights."""
    player = Player()
    keys = keys_of(player, text)
    assert not [key for key in keys if key.startswith("base.")]
    walk = known(player).conversation.walk
    assert walk is None or walk.given is None


def test_a_dial_is_put_in() -> None:
    """What is put in the camera is a setting."""
    player = Player()
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, cloudy")
    assert "base.settings" in keys_of(player, "what do I put in the camera?")


@pytest.mark.parametrize(
    ("text", "keys"),
    [
        (
            "home now, water came out kinda grey n dull, can i fix that on the phone",
            {"home.edit_dull"},
        ),
        (
            "home, dry, they came out blue and flat, where do I start",
            {"home.edit_blue", "home.edit_dull"},
        ),
        ("sind daheim, die Bilder sind flau, was kann ich da machen?", {"home.edit_dull"}),
        ("ya en casa, las fotos salieron azules, ¿qué puedo hacer?", {"home.edit_blue"}),
    ],
)
def test_dull_and_blue_frames_are_mended(text: str, keys: set[str]) -> None:
    """The walk is over: no list of frames, no question of blinking, no next frame."""
    player = walked()
    player.say({"s": "sprache deutsch", "y": "idioma español"}.get(text[0], "english"))
    (message,) = player.say(text)
    assert keys <= set(message.keys)
    assert message.question == ""
    assert _is_at_home(player)


@pytest.mark.parametrize("text", ["it came out dull, can I fix it?", "we are home, it is dull"])
def test_no_mending_at_the_water_or_unasked(text: str) -> None:
    """At the water another frame is better than mending; who only tells is asked for frames."""
    assert "home.edit_dull" not in keys_of(walked(), text)


def test_a_question_beside_coming_home_is_answered() -> None:
    """It is not put off until frames are listed."""
    keys = keys_of(walked(), "I caught the bus, home with tea now. How do I pick the best ones?")
    assert "home.begin" not in keys
    assert not [key for key in keys if key.startswith("ask.")]


def test_coming_home_ends_the_walk_without_its_question() -> None:
    """The question of what is next is no longer answered by it."""
    player = walked("1", "1")
    assert "keep.note" not in keys_of(player, "home with tea now. How do I pick the best ones?")
    assert known(player).conversation.question is None
