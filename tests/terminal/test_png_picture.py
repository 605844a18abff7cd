"""The marked picture as a PNG."""

from __future__ import annotations

import io

import numpy as np
from PIL import Image

from bot.runtime.orders import Order
from bot.terminal.png_picture import as_png, check_and_draw_png
from tests.terminal.pictures import small_jpeg


def test_the_pixels_stay() -> None:
    """The PNG has the pixels of the JPEG that it was made of."""
    jpeg = small_jpeg()
    png = as_png(jpeg)
    assert png.startswith(b"\x89PNG")
    np.testing.assert_array_equal(Image.open(io.BytesIO(png)), Image.open(io.BytesIO(jpeg)))


def test_a_frame_is_measured_and_drawn() -> None:
    """Report and picture come as from any frame's process, the picture as a PNG."""
    answer, (picture,) = check_and_draw_png(small_jpeg(), Order())
    assert answer.report is not None
    assert picture.startswith(b"\x89PNG")
