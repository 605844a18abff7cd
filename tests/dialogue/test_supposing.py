"""Trying a change on paper: in each language, step upon step, and the walk stays where it is."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player
from tests.dialogue.walked import walked

_BEGUN: dict[str, tuple[str, ...]] = {
    "en": (
        "12 m tall, 18 m away, rock at 1.5 m, full frame 24-105, tripod, polariser, 3-stop nd",
        "1",
        "1",
        "under trees",
    ),
    "de": (
        "12 m hoch, 18 m weg, Stein bei 1,5 m, Vollformat 24-105, Stativ, Polfilter, ND 3 Stufen",
        "1",
        "1",
        "unter Bäumen",
    ),
    "es": (
        "cascada de 12 m, a 18 m, roca a 1,5 m, full frame 24-105, trípode, ND de 3 pasos",
        "1",
        "1",
        "bajo los árboles",
    ),
}


def begun(language: str) -> Player:
    """Somebody with settings: f/13, ISO 100, 0.3 s at 27 mm from 18 m."""
    player = Player()
    for line in _BEGUN[language]:
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("language", "lines"),
    [
        # 4/3 stops by f/8, 1 by ISO 200, -3 by the filter: 2/3 darker, 0.315 s × 2^(2/3) = 0.5 s
        (
            "en",
            (
                ("what if I go to f/8", "f/8, ISO 100: 1 1/3 stops brighter; 1/8 s"),
                ("and at ISO 200 then?", "f/8, ISO 200: 2 1/3 stops brighter; 1/15 s"),
                ("and with the 3-stop", "f/8, ISO 200, 3-stop ND: 2/3 stop darker; 1/2 s"),
                ("and without it?", "f/8, ISO 200, no filter: 2 1/3 stops brighter; 1/15 s"),
                ("plus the polariser?", "f/8, ISO 200, polariser: 2/3 stop brighter; 1/5 s"),
                ("and no polariser", "no filter"),
                ("at 35 mm", "35 mm from 18 m shows 19 m"),
                ("from 10 m back", "35 mm from 28 m shows 29 m"),
                ("and at f/16?", "f/16, ISO 200"),
                ("what if 5 ft closer", "from 16 m"),
                ("what if 70 mm", "9.3 m and cuts the fall: all of it takes 58 mm"),
                ("would f/8 be brighter?", "1 1/3 stops brighter"),
                ("what if 1/30 s and iso 400", "f/13, ISO 400, 1/30 s: 1 1/3 stops darker"),
            ),
        ),
        (
            "de",
            (
                ("was wäre bei f/8", "f/8, ISO 100: 1 1/3 Stufen heller; 1/8 s"),
                ("und mit ISO 200?", "f/8, ISO 200: 2 1/3 Stufen heller; 1/15 s"),
                ("und bei 35 mm", "35 mm aus 18 m zeigen 19 m"),
                ("und aus 10 m Entfernung", "35 mm aus 10 m zeigen 10 m"),
                ("was, wenn ich den 3-Stufen-ND nehme", "3-Stufen-ND: 3 Stufen dunkler; 2,5 s"),
                ("und ohne ihn?", "0,3 s"),
                ("was wäre, wenn ich 10 m zurückgehe", "27 mm aus 28 m"),
                ("was wäre, wenn ich 5 m näher gehe", "27 mm aus 13 m"),
                ("angenommen ich nehme f/16 und ISO 50", "1 2/3 Stufen dunkler; 1 s"),
            ),
        ),
        (
            "es",
            (
                ("¿y si uso f/8?", "f/8, ISO 100: 1 1/3 pasos más claro; 1/8 s"),
                ("¿y con ISO 200?", "f/8, ISO 200: 2 1/3 pasos más claro; 1/15 s"),
                ("¿y a 35 mm?", "35 mm desde 18 m"),
                ("¿y desde 10 m?", "35 mm desde 10 m"),
                ("¿y con el ND de 3 pasos?", "ND de 3 EV: 2/3 de paso más oscuro; 1/2 s"),
                ("¿y sin él?", "sin filtro: 2 1/3 pasos más claro"),
                ("¿qué pasa con 1/2 s?", "1/2 s: 2/3 de paso más claro que 0,3 s"),
                ("¿cómo quedaría 5 m más atrás?", "27 mm desde 23 m"),
            ),
        ),
    ],
)
def test_one_try_upon_another(language: str, lines: tuple[tuple[str, str], ...]) -> None:
    """Each answer has the sums of all that is tried; the walk and its question stay."""
    player = begun(language)
    assert player.context is not None
    walk = player.context.conversation.walk
    for line, told in lines:
        body = player.say(line)[0].body
        assert told in body, (line, body)
        assert player.context.conversation.walk == walk, line


@pytest.mark.parametrize(
    ("language", "line"),
    [
        ("en", "and the rock is at 2 m"),
        ("en", "what if my friend comes along?"),
        ("en", "f/8"),
        ("de", "und der Stein liegt bei 2 m"),
        ("es", "y la roca está a 2 m"),
    ],
)
def test_what_tells_is_no_try(language: str, line: str) -> None:
    """Facts that join on with an "and" are facts, and so is a bare value."""
    said = begun(language).say(line)
    assert not any(key.startswith("what_if") for one in said for key in one.keys)


@pytest.mark.parametrize(
    ("told", "answer"),
    [
        (
            "I have f/16, 1/2 s, ISO 100 at 24 mm on full frame, fall 10 m from 12 m. what if f/8",
            "f/8, ISO 100: 2 stops brighter; 1/8 s instead of 1/2 s",
        ),
        (
            "f/16, 1/2 s, ISO 100 bei 24 mm Vollformat, Fall 10 m aus 12 m. was wäre bei f/8?",
            "f/8, ISO 100: 2 Stufen heller; 1/8 s statt 1/2 s",
        ),
        (
            "tengo f/16, 1/2 s, ISO 100 a 24 mm full frame, cascada de 10 m. ¿y si uso f/8?",
            "f/8, ISO 100: 2 pasos más claro; 1/8 s en vez de 1/2 s",
        ),
    ],
)
def test_a_frame_is_told_and_another_tried(told: str, answer: str) -> None:
    """Before any walk, in one message: the frame's settings are kept, the others only tried."""
    player = Player()
    assert answer in player.say(told)[0].body
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    assert walk.given is not None
    assert walk.given.f_number == pytest.approx(16)


def test_a_frame_told_within_a_walk_takes_the_place_of_the_settings() -> None:
    """What was shot stands from then on; the caution of the walk is not said again."""
    player = begun("en")
    said = player.say("shot it at f/16, 1/2 s, iso 100, what if I use f/8")[0]
    assert "f/8, ISO 100: 2 stops brighter" in said.body
    assert "caution.arrive_short" not in said.keys
    assert "f/16, ISO 100, 1/2 s" in player.say("where am I")[0].body


@pytest.mark.parametrize(
    ("language", "told", "keys"),
    [
        ("de", "der Stein ist übrigens bei 2 m, und brauche ich einen ND?", "asked.nd_no"),
        ("de", "Stein bei 2,5 m, wohin fokussiere ich?", "asked.focus"),
        ("de", "ich stehe 15 m weg, welche Blende brauche ich?", "asked.f_number_blur"),
        ("es", "la roca está a 2 m, ¿y necesito un ND?", "asked.nd_no"),
        ("es", "la roca a 2,5 m, ¿dónde enfoco?", "asked.focus"),
        ("es", "estoy a 15 m, ¿qué diafragma uso?", "asked.f_number_blur"),
    ],
)
def test_a_question_behind_a_statement(language: str, told: str, keys: str) -> None:
    """What is told is taken in, and the question behind it answered, in other languages, too."""
    assert keys in begun(language).say(told)[0].keys


def test_a_correction_in_spanish() -> None:
    """The right number and the wrong one behind it."""
    player = begun("es")
    player.say("estoy a 15 m")
    assert "20 m" in player.say("quise decir 20 m, no 15")[0].body


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("What would happen to the water if I put the 6-stop on in front of the polariser?", "2.5"),
        ("how would it look with the 6 stop on", "2.5 s"),
        ("Wouldn't opening up to f/8 be simpler than pushing the ISO?", "f/8, ISO 100: 1 1/3"),
    ],
)
def test_a_trial_in_many_words(line: str, told: str) -> None:
    """From f/13, ISO 100, 1/25 s; a topic that is only named in it does not count."""
    kit = "12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod, 6-stop ND, cloudy"
    assert told in walked(told=kit).say(line)[0].body


def test_who_feels_like_trying_is_not_cold() -> None:
    """No wind and no air temperature are asked for."""
    body = walked().say("I feel like trying real silk, I'm at f/13")[0].body
    assert "wind" not in body
