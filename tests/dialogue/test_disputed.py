"""Settings of the bot's that are quoted to dispute them are explained, and never set anew."""

from __future__ import annotations

import pytest

from bot.dialogue.walk_state import GivenSettings
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked


def _given(player: Player) -> GivenSettings:
    walk = known(player).conversation.walk
    assert walk is not None
    assert walk.given is not None
    return walk.given


def _after_a_frame(*language: str) -> Player:
    """A frame of f/13, 1/8 s was shared in which white is lost: f/13, 1/13 s was given."""
    player = walked(*language, "f/11 1/2 s ISO 100")
    player.happen("frame clipped")
    return player


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ((), "why do you jump to f13 and 1/13 now? that is way faster than the half second"),
        ((), "why f/13 and 1/13 instead of f/11 and 1/2 s?"),
        (
            ("deutsch",),
            "f/13 und 1/13 statt f/11 und 1/2 s, das sind nach meiner Rechnung 3 Blenden",
        ),
        (("español",), "¿por qué f/13 y 1/13 en vez de f/11 y 1/2 s? según mis cuentas 3 pasos"),
    ],
)
def test_a_plan_that_is_disputed_is_explained(language: tuple[str, ...], text: str) -> None:
    """The frame that it began from, and how much that asked for: 1/8 to 1/13 s is 2/3 stop."""
    player = _after_a_frame(*language)
    before = _given(player)
    (said,) = player.say(text)
    assert said.keys[0] == "disputed.from"
    assert "2/3" in said.body
    assert "1/8 s" in said.body
    assert _given(player) == before
    assert not any(key.startswith(("adjust.", "told.", "noted")) for key in said.keys)


def test_what_is_held_against_it_is_counted() -> None:
    """f/11, 1/2 s to f/13, 1/13 s: 2.7 stops of time and a half of aperture."""
    (said,) = _after_a_frame().say("f/13 and 1/13 instead of f/11 and 1/2 s? justify that")
    assert "Against f/11 1/2 s that is 3 stops darker." in said.body


def test_stops_of_their_own_sum_are_no_change() -> None:
    """Who reckoned three stops less tells no light."""
    keys = keys_of(_after_a_frame(), "that's 3 stops less by my sums, why?")
    assert keys[0] == "disputed.from"


@pytest.mark.parametrize(
    ("language", "text", "key"),
    [
        ((), "1/2 s at f/11 makes 1/3 s at f/9, not 1/4.", "disputed.sum_yes"),
        ((), "1/2 s at f/11 makes 1 s at f/9.", "disputed.sum_no"),
        (
            ("deutsch",),
            "Moment: 1/2 s bei f/11 ergibt bei f/9 rund 1/3 s, nicht 1/4. Wo bleibt der Rest?",
            "disputed.sum_yes",
        ),
        (("español",), "1/2 s a f/11 son 1/3 s a f/9, no 1/4", "disputed.sum_yes"),
    ],
)
def test_a_sum_is_checked(language: tuple[str, ...], text: str, key: str) -> None:
    """0.5 × (9 / 11)² = 0.33 s; the bot's 1/4 s is a third darker than that."""
    player = walked(*language, "f/9 1/4 s ISO 100")
    (said,) = player.say(text)
    assert said.keys[:2] == (key, "disputed.mine")
    assert "1/3" in said.body
    assert _given(player).shutter_s == pytest.approx(0.25)


def test_what_is_told_beside_is_taken_in() -> None:
    """A zoom behind the objection counts."""
    player = walked("f/9 1/4 s ISO 100")
    player.say("1/2 s at f/11 makes 1/3 s at f/9, not 1/4. I zoom to 26 mm.")
    assert known(player).conversation.walk.facts.focal_mm == 26.0  # type: ignore[union-attr]


@pytest.mark.parametrize(
    "text",
    [
        "I took f/11 1/2 s instead of f/9 1/4 s",
        "why f/9 and 1/4 s?",
        "f/8 f/11 and 1/2 s",
        "1/2 s at f/11 is too bright, 1/3 s at f/9 is fine",
        "1/2 s at f/11 makes 1/3 s at f/8",
    ],
)
def test_what_disputes_nothing(text: str) -> None:
    """A frame that is told, a question of one setting, and other sums."""
    keys = keys_of(walked("f/9 1/4 s ISO 100"), text)
    assert not any(key.startswith("disputed.") for key in keys)
