"""At which code the photosites of a sensor saturate, found from the data."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

#: Saturated photosites spread over this part of the range at most: between single codes of some
#: cameras and the noise of others. Measured on a real raw whose lamps end between 3797 and 3868
#: of a stated 4095 (codes above black), which is 2 %; own rule.
_SPREAD: Final = 0.02
#: So much more often than the codes below it must a pile be hit. The tail of a scene falls off;
#: the real raw above shows a ratio of 50. Own rule.
_PILE_OVER_BELOW: Final = 3.0
#: Photosites that make a pile at least: single hot ones do not. Own rule.
_PILE_SITES: Final = 24
#: Share of the photosites of a colour above the pile that do not count: hot ones. Own rule.
_HOT: Final = 1e-5
#: A pile on one single code is a clip even where the file states something else. Own rule.
_ONE_CODE: Final = 0.8
#: A soft pile counts near the stated white level (real files state up to 8 % too much), or where
#: two colours agree; an evenly lit white board makes a pile of another height in each colour,
#: since a sensor sees it in unequal parts. Own rules.
_NEAR_STATED: Final = 0.85
_AGREE: Final = 0.02


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
    first: int
    middle: float
    on_one_code: bool


def find_saturation(
    counts: Mapping[str, NDArray[np.int64]], blacks: Mapping[str, float], stated_white: float
) -> dict[str, Saturation]:
    """The saturation of each colour.

    Sensors stop below what their files state, or state nonsense; saturated photosites pile up
    where they stop. A colour without a pile takes the highest of the others', and without any
    the stated white level counts, when the data stay below it, or else the whole word.

    Args:
        counts: how often each code occurs, by colour, shape (codes,).
        blacks: black level by colour [code].
        stated_white: white level of the file [code].
    """
    piles = {
        colour: pile
        for colour, found in counts.items()
        if (pile := _pile(found, blacks[colour])) is not None
    }
    sure = {
        colour: pile
        for colour, pile in piles.items()
        if _is_sure(colour, pile, piles, blacks[colour], stated_white)
    }
    highest = max((int(np.flatnonzero(found)[-1]) for found in counts.values()), default=0)
    fallback = _fallback(sure, stated_white, highest)
    return {
        colour: (
            Saturation(black, sure[colour].middle, float(sure[colour].first), found=True)
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
    reached = np.flatnonzero(from_top > hot)
    if len(reached) == 0:
        return None
    top = int(reached[-1])
    width = max(1, int(_SPREAD * (top - black)))
    if top - black < 4 * width:
        return None
    upper = counts[top - width + 1 : top + 1]
    below = counts[top - 3 * width + 1 : top - width + 1]
    pile, before = int(upper.sum()), int(below.sum()) / 2
    if pile < _PILE_SITES or pile < _PILE_OVER_BELOW * max(before, 1.0):
        return None
    peak = top - width + 1 + int(np.argmax(upper))
    middle = float(np.average(np.arange(top - width + 1, top + 1), weights=upper))
    on_one_code = int(counts[peak]) >= _ONE_CODE * pile
    if on_one_code:
        return _Pile(peak, float(peak), on_one_code=True)
    return _Pile(top - width + 1, middle, on_one_code=False)


def _is_sure(
    colour: str, pile: _Pile, piles: Mapping[str, _Pile], black: float, stated_white: float
) -> bool:
    if pile.on_one_code or pile.middle - black >= _NEAR_STATED * (stated_white - black) > 0:
        return True
    others = (other.middle for name, other in piles.items() if name != colour)
    return any(abs(other - pile.middle) <= _AGREE * pile.middle for other in others)


def _fallback(sure: Mapping[str, _Pile], stated_white: float, highest: int) -> float:
    if sure:
        return max(pile.middle for pile in sure.values())
    if stated_white >= highest:
        return stated_white
    return float(2 ** int(highest).bit_length() - 1)
