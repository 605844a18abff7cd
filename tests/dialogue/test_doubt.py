"""Messages that only sound like danger: asked about first, and nothing of them is lost."""

from __future__ import annotations

import re

import pytest

from bot.dialogue.actions import Say
from bot.dialogue.danger import DangerKind, Level, read_danger
from bot.dialogue.events import FrameReceived, MediaRef
from tests.dialogue.player import Player
from tests.dialogue.unsure import FACTS, unsure

#: It sounds like danger, and no rule knows it; facts stand beside it.
SHORT = unsure()
DOUBTFUL = f"{FACTS}, {SHORT}"
SETTINGS = re.compile(r"\bf/\d|\d s\b")
ASKED = ["danger.doubt", "ask.in_danger"]
AGAIN = ["danger.doubt_again", "ask.in_danger"]


def begun() -> Player:
    player = Player()
    player.say("start")
    return player


def doubted(text: str = DOUBTFUL) -> Player:
    """A walk at its highlights whose person then tells of something doubtful."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away, rock at 1.5 m, full frame, 16-35", "1", "1"):
        player.say(line)
    player.say(text)
    return player


def keys(player: Player, text: str) -> list[str]:
    return _keys(player.say(text))


def _keys(said: list[Say]) -> list[str]:
    return [key for one in said for key in one.keys]


def test_it_is_asked_before_anything_is_answered() -> None:
    """No kind of danger is guessed, no settings are given: one question stands first."""
    danger = read_danger(DOUBTFUL)
    assert danger is not None
    assert (danger.kind, danger.level) == (DangerKind.UNCLEAR, Level.UNSURE)
    assert keys(begun(), DOUBTFUL) == ASKED


@pytest.mark.parametrize(
    "no",
    ["1", "1 no", "no", "all fine, nobody is hurt", "no all good", "nobody's out there",
     "false alarm", "was just a joke", "we're back on the path", "es ist nichts passiert",
     "todo bien, ya salimos", "nein", "she is fine", "we're sitting in the cafe",
     "i meant the wind sounds funny"],
)  # fmt: skip
def test_no_takes_up_what_waited(no: str) -> None:
    """In whatever words: the message is then answered as if it had just come."""
    player = begun()
    player.say(DOUBTFUL)
    player.say(no)
    assert player.context is not None
    facts = player.context.facts
    assert (facts.fall_height_m, facts.distance_m) == (5, 8)
    assert player.context.conversation.doubted is None


@pytest.mark.parametrize(
    "text",
    ["f/11", "1/8", "what if f/8", "which iso?", "where do I focus", "silky please", "dots",
     "the white is blown", "card", "why", "next", "skip", "come on", "as 1/4 s", "start",
     "ok", "thanks, and f/11 it is", FACTS, "yes theres wind", "3", "I'm fine"],
)  # fmt: skip
def test_nothing_but_the_question(text: str) -> None:
    """No other words bring settings, however often they come, and none is the question's yes."""
    player = doubted()
    for _ in range(4):
        said = player.say(text)
        assert not any(SETTINGS.search(one.body) for one in said)
        assert "ask.safe" not in _keys(said)


def test_the_doubtful_message_again_brings_no_settings() -> None:
    """Asked about or taken for an emergency, by its sense: never passed over."""
    player = doubted()
    for _ in range(4):
        said = player.say(DOUBTFUL)
        assert not any(SETTINGS.search(one.body) for one in said)
    assert player.context is not None
    conversation = player.context.conversation
    assert conversation.doubted is not None or conversation.emergency is not None


def test_it_is_asked_twice_and_then_only_said_how_to_go_on() -> None:
    """Nobody is nagged, and nobody is caught: one word goes on."""
    player = doubted(SHORT)
    assert keys(player, "f/11") == AGAIN
    assert keys(player, "f/11") == ["danger.doubt_open"]
    assert keys(player, "metric") == ["units.metric", "danger.doubt_open"]
    assert keys(player, "no")[-1] == "ask.blink"


def test_the_reason_is_told() -> None:
    """`why` tells why it is asked, and nothing of the settings."""
    player = doubted()
    for _ in range(2):
        assert keys(player, "why")[0] == "danger.doubt_why"
    assert keys(player, "why") == ["danger.doubt_why", "danger.doubt_open"]


def test_going_on_keeps_what_was_told() -> None:
    """What comes meanwhile is kept, and counts once nobody is in danger."""
    player = begun()
    player.say(DOUBTFUL)
    player.say("rock at 1.5 m")
    player.say("no")
    assert player.context is not None
    facts = player.context.facts
    assert (facts.fall_height_m, facts.distance_m, facts.nearest_m) == (5, 8, 1.5)


def test_leaving_is_no_emergency() -> None:
    """Who says that they leave names nobody in danger."""
    player = begun()
    player.say(DOUBTFUL)
    assert "ask.safe" not in keys(player, "We are leaving now, thank you")


@pytest.mark.parametrize("yes", ["2", "yes", "yes, he is still out there", "ja", "sí, mi hijo"])
def test_yes_is_an_emergency(yes: str) -> None:
    """The walk is held until all are safe; what was told stays."""
    player = begun()
    player.say(DOUBTFUL)
    said = keys(player, yes)
    assert "danger.unclear" in said
    assert said[-1] == "ask.safe"
    assert "danger.unclear.again" in keys(player, "1")
    assert "danger.over" in keys(player, "2")
    assert player.context is not None
    assert player.context.facts.fall_height_m == 5


def test_a_yes_in_reply_to_the_question_counts_later() -> None:
    """Who said no and replies "yes" to that question afterwards takes the no back."""
    player = doubted()
    player.say("no")
    assert "danger.unclear" in _keys(player.happen("reply in_danger yes"))
    other = doubted()
    other.say("no")
    assert "danger.unclear" not in _keys(other.happen("reply in_danger no"))


def test_a_number_for_an_older_question_answers_nothing() -> None:
    """A reply to what was asked before is not the answer."""
    assert _keys(doubted().happen("reply blink 1")) == AGAIN


def test_a_known_danger_ends_the_doubt() -> None:
    """A danger that is known is answered as such, and the doubt does not come back."""
    player = begun()
    player.say(DOUBTFUL)
    assert "danger.in_water" in keys(player, "my friend fell in")
    player.say("2")
    assert player.context is not None
    assert player.context.conversation.doubted is None


def test_in_an_emergency_nothing_is_doubted() -> None:
    """The emergency's own question stays."""
    player = begun()
    player.say("my friend fell in")
    assert keys(player, DOUBTFUL)[-1] == "ask.safe"


def test_an_answer_about_the_frame_is_no_doubt() -> None:
    """A twig in the corner, where that was asked, is a twig; with somebody in it, it is asked."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away, rock at 1.5 m, full frame, 16-35", "1"):
        player.say(line)
    twig = "I see a branch in the left corner I'll move over a bit okay it's gone"
    assert read_danger(twig) is not None
    assert "ask.in_danger" not in keys(player, twig)


def test_the_edit_of_a_doubtful_message_replaces_it() -> None:
    """What was only mistyped is read anew."""
    player = begun()
    player.say(DOUBTFUL)
    said = _keys(player.edit(2, "the fall is 5 m, 8 m away"))
    assert "ask.in_danger" not in said
    assert player.context is not None
    assert player.context.facts.fall_height_m == 5


def test_a_question_in_between_waits() -> None:
    """An interruption's own question is put again when nobody is in danger."""
    player = doubted("start")
    assert player.context is not None
    assert player.context.conversation.question is not None
    assert player.context.conversation.question.name == "restart"
    player.say(SHORT)
    player.say("no")
    assert player.context is not None
    assert player.context.conversation.question is not None
    assert player.context.conversation.question.name in {"restart", "blink"}


def test_the_way_to_be_forgotten_stays_open() -> None:
    """Its question stands before; then the doubt is put again."""
    player = doubted()
    assert keys(player, "forget me")[-1] == "ask.forget"
    assert keys(player, "1")[-1] == "ask.in_danger"


def test_who_stops_has_ended_it() -> None:
    """A walk that was stopped leaves no doubt behind."""
    player = doubted()
    assert keys(player, "stop") == ["stop.done"]
    assert "ask.in_danger" not in keys(player, "start")


# frames


def test_a_result_waits_for_the_answer() -> None:
    """A frame that was shared before is judged when nobody is in danger, not earlier."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away, rock at 1.5 m, full frame, 16-35", "1", "1"):
        player.say(line)
    player.share()
    player.say(SHORT)
    assert player.result("clean") == []
    assert any(SETTINGS.search(one.body) for one in player.say("no all good"))


def test_a_comparison_waits_for_the_answer() -> None:
    """So does what was asked of several frames."""
    player = Player()
    player.say("start")
    player.frame("clean")
    player.frame("clean")
    player.say("compare")
    player.say(SHORT)
    assert player.happen("found comparison") == []
    assert player.say("no all good")


def test_a_frame_brings_no_settings() -> None:
    """One that is shared meanwhile is measured, and asked again first."""
    player = doubted()
    assert _keys(player.share("1/4 s")) == AGAIN
    assert player.result("clean") == []


def test_a_doubtful_caption_is_asked_about() -> None:
    """The frame waits for the answer."""
    player = begun()
    event = FrameReceived(
        origin=player.origin(),
        media=MediaRef(address="mxc://example.org/frame"),
        caption=SHORT,
    )
    player.frames.append(event)
    assert _keys(player.take(event)) == ASKED
    assert player.result("clean") == []
    assert player.say("no")


# in a group room


def test_others_answer_each_other() -> None:
    """Said to the room, that nobody is in danger counts; a yes or anything else does not."""
    player = begun()
    player.say(DOUBTFUL)
    for text in ("yes", "f/11"):
        player.happen(f"aside {text}")
        assert player.context is not None
        assert player.context.conversation.doubted is not None
    assert player.happen("aside no all good") == []
    assert player.context is not None
    assert player.context.conversation.doubted is None
    player.happen("aside no all good")


# cries


@pytest.mark.parametrize("text", ["help!!", "socorro", "HILFE", "ayuda!!"])
def test_a_shout_for_help_is_asked_about(text: str) -> None:
    """The number to call first, then what happened; no settings until that is known."""
    player = doubted("metric")
    assert keys(player, text) == ["danger.cry", "ask.in_danger"]
    assert keys(player, "f/11") == AGAIN
    assert "help.words" in keys(player, "no")


@pytest.mark.parametrize("text", ["help", "hilfe!", "ayuda", "i need help", "hilf mir"])
def test_a_bare_word_serves_both(text: str) -> None:
    """The number to call, and where the commands are; the walk's question stays open."""
    player = doubted("metric")
    assert keys(player, text) == ["danger.cry", "help.how"]
    assert "help.words" in keys(player, "commands")
    assert player.context is not None
    assert player.context.conversation.question is not None
    assert player.context.conversation.question.name == "blink"


@pytest.mark.parametrize("text", ["help", "help!!", "ich brauche hilfe"])
def test_help_while_it_is_asked(text: str) -> None:
    """The number to call, and the question again."""
    assert keys(doubted(), text) == ["danger.cry", "ask.in_danger"]


def test_a_shout_to_the_room_is_heard() -> None:
    """To others it is answered with the number to call, and no question."""
    player = Player()
    assert _keys(player.happen("aside HELP!!")) == ["danger.cry"]
    assert player.happen("aside help") == []


def test_a_shout_at_a_closed_place_is_asked_about() -> None:
    """The place stays closed behind it."""
    player = doubted("I'm at the lip")
    assert keys(player, "help!!") == ["danger.cry", "ask.in_danger"]
    player.say("no")
    assert keys(player, "f/11")[-1] == "ask.out_there"


def test_a_location_is_taken_and_the_question_put_again() -> None:
    """What it asks for itself waits until nobody is in danger."""
    player = begun()
    player.say(DOUBTFUL)
    assert _keys(player.happen("place 46.5 8.1"))[-1] == "ask.in_danger"
    player = doubted()
    assert _keys(player.happen("place 46.5 8.1"))[-1] == "ask.in_danger"


@pytest.mark.parametrize(
    ("text", "ends"),
    [
        ("nope all good here, its just the photo thats bad", True),
        ("nobody is in trouble, i asked about filters", True),
        ("1, no. shes with us", True),
        ("nooo she's fine", True),
        ("nein, nur das Bild ist nix geworden", True),
        ("no, es sólo la foto", True),
        ("no idea where he is", False),
        ("no sign of her", False),
        ("nobody has seen her", False),
        ("no, he is not answering", False),
        ("nein, sie ist abgerutscht", False),
        ("no, mi hijo se cayó al agua", False),
    ],
)
def test_a_no_in_words_ends_what_was_only_suspected(text: str, *, ends: bool) -> None:
    """But for one that says where nobody knows, or that itself tells of danger."""
    player = doubted()
    player.say(text)
    assert player.context is not None
    conversation = player.context.conversation
    assert (conversation.doubted is None and conversation.emergency is None) is ends
