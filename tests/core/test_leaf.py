"""The second, short frame for leaves that the wind moves."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.adjust.leaf import LEAF_TOP_ISO, leaf_frame
from core.camera import FORMATS, Camera
from core.errors import OutOfDomainError
from core.exposure import Settings, brightness_change
from core.series import exact_iso, f_number_marks, iso_marks, time_marks

FULL_FRAME = Camera(FORMATS["full frame"])
WATER = Settings(2**3.5, 1 / 4, 100)


def test_a_quarter_second_becomes_a_hundred_and_twenty_fifth_at_iso_3200() -> None:
    """Five stops of ISO: the trade's own example."""
    found = leaf_frame(WATER, FULL_FRAME, 4)
    assert found.settings.labels() == ("f/11", "1/125 s", "ISO 3200")
    assert found.darker_stops == 0


def test_with_less_iso_the_aperture_opens_by_a_stop() -> None:
    """ISO 1600 and one stop wider; what is still missing is told."""
    found = leaf_frame(WATER, Camera(FORMATS["full frame"], highest_iso=1600), 4)
    assert found.settings.labels() == ("f/8", "1/125 s", "ISO 1600")
    assert found.darker_stops == pytest.approx(0, abs=1e-9)
    darker = leaf_frame(WATER, Camera(FORMATS["full frame"], highest_iso=400), 4)
    assert darker.settings.labels() == ("f/8", "1/125 s", "ISO 400")
    assert darker.darker_stops == pytest.approx(2)


def test_a_lens_that_is_open_already_and_a_phone_stay() -> None:
    """No wider than the lens; a phone has one opening."""
    camera = Camera(FORMATS["full frame"], highest_iso=1600)
    assert leaf_frame(Settings(4, 1 / 4, 100), camera, 4).darker_stops == pytest.approx(1)
    phone = Camera(FORMATS["phone"], highest_iso=800)
    assert leaf_frame(Settings(1.78, 1 / 4, 100), phone, 1.78).settings.f_number == 1.78


def test_iso_above_the_leaf_limit_is_not_taken_down() -> None:
    """Who is at ISO 6400 stays there."""
    found = leaf_frame(Settings(2**3.5, 1 / 64, 6400), FULL_FRAME, 4)
    assert found.settings.labels() == ("f/8", "1/125 s", "ISO 6400")


def test_short_enough_is_left_alone() -> None:
    """At 1/250 s the water frame is the leaf frame."""
    water = Settings(8, 1 / 256, 400)
    assert leaf_frame(water, FULL_FRAME, 4).settings == water


@given(
    st.sampled_from([m.exact for m in f_number_marks() if 4 <= m.exact <= 23]),
    st.sampled_from([m.exact for m in time_marks()]),
    st.sampled_from([m.exact for m in iso_marks() if 99 <= m.exact <= 6500]),
)
def test_a_leaf_frame_keeps_its_limits(f_number: float, shutter_s: float, iso: float) -> None:
    """Never brighter than the water frame by more than rounding, never past ISO 3200."""
    water = Settings(f_number, shutter_s, iso)
    found = leaf_frame(water, FULL_FRAME, 4)
    change = brightness_change(water, found.settings)
    assert change <= 0.01
    assert found.darker_stops == pytest.approx(max(-change, 0), abs=1e-9)
    assert found.settings.iso <= max(LEAF_TOP_ISO * 1.01, iso)
    assert found.settings.f_number >= min(4, f_number) * (1 - 1e-6)
    assert found.settings.shutter_s <= max(2**-7, min(shutter_s, 2**-7)) * (1 + 1e-6)


def test_odd_leaves_are_refused() -> None:
    """Numbers that no leaf has are errors."""
    with pytest.raises(OutOfDomainError):
        leaf_frame(WATER, FULL_FRAME, 0)
    with pytest.raises(OutOfDomainError):
        leaf_frame(WATER, FULL_FRAME, 4, longest_s=math.nan)
    assert exact_iso(3200) == LEAF_TOP_ISO
