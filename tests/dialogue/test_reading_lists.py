"""Kit told as a list: what a "no" belongs to, and which numbers are primes or filters."""

from __future__ import annotations

from typing import Any

import pytest

from tests.dialogue.reading_checks import told, unread

HAS = ("has_tripod", "has_polariser", "nd_stops")


@pytest.mark.parametrize(
    ("text", "tripod", "polariser", "nd"),
    [
        ("tripod, no polariser, no ND", True, False, ()),
        ("tripod no polariser no nd", True, False, ()),
        ("no tripod, polariser", False, True, None),
        ("no tripod but a polariser", False, True, None),
        ("no tripod and a polariser", False, True, None),
        ("no tripod or polariser", False, False, None),
        ("neither tripod nor polariser", False, False, None),
        ("no tripod, polariser or nd", False, False, ()),
        ("no nd/polariser, tripod", True, False, ()),
        ("tripod yes, pola no", True, False, None),
        ("tripod: no. polariser: yes", False, True, None),
        ("tripod yes pola no nd no", True, False, ()),
        ("tripod no pola yes", False, True, None),
        ("tripod no pola no", False, False, None),
        ("tripod (no centre column), polariser", True, True, None),
        ("without a tripod, with a polariser", False, True, None),
        ("didn't bring my tripod", False, None, None),
        ("polariser? nope", None, False, None),
        ("tripod and no nds", True, None, ()),
    ],
)
def test_a_no_belongs_to_the_thing_behind_it(
    text: str, tripod: bool | None, polariser: bool | None, nd: tuple[float, ...] | None
) -> None:
    """Each thing of a list is there or missing by its own word, typed or dictated."""
    facts = told(text)
    assert tuple(facts.get(slot) for slot in HAS) == (tripod, polariser, nd)


def _lenses(text: str, *expecting: str) -> list[tuple[float, float, float | None]]:
    return [
        (lens.shortest_mm, lens.longest_mm, lens.widest_at_shortest)
        for lens in told(text, *expecting).get("lenses", ())
    ]


@pytest.mark.parametrize(
    ("text", "lenses"),
    [
        ("24 mm and 85 mm", [(24, 24, None), (85, 85, None)]),
        ("a 24 and an 85", [(24, 24, None), (85, 85, None)]),
        ("50 and 85", [(50, 50, None), (85, 85, None)]),
        ("35 mm", [(35, 35, None)]),
        ("35", [(35, 35, None)]),
        ("16-35, 50, 70-200", [(16, 35, None), (50, 50, None), (70, 200, None)]),
        ("24/70 and 70/200", [(24, 70, None), (70, 200, None)]),
        ("20 1.8, 50 f/1.4", [(20, 20, 1.8), (50, 50, 1.4)]),
        ("8.8-25.7", [(8.8, 25.7, None)]),
        ("+1 1/3", []),
    ],
)
def test_lenses_where_they_were_asked(
    text: str, lenses: list[tuple[float, float, float | None]]
) -> None:
    """Numbers in a list are primes, with or without their unit."""
    assert _lenses(text, "lenses", "focal_mm") == lenses


@pytest.mark.parametrize(
    ("text", "expecting", "expected"),
    [
        ("at 35 mm", ("lenses", "focal_mm"), {"focal_mm": 35}),
        ("zoomed to 35 mm", ("lenses", "focal_mm"), {"focal_mm": 35}),
        ("100 mm", ("focal_mm",), {"focal_mm": 100}),
        (
            "24 mm, f/11, 1/4 s",
            ("lenses", "focal_mm"),
            {"focal_mm": 24, "f_number": 11, "shutter_s": 0.25},
        ),
        ("polariser 77 mm", ("camera_format", "lenses"), {"has_polariser": True}),
        (
            "24, f/11, 1/4 s",
            ("lenses", "focal_mm"),
            {"focal_mm": 24, "f_number": 11, "shutter_s": 0.25},
        ),
    ],
)
def test_focal_lengths_that_are_set(
    text: str, expecting: tuple[str, ...], expected: dict[str, Any]
) -> None:
    """Behind "at", beside settings and where only the focal length was asked it is no lens."""
    assert told(text, *expecting) == expected


@pytest.mark.parametrize(
    ("text", "expecting"),
    [
        ("2", ("camera_format", "lenses")),
        ("24", ("camera_format", "lenses")),
        ("3", ("lenses", "focal_mm")),
        ("13 and 47", ("lenses",)),
        ("polariser 50", ("lenses",)),
        ("50 students", ("lenses",)),
        ("1/70", ("lenses",)),
    ],
)
def test_numbers_that_are_no_lens(text: str, expecting: tuple[str, ...]) -> None:
    """Options, counts, threads and lengths that nobody makes are none."""
    assert "lenses" not in told(text, *expecting)


def test_lens_shorter_than_any_is_told() -> None:
    """A 3 mm lens exists in phones only, so the number is asked about (common practice)."""
    assert unread("3", "lenses", "focal_mm") == ("3",)


@pytest.mark.parametrize(
    ("text", "lenses"),
    [
        ("full frame, 17-40, 50 f/1.8", [(17, 40, None), (50, 50, 1.8)]),
        ("i own a 50 f/1.8", [(50, 50, 1.8)]),
        ("aps-c, 8.8-25.7", [(8.8, 25.7, None)]),
        ("at 50 f/1.8", []),
        ("50 f/1.8", []),
    ],
)
def test_lenses_in_free_text(text: str, lenses: list[tuple[float, float, float | None]]) -> None:
    """Without a question a bare prime needs its wide aperture and a kit around it."""
    assert _lenses(text) == lenses


@pytest.mark.parametrize(
    ("text", "stops"),
    [
        ("nd 8 and 64", (3.0, 6.0)),
        ("nds: 8, 64", (3.0, 6.0)),
        ("nd 3/6/10", (3.0, 6.0, 10.0)),
        ("nd 3 and 6", (3.0, 6.0)),
        ("nd8, nd64, 24-70", (3.0, 6.0)),
        ("nd filters: 3, 6 and 10 stop", (3.0, 6.0, 10.0)),
    ],
)
def test_lists_of_filters(text: str, stops: tuple[float, ...]) -> None:
    """The name stands once for all of a list; strengths that are no factor are stops."""
    assert told(text)["nd_stops"] == stops


def test_filters_that_may_be_either() -> None:
    """2, 4 and 6 are two factors and a number of stops: the odd one stays unread."""
    assert told("nd 2/4/6")["nd_stops"] == (1.0, 2.0)
    assert unread("nd6") == ("nd6",)


def test_filter_of_a_kit_is_not_on() -> None:
    """Beside a sensor a filter is listed; beside settings alone it is on."""
    assert "nd_on_stops" not in told("full frame, 6-stop nd, f/11, 1/4 s")
    assert told("6-stop nd, f/11, 1/4 s")["nd_on_stops"] == 6
