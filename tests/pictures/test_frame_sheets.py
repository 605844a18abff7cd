"""Sheets of several frames: they fit a phone, say what they show, and carry no metadata."""

from __future__ import annotations

import io

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image

from bot.pictures.frame_sheets import LARGEST_BYTES, WIDTH_PX, draw_sheet, draw_sheets
from core.frame.crops import Piece, Sheet


def pixels(width: int, height: int, seed: int = 1) -> NDArray[np.uint8]:
    """Noise: the largest files that there are."""
    return np.random.default_rng(seed).integers(0, 256, (height, width, 3), np.uint8)


def opened(data: bytes) -> Image.Image:
    """The picture in a JPEG."""
    picture = Image.open(io.BytesIO(data))
    assert picture.format == "JPEG"
    return picture


@pytest.mark.parametrize("number", [1, 2, 3, 4, 6, 7, 12])
@pytest.mark.parametrize("shows", ["water", "whole", "average", "illustration"])
@pytest.mark.parametrize("size", [(300, 400), (400, 300), (40, 60)])
def test_any_number_fits(number: int, shows: str, size: tuple[int, int]) -> None:
    """One to twelve pieces of any shape make one small JPEG, no wider than a phone's screen."""
    pieces = tuple(
        Piece(np.full((size[1], size[0], 3), 90, np.uint8), place, 0.25) for place in range(number)
    )
    data = draw_sheet(Sheet(shows, pieces))
    picture = opened(data)
    assert picture.width == WIDTH_PX
    assert picture.height <= 2400
    assert len(data) < LARGEST_BYTES


def test_noise_is_made_to_fit() -> None:
    """Even pictures that hardly compress stay under the limit, by quality and then by size."""
    pieces = tuple(Piece(pixels(530, 1500, place), place, 0.25) for place in range(2))
    data = draw_sheet(Sheet("water", pieces))
    assert len(data) < LARGEST_BYTES
    assert opened(data).width <= WIDTH_PX


def test_pixels_stand_as_they_are() -> None:
    """A crop that fits is shown pixel by pixel: neither scaled nor blurred."""
    flat = np.full((300, 528, 3), 60, np.uint8)
    flat[100:200:2, 100:400] = 200
    picture = np.asarray(opened(draw_sheet(Sheet("water", (Piece(flat, 0), Piece(flat, 1))))))
    rows = picture[:, 250, 0].astype(int)
    lines = np.flatnonzero(rows > 150)
    assert np.diff(lines[(lines > 120)]).min() == 2
    assert len(lines) >= 50


def test_no_metadata() -> None:
    """The file has no Exif, no comment, no profile."""
    picture = opened(draw_sheet(Sheet("whole", (Piece(pixels(60, 60), 0, 0.25),))))
    assert set(picture.info) <= {"jfif", "jfif_version", "jfif_unit", "jfif_density"}
    assert not picture.getexif()


def test_words_change_the_picture() -> None:
    """Letters, times, gains and the word for an illustration are in the picture itself."""
    plain = np.full((400, 500, 3), 90, np.uint8)
    drawn = {
        name: draw_sheet(sheet)
        for name, sheet in {
            "a": Sheet("water", (Piece(plain, 0, 0.25),)),
            "b": Sheet("water", (Piece(plain, 1, 0.25),)),
            "time": Sheet("water", (Piece(plain, 0, 0.5),)),
            "unknown": Sheet("water", (Piece(plain, 0),)),
            "gain": Sheet("water", (Piece(plain, 0, 0.25, 1.0),)),
            "average": Sheet("water", (Piece(plain, None, 0.25),)),
            "average of unknown": Sheet("water", (Piece(plain, None),)),
            "illustration": Sheet("illustration", (Piece(plain, None, 0.25),)),
        }.items()
    }
    assert len(set(drawn.values())) == len(drawn)
    assert opened(drawn["illustration"]).height > opened(drawn["a"]).height


def test_sheets_keep_their_names() -> None:
    """Each picture comes with what it shows, in order."""
    piece = Piece(pixels(80, 80), 0, 0.25)
    drawn = draw_sheets([Sheet("water", (piece,)), Sheet("whole", (piece,))])
    assert [shows for shows, _ in drawn] == ["water", "whole"]


def test_empty_sheet() -> None:
    """A sheet without pieces is a mistake of the caller."""
    with pytest.raises(ValueError, match="without pieces"):
        draw_sheet(Sheet("water", ()))
