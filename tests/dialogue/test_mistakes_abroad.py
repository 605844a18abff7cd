"""Beginners' mistakes and complaints, told in passing in three languages: the remedy comes."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player
from tests.dialogue.test_supposing import begun


@pytest.mark.parametrize(
    ("language", "told", "key"),
    [
        ("en", "there's a hole of white sky above the fall", "asked.sky"),
        ("en", "my tripod is always at eye level", "answer.eye_height"),
        ("en", "I walk around with the camera on the tripod over my shoulder", "answer.carrying"),
        ("en", "in which direction do I rotate the polariser", "asked.polariser_turn"),
        ("en", "could you look up the water level", "talk.weather"),
        ("en", "how come my water is nothing but white", "highlights.much_darker"),
        ("en", "my histogram touches the right edge, is it lost", "asked.histogram"),
        ("en", "my iso was on auto, it says 1600", "base.manual"),
        ("en", "the photo came out crooked", "answer.tilted"),
        ("de", "das Bild ist schief", "answer.tilted"),
        ("de", "ich hab den Polfilter nie gedreht", "asked.polariser_turn"),
        ("de", "ich laufe mit der Kamera auf dem Stativ über der Schulter", "answer.carrying"),
        ("de", "das Histogramm stößt rechts an, ist da was verloren", "asked.histogram"),
        ("de", "die ISO-Automatik war an", "base.manual"),
        ("es", "nunca giré el polarizador", "asked.polariser_turn"),
        ("es", "ando con la cámara en el trípode al hombro", "answer.carrying"),
        ("es", "el ISO estaba en automático, pone 1600", "base.manual"),
    ],
)
def test_mistakes_in_passing(language: str, told: str, key: str) -> None:
    """Each is matched by what it means, and nothing in it is taken for a setting."""
    player = begun(language)
    assert key in player.say(told)[0].keys
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    assert walk.given is not None
    assert walk.given.iso == 100
    assert walk.given.shutter_s < 1


@pytest.mark.parametrize(
    ("told", "key"),
    [
        ("polariser on, f/11 1/4 s iso 100. the pools have gone black", "symptom.black_polariser"),
        ("Polfilter drauf, f/11 1/4 s ISO 100, die Gumpen sind schwarz", "symptom.black_polariser"),
        ("con el ND de 10 pasos, f/11 8 s ISO 100, todo sale morado", "cause.nd_cast"),
        ("mit dem ND 10 Stufen, f/11 8 s ISO 100, alles ist lila", "cause.nd_cast"),
        ("f/22, 1/2 s, ISO 100, Stativ, alles etwas weich", "symptom.diffraction"),
        ("f/8, 1/4 s, ISO 100 a 50 mm, el fondo sale blando", "symptom.soft_depth"),
    ],
)
def test_complaints_with_their_settings(told: str, key: str) -> None:
    """The first message of somebody holds settings and a complaint: it is answered with both."""
    (said,) = Player().say(told)
    assert key in said.keys


@pytest.mark.parametrize(
    ("told", "format_name"),
    [
        ("it's not full frame, it's APS-C", "aps-c"),
        ("es ist kein Vollformat, sondern APS-C", "aps-c"),
        ("no es full frame, es APS-C", "aps-c"),
        ("full frame, not APS-C", "full frame"),
        ("full frame and APS-C", "full frame"),
    ],
)
def test_a_format_that_is_denied_is_none(told: str, format_name: str) -> None:
    """Of two formats the one that is not denied; without a denial nothing changes."""
    player = begun("en")
    player.say(told)
    assert player.context is not None
    assert player.context.person.kit.camera_format == format_name


@pytest.mark.parametrize(
    ("told", "joke"),
    [
        ("somebody fell in!", "tell me a joke"),
        ("jemand ist ins Wasser gefallen!", "erzähl mir einen Witz"),
    ],
)
def test_a_joke_that_is_asked_for_ends_no_emergency(told: str, joke: str) -> None:
    """Only a danger that was a joke itself is over by it."""
    player = Player()
    player.say(told)
    player.say(joke)
    assert player.context is not None
    assert player.context.conversation.emergency is not None
    player.say("it was just a joke")
    assert player.context.conversation.emergency is None
