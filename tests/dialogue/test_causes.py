"""Causes of a frame that went wrong, in order: what the words say, and what the numbers say."""

from __future__ import annotations

import pytest

from bot.dialogue.causes import Cause, Scene, diagnose, scene_of
from bot.dialogue.facts import Blink, Facts
from bot.dialogue.meaning.said import in_english

#: A fall of 10 m from 15 m at 24 mm on full frame, the case on which the looks were set.
USUAL = Facts(camera_format="full frame", focal_mm=24.0, fall_height_m=10.0, distance_m=15.0)


def weights(text: str, facts: Facts, cause: str, **known: bool) -> dict[str, float]:
    """What speaks for or against a cause."""
    scene = scene_of(facts, text, stabiliser_on=known.get("stabiliser_on"))
    found = next(c for c in diagnose(in_english(text), scene) if c.name == cause)
    return dict(found.evidence)


@pytest.mark.parametrize(
    ("cause", "told", "evidence", "for_it"),
    [
        ("time_too_long", {"shutter_s": 2.0}, "share", True),
        ("time_too_long", {"shutter_s": 0.5}, "share", True),
        ("time_too_long", {"shutter_s": 1 / 60}, "share", False),
        ("time_too_long", {"blink": Blink.NOTHING}, "clean", True),
        ("time_too_short", {"shutter_s": 1 / 500}, "share", True),
        ("time_too_short", {"shutter_s": 1.0}, "share", False),
        ("water_clipped", {"blink": Blink.SHEET}, "blink", True),
        ("water_clipped", {"blink": Blink.NOTHING}, "blink", False),
        ("water_clipped", {"histogram_at_right": True}, "histogram", True),
        ("water_clipped", {"histogram_at_right": False}, "histogram", False),
        (
            "water_clipped",
            {"shutter_s": 1 / 60, "f_number": 8.0, "iso": 100.0, "light": "full sun"},
            "level",
            True,
        ),
        (
            "water_clipped",
            {"shutter_s": 1 / 60, "f_number": 8.0, "light": "dense canopy", "polariser_on": True},
            "level",
            False,
        ),
        ("water_clipped", {"shutter_s": 2.0}, "share", False),
        (
            "underexposed",
            {"shutter_s": 1 / 60, "f_number": 16.0, "light": "dense canopy"},
            "level",
            True,
        ),
        ("underexposed", {"shutter_s": 1.0, "f_number": 4.0, "light": "full sun"}, "level", False),
        ("underexposed", {"histogram_at_right": False}, "histogram", True),
        ("underexposed", {"histogram_at_right": True}, "histogram", False),
        ("iso_raised", {"iso": 3200.0}, "iso", True),
        ("iso_raised", {"iso": 100.0}, "iso", False),
        ("automatic_mode", {"automatic": True}, "mode", True),
        ("automatic_mode", {"automatic": False}, "mode", False),
        ("diffraction", {"f_number": 22.0}, "f_number", True),
        ("diffraction", {"f_number": 8.0}, "f_number", False),
        ("shake", {"shutter_s": 0.25, "hand_held": True}, "by_hand", True),
        ("shake", {"shutter_s": 1 / 250, "has_tripod": False}, "by_hand", False),
        ("shake", {"f_number": 22.0}, "f_number", False),
        ("near_too_close", {"f_number": 8.0, "nearest_m": 0.5}, "depth", True),
        ("near_too_close", {"f_number": 11.0, "nearest_m": 4.0}, "depth", False),
        ("focused_wrong", {"nd_on_stops": 10.0}, "nd", True),
        ("focused_wrong", {"f_number": 11.0, "nearest_m": 4.0}, "depth", True),
        ("wind_in_leaves", {"wind": True}, "wind", True),
        ("unturned_polariser", {"has_polariser": True}, "polariser", True),
        ("unturned_polariser", {"has_polariser": False}, "polariser", False),
        ("polariser_in_the_dark", {"polariser_on": True}, "polariser", True),
        ("polariser_in_the_dark", {"polariser_on": False}, "polariser", False),
        ("polariser_in_the_dark", {"polariser_on": True, "light": "dense canopy"}, "light", True),
        ("polariser_in_the_dark", {"polariser_on": True, "light": "full sun"}, "light", False),
        ("nd_cast", {"nd_on_stops": 6.0}, "nd", True),
        ("nd_cast", {"nd_on_stops": 0.0}, "nd", False),
        ("filter_corners", {"focal_mm": 17.0}, "focal", True),
        ("filter_corners", {"focal_mm": 50.0}, "focal", False),
        ("filter_corners", {"polariser_on": True}, "filters", True),
        ("cool_white_balance", {"light": "open shade"}, "light", True),
        ("cool_white_balance", {"nd_on_stops": 6.0}, "nd", False),
        ("too_wide", {"distance_m": 60.0}, "part", True),
        ("too_wide", {}, "part", False),
    ],
)
def test_evidence_speaks_for_or_against(
    cause: str, told: dict[str, object], evidence: str, *, for_it: bool
) -> None:
    """Each number that is known moves its cause the way it should."""
    facts = USUAL.model_copy(update=told)
    assert (weights("something is wrong", facts, cause)[evidence] > 0) is for_it


@pytest.mark.parametrize(("stabiliser_on", "for_it"), [(True, True), (False, False)])
def test_a_stabiliser_on_the_tripod_shakes(*, stabiliser_on: bool, for_it: bool) -> None:
    """Told beside or in the message."""
    facts = USUAL.model_copy(update={"has_tripod": True})
    found = weights("blurry", facts, "shake", stabiliser_on=stabiliser_on)
    assert (found["stabiliser"] > 0) is for_it
    assert weights("stabiliser is on", facts, "shake")["stabiliser"] > 0


def test_unknown_numbers_are_no_evidence() -> None:
    """Of a scene without numbers only the words speak."""
    for cause in diagnose(in_english("everything is blue"), scene_of(Facts())):
        assert cause.evidence == ()


def test_the_order_is_by_score() -> None:
    """The likeliest cause stands first, and words alone can name it."""
    found = diagnose(in_english("water is like cotton wool"), Scene(Facts()))
    assert found[0] == Cause("time_too_long", found[0].score, ())
    assert [cause.score for cause in found] == sorted((c.score for c in found), reverse=True)


def test_numbers_decide_between_two() -> None:
    """White without texture is clipped where it blinks, and too long where it doesn't."""
    text = "the fall is only white, no texture"
    long = USUAL.model_copy(update={"shutter_s": 2.0, "blink": Blink.NOTHING})
    bright = USUAL.model_copy(update={"shutter_s": 1 / 60, "blink": Blink.SHEET})
    assert diagnose(in_english(text), scene_of(long))[0].name == "time_too_long"
    assert diagnose(in_english(text), scene_of(bright))[0].name == "water_clipped"
