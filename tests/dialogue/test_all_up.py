"""Everybody left the water that rose: in people's own words, with what they ask behind it."""

from __future__ import annotations

import pytest

from bot.dialogue.context import Conversation
from tests.dialogue.player import Player

_LANGUAGE = {"en": "english", "de": "sprache deutsch", "es": "idioma español"}
_FLOOD = {
    "en": "the water is rising and turning brown",
    "de": "das Wasser wird braun und steigt",
    "es": "el agua se puso cafe y trae mas fuerza",
}
_WALK = "12 m, 18 m, 1.5 m, 24-70"


def _conversation(player: Player) -> Conversation:
    assert player.context is not None
    return player.context.conversation


def _held(language: str) -> Player:
    player = Player()
    for line in (_LANGUAGE[language], "start", _WALK, _FLOOD[language]):
        player.say(line)
    assert _conversation(player).emergency is not None
    return player


@pytest.mark.parametrize(
    ("language", "reply"),
    [
        ("en", "Left straight away, im in the car with her now and were both dry and ok. phew."),
        ("en", "packed up and left right away, everyone's in the car"),
        ("en", "safe, the two of us"),
        ("en", "all up on the road. the sun is coming out on the fall"),
        (
            "de",
            (
                "Ja, wir sind alle oben auf dem Forstweg, gut 25 m über dem Bach. Von hier sieht"
                " man den Fall durch die Buchen."
            ),
        ),
        ("de", "wir sind schon rauf, beide oben am Weg, alles gut"),
        ("de", "alle hier neben mir, keiner fehlt. Ich frage nur, ob wir später runter können"),
        ("es", "sí, a salvo las dos"),
        (
            "es",
            (
                "si estamos todas bien, aqui la tengo junto a mi. nomas pregunto si es seguro"
                " cruzar brincando las piedras"
            ),
        ),
        ("es", "salimos luego luego, todos bien"),
        ("es", "nadie lastimado, todas aqui conmigo"),
        ("es", "ya estamos todas en la carretera, nomas tenia ganas, nadie lastimado"),
    ],
)
def test_news_in_own_words_ends_it(language: str, reply: str) -> None:
    """Who left at once, sees the fall from up there or only wonders is in no danger."""
    player = _held(language)
    player.say(reply)
    assert _conversation(player).emergency is None


@pytest.mark.parametrize(
    ("language", "reply"),
    [
        ("en", "left straight away, ben is still down there"),
        ("en", "we left and she stayed"),
        ("en", "all up on the road but my son is missing"),
        ("en", "went up at once, all fine, the water is all around us now"),
        ("en", "safe, but not the two of us"),
        ("en", "my legs are shaking"),
        ("de", "sind sofort los, Jonas liegt unten"),
        ("de", "alle oben, mir zittern die beine und ben ist weg"),
        ("de", "alle oben am Weg, nur meine Frau fehlt"),
        ("es", "ya subimos, pero falta mi hermano"),
        ("es", "a salvo las dos menos juan"),
        ("es", "nos fuimos y lo dejamos alla"),
        ("es", "me tiemblan las piernas"),
    ],
)
def test_somebody_left_behind_holds_it(language: str, reply: str) -> None:
    """An exception, a person left behind or a flood told anew holds everything."""
    player = _held(language)
    player.say(reply)
    assert _conversation(player).emergency is not None


@pytest.mark.parametrize(
    ("language", "reply", "said"),
    [
        ("en", "we climbed up, both on the path, fine. just my legs are shaking", "shaking legs"),
        ("de", "uns geht's gut, mir zittern nur die Beine", "zitternden Beinen"),
        (
            "es",
            (
                "ya subimos, estamos arriba en el camino las dos, bien. me tiemblan las piernas"
                " nomas"
            ),
            "piernas temblando",
        ),
    ],
)
def test_shaking_legs_are_answered(language: str, reply: str, said: str) -> None:
    """Up and safe, it is the fright: sit down first."""
    player = _held(language)
    assert said in player.say(reply)[0].body
    assert _conversation(player).emergency is None


def test_legs_of_who_was_in_the_water_are_cold() -> None:
    """Who fell in and shakes is cold, whoever is out."""
    player = Player()
    player.say("my friend fell into the water")
    assert (
        "sit down, drink" not in player.say("both out, fine. my legs are shaking")[0].body.lower()
    )


def test_a_filter_for_next_time_is_answered() -> None:
    """What to buy is of no picture at that water."""
    said = _held("en").say(
        "im in the car with her and were both ok. next time: should I buy a filter, and which one"
        " if i can afford just one?"
    )
    assert "ND" in said[0].body


def test_a_picture_from_far_off_is_answered() -> None:
    """60 m off on the road nobody stands at the water."""
    said = _held("en").say(
        "all up on the road. from here we can see the fall, 60 m away. which focal length?"
    )
    assert "mm" in said[0].body


@pytest.mark.parametrize(
    "behind", ["which shutter now?", "from here it is 15 m away. which focal length?"]
)
def test_no_settings_at_the_water(behind: str) -> None:
    """Nobody goes back today."""
    said = _held("en").say(f"all up on the road. {behind}")
    assert "1/" not in said[0].body
    assert "mm" not in said[0].body


def test_nobody_hurt_she_only_wants_to_cross() -> None:
    """A "no" beside where she is starts no search."""
    player = Player()
    for line in (_LANGUAGE["es"], "start", _WALK):
        player.say(line)
    player.say("mi amiga anda viendo por donde pasar pal otro lado, brincando x las piedras")
    said = player.say(
        "no no, nadie lastimado, sigue en la orilla, nomas tiene ganas. esta peligroso o si se"
        " puede?"
    )
    assert _conversation(player).emergency is None
    assert "orilla" in said[0].body


def test_is_it_dangerous_is_answered_behind_a_no() -> None:
    """The bank is the safe place, whatever the doubt was of."""
    player = Player()
    for line in (_LANGUAGE["de"], "start", _WALK):
        player.say(line)
    player.say("meine freundin sucht einen weg rüber, hüpft über die steine")
    said = player.say("nein, keiner verletzt, sie hat nur lust. ist das gefährlich oder geht das?")
    assert "Ufer ist der sichere Ort" in said[0].body
