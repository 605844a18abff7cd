"""How large a file and its picture may be, and how far a large one is scaled down."""

from __future__ import annotations

import math
from typing import Final

from core.errors import FrameFault, UnreadableFrameError

#: Largest file that is looked at [bytes]: twice what a homeserver lets through by default
#: (50 MiB, from memory), and enough for the JPEG of a 200-megapixel phone. Own rule.
MAX_BYTES: Final = 100 * 2**20

#: Largest picture [pixels]: a 200-megapixel phone (16,320 × 12,240) with 10 % to spare. Own rule.
MAX_PIXELS: Final = 220_000_000

#: Largest PNG or TIFF [pixels]: its reader needs 7 bytes a pixel and cannot decode at a smaller
#: scale; 110 million is the largest medium-format frame with some to spare. Own rule.
MAX_PIXELS_UNSCALED: Final = 110_000_000

#: Above this a picture is measured on a smaller copy [pixels]; 61 million is the largest
#: 36x24 mm camera (from memory). Own rule.
FULL_SCALE_PIXELS: Final = 64_000_000

#: A raw's embedded picture is only compared, on copies of about 1600 px: above this it is decoded
#: at a smaller scale [pixels]. Own rule.
PREVIEW_PIXELS: Final = 6_000_000

#: Shortest side that can be measured [px]: below, a patch of half a percent of the long side,
#: the largest that is tolerable, is smaller than a pixel. Own rule.
MIN_SIDE_PX: Final = 100


def check_size(size: tuple[int, int], max_pixels: int) -> None:
    """Refuse a picture that is too large or too small.

    Args:
        size: width and height [px].
        max_pixels: largest picture that is decoded, width times height.

    Raises:
        UnreadableFrameError: TOO_MANY_PIXELS (`pixels`, `limit`) or TOO_SMALL.
    """
    width, height = size
    if width * height > max_pixels:
        raise UnreadableFrameError(
            FrameFault.TOO_MANY_PIXELS, pixels=width * height, limit=max_pixels
        )
    check_sides(size)


def check_sides(size: tuple[int, int]) -> None:
    """Refuse a picture with a side that is too short to be measured.

    Args:
        size: width and height [px].

    Raises:
        UnreadableFrameError: TOO_SMALL (`width`, `height`, `limit`).
    """
    width, height = size
    if min(size) < MIN_SIDE_PX:
        raise UnreadableFrameError(
            FrameFault.TOO_SMALL, width=width, height=height, limit=MIN_SIDE_PX
        )


def halvings_for(size: tuple[int, int], at_most: int | None = None) -> int:
    """How often to halve both sides [px] to stay within so many pixels; `FULL_SCALE_PIXELS`."""
    over = size[0] * size[1] / (at_most or FULL_SCALE_PIXELS)
    return 0 if over <= 1 else math.ceil(math.log2(over) / 2)
