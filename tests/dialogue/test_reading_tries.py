"""Settings among others: tried before, of somebody else, not wanted, or only possible."""

from __future__ import annotations

from typing import Any

import pytest

from bot.dialogue.reading import read
from core.camera import density_stops
from tests.dialogue.reading_checks import told, unread


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("I tried 1/2, 1/4 and 1/15, now it is 1/8", {"shutter_s": 1 / 8}),
        ("f/16, f/11 and f/8 so far. now f/13", {"f_number": 13}),
        ("had 1/60, 1/2, 1/30, 1/15 it is", {"shutter_s": 1 / 15}),
        ("0.8 sec, sorry the dial jumped, it's 0.6", {"shutter_s": 0.6}),
        ("my uncle swore by iso 50. mine is on iso 100", {"iso": 100}),
        ("the coach said f/16 but my cam is at f/9", {"f_number": 9}),
        ("f/16, I don't want f/22", {"f_number": 16}),
        ("if we had a 10 stop we'd shoot 30 seconds. without it 1/2", {"shutter_s": 0.5}),
        ("time: 0.6, f/11", {"shutter_s": 0.6, "f_number": 11}),
        ("eight hundredths of a second", {"shutter_s": 0.08}),
        ("iso back to base which is 100 here", {"iso": 100, "base_iso": 100}),
    ],
)
def test_the_one_that_holds(text: str, expected: dict[str, Any]) -> None:
    """Of several values the one that is set now is read, and none is left as not placed."""
    assert told(text) == pytest.approx(expected)
    assert read(text).unread == ()


@pytest.mark.parametrize(
    "text",
    [
        "the camera can do 60 seconds, never needed it",
        "how deep is it if a stone takes 2 s to reach the bottom",
        "what does the 58 on the front of the lens mean?",
        "an nd, 77 mm, for sale",
        "my aunt recommends 35 mm",
        "my brother's polariser is at home",
    ],
)
def test_what_is_not_set(text: str) -> None:
    """What a thing can do, how long water falls, a filter's thread and advice set nothing."""
    facts = told(text)
    assert not facts.keys() & {"shutter_s", "focal_mm", "nd_on_stops", "has_polariser"}


def test_tries_without_a_last_one_stay_open() -> None:
    """Where nothing says which of several times holds, none is taken."""
    assert set(unread("1/2, 1/4, 1/15")) == {"1/2", "1/4", "1/15"}


@pytest.mark.parametrize(
    ("text", "stops"),
    [
        ("meter reads 1 over on the foam and 2 under on the cliff", {"meter_stops": 1}),
        ("2 under on the dark rock", {"meter_stops": -2}),
        ("a stop up from here would be nice", {"change_stops": 1}),
        ("a third of a stop down from what I had, please", {"change_stops": -1 / 3}),
        ("the pola costs me about 2 stops", {"has_polariser": True}),
    ],
)
def test_whose_stops(text: str, stops: dict[str, Any]) -> None:
    """Of two readings the white's counts; what a filter takes is no reading."""
    assert told(text) == pytest.approx(stops)


@pytest.mark.parametrize(
    ("text", "focal_mm"),
    [
        ("I went from 35 to 70, better", 70),
        ("zoomed out from 70 to 24 mm", 24),
        ("zoomed in from 70 to 200 mm", 200),
        ("put the 35 on", 35),
        ("I have the 35 mm", None),
        ("took one, on my camera: the 50.", 50),
        ("70-300, racked all the way out", 300),
        ("zoomed in to one thirty five", 135),
        ("it's the 28 mm prime today", 28),
    ],
)
def test_which_length_is_on(text: str, focal_mm: float | None) -> None:
    """What a zoom was turned to and which prime is on; a span is no lens."""
    assert told(text).get("focal_mm") == focal_mm


def test_a_turned_zoom_is_no_lens() -> None:
    """The two ends of a turn are not those of a lens."""
    assert "lenses" not in told("I went from 24 to 70, better")
    assert "lenses" in told("I went with a 24-70")


@pytest.mark.parametrize(
    ("text", "slot", "densities"),
    [
        ("my filter says 0.9 on the ring", "nd_on_stops", (0.9,)),
        ("I have a 0.6 and a 1.2", "nd_stops", (0.6, 1.2)),
        ("I have a 1.2 and a 1.8", "nd_stops", None),
        ("0.6 and 0.9", "nd_stops", None),
    ],
)
def test_bare_densities(text: str, slot: str, densities: tuple[float, ...] | None) -> None:
    """A density is one by its filter, or in a pair of which one is no aperture of a lens."""
    found = told(text).get(slot)
    if densities is None:
        assert found is None
        return
    several = found if isinstance(found, tuple) else (found,)
    assert several == pytest.approx([density_stops(density) for density in densities])
