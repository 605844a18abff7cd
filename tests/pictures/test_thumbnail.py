"""Thumbnails are small, keep their proportions, and open nothing but the bot's own kinds."""

from __future__ import annotations

import io

import numpy as np
import pytest
from PIL import Image

from bot.pictures.card import draw_card
from bot.pictures.thumbnail import size_of, thumbnail


def encoded(kind: str, width: int, height: int) -> bytes:
    file = io.BytesIO()
    Image.new("RGB", (width, height), (200, 30, 30)).save(file, kind)
    return file.getvalue()


@pytest.mark.parametrize(("kind", "mime"), [("PNG", "image/png"), ("JPEG", "image/jpeg")])
def test_size_of(kind: str, mime: str) -> None:
    """Width, height and media type come from the file."""
    assert size_of(encoded(kind, 120, 80)) == (120, 80, mime)


@pytest.mark.parametrize("kind", ["PNG", "JPEG"])
@pytest.mark.parametrize(
    ("size", "expected"),
    [
        ((1200, 1600), (600, 800)),
        ((1200, 600), (600, 300)),
        ((300, 1600), (150, 800)),
        ((200, 100), (200, 100)),  # never enlarged
        ((5000, 2), (600, 1)),
    ],
)
def test_fits_the_box(kind: str, size: tuple[int, int], expected: tuple[int, int]) -> None:
    """The copy is no wider and no taller than asked, in the same proportions and kind."""
    small = thumbnail(encoded(kind, *size))
    assert (small.width, small.height) == expected
    assert size_of(small.data) == (small.width, small.height, small.mime)
    pixels = np.asarray(Image.open(io.BytesIO(small.data)).convert("RGB"))
    assert np.abs(pixels.astype(int) - (200, 30, 30)).max() <= 6


def test_a_card_stays_grey_and_readable() -> None:
    """A grey PNG gives a grey PNG with black letters."""
    small = thumbnail(draw_card("Turn back 16:20", []))
    pixels = np.asarray(Image.open(io.BytesIO(small.data)))
    assert pixels.ndim == 2
    assert pixels.min() < 60


def test_metadata_stays_behind() -> None:
    """A comment and Exif in the picture are not in the copy."""
    file = io.BytesIO()
    exif = Image.Exif()
    exif[315] = "Ida Quell"  # Artist
    Image.new("RGB", (900, 900)).save(file, "JPEG", exif=exif, comment=b"mine")
    small = Image.open(io.BytesIO(thumbnail(file.getvalue()).data))
    assert len(small.getexif()) == 0
    assert "comment" not in small.info


@pytest.mark.parametrize(
    "data", [b"", b"not a picture", encoded("GIF", 4, 4), encoded("BMP", 4, 4)]
)
def test_other_files_are_refused(data: bytes) -> None:
    """Only PNG and JPEG are opened; all else raises."""
    with pytest.raises(ValueError, match="not a picture"):
        thumbnail(data)
    with pytest.raises(ValueError, match="not a picture"):
        size_of(data)


@pytest.mark.parametrize("longest", [(0, 10), (10, -1)])
def test_an_empty_box_is_refused(longest: tuple[int, int]) -> None:
    """A box without room is a mistake of the caller."""
    with pytest.raises(ValueError, match="longest"):
        thumbnail(encoded("PNG", 4, 4), longest)
