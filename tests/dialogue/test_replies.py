"""Worded replies to open questions: the option they name, or none when they name two or none."""

from __future__ import annotations

import pytest

from bot.dialogue.questions import QUESTIONS
from bot.dialogue.replies import chosen, meant, says_yes_or_no

REPLIES = [
    ("top", "leaves cover it", "covered"),
    ("top", "it's clean", "covered"),
    ("top", "a bit of white sky", "sky"),
    ("top", "the lip touches", "lip"),
    ("top", "leaves and white sky", None),
    ("top", "no white sky", None),
    ("top", "the leaves are blurred", None),
    ("top", "is that the sky?", None),
    ("sides", "all clean", "clean"),
    ("sides", "there is a branch", "twig"),
    ("anchor", "one big boulder", "clear"),
    ("blink", "just dots", "dots"),
    ("blink", "a few patches in the main drop", "patches"),
    ("blink", "no patches, just dots", "dots"),
    ("blink_again", "still patches", "patches"),
    ("blink_again", "nothing blinks any more", "nothing"),
    ("blink_again", "no more patches", "nothing"),
    ("blink", "the whole thing", "sheet"),
    ("blink", "not all of it, patches", "patches"),
    ("blink", "no tripod", None),
    ("blink", "no idea what you mean by that at all, what is blinking", None),
    ("blink", "patches at f/8", None),
    ("leaves", "they don't move", "no"),
    ("leaves", "no wind", "no"),
    ("leaves", "a little", "yes"),
    ("next", "I'm done", "finish"),
    ("next", "one more", "again"),
    ("too_near", "I can walk back", "farther"),
    ("restart", "hmm let me see", None),
    ("blink_again", "no it's fine", "nothing"),
    ("blink", "no its ok", "nothing"),
    ("blink", "all good now", "nothing"),
    ("screen_says", "that looks fine to me", "nothing"),
    ("blink_again", "ok", None),
    ("blink_again", "yes it's fine", None),
    ("blink_again", "it's fine but patches", "patches"),
    ("border", "no it's fine", "yes"),
    ("border", "No, that's OK like that", "yes"),
    ("border", "leave it", "yes"),
    ("border", "I don't mind", "yes"),
    ("border", "it belongs there", "yes"),
    ("border", "it's a mistake", "no"),
    ("area", "no it's fine", None),
    ("blink", "no, passt", "nothing"),
    ("blink", "passt schon", "nothing"),
    ("blink", "no, is bien", "nothing"),
    ("border", "stört mich not", "yes"),
    ("border", "dejalo asi", "yes"),
    ("area", "it's a church, not water", "neither"),
    ("area", "neither", "neither"),
    ("area", "wet rock", "neither"),
    ("area", "just the sun", "neither"),
    ("area", "the water", "water"),
    ("area", "white rock in the water", "water"),
    ("sides", "no it's fine", "clean"),
]


@pytest.mark.parametrize(("question", "typed", "option"), REPLIES)
def test_words_name_an_option_or_none(question: str, typed: str, option: str | None) -> None:
    """One option's words name it; words of two, of none, or of a fact name nothing."""
    assert meant(QUESTIONS[question], typed) == option


@pytest.mark.parametrize(
    ("question", "typed", "option"),
    [
        ("blink", "no", "nothing"),
        ("leaves", "yes", "yes"),
        ("top", "yes", None),
        ("top", "no", None),
        ("top", "2", "sky"),
        ("top", "4", None),
        ("restart", "new walk", "new"),
    ],
)
def test_number_or_own_words_choose(question: str, typed: str, option: str | None) -> None:
    """A number in range, an option's own words, or yes and no where they are offered."""
    assert chosen(QUESTIONS[question], typed) == option


def test_bare_yes_and_no_are_known() -> None:
    """A yes that answers nothing is told from nonsense."""
    assert says_yes_or_no("Yes!")
    assert not says_yes_or_no("yes at the top")
