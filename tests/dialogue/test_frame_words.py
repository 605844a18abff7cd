"""Whole messages about frames: what they wish for, and what is no wish."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dialogue.reading.frame_words import Wished, wished

_CELL = st.builds("{}{}".format, st.sampled_from("abcdABCD"), st.integers(1, 4))


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("compare", Wished("compare")),
        ("Compare the last three frames.", Wished("compare", number=3)),
        ("compare both", Wished("compare", number=2)),
        ("ladder", Wished("compare")),
        ("average 8 frames", Wished("average", number=8)),
        ("as 1/8, 1/4 and 1/2 s", Wished("illustrate", times_s=(1 / 8, 1 / 4, 1 / 2))),
        ("as 2 seconds", Wished("illustrate", times_s=(2.0,))),
        ("as 0.5s?", Wished("illustrate", times_s=(0.5,))),
        ("show times", Wished("illustrate")),
        ("where is the water?", Wished("grid")),
        ("it's b2", Wished("cells", cells=("B2",))),
        ("the water is in c3", Wished("cells", cells=("C3",))),
        ("water in b2 b3", Wished("cells", cells=("B2", "B3"))),
        ("it is b2", Wished("cells", cells=("B2",))),
        ("B2, b2 and C3", Wished("cells", cells=("B2", "C3"))),
        ("down", Wished("direction", axis_deg=90.0)),
        ("the water runs straight down", Wished("direction", axis_deg=90.0)),
        ("it falls", Wished("direction", axis_deg=90.0)),
        ("across", Wished("direction", axis_deg=0.0)),
        ("down to the right", Wished("direction", axis_deg=135.0)),
    ],
)
def test_wishes(text: str, meant: Wished) -> None:
    """Cells keep their order and count once; axes are anticlockwise from the horizontal."""
    assert wished(text) == meant


@pytest.mark.parametrize(
    "text",
    [
        "compare settings",
        "average depth",
        "as 2",  # a quarter, or two seconds?
        "as 1/0 s",
        "as 90 s",
        "as is",
        "as a rule",
        "b2 b5",
        "e1",
        "down there it is dark",
        "2",
        "",
    ],
)
def test_what_is_no_wish(text: str) -> None:
    """What could mean something else, or nothing that can be done, is left to the other readers."""
    assert wished(text) is None


@given(st.lists(_CELL, min_size=1, max_size=16), st.sampled_from([" ", ", ", " and ", "; "]))
def test_any_cells_are_read(cells: list[str], between: str) -> None:
    """However they are joined, each cell is found once and none is added."""
    found = wished(between.join(cells))
    assert found is not None
    assert found.cells == tuple(dict.fromkeys(cell.upper() for cell in cells))
