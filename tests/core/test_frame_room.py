"""What the clipping asks for next, by kind and size, and the room when nothing is clipped."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.frame.findings import Contrast, RawExposure, Sharpness
from core.frame.report import Advice, AreaKind, Box, ClippedArea, Clipping, FrameReport
from core.frame.room import (
    as_in_raw,
    is_capped,
    is_lost,
    measured_room_stops,
    room_and_advice,
    shows_nothing,
)
from tests.dialogue.player import report

ALL = ("red", "green", "blue")
DIM = np.full((400, 600), 100, np.uint8)
THIRD = 1 / 3
RAW = RawExposure(dict.fromkeys(ALL, 2.5), dict.fromkeys(ALL, 0.0))


def area(
    kind: AreaKind, share: float, widest: float = 0.02, channels: tuple[str, ...] = ALL
) -> ClippedArea:
    return ClippedArea("A", kind, Box(0, 0, 1, 1), share, widest, channels, 0.8)


WATER, SKY = AreaKind.WHITE_WATER, AreaKind.SKY_GAP
SPARKLE, UNSURE = AreaKind.SPARKLE, AreaKind.UNSURE


@pytest.mark.parametrize(
    ("areas", "room_stops", "advice"),
    [
        # White water: a third, two thirds over 1 % of the long side in all channels, a stop for
        # a sheet of more than 5 % of the frame.
        ([area(WATER, 0.0005, 0.008)], -THIRD, Advice.DARKER),
        ([area(WATER, 0.004, 0.05, ("blue",))], -THIRD, Advice.DARKER),
        ([area(WATER, 0.004, 0.05)], -2 * THIRD, Advice.DARKER),
        ([area(WATER, 0.03, 0.2), area(WATER, 0.03, 0.2)], -1, Advice.DARKER),
        ([area(WATER, 0.08, 0.3, ("red", "green"))], -THIRD, Advice.DARKER),
        # Water decides even beside a sky gap and beside an area of doubt.
        ([area(SKY, 0.06, 0.3), area(WATER, 0.004, 0.05)], -2 * THIRD, Advice.DARKER),
        ([area(UNSURE, 0.06, 0.3), area(WATER, 0.004, 0.05)], -2 * THIRD, Advice.DARKER),
        ([area(UNSURE, 0.01)], None, Advice.ASK),
        ([area(UNSURE, 0.55, 0.9)], None, Advice.ASK),
        # Most of the frame is white: nobody need say what it is.
        ([area(UNSURE, 0.5, 0.9), area(UNSURE, 0.2, 0.3)], -2, Advice.DARKER),
        ([area(SKY, 0.7, 1.0), area(UNSURE, 0.01)], None, Advice.ASK),
        ([area(SKY, 0.01), area(UNSURE, 0.0005)], None, Advice.ASK),
        ([area(SKY, 0.01)], None, Advice.REFRAME),
        ([area(SPARKLE, 0.002, 0.003)], -THIRD, Advice.DARKER),
    ],
)
def test_what_decides(areas: list[ClippedArea], room_stops: float | None, advice: Advice) -> None:
    """White water decides, then doubt, then sky, then a lot of sparkle."""
    clipping = Clipping(0.1, dict.fromkeys(ALL, 0.1), tuple(areas))
    found, said = room_and_advice(clipping, DIM)
    assert found == pytest.approx(room_stops)
    assert said is advice


@pytest.mark.parametrize(
    "harmless",
    [
        area(SPARKLE, 0.0009, 0.003),
        area(UNSURE, 0.0001, 0.02),
        area(SKY, 0.0009, 0.02),
        area(WATER, 0.0001, 0.004),
    ],
)
def test_what_does_no_harm(harmless: ClippedArea) -> None:
    """Less than a tenth of a percent, none of it wide, leaves the room as it is."""
    clipping = Clipping(0.0009, dict.fromkeys(ALL, 0.0), (harmless,))
    assert room_and_advice(clipping, DIM) == (measured_room_stops(DIM), Advice.BRIGHTER)


@pytest.mark.parametrize(
    ("code", "room_stops"),
    [
        # log2 of the linear light of code 245 over that of the code, sRGB (IEC 61966-2-1):
        # 0.9131 / 0.5029 and 0.9131 / 0.8148, computed by hand.
        (188, 0.8605),
        (233, 0.1643),
        (245, 0.0),
        (250, 0.0),
        (60, 2.0),
        (0, 2.0),
    ],
)
def test_measured_room(code: int, room_stops: float) -> None:
    """An even frame has the room of its code, from none to two stops."""
    plane = np.full((300, 400), code, np.uint8)
    assert measured_room_stops(plane) == pytest.approx(room_stops, abs=0.001)


def test_sparkle_does_not_take_the_room() -> None:
    """A few bright pixels do not hide the room above the body; a bright body does."""
    plane = np.full((2400, 3600), 188, np.uint8)
    plane[100::200, 100::200] = 255
    assert measured_room_stops(plane) == pytest.approx(0.86, abs=0.03)
    plane[:300, :300] = 240
    assert measured_room_stops(plane) == pytest.approx(0.06, abs=0.02)


@pytest.mark.parametrize(
    ("frame", "capped"),
    [
        (report(Advice.BRIGHTER, 2.0), True),
        (report(Advice.BRIGHTER, 1.9), False),
        (report(Advice.ASK, None), False),
        (replace(report(Advice.BRIGHTER, 2.3), preview_over_stops=0.6), False),
        (replace(report(Advice.BRIGHTER, 2.6), preview_over_stops=0.6), True),
        (replace(report(Advice.BRIGHTER, 2.5), raw=RAW), False),
        (replace(report(Advice.BRIGHTER, 6.0), raw=RAW), True),
    ],
)
def test_the_most_room_that_is_told_is_a_bound(frame: FrameReport, capped: bool) -> None:
    """A frame with as much room as is told may have more."""
    assert is_capped(frame) is capped


@pytest.mark.parametrize(
    ("room_stops", "lost"), [(2.0, False), (-1.0, False), (-2.0, True), (None, False)]
)
def test_a_frame_that_is_far_too_bright_is_lost(room_stops: float | None, *, lost: bool) -> None:
    """By how much it is too bright stays open."""
    assert is_lost(report(Advice.DARKER, room_stops)) is lost


@pytest.mark.parametrize(
    ("room_stops", "sharpness", "contrast", "nothing"),
    [
        (2.0, Sharpness((None, None, None)), None, True),
        (2.0, Sharpness((None, 1.2, None)), None, False),
        (2.0, Sharpness((None, None, None)), Contrast(3.0, 1.5), False),
        (1.0, Sharpness((None, None, None)), None, False),
        (2.0, None, None, False),
    ],
)
def test_a_frame_without_light_or_edge_shows_nothing(
    room_stops: float, sharpness: Sharpness | None, contrast: Contrast | None, *, nothing: bool
) -> None:
    """Dark alone is no cap: there must be no edge and no texture that was looked for."""
    dark = report(Advice.BRIGHTER, room_stops)
    assert shows_nothing(replace(dark, sharpness=sharpness, contrast=contrast)) is nothing


def test_no_room_to_speak_of() -> None:
    """Less than a third of a stop is a frame to keep."""
    nothing = Clipping(0.0, dict.fromkeys(ALL, 0.0))
    assert room_and_advice(nothing, np.full((300, 400), 235, np.uint8))[1] is Advice.KEEP


@given(st.integers(0, 254))
def test_room_shrinks_with_brightness(code: int) -> None:
    """The brighter the body, the less the room."""
    darker, brighter = (np.full((10, 10), code + step, np.uint8) for step in (0, 1))
    assert measured_room_stops(darker) >= measured_room_stops(brighter)


def test_room_of_a_raw_is_that_of_its_first_channel() -> None:
    """The channel that ends first ends the room."""
    raw = RawExposure({"red": 2.0, "green": 0.5, "blue": 0.9}, dict.fromkeys(("red",), 0.0))
    assert room_and_advice(Clipping(0.0, {}), DIM, raw) == (0.5, Advice.BRIGHTER)


@pytest.mark.parametrize(
    ("advice", "room_stops", "over_stops", "then"),
    [
        (Advice.DARKER, -2 * THIRD, 0.7, (0.0, Advice.KEEP)),
        (Advice.DARKER, -1.0, 0.5, (-0.5, Advice.DARKER)),
        (Advice.KEEP, 0.0, 0.5, (0.5, Advice.BRIGHTER)),
        (Advice.KEEP, 0.1, 0.2, (0.3, Advice.KEEP)),
        (Advice.BRIGHTER, 1.0, 0.5, (1.5, Advice.BRIGHTER)),
    ],
)
def test_pictures_of_a_camera_whose_raws_hold_more(
    advice: Advice, room_stops: float, over_stops: float, then: tuple[float, Advice]
) -> None:
    """The room grows, and a step down shrinks, by what the camera's pictures overstate."""
    seen = as_in_raw(report(advice, room_stops), over_stops)
    assert seen.room_stops == pytest.approx(then[0])
    assert seen.advice is then[1]
    assert seen.preview_over_stops == over_stops


def test_what_cannot_be_said_stays_so() -> None:
    """Water or sky is still the question, whatever the raw holds."""
    asked = report(Advice.ASK, None)
    assert as_in_raw(asked, 0.7) is asked


def test_a_lamp_may_clip() -> None:
    """A lamp that is clipped takes nothing from the room of the rest, nor its glow."""
    pixels = np.full((400, 600), 100, np.uint8)
    pixels[90:120, 190:220] = 240
    pixels[100:110, 200:210] = 255
    lamp = ClippedArea(
        "A", AreaKind.LAMP, Box(190 / 600, 90 / 400, 30 / 600, 30 / 400), 0.002, 0.05, ALL, 0.95
    )
    room_stops, advice = room_and_advice(Clipping(0.002, {}, (lamp,)), pixels)
    assert advice is Advice.BRIGHTER
    assert room_stops == measured_room_stops(DIM)


def test_a_raw_with_a_lamp_is_measured_on_its_picture() -> None:
    """The sensor's brightest body is the lamp then, so the picture without it tells."""
    lamp = ClippedArea("A", AreaKind.LAMP, Box(0.4, 0.4, 0.05, 0.05), 0.002, 0.05, ALL, 0.95)
    raw = RawExposure(dict.fromkeys(ALL, 0.0), dict.fromkeys(ALL, 0.002))
    assert room_and_advice(Clipping(0.002, {}, (lamp,)), DIM, raw)[1] is Advice.BRIGHTER
