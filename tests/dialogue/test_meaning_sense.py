"""Topics, sights and options by likeness to examples: in words that no example holds."""

from __future__ import annotations

from functools import cache

import numpy as np
import pytest

from bot.dialogue.meaning.likeness import STEPS, TOLD, Stepped, learned
from bot.dialogue.meaning.pieces import PLACES, places_of
from bot.dialogue.meaning.said import Said, in_english
from bot.dialogue.meaning.topics import before_told, topic_of
from bot.dialogue.sense import senses_of
from tests.training.meanings import RIDGE, TABLES, Rows, rows_of

#: Senses are kept in whole steps, weights in half precision.
_ROUNDED = 0.02
#: So many examples of each table are looked at, one in so many of its order.
_LOOKED_AT = 150


@cache
def _rows(name: str) -> Rows:
    return rows_of(name, senses=learned(name).examples)


@pytest.mark.parametrize("name", TABLES)
def test_weights_solve_the_fit_of_the_examples(name: str) -> None:
    """(K + ridge) w is the truth, row by row: Rifkin et al. (2003), eq. 3; from memory."""
    rows, stored = _rows(name), learned(name)
    some = np.linspace(0, len(rows.truth) - 1, _LOOKED_AT).astype(int)
    again = rows.alike(some) @ stored.weights + RIDGE * stored.weights[some]
    assert stored.labels == rows.labels
    assert np.abs(again - rows.truth[some]).max() <= _ROUNDED


@pytest.mark.parametrize("name", TABLES)
def test_senses_are_those_of_the_examples(name: str) -> None:
    """Looked at anew along the same axes, the senses are those that come with the code."""
    stored = learned(name)
    texts = [text for texts in TABLES[name]().values() for text in texts]
    some = np.linspace(0, len(texts) - 1, _LOOKED_AT).astype(int)
    anew = stored.axes.seen(senses_of([texts[place] for place in some]))
    assert stored.examples[some] == pytest.approx(anew, abs=1 / STEPS)


@pytest.mark.parametrize("name", TABLES)
def test_words_add_what_their_examples_weigh(name: str) -> None:
    """What likeness in words adds is the same, summed over features or over examples."""
    rows, stored = _rows(name), learned(name)
    of_words = 0.5 * (rows.words.T @ stored.weights)
    assert stored.words.values() == pytest.approx(of_words, abs=2 * float(stored.words.step))
    assert stored.rarity == pytest.approx(rows.rarity, abs=1e-4)


def test_a_message_is_near_to_what_it_means_in_other_words() -> None:
    """No example speaks of four legs."""
    near = learned("topics").nearness("how do I stop the camera from shaking on its four legs")
    assert max(near, key=lambda label: near[label]) == "tripod_blur"


@pytest.mark.parametrize(
    "said",
    [
        in_english("full frame, 16 to 35, tripod and a three stop nd"),
        Said("what", "16 Meter hoch, 20 weg, Stein bei 1,2", "de"),
        Said("what", "es una cascada de unos 12 m, estoy a 18", "es"),
    ],
)
def test_what_tells_facts_is_no_topic(said: Said) -> None:
    """Facts have a label of their own, since their words are those of topics, too."""
    near = learned("topics").nearness(said.own)
    assert max(near, key=lambda label: near[label]) == TOLD
    assert topic_of(said) is None
    assert before_told(said, "lens") < 0


def test_features_do_not_hang_on_accents_or_numbers() -> None:
    """Letters are taken plain, and every number is the same word."""
    assert places_of("trípode a 12 m").tolist() == places_of("Tripode a 7,5 m").tolist()
    assert places_of("").size == 0
    assert 0 <= places_of("polariser on").min() <= places_of("polariser on").max() < PLACES


def test_values_are_kept_to_a_step() -> None:
    """Half a step at most is lost, and an array of nothing stays nothing."""
    values = np.linspace(-1, 2, 50, dtype=np.float32)
    kept = Stepped.of(values)
    assert np.abs(kept.values() - values).max() <= kept.step / 2 + 1e-6
    assert not Stepped.of(np.zeros(3, np.float32)).values().any()
