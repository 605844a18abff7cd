"""A choice of the bot's own, answered in words with more behind them."""

from __future__ import annotations

from typing import Final

import pytest

from bot.dialogue.meaning.said import Said
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.texts import speaking
from bot.dialogue.worded_choice import behind_new_walk, worded
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked

_LANGUAGES: Final = {"en": "english", "de": "sprache deutsch", "es": "idioma español"}


def _said(text: str, language: str) -> Said:
    return Said(glossed(text, language), text, language)


@pytest.mark.parametrize(
    ("language", "text", "value", "rest"),
    [
        ("en", "a new walk please, I would rather begin properly", "new", ""),
        ("en", "new one yea. shooting w phone 1x, 2m high", "new", "shooting w phone 1x, 2m high"),
        ("en", "New walk shooting with my phone", "new", "shooting with my phone"),
        ("en", "go on please", "go_on", ""),
        ("en", "no, carry on with the old one", "go_on", "no,"),
        ("de", "weiter machen bitte", "go_on", ""),
        ("de", "neue bitte, der Fall ist 7 m hoch", "new", "der Fall ist 7 m hoch"),
        ("de", "mit der alten Tour weiter", "go_on", ""),
        ("de", "nochmal von vorn anfangen bitte", "new", ""),
        ("es", "seguimos, gracias", "go_on", ""),
        ("es", "uno nuevo, la cascada mide 7 m", "new", "la cascada mide 7 m"),
    ],
)
def test_a_choice_in_words(language: str, text: str, value: str, rest: str) -> None:
    """Small words around it change nothing; the other clauses are beside it."""
    found = worded(QUESTIONS["restart"], _said(text, language))
    assert found is not None
    assert (found.value, found.rest.typed) == (value, rest)


@pytest.mark.parametrize(
    ("question", "text"),
    [
        ("restart", "not a new walk"),
        ("restart", "new walk, or go on?"),
        ("restart", "the new filter is on"),
        ("restart", "2, new walk, go on"),
        ("too_near", "2"),
        ("top", "leaves, please"),
    ],
)
def test_no_choice_in_words(question: str, text: str) -> None:
    """What is denied, weighed, or of something else chooses nothing; nor does a number here."""
    assert worded(QUESTIONS[question], _said(text, "en")) is None


def test_what_stands_behind_a_new_walk_is_learnt_in_it() -> None:
    """Kit and geometry beside the choice are of the new walk."""
    player = walked("start", "2, but remember please: a 6 stop. Fall 7 m, I stand 15 m away")
    facts = known(player).facts
    assert (facts.fall_height_m, facts.distance_m, facts.nd_stops) == (7, 15, (6,))
    assert facts.nearest_m is None


def test_another_action_in_words() -> None:
    """A section is taken with its height behind it."""
    found = worded(QUESTIONS["too_near"], _said("take a section please, the lower 4 m", "en"))
    assert found is not None
    assert (found.value, found.rest.typed) == ("section", "the lower 4 m")


@pytest.mark.parametrize("language", _LANGUAGES)
def test_going_on_is_answered_where_no_question_stands(language: str) -> None:
    """The question of the step is put then, whatever stood open before."""
    player = Player()
    player.say(_LANGUAGES[language])
    for line in ("start", "stop", "12 m", "start"):
        player.say(line)
    words = {"en": "go on please", "de": "weiter machen bitte", "es": "seguir por favor"}
    (message,) = player.say(words[language])
    assert message.question


def test_a_wish_for_a_new_walk_needs_no_question() -> None:
    """Who says so in a message begins it, and what stands beside is of that walk."""
    player = walked("this is broken tbh can we start again. The fall is 9 m")
    assert known(player).facts.fall_height_m == 9
    assert known(player).facts.distance_m is None


@pytest.mark.parametrize(
    "text", ["how do I start again?", "should I start a new walk tomorrow?", "the walk was new"]
)
def test_no_wish_for_a_new_walk(text: str) -> None:
    """Who asks about one, or tells of one, begins none."""
    assert behind_new_walk(_said(text, "en")) is None


def test_words_choose_after_a_night() -> None:
    """So is the old walk left, or gone on with, in words with facts behind them."""
    player = walked("! later 9 h")
    player.happen("later 9 h")
    assert "ask.resume" in keys_of(player, "back at the water")
    player.say("a new walk please. The fall is 9 m tall, I am 14 m away")
    assert known(player).facts.distance_m == 14


def test_facts_behind_going_on_after_a_night() -> None:
    """What waited was a command, so the facts beside the choice are taken in."""
    player = walked()
    player.happen("later 9 h")
    assert "ask.resume" in keys_of(player, "where am I")
    player.say("go on please. I am 14 m away now")
    assert known(player).facts.distance_m == 14


@pytest.mark.parametrize(
    ("language", "question", "text", "value", "rest"),
    [
        ("en", "sides", "yes clean, how do i focus?", "clean", "how do i focus?"),
        ("en", "sides", "clean, what a lovely place", "clean", "what a lovely place"),
        ("en", "blink", "dots, which iso then?", "dots", "which iso then?"),
        ("de", "sides", "sauber, wie stell ich scharf?", "clean", "wie stell ich scharf?"),
        ("es", "blink", "puntos, ¿qué iso pongo?", "dots", "¿qué iso pongo?"),
    ],
)
def test_what_is_seen_with_more_behind(
    language: str, question: str, text: str, value: str, rest: str
) -> None:
    """An option in its own words is chosen, whatever else is told or asked behind it."""
    with speaking(language):
        found = worded(QUESTIONS[question], _said(text, language))
    assert found is not None
    assert (found.value, found.rest.typed) == (value, rest)


@pytest.mark.parametrize(
    ("question", "text"),
    [
        ("sides", "clean, but how is the left?"),
        ("sides", "clean, a twig on the left"),
        ("blink", "dots, all over the place"),
        ("blink", "no, it does not"),
        ("blink", "dots, please"),
        ("sides", "clean"),
        ("sides", "..."),
    ],
)
def test_what_is_seen_and_taken_back(question: str, text: str) -> None:
    """What stands behind may say otherwise; alone, an option is a plain reply."""
    assert worded(QUESTIONS[question], _said(text, "en")) is None


@pytest.mark.parametrize("line", ["2, my wife says hello", "new walk please, lovely weather"])
def test_talk_behind_a_choice_leaves_its_question_last(line: str) -> None:
    """What tells nothing and asks nothing changes nothing."""
    player = Player()
    for before in ("start", "12 m tall, 18 m away", "start"):
        player.say(before)
    assert player.say(line)[0].keys[-1] == "ask.geometry"
