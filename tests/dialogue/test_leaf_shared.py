"""A shared frame for the leaves: known by its time, and nothing of the water is taken from it."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player


def _with_both_frames(*, advised: bool) -> Player:
    player = Player()
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod")
    player.say("1")
    player.say("1")
    player.frame("quarter")
    player.say("2" if advised else "1")
    player.frame("quick")
    return player


@pytest.mark.parametrize(("advised", "kept_s"), [(True, 1 / 4), (False, 1 / 500)])
def test_the_water_goes_on_from_its_own_frame(advised: bool, kept_s: float) -> None:
    """1/500 s is the leaves' where a frame for them was advised, else a frame like any other."""
    player = _with_both_frames(advised=advised)
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    assert walk.given is not None
    assert walk.given.shutter_s == pytest.approx(kept_s, rel=0.03)


def test_keep_means_the_frame_for_the_water() -> None:
    """What is kept teaches the look of water, unless the short frame itself is replied to."""
    player = _with_both_frames(advised=True)
    (said,) = player.say("keep")
    assert "textured" in said.body
    (said,) = player.happen("on 2 keep")
    assert "frozen" in said.body


def test_no_gap_is_named_beside_the_frame_for_the_leaves() -> None:
    """Between a leaf frame and the water's nothing is missing."""
    player = _with_both_frames(advised=True)
    player.say("compare")
    assert player.asked[-1].options.leaf == 1
    (said, *_) = player.happen("found leaf_good")
    assert "compared.leaf.good" in said.keys
    assert "compared.gap" not in said.keys
