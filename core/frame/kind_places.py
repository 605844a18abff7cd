"""Where a clipped area may lie, and how large it may be, to be what it most likely is."""

from __future__ import annotations

from typing import Final

from core.frame.kind_trees import Said
from core.frame.report import AreaKind, ClippedArea

#: Points and glints higher up may be sky through leaves. Own rule, in shares of the height.
LEAVES_BOTTOM: Final = 1 / 3
#: Sky that hangs lower may have a fall in it; sky that is so broad may reach further down. Own
#: rules, in shares of the frame.
_SKY_BOTTOM: Final = 0.6
_BROAD_SKY: Final = 0.5
_BROAD_SKY_BOTTOM: Final = 0.75
#: Sky that does not reach the top border has to be this likely: white things indoors were called
#: so. Own rules; between 0.94 and 0.97 64 of 65 were sky to trees that had not seen them.
_AT_TOP: Final = 0.01
_SURE_OF_SKY: Final = 0.95
#: Part of the frame below which a spot shows too little to be called water. Own rule: rails, signs
#: and wet leaves of real frames were called so.
_SMALLEST_WATER: Final = 1e-4
#: Part of the frame above which white is more than a lamp or the sun. Own rule.
_LARGEST_LAMP: Final = 0.05
#: A glint takes no more than this of the width and of the height. Own rule.
_WIDEST_GLINT: Final = 0.03
#: A spot too small for water is a drop or a glint from this likelihood on that it is of water.
#: Own rule: on the recipe's pictures, left out in turn, 149 of 151 such spots were.
_SURE_OF_DROPS: Final = 0.94


def may_be(area: ClippedArea, said: Said) -> bool:
    """Whether the place and the size of an area leave its likeliest kind possible."""
    if said.kind is AreaKind.UNSURE:
        return False
    if said.kind is AreaKind.WHITE_WATER:
        return area.share >= _SMALLEST_WATER
    if said.kind is AreaKind.LAMP:
        return area.share <= _LARGEST_LAMP
    if said.kind is AreaKind.SPARKLE:
        return _small_and_low(area)
    if area.box.top > _AT_TOP and said.confidence < _SURE_OF_SKY:
        return False
    bottom = area.box.top + area.box.height
    return bottom <= (_BROAD_SKY_BOTTOM if area.box.width >= _BROAD_SKY else _SKY_BOTTOM)


def is_glint(area: ClippedArea, said: Said) -> bool:
    """Whether an area counts with the sparkle: as a glint, or as a drop of white water."""
    drop = area.share < _SMALLEST_WATER and said.of_water >= _SURE_OF_DROPS
    return (drop or said.kind is AreaKind.SPARKLE) and _small_and_low(area)


def _small_and_low(area: ClippedArea) -> bool:
    size = max(area.box.width, area.box.height)
    return size <= _WIDEST_GLINT and area.box.top > LEAVES_BOTTOM
