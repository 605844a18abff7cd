"""From pixels of several frames to a comparison and the sheets that show it."""

from __future__ import annotations

from functools import cache

import numpy as np
import pytest

from core.frame.comparison import Misfit, Refusal
from core.frame.crops import fullest_window
from core.frame.laid import NumberOfFramesError
from core.frame.report import FrameReport
from core.frame.several import Wishes, average_several, compare_several, illustrate_one
from core.water import Look
from tests.core.drops import DROPS, texture, wet
from tests.core.several_frames import Hand, Pixels, held, rendered, report, shifted

SIZE = {"width": 480, "height": 720}
CELLS = ("B2", "B3", "C2", "C3")
TIMES = (1 / 500, 1 / 30, 1 / 4, 1.0)


@cache
def falls() -> list[Pixels]:
    """A fall at four times, each a little darker and moved."""
    hands = [Hand(step, 0.5 * step) for step in range(len(TIMES))]
    return [
        held(rendered(time, 3, moment=step, stops=-0.3 * step, **SIZE), hands[step], margin=0)
        for step, time in enumerate(TIMES)
    ]


@cache
def known() -> list[FrameReport]:
    """What is known of each."""
    return [report(pixels, shutter_s=time) for pixels, time in zip(falls(), TIMES, strict=True)]


def test_two_frames_side_by_side() -> None:
    """Two frames: water, leaves and the whole, in the order in which they were named."""
    found = compare_several(known()[2::-2], falls()[2::-2], Wishes(wished=Look.SILKY, cells=CELLS))
    assert [sheet.shows for sheet in found.sheets] == ["water", "leaves", "whole"]
    for sheet in found.sheets:
        assert [piece.frame for piece in sheet.pieces] == [0, 1]
        assert [piece.shutter_s for piece in sheet.pieces] == [1 / 4, 1 / 500]
    assert found.comparison.order == (1, 0)
    assert found.comparison.recommendation is not None
    assert found.comparison.recommendation.frame == 0


def test_pieces_show_the_same_place_at_equal_brightness() -> None:
    """The leaves of both frames are as bright as each other, and lie in the same place."""
    found = compare_several(known()[:2], falls()[:2], Wishes(cells=CELLS))
    leaves = next(sheet for sheet in found.sheets if sheet.shows == "leaves")
    first, second = (piece.pixels.astype(float) for piece in leaves.pieces)
    assert leaves.pieces[1].gain_stops == pytest.approx(0.3, abs=0.08)
    rock = (slice(None), slice(0, 90))
    assert np.abs(first - second)[rock].mean() < 4
    assert first[rock].mean() == pytest.approx(second[rock].mean(), rel=0.03)


def test_ladder_is_in_the_order_of_the_water() -> None:
    """Four frames make strips from the crispest to the smoothest, whatever their naming."""
    shuffled = [2, 0, 3, 1]
    reports, full = [known()[place] for place in shuffled], [falls()[place] for place in shuffled]
    found = compare_several(reports, full, Wishes(share_per_s=(0.3, 0.5), wished=Look.SILKY))
    water = found.sheets[0]
    assert water.shows == "water"
    assert [piece.shutter_s for piece in water.pieces] == list(TIMES)
    assert found.comparison.frames[1].share == pytest.approx(0.15**0.5 / 500)
    assert found.comparison.recommendation is not None
    assert found.comparison.recommendation.frame in {0, 2}
    assert found.comparison.gaps


def test_other_views_show_only_the_whole() -> None:
    """Frames that don't lie on each other are shown whole, and that is all."""
    other = rendered(1 / 4, 9, **SIZE)
    found = compare_several([known()[0], report(other)], [falls()[0], other], Wishes())
    assert [sheet.shows for sheet in found.sheets] == ["whole"]
    assert found.comparison.pairs[0].misfit is Misfit.OTHER_VIEW


def test_drops_that_two_views_share() -> None:
    """Two scenes with the same soft spots tell of drops on the glass; two clean ones do not."""
    scenes = [texture("grass"), texture("gravel")]
    for pixels, spots in ((scenes, 0), ([wet(scene) for scene in scenes], len(DROPS))):
        found = compare_several([report(one) for one in pixels], pixels, Wishes())
        assert found.comparison.pairs[0].misfit is Misfit.OTHER_VIEW
        assert found.comparison.pairs[0].shared_spots == spots


def test_average_with_its_proof() -> None:
    """An average comes beside one of its frames, whole and in the water, with the time in all."""
    full = [rendered(1 / 60, 3, moment=step, **SIZE) for step in range(4)]
    reports = [report(pixels, shutter_s=1 / 60) for pixels in full]
    found = average_several(reports, full, Wishes(cells=CELLS))
    assert [sheet.shows for sheet in found.sheets] == ["average", "water"]
    for sheet in found.sheets:
        assert [piece.frame for piece in sheet.pieces] == [0, None]
        assert sheet.pieces[1].shutter_s == pytest.approx(4 / 60)
    assert found.comparison.average is not None
    assert found.comparison.average.used == (0, 1, 2, 3)


def test_average_without_water_or_frames() -> None:
    """Without water only the whole is shown; with nothing to average nothing is."""
    still = [shifted("coffee", "gravel", 4, seed=step, noise=0.01)[0] for step in (0, 1)]
    reports = [report(one) for one in still]
    found = average_several(reports, still, Wishes())
    assert [sheet.shows for sheet in found.sheets] == ["average"]
    compared = compare_several(reports, still, Wishes())
    assert [sheet.shows for sheet in compared.sheets][-1] == "whole"
    assert "water" not in [sheet.shows for sheet in compared.sheets]
    twice = average_several([known()[0]] * 2, [falls()[0]] * 2, Wishes(cells=CELLS))
    assert twice.sheets == ()


def test_illustration_beside_the_frame() -> None:
    """The frame as it is, then each time; a refusal has no picture."""
    full = rendered(1 / 500, 7, white_stops=1.6)
    wishes = Wishes(cells=CELLS, share_per_s=(0.3, 0.5), times_s=(1 / 8, 1 / 2))
    found = illustrate_one(report(full, shutter_s=1 / 500), full, wishes)
    (sheet,) = found.sheets
    assert sheet.shows == "illustration"
    assert [(piece.frame, piece.shutter_s) for piece in sheet.pieces] == [
        (0, 1 / 500),
        (None, 1 / 8),
        (None, 1 / 2),
    ]
    refused = illustrate_one(report(full), full, Wishes(share_per_s=(0.3, 0.5)))
    assert refused.sheets == ()
    assert refused.comparison.illustration is not None
    assert refused.comparison.illustration.refusal is Refusal.WATER_UNKNOWN


@pytest.mark.parametrize(("number", "average"), [(1, False), (7, False), (1, True), (13, True)])
def test_wrong_numbers(number: int, average: bool) -> None:
    """One frame, seven to compare, thirteen to average: refused."""
    work = average_several if average else compare_several
    with pytest.raises(NumberOfFramesError):
        work([known()[0]] * number, [falls()[0]] * number, Wishes())


def test_window_stays_in_the_frame() -> None:
    """The window holds what is looked for and never leaves the frame, nor grows beyond it."""
    where = np.zeros((72, 48), np.bool_)
    where[60:, 40:] = True
    seen = np.ones_like(where)
    assert fullest_window(where, (720, 480, 3), (200, 200), seen) == (280, 520, 200, 200)
    assert fullest_window(where, (720, 480, 3), (9000, 200), seen) == (0, 520, 480, 200)
    assert fullest_window(np.zeros_like(where), (720, 480, 3), (9, 9), seen) is None
