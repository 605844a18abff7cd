"""Small pictures for the tests of the terminal and of the trial."""

from __future__ import annotations

import io

import numpy as np
from PIL import Image


def small_jpeg(width: int = 300, height: int = 200) -> bytes:
    """A JPEG of grey grain with a white patch in its middle."""
    random = np.random.default_rng(1)
    pixels = random.integers(60, 180, (height, width, 3), dtype=np.uint8)
    pixels[height // 3 : height // 2, width // 3 : width // 2] = 255
    out = io.BytesIO()
    Image.fromarray(pixels).save(out, "JPEG", quality=92)
    return out.getvalue()
