"""Topics and sights by the sense of a message: in words that no example holds."""

from __future__ import annotations

import numpy as np
import pytest

from bot.dialogue.meaning.nearest import both
from bot.dialogue.meaning.sensed import learned
from tests.training.meanings import TABLES, fitted


@pytest.mark.parametrize("name", TABLES)
def test_fits_are_what_the_recipe_gives(name: str) -> None:
    """Fitted anew from the examples, the weights are those that come with the code."""
    stored, anew = learned(name), fitted(TABLES[name]())
    assert stored.labels == anew.labels
    assert stored.middle == pytest.approx(anew.middle, abs=1e-3)
    assert np.abs(stored.weights - anew.weights).max() <= 0.01


def test_a_message_is_near_to_what_it_means_in_other_words() -> None:
    """No example speaks of three legs."""
    near = learned("topics").nearness("how do I stop the camera from shaking on its three legs")
    assert max(near, key=lambda label: near[label]) == "tripod_blur"


def test_two_nearnesses_count_the_same() -> None:
    """Their mean, label by label."""
    assert both({"a": 1.0, "b": 0.0}, {"b": 0.5, "a": 0.5}) == {"a": 0.75, "b": 0.25}
