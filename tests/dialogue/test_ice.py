"""Ice that is told of in passing: a caution once, no question more; and the lip as a part."""

from __future__ import annotations

import pytest

from bot.dialogue.reading import read
from tests.dialogue.player import Player

START = "18 m tall, 27 m away, full frame 24-70 and 70-200"


def keys(player: Player, text: str) -> tuple[str, ...]:
    """The keys of the answer to one more line."""
    return tuple(key for said in player.say(text) for key in said.keys)


@pytest.mark.parametrize(
    ("language", "text", "iced"),
    [
        ("english", "closest thing is an icy rock at 1.5 m", True),
        ("english", "it's 25 F, cloudy", True),
        ("english", "it's -3 degrees, cloudy", True),
        ("english", "0 °C here, cloudy", True),
        ("deutsch", "minus 4 Grad und bedeckt", True),
        ("deutsch", "-4 °C und bedeckt", True),
        ("deutsch", "der Weg ist vereist, bedeckt", True),
        ("deutsch", "minus 4 Grad hier, Eiszapfen links", True),
        ("español", "hay hielo en las rocas, nublado", True),
        ("english", "no ice, rock at 1.5 m", False),
        ("english", "it's 40 F, cloudy", False),
        ("english", "12 C, cloudy", False),
        ("english", "15 degrees and cloudy", False),
        ("english", "I like frozen drops", False),
        ("english", "f/11, rock at 1.5 m", False),
    ],
)
def test_ice_is_warned_of(language: str, text: str, iced: bool) -> None:
    """Ice underfoot, hanging ice and frost; a look and an f-number are none."""
    player = Player()
    player.say(language)
    player.say(START)
    assert ("caution.ice" in keys(player, text)) is iced


def test_it_is_said_once_on_a_walk() -> None:
    """The second icicle brings no second caution."""
    player = Player()
    player.say(START)
    assert "caution.ice" in keys(player, "icicles on the left wall")
    assert "caution.ice" not in keys(player, "an icy rock at 1.5 m")


def test_a_bright_cloud_is_no_white_frame() -> None:
    """Light is told before any frame was taken: nobody is asked which settings gave it."""
    player = Player()
    player.say(START)
    assert "ask.frame_settings" not in keys(player, "bright white cloud, no wind")
    assert read("bright white cloud").symptoms == ()


@pytest.mark.parametrize(
    ("text", "focal_mm"),
    [
        ("135 gives me just the lip and some icicles", 135),
        ("24 holds the whole fall", 24),
        ("1200 shows the lip", None),
        ("135 people saw the fall", None),
    ],
)
def test_a_lens_by_what_it_shows(text: str, focal_mm: float | None) -> None:
    """The number in front of what it shows of the fall is a focal length."""
    assert read(text).focal_mm == focal_mm


def test_the_lip_is_shown_with_its_own_slow_water() -> None:
    """135 mm upright from 45.72 m covers 12.2 m; 1.2 m/s × 1/4 s is 2.5 % of it: textured.

    A part of the fall has no near rock: neither it nor the bottom third is asked about.
    """
    player = Player()
    player.say("60 ft tall, 150 ft away, full frame 24-70 and 70-200, tripod")
    assert "ask.nearest_feet" not in keys(player, "135 gives me just the lip")
    player.say("1")
    assert "base.settings" in " ".join(keys(player, "1"))
    (said,) = player.say("1/4 s")
    assert "textured" in said.body
    (why,) = player.say("why")
    assert "over the lip" in why.body or "4 ft/s" in why.body


def test_a_breath_on_the_glass_is_fog() -> None:
    """Who names the cause is asked for none."""
    player = Player()
    player.say(START)
    told = keys(player, "now it's all milky, I may have breathed on it while focusing")
    assert "cause.fogged_glass" in told


def test_a_longer_rung_names_its_iso_where_the_frame_had_another() -> None:
    """From ISO 320 two stops more are ISO 100 and a third by the aperture, which is said."""
    player = Player()
    for line in (
        "10 m tall, 15 m away, rock at 3 m, full frame 24-70, tripod, no filter",
        "1",
        "1",
    ):
        player.say(line)
    player.say("f/11, iso 320, 1/5 s")
    (said,) = player.say("only dots")
    assert "0.8 s f/13 ISO 100" in said.body
