"""Which pictures clipped areas are told apart on: their numbers, and what each of them is."""

from __future__ import annotations

from typing import Final

import numpy as np

from tests.training.seen import PACKAGED, SEEN, SEEN_TOO

#: Pictures with things planted, rendered gorges after them, and the seed of each: the recipe.
PLANTED: Final = 520
GORGES: Final = 220
#: After them photographs with things planted, and each of the photographs so often pushed. They
#: have numbers of their own, so that more of one kind leave the others as they are.
OVER_PHOTOGRAPHS: Final = 100
FIRST_OVER: Final = 740
PUSHED: Final = 8
FIRST_PUSHED: Final = 1140
#: Later ones, by the number of the first and how many: planted, over photographs, gorges, pushed
#: ones of `SEEN_TOO`. From the thousands' 5 on they are of twice the size, so that the check
#: halves them, as it does a camera's: what is seen there is sharper, and partly clipped.
LATER: Final = {
    20_000: 300, 25_000: 300, 30_000: 300, 35_000: 300, 40_000: 100, 45_000: 150,
    50_000: 60, 55_000: 300,
}  # fmt: skip
TEN_THOUSAND: Final = 10_000
_TWICE: Final = 5_000


def pushed_name(index: int) -> str:
    """The photograph that a picture of the recipe pushes: they take turns."""
    if index < min(LATER):
        return tuple(SEEN)[(index - FIRST_OVER) % len(SEEN)]
    names = (*SEEN, *SEEN_TOO) if is_twice(index) else tuple(SEEN_TOO)
    return names[index % _TWICE % len(names)]


def is_twice(index: int) -> bool:
    """Whether a picture is of twice the size."""
    return index >= min(LATER) and index % TEN_THOUSAND >= _TWICE


#: Numbers of all pictures of the recipe; those before `FIRST_OVER` need no folder, nor do later
#: planted ones and gorges.
PICTURES: Final = (
    *range(PLANTED + GORGES),
    *range(FIRST_OVER, FIRST_OVER + OVER_PHOTOGRAPHS),
    *range(FIRST_PUSHED, FIRST_PUSHED + PUSHED * len(SEEN)),
    *(first + number for first, count in LATER.items() for number in range(count)),
)
#: Those of them that need no folder either.
PACKAGED_PUSHED: Final = tuple(
    index
    for index in PICTURES
    if FIRST_PUSHED <= index < min(LATER) and pushed_name(index) in PACKAGED
)


def _drawn(numbers: tuple[int, ...], count: int) -> tuple[int, ...]:
    return tuple(np.random.default_rng(5).permutation(numbers)[:count].tolist())


def _later(first: int) -> range:
    return range(first, first + LATER[first])


#: Those that a network of images is shown, too, since that takes time: of each sort the first so
#: many in an order that is drawn, none of twice the size; twice as many pushed ones, real all over.
#: With 190 of each, before photographs and in other planted pictures the fit alone was right in 75
#: of 100 areas left out, with 300 in 76 and 77.
SHOWN: Final = 300
SEEN_BY_NETWORK: Final = (
    *_drawn((*range(FIRST_PUSHED, FIRST_PUSHED + PUSHED * len(SEEN)), *_later(50_000)), 2 * SHOWN),
    *_drawn((*range(FIRST_OVER, FIRST_OVER + OVER_PHOTOGRAPHS), *_later(30_000)), SHOWN),
    *_drawn((*range(PLANTED, PLANTED + GORGES), *_later(40_000)), SHOWN),
    *_drawn((*range(PLANTED), *_later(20_000)), SHOWN),
)
