"""A whole check, from bytes to the report."""

from __future__ import annotations

import json

import numpy as np
import pytest
from pydantic import TypeAdapter

from core.errors import FrameFault, UnreadableFrameError
from core.frame.check import check_frame
from core.frame.report import Advice, FrameReport, SizeNote
from tests.core.frame_files import exif_block, jpeg, natural
from tests.scenes.waterfall import Plan, compose, take

CAMERA = exif_block({271: "Alder", 272: "Reed One"}, {33434: 0.25, 33437: 11.0, 34855: 100})


def test_a_frame_with_room() -> None:
    """A dim frame with its settings: nothing clipped, room, brighter."""
    report, pixels = check_frame(jpeg(natural(), exif=CAMERA))
    assert pixels.shape == (800, 1200, 3)
    assert (report.file_kind, report.width, report.height) == ("JPEG", 1200, 800)
    assert (report.metadata.settings.shutter_s, report.metadata.model) == (0.25, "Reed One")
    assert report.size_note is SizeNote.FULL
    assert report.clipping.share == 0
    assert report.advice is Advice.BRIGHTER
    assert report.room_stops is not None
    assert 0.3 < report.room_stops < 1.5


def test_blown_water() -> None:
    """A rendered fall whose white is lost asks for a darker frame; its contrast is a least."""
    taken = take(compose(Plan(seed=21, white_stops=3.4)))
    report, _ = check_frame(jpeg(taken.pixels, exif=CAMERA))
    assert report.advice is Advice.DARKER
    assert report.room_stops == pytest.approx(-2 / 3)
    assert report.contrast is not None
    assert (report.contrast.white_stops, report.contrast.at_least) == (None, True)


@pytest.mark.parametrize(
    ("exif", "camera_pixels", "note"),
    [
        (None, None, SizeNote.RESIZED),  # no metadata, small: a chat copy
        (CAMERA, None, SizeNote.FULL),
        (CAMERA, (6000, 4000), SizeNote.RESIZED),
        (CAMERA, (1200, 800), SizeNote.FULL),
        (CAMERA, (800, 1200), SizeNote.FULL),
        (CAMERA, (1200, 900), SizeNote.FULL),  # cropped to 3:2
        (CAMERA, (1600, 800), SizeNote.FULL),  # cropped to the height
        (CAMERA, (1300, 860), SizeNote.FULL),  # straightened
        (None, (1200, 800), SizeNote.FULL),
    ],
)
def test_size_note(exif: object, camera_pixels: tuple[int, int] | None, note: SizeNote) -> None:
    """Smaller than the camera's frames on both sides, or plainly a chat copy: resized."""
    data = jpeg(natural(), exif=exif)  # type: ignore[arg-type]  # from a table
    assert check_frame(data, camera_pixels)[0].size_note is note


def test_large_frame_without_metadata_is_full() -> None:
    """A frame larger than chat copies is taken as full though its metadata are gone."""
    large = np.tile(natural(), (1, 2, 1))
    assert check_frame(jpeg(large))[0].size_note is SizeNote.FULL


def test_copy_by_its_own_metadata() -> None:
    """A file that states a larger size is a copy, whatever is known of the camera."""
    exif = exif_block({271: "Alder"}, {40962: 6000, 40963: 4000})
    assert check_frame(jpeg(natural(), exif=exif), (1200, 800))[0].size_note is SizeNote.RESIZED


def test_fault_passes() -> None:
    """What cannot be read is told, and limits are passed on."""
    with pytest.raises(UnreadableFrameError) as caught:
        check_frame(jpeg(natural()), max_pixels=1000)
    assert caught.value.fault is FrameFault.TOO_MANY_PIXELS


def test_report_survives_json() -> None:
    """A report goes through JSON and comes back equal."""
    pixels = natural().copy()
    pixels[450:600, 500:620] = 255
    pixels[:100, 200:400] = 255
    report, _ = check_frame(jpeg(pixels, exif=CAMERA))
    reports = TypeAdapter(FrameReport)
    again = reports.validate_python(json.loads(reports.dump_json(report)))
    assert again == report
