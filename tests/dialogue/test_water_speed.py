"""The speed of the water that times and shares are reckoned from is told where it is asked for."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, walked


@pytest.mark.parametrize(
    ("begins", "text"),
    [
        ((), "what water speed do you use?"),
        ((), "how fast do you think the water falls?"),
        ((), "how fast is the water in your sums?"),
        (("deutsch",), "Von welcher Wassergeschwindigkeit gehen Sie aus?"),
        (("deutsch",), "Wie schnell fällt das Wasser in Ihrer Rechnung?"),
        (("español",), "¿qué velocidad del agua usas?"),
        (("español",), "¿a qué velocidad cae el agua en tus cuentas?"),
    ],
)
def test_speed_comes_with_its_sum(begins: tuple[str, ...], text: str) -> None:
    """A fall of 12 m: √(2 × 9.81 × 12) ÷ 2 = 7.67 m/s (free fall)."""
    player = walked(*begins)
    (said,) = player.say(text)
    assert said.keys[:2] == ("why.speed.mean_fall", "why.share")
    assert "7.67 m/s" in said.body.replace(",", ".")


def test_what_stands_beside_is_taken_in() -> None:
    """The settings that are told in the same message keep their look."""
    keys = keys_of(walked(), "f/11 1/4 s ISO 100. what water speed do you use?")
    assert keys[0] == "why.speed.mean_fall"
    assert any(key.startswith("told.") for key in keys)


def test_own_speed_is_in_the_sum() -> None:
    """A leaf that was timed is named as what the speed comes from."""
    keys = keys_of(walked("water runs 2 m/s"), "what water speed do you use?")
    assert "why.share" in keys


@pytest.mark.parametrize(
    "text",
    [
        "how fast is the water rising here?",
        "what speed for silky water?",
        "is the water speed dangerous?",
    ],
)
def test_other_speeds_are_no_such_question(text: str) -> None:
    """A creek that rises and the speed of a shutter are something else."""
    assert not any(key.startswith("why.speed") for key in keys_of(walked(), text))


def test_before_a_walk_there_is_no_water() -> None:
    """Nobody has told of a fall."""
    assert "why.share" not in keys_of(Player(), "how fast is the water?")
