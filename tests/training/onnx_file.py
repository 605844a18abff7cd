"""A network of convolutions as an ONNX file, in half precision."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

# Fields and types of an ONNX file; source: the published onnx.proto, from memory.
_FLOAT, _HALF = 1, 10
_INT, _INTS = 2, 7
_MACHINE, _OPERATORS = 8, 13
#: Sides of the picture that the file tells; readers take others, too.
_HEIGHT, _WIDTH = 320, 480
#: Between what a bounded layer is held. Source: the network's paper (ReLU6).
_BOUNDS: Final = (0.0, 6.0)


@dataclass(frozen=True)
class Layer:
    """A convolution over all of a picture, padded so that a stride halves it.

    Args:
        name: of its tables.
        weights: shape (out, in of a group, kernel, kernel).
        added: shape (out,).
        stride: 1 or 2.
        bounded: whether it is held between 0 and 6.
        begins: whether what goes into it is what a later one adds.
        adds: whether that is added to what comes out.
    """

    name: str
    weights: NDArray[np.float32]
    added: NDArray[np.float32]
    stride: int
    bounded: bool
    begins: bool
    adds: bool


def onnx_of(layers: Sequence[Layer], channels: int) -> bytes:
    """The file; `channels` come out of the last layer."""
    nodes: list[bytes] = []
    tables = [_number(name, bound) for name, bound in zip(("low", "high"), _BOUNDS, strict=True)]
    came, kept, step = "picture", "", 1
    for layer in layers:
        step *= layer.stride
        kept = came if layer.begins else kept
        tables += [_table(f"{layer.name}.w", layer.weights), _table(f"{layer.name}.b", layer.added)]
        nodes += _nodes(layer, came, kept)
        came = f"{layer.name}.out"
    shape = (1, channels, _HEIGHT // step, _WIDTH // step)
    graph = (
        *(_part(1, node) for node in nodes), _text(2, "sight"), *(_part(5, one) for one in tables),
        _part(11, _value("picture", (1, 3, _HEIGHT, _WIDTH))), _part(12, _value(came, shape)),
    )  # fmt: skip
    operators = _text(1, "") + _whole(2, _OPERATORS)
    return _whole(1, _MACHINE) + _part(7, b"".join(graph)) + _part(8, operators)


def _nodes(layer: Layer, came: str, kept: str) -> list[bytes]:
    """The steps of one layer, the last of which gives its `out`."""
    steps = ["Conv"] + ["Clip"] * layer.bounded + ["Add"] * layer.adds
    ends = [f"{layer.name}.{step}" for step in steps[:-1]] + [f"{layer.name}.out"]
    inputs = {
        "Conv": (f"{layer.name}.w", f"{layer.name}.b"), "Clip": ("low", "high"), "Add": (kept,),
    }  # fmt: skip
    begins = [came, *ends[:-1]]
    return [
        _node(step, (begin, *inputs[step]), end, _settings(layer) if step == "Conv" else ())
        for step, begin, end in zip(steps, begins, ends, strict=True)
    ]


def _settings(layer: Layer) -> Iterable[bytes]:
    kernel = layer.weights.shape[2]
    both = kernel - layer.stride if kernel > 1 else 0
    before, behind = both // 2, both - both // 2
    group = len(layer.weights) if layer.weights.shape[1] == 1 else 1
    yield _text(1, "group") + _whole(3, group) + _whole(20, _INT)
    for name, values in (
        ("kernel_shape", (kernel, kernel)),
        ("pads", (before, before, behind, behind)),
        ("strides", (layer.stride, layer.stride)),
    ):
        yield _text(1, name) + b"".join(_whole(8, one) for one in values) + _whole(20, _INTS)


def _node(step: str, inputs: Iterable[str], output: str, settings: Iterable[bytes]) -> bytes:
    return b"".join(
        (*(_text(1, one) for one in inputs), _text(2, output), _text(3, output), _text(4, step),
         *(_part(5, one) for one in settings))
    )  # fmt: skip


def _table(name: str, numbers: NDArray[np.floating]) -> bytes:
    sides = b"".join(_whole(1, side) for side in numbers.shape)
    return sides + _whole(2, _HALF) + _text(8, name) + _part(9, numbers.astype("<f2").tobytes())


def _number(name: str, number: float) -> bytes:
    """A single number, which readers want in full precision."""
    return _whole(2, _FLOAT) + _text(8, name) + _part(9, np.float32(number).tobytes())


def _value(name: str, shape: Iterable[int]) -> bytes:
    sides = b"".join(_part(1, _whole(1, side)) for side in shape)
    return _text(1, name) + _part(2, _part(1, _whole(1, _FLOAT) + _part(2, sides)))


def _whole(field: int, number: int) -> bytes:
    return _seven_bits(field << 3) + _seven_bits(number)


def _text(field: int, text: str) -> bytes:
    return _part(field, text.encode())


def _part(field: int, data: bytes) -> bytes:
    return _seven_bits(field << 3 | 2) + _seven_bits(len(data)) + data


def _seven_bits(number: int) -> bytes:
    """A number seven bits at a time, the least first; the eighth says that more follow."""
    out = bytearray()
    while number > 127:
        out.append(number & 127 | 128)
        number >>= 7
    return bytes([*out, number])
