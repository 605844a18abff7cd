"""A reply and a question beside it: both are answered, the question first."""

from __future__ import annotations

import pytest

from bot.dialogue.danger.aftermath import asks_if_safe
from bot.dialogue.meaning.said import Said, in_english
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reply_beside import parted
from bot.dialogue.steps.safety.doubt_reply import asked_behind
from tests.dialogue.player import Player
from tests.dialogue.unsure import FACTS, unsure
from tests.dialogue.walked import keys_of, known, turn_of, walked

BLINK = QUESTIONS["blink"]


@pytest.mark.parametrize(
    ("text", "value", "rest"),
    [
        ("Just dots. But why no filter?", "dots", "But why no filter?"),
        ("Why no filter? Just dots.", "dots", "Why no filter?"),
        ("Lovely day. Dots. Which ISO?", "dots", "Lovely day. Which ISO?"),
        ("dots and why no filter", "dots", "why no filter"),
        ("just dots\nwhich ISO do I take", "dots", "which ISO do I take"),
        ("just pinpricks here and there. Which ISO?", "dots", "Which ISO?"),  # by its sense
    ],
)
def test_the_reply_is_parted_from_the_question(text: str, value: str, rest: str) -> None:
    """Wherever it stands, and whatever parts them; what is left is asked."""
    both = parted(BLINK, in_english(text))
    assert both is not None
    assert (both.value, both.rest.typed, both.rest.english) == (value, rest, rest)
    assert both.reply not in rest


@pytest.mark.parametrize(
    "text",
    [
        "just dots",  # one sentence is read as a whole
        "Just dots. The light is lovely.",  # nothing is asked
        "Lovely day here. Which ISO do I take?",  # nothing is answered
        "Are those dots? Or is it a sheet?",  # all of it asks
    ],
)
def test_one_of_both_alone_is_no_such_message(text: str) -> None:
    """It is answered as any other."""
    assert parted(BLINK, in_english(text)) is None


def test_each_sentence_keeps_its_own_words() -> None:
    """The gloss answers, the words as typed ask on, in the person's language."""
    said = Said("only dots. Why no filter?", "nur Punkte. Warum kein Filter?", "de")
    both = parted(BLINK, said)
    assert both is not None
    assert (both.value, both.reply) == ("dots", "only dots.")
    assert both.rest == Said("Why no filter?", "Warum kein Filter?", "de")


def test_a_gloss_that_parts_otherwise_is_left_whole() -> None:
    """No sentence can be told from its neighbour then."""
    assert parted(BLINK, Said("dots. Why? No filter?", "Punkte, warum kein Filter?", "de")) is None


def test_both_are_answered_in_a_walk() -> None:
    """The question first, then the walk goes on as by the bare reply; `back` takes it back."""
    player, bare = walked(), walked()
    said = keys_of(player, "Just dots. Which ISO should I use?")
    assert said[0] == "asked.iso"
    assert said[1:] == tuple(key for key in keys_of(bare, "dots") if key in said)
    assert "highlights.dots" in said
    assert keys_of(player, "back")[-1] == "ask.blink"


def test_a_question_that_nobody_understands_takes_nothing_from_the_reply() -> None:
    """That it was not understood is not said; the reply counts."""
    said = keys_of(walked(), "dots. what is the meaning of xyzzy qwrt?")
    assert said[0] == "highlights.dots"
    assert "not_understood" not in said


def test_a_reply_in_light_that_may_have_passed_waits() -> None:
    """Sent long ago it gets no settings before the light is known; the question is answered."""
    player = walked(told="12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, full sun")
    said = [
        key
        for one in player.happen("old 90 Just dots. Which ISO should I use?")
        for key in one.keys
    ]
    assert "highlights.dots" not in said
    assert said[-1] == "ask.light_still"


# a question behind "nobody is in danger"


def doubted() -> Player:
    """Somebody who told something doubtful beside facts, and was asked."""
    player = Player()
    for line in ("start", f"{FACTS}, {unsure()}"):
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("reply", "asked"),
    [
        ("No, we are all fine. Which ISO?", "Which ISO?"),
        ("no\nwhich ISO do I take", "which ISO do I take"),
        ("No. She laughs. Why?", "She laughs. Why?"),
        ("No, we are all fine. She laughs.", ""),
        ("is nobody in danger?", ""),  # the first sentence is the reply
    ],
)
def test_what_is_asked_behind_a_reply(reply: str, asked: str) -> None:
    """All that stands behind its first sentence, where that asks."""
    assert asked_behind(turn_of(doubted()), reply) == asked


def test_a_question_behind_the_all_clear_is_answered() -> None:
    """Instead of the message that waited; what that told is kept."""
    player = doubted()
    said = keys_of(player, "No, everybody is fine. What is a stop?")
    assert "term.stop" in said
    assert known(player).conversation.doubted is None
    facts = known(player).facts
    assert (facts.fall_height_m, facts.distance_m) == (5, 8)


@pytest.mark.parametrize(
    "asked",
    [
        "Is it safe?",
        "Is it dangerous for the kids?",
        "Is it safe to cross the creek there?",
        "Could it be risky on the wet stones?",
        "Ist es sicher da rüberzugehen?",
        "¿Es peligroso cruzar por las piedras?",
        "Just asking. Is it safe to wade there?",
    ],
)
def test_whether_the_water_is_safe(asked: str) -> None:
    """The bank, signs and rangers."""
    assert "answer.wading" in keys_of(doubted(), f"No, everybody is fine. {asked}")


@pytest.mark.parametrize(
    "asked",
    [
        "Is it safe to shoot into the sun?",
        "Is it safe to put the tripod in the spray?",
        "Ist es sicher, in die Sonne zu fotografieren?",
        "¿Es peligroso apuntar al sol?",
    ],
)
def test_whether_something_else_is_safe(asked: str) -> None:
    """The sun, or spray on a thing: nothing of who stands in water."""
    assert "answer.wading" not in keys_of(doubted(), f"No, everybody is fine. {asked}")


def test_a_thing_in_the_water_is_nobody_there() -> None:
    """That is answered as any question of a thing."""
    assert not asks_if_safe("Is it safe to leave the tripod in the water?")
    assert asks_if_safe("Is it safe to stand in the water?")


def test_what_is_asked_beside_whether_the_water_is_safe() -> None:
    """Both are answered, the water first; beside the sun only what is asked."""
    told = "No, everybody is fine."
    keys = keys_of(doubted(), f"{told} Is it safe to cross the creek? What is a stop?")
    assert keys[0] == "answer.wading"
    assert "term.stop" in keys
    keys = keys_of(doubted(), f"{told} Is it safe to shoot into the sun? What is a stop?")
    assert "answer.wading" not in keys


def test_without_a_question_what_waited_is_answered() -> None:
    """What the reply tells beside the all clear is kept, too."""
    player = doubted()
    assert "term.stop" not in keys_of(player, "No, everybody is fine. The rock is at 2 m.")
    facts = known(player).facts
    assert (facts.fall_height_m, facts.nearest_m) == (5, 2)
