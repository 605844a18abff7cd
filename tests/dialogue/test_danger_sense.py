"""What a message means as a whole, and how that sounds of danger."""

from __future__ import annotations

import numpy as np
import pytest

from bot.dialogue.danger.features import heard_in
from bot.dialogue.danger.judged import judged
from bot.dialogue.danger.likelihood import trained
from bot.dialogue.danger.sense import learned
from bot.dialogue.sense import seen_from, senses_of
from tests.training import sense as training
from tests.training.danger import messages
from tests.training.ingredients import stored_fingerprint

#: Pairs of a common phrase book, thought anew in each language.
SAME = [
    ("my friend fell into the water", "mein Freund ist ins Wasser gefallen"),
    ("the water is rising fast", "el agua está subiendo rápido"),
    ("we lost the path", "hemos perdido el camino"),
    ("which lens shall I take?", "welches Objektiv soll ich nehmen?"),
]


@pytest.mark.parametrize(("one", "other"), SAME)
def test_the_same_in_another_language_means_the_same(one: str, other: str) -> None:
    """A sentence is nearer to its own translation than to any other sentence of the list."""
    rest = [text for pair in SAME if one not in pair for text in pair]
    first, second, *others = senses_of([one, other, *rest])
    assert first @ second > max(first @ far for far in others)


def test_senses_are_directions() -> None:
    """Of length 1, whatever the case, the length or the emptiness of a message."""
    senses = senses_of(["HELP", "help", "", "water " * 4000])
    assert senses.shape == (4, 512)
    assert np.linalg.norm(senses, axis=1) == pytest.approx(1, abs=1e-4)
    assert senses[0] == pytest.approx(senses[1])


def test_a_sense_in_the_middle_is_no_error() -> None:
    """A message that means just what all mean together has no direction from there."""
    middle = np.ones(3, dtype=np.float32)
    seen = seen_from(middle, np.array([[1, 1, 1], [1, 1, 2]], dtype=np.float32))
    assert seen == pytest.approx(np.array([[0, 0, 0], [0, 0, 1]]))


def test_the_sense_is_asked_only_where_words_leave_room() -> None:
    """Settings are past doubt by their words; a plight in rare words is not."""
    settled = "f/11, 1/4 s, iso 100, tripod, polariser"
    words = trained().likely(heard_in(settled).features)
    assert judged(settled) == words
    rare = "she tumbled off the ledge and is not answering"
    assert judged(rare).odds > trained().likely(heard_in(rare).features).odds


def test_a_danger_late_in_a_long_message_is_not_outweighed() -> None:
    """The sense is that of the beginning; the words of the end count for themselves."""
    text = "the light on the moss was soft and we had all the time. " * 12 + "Then he slipped in."
    assert judged(text) == trained().likely(heard_in(text).features)


def test_sense_alone_moves_odds_so_far_at_most() -> None:
    """No message is surer by its sense than the bound says."""
    odds = learned().odds(senses_of(["help, he is drowning", "a nice picture of moss"]))
    assert 0 < odds[0] <= 8
    assert -8 <= odds[1] < 0


def test_network_was_learned_from_what_is_there() -> None:
    """Corpora and the recipe are those that the network came from."""
    assert training.ingredients(messages()) == stored_fingerprint(training.NUMBERS)
