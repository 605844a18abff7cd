"""A look that is wished for beside the settings of a frame, or asked how to get."""

from __future__ import annotations

import pytest

from tests.dialogue.walked import keys_of, known, walked


@pytest.mark.parametrize(
    "text",
    [
        "1/30 f/5.6 iso 400, i want it silky",
        "it's on 1/30 f5.6 iso 400 in auto, i'd like silky water",
        "1/30 f5.6 iso 400, how do i get it silky?",
        "camera says 1/30 f/5.6 iso 400. how can we make the water smoother?",
    ],
)
def test_the_next_settings_lead_to_the_look(text: str) -> None:
    """As bright as the frame that was told, and long enough for the look."""
    player = walked()
    body = player.say(text)[0].body
    walk = known(player).conversation.walk
    assert walk is not None
    assert walk.given is not None
    assert "silky" in body.split("\n")[0]
    assert walk.given.shutter_s > 1 / 8
    exposures = walk.given.shutter_s * walk.given.iso / walk.given.f_number**2
    told = 1 / 30 * 400 / 5.6**2
    assert exposures == pytest.approx(told, rel=0.26)  # a third of a stop


@pytest.mark.parametrize(
    "text", ["1/30 f/5.6 iso 400, looks silky", "1/2 f/11 iso 100, i want it silky"]
)
def test_a_look_that_is_there_leads_nowhere(text: str) -> None:
    """How a frame looks is no wish; what the sums give already needs no other time."""
    assert keys_of(walked(), text)[0] == "told.settings"


def test_how_to_get_a_look_is_a_wish_once_there_are_settings() -> None:
    """They are given anew for it; before, and about another thing, it is a question."""
    player = walked()
    player.say("how do i get the water silkier?")
    walk = known(player).conversation.walk
    assert walk is not None
    assert walk.facts.look == "silky"
    assert "base" not in " ".join(keys_of(walked(), "how do i get the moss sharp?"))


def test_hands_reach_no_look_of_long_times() -> None:
    """Then what gives it is said, instead of the same settings again."""
    player = walked(told="no tripod, aps-c 18-55, fall 2 m high, 4 m away, rock at 80 cm")
    assert keys_of(player, "1/30 f5.6 iso 400, i want it silky")[0] == "adjust.by_hand"
    shorter = walked(told="no tripod, aps-c 18-55, fall 2 m high, 4 m away, rock at 80 cm")
    assert keys_of(shorter, "1/30 f5.6 iso 400, i want it frozen")[0] != "adjust.by_hand"
