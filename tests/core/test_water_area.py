"""Cells of the grid, the clean water inside them, and what is proposed."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.frame.findings import WaterArea
from core.frame.water_area import (
    COLUMNS,
    ROWS,
    UnknownCellError,
    mask_of,
    propose_water,
    water_pixels,
)
from core.frame.working import WorkingCopy
from tests.scenes.noise import Field
from tests.scenes.waterfall import Plan, compose, take
from tests.training.frames import stones
from tests.training.pictures import light_of
from tests.training.streaks import Lens, Pixels

CELLS = tuple(f"{row}{column}" for row in ROWS for column in COLUMNS)


@given(height=st.integers(4, 99), width=st.integers(4, 99))
def test_the_cells_share_the_frame(height: int, width: int) -> None:
    """Every pixel lies in exactly one cell, also where four does not divide the sides."""
    counted = sum(mask_of([cell], (height, width)).astype(int) for cell in CELLS)
    assert np.all(counted == 1)


def test_rows_are_letters_from_the_top() -> None:
    """A1 is at the top left, D4 at the bottom right, B3 in the second row."""
    assert mask_of(["A1"], (8, 8, 3))[0, 0]
    assert mask_of(["D4"], (8, 8))[7, 7]
    assert mask_of(["B3"], (8, 8))[2, 4]
    assert not mask_of([], (8, 8)).any()


@pytest.mark.parametrize("cell", ["", "E1", "A5", "A0", "a1", "1A", "A1 ", "A11", "B²"])
def test_other_names_are_refused(cell: str) -> None:
    """A name that the grid has not is an error that carries it."""
    with pytest.raises(UnknownCellError) as caught:
        mask_of(["A1", cell], (8, 8))
    assert caught.value.cell == cell


def halves(light: float, dark: float) -> np.ndarray[tuple[int, ...], np.dtype[np.float32]]:
    """Light left, dark right."""
    luminance = np.full((400, 400), dark, np.float32)
    luminance[:, :200] = light
    return luminance


def test_rock_in_the_cells_is_left_out() -> None:
    """Of light and dark the light is taken, with a margin."""
    found = water_pixels(halves(0.6, 0.05), np.ones((400, 400), np.bool_), 400)
    assert found[200, 100]
    assert not found[:, 196:].any()
    assert found.mean() > 0.4


@pytest.mark.parametrize(
    ("light", "dark"),
    [(0.5, 0.5), (0.5, 0.4), (0.0, 0.0)],
    ids=["one tone", "two near tones", "black"],
)
def test_one_tone_is_taken_whole(light: float, dark: float) -> None:
    """Without dark rock the cells are taken but for a margin to other cells."""
    cells = mask_of(["B2", "B3", "C2", "C3"], (400, 400))
    found = water_pixels(halves(light, dark), cells, 400)
    assert not (found & ~cells).any()
    assert found.sum() > 0.8 * cells.sum()


def test_a_lamp_does_not_pass_for_the_water() -> None:
    """A small light spot is not what the cells were named for."""
    luminance = np.full((400, 400), 0.1, np.float32)
    luminance[50:110, 50:110] = 1
    assert water_pixels(luminance, np.ones((400, 400), np.bool_), 400).mean() > 0.9


@given(st.integers(1, 40), st.integers(1, 40), st.floats(0, 1))
def test_something_is_left_of_any_cells(height: int, width: int, light: float) -> None:
    """However small the frame, some water is left where cells were named."""
    cells = np.ones((height, width), np.bool_)
    assert water_pixels(np.full((height, width), light, np.float32), cells, 400).any()


def test_no_cells_stay_none() -> None:
    """Nothing named, nothing found."""
    nothing = np.zeros((40, 40), np.bool_)
    assert not water_pixels(np.ones((40, 40), np.float32), nothing, 40).any()


def filled(light: float) -> Pixels:
    rng = np.random.default_rng(1)
    return Lens().file_of(np.full((400, 600), light, np.float32), rng)


def test_a_fall_is_proposed() -> None:
    """The gorge's fall (columns 2 and 3 of a wide frame) is found, and that it runs upright."""
    taken = take(compose(Plan(1200, 800, seed=3)))
    found = propose_water(WorkingCopy(taken.pixels, 1.0))
    assert found is not None
    assert {"B2", "B3", "C2", "C3"} & set(found.cells)
    assert not {cell for cell in found.cells if cell[1] in "14"}
    assert found.axis_deg is not None
    assert 60 < found.axis_deg < 120
    assert not found.by_person


def fog() -> Field:
    """Grey that is not much lighter than what it hides."""
    light = np.full((400, 600), 0.2, np.float32)
    light[150:350, 150:450] = 0.3
    return light


def sky_over_stones(top: float) -> Pixels:
    rng = np.random.default_rng(2)
    light = stones((400, 600), rng)
    light[:150] = top
    return Lens().file_of(light, rng)


@pytest.mark.parametrize(
    "pixels",
    [
        filled(0.5),
        filled(0.02),
        sky_over_stones(0.8),
        Lens().file_of(stones((400, 600), np.random.default_rng(3)), np.random.default_rng(3)),
        Lens().file_of(light_of("flower.jpg"), np.random.default_rng(4)),
        Lens().file_of(fog(), np.random.default_rng(5)),
    ],
    ids=["wall", "night", "sky", "stones", "flower", "fog"],
)
def test_what_is_no_water_is_not_proposed(pixels: Pixels) -> None:
    """An even wall (which a defocus makes of any), sky, stones, a flower and fog are no water."""
    assert propose_water(WorkingCopy(pixels, 1.0)) is None


def lit(rows: slice, columns: slice) -> WorkingCopy:
    """White noise of a texture on stones."""
    rng = np.random.default_rng(5)
    light = stones((400, 600), rng)
    light[rows, columns] = 0.5 + 0.1 * rng.standard_normal(light[rows, columns].shape)
    return WorkingCopy(Lens().file_of(light, rng), 1.0)


def test_an_axis_is_told_only_where_there_is_one() -> None:
    """White without a direction is proposed without an axis."""
    found = propose_water(lit(slice(200, 400), slice(150, 450)))
    assert found == WaterArea(("C2", "C3", "D2", "D3"), None)


def test_white_in_the_top_row_alone_is_not_proposed() -> None:
    """A fall goes on below the top quarter of a frame; what does not is cloud or sky."""
    assert propose_water(lit(slice(5, 100), slice(0, 300))) is None
    assert propose_water(lit(slice(5, 40), slice(0, 300))) is None
