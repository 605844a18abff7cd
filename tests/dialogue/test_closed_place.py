"""While somebody may stand where nobody should, no word, tap, card or frame brings settings."""

from __future__ import annotations

import re

import pytest

from tests.dialogue.player import Player

SETTINGS = re.compile(r"\bf/\d|\d s\b")


def at_the_lip() -> Player:
    """A walk at its highlights whose person then tells of standing at the lip."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away, rock at 1.5 m, full frame, 16-35", "1", "1"):
        player.say(line)
    player.say("I'm at the lip")
    return player


@pytest.mark.parametrize(
    "text",
    ["f/11", "1/8", "what if f/8", "which iso?", "where do I focus", "how long", "silky please",
     "full sun now", "dots", "the white is blown", "card", "why", "next", "skip", "come on",
     "not yet", "nobody but me", "no problem, I'm good", "as 1/4 s", "start"],
)  # fmt: skip
def test_nothing_but_the_question(text: str) -> None:
    """That place stays closed, whatever comes, until somebody answers."""
    said = at_the_lip().say(text)
    assert [key for one in said for key in one.keys][-1] == "ask.out_there"
    assert not any(SETTINGS.search(one.body) for one in said)


def test_a_frame_is_not_measured() -> None:
    """A shared frame brings no settings for that place either."""
    player = at_the_lip()
    assert [key for one in player.share() for key in one.keys] == [
        "danger.insist",
        "ask.out_there",
    ]
    assert player.actions == tuple(player.actions[:1])


def test_what_is_told_meanwhile_is_kept() -> None:
    """Facts are not lost, and a clear answer goes on from them."""
    player = at_the_lip()
    player.say("the rock is at 2 m, 3-stop ND")
    said = player.say("1 no")
    assert "danger.nobody_there" in [key for one in said for key in one.keys]
    assert player.context is not None
    assert player.context.facts.nearest_m == 2
    assert player.context.facts.nd_stops == (3,)


def test_words_that_lead_to_no_settings_are_answered() -> None:
    """Help and the way to stop are there in any case."""
    assert [key for one in at_the_lip().say("stop") for key in one.keys] == ["stop.done"]
    thanked = [key for one in at_the_lip().say("thank you") for key in one.keys]
    assert "danger.insist" not in thanked


@pytest.mark.parametrize(
    "word", ["short", "metric", "deutsch", "back", "help", "thank you", "taps"]
)
def test_no_other_word_opens_it(word: str) -> None:
    """What is answered all the same ends with the question, and settings wait behind it."""
    player = at_the_lip()
    player.say(word)
    assert player.context is not None
    assert player.context.conversation.closed
    said = player.say("1/4 s, f/11, too bright")
    assert [key for one in said for key in one.keys][-1] == "ask.out_there"
    assert not any(SETTINGS.search(one.body) for one in said)


def test_neither_a_place_nor_a_result_opens_it() -> None:
    """A location is answered and the question put again; a frame's result stays unsaid."""
    player = Player()
    player.say("start")
    player.share()
    player.say("I'm standing on the lip")
    assert player.result("clean") == []
    said = player.happen("place 46.5 8.1")
    assert [key for one in said for key in one.keys][-1] == "ask.out_there"


def test_the_walks_question_waits_behind_it() -> None:
    """Once it is answered, the walk goes on with the question that stood open."""
    player = at_the_lip()
    player.say("metric")
    said = [key for one in player.say("1 no") for key in one.keys]
    assert said[-1] == "ask.blink"


def test_a_wish_to_be_forgotten_is_answered_first() -> None:
    """Its own question may stand before; then that of the place is put again."""
    player = at_the_lip()
    assert [key for one in player.say("forget me") for key in one.keys][-1] == "ask.forget"
    assert [key for one in player.say("1") for key in one.keys][-1] == "ask.out_there"


def test_who_stops_has_ended_it() -> None:
    """A walk that was stopped leaves no closed place behind."""
    player = at_the_lip()
    player.say("stop")
    said = [key for one in player.say("start") for key in one.keys]
    assert "ask.out_there" not in said


def test_the_reason_is_not_repeated_for_ever() -> None:
    """After two refusals the question stands alone; the place stays closed all the same."""
    player = at_the_lip()
    said = [[key for one in player.say("f/11") for key in one.keys] for _ in range(4)]
    assert said[0] == said[1] == ["danger.insist", "ask.out_there"]
    assert said[2] == said[3] == ["ask.out_there"]


@pytest.mark.parametrize(
    ("text", "nobody"),
    [
        ("ok i stay up here then", True),
        ("I'm behind the railing", True),
        ("we stay on the path", True),
        ("i stay at the lip", False),
        ("nobody cares", False),
    ],
)
def test_who_stays_in_a_safe_place(text: str, nobody: bool) -> None:
    """A safe place in words is an answer; the dangerous one is none."""
    said = [key for one in at_the_lip().say(text) for key in one.keys]
    assert ("danger.nobody_there" in said) is nobody


def test_very_long_numbers_are_cut() -> None:
    """Ten thousand digits are no number, and cost no time to read."""
    player = Player()
    assert player.say("start " + "7" * 10_000)
    assert player.say("7" * 10_000)


def test_an_option_may_come_as_it_is_printed() -> None:
    """`1 no` is the first option; another label behind the number is not."""
    player = at_the_lip()
    player.say("1 no")
    keys = [key for one in player.say("3 patches") for key in one.keys]
    assert any(key.startswith("highlights.") for key in keys)


@pytest.mark.parametrize("text", ["ok", "fine", "alles klar", "vale"])
def test_assent_answers_nothing(text: str) -> None:
    """Who says ok has heard it; neither is anybody called back, nor is it opened."""
    assert [key for one in at_the_lip().say(text) for key in one.keys] == [
        "danger.insist",
        "ask.out_there",
    ]


@pytest.mark.parametrize(
    "text",
    ["niemand", "nadie", "nein, alle zurück", "we're back on the path", "wieder auf dem Weg",
     "estamos en el mirador", "was just a joke", "todo bien, ya salimos"],
)  # fmt: skip
def test_nobody_in_any_language(text: str) -> None:
    """Whatever language is set, and in many words."""
    assert "danger.nobody_there" in [key for one in at_the_lip().say(text) for key in one.keys]


def test_why_always_tells_the_reason() -> None:
    """However often it was asked; never the settings of before."""
    player = at_the_lip()
    for _ in range(5):
        player.say("f/11")
    for _ in range(2):
        (said,) = player.say("why")
        assert said.keys == ("danger.insist", "ask.out_there")


def test_a_caption_is_kept() -> None:
    """What a frame's words tell is read in the person's language and not lost."""
    player = at_the_lip()
    player.say("deutsch")
    player.share("Fels in 2 m")
    assert player.context is not None
    assert player.context.facts.nearest_m == 2


def test_a_reply_to_another_question_opens_nothing() -> None:
    """The "no" of an older question is none of this one."""
    said = at_the_lip().happen("reply blink 1")
    assert [key for one in said for key in one.keys] == ["danger.insist", "ask.out_there"]
