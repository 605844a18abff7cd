"""What enters or glares at the borders of a frame: scenes with known things, laws, bad input."""

from __future__ import annotations

from dataclasses import replace

import cv2
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from numpy.typing import NDArray

from core.frame import border_trees, borders
from core.frame.border_bodies import FEATURES as BODY_FEATURES
from core.frame.border_bodies import body_features
from core.frame.border_bright import bright_runs
from core.frame.border_lines import Places, salient_places
from core.frame.border_sides import Canvas, lab_of, turned
from core.frame.border_tracks import tracks_of
from core.frame.border_trees import NUMBERS, trained
from core.frame.borders import find_borders
from core.frame.findings import Border, BorderFinding, BorderKind, WaterArea
from core.frame.working import working_copy
from tests.scenes.intruders import Intruder, plant
from tests.scenes.noise import fractal
from tests.training import borders as recipe
from tests.training.backdrops import backdrop
from tests.training.kinds import file_of

Pixels = NDArray[np.uint8]


def wall(seed: int = 3, size: tuple[int, int] = (800, 1200)) -> Pixels:
    """A mossy wall, even all over, shape (h, w, 3)."""
    rng = np.random.default_rng(seed)
    lumps = fractal(rng, size, (size[0] / 10, size[0] / 10), 6, 0.7)
    level = np.clip(90 + 9 * lumps, 0, 255)[..., None] * np.array([0.8, 1.0, 0.6])
    return np.asarray(level, np.uint8)


def stick(pixels: Pixels, row: int, long: int, shade: int = 12, thick: int = 14) -> Pixels:
    """A stick from the left border inwards."""
    laid = pixels.copy()
    cv2.line(laid, (-20, row), (long, row + 30), (shade, shade, shade), thick, cv2.LINE_AA)
    return laid


def found_at(pixels: Pixels, border: Border) -> list[BorderFinding]:
    return [one for one in find_borders(working_copy(pixels)) if one.border is border]


def test_a_dark_stick_is_stated_where_it_enters() -> None:
    """A plain stick at the left, two thirds down, is stated there as a dark line."""
    (found,) = found_at(stick(wall(), 530, 220), Border.LEFT)
    assert found.kind is BorderKind.LINE
    assert found.position == pytest.approx(530 / 800, abs=0.02)
    assert found.width == pytest.approx(14 / 800, abs=0.01)
    assert found.dark
    assert found.stated
    assert found.depth > 0.1


def test_a_pale_shape_cut_off_is_no_line() -> None:
    """A boulder that the right border cuts is a shape, and paler than the wall."""
    pixels = wall()
    cv2.ellipse(pixels, (1195, 300), (60, 50), 0, 0, 360, (150, 140, 125), -1, cv2.LINE_AA)
    (found,) = found_at(pixels, Border.RIGHT)
    assert found.kind is BorderKind.CUT
    assert not found.dark
    assert found.position == pytest.approx(300 / 800, abs=0.03)


def glare(pixels: Pixels, middle: tuple[int, int], radius: int) -> Pixels:
    laid = pixels.copy()
    cv2.circle(laid, middle, radius, (250, 252, 250), -1, cv2.LINE_AA)
    return laid


def test_glare_is_stated() -> None:
    """A white patch at the right border is stated, with its place, width and depth."""
    (found,) = found_at(glare(wall(), (1199, 480), 40), Border.RIGHT)
    assert found.kind is BorderKind.BRIGHT
    assert found.stated
    assert found.position == pytest.approx(480 / 800, abs=0.02)
    assert found.width == pytest.approx(80 / 800, abs=0.02)
    assert found.depth == pytest.approx(40 / 800, abs=0.02)


def test_white_along_the_top_is_sky() -> None:
    """White over a third of the top border is sky."""
    pixels = wall()
    pixels[:70, 300:700] = (250, 251, 253)
    (found,) = found_at(pixels, Border.TOP)
    assert found.kind is BorderKind.SKY
    assert found.stated
    assert found.position == pytest.approx(500 / 1200, abs=0.02)
    assert found.width == pytest.approx(400 / 1200, abs=0.02)


@pytest.mark.parametrize("seed", [3, 4, 5])
def test_an_even_wall_is_clean(seed: int) -> None:
    """Nothing is stated where nothing enters."""
    assert not [one for one in find_borders(working_copy(wall(seed))) if one.stated]


def test_many_sticks_are_one_finding() -> None:
    """Four sticks at one side are told as a busy side, not as a list."""
    pixels = wall()
    for row in (100, 260, 440, 620):
        pixels = stick(pixels, row, 180)
    (found,) = found_at(pixels, Border.LEFT)
    assert found.kind is BorderKind.BUSY
    assert found.stated
    assert found.dark
    assert found.width > 0.6


def test_water_that_leaves_the_frame_is_not_glare() -> None:
    """White in the proposed water is asked about at most; where the person named it, not at all."""
    pixels = glare(wall(), (1199, 480), 60)
    work = working_copy(pixels)
    proposed = find_borders(work, WaterArea(("C4",), None))
    assert not [one for one in proposed if one.stated]
    assert any(one.kind is BorderKind.BRIGHT for one in proposed)
    assert not find_borders(work, WaterArea(("C4",), None, by_person=True))
    elsewhere = find_borders(work, WaterArea(("A1",), None, by_person=True))
    assert any(one.stated for one in elsewhere)


def test_a_thing_in_a_corner_is_told_once() -> None:
    """A boulder in the lower left corner touches two borders and is one finding."""
    pixels = glare(wall(), (0, 799), 70)
    found = [one for one in find_borders(working_copy(pixels)) if one.stated]
    assert len(found) == 1
    assert found[0].border in {Border.LEFT, Border.BOTTOM}


FINDING = BorderFinding(Border.TOP, BorderKind.LINE, 0.02, 0.02, 0.1, True, 0.9, True)


@pytest.mark.parametrize(
    ("other", "kept"),
    [
        (replace(FINDING, border=Border.LEFT), 1),
        (replace(FINDING, border=Border.LEFT, kind=BorderKind.BRIGHT), 2),
        (replace(FINDING, border=Border.LEFT, position=0.5), 2),
        (replace(FINDING, border=Border.LEFT, position=0.5, width=1.0), 2),
        (replace(FINDING, border=Border.RIGHT), 2),
        (replace(FINDING, position=0.05), 2),
        (replace(FINDING, border=Border.BOTTOM), 2),
    ],
)
def test_only_one_thing_in_a_corner_counts_once(other: BorderFinding, kept: int) -> None:
    """Things of one kind at both borders of one corner are one; any others are two."""
    assert len(borders._once_in_corners([FINDING, other])) == kept


def test_findings_come_surest_first() -> None:
    """What is stated stands first, then the surer one; never more than a dozen."""
    rng = np.random.default_rng(8)
    light = backdrop("gravel.png", rng)
    found = find_borders(working_copy(file_of(recipe.populated(light, rng)[0], rng)[0]))
    keys = [(not one.stated, -one.confidence) for one in found]
    assert keys == sorted(keys)
    assert len(found) <= 12
    for one in found:
        assert 0 <= one.position <= 1
        assert 0 < one.width <= 1
        assert 0 < one.confidence <= 1


@pytest.mark.parametrize("shape", [(1, 1), (1, 400), (400, 1), (7, 9), (40, 60)])
@pytest.mark.parametrize("code", [0, 127, 255])
def test_flat_and_tiny_pictures_have_nothing(shape: tuple[int, int], code: int) -> None:
    """A picture of one colour, however small, has nothing at its borders and breaks nothing."""
    assert find_borders(working_copy(np.full((*shape, 3), code, np.uint8))) == ()


@settings(max_examples=15, deadline=None)
@given(st.integers(0, 2**31), st.integers(3, 120), st.integers(3, 120))
def test_noise_breaks_nothing(seed: int, height: int, width: int) -> None:
    """Any pixels give findings within the frame."""
    rng = np.random.default_rng(seed)
    pixels = rng.integers(0, 256, (height, width, 3), dtype=np.uint8)
    for one in find_borders(working_copy(pixels)):
        assert 0 <= one.position <= 1
        assert one.depth > 0


@pytest.mark.parametrize("border", list(Border))
def test_a_turned_side_is_a_view_with_the_border_first(border: Border) -> None:
    """The first row of a turned picture lies along the border, counted from the top or left."""
    picture = np.arange(12).reshape(3, 4)
    edges = {
        Border.TOP: picture[0], Border.BOTTOM: picture[-1],
        Border.LEFT: picture[:, 0], Border.RIGHT: picture[:, -1],
    }  # fmt: skip
    view = turned(picture, border)
    assert view[0].tolist() == edges[border].tolist()
    assert view.base is not None


@pytest.mark.parametrize("border", list(Border))
def test_means_and_spreads_are_those_of_numpy(border: Border) -> None:
    """Rectangles by summed areas agree with numpy's mean and standard deviation."""
    rng = np.random.default_rng(4)
    canvas = Canvas.of(rng.integers(0, 256, (90, 140, 3), dtype=np.uint8))
    side = canvas.side(border)
    rows, along = (np.array([0, 5, -3]), np.array([4, 20, 6])), (
        np.array([3, 10, -5]), np.array([9, 11, 4]))  # fmt: skip
    means, parts = side.means(rows, along)
    spreads = side.spreads(rows, along)
    for index in range(3):
        piece = side.stored[max(rows[0][index], 0) : rows[1][index],
                            max(along[0][index], 0) : along[1][index]]  # fmt: skip
        assert means[index] == pytest.approx(lab_of(piece.reshape(-1, 3).mean(axis=0)), abs=1e-3)
        assert spreads[index] == pytest.approx(piece[..., 0].std() * 100 / 255, abs=1e-3)
    assert parts.tolist() == [1.0, 1.0, pytest.approx(6 * 4 / (9 * 9))]


def test_a_line_is_followed_inwards() -> None:
    """The track of a stick is about as long as the stick, and ends where reach ends."""
    canvas = Canvas.of(stick(wall(), 400, 150))
    side = canvas.side(Border.LEFT)
    places = salient_places(side)
    track = tracks_of(side, places)
    first = int(np.argmin(np.abs(places.at - 400 / 1.2)))
    assert track.length[first] == pytest.approx(150 / 1.2, rel=0.25)
    assert track.low[first] < places.at[first] < track.high[first]


def body_of(pixels: Pixels, row: int) -> dict[str, float]:
    """Numbers of the body at the place of the left border that is nearest to a row."""
    canvas = Canvas.of(pixels)
    side = canvas.side(Border.LEFT)
    places = salient_places(side)
    numbers = body_features(side, places, tracks_of(side, places))
    first = int(np.argmin(np.abs(places.at - row / 1.2)))
    return dict(zip(BODY_FEATURES, numbers[first].tolist(), strict=True))


def test_the_body_of_a_stick_has_its_size() -> None:
    """A stick of 14 by 150 px in a frame of 800 is as deep and as wide, and ends in the frame."""
    body = body_of(stick(wall(), 400, 150), 400)
    assert body["body depth"] == pytest.approx(150 / 800, rel=0.1)
    assert np.exp(body["body width"]) == pytest.approx(14 / 800, rel=0.25)
    assert body["body reaches in"] == 0
    assert body["body reaches the sides"] == 0
    assert body["ring even"] < 0.1


def test_the_body_of_a_log_across_the_frame_does_not_end() -> None:
    """What goes on further in than anything is looked at is said to."""
    assert body_of(stick(wall(), 400, 900), 400)["body reaches in"] == 1


def test_a_soft_body_has_a_duller_outline() -> None:
    """Out of focus, the outline of the same stick is less steep."""
    sharp = stick(wall(), 400, 150, thick=30)
    soft = np.asarray(cv2.GaussianBlur(sharp, (0, 0), 6), np.uint8)
    assert body_of(soft, 400)["edge"] < 0.6 * body_of(sharp, 400)["edge"]


def test_what_does_not_hang_together_is_no_body() -> None:
    """In a chequer of single pixels nothing hangs together: all numbers are 0."""
    rows, columns = np.indices((120, 160))
    grey = ((rows + columns) % 2 * 255).astype(np.uint8)
    side = Canvas.of(np.stack([grey] * 3, axis=-1)).side(Border.LEFT)
    one, way = np.ones(1, np.float32), np.array([[-1, 0, 0]], np.float32)
    places = Places(
        np.array([60]), np.array([3]), 0 * one, 40 * one, 5 * one, one, way, one > 1
    )  # fmt: skip
    assert not body_features(side, places, tracks_of(side, places)).any()


def test_bright_runs_with_a_small_gap_are_one() -> None:
    """Two bright pieces with a twig between them are one run; far apart they are two."""
    pixels = wall()
    pixels[:40, 300:400] = pixels[:40, 406:500] = 252
    (run,) = [one for one in bright_runs(Canvas.of(pixels)) if one.border is Border.TOP]
    np.testing.assert_allclose(run.along, (0.25, 500 / 1200), atol=0.01)
    pixels[:40, 700:800] = 252
    assert len([one for one in bright_runs(Canvas.of(pixels)) if one.border is Border.TOP]) == 2


def test_a_border_white_all_along_is_one_run() -> None:
    """Without flanks the inside of the frame is what the border is compared with."""
    pixels = wall()
    pixels[:60] = 252
    (run,) = [one for one in bright_runs(Canvas.of(pixels)) if one.border is Border.TOP]
    np.testing.assert_allclose(run.along, (0, 1))
    assert run.score > 20


def test_as_many_runs_are_kept_as_are_looked_at() -> None:
    """A side with many bright spots keeps the best eight."""
    pixels = wall()
    for left in range(20, 1180, 90):
        pixels[:30, left : left + 30] = 252
    assert len([one for one in bright_runs(Canvas.of(pixels)) if one.border is Border.TOP]) == 8


# the trees


@pytest.mark.parametrize("topic", ["line", "bright"])
def test_the_trees_grow_again_from_the_table(topic: border_trees.Topic) -> None:
    """The first trained trees come out of the stored samples, bit by bit."""
    with np.load(recipe.TABLE, allow_pickle=False) as table:
        samples = table[f"{topic}_features"].astype(np.float32)
        planted = table[f"{topic}_planted"].astype(np.bool_)
    again = recipe.grown(topic, samples, planted, trees=2)
    with np.load(NUMBERS, allow_pickle=False) as shipped:
        for name, array in again.items():
            assert np.array_equal(shipped[f"{topic}_{name}"][: len(array)], array), name


@pytest.mark.parametrize(
    "source", ["gravel.png", "gorge", "brick.png", "other gorge", "third gorge"]
)
def test_the_table_is_made_again_from_the_recipe(source: str) -> None:
    """Samples of the packages' own pictures, drawn again, are those of the table."""
    number, part = next(one for one in enumerate(recipe.PARTS) if source in one[1].sources)
    before = sum(part.frames for part in recipe.PARTS[:number])
    said, found = recipe.samples(before + part.sources.index(source), None)
    features, planted = found["line"]
    assert said == source
    with np.load(recipe.TABLE, allow_pickle=False) as table:
        theirs = table["line_source"] == recipe.SOURCES.index(source)
        stored = table["line_features"][theirs][: len(features)].astype(np.float64)
        assert table["line_planted"][theirs][: len(features)].tolist() == planted.tolist()
    assert np.quantile(np.abs(stored - features), 0.95) < 0.03


@pytest.mark.parametrize("topic", ["line", "bright"])
def test_surer_odds_are_surer_statements(topic: border_trees.Topic) -> None:
    """Confidence never falls with the odds, and is a rate."""
    trees = trained(topic)
    assert (np.diff(trees.said) > 0).all()
    assert (np.diff(trees.rate) > 0).all()
    assert trees.rate.min() >= 0
    assert trees.rate.max() <= 1
    assert NUMBERS.stat().st_size < 300_000


def test_the_pictures_for_figures_are_not_trained_on() -> None:
    """What is held out stays out."""
    assert not set(recipe.SOURCES) & {*recipe.HELD_OUT, "unseen gorge"}


# the scenes


def test_planted_things_lie_where_they_say() -> None:
    """Outside of the spans that it states, a planted thing changes nothing at a border."""
    rng = np.random.default_rng(12)
    light = np.full((300, 450, 3), 0.2, np.float32)
    for kind in (BorderKind.LINE, BorderKind.CUT, BorderKind.BRIGHT, BorderKind.SKY):
        laid = next(one for one in (plant(light, rng, kind) for _ in range(40)) if one is not None)
        changed, intruder = laid
        assert intruder.kind is kind
        for border in Border:
            row = turned(changed, border)[0]
            touched = np.flatnonzero(np.abs(row - 0.2).max(axis=1) > 0.1) / len(row)
            _check_spans(intruder, border, touched)


def _check_spans(intruder: Intruder, border: Border, touched: NDArray[np.float64]) -> None:
    if border not in intruder.spans:
        assert len(touched) < 6
        return
    low, high = intruder.spans[border]
    assert ((touched > low - 0.05) & (touched < high + 0.05)).all()
