"""Matching by meaning: word forms, slips, ideas, and what is no topic at all."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning import sights, topics
from bot.dialogue.meaning.said import OWN_TABLES, in_english, table_of
from bot.dialogue.meaning.tables import examples


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


@pytest.mark.parametrize("language", ["en", *OWN_TABLES])
@pytest.mark.parametrize("table", ["topics", "small_talk", "sights"])
def test_tables_hold_each_example_once(table: str, language: str) -> None:
    """An example stands under one label only, and every label has several."""
    found = examples(table_of(table, language))
    said = [text for texts in found.values() for text in texts]
    assert len(said) == len(set(said))
    assert all(len(texts) >= 4 for texts in found.values())


@pytest.mark.parametrize("language", OWN_TABLES)
@pytest.mark.parametrize("table", ["topics", "small_talk", "sights", "options"])
def test_tables_have_the_same_labels_in_every_language(table: str, language: str) -> None:
    """What can be meant in English can be meant in another language."""
    assert examples(table_of(table, language)).keys() == examples(table).keys()


def test_what_tells_of_no_frame_is_talk() -> None:
    """Small talk is nearer to itself than to any cause."""
    assert sights.nearest(in_english("who won the match tonight"))[0] == sights.TALK
