"""What the clipping asks for next, by kind and size, and the room when nothing is clipped."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.frame.report import Advice, AreaKind, Box, ClippedArea, Clipping
from core.frame.room import measured_room_stops, room_and_advice

ALL = ("red", "green", "blue")
DIM = np.full((400, 600), 100, np.uint8)
THIRD = 1 / 3


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


def test_no_room_to_speak_of() -> None:
    """Less than a third of a stop is a frame to keep."""
    nothing = Clipping(0.0, dict.fromkeys(ALL, 0.0))
    assert room_and_advice(nothing, np.full((300, 400), 235, np.uint8))[1] is Advice.KEEP


@given(st.integers(0, 254))
def test_room_shrinks_with_brightness(code: int) -> None:
    """The brighter the body, the less the room."""
    darker, brighter = (np.full((10, 10), code + step, np.uint8) for step in (0, 1))
    assert measured_room_stops(darker) >= measured_room_stops(brighter)
