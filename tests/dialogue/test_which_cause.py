"""Two causes that are nearly as likely: one question, then the remedy of the one that fits."""

from __future__ import annotations

import pytest

from bot.dialogue.causes import Cause
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.meaning.said import in_english
from bot.dialogue.steps.asked import topic_or_cause, which_cause
from bot.dialogue.turn import Turn
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of

TOLD = "12 m tall, 18 m away, rock at 1.5 m, full frame, 24-70, tripod, polariser"
SHAKE_OR_SOFT = "it is full of specks and nothing is sharp"
SHAKE_OR_FOCUS = "nothing sharp, did it focus on nothing"


def walked(*more: str) -> Player:
    """Somebody who has taken a frame, and what they said since."""
    player = Player()
    for line in ("start", TOLD, "1", "1", "f/11 1/4 s iso 100", *more):
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("complaint", "reply", "key"),
    [
        (SHAKE_OR_SOFT, "1", "symptom.shake"),
        (SHAKE_OR_SOFT, "2", "answer.focus_on_water"),
        (SHAKE_OR_FOCUS, "1", "symptom."),
        (SHAKE_OR_FOCUS, "2", "answer.focus_on_water"),
    ],
)
def test_the_chosen_cause_is_answered(complaint: str, reply: str, key: str) -> None:
    """The question names what is to be seen; the walk's own question stands behind the remedy."""
    player = walked()
    assert keys_of(player, complaint) == ("ask.cause",)
    said = keys_of(player, reply)
    assert said[0].startswith(key)
    assert said[-1] == "ask.blink"


@pytest.mark.parametrize(
    "text",
    [
        "the water is mush",  # one cause is far ahead
        "near rock is not sharp but the fall is",  # the words say what it is
        "is it blurred everywhere?",
        "no, blurred",
        "what if the water is mush",
        "battery is nearly empty",
        "12 m tall and mushy",
    ],
)
def test_no_doubt_no_question(text: str) -> None:
    """Where the words decide, or tell of something else, nothing is asked."""
    assert "ask.cause" not in keys_of(walked(), text)


def test_causes_with_one_remedy_are_not_told_apart() -> None:
    """Shake and diffraction are asked of in one answer already."""
    assert topic_or_cause.SYMPTOMS["shake"] is topic_or_cause.SYMPTOMS["diffraction"]


def test_a_remedy_before_any_walk() -> None:
    """Without a walk there is no question to put again."""
    player = Player()
    player.say(SHAKE_OR_FOCUS)
    assert keys_of(player, "2")[0] == "answer.focus_on_water"


def test_words_that_say_what_it_is_leave_no_doubt() -> None:
    """Where a symptom was read that one of the two makes, it decides."""
    player = walked()
    assert player.context is not None
    turn = Turn(player.context, player.origin(), player.now)
    read = Facts(symptoms=(Symptom.SOFT_FAR,))
    assert not which_cause.ask(turn, in_english(SHAKE_OR_FOCUS), read)
    assert which_cause.ask(turn, in_english(SHAKE_OR_FOCUS), Facts())


def test_two_causes_with_one_remedy_put_no_question(monkeypatch: pytest.MonkeyPatch) -> None:
    """Shake and diffraction are answered together, whichever it is."""
    pair = (Cause("shake", 1.0, ()), Cause("diffraction", 1.0, ()))
    monkeypatch.setattr(topic_or_cause, "complaint", lambda *_: pair)
    player = walked()
    assert player.context is not None
    turn = Turn(player.context, player.origin(), player.now)
    assert not which_cause.ask(turn, in_english("all of it is a bit soft"), Facts())
