"""Whether an f-number holds the depth, however it is asked: yes or no, and what it takes."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player
from tests.dialogue.test_tried_values import with_primes
from tests.dialogue.test_two_settings import in_the_gorge
from tests.dialogue.walked import keys_of, known, walked


@pytest.mark.parametrize(
    ("line", "told"),
    [
        # 35 mm, 1.8 m to 22 m, c 0.0288: 1225 x (1/1800 - 1/22000) / 0.0577 = 10.8, of 35 - f
        ("f9 at 35 w/ boulder 1.8, is that enough, reckon f11", ("No: 1.8 m at 35 mm", "f/11")),
        ("is f9 enough at 35 with the boulder at 1.8, reckon f11", ("No: 1.8 m", "f/11 holds it")),
        ("is f/9 enough at 35, or f/10?", ("No: 1.8 m at 35 mm", "none of them holds it")),
        ("does f/8 cover 1.2 m?", ("No: 1.2 m at 35 mm",)),
        ("would f/11 hold the rock?", ("Yes: 1.8 m at 35 mm",)),
        ("f/8 deep enough for 1.5 m at 20 mm?", ("Yes: 1.5 m at 20 mm",)),
        ("I'm on f/5.6, is that enough for the rock?", ("No: 1.8 m at 35 mm",)),
        ("is that enough?", ("Yes: 1.8 m at 35 mm",)),
        ("would f/8 have been enough for the 1/10?", ("No: 1.8 m at 35 mm",)),
        ("is that enough for the boulder?", ("Yes: 1.8 m at 35 mm",)),
        # 50 mm, 0.4 m to 22 m: 2500 x (1/350 - 1/21950) / 0.0577 = 122, and nearly: no dial has it
        ("is f/8 enough for the rock at 0.4 m at 50 mm?", ("No: 0.4 m at 50 mm", "f/118")),
    ],
)
def test_yes_or_no_and_what_it_takes(line: str, told: tuple[str, ...]) -> None:
    """No packing list, and nothing is set by it."""
    player = with_primes()
    walk = known(player).conversation.walk
    body = player.say(line)[0].body
    assert all(piece in body for piece in told), body
    assert "cloths" not in body
    assert known(player).conversation.walk == walk


@pytest.mark.parametrize(
    ("language", "line", "told"),
    [
        ("de", "reicht f/8 für den Stein bei 1,2 m?", "Nein: 1,2 m bei 27 mm braucht etwa f/10"),
        ("de", "f/5.6, reicht das?", "Nein: 1,5 m bei 27 mm"),
        ("de", "hält f/11 den Stein?", "Ja: 1,5 m bei 27 mm"),
        ("es", "¿basta f/8 para la roca a 1,2 m?", "No: 1,2 m a 27 mm"),
        ("es", "¿con f/8 llega para la roca?", "Sí: 1,5 m a 27 mm"),
        ("es", "f/5.6, ¿es suficiente?", "No: 1,5 m a 27 mm"),
    ],
)
def test_in_other_languages(language: str, line: str, told: str) -> None:
    """By their own words."""
    assert told in in_the_gorge(language).say(line)[0].body


def test_beside_another_question_and_what_is_told() -> None:
    """Both are answered; a rock that is told in a clause of its own is kept."""
    line = "branch is in shot. crop it or move? and f9 at 35 w/ boulder 1.8, is that enough"
    body = with_primes().say(line)[0].body
    assert "No: 1.8 m at 35 mm" in body
    assert "Move: 10 to 30 cm" in body
    player = in_the_gorge()
    assert "No: 1.2 m" in player.say("rock at 1.2 m, is f/8 enough?")[0].body
    assert known(player).facts.nearest_m == pytest.approx(1.2)


@pytest.mark.parametrize(
    ("line", "key"),
    [
        ("is f/8 1/4 s enough?", "what_if"),
        ("is f/8 bright enough?", ""),
        ("two cloths and a headlamp, is that enough?", "asked.pack"),
        ("took it at 1/8, is that enough?", ""),
        ("can I crop it later?", "asked.crop"),
    ],
)
def test_what_is_of_no_depth(line: str, key: str) -> None:
    """Times, light, and what is packed; cropping alone."""
    keys = keys_of(in_the_gorge(), line)
    assert not any(one.startswith("verdict.enough") for one in keys), keys
    assert any(one.startswith(key) for one in keys), keys
    assert "asked.pack" in keys or not key.startswith("asked.pack")


def test_enough_of_nothing_told() -> None:
    """Before any settings it is the bag that is asked about."""
    assert "asked.pack" in keys_of(Player(), "is that enough?")
    assert "verdict.enough_plain" in keys_of(walked(told="full frame 24-70"), "is f/8 enough?")
