"""The marked picture as a PNG, made in the frame's own process."""

from __future__ import annotations

import io

from PIL import Image

from bot.runtime.frame_child import Answer, check_and_draw


def check_and_draw_png(
    data: bytes, camera_pixels: tuple[int, int] | None, max_pixels: int
) -> tuple[Answer, bytes]:
    """Measure a file and draw what was found, as a PNG; empty when nothing was drawn."""
    answer, picture = check_and_draw(data, camera_pixels, max_pixels)
    return answer, as_png(picture) if picture else picture


def as_png(picture: bytes) -> bytes:
    """The same pixels as a PNG without metadata."""
    out = io.BytesIO()
    with Image.open(io.BytesIO(picture)) as opened:
        opened.convert("RGB").save(out, "PNG")
    return out.getvalue()
