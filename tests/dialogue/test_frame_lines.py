"""A frame's report in plain lines, as the command line prints it; the words beside a picture."""

from __future__ import annotations

from dataclasses import replace

import pytest

from bot.dialogue.facts import Units
from bot.dialogue.steps.frames.findings_said import plain_lines
from bot.dialogue.texts import frames, measures
from core.errors import FrameFault
from core.frame.report import AreaKind, Box, CameraSettings, ClippedArea, SizeNote
from tests.dialogue.player import REPORTS, report

CLIPPED = REPORTS["clipped"]


def test_clipped_frame_in_lines() -> None:
    """Kind and size, settings, shares, areas with their places, the step, the advice."""
    assert frames.frame_lines(CLIPPED) == [
        "JPEG, 4000 × 6000",
        "settings: 27 mm, f/13, 1/8 s, ISO 100",
        "clipped: 1.4 % of the frame (red 1.4 %, green 1.4 %, blue 1.4 %)",
        "A: white water, centre, 1.4 %, all channels",
        "B: sparkle, bottom centre, 0.04 %, all channels",
        "next frame: 2/3 stop darker",
        "white water is lost: darker",
    ]


@pytest.mark.parametrize(
    ("name", "lines"),
    [
        ("dark", ["room to the right: about 1 1/3 stops", "there is room: brighter"]),
        ("very_dark", ["room to the right: at least 2 stops", "there is room: brighter"]),
        ("mostly_white", ["next frame: 2 stops darker", "most of the frame is white: darker"]),
        ("sky", ["how far to move can't be said", "a sky gap: move, tilt, or bracket"]),
        (
            "raw",
            [
                "raw, 4000 × 6000",
                "by the sensor: red 2 stops, green 1 1/3 stops, blue 1 2/3 stops",
                "the embedded preview clips 2/3 stop early",
            ],
        ),
        ("raw_by_its_word", ["by the sensor: red 1 1/3 stops"]),
        ("copy", ["settings: not in the file", "A small copy: tiny sparkle is lost in it"]),
        ("page", ["That looks like a screenshot"]),
    ],
)
def test_other_frames_in_lines(name: str, lines: list[str]) -> None:
    """What can't be said is said to be so."""
    text = "\n".join(frames.frame_lines(REPORTS[name]))
    for line in lines:
        assert line in text


def test_long_times_and_missing_settings() -> None:
    """A time of 0.3 s or longer stands as a number of seconds; what is missing is left out."""
    long = report(CLIPPED.advice, -1.0, settings=CameraSettings(shutter_s=2.5))
    assert frames.frame_lines(long)[1] == "settings: 2.5 s"
    resized = replace(long, size_note=SizeNote.RESIZED)
    assert "small copy" in frames.frame_lines(resized)[-1]


def test_what_else_a_frame_shows_in_lines() -> None:
    """Borders and their crops, as of any frame that is looked at afterwards."""
    assert plain_lines(REPORTS["bordered"]) == [
        "Something bright at the right, two thirds down: a crop of 4 % takes it out.",
        "White sky along the top: a crop of 4 % takes it out.",
    ]


def test_two_things_at_one_place_are_told_once() -> None:
    """Two bright things that read the same are one line."""
    bordered = REPORTS["bordered"]
    assert bordered.borders is not None
    doubled = replace(bordered, borders=(*bordered.borders, *bordered.borders))
    assert plain_lines(doubled) == plain_lines(bordered)


def test_a_preview_that_is_right_gets_no_line() -> None:
    """By how much a preview clips early is told from half a click on."""
    raw = REPORTS["raw"]
    assert raw.raw is not None
    right = replace(raw, raw=replace(raw.raw, preview_over_stops=0.1))
    assert "preview" not in "\n".join(frames.frame_lines(right))


def test_a_file_that_stores_pixels_strangely() -> None:
    """A TIFF of a strange kind is not asked for as a TIFF again."""
    line = frames.fault_line(FrameFault.KIND_NOT_READ, {"raw": 0, "stored": 1})
    assert line.startswith("That file keeps its pixels in a way I can't read. Save it as a JPEG")


def test_a_raw_that_is_not_read() -> None:
    """A camera's raw gets another sentence than a picture of a strange kind."""
    raw = frames.fault_line(FrameFault.KIND_NOT_READ, {"raw": 1})
    other = frames.fault_line(FrameFault.KIND_NOT_READ, {"raw": 0})
    assert (raw != other, "That raw file" in raw) == (True, True)


def test_one_channel_is_named() -> None:
    """Blue alone at its end is not the same as white."""
    area = ClippedArea("A", AreaKind.WHITE_WATER, Box(0, 0, 0.1, 0.1), 0.01, 0.1, ("blue",), 0.9)
    assert frames.area_values(area)["channels"] == "blue only"
    assert frames.area_values(area)["position"] == "top left"


@pytest.mark.parametrize("fault", FrameFault)
def test_every_fault_has_its_sentence(fault: FrameFault) -> None:
    """What is wrong and what to send now, whatever the numbers."""
    line = frames.fault_line(fault, {"limit": 100e6})
    assert line.endswith(".")
    assert "{" not in line


@pytest.mark.parametrize(
    ("distance_km", "climb_m", "units", "shown"),
    [
        (3.0, 150.0, Units.METRIC, "3 km, 150 m climb"),
        (3.218688, 152.4, Units.IMPERIAL, "2 mi, 500 ft climb"),  # exact: 1 mi, 1 ft
    ],
)
def test_walks_in_both_units(distance_km: float, climb_m: float, units: Units, shown: str) -> None:
    """A way out in the person's units."""
    assert measures.walk(distance_km, climb_m, units) == shown
