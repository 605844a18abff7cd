"""Frames as files say what a camera writes, and the walk's frames are written."""

from __future__ import annotations

import io
import re
from pathlib import Path

import numpy as np
import pytest
from PIL import ExifTags, Image, ImageOps

from tests.scenes.__main__ import main
from tests.scenes.picture_file import PHONE, Stamp, jpeg
from tests.scenes.rear_screen import photograph_screen


@pytest.fixture
def marked() -> np.ndarray[tuple[int, ...], np.dtype[np.uint8]]:
    """A dark frame, taller than wide, with a bright corner at the top left."""
    pixels = np.full((60, 40, 3), 20, np.uint8)
    pixels[:16, :16] = 240
    return pixels


def test_stamp_is_readable(marked: np.ndarray[tuple[int, ...], np.dtype[np.uint8]]) -> None:
    """Shutter time, f-number, ISO, focal length, names and date come back as written."""
    stamp = Stamp(taken_at="2027:10:14 09:12:30")
    exif = Image.open(io.BytesIO(jpeg(marked, stamp))).getexif()
    details = exif.get_ifd(ExifTags.IFD.Exif)
    assert exif[ExifTags.Base.Model] == "Corvane F1"
    assert details[ExifTags.Base.ExposureTime] == 0.25
    assert details[ExifTags.Base.FNumber] == 11
    assert details[ExifTags.Base.ISOSpeedRatings] == 100
    assert details[ExifTags.Base.FocalLength] == 27
    assert details[ExifTags.Base.DateTimeOriginal] == "2027:10:14 09:12:30"


def test_a_clock_never_set_writes_no_date(
    marked: np.ndarray[tuple[int, ...], np.dtype[np.uint8]],
) -> None:
    """A frame rendered today is not old tomorrow."""
    exif = Image.open(io.BytesIO(jpeg(marked, Stamp()))).getexif()
    assert ExifTags.Base.DateTimeOriginal not in exif.get_ifd(ExifTags.IFD.Exif)
    assert ExifTags.Base.DateTime not in exif


@pytest.mark.parametrize("orientation", [1, 3, 6, 8])
def test_stored_turned_shown_upright(
    marked: np.ndarray[tuple[int, ...], np.dtype[np.uint8]], orientation: int
) -> None:
    """Whatever the orientation, a reader that obeys the tag sees the frame upright."""
    data = jpeg(marked, Stamp(orientation=orientation), quality=95)
    shown = np.asarray(ImageOps.exif_transpose(Image.open(io.BytesIO(data))))
    assert shown.shape == (60, 40, 3)
    assert shown[:12, :12].min() > 200
    assert shown[24:].max() < 60


def test_private_tags(marked: np.ndarray[tuple[int, ...], np.dtype[np.uint8]]) -> None:
    """Owner, serial number and position are there when asked for, for tests of what leaks."""
    stamp = Stamp(owner="Ida Quell", serial="SN-0042", position=(47, -11))
    exif = Image.open(io.BytesIO(jpeg(marked, stamp))).getexif()
    details = exif.get_ifd(ExifTags.IFD.Exif)
    assert details[ExifTags.Base.CameraOwnerName] == "Ida Quell"
    assert details[ExifTags.Base.BodySerialNumber] == "SN-0042"
    position = exif.get_ifd(ExifTags.IFD.GPSInfo)
    assert position[ExifTags.GPS.GPSLatitude][0] == 47
    assert position[ExifTags.GPS.GPSLongitudeRef] == "W"


def test_without_a_stamp_nothing_is_written(
    marked: np.ndarray[tuple[int, ...], np.dtype[np.uint8]],
) -> None:
    """A file as a chat's copy has no metadata."""
    assert len(Image.open(io.BytesIO(jpeg(marked))).getexif()) == 0


def test_screen_picture_shows_the_frame() -> None:
    """The screen lies in the picture, dimmer than the frame; the phone's stamp tells a phone."""
    shown = np.full((80, 120, 3), 250, np.uint8)
    picture = photograph_screen(shown, seed=3, size=(378, 504))
    assert picture.pixels.shape == (378, 504, 3)
    assert (picture.corners > 0).all()
    assert (picture.corners < (504, 378)).all()
    middle = picture.corners.mean(axis=0).astype(int)
    assert 120 < picture.pixels[middle[1], middle[0]].mean() < 200
    assert PHONE.focal_full_frame_mm / PHONE.focal_mm > 5  # a sensor far smaller than 36 x 24


def test_command_writes_the_walk(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """The command writes four JPEGs into a new folder and prints their names."""
    folder = tmp_path / "walk"
    assert main([str(folder), "--long-side", "300", "--seed", "2"]) == 0
    names = sorted(path.name for path in folder.iterdir())
    assert names == ["frame1.jpg", "frame2.jpg", "frame3.jpg", "screen.jpg"]
    printed = capsys.readouterr().out
    assert all(name in printed for name in names)
    with Image.open(folder / "frame1.jpg") as one, Image.open(folder / "frame3.jpg") as three:
        assert (one.size, three.size) == ((200, 300), (300, 200))


def test_what_is_under_test_never_imports_the_tests() -> None:
    """The packages stand without the scenes that test them."""
    root = Path(__file__).parent.parent.parent
    sources = [path for name in ("bot", "core") for path in (root / name).rglob("*.py")]
    assert sources
    importing = re.compile(r"^\s*(?:from|import) tests\b", re.MULTILINE)
    assert not [path.name for path in sources if importing.search(path.read_text("utf-8"))]
