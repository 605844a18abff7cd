"""A frame's own focal length stands for the one that was told, wherever its water is reckoned."""

from __future__ import annotations

import pytest

from bot.dialogue.by_numbers import as_taken, flow_told, share_per_s
from bot.dialogue.reading import read
from tests.dialogue.player import Player

PLACE = read("12 m tall, 18 m away")


def test_a_format_is_told_by_the_two_focal_lengths_of_a_file() -> None:
    """Without a told format the one as on full frame counts; with one the real one does."""
    unknown = flow_told(as_taken(PLACE, 18.0, 27.0))
    known = flow_told(as_taken(PLACE.updated(read("aps-c")), 18.0, 27.0))
    assert unknown is not None
    assert known is not None
    assert unknown.coverage_m == pytest.approx(18 * 36 / 27)
    assert known.coverage_m == pytest.approx(18 * 23.6 / 18, rel=0.01)
    assert flow_told(as_taken(PLACE, None)) is None


def test_frames_at_home_are_compared_by_the_numbers_that_were_told_there() -> None:
    """The focal length is in the files: height and distance alone make shares of them."""
    player = Player()
    player.say("I'm home now")
    player.frame("half")
    player.frame("clean")
    player.say("12 m tall, 18 m away, full frame")
    player.say("compare")
    told = share_per_s(read("12 m tall, 18 m away, full frame, 27 mm"))
    assert player.asked[-1].options.share_per_s == pytest.approx(told)
    player.say("as 1 s")
    assert player.asked[-1].what == "illustrate"
    assert player.asked[-1].options.share_per_s == pytest.approx(told)


@pytest.mark.parametrize(
    ("name", "keys"),
    [
        ("too_short", {"compared.too_short"}),
        ("too_short_seen", {"compared.too_short_seen"}),
    ],
)
def test_what_no_frame_has_is_said_with_its_source(name: str, keys: set[str]) -> None:
    """None is silky, by the numbers or by the pictures alone; at home that is for next time."""
    player = Player()
    player.say("I'm home now")
    player.frame("half")
    player.frame("clean")
    player.say("compare")
    (said, *_) = player.happen(f"found {name}")
    assert keys <= set(said.keys)
    assert "Next time go longer" in said.body
    assert "nothing is taken yet" not in said.body


def test_water_that_runs_across_in_a_stream_stays_undrawn() -> None:
    """A fall may be said to fall; a stream is not drawn at all."""
    player = Player()
    player.say("a stream, 1 m/s, 4 m away, 24 mm, full frame")
    player.frame("half")
    player.say("as 1 s")
    (said, *_) = player.happen("found refused_not_plunging")
    assert "drawn.not_plunging" in said.keys
