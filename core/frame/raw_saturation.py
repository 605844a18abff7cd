"""At which code the photosites of a sensor saturate, found from the data."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

#: Saturated photosites lie within one of these parts of the range: between single codes of some
#: cameras and the noise of others. A real raw that states 4095 ends in a pile whose middle is
#: 3817 with a spread of 12 codes; own rule. Narrow ones find a small pile on a bright slope.
_PILE_WIDTHS: Final = (0.001, 0.0025, 0.005, 0.01, 0.02)
#: So much more often than the codes below it must a pile be hit. The tail of a scene falls off;
#: the real raw above shows a ratio of 50. Own rule.
_PILE_OVER_BELOW: Final = 3.0
#: Photosites that make a pile at least: single hot ones do not. Own rule.
_PILE_SITES: Final = 24
#: Share of the photosites of a colour above the pile that do not count: hot ones. Own rule.
_HOT: Final = 1e-5
#: Spreads below the middle of a pile from which on a photosite counts as saturated: one in 740
#: is missed (normal distribution), and few that are only nearly saturated count in. Own rule.
_SPREADS: Final = 3.0
#: A pile counts when it lies as near the stated white level as this (real files state up to 8 %
#: too much): an evenly lit white surface makes a pile too, at any height. Own rule.
_NEAR_STATED: Final = 0.85
#: Where another colour ends near the stated level, this one may end lower: some files hold
#: colours that were scaled before they were written. Own rule.
_SCALED: Final = 0.7
#: The highest numbers of 10 to 16 bits, which converters of cameras have.
_WORDS: Final = frozenset(2**bits - 1 for bits in range(10, 17))


@dataclass(frozen=True)
class Saturation:
    """Codes of one colour: black, the code at which it saturates, and whether the data show it.

    A photosite counts as saturated from `clipped_from` on, which lies a little below `code` where
    saturation is spread by noise.
    """

    black: float
    code: float
    clipped_from: float
    found: bool


@dataclass(frozen=True)
class _Pile:
    clipped_from: float
    middle: float


def find_saturation(
    counts: Mapping[str, NDArray[np.int64]], blacks: Mapping[str, float], stated_white: float
) -> dict[str, Saturation]:
    """The saturation of each colour.

    Sensors stop below what their files state, or state nonsense; saturated photosites pile up
    where they stop. A colour without a pile takes the highest of the others', and without any
    the stated white level counts, when the data stay below it, or else the whole word.

    Args:
        counts: how often each code occurs, by colour, shape (codes,); none is empty.
        blacks: black level by colour [code].
        stated_white: white level of the file [code].
    """
    piles = {
        colour: pile
        for colour, found in counts.items()
        if (pile := _pile(found, blacks[colour])) is not None
    }
    highest = max(int(np.flatnonzero(found)[-1]) for found in counts.values())
    heights = {
        colour: 1.0
        if _fills_a_word(pile)
        else (pile.middle - blacks[colour]) / max(stated_white - blacks[colour], 1.0)
        for colour, pile in piles.items()
    }
    if stated_white < _NEAR_STATED * highest:  # nonsense is stated
        heights = dict.fromkeys(piles, 1.0)
    anywhere = any(height >= _NEAR_STATED for height in heights.values())
    sure = {
        colour: piles[colour]
        for colour, height in heights.items()
        if anywhere and height >= _SCALED
    }
    fallback = _fallback(sure, stated_white, highest)
    return {
        colour: (
            Saturation(black, sure[colour].middle, sure[colour].clipped_from, found=True)
            if colour in sure
            else Saturation(black, fallback, fallback, found=False)
        )
        for colour, black in blacks.items()
    }


def _pile(counts: NDArray[np.int64], black: float) -> _Pile | None:
    """Where the codes of a colour pile up at their top; None when they fall off."""
    total = int(counts.sum())
    from_top = np.cumsum(counts[::-1])[::-1]
    hot = min(_PILE_SITES // 2, int(_HOT * total))
    top = int(np.flatnonzero(from_top > hot)[-1])
    widths = (max(2, int(part * (top - black))) for part in _PILE_WIDTHS)
    found = [pile for width in widths if (pile := _pile_of(counts, top, width)) is not None]
    return found[-1] if found else None


def _pile_of(counts: NDArray[np.int64], top: int, width: int) -> _Pile | None:
    """The pile of so many codes at the top; None where they are not hit more than those below."""
    first = top - width + 1
    if first - 2 * width < 0:
        return None
    upper = counts[first : top + 1]
    pile, before = int(upper.sum()), int(counts[first - 2 * width : first].sum()) / 2
    if pile < max(_PILE_SITES, _PILE_OVER_BELOW * before):
        return None
    middle = first + float(np.searchsorted(np.cumsum(upper), pile / 2))
    above = np.arange(int(middle), top + 1)
    spread = math.sqrt(float(np.average((above - middle) ** 2, weights=counts[above])))
    return _Pile(max(middle - _SPREADS * spread, middle - width), middle)


def _fills_a_word(pile: _Pile) -> bool:
    """Whether a pile stands at the highest number of so many bits, whatever is stated."""
    return round(pile.middle) in _WORDS and pile.middle - pile.clipped_from < 1


def _fallback(sure: Mapping[str, _Pile], stated_white: float, highest: int) -> float:
    if sure:
        return max(pile.middle for pile in sure.values())
    if stated_white >= highest:
        return stated_white
    return float(2 ** int(highest).bit_length() - 1)
