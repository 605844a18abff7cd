"""What a network of images sees: its file, its cells, and what is fitted to it."""

from __future__ import annotations

import cv2
import numpy as np
import pytest

from core.frame.kind_trees import KNOWN, together
from core.frame.patches import find_patches
from core.frame.sight import SEEN, seen_in
from core.frame.sight_kinds import NUMBERS, fitted, sights_of
from tests.core.frame_files import natural
from tests.training import sight as recipe
from tests.training.kind_pictures import FIRST_OVER, PLANTED, SEEN_BY_NETWORK
from tests.training.onnx_file import Layer, onnx_of
from tests.training.sight import TABLE, samples


def layer(name: str, weights: np.ndarray, **ways: bool | int) -> Layer:
    usual: dict[str, bool | int] = {"bounded": False, "begins": False, "adds": False, "stride": 1}
    added = np.linspace(-1, 1, len(weights)).astype(np.float32)
    return Layer(name, weights.astype(np.float32), added, **{**usual, **ways})  # type: ignore[arg-type]


def test_a_written_network_computes_what_its_layers_say() -> None:
    """A layer over channels, one that halves and is bounded, and one that adds what went in."""
    draw = np.random.default_rng(3)
    first = layer("a", draw.normal(0, 1, (4, 3, 1, 1)))
    second = layer("b", draw.normal(0, 1, (4, 1, 3, 3)), stride=2, bounded=True)
    third = layer("c", draw.normal(0, 1, (4, 4, 1, 1)), begins=True, adds=True)
    file = onnx_of([first, second, third], 4)
    network = cv2.dnn.readNetFromONNX(np.frombuffer(file, np.uint8))
    shown = draw.normal(0, 1, (1, 3, 8, 12)).astype(np.float32)
    network.setInput(shown)
    found = network.forward()[0]

    mixed = np.einsum("oi,ihw->ohw", first.weights[..., 0, 0], shown[0])
    mixed += first.added[:, None, None]
    padded = np.pad(mixed, ((0, 0), (0, 1), (0, 1)))  # so that the stride of two halves it
    spread = sum(
        second.weights[:, 0, row, column, None, None]
        * padded[:, row : row + 7 : 2, column : column + 11 : 2]
        for row in range(3)
        for column in range(3)
    )
    bounded = np.clip(spread + second.added[:, None, None], 0, 6)
    last = np.einsum("oi,ihw->ohw", third.weights[..., 0, 0], bounded)
    np.testing.assert_allclose(found, last + third.added[:, None, None] + bounded, atol=0.02)


@pytest.mark.parametrize(
    ("size", "cells"),
    [
        ((800, 1200), (8, 12)),
        ((1200, 800), (12, 8)),
        ((700, 700), (10, 10)),
        ((40, 1600), (2, 62)),
    ],
)
def test_cells_have_the_shape_of_the_picture(size: tuple[int, int], cells: tuple[int, int]) -> None:
    """About 96 cells, as many across and down as the picture has it; two at least."""
    colour = cv2.resize(natural(), size[::-1])
    assert seen_in(np.asarray(colour, np.uint8)).shape == (SEEN, *cells)


def test_what_is_seen_is_of_the_area() -> None:
    """Areas in unlike parts of a frame are seen unlike each other, one over a cell as the cell."""
    pixels = natural().copy()
    labels = np.zeros(pixels.shape[:2], np.bool_)
    labels[100:200, 100:200] = labels[600:700, 900:1000] = True  # a cell each
    sights = sights_of(pixels, find_patches(labels), np.array([1, 2]))
    seen = seen_in(pixels)
    np.testing.assert_allclose(sights[0], seen[:, 1, 1], atol=1e-3)
    np.testing.assert_allclose(sights[1], seen[:, 6, 9], atol=1e-3)


def test_likelihoods_of_both_add_up() -> None:
    """By sight, and by trees and sight, likelihoods make one; what both call likely is."""
    likely = fitted().of(np.random.default_rng(4).normal(0, 3, (20, SEEN)))
    assert likely.shape == (20, len(KNOWN))
    np.testing.assert_allclose(likely.sum(axis=1), 1)
    both = together(likely, likely[::-1])
    np.testing.assert_allclose(both.sum(axis=1), 1)
    np.testing.assert_array_equal(together(likely, likely).argmax(axis=1), likely.argmax(axis=1))


#: Pictures of the recipe that need no folder: two gorges, and a planted one.
CHECKED = (
    *[index for index in SEEN_BY_NETWORK if PLANTED <= index < FIRST_OVER][:2],
    next(index for index in SEEN_BY_NETWORK if index < PLANTED),
)


def test_the_fit_comes_from_the_recipe() -> None:
    """Pictures of the recipe give their rows of the table, and the table gives the fit."""
    with np.load(TABLE) as arrays:
        table = {name: arrays[name] for name in arrays.files}
    for index in CHECKED:
        rows, there = samples(index), table["pictures"] == index
        assert [column for _, column in rows] == table["columns"][there].tolist()
        if not rows:
            continue
        # Another version of a library may round otherwise, which moves a few numbers a little.
        codes = (np.stack([sight for sight, _ in rows]) - table["least"]) / table["step"]
        assert (np.abs(codes - table["codes"][there]) < 3).mean() > 0.95
    assert np.isin(table["pictures"], CHECKED).sum() > 5
    again = recipe.fitted(table)
    with np.load(NUMBERS) as stored:
        np.testing.assert_allclose(again.weights, stored["weights"], atol=1e-3)
        np.testing.assert_allclose(again.added, stored["added"], atol=0.02)
