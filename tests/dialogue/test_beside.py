"""Danger beside other things is heard: behind settings, with a cry, after a word that calms."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import read_danger
from bot.dialogue.danger.beside import beside_facts, heard_beside
from bot.dialogue.danger.judged import judged

SETTINGS = "f/8 1/2 iso 100 tripod, 24 mm, fall 12 m high, 18 m away, overcast, whites blink a bit"
WERTE = (
    "f/8 1/2 iso 100 Stativ, 24 mm, Fall 12 m hoch, 18 m weg, bedeckt, Polfilter,"
    " Wasser schnell, Weiß blinkt oben, links dunkel, Histogramm rechts an"
)
AJUSTES = (
    "f/8 1/2 iso 100 trípode 24 mm, cascada de 12 m, a 18 m, nublado, polarizador, agua rápida,"
    " blancos quemados arriba, izquierda oscura"
)


@pytest.mark.parametrize(
    "text",
    [
        f"{SETTINGS}, and I can't find my little brother",
        f"{WERTE}, und mein Vater liegt am Boden",
        f"{AJUSTES}, y mi madre no despierta",
    ],
)
def test_a_danger_behind_a_list_of_settings_is_heard(text: str) -> None:
    """However much plain talk stands before it; nothing else is answered first."""
    assert read_danger(text) is not None


@pytest.mark.parametrize("text", [SETTINGS, WERTE, AJUSTES, f"{SETTINGS}, and soft light"])
def test_a_list_of_settings_alone_is_none(text: str) -> None:
    """What is left of it, if anything, sounds of nothing."""
    assert read_danger(text) is None


def test_what_is_left_of_a_long_list_is_read_for_itself() -> None:
    """The whole is far from danger by its many plain words."""
    text = f"{AJUSTES}, y mi madre no despierta"
    assert judged(text).odds < 0
    assert heard_beside(text, -99.0)
    assert not heard_beside("iso 100, the moss does not wake up", -99.0)


@pytest.mark.parametrize(
    "text",
    [
        "the fall is 5 m, 8 m away, her lips are blue and she giggles",
        "f/11, 1/4 s, iso 100, my friend fell and his wrist looks odd",
        "Vollformat, 12 m hoch, 18 m weg, meine Frau liegt da und sagt nichts",
        "cascada de 12 m, a 18 m, mi amigo cayó al agua y no sale",
    ],
)
def test_a_danger_beside_facts_is_heard(text: str) -> None:
    """Two numbers before it hid it once."""
    assert read_danger(text) is not None


@pytest.mark.parametrize(
    "text",
    [
        "the fall is 5 m, 8 m away, lovely moss on the stones",
        "f/11, iso 100, my friend took the same and hers is brighter",
        "12 m hoch, 18 m weg, meine Frau sitzt auf der Bank und liest",
        "cascada de 12 m, a 18 m, mi amigo pregunta por el filtro",
    ],
)
def test_plain_talk_beside_facts_is_none(text: str) -> None:
    """What is left is read for itself, and is nothing."""
    assert read_danger(text) is None


def test_what_stands_beside_facts() -> None:
    """The parts without a number or a thing of the kit, if they say anything."""
    assert beside_facts("12 m tall, f/8, my dog sleeps here") == "my dog sleeps here"
    assert beside_facts("12 m tall, f/8, nice day") == ""
    assert beside_facts("my dog sleeps here, the sun is out") == ""


def test_a_call_for_help_beside_something_odd_is_asked_about() -> None:
    """A cry, and words that tell of nothing for sure; beside plain talk it is none."""
    assert heard_beside("we are off somewhere. help", -4.0)
    assert not heard_beside("help, too many options", -8.0)
    assert not heard_beside("too many options", 0.0)
    assert not heard_beside("", 0.0)


def test_a_danger_for_sure_in_one_part_is_asked_about() -> None:
    """Beside talk of other things one part may be enough."""
    assert heard_beside("lovely moss here, my brother fell off the cliff", -5.0)


@pytest.mark.parametrize(
    "text",
    [
        "nobody is hurt yet but the rocks keep coming down on the path",
        "all here but one, we were twelve at the bridge",
        "I'm not on the edge, I'm sitting on it",
        "not ankle deep any more, it's at my knees",
        "niemand verletzt, einer fehlt",
        "ich steh nicht an der Kante, ich sitz drauf",
        "nadie herido, falta uno",
        "no estoy en el borde, estoy sentado encima",
    ],
)
def test_a_denial_beside_a_danger_hides_none(text: str) -> None:
    """What is denied is not what is told."""
    assert read_danger(text) is not None


@pytest.mark.parametrize(
    "text",
    [
        "one of us has asthma, we take breaks",
        "there was loose rock on the way in but the path is fine here",
        "I lowered the phone, can't see it any more",
        "ten minutes more won't hurt?",
        "water's barely over my ankles",
        "he's drowning in gear, that's what he is",
        "zehn Minuten mehr schaden nicht?",
        "Finger bisschen steif, wärm sie in der Tasche",
        "¿diez minutos más no hacen daño?",
        "bajé el teléfono y ya no la veo, dónde quedó la foto",
        "las piernas cansadas, me siento cinco minutos",
    ],
)
def test_plain_talk_that_sounds_like_danger_is_none(text: str) -> None:
    """Chronic illness, the past, small complaints, what is lost to sight, a plan's question."""
    assert read_danger(text) is None


@pytest.mark.parametrize(
    "text",
    [
        "asthma's kicking in and the spray does nothing",
        "my buddy is diabetic and he's sweating and talking nonsense",
        "bee got her on the neck, lips swelling up and she forgot her pen",
        "mein Kumpel ist zuckerkrank und redet wirr und schwitzt",
        "hat einen Pilz probiert, speibt seitdem",
        "le picó una abeja en el cuello y se le hinchan los labios",
    ],
)
def test_an_illness_that_turns_bad_is_heard(text: str) -> None:
    """It takes minutes, and is often told in passing."""
    assert read_danger(text) is not None
