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


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("how much time should I plan to be there", "asked.stay"),
        ("do I need a permit for that?", "asked.permit"),
        ("what should I pack?", "asked.pack"),
        ("is the path open?", "asked.path_open"),
        ("how do I choose between the frames at home", "asked.choose"),
    ],
)
def test_what_is_asked_of_the_day_is_answered(text: str, key: str) -> None:
    """No setting stands in it; the question stands behind it, and the place stays closed."""
    player = at_the_lip()
    (said,) = player.say(text)
    assert key in said.keys
    assert said.keys[-1] == "ask.out_there"
    assert not SETTINGS.search(said.body)
    assert player.context is not None
    assert player.context.conversation.closed


def test_the_way_out_is_told_there_too() -> None:
    """When to turn back is told to whoever asks, wherever they stand."""
    player = at_the_lip()
    (said,) = player.say("sunset 21:00, 2 km and 50 m out, when do we turn back?")
    assert "arrive.turn_back" in said.keys
    assert said.keys[-1] == "ask.out_there"


PLANNED = "tomorrow we go to the Ravine Fall, 3 km each way, 150 m climb, sunset 18:40"


@pytest.mark.parametrize(
    ("language", "text", "key"),
    [
        ("english", "can we stand at the lip?", "danger.lip.planned"),
        ("english", "could I clamber up the side for a nicer angle?", "danger.climb.planned"),
        ("deutsch", "Kann man da mit Gummistiefeln in den Bach?", "danger.wading"),
        ("español", "¿los niños pueden jugar en la poza debajo del salto?", "danger.under.planned"),
    ],
)
def test_a_place_of_a_visit_to_come_holds_nobody(language: str, text: str, key: str) -> None:
    """The evening before nobody is out there: the place is left out, and the plan goes on."""
    player = Player()
    player.say(PLANNED)
    player.say(language)
    (said,) = player.say(text)
    assert key in said.keys
    assert "ask.out_there" not in said.keys
    assert player.context is not None
    assert not player.context.conversation.closed


def test_who_stands_there_is_held_whatever_was_planned() -> None:
    """A plan for tomorrow is no word of where somebody is now."""
    player = Player()
    player.say(PLANNED)
    (said,) = player.say("I'm standing at the lip")
    assert said.keys[-1] == "ask.out_there"
    (said,) = player.say("can I stand on the edge here?")
    assert said.keys[-1] == "ask.out_there"


def test_a_rock_that_was_read_of_ends_no_plan() -> None:
    """The nearest stone of a visit on another day may be known from a book."""
    player = Player()
    player.say("Tomorrow we go to the Ravine Fall, it is 20 m tall")
    player.say("there is a rock at 1.2 m in front, they say")
    (said,) = player.say("how long should we stay?")
    assert not any(key.startswith("ask.") for key in said.keys)


def test_where_somebody_went_back_to_is_kept() -> None:
    """The rail from which a like picture is made has its own distance, and no near rock."""
    player = at_the_lip()
    player.say("alright, I'm at the railing, 150 ft from it")
    assert player.context is not None
    assert player.context.facts.distance_m == pytest.approx(45.72)
    assert player.context.facts.nearest_m is None
