"""Sharp real pictures that come with installed packages, as linear light."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path
from typing import Final

import skimage
import sklearn

from tests.scenes.camera import codes_of, light_of_codes
from tests.scenes.noise import Field

#: Pictures to train on, and others that are only for the figures.
TRAINING: Final = (
    "gravel.png", "brick.png", "coffee.png", "chelsea.png", "camera.png", "coins.png",
    "motorcycle_left.png", "astronaut.png", "flower.jpg",
)  # fmt: skip
HELD_OUT: Final = ("grass.png", "ihc.png", "china.jpg")


#: From which row on a picture shows more than sky, in which no length of streaks could show.
_BELOW_SKY: Final = {"china.jpg": 230}


def held_out() -> list[Field]:
    """Linear light of the pictures for figures, without their sky."""
    return [light_of(name)[_BELOW_SKY.get(name, 0) :] for name in HELD_OUT]


@lru_cache(maxsize=16)
def light_of(name: str) -> Field:
    """Linear light of a picture with the sRGB curve assumed, shape (h, w, 3), 0 to 1.

    Raises:
        FileNotFoundError: no installed package has it.
    """
    folders = (
        Path(skimage.__file__).parent / "data",
        Path(sklearn.__file__).parent / "datasets" / "images",
    )
    for folder in folders:
        if (folder / name).is_file():
            return light_of_codes(codes_of((folder / name).read_bytes()))
    raise FileNotFoundError(name)
