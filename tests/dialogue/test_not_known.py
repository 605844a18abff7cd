"""Not to know what blinks, or to be well, is no answer to whether the water blinks."""

from __future__ import annotations

import pytest

from bot.dialogue.context import Conversation
from bot.dialogue.reading import read
from bot.dialogue.reading.not_known import is_no_answer, says_all_well, says_not_known
from tests.dialogue.player import Player


def _talk(player: Player) -> Conversation:
    """What the bot keeps of the talk."""
    assert player.context is not None
    return player.context.conversation


_BEGIN = ("start", "12 m tall, 18 m away, rock at 1.5 m. full frame, 24-70, tripod", "1", "1")
_LANGUAGE = {"en": (), "de": ("deutsch",), "es": ("español",)}


def _at_the_frame(language: str) -> Player:
    player = Player()
    for line in (*_LANGUAGE[language], *_BEGIN, "overcast"):
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "no idea"),
        ("en", "not sure"),
        ("en", "dunno where to see that"),
        ("en", "took it, looks ok. no idea about blinking, where do I see that"),
        ("en", "no clue what you mean by blink"),
        ("en", "how would i know"),
        ("de", "keine Ahnung"),
        ("de", "keine Ahnung ob was blinkt"),
        ("es", "ni idea"),
        ("es", "no sé si parpadea"),
    ],
)
def test_not_knowing_gets_where_to_look(language: str, text: str) -> None:
    """The frame is not judged; where the warning shows is said, and the question stays open."""
    player = _at_the_frame(language)
    given = _talk(player).walk
    said = player.say(text)
    after = _talk(player)
    assert given is not None
    assert after.walk is not None
    assert after.walk.given == given.given
    assert after.question is not None
    assert after.question.name == "blink"
    where = {"en": "In playback", "de": "Bei der Wiedergabe", "es": "Al ver la foto"}
    assert where[language] in said[-1].body


def test_no_idea_twice_leaves_it_out() -> None:
    """Who still does not know goes on as by `skip`."""
    player = _at_the_frame("en")
    player.say("no idea")
    player.say("no idea")
    question = _talk(player).question
    assert question is None or question.name != "blink"


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "no we're all fine"),
        ("en", "no were fine lol. where is the timer?"),
        ("en", "No, no. No filter is on, what made you change it?"),
        ("de", "nein uns geht's gut"),
        ("es", "no, estamos bien"),
    ],
)
def test_people_who_are_well_say_nothing_of_the_water(language: str, text: str) -> None:
    """Neither that nor a protest makes the frame brighter."""
    player = _at_the_frame(language)
    before = _talk(player).walk
    player.say(text)
    after = _talk(player)
    assert before is not None
    assert after.walk is not None
    assert after.walk.given == before.given
    assert after.question is not None
    assert after.question.name == "blink"


@pytest.mark.parametrize(
    "text", ["no", "nope nothing blinks", "no, it's fine", "no blinking, no idea why"]
)
def test_no_is_still_an_answer(text: str) -> None:
    """A plain "no" answers."""
    player = _at_the_frame("en")
    player.say(text)
    question = _talk(player).question
    assert question is not None
    assert question.name == "blink_again"


def test_a_question_beside_not_knowing_is_answered() -> None:
    """Another question is answered as ever, and nothing is taken for an answer."""
    player = _at_the_frame("en")
    said = player.say("not sure. why f/13?")
    assert "f/13" in said[-1].body
    assert _talk(player).question is not None
    question = _talk(player).question
    assert question is not None
    assert question.name == "blink"


def test_what_is_told_beside_not_knowing_counts() -> None:
    """Dots that are told beside not knowing answer."""
    player = _at_the_frame("en")
    player.say("a few dots blink, not sure what else")
    question = _talk(player).question
    assert question is None or question.name != "blink"


@pytest.mark.parametrize(
    ("text", "blink"),
    [
        ("can't see any blinking", "nothing"),
        ("can't get rid of the blinking", "patches"),
        ("a few dots blink, not sure what else", "dots"),
        ("no idea where it blinks", None),
    ],
)
def test_what_blinks_is_read_beside(text: str, blink: str | None) -> None:
    """The clause of not knowing tells nothing, others do."""
    told = read(text).blink
    assert (None if told is None else told.value) == blink


def test_sentences() -> None:
    """The three readers."""
    assert says_not_known("keine Ahnung")
    assert not says_not_known("nothing")
    assert says_all_well("no, we're all fine")
    assert not says_all_well("no, it's fine")
    assert is_no_answer("No, no")
    assert not is_no_answer("no")
