"""Exposure value, equivalent settings, averaging, bracketing."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import NamedTuple

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.camera import density_stops
from core.errors import OutOfDomainError
from core.exposure import (
    Settings,
    aperture_value,
    averaging_noise,
    bracket,
    brightness_change,
    ev100,
    exposure_value,
    frames_for,
    same_stops,
    time_value,
)
from core.series import Dial, exact_f_number, exact_iso, exact_shutter_s
from tests.core.numbers import NEVER_A_LEVEL, NEVER_POSITIVE, Ref, f_numbers, isos, shutters_s

GNU_UNITS = "GNU units 2.22, definitions file, photographic exposure value"


REFERENCES = [
    Ref("f/1, 1 s", exposure_value(1, 1), 0, 0, GNU_UNITS),
    Ref("f/16, 1/100 s", exposure_value(16, 1 / 100), 14.643856, 1e-6, GNU_UNITS),
    Ref("Tv of a minute", time_value(60), -5.9068906, 1e-6, GNU_UNITS),
    Ref("sun, f/16", ev100(16, 1 / 128), 15, 1e-12, "ANSI PH2.7-1986, light table: sun is 15"),
    Ref("f/11, 1/4 s", ev100(2**3.5, 1 / 4), 9, 1e-12, "computed here from log2(N^2 / t)"),
]


@pytest.mark.parametrize("ref", REFERENCES, ids=lambda ref: ref.what)
def test_published_value(ref: Ref) -> None:
    """The published value comes out, within the digits that the source prints."""
    assert ref.found == pytest.approx(ref.expected, rel=0, abs=ref.tolerance)


@pytest.mark.parametrize(
    ("convert", "inputs", "expected", "tolerance"),
    [
        # Exif 2.3, Annex C, from memory; printed f-numbers and times stray up to 0.1 stop.
        (aperture_value, [1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22, 32], range(11), 0.1),
        (time_value, [30, 15, 8, 4, 2, 1, 1 / 2, 1 / 4, 1 / 8, 1 / 15, 1 / 30], range(-5, 6), 0.1),
        (time_value, [1 / 60, 1 / 125, 1 / 250, 1 / 500, 1 / 1000], range(6, 11), 0.1),
    ],
)
def test_additive_scale_of_exif(
    convert: Callable[[list[float]], float], inputs: list[float], expected: range, tolerance: float
) -> None:
    """A whole table converts at once, to the whole numbers of the standard."""
    np.testing.assert_allclose(convert(inputs), list(expected), rtol=0, atol=tolerance)


def test_typed_settings_are_metered_exactly() -> None:
    """f/11, 1/4 s, ISO 100 as typed is EV 9 with the exact third stops behind the marks."""
    level = ev100(exact_f_number(11), exact_shutter_s(1 / 4), exact_iso(100))
    assert level == pytest.approx(9.0, abs=1e-12)


def test_numbers_give_a_float_and_tables_an_array() -> None:
    """Scalars give what behaves as a float; columns and rows broadcast into a table."""
    assert isinstance(ev100(8, 1 / 60), float)
    table = ev100(np.array([[8.0], [11.0]]), np.array([0.25, 0.5, 1.0]), 100)
    assert np.shape(table) == (2, 3)


@given(f_numbers, shutters_s, isos, st.floats(-6.0, 6.0), st.floats(-6.0, 6.0))
def test_equivalent_settings_keep_the_level(
    f_number: float, shutter_s: float, iso: float, closed: float, faster: float
) -> None:
    """Closing the lens by some stops and rating the sensor faster is made up for by the time."""
    before = Settings(f_number, shutter_s, iso)
    after = Settings(
        f_number * 2 ** (closed / 2), shutter_s * 2 ** (closed - faster), iso * 2**faster
    )
    assert ev100(after.f_number, after.shutter_s, after.iso) == pytest.approx(
        ev100(f_number, shutter_s, iso), abs=1e-9
    )
    assert brightness_change(before, after) == pytest.approx(0.0, abs=1e-9)


@given(f_numbers, shutters_s, isos, st.floats(-6.0, 6.0))
def test_each_setting_brightens_by_its_stops(
    f_number: float, shutter_s: float, iso: float, stops: float
) -> None:
    """Time, speed and opening brighten by the stops that each is changed, and they add up."""
    before = Settings(f_number, shutter_s, iso)
    longer = Settings(f_number, shutter_s * 2**stops, iso)
    faster = Settings(f_number, shutter_s, iso * 2**stops)
    wider = Settings(f_number / 2 ** (stops / 2), shutter_s, iso)
    changes = [brightness_change(before, after) for after in (longer, faster, wider)]
    assert changes == pytest.approx([stops] * 3, abs=1e-9)
    assert brightness_change(longer, before) == pytest.approx(-stops, abs=1e-9)


@given(f_numbers, shutters_s, isos)
def test_additive_system_adds_up(f_number: float, shutter_s: float, iso: float) -> None:
    """Av + Tv - Sv is the level at ISO 100, whose speed value is 5.

    Sv is log2(ISO / 3.125) (Exif 2.3, as quoted in GNU units 2.22).
    """
    added = aperture_value(f_number) + time_value(shutter_s) - math.log2(iso / 3.125)
    assert added + 5 == pytest.approx(ev100(f_number, shutter_s, iso), abs=1e-9)


def test_labels_show_the_dials() -> None:
    """Settings show themselves as the camera's dials do, in thirds or halves."""
    settings = Settings(2**3.5, 0.25, 100 * 2 ** (1 / 3))
    assert settings.labels() == ("f/11", "1/4 s", "ISO 125")
    assert Settings(2 ** (13 / 4), 2**-5.5).labels(Dial.HALVES) == ("f/9.5", "1/45 s", "ISO 100")


@pytest.mark.parametrize(
    ("stops", "frames"),
    # Computed here from 2^stops, rounded up.
    [(0, 1), (1, 2), (1.5, 3), (3, 8), (density_stops(0.9), 8), (4.01, 17), (math.log2(5), 5)],
)
def test_frames_for(stops: float, frames: int) -> None:
    """So many frames gather the wished light; never fewer, and none more for a rounding."""
    assert frames_for(stops) == frames


class Average(NamedTuple):
    """Frames averaged, and the noise they save."""

    frames: int
    gain: float  # signal to noise against one frame


@pytest.mark.parametrize(
    "row",
    # Mean of independent values, sqrt(frames); EMVA Standard 1288, from memory (formula only).
    [Average(1, 1), Average(2, 1.41421), Average(4, 2), Average(16, 4)],
)
def test_averaging(row: Average) -> None:
    """Averaging lowers noise by the root of the frames."""
    assert 1 / averaging_noise(row.frames) == pytest.approx(row.gain, abs=1e-5)


def test_averaging_noise_by_simulation() -> None:
    """16 frames of noise, averaged, scatter as the formula says (within 3 standard errors)."""
    frames = np.random.default_rng(1).normal(100.0, 3.0, (16, 20_000))
    scatter = np.std(frames.mean(axis=0)) / 3.0
    assert scatter == pytest.approx(averaging_noise(16), rel=3 / math.sqrt(2 * 20_000))


@given(st.floats(0.0, 12.0))
def test_frames_are_enough_and_no_more(stops: float) -> None:
    """The frames are worth at least the stops asked for, one less would not be."""
    frames = frames_for(stops)
    assert math.log2(frames) >= stops - 1e-6
    assert frames == 1 or math.log2(frames - 1) < stops


@pytest.mark.parametrize(
    ("contrast", "held", "step", "offsets"),
    [
        # Computed here from half of what is missing, in whole steps upwards.
        (8, 10, 2, (0,)),
        (9, 9, 2, (0,)),
        (12, 9, 2, (-2, 0, 2)),
        (13, 9, 2, (-2, 0, 2)),
        (13.1, 9, 2, (-4, -2, 0, 2, 4)),
        (11, 9, 1, (-1, 0, 1)),
    ],
)
def test_bracket(contrast: float, held: float, step: float, offsets: tuple[float, ...]) -> None:
    """The fewest frames are chosen, evenly about the middle."""
    assert bracket(contrast, held, step) == pytest.approx(offsets)


@given(st.floats(0.0, 30.0), st.floats(5.0, 14.0), st.floats(0.3, 3.0))
def test_bracket_holds_the_contrast(contrast: float, held: float, step: float) -> None:
    """The frames together reach from the darkest to the brightest, symmetrically."""
    offsets = bracket(contrast, held, step)
    assert offsets[-1] - offsets[0] + held >= contrast - 1e-6
    assert sum(offsets) == pytest.approx(0, abs=1e-9)
    assert len(offsets) % 2 == 1


@pytest.mark.parametrize("bad", NEVER_POSITIVE)
@pytest.mark.parametrize(
    "call",
    [
        lambda bad: Settings(bad, 0.25),
        lambda bad: Settings(8, bad),
        lambda bad: Settings(8, 0.25, bad),
        lambda bad: exposure_value(bad, 1),
        lambda bad: exposure_value(8, [1.0, bad]),
        lambda bad: ev100(8, 1, bad),
        aperture_value,
        time_value,
        lambda bad: bracket(12, bad),
        lambda bad: bracket(12, 9, bad),
        averaging_noise,
    ],
)
def test_bad_numbers_are_refused(call: Callable[[float], object], bad: float) -> None:
    """Zero, negative, NaN and infinity are no setting and no number of frames."""
    with pytest.raises(OutOfDomainError):
        call(bad)


@pytest.mark.parametrize("bad", [*NEVER_A_LEVEL, -31.0, 31.0])
@pytest.mark.parametrize(
    "call",
    [
        frames_for,
        lambda bad: bracket(bad, 9),
    ],
)
def test_bad_levels_are_refused(call: Callable[[float], object], bad: float) -> None:
    """NaN, infinity and stops beyond all light are refused."""
    with pytest.raises(OutOfDomainError):
        call(bad)


@given(shutters_s, st.floats(-3, 3))
def test_half_a_third_of_a_stop_is_the_same_to_a_dial(shutter_s: float, stops: float) -> None:
    """Which of two times is the longer one makes no difference."""
    other_s = shutter_s * 2**stops
    same = abs(stops) < 1 / 6
    if abs(abs(stops) - 1 / 6) > 1e-6:
        assert same_stops(shutter_s, other_s) is same is same_stops(other_s, shutter_s)
