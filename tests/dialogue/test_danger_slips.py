"""Danger typed with wet gloves: unknown words are read as the known word one slip away."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dialogue.danger import Danger, DangerKind, Level, read_danger
from bot.dialogue.danger.slips import Words, gathered, hash_of, mended, plain_of
from tests.training import words as training
from tests.training.danger import messages


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("my leg is stcuk", "my leg is stuck"),  # turned
        ("the leddge", "the ledge"),  # held
        ("he slippe in", "he slipped in"),  # missing
        ("the water is risimg", "the water is rising"),  # a key beside
        ("we fell intothe river", "we fell into the river"),  # a blank
        ("der Bach stiegt", "der Bach steigt"),
        ("ins Wsser gefallen", "ins wasser gefallen"),
        ("me duelle el tobillo", "me duele el tobillo"),
    ],
)
def test_a_slip_is_mended(typed: str, meant: str) -> None:
    """One letter too few, too many, wrong, two in the other order, or a blank that is missing."""
    assert mended(typed) == meant


@pytest.mark.parametrize(
    "text",
    [
        "It's overcast, f/11 1/4 s, tripod.",
        "Polfilter drauf, Stativ steht",
        "la cascada está a 18 m, ¿qué abro?",
        "we met at Aberglaslyn",
        "zq xw",
        "thunderr" * 4,
        "the watrr is rising " * 40,
    ],
)
def test_known_words_names_and_numbers_stay(text: str) -> None:
    """What people write so, short words, and what is near nothing are left alone."""
    assert mended(text) == text


@pytest.mark.parametrize(
    "text",
    [
        "my freind felll intothe watr",
        "mein Kumpel ist ins Wasssr gefalen",
        "mi amigo se cayo al rrio y no slae",
    ],
)
def test_danger_is_heard_through_slips(text: str) -> None:
    """Several slips in a message do not silence it."""
    assert read_danger(text) is not None


def test_what_is_mended_is_asked_about_unless_certain() -> None:
    """Likeness after mending stops no walk outright; a cry that was surely meant does."""
    doubtful = read_danger("cant fnd the trial bck to the car")
    assert doubtful is not None
    assert not doubtful.is_told
    certain = read_danger("my freind felll intothe watr")
    assert certain is not None
    assert certain.level is Level.EMERGENCY


@pytest.mark.parametrize("text", ["teh tripdo stands", "das Statvi steht gut", "el tripdoe bien"])
def test_slips_in_harmless_words_alarm_nobody(text: str) -> None:
    """What is mended to words of the trade is as harmless as they are."""
    assert read_danger(text) is None


def test_who_follows_a_thing_into_the_water_is_heard() -> None:
    """A thing that falls in alarms nobody, alone."""
    assert read_danger("lens cap fell in") is None
    heard = read_danger("lens cap fell in and so did I")
    assert heard == Danger(DangerKind.IN_WATER, Level.EMERGENCY)


def test_plain_letters() -> None:
    """Accents and capitals do not matter for whether a word is known."""
    assert plain_of("Füße") == "fusse"
    assert plain_of("CAYÓ") == "cayo"


def test_which_word_was_meant() -> None:
    """The likelier slip of the more frequent word; short ones become frequent ones alone."""
    spelt = {word: word for word in ("fell", "well", "the", "toe", "in", "a", "river")}
    often = {"fell": 40, "well": 60, "the": 900, "toe": 4, "in": 900, "a": 900, "river": 5}
    words = Words(spelt, often, frozenset({hash_of("gell")}))
    assert words.knows("fell")
    assert words.knows("gell")
    assert not words.knows("ffll")
    assert words.near("felll") == "fell"
    assert words.near("qell") == "well"  # beside "w"
    assert words.near("teh") == "the"
    assert words.near("to") is None
    assert words.near("xyzzy") is None
    assert words.parted("theriver") == "the river"
    assert words.parted("ariver") == "a river"
    assert words.parted("toeriver") is None  # a toe is too rare
    assert words.parted("friver") is None


@given(st.text())
def test_only_words_change(text: str) -> None:
    """Whatever is typed, all that is no letter stays where it is, but for blanks that are added."""
    signs = re.compile(r"[^\W\d_]+|\s+")
    assert signs.sub("", mended(text)) == signs.sub("", text)


def test_words_are_what_the_recipe_gives() -> None:
    """Gathered anew from the corpora, the words are those that come with the code."""
    assert training.gathered(messages()) == gathered()
