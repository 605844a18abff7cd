"""Which pixels are clipped: by their own code, and in a JPEG by the codes around them too."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

#: Codes from which a pixel counts as clipped in any channel, in files without loss and in copies
#: that were made smaller. Source: precision and recall against masks from linear data on six
#: pushed photographs, own measurement.
_LEVEL: Final = 252
_LEVEL_RESIZED: Final = 250

# A JPEG spreads the codes of what is clipped over some codes below the end, and lifts some that
# are not clipped to it. So codes around a pixel decide too. Source: precision and recall at
# quality 90 on ten pushed photographs and four rendered falls through three tone curves, other
# ones than the figures are printed for: own measurement.
#: A code so near the end counts when enough codes of a square around it are at the end.
_NEAR: Final = 15
_AROUND_PX: Final = 5
_AT_END: Final = 11
#: A code at the end counts unless hardly any of the square is at the end and much of it near: so
#: a bright surface with grain looks that is not clipped.
_FEW_AT_END: Final = 7
_MANY_NEAR: Final = 15
#: Strong colour is clipped in one channel, which a JPEG stores with half the detail: its codes
#: spread further, so that fewer codes of a larger square suffice. How far below the end the
#: darkest channel lies there, and the numbers as above.
_COLOURED: Final = 80
_COLOURED_NEAR: Final = 25
_COLOURED_AROUND_PX: Final = 9
_COLOURED_AT_END: Final = 23
#: Pixels to each side of a pixel that decide on it.
MARGIN_PX: Final = _COLOURED_AROUND_PX // 2
#: In a clipped pixel of a JPEG a channel counts as clipped from here on (same measurement).
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


@dataclass(frozen=True)
class Ends:
    """Codes that decide: clipped from `end` on, and from `near` on among enough of the end."""

    end: int
    near: int

    @classmethod
    def at(cls, level: int) -> Ends:
        """One level for all, whatever lies around."""
        return cls(level, level)

    def mask(self, pixels: NDArray[np.uint8], brightest: NDArray[np.uint8]) -> NDArray[np.uint8]:
        """255 where a pixel is clipped in some channel, else 0.

        Args:
            pixels: shape (h, w, 3); what lies beyond its borders counts as its mirror image.
            brightest: the largest code of each pixel, shape (h, w).

        Returns:
            Shape (h, w).
        """
        at_end = _at_least(brightest, self.end)
        if self.near == self.end:
            return at_end
        near = _at_least(brightest, self.near)
        if cv2.countNonZero(near) < _AT_END:
            return at_end
        around = _mean(at_end, _AROUND_PX)
        grain = cv2.subtract(
            _at_least(_mean(near, _AROUND_PX), _mean_of(_MANY_NEAR, _AROUND_PX)),
            _at_least(around, _mean_of(_FEW_AT_END, _AROUND_PX)),
        )
        among = _at_least(around, _mean_of(_AT_END, _AROUND_PX))
        found = cv2.bitwise_or(cv2.subtract(at_end, grain), cv2.bitwise_and(among, near))
        if cv2.countNonZero(at_end) >= _COLOURED_AT_END:
            found = cv2.bitwise_or(found, self._coloured(pixels, brightest, at_end))
        return np.asarray(found, np.uint8)

    def _coloured(
        self,
        pixels: NDArray[np.uint8],
        brightest: NDArray[np.uint8],
        at_end: NDArray[np.uint8],
    ) -> NDArray[np.uint8]:
        """What is clipped in strong colour, by the rule for it; arguments as in `mask`."""
        below = self.end - _COLOURED - 1
        low = cv2.threshold(pixels, below, _WHITE, cv2.THRESH_BINARY_INV)[1]
        some_low = np.asarray(cv2.cvtColor(low, cv2.COLOR_RGB2GRAY), np.uint8)  # a mean of channels
        near = _at_least(brightest, self.end - _COLOURED_NEAR)
        close = np.asarray(cv2.bitwise_and(_at_least(some_low, 1), near), np.uint8)
        if cv2.countNonZero(close) == 0:
            return close
        around = _mean(at_end, _COLOURED_AROUND_PX)
        among = _at_least(around, _mean_of(_COLOURED_AT_END, _COLOURED_AROUND_PX))
        return np.asarray(cv2.bitwise_and(close, among), np.uint8)

    def by_channel(self, codes: NDArray[np.uint8], clipped: NDArray[np.uint8]) -> NDArray[np.uint8]:
        """255 where a channel is clipped, else 0.

        Args:
            codes: shape (h, w, 3).
            clipped: what `mask` gives for them, shape (h, w).

        Returns:
            Shape (h, w, 3).
        """
        least = self.end if self.near == self.end else self.end - _CHANNEL_NEAR
        each = cv2.cvtColor(clipped, cv2.COLOR_GRAY2RGB)
        return np.asarray(cv2.bitwise_and(_at_least(codes, least), each), np.uint8)


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


def _mean(mask: NDArray[np.uint8], side_px: int) -> NDArray[np.uint8]:
    """Mean of a mask in a square around each pixel."""
    return np.asarray(cv2.blur(mask, (side_px, side_px)), np.uint8)


def _mean_of(count: int, side_px: int) -> int:
    """Mean of a mask of which so many in a square are 255, rounded as the blur rounds."""
    return round(_WHITE * count / side_px**2)
