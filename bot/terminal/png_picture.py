"""The marked picture as a PNG, made in the frame's own process."""

from __future__ import annotations

import io

from PIL import Image

from bot.runtime.frame_child import Found, check_and_draw
from bot.runtime.orders import Order


def check_and_draw_png(data: bytes, order: Order) -> Found:
    """Measure a file and draw what was found, as a PNG."""
    answer, pictures = check_and_draw(data, order)
    return answer, tuple(as_png(picture) for picture in pictures)


def as_png(picture: bytes) -> bytes:
    """The same pixels as a PNG without metadata."""
    out = io.BytesIO()
    with Image.open(io.BytesIO(picture)) as opened:
        opened.convert("RGB").save(out, "PNG")
    return out.getvalue()
