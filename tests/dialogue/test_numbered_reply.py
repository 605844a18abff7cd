"""The number of an option among other words is the answer; the words are read beside it."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.said import Said
from bot.dialogue.numbered_reply import numbered
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading.foreign import glossed
from tests.dialogue.player import Player
from tests.dialogue.walked import TOLD, keys_of, known, walked


def _numbered(question: str, text: str, language: str) -> tuple[str, str] | None:
    found = numbered(QUESTIONS[question], Said(glossed(text, language), text, language))
    return None if found is None else (found.value, found.rest.typed)


@pytest.mark.parametrize(
    ("language", "question", "text", "value", "rest"),
    [
        ("en", "top", "3. as i said", "lip", ""),
        ("en", "top", "its 3 again", "lip", "again"),
        ("en", "top", "Meant the lip in the picture. Option 3", "lip", ""),
        ("en", "sides", "2, the twig on the left", "twig", ""),
        ("en", "sides", "1 - nothing there", "clean", ""),
        ("en", "sides", "two - a branch", "twig", ""),
        ("en", "sides", "1) it is 15 m tall", "clean", "it is 15 m tall"),
        ("en", "leaves", "2 yes we are", "yes", ""),
        ("en", "blink", "2 dots", "dots", ""),
        ("en", "blink", "1, nothing blinks, which iso?", "nothing", "which iso?"),
        ("en", "blink", "3! a patch. Is that bad?", "patches", "Is that bad?"),
        ("en", "next", "2. the 70-200 is on now", "other_lens", "the 70-200 is on now"),
        ("de", "top", "3. wie gesagt", "lip", ""),
        ("de", "top", "die 3, hab ich doch schon gesagt", "lip", ""),
        ("de", "top", "Nummer 3", "lip", ""),
        ("de", "sides", "2, der Ast links", "twig", ""),
        ("de", "leaves", "zwei, ja", "yes", ""),
        ("de", "leaves", "2 ja die wackeln", "yes", ""),
        ("es", "top", "opción 3, ya lo dije", "lip", ""),
        ("es", "top", "la 2 otra vez", "sky", "otra vez"),
        ("es", "sides", "2, la rama a la izquierda", "twig", ""),
        ("es", "leaves", "dos, sí", "yes", ""),
    ],
)
def test_a_number_among_words_chooses(
    language: str, question: str, text: str, value: str, rest: str
) -> None:
    """Before a sign, a word that goes on, or words of the same option; behind "option"."""
    assert _numbered(question, text, language) == (value, rest)


@pytest.mark.parametrize(
    ("language", "question", "text"),
    [
        ("en", "blink", "2"),  # is the whole message
        ("en", "blink", "2 m"),
        ("en", "blink", "2 s"),
        ("en", "blink", "1/4 s"),
        ("en", "blink", "2.5 m"),
        ("en", "blink", "2, 1/4 s"),
        ("en", "blink", "1-2 dots"),
        ("en", "blink", "one sec"),
        ("en", "blink", "3-stop ND and a polariser"),
        ("en", "blink", "2-second timer"),
        ("en", "blink", "2nd frame is fine"),
        ("en", "blink", "3 dots"),  # they are counted
        ("en", "blink", "2 or 3"),
        ("en", "blink", "2, no 3"),
        ("en", "blink", "7. as i said"),
        ("en", "blink", "1 is too dark, 2 is fine"),  # frames
        ("en", "top", "2 people in front of me"),
        ("en", "top", "2, the lip touches"),  # the words name another
        ("en", "top", "3 stops over"),
        ("en", "sides", "1, branch on the left"),
        ("en", "forget", "2, delete all of it"),
        ("en", "safe", "2, all of us"),  # danger has readers of its own
        ("de", "blink", "2 Leute"),
        ("de", "sides", "ein Ast rechts"),
        ("es", "blink", "2 metros"),
        ("es", "sides", "una rama a la izquierda"),
    ],
)
def test_a_number_that_counts_or_measures_chooses_nothing(
    language: str, question: str, text: str
) -> None:
    """A wrongly taken answer is worse than a question put again."""
    assert _numbered(question, text, language) is None


def test_the_words_behind_the_number_are_read() -> None:
    """Facts are kept, what is asked is answered, and the walk goes on once."""
    player = walked()
    said = keys_of(player, "2, only a few. which iso should I use? thanks")
    assert said[0] == "asked.iso"
    assert "highlights.dots" in said
    player = Player()
    player.say(TOLD)
    said = keys_of(player, "2. 15 m tall actually")
    assert "top.sky" in said
    assert said[-1] == "ask.sides"
    assert known(player).facts.fall_height_m == 15


def test_a_remedy_is_said_once() -> None:
    """Who names the twig beside its number hears of it once."""
    player = Player()
    player.say(TOLD)
    player.say("1")
    assert keys_of(player, "2 - branch in the left corner").count("sides.twig") == 1


def test_a_number_typed_before_its_question_chooses_nothing() -> None:
    """It was meant for another one."""
    player = Player()
    player.say(TOLD)
    player.happen("early 3. as i said")
    walk = known(player).conversation.walk
    assert walk is not None
    assert "top" not in walk.checks


def test_a_reply_to_another_question_chooses_nothing_here() -> None:
    """In a client that shows which message is answered."""
    player = Player()
    player.say(TOLD)
    player.happen("reply kit 3. as i said")
    walk = known(player).conversation.walk
    assert walk is not None
    assert "top" not in walk.checks


def test_a_walk_of_yesterday_is_gone_on_with_in_words_too() -> None:
    """The number and a word more."""
    player = Player()
    for line in (TOLD, "1"):
        player.say(line)
    player.happen("later 10 h")
    player.say("hello there")
    assert keys_of(player, "1 yes please")[-1] == "ask.sides"
