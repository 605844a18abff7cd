"""Matching by meaning: word forms, slips, ideas, and what is no topic at all."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning import sights, topics
from bot.dialogue.meaning.nearest import Meanings
from bot.dialogue.meaning.said import in_english
from bot.dialogue.meaning.tables import EMPTY, examples, ideas
from bot.dialogue.meaning.words import features, tokens


@pytest.mark.parametrize(
    ("text", "topic"),
    [
        ("polarisers and how much light they swallow", "polariser_stops"),
        ("how slow must I go for water like satin?", "silky_time"),
        ("my horizn is crooked in all of them", "tilted"),  # one letter missing
        ("the autofokus hunts behind the dark filter", "hunting"),  # one letter wrong
        ("which lens shall I pack for the gorge", "lens"),
        ("do we need a permit for a workshop there", "permit"),
    ],
)
def test_a_topic_is_found_in_other_words(text: str, topic: str) -> None:
    """Endings, synonyms and slips of the thumb do not matter."""
    assert topics.topic_of(in_english(text)) == topic


@pytest.mark.parametrize(
    "text", ["", "blub", "lens", "12 m", "we drove home through the hills", "zzz qqq xxx"]
)
def test_other_talk_is_no_topic(text: str) -> None:
    """What is far from all examples, or too short, names no topic of the trade."""
    found = topics.topic_of(in_english(text))
    assert found is None or found.startswith("talk.")


@pytest.mark.parametrize("table", ["topics", "small_talk", "sights"])
def test_tables_hold_each_example_once(table: str) -> None:
    """An example stands under one label only, and every label has several."""
    said = [text for texts in examples(table).values() for text in texts]
    assert len(said) == len(set(said))
    assert all(len(texts) >= 4 for texts in examples(table).values())


def test_ideas_hold_words_in_lower_case() -> None:
    """Phrases are what `tokens` makes of a text, else they would never be found."""
    for idea, phrases in ideas().items():
        if idea != EMPTY:
            for phrase in phrases:
                assert phrase.split() == tokens(phrase) or any(c.isdigit() for c in phrase), phrase


def test_features_name_ideas_and_their_pairs() -> None:
    """The dark glass and the focus are ideas, and so is that they are named together."""
    found = features("cannot focus through the dark glass")
    assert {"=focus", "=nd"} <= set(found)
    assert "=focus=nd" in found


def test_a_long_word_may_have_two_slips() -> None:
    """From nine letters on two slips are mended, with fewer letters one."""
    known = frozenset({"polaris", "histogram", "focus"})
    assert "histogram" in features("histofrem", known)
    assert "fokux" in features("fokux", known)


def test_of_equally_near_words_the_first_is_meant() -> None:
    """Whatever the order is in which they are kept."""
    known = [f"{letter}ridge" for letter in "bf"] + [f"bridg{letter}" for letter in "aey"]
    for vocabulary in (frozenset(known), frozenset(reversed(known))):
        assert "bridga" in features("bridgu", vocabulary)


def test_nothing_known_is_near_nothing() -> None:
    """A message of foreign words only is at no distance to any label."""
    model = Meanings({"a": ("red apple", "green apple"), "b": ("fast train", "slow train")})
    assert set(model.nearness("").values()) == {0.0}
    near = model.nearness("an apple")
    assert near["a"] > near["b"]


def test_what_tells_of_no_frame_is_talk() -> None:
    """Small talk is nearer to itself than to any cause."""
    assert sights.nearest(in_english("who won the match tonight"))[0] == sights.TALK
