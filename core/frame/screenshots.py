"""Whether a picture is of a screen's page and no frame: bands of one colour from side to side."""

from __future__ import annotations

from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.report import FrameMetadata
from core.frame.working import WorkingCopy

#: Codes by which a row of one colour may vary: what JPEG and averaging leave of an even page.
#: Own rule.
_EVEN_CODES: Final = 1
#: Bands from which on it is a page. A frame has at most white sky over it and black under it, and
#: the bars of a player; a page has one between any two of its lines. Own rule.
_LEAST_BANDS: Final = 5
#: Rows of a band at least [px of the working copy]. Own rule: thinner ones are lines of a table.
_BAND_ROWS: Final = 3
#: Between bands lie words and pictures: so much of a middling row there is off the row's colour by
#: so many codes. Stars and hot pixels before black are less. Own rules.
_WRITTEN_PART: Final = 0.03
_WRITTEN_CODES: Final = 6


def is_screenshot(work: WorkingCopy, metadata: FrameMetadata) -> bool:
    """Whether a picture without a camera's settings has the bands of a page.

    Args:
        work: the working copy.
        metadata: of the file; what states an exposure was taken by a camera.
    """
    settings, rows = metadata.settings, work.pixels
    if settings.shutter_s is not None or settings.f_number is not None:
        return False
    even = (rows.max(axis=1) - rows.min(axis=1)).max(axis=1) <= _EVEN_CODES
    return _bands(even) >= _LEAST_BANDS and _is_written(rows[~even])


def _bands(even: NDArray[np.bool_]) -> int:
    """Runs of even rows that are long enough; `even` has shape (h,)."""
    steps = np.diff(np.concatenate([[0], even.astype(np.int8), [0]]))
    lengths = np.flatnonzero(steps == -1) - np.flatnonzero(steps == 1)
    return int(np.count_nonzero(lengths >= _BAND_ROWS))


def _is_written(rows: NDArray[np.uint8]) -> bool:
    """Whether rows between bands hold more than points; shape (n, w, 3), n at least 1."""
    colours = np.median(rows, axis=1, keepdims=True)
    off = (np.abs(rows - colours) > _WRITTEN_CODES).any(axis=2).mean(axis=1)
    return float(np.median(off)) >= _WRITTEN_PART
