"""How the first settings are reckoned: the water's speed, the lens, the light, the filters.

Expected numbers are worked by hand, beside each of them, from free fall, similar triangles and the
thin lens: mean speed sqrt(2 g h) / 2 with g = 9.80665; coverage = distance x side / focal length;
share = speed x time / coverage, textured from 1 to 10 % (own rule); f-number for the depth
(f^2 / (n - f) - f^2 / (F - f)) / 2c with c = diagonal / 1500; exposure by exact stops.
"""

from __future__ import annotations

import math

import pytest

from bot.dialogue import reckoning
from bot.dialogue.facts import Facts
from bot.dialogue.walk_state import Walk
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of


def told(*lines: str) -> Player:
    """Somebody who has said these lines."""
    player = Player()
    for line in lines:
        player.say(line)
    return player


def walk_of(player: Player) -> Walk:
    """The walk as it stands."""
    assert player.context is not None
    assert player.context.conversation.walk is not None
    return player.context.conversation.walk


def facts_of(player: Player) -> Facts:
    """All that is known."""
    assert player.context is not None
    return player.context.facts


def speed_of(player: Player) -> tuple[float, str] | None:
    """The speed that is reckoned with, and how it was found."""
    return reckoning.speed_of(facts_of(player))


# how fast the water is


@pytest.mark.parametrize(
    ("lines", "speed_mps"),
    [
        # sqrt(2 x 9.80665 x 12) / 2 = sqrt(235.36) / 2 = 7.67
        (("we are at rammel beck", "12 m high, 20 m away, rock 1 m"), 7.67),
        # sqrt(2 x 9.80665 x 6) / 2 = sqrt(117.68) / 2 = 5.42
        (("the cascade is 6 m high, I stand 10 m away",), 5.42),
        # sqrt(2 x 9.80665 x 3) / 2 = sqrt(58.84) / 2 = 3.84
        (("small creek", "the drop is 3 m high, 5 m away"), 3.84),
        # 9 m: sqrt(176.52) / 2 = 6.64; a stream that is only near changes nothing about it
        (("9 m tall, 12 m away", "there is a stream to cross over there"), 6.64),
        # 9 m: a cascade is still a drop of 9 m
        (("9 m tall, 12 m away", "it's more of a cascade"), 6.64),
    ],
)
def test_a_drop_whose_height_is_told_falls_freely(lines: tuple[str, ...], speed_mps: float) -> None:
    """Whatever the water is called, a told height gives the mean of its free fall."""
    found = speed_of(told(*lines))
    assert found is not None
    assert found[0] == pytest.approx(speed_mps, abs=0.01)
    assert found[1] == "mean_fall"


@pytest.mark.parametrize(
    "taken_back", ["stream", "it's just a small creek", "no real fall, a stream"]
)
def test_a_stream_is_one_when_the_person_says_so(taken_back: str) -> None:
    """A height told before is void once they say that the water only runs."""
    found = speed_of(told("9 m tall, 12 m away", taken_back))
    assert found is not None
    assert found[1] == "stream_guess"


def test_a_timed_leaf_beats_the_height() -> None:
    """3 m in 2 s is 1.5 m/s, whatever the drop."""
    found = speed_of(told("the cascade is 6 m high, 10 m away", "leaf 3 m in 2 s"))
    assert found == (1.5, "leaf")


def test_what_is_assumed_of_a_cascade_is_said_once() -> None:
    """Water over rock is reckoned as a free drop; that is said when it is told, and only then."""
    player = told("four thirds, 12-40, tripod")
    assert "water.free_drop" in keys_of(player, "the cascade is 6 m high, I stand 10 m away")
    assert "water.free_drop" not in keys_of(player, "a cascade, 7 m high")
    plain = told("four thirds, 12-40, tripod")
    assert "water.free_drop" not in keys_of(plain, "the fall is 6 m high, I stand 10 m away")


def test_a_cascade_without_a_height_is_asked_for_it() -> None:
    """No leaf for what drops: the height tells its speed."""
    player = told("start")
    assert keys_of(player, "small cascade, 4 m away, rock at 1 m") == ("ask.height",)
    assert keys_of(player, "a cascade, 40 m off, no idea how tall")[-1] == "ask.height"


def test_a_cascade_that_is_only_spoken_of_changes_nothing() -> None:
    """A complaint that names a cascade tells nothing of its speed."""
    player = told("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod", "1", "1")
    assert "water.free_drop" not in keys_of(player, "I burn out the cascade every time")


@pytest.mark.parametrize(
    "lines",
    [
        ("stream", "3 m away, rock at 1 m", "full frame 24-70", "1"),
        ("we are at a creek, 10 ft away", "rock at 3 ft", "phone", "1"),
    ],
)
def test_nobody_is_sent_to_time_a_leaf_twice(lines: tuple[str, ...]) -> None:
    """The question for a stream asks for the leaf; it is not put alone again."""
    player = told("start")
    keys = [key for line in lines for key in keys_of(player, line)]
    asked = [key for key in keys if key.startswith(("ask.stream", "ask.water_speed"))]
    assert len(asked) == 1


# the lens


def test_the_wide_end_is_taken_when_a_near_leaf_is_told() -> None:
    """15 m from 25 m on four thirds: a leaf at 1.5 m brings the zoom to its wide end, level.

    Camera 0.9 m up: arctan(14.1 / 25) = 29.42 deg up, arctan(0.9 / 1.5) = 30.96 deg down; half of
    60.38 is 30.19 deg, 8.65 / tan = 14.87 mm, with 5 % spare on each end 13.38 mm. Its depth:
    13.38^2 / 1486.6 - 13.38^2 / 24987 = 0.1132 mm, / (2 x 0.01443) = f/3.9. Without the leaf:
    29.42 + arctan(0.9 / 25) = 31.48, half 15.74, 8.65 / tan = 30.7, spare 27.6 mm: 27.6^2 / 1472 -
    27.6^2 / 24972 = 0.487 mm, f/16.9, far past f/8.
    """
    player = told("15 m fall, 25 m away", "m43 with 12-60")
    assert facts_of(player).focal_mm == pytest.approx(27.6, abs=0.1)
    said = player.say("nearest leaf 1.5 m")[0].body
    assert said.startswith("13 mm (27 as full frame), portrait, camera level")
    facts = facts_of(player)
    assert facts.focal_mm == pytest.approx(13.38, abs=0.01)
    depth = reckoning.depth_of(facts, facts.focal_mm or 0.0)
    assert depth.needed == pytest.approx(3.9, abs=0.05)
    assert depth.stack is None
    assert reckoning.focus_of(facts) == pytest.approx(2 * 1.5 * 25 / 26.5)  # 2.83 m


def test_a_shorter_lens_where_the_framing_one_cannot_hold_the_depth() -> None:
    """10 m from 60 m with a log at 2 m: 60 mm frames it, 43 mm is the longest at f/16.

    Up arctan(9.1 / 60) = 8.62 deg, down arctan(0.9 / 2) = 24.23; half of 32.85 is 16.43 deg, 18 /
    tan = 61.1 mm, spare 54.9 mm. In one frame at f/16 (0.02884 mm) up to 43.2 mm, see the core; a
    fifth less for an f-number inside the best range, f/11: 43.2 x 0.8 = 34.6; f/11.3 holds
    43.2 x sqrt(11.3 / 16) = 36.3 mm, which is longer.
    """
    player = told("10 m tall, 60 m away, nearest log 2 m")
    said = player.say("full frame 24-105")[0]
    assert "lens.wider_for_depth" in said.keys
    focal_mm = facts_of(player).focal_mm
    assert focal_mm == pytest.approx(36.3, abs=0.1)
    depth = reckoning.depth_of(facts_of(player), focal_mm or 0.0)
    assert depth.stack is None
    assert depth.needed <= 2**3.5


@pytest.mark.parametrize(
    ("kit", "focal_mm"),
    [
        # 35 mm is shorter than 43.2 mm: the only one of the two that holds both in one frame
        ("full frame with a 50 mm prime and a 35 mm prime", 35),
        # neither does: the one that frames the fall, and frames of a stack
        ("full frame with an 85 mm prime and a 50 mm prime", 50),
        # from 0.5 m up: 9.0 + 14.04 = 23.04 deg, 18 / tan(11.52) = 88.3 mm, with spare 79.5 mm
        ("full frame 70-200", 79.5),
    ],
)
def test_depth_chooses_among_what_the_kit_has(kit: str, focal_mm: float) -> None:
    """A lens that holds both in one frame if there is one; else the framing decides."""
    player = told("10 m tall, 60 m away, nearest log 2 m", kit)
    assert facts_of(player).focal_mm == pytest.approx(focal_mm, abs=0.1)


def test_a_low_camera_brings_a_near_stone_in() -> None:
    """6 m from 10 m with a stone at 0.8 m: from 0.9 m up it lies outside of 12 mm, from 0.5 m not.

    At 0.9 m: 27.02 + 48.37 = 75.39 deg, 8.65 / tan(37.7) = 11.2 mm. At 0.5 m: 28.81 + 32.01 =
    60.82 deg, 8.65 / tan(30.41) = 14.74 mm, spare 13.26 mm. The depth there: 13.26^2 / 786.7 -
    13.26^2 / 9986.7 = 0.2059 mm, f/7.1; 12 mm asks for 0.1683 mm, f/5.8, nearly in the best range.
    """
    player = told("four thirds, 12-40, tripod", "the fall is 6 m high, I stand 10 m away")
    said = player.say("nearest stone 80 cm")[0]
    assert said.body.startswith("12 mm (24 as full frame), portrait")
    assert "about 0.5 m up" in said.body
    assert facts_of(player).camera_height_m == pytest.approx(0.5)
    depth = reckoning.depth_of(facts_of(player), 12.0)
    assert depth.needed == pytest.approx(5.8, abs=0.05)


def test_a_camera_height_that_was_told_stays() -> None:
    """Who stands by a railing is not told to kneel: then the stone stays outside."""
    player = told("four thirds, 12-40, tripod", "6 m high, 10 m away, camera 1.5 m up")
    assert "lens.near_out" in keys_of(player, "nearest stone 80 cm")
    assert facts_of(player).camera_height_m == pytest.approx(1.5)


def test_a_low_camera_that_does_not_help_is_not_named() -> None:
    """12 m from 8 m at 24 mm: not even the low camera brings a rock at 0.3 m in."""
    player = told("12 m tall, 8 m away, rock at 0.3 m")
    said = player.say("full frame 24-70")[0]
    assert "lens.lower" not in said.keys
    assert facts_of(player).camera_height_m is None


def test_a_focal_length_that_is_set_stays_with_what_would_be_sharp_beside_it() -> None:
    """The person's 60 mm is theirs; 36 mm of their zoom would hold the log in one frame."""
    player = told("10 m tall, 60 m away, nearest log 2 m")
    said = player.say("full frame 24-105, at 60 mm")[0]
    assert "lens.set_too_deep" in said.keys
    assert "36 mm" in said.body
    assert facts_of(player).focal_mm == 60
    wide = told("10 m tall, 15 m away, rock at 3 m")
    assert "lens.set_too_deep" not in keys_of(wide, "full frame 24-105, at 24 mm")


def test_the_lens_stays_once_frames_were_taken() -> None:
    """A near rock told with the frames on the card does not send anybody back to the lens."""
    player = told("15 m tall, 25 m away", "skip", "full frame 24-105", "1", "1", "1")
    before = facts_of(player).focal_mm
    player.say("took 1/4 s f/11 iso 100, nothing blinks")
    player.say("nearest rock 1.5 m")
    assert facts_of(player).focal_mm == before


@pytest.mark.parametrize("lines", [("section of 3 m",), ("at 35 mm",)])
def test_only_a_lens_that_linn_chose_for_the_whole_fall_is_chosen_anew(
    lines: tuple[str, ...],
) -> None:
    """A section, and what the person has set, stay as they are."""
    player = told("15 m tall, 25 m away", "full frame 24-105", *lines)
    before = facts_of(player).focal_mm
    player.say("nearest rock 1.5 m")
    assert facts_of(player).focal_mm == before


def test_a_near_thing_that_the_lens_holds_is_only_noted() -> None:
    """A rock at 10 m lies in the frame of 27 mm and in its depth."""
    player = told("15 m tall, 25 m away", "skip", "full frame 24-105")
    before = facts_of(player).focal_mm
    assert "noted" in keys_of(player, "nearest rock 24 m")
    assert facts_of(player).focal_mm == before
    assert math.isfinite(before or math.inf)


# what tells of the day and not of the edge


def test_a_grey_sky_with_drizzle_is_the_light() -> None:
    """Asked for the top edge, "white sky" is an answer, a drizzling day is not."""
    player = told("12 m tall, 20 m away, rock at 1 m", "aps-c 16-50")
    assert "noted" in keys_of(player, "grey sky drizzle, its all even light")
    assert facts_of(player).light == "overcast"
    assert "top.sky" in keys_of(player, "a bit of white sky")


@pytest.mark.parametrize(
    "text",
    ["a 9 m water slide, 12 m away", "the slide is 9 m high, 12 m off", "30 ft slide over slabs"],
)
def test_a_slide_is_a_drop_that_runs_over_rock(text: str) -> None:
    """9 m: sqrt(2 x 9.80665 x 9) / 2 = 6.64 m/s; that it is slower over rock is said."""
    player = told("full frame 24-105, tripod")
    said = player.say(text)[0]
    found = speed_of(player)
    assert found is not None
    assert found[0] == pytest.approx(6.64, abs=0.06)  # 30 ft are 9.14 m
    assert "water.free_drop" in said.keys


def test_a_distance_told_a_little_better_keeps_the_near_rock() -> None:
    """18 m and 19 m are the same place; 30 m is another one, with another rock."""
    player = told("12 m tall, 18 m away, rock at 1.5 m", "full frame 24-70", "it's 19 m away")
    assert facts_of(player).nearest_m == pytest.approx(1.5)
    player.say("i went back, now 30 m away")
    assert facts_of(player).nearest_m is None


def test_a_time_told_before_the_settings_is_only_noted() -> None:
    """Nothing is judged by a time alone while the lens is still open."""
    player = told("start", "12 m tall, 18 m away, rock at 1.5 m")
    assert "told.settings" not in keys_of(player, "1/4 s")
    assert facts_of(player).shutter_s == pytest.approx(0.25)


def test_an_unknown_focal_length_frames_the_fall_with_the_lenses_at_hand() -> None:
    """20 ft from 40 ft: 23.5 mm x 40 / (20 x 1.05) = 45 mm on APS-C, which an 18-55 has."""
    asks = "I'm standing 40 ft in front of the fall, what do i set on the camera?"
    for lens, taken in (("18-55", "44 mm"), ("18-35", "35 mm")):
        player = Player()
        player.say(f"20 ft high fall, APS-C with an {lens}, tripod, open shade")
        assert f"Assumed: {taken}" in player.say(asks)[0].body
