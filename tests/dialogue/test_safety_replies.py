"""Where a reply is heard by its sense: after a doubt, at a closed place, and in an emergency."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import Danger, DangerKind, Level, Safe
from bot.dialogue.events import TextReceived
from bot.dialogue.steps.safety import all_safe, closed_place, doubt, doubt_reply
from bot.dialogue.turn import Turn
from tests.dialogue.player import Player
from tests.dialogue.unsure import FACTS, FEW, MANY, Sense, unsure
from tests.dialogue.walked import turn_of, walked


@pytest.fixture
def sense(monkeypatch: pytest.MonkeyPatch) -> Sense:
    """Nothing is meant until a test says so."""
    return Sense(monkeypatch)


# a doubt


def doubted(text: str = "") -> Turn:
    """Somebody was asked whether anybody is in danger."""
    player = Player()
    for line in ("start", f"{FACTS}, {text or unsure()}"):
        player.say(line)
    return turn_of(player)


def reply(turn: Turn, text: str, answers: str | None = None) -> TextReceived:
    return TextReceived(origin=turn.origin, text=text, answers=answers)


def test_a_doubt_is_answered_by_sense(sense: Sense) -> None:
    """In words of which no rule knows anything, either way; of another question, none."""
    turn = doubted()
    sense.is_of("no", 0.9)
    assert doubt_reply.answer(turn, reply(turn, FEW), unsure()) is False
    assert doubt_reply.answer(turn, reply(turn, FEW, "blink"), unsure()) is None
    assert doubt_reply.answer_by_words(reply(turn, FEW), unsure()) is None
    assert doubt_reply.answer_by_words(reply(turn, "no", "blink"), unsure()) is None
    sense.is_of("yes", 0.9)
    assert doubt_reply.answer(turn, reply(turn, FEW), unsure()) is True


def test_ones_own_safety_says_nothing_of_the_others(sense: Sense) -> None:
    """However much it is like an all clear; of two, one who is back leaves one."""
    sense.is_of("no", 0.9)
    turn = doubted()
    assert doubt_reply.answer(turn, reply(turn, "I'm fine"), "my brother looks odd") is None
    two = "my two friends look odd"
    assert doubt_reply.answer(turn, reply(turn, "she is out"), two) is None
    assert doubt_reply.answer(turn, reply(turn, "they are both out"), two) is False


def test_a_danger_is_denied_only_where_it_was_asked_about(sense: Sense) -> None:
    """And only by its sense."""
    sense.is_of("no", 0.9)
    assert doubt_reply.denies(doubted(), MANY)
    assert not doubt_reply.denies(turn_of(walked()), MANY)
    sense.is_of("yes", 0.9)
    assert not doubt_reply.denies(doubted(), MANY)


# a closed place


def at_the_lip(told: str = "I'm at the lip") -> Turn:
    """Somebody stands where nobody should."""
    return turn_of(walked(told))


def test_a_closed_place_is_left_by_sense(sense: Sense) -> None:
    """Many words in the sense of it; not those to another question."""
    turn = at_the_lip()
    sense.is_of("no", 0.9)
    assert closed_place.answered(turn, reply(turn, MANY)) == "no"
    assert closed_place.answered(turn, reply(turn, MANY, "out_there")) == "no"
    assert closed_place.answered(turn, reply(turn, MANY, "blink")) is None
    assert closed_place.answered(turn, reply(turn, FEW)) is None
    assert closed_place.answered(turn, reply(turn, "2")) == "yes"
    assert closed_place.answered(turn, reply(turn, "nobody is out there")) == "no"


@pytest.mark.parametrize(
    ("told", "text"),
    [
        ("I'm at the lip", "ok"),  # only agrees
        ("I'm at the lip", "only my wife, and the whole lot sips cocoa"),
        ("I'm at the lip", "my tripod is still out there while I drink my cocoa in the sun"),
        ("I'm at the lip", "my brother is sipping his cocoa under the big awning"),
        ("my brother is at the lip", "I'm sipping cocoa under the big awning by the car"),
    ],
)
def test_what_says_nothing_of_those_who_went_there(sense: Sense, told: str, text: str) -> None:
    """No sense makes an answer of assent, of what stays there, or of somebody else."""
    turn = at_the_lip(told)
    sense.is_of("no", 0.9)
    assert closed_place.answered(turn, reply(turn, text)) is None


def test_a_question_leaves_nothing_there(sense: Sense) -> None:
    """What is asked beside an all clear does not take it back."""
    turn = at_the_lip()
    sense.is_of("no", 0.9)
    text = "the whole lot of us sips cocoa by the car. Is the light still good?"
    assert closed_place.answered(turn, reply(turn, text)) == "no"


@pytest.mark.parametrize(
    ("told", "text", "heard_so"),
    [
        ("can I stand at the lip?", "never mind", "no"),  # it was only asked
        ("I'm at the lip", "I'm on the bank with my cocoa", "no"),
        ("my brother is at the lip", "I'm on the bank with my cocoa", None),
        ("my brother is at the lip", "I'm back on the path", None),
        ("I'm at the lip", "my brother is sipping cocoa", None),
    ],
)
def test_known_words_are_of_who_went_there(
    sense: Sense, told: str, text: str, heard_so: str | None
) -> None:
    """Who that was, and whether anybody did, is known; nothing is meant by sense here."""
    assert sense.meant is None
    turn = at_the_lip(told)
    assert closed_place.answered(turn, reply(turn, text)) == heard_so


def test_who_came_away_has_left() -> None:
    """Said as surely as it may be; nobody leaves a place that is not closed."""
    away = "I am away from the edge now"
    assert closed_place.left(at_the_lip(), away, surely=True)
    assert not closed_place.left(at_the_lip(), "I'm at the lip", surely=True)
    assert not closed_place.left(turn_of(walked()), away, surely=False)


# an emergency


def test_an_emergency_ends_by_sense(sense: Sense) -> None:
    """For all who are in it, where many words say so; a yes of the words may be taken back."""
    turn = turn_of(walked("my friend slipped in"))
    sense.is_of("yes", 0.9)
    assert _heard_as_a_whole(turn, MANY) is Safe.ALL
    assert _heard_as_a_whole(turn, FEW) is None
    assert _heard_as_a_whole(turn, "we're all safe") is Safe.ALL
    sense.is_of("not_yet", 0.9)
    assert _heard_as_a_whole(turn, MANY) is None
    assert (
        _heard_as_a_whole(turn, "we're all safe but for the one who is in the pool") is not Safe.ALL
    )


@pytest.mark.parametrize(("text", "safe"), [("she is out", Safe.ONE), ("ok", Safe.HEARD)])
def test_known_words_of_one_or_of_nobody_stay(sense: Sense, text: str, safe: Safe) -> None:
    """No sense makes more of them."""
    turn = turn_of(walked("my friend slipped in"))
    sense.is_of("yes", 0.9)
    assert _heard_as_a_whole(turn, text) is safe


def test_good_news_of_everybody_is_no_new_danger() -> None:
    """Whatever it is taken for: "nobody" and "up there" sound of danger by themselves."""
    turn = turn_of(walked("my friend slipped in"))
    flood = Danger(DangerKind.FLOOD, Level.EMERGENCY)
    assert all_safe.clears(turn, "all seven of us are up on the path, nobody is hurt", flood)
    assert not all_safe.clears(turn, "the water is brown", flood)


def test_a_doubt_is_put_once() -> None:
    """While it stands open another doubtful message is an answer to it, not a second question."""
    turn = doubted()
    assert not doubt.ask(turn, unsure())
    assert not turn.parts


def _heard_as_a_whole(turn: Turn, text: str) -> Safe | None:
    held = turn.context.conversation.emergency
    assert held is not None
    return all_safe._heard_as_a_whole(turn, held, text)
