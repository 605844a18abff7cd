"""Photographs to measure on: of the registries' packages, and from the folder of FRAMES_DIR."""

from __future__ import annotations

import os
from pathlib import Path

import cv2
import numpy as np
import skimage.data
from numpy.typing import NDArray
from sklearn.datasets import load_sample_images

from core.errors import UnreadableFrameError
from core.frame.decode import decode

Pixels = NDArray[np.uint8]

#: Photographs that come with scikit-image itself.
_PACKAGED = ("astronaut", "camera", "chelsea", "coffee", "coins", "grass", "gravel", "rocket")
#: Folders of sharp pictures of today's and older cameras.
_FOLDERS = ("water", "camera", "heic")
#: Two pictures of one photograph are told by a small copy of this side [px] and the mean
#: difference of its codes.
_COPY_PX = 16
_SAME = 6.0


def packaged() -> list[Pixels]:
    """Photographs in colour or grey, shape (h, w, 3) each."""
    found = [np.asarray(getattr(skimage.data, name)()) for name in _PACKAGED]
    found += [np.asarray(picture) for picture in load_sample_images().images]
    return [
        np.ascontiguousarray(np.stack([picture] * 3, -1) if picture.ndim == 2 else picture)
        for picture in found
    ]


def outside() -> list[Pixels]:
    """Different pictures from outside, at full size; none without a folder."""
    return list(outside_by_name().values())


def outside_by_name() -> dict[str, Pixels]:
    """The same by their paths in that folder."""
    name = os.environ.get("FRAMES_DIR")
    if not name:
        return {}
    found: dict[str, Pixels] = {}
    for folder in _FOLDERS:
        for path in sorted((Path(name) / folder).glob("*")):
            try:
                pixels = decode(path.read_bytes()).pixels
            except UnreadableFrameError:
                continue
            if not any(_same(pixels, other) for other in found.values()):
                found[f"{folder}/{path.name}"] = pixels
    return found


def _same(first: Pixels, second: Pixels) -> bool:
    side = (_COPY_PX, _COPY_PX)
    small = [cv2.resize(p, side, interpolation=cv2.INTER_AREA) for p in (first, second)]
    return float(cv2.absdiff(small[0], small[1]).mean()) < _SAME
