"""Which length a number is, weighed by the words around it: features, shares, what comes of it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Final

import numpy as np
import pytest

from bot.dialogue.facts import Facts
from bot.dialogue.reading import weighed_lengths
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.length_candidates import candidates_in
from bot.dialogue.reading.length_features import PLACES, features_of, number_of
from bot.dialogue.reading.length_sense import KINDS, SLOTS, Sensed, Weights, learned, sensed
from bot.dialogue.reading.numbers import scan
from bot.dialogue.reading.walking import way_min_in
from tests.dialogue.reading_checks import told
from tests.training import lengths as training
from tests.training.ingredients import stored_fingerprint

INCH_M: Final = 0.0254  # international inch, exact
H, D, N, S, X = range(len(KINDS))
Weigh = Callable[..., Draft]


def _draft(text: str, *expecting: str) -> Draft:
    return Draft(text, frozenset(expecting), None)


def _sure_of(kind: int, share: float = 1.0, rest: int = X) -> list[float]:
    """A row of shares: so likely of one kind, else of another."""
    row = [0.0] * len(KINDS)
    row[rest] += 1 - share
    row[kind] += share
    return row


@pytest.fixture
def weigh(monkeypatch: pytest.MonkeyPatch) -> Weigh:
    """Weigh a draft by shares that are made up, so that no trained weight matters."""

    def weighed(draft: Draft, *shares: list[float]) -> Draft:
        found = Sensed(candidates_in(draft.text, draft.quantities), np.array(shares, np.float32))
        assert len(found.candidates) == len(shares)
        monkeypatch.setattr(weighed_lengths, "sensed", lambda *_: found)
        weighed_lengths.weigh_lengths(draft)
        return draft

    return weighed


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("the fall is 12 m high and the pool 8.5 wide", [(12.0, "m"), (8.5, "")]),
        ("5-7 m of water, 1 1/2 m of moss", [(6.0, "m"), (1.5, "m")]),
        ("20 paces to the pool", [(20.0, "step")]),
        ("one big step or two and a half steps", [(1.0, "step"), (2.5, "step")]),
        ("half a metre, or an arm's length", [(0.5, "m"), (1.0, "arm")]),
        ("a fern, eight to the fall", [(8.0, "")]),
        ("1/8 s at f/11, +2 and iso 100", []),
    ],
)
def test_numbers_that_may_be_lengths(text: str, found: list[tuple[float, str]]) -> None:
    """Measured, bare, in paces, in arms and in small words; times, settings and signs never."""
    candidates = candidates_in(text, scan(text))
    assert [(one.value, one.unit) for one in candidates] == found


def _features(text: str, *known: str) -> list[frozenset[str]]:
    numbers = frozenset(map(number_of, known))
    return features_of(text, candidates_in(text, scan(text)), numbers)


def test_words_around_are_features() -> None:
    """Words of each side by their place, within the clause and beyond; rare ones are alike."""
    (found,) = _features("we wait, the quux waterfall drops 12 m into mist", "the", "drops", "into")
    assert {"L0 drops", "L1 waterfall", "L in clause quux", "R in clause mist"} <= found
    assert {"L wait", "L ends 4 ,", "LL drops waterfall"} <= found
    assert "L in clause wait" not in found
    assert {"L1 kind <fall>", "L2 kind <unknown>", "L3 kind the", "R0 kind into"} <= found
    assert {"unit m", "size 3 True", "number 0 of 1", "in words False"} <= found
    assert "R ends 0 ," not in found


def test_numbers_around_are_features() -> None:
    """Another number is a mark that ends the clause, and the one before is a measure."""
    first, longer, alike, shorter = _features("drop 10 m, me 14 m off, bank 15 m, fern two")
    assert not {"longer", "shorter", "as long"} & first
    assert ("longer" in longer, "as long" in alike, "shorter" in shorter) == (True, True, True)
    assert {"L ends 1 ,", "L §"} <= longer
    assert {"in words True", "number 3 of 4", "unit ", "size 1 False"} <= shorter


def test_each_number_is_weighed_behind_the_one_before() -> None:
    """Steps add up to odds, shares to one, and what a number is taken for counts for the next."""
    scores = np.zeros((PLACES, len(KINDS)), np.int8)
    scores[number_of("before none"), H] = 20
    scores[number_of("before height"), D] = 30
    weights = Weights(np.zeros(len(KINDS), np.float32), scores, 0.1, frozenset())
    text = "about 12 m and 30 m"
    shares = weights.shares(text, candidates_in(text, scan(text)))
    assert shares.sum(axis=1) == pytest.approx([1, 1])
    assert shares[0, H] == pytest.approx(np.exp(2) / (np.exp(2) + 4))
    assert shares[1, D] == pytest.approx(np.exp(3) / (np.exp(3) + 4))


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("the waterfall is 12 m high and I stand 30 m away from it", [H, D]),
        ("the nearest stone is 80 cm from the lens", [N]),
        ("I only want the lowest 2 m of the fall in the picture", [S]),
        ("my rope is 30 m long", [X]),
    ],
)
def test_clear_words_are_weighed_rightly(text: str, kinds: list[int]) -> None:
    """Where the words leave no doubt, neither do the weights."""
    draft = _draft(text)
    assert sensed(draft.text, draft.quantities).shares.argmax(axis=1).tolist() == kinds


@pytest.mark.parametrize(
    ("text", "expecting", "more"),
    [
        ("maybe 15 m", ("distance_m",), True),
        ("maybe 15 m or 18 m", ("distance_m",), True),
        ("maybe 15 m", ("distance_m", "fall_height_m"), True),
        ("maybe 15 m or 18 m", ("distance_m", "fall_height_m"), False),
    ],
)
def test_what_is_asked_for_is_likelier(text: str, expecting: Sequence[str], more: bool) -> None:
    """A question for one length, or an answer of one number, makes what it asks for likelier."""
    quantities = scan(text)
    plain, asked = sensed(text, quantities), sensed(text, quantities, frozenset(expecting))
    kind = min(SLOTS[slot] for slot in expecting)
    assert bool((asked.shares[:, kind] > plain.shares[:, kind]).all()) is more
    assert asked.shares.sum(axis=1) == pytest.approx(np.ones(len(asked.candidates)))


def test_what_the_shares_tell() -> None:
    """The likeliest other kind, whether a twin fills the slot, and the surest first."""
    text = "keep 15 m off, they say, so 15 m it is at 1/8 s"
    first, second, time = scan(text)
    shares = np.array([_sure_of(X, 0.9, D), _sure_of(D, 0.6, N)], np.float32)
    found = Sensed(candidates_in(text, (first, second, time)), shares)
    assert not found.is_another("distance_m", first, 0.8)  # its twin is likely of the distance
    assert found.is_another("fall_height_m", first, 0.89)
    assert not found.is_another("fall_height_m", first, 0.91)
    assert found.is_another("nearest_m", second, 0.59)
    assert not found.is_another("nearest_m", second, 0.61)
    assert not found.is_another("distance_m", time, 0.0)  # it is not weighed
    _, candidate, slot = found.likeliest()[0]
    assert (candidate.quantity, slot) == (second, "distance_m")


@pytest.mark.parametrize(
    ("expecting", "share", "kept"),
    [((), 0.9, True), ((), 0.97, False), (("distance_m",), 0.75, False)],
)
def test_what_is_hardly_so_is_taken_back(
    weigh: Weigh, expecting: Sequence[str], share: float, kept: bool
) -> None:
    """A slot is emptied where its number is very likely another; one asked for, sooner."""
    draft = _draft("our tent has 4 m", *expecting)
    draft.put("distance_m", 4, draft.quantities[0])
    weigh(draft, _sure_of(X, share, D))
    assert draft.values == ({"distance_m": 4} if kept else {})


def test_what_is_put_right_stays(weigh: Weigh) -> None:
    """Words that put a number right outweigh all others: it is neither taken back nor placed."""
    draft = _draft("we see the fall, sorry, 4 m")
    draft.put("distance_m", 4, draft.quantities[0])
    assert weigh(draft, _sure_of(H)).values == {"distance_m": 4}
    assert weigh(_draft("we are not so near, sorry, 4 m"), _sure_of(D)).values == {}


def test_a_twin_keeps_what_was_placed(weigh: Weigh) -> None:
    """The same length, said again where it belongs, leaves the slot filled."""
    draft = _draft("the sign wants 15 m, so I keep 15 m")
    draft.put("distance_m", 15, draft.quantities[0])
    assert weigh(draft, _sure_of(X), _sure_of(D, 0.6)).values == {"distance_m": 15}
    assert draft.free() == []


@pytest.mark.parametrize(
    ("text", "share", "placed"),
    [
        ("my stand has 4 m", 0.75, {"distance_m": 4}),
        ("my stand has 4 m", 0.65, {}),
        ("my stand has 4", 0.75, {}),
        ("my stand has 4", 0.9, {"distance_m": 4}),
        ("my stand has four paces", 0.9, {"distance_m": 3}),
        ("my stand has 20 paces", 0.9, {"distance_m": 15}),
        ("my stand has half a metre", 0.9, {"distance_m": 0.5}),
    ],
)
def test_what_is_left_is_placed_where_sure(
    weigh: Weigh, text: str, share: float, placed: dict[str, float]
) -> None:
    """A length goes where it likely belongs; one without a unit has to be surer."""
    assert weigh(_draft(text), _sure_of(D, share)).values == placed


def test_what_was_refused_has_to_be_surer(weigh: Weigh) -> None:
    """A number that means something else stays; one told as unread may be placed, and is read."""
    draft = _draft("my stand has 4 m")
    draft.claim(draft.quantities[0])
    assert weigh(draft, _sure_of(D)).values == {}
    draft.refuse(draft.quantities[0])
    assert weigh(draft, _sure_of(D, 0.75)).values == {}
    assert draft.refused == draft.quantities
    assert weigh(draft, _sure_of(D, 0.9)).values == {"distance_m": 4}
    assert draft.facts() == Facts(distance_m=4)


def test_what_is_said_twice_is_not_unread(weigh: Weigh) -> None:
    """Another number as long as what fills a slot says it again; a different one is left."""
    text, rows = "the fern, an arm's length, {} away", [_sure_of(N), _sure_of(X)]
    again = weigh(_draft(text.format("70 cm")), *rows)
    assert (again.values, again.free()) == ({"nearest_m": pytest.approx(0.7)}, [])
    other = weigh(_draft(text.format("3 m")), *rows)
    assert (other.values, len(other.free())) == ({"nearest_m": pytest.approx(0.7)}, 1)


def test_bare_numbers_alone_are_not_weighed(weigh: Weigh) -> None:
    """Without words there is nothing to go by."""
    assert weigh(_draft("10 and 14"), _sure_of(H), _sure_of(D)).values == {}


def test_a_draft_gives_back_and_takes_up() -> None:
    """A number taken back is nobody's and no guess; what is taken up is disputed no more."""
    draft = _draft("8 m and 12 m and 9 m")
    first, second, third = draft.quantities
    draft.put("distance_m", 8, first)
    draft.guessed += ["distance_m", "iso"]
    assert (draft.source_of("distance_m"), draft.source_of("nearest_m")) == (first, None)
    assert (draft.is_placed(first.start), draft.is_left(first)) == (True, False)
    draft.take_back("distance_m")
    assert (draft.values, draft.guessed, draft.source_of("distance_m")) == ({}, ["iso"], None)
    assert (draft.is_placed(first.start), draft.is_left(first)) == (False, True)
    draft.put("distance_m", 8, first)
    draft.put("distance_m", 12, second)
    assert list(draft.refused) == [first, second]
    assert draft.is_left(second)
    draft.take_up("distance_m", second)
    assert list(draft.refused) == [first]
    draft.put("distance_m", 9, third)
    assert draft.values == {"distance_m": 9}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("6 in deep", {"water_depth_m": 6 * INCH_M}),
        ("rock 15 in away", {"nearest_m": 15 * INCH_M}),
        ("the fall is 8 m high, I counted 20 paces", {"fall_height_m": 8, "distance_m": 15}),
        ("my rope is 30 m long", {}),
    ],
)
def test_lengths_of_whole_messages(text: str, expected: dict[str, float]) -> None:
    """Inches before "deep" and "away" are lengths; so are paces, and a rope is none."""
    assert told(text) == pytest.approx(expected)


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("2 miles in, and with the pack on it takes me two hours", 120),
        ("3 km from the bridge, now it is more like an hour and a quarter", 75),
        ("with the pack on it takes me two hours", None),
        ("2 miles in. the picture takes me two hours", None),
    ],
)
def test_what_a_told_length_takes(text: str, minutes: float | None) -> None:
    """A time behind the length of the way, in its sentence, is that of the walk."""
    assert way_min_in(text) == minutes


def test_weights_were_learned_from_what_is_there() -> None:
    """Messages, what stands around their numbers, and the recipe are those of the weights."""
    assert training.ingredients(training.messages()) == stored_fingerprint(training.NUMBERS)


def test_labelled_lengths_stay_read() -> None:
    """Of each fifth labelled message: 99.6 in 100 lengths were read, all of those rightly."""
    said: list[int] = []
    meant: list[int] = []
    for row in training.rows(training.labelled()[::5]):
        shares = learned().shares(row.text, row.candidates)
        said += [int(one.argmax()) if one.max() >= 0.7 else X for one in shares]
        meant += row.kinds
    right = sum(one == other != X for one, other in zip(said, meant, strict=True))
    assert right >= 0.995 * sum(one != X for one in said)
    assert right >= 0.99 * sum(one != X for one in meant)
