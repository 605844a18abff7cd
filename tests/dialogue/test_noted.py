"""What is told where nothing is said to it, or where it is reckoned with behind the scenes."""

from __future__ import annotations

import pytest

from bot.dialogue.by_numbers import share_per_s
from bot.dialogue.events import TextReceived
from bot.dialogue.reading import read
from core import water_speed
from tests.dialogue.player import Player


def test_one_of_several_late_messages_is_noted() -> None:
    """The question is left to the last of them; that this one came is still said."""
    player = Player()
    player.say("start")
    origin = player.origin(40).model_copy(update={"behind": 2})
    (said,) = player.take(TextReceived(origin=origin, text="18 m away"))
    assert said.keys == ("late.noted",)


def test_the_foot_of_a_fall_runs_between_drag_and_free_fall() -> None:
    """Least and most are as far apart as single drops in air and free fall (core.water)."""
    found = share_per_s(read("12 m tall, 15 m away, just a section, 50 mm full frame"))
    assert found is not None
    low, high = water_speed.foot_speed_range_mps(12)
    assert found[1] / found[0] == pytest.approx(high / low)
