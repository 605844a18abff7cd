"""Replies in free words: the option that they mean, and what is no reply at all."""

from __future__ import annotations

import pytest

from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.meaning.options import meant_at
from bot.dialogue.meaning.said import Said, in_english
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reply_sense import is_other, option_of, surer
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of

TOLD = "12 m tall, 18 m away, rock at 1.5 m, full frame, 24-70, tripod, polariser"


@pytest.mark.parametrize(
    ("question", "text", "option"),
    [
        ("top", "went tighter so it's all woods up there", "covered"),
        ("sides", "my camera strap dangles into it", "twig"),
        ("blink", "just pinpricks here and there", "dots"),
        ("blink", "the fall is a bright nothing", "sheet"),
        ("blink_again", "the warning has gone quiet", "nothing"),
        ("light", "we're in among the firs", "trees"),
        ("format", "the old film size one", "full_frame"),
        ("sky_gap", "pointed it lower and took it anew", "moved"),
        ("glass", "bone dry, wiped it a minute ago", "dry"),
        ("next", "same again but lower down", "again"),
    ],
)
def test_an_option_is_heard_in_free_words(question: str, text: str, option: str) -> None:
    """None of these words stands in a rule; a question that is put again hears the same."""
    assert option_of(QUESTIONS[question], in_english(text), Facts()) == option


@pytest.mark.parametrize(
    ("question", "language", "text", "option"),
    [
        ("blink", "de", "nur unten ein kleiner Teil blinkt", "patches"),
        ("sides", "de", "links ragt so ein Ast rein", "twig"),
        ("leaves", "de", "die stehen ganz ruhig", "no"),
        ("blink", "es", "parpadea casi toda la caída", "sheet"),
        ("light", "es", "estamos metidos debajo de los árboles", "trees"),
        ("next", "es", "le pongo el tele", "other_lens"),
    ],
)
def test_options_are_heard_in_other_languages(
    question: str, language: str, text: str, option: str
) -> None:
    """Examples of all languages teach each other."""
    assert option_of(QUESTIONS[question], Said("", text, language), Facts()) == option


@pytest.mark.parametrize(
    ("question", "text", "told"),
    [
        ("blink", "is that the same as clipping?", Facts()),  # asks
        ("blink", "about a third blinks", Facts(unread=("a third",))),
        ("blink", "the middle flashes at f/8", Facts(f_number=8.0)),
        ("blink", "yes", Facts()),  # of which option?
        ("blink", "thank you so much", Facts()),
        ("blink", "my sandwich is soggy", Facts()),
        ("area", "blub", Facts()),  # an unknown word is a little like something
        ("sides", "I parked by the bridge", Facts()),
        ("safe", "everyone is back on the path", Facts()),  # danger is answered by known words
    ],
)
def test_what_is_no_reply_is_left_alone(question: str, text: str, told: Facts) -> None:
    """What asks, tells more, thanks or is of something else chooses nothing."""
    assert option_of(QUESTIONS[question], in_english(text), told) is None


def test_words_of_an_option_do_not_make_a_reply() -> None:
    """`Everything` is a sheet of white, and of a soft picture it is not."""
    blink, soft = QUESTIONS["blink"], in_english("the whole picture looks fuzzy")
    assert is_other(blink, soft, Facts(symptoms=(Symptom.SOFT_ALL,)))
    assert not is_other(blink, soft, Facts(symptoms=(Symptom.JUST_WHITE,)))
    assert not is_other(blink, soft, Facts(wind=True))
    assert not is_other(blink, in_english("patches on the left side"), Facts())
    assert not is_other(QUESTIONS["safe"], soft, Facts())


def test_a_question_without_examples_hears_nothing() -> None:
    """Only the tables' questions are heard so."""
    assert meant_at("safe", ("not_yet", "yes"), in_english("all good")) is None


def test_a_reply_in_free_words_moves_the_walk_and_can_be_taken_back() -> None:
    """It is answered as its number is; `back` brings the question again."""
    by_number, by_words = Player(), Player()
    for player in (by_number, by_words):
        for line in (TOLD, "1", "1"):
            player.say(line)
    assert keys_of(by_words, "some of it flickers, mostly the top bit") == keys_of(by_number, "3")
    assert "ask.blink" in keys_of(by_words, "back")


def test_who_greets_with_a_story_is_greeted() -> None:
    """Other talk behind a greeting, before any walk; within a walk it is other talk."""
    story = "hello there, what a climb that was, we met a man with four dachshunds"
    assert keys_of(Player(), story)[0] == "hello"


def test_who_stands_there_and_wants_silk_begins_a_walk() -> None:
    """The walk answers it step by step, with the caution first; from afar it is told."""
    begun = keys_of(
        Player(), "I'm standing at a waterfall and want that smooth look, what do I do?"
    )
    assert begun[0] == "caution.arrive_short"
    afar = keys_of(Player(), "what shutter speed makes the water silky")
    assert "asked.time_long" in afar or "asked.time" in afar


def test_a_reply_of_light_that_may_have_passed_is_asked_about() -> None:
    """Sent an hour and a half ago, it gets no settings before that is known."""
    player = Player()
    for line in (f"{TOLD}, full sun", "1", "1"):
        player.say(line)
    (said,) = player.happen("old 90 only near the foot")
    assert "ask.light_still" in said.keys


def test_a_sure_sense_goes_before_words_by_chance() -> None:
    """`All of it` is a sheet of white, unless it is quiet."""
    blink = QUESTIONS["blink"]
    assert surer(blink, in_english("nope all of it is quiet now"), "sheet") == "nothing"
    assert surer(blink, in_english("patches on the left side"), "patches") == "patches"
    assert surer(QUESTIONS["safe"], in_english("all of us"), "yes") == "yes"
