"""Which pixels are clipped: by their own code, and in a JPEG by the codes around them too."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

#: Codes from which a pixel counts as clipped in any channel, in files without loss and in copies
#: that were made smaller. Source: precision and recall against masks from linear data on six
#: pushed photographs, own measurement.
_LEVEL: Final = 252
_LEVEL_RESIZED: Final = 250

#: In a clipped pixel of a JPEG a channel counts as clipped from here on. Source: precision and
#: recall at quality 90 on ten pushed photographs and four rendered falls: own measurement.
_CHANNEL_NEAR: Final = 5

# A file whose whites were capped below the end of the scale by a camera or an editor: its codes
# pile up at the cap and hardly any lie above it. Own rule.
_LOWEST_CAP: Final = 235
_PILE_HALF_WIDTH: Final = 2
_PILE_SHARE: Final = 5e-4
_PILE_OVER_BELOW: Final = 3.0
_PEAK_OF_PILE: Final = 0.5  # grain would spread a bright surface that is not capped
_ABOVE_OVER_PILE: Final = 0.12  # JPEG rings a little above sharp edges

_WHITE: Final = 255


# A JPEG of quality 90 moves codes by some steps, so that what is clipped spreads over codes below
# the end and some light below saturation reaches it. The flatter a tone curve runs into white, the
# more light there is within those steps: ten codes are 1/7 of a stop on the sRGB curve, 3/10 on one
# with a shoulder and contrast. What tells the two apart is what lies around: a bright surface that
# is not clipped has codes near the end, a clipped one has them at the end, and dark codes speak for
# neither. So the codes of a square have marks, and a pixel is clipped when their mean is above what
# its own code asks: at the end, next to it, and so much more for each code further down. Source:
# logistic regressions on the codes of squares, then numbers at which the least of precision and
# recall was greatest, over three tone curves, 45 of the photographs that kinds are trained on,
# pushed by 0.8 to 2 stops, and eight rendered falls; what coloured codes ask was lowered by 4 then,
# which finds as much as there is in all 72 photographs together: own measurement. In these the
# least precision or recall is .951; a count of codes at the end alone gave .938.
_AROUND_PX: Final = 5
#: Marks are 255 at the end and 0 near it, down to so many codes; this is the mark of darker ones.
_DARK: Final = 31
_DARK_MARK: Final = 56
_ASKED: Final = (62, 112, 9)
#: A code so near the end counts when enough around it is at the end.
_NEAR: Final = 15
#: What has colour is clipped in some channels only, which a JPEG stores with half the detail: its
#: codes spread further. There a larger square counts, with marks for what is dark and for what is
#: next to the end, and, for this part, how bright the small one is: from 0 to 255 over the last
#: codes.
_COLOURED_NEAR: Final = 25
_COLOURED_AROUND_PX: Final = 9
_COLOURED_DARK_MARK: Final = 160
_COLOURED_NEXT_MARK: Final = 70
_BRIGHT_PART: Final = 0.25  # exact in binary, so that a turned frame rounds alike
_BRIGHT_CODES: Final = 30
#: How far the largest code of a pixel is above its luminance where it has some colour, and strong
#: colour, and what codes ask there.
_COLOURED_ASKED: Final = ((4, (98, 134, 4)), (20, (102, 118, 2)))
#: Pixels to each side of a pixel that decide on it.
MARGIN_PX: Final = _COLOURED_AROUND_PX // 2

Table = NDArray[np.uint8]


@dataclass(frozen=True)
class Ends:
    """Codes that decide: clipped from `end` on; where `near` is lower, by what lies around."""

    end: int
    near: int

    @classmethod
    def at(cls, level: int) -> Ends:
        """One level for all, whatever lies around."""
        return cls(level, level)

    @property
    def looks_around(self) -> bool:
        """Whether what lies around a pixel counts too."""
        return self.near < self.end

    def mask(self, pixels: NDArray[np.uint8], brightest: NDArray[np.uint8]) -> NDArray[np.uint8]:
        """255 where a pixel is clipped in some channel, else 0.

        Args:
            pixels: shape (h, w, 3); what lies beyond its borders counts as its mirror image.
            brightest: the largest code of each pixel, shape (h, w).

        Returns:
            Shape (h, w).
        """
        if not self.looks_around:
            return _at_least(brightest, self.end)
        tables = _tables(self.end)
        found = _above(_mean(brightest, tables.marks, _AROUND_PX), brightest, tables.asked)
        colour = self._colour(pixels, brightest)
        if cv2.countNonZero(_at_least(colour, _COLOURED_ASKED[0][0])):
            self._mark_coloured(found, brightest, colour)
        return found

    def _colour(self, pixels: NDArray[np.uint8], brightest: NDArray[np.uint8]) -> NDArray[np.uint8]:
        """How far codes near the end are above the pixel's luminance; arguments as in `mask`."""
        above = cv2.subtract(brightest, cv2.cvtColor(pixels, cv2.COLOR_RGB2GRAY))
        near = _at_least(brightest, self.end - _COLOURED_NEAR)
        return np.asarray(cv2.bitwise_and(above, near), np.uint8)

    def _mark_coloured(
        self, found: NDArray[np.uint8], brightest: NDArray[np.uint8], colour: NDArray[np.uint8]
    ) -> None:
        """Decide anew, in the mask `found`, where there is colour and the end is near."""
        tables = _tables(self.end)
        bright = _mean(brightest, tables.bright, _AROUND_PX)
        marks = _mean(brightest, tables.coloured_marks, _COLOURED_AROUND_PX)
        around = cv2.addWeighted(bright, _BRIGHT_PART, marks, 1 - _BRIGHT_PART, 0)
        reach = np.ones((_COLOURED_AROUND_PX, _COLOURED_AROUND_PX), np.uint8)
        at_end = cv2.dilate(_at_least(brightest, self.end), reach)
        for (least, _), asked in zip(_COLOURED_ASKED, tables.coloured_asked, strict=True):
            there = cv2.bitwise_and(_at_least(colour, least), at_end)
            cv2.copyTo(_above(np.asarray(around, np.uint8), brightest, asked), there, found)

    def by_channel(self, codes: NDArray[np.uint8], clipped: NDArray[np.uint8]) -> NDArray[np.uint8]:
        """255 where a channel is clipped, else 0.

        Args:
            codes: shape (h, w, 3).
            clipped: what `mask` gives for them, shape (h, w).

        Returns:
            Shape (h, w, 3).
        """
        if not self.looks_around:
            return _at_least(codes, self.end)
        each = cv2.cvtColor(clipped, cv2.COLOR_GRAY2RGB)
        near = _at_least(codes, self.end - _CHANNEL_NEAR)
        return np.asarray(cv2.bitwise_and(near, each), np.uint8)


def clipping_ends(
    brightest_counts: NDArray[np.int64], *, resized: bool, jpeg_quality: int | None
) -> Ends:
    """Codes that decide, by the kind of file and by where its codes pile up.

    Args:
        brightest_counts: counts of the largest code of each pixel, shape (256,).
        resized: the picture is smaller than the camera's.
        jpeg_quality: 1 to 100, None for files without loss.
    """
    cap = _cap(brightest_counts)
    top = _WHITE if cap is None else cap
    if jpeg_quality is not None:
        return Ends(top, top - _NEAR)
    level = _LEVEL_RESIZED if resized else _LEVEL
    return Ends.at(top - (_WHITE - level))


def _cap(counts: NDArray[np.int64]) -> int | None:
    """Code at which whites were capped below the usual levels, None when they were not."""
    peak = _LOWEST_CAP + int(np.argmax(counts[_LOWEST_CAP:_LEVEL_RESIZED]))
    first, end = peak - _PILE_HALF_WIDTH, peak + _PILE_HALF_WIDTH + 1
    pile, above = counts[first:end].sum(), counts[end:].sum()
    width = end - first
    below = counts[first - 2 * width : first].sum() / 2
    capped = (
        pile >= _PILE_SHARE * counts.sum()
        and above <= _ABOVE_OVER_PILE * pile
        and pile >= _PILE_OVER_BELOW * below
        and counts[peak] >= _PEAK_OF_PILE * pile
    )
    return peak if capped else None


def _at_least(codes: NDArray[np.uint8], level: int) -> NDArray[np.uint8]:
    """255 where a code reaches the level, else 0; same shape."""
    mask = cv2.threshold(codes, level - 1, _WHITE, cv2.THRESH_BINARY)[1]
    return mask.astype(np.uint8, copy=False)


def _mean(codes: NDArray[np.uint8], table: Table, side_px: int) -> NDArray[np.uint8]:
    """Mean of what a table says of the codes, in a square around each pixel."""
    return np.asarray(cv2.blur(cv2.LUT(codes, table), (side_px, side_px)), np.uint8)


def _above(around: NDArray[np.uint8], codes: NDArray[np.uint8], asked: Table) -> NDArray[np.uint8]:
    """255 where what lies around a pixel is above what its code asks, else 0."""
    return np.asarray(cv2.compare(around, cv2.LUT(codes, asked), cv2.CMP_GT), np.uint8)


@dataclass(frozen=True)
class _Tables:
    """For each code its marks, and what it asks, shape (256,) each."""

    marks: Table
    asked: Table
    bright: Table
    coloured_marks: Table
    coloured_asked: tuple[Table, ...]


@lru_cache(maxsize=16)
def _tables(end: int) -> _Tables:
    down = np.maximum(end - np.arange(_WHITE + 1), 0)
    return _Tables(
        _marks(down, 0, _DARK_MARK),
        _asked(down, _ASKED, _NEAR),
        np.rint(_WHITE * np.clip(1 - down / _BRIGHT_CODES, 0, 1)).astype(np.uint8),
        _marks(down, _COLOURED_NEXT_MARK, _COLOURED_DARK_MARK),
        tuple(_asked(down, asked, _COLOURED_NEAR) for _, asked in _COLOURED_ASKED),
    )


def _marks(down: NDArray[np.int64], next_to_end: int, dark: int) -> Table:
    """Marks of codes that lie so far below the end."""
    chosen = np.select([down == 0, down == 1, down >= _DARK], [_WHITE, next_to_end, dark], 0)
    return chosen.astype(np.uint8)


def _asked(down: NDArray[np.int64], asked: tuple[int, int, int], reach: int) -> Table:
    """What codes so far below the end ask; 255, which can't be met, beyond the reach."""
    at_end, next_to_it, more = asked
    below = np.where(down > reach, _WHITE, next_to_it + more * (down - 1))
    return np.where(down == 0, at_end, np.minimum(below, _WHITE)).astype(np.uint8)
