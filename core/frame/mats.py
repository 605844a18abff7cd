"""An even mat around a picture, and even gaps between several in one, told by straight edges."""

from __future__ import annotations

from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.limits import MIN_SIDE_PX

Pixels = NDArray[np.uint8]
#: From and to, in rows and in columns [px]; the last ones are left out.
Window = tuple[slice, slice]

#: Codes by which a mat may vary: what JPEG leaves of an even colour. Own rule.
_EVEN_CODES: Final = 3
#: Codes off the mat's colour from which on a pixel is of the picture, and the part of a row that
#: has to be, just inside the edge: lost sky and black rock end raggedly, a mat ends all along. Own
#: rules.
_OFF_CODES: Final = 8
_OFF_PART: Final = 0.6
#: A word or a line on a mat leaves so much of its rows in its colour. Own rule.
_MAT_PART: Final = 0.6
#: The same at a gap: a white sky may lie beside it, but nothing else runs from side to side.
_GAP_OFF_PART: Final = 0.4
#: How far behind the mat the picture has to begin [px]: a block of a JPEG with halved colours.
_EDGE_PX: Final = 16
#: The last rows of a mat, which a JPEG or a smaller copy has mixed with the picture: so near to its
#: colour for the most part, and so many more. Own rules.
_RIM_CODES: Final = 48
_RIM_PX: Final = 2
#: A mat is so wide at least, and so much of a side at most. Own rules.
_LEAST_PART: Final = 0.003
_MOST_PART: Final = 0.4
#: A gap between pictures leaves so much of the side to each. Own rule.
_LEAST_PICTURE: Final = 0.15
#: Of a row each fourth pixel is looked at for a mat, about so many for a gap at first. Own rules.
_STRIDE: Final = 4
_LOOKED_AT: Final = 64
#: With more even bands than this it is fog, or a page. Own rule.
_MOST_BANDS: Final = 12


def picture_inside(pixels: Pixels) -> Window | None:
    """Where the picture lies inside an even mat, or between bars; None where there is none.

    Bars are two opposite ones at least: what is lost at one side is sky, or night.

    Args:
        pixels: upright, shape (H, W, 3).
    """
    rows, columns = _between(pixels), _between(pixels.swapaxes(0, 1))
    if rows is None and columns is None:
        return None
    if columns is None:
        columns = _between(pixels[rows].swapaxes(0, 1))
    elif rows is None:
        rows = _between(pixels[:, columns])
    window = rows or slice(0, pixels.shape[0]), columns or slice(0, pixels.shape[1])
    return window if min(side.stop - side.start for side in window) >= MIN_SIDE_PX else None


def _between(pixels: Pixels) -> slice | None:
    """Rows between a mat above and one below; None where one of them lacks."""
    top, bottom = _depth(pixels, _OFF_PART), _depth(pixels[::-1], _OFF_PART)
    return slice(top, len(pixels) - bottom) if top and bottom else None


def _depth(pixels: Pixels, off_part: float) -> int:
    """Rows of the mat at the top; 0 without one that ends along a straight edge."""
    height, colour = len(pixels), np.median(pixels[0], axis=0).astype(np.int16)
    if np.abs(pixels[0] - colour).max() > _EVEN_CODES:
        return 0
    thin = pixels[: int(_MOST_PART * height) + _EDGE_PX, ::_STRIDE]
    away = np.abs(thin - colour).max(axis=2)
    part = (away <= _EVEN_CODES).mean(axis=1)
    ends = np.flatnonzero(part[:-_EDGE_PX] < _MAT_PART)
    if not ends.size:
        return 0
    depth = 1 + int(np.flatnonzero(part[: ends[0]] == 1)[-1])
    behind = away[depth : depth + _EDGE_PX]
    if depth < max(2, _LEAST_PART * height) or (behind > _OFF_CODES).any(axis=0).mean() < off_part:
        return 0
    rim = (behind <= _RIM_CODES).mean(axis=1) >= _MAT_PART
    return depth + (int(np.argmin(rim)) if not rim.all() else 0) + _RIM_PX


def is_several(pixels: Pixels) -> bool:
    """Whether an even gap with straight edges parts the whole picture: several in one.

    Args:
        pixels: upright, without a mat, shape (H, W, 3).
    """
    return _is_parted(pixels) or _is_parted(pixels.swapaxes(0, 1))


def _is_parted(pixels: Pixels) -> bool:
    """Whether a gap runs from side to side."""
    height = len(pixels)
    thin = pixels[:, :: max(1, pixels.shape[1] // _LOOKED_AT)]
    even = (thin.max(axis=1) - thin.min(axis=1)).max(axis=1) <= 2 * _EVEN_CODES
    steps = np.diff(np.concatenate([[0], even.astype(np.int8), [0]]))
    edge = _LEAST_PICTURE * height
    if np.count_nonzero(steps == 1) > _MOST_BANDS:
        return False
    return any(
        edge <= start and end <= height - edge and _is_gap(pixels, (start + end) // 2)
        for start, end in zip(
            np.flatnonzero(steps == 1).tolist(), np.flatnonzero(steps == -1).tolist(), strict=True
        )
    )


def _is_gap(pixels: Pixels, row: int) -> bool:
    """Whether straight edges lie above and below a row in the middle of what is even."""
    above, below = pixels[row::-1], pixels[row:]
    return bool(_depth(above, _GAP_OFF_PART)) and bool(_depth(below, _GAP_OFF_PART))
