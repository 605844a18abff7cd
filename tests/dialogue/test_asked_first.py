"""Between alarm and silence: what is asked, what is only cold, what is planned, and other edges."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import DangerKind, read_danger
from bot.dialogue.danger.asked_first import only_noise, wants_question
from bot.dialogue.danger.cold_hands import only_cold, only_cold_hands
from tests.dialogue.player import Player
from tests.dialogue.unsure import unsure_before, unsure_of_two


def last(*lines: str) -> list[str]:
    """Keys of the answer to the last of these lines."""
    player = Player()
    said = [player.say(line) for line in lines][-1]
    return [key for one in said for key in one.keys]


@pytest.mark.parametrize(
    "text",
    [
        "my friend is upstream and I can't hear if she calls",
        "my buddy is upstream, no contact",
        "I can't hear my friend over the water",
        "there was loose rock",
        "mein Freund ist oben am Bach, das Wasser ist zu laut zum Rufen",
        "da war loser Fels",
        "mi amiga está río arriba y no oigo si llama",
        "había roca suelta",
    ],
)
def test_it_is_asked(text: str) -> None:
    """Nobody is alarmed, and nobody who may need help is passed over."""
    assert last(text)[-1] == "ask.in_danger"


@pytest.mark.parametrize(
    "text",
    [
        "the tripod stands on loose rock",
        "loose rocks in the foreground",
        "some loose stones on the path",
        "I can't hear the shutter",
        "Is the path open, do you know? There was something about falling rocks",
    ],
)
def test_it_is_not_asked(text: str) -> None:
    """What is in the picture, or under the tripod."""
    assert not wants_question(text)


def test_more_than_noise_is_an_alarm() -> None:
    """Whoever thinks that somebody fell is not asked whether they do."""
    assert only_noise("I can't hear my friend over the water")
    danger = read_danger("I can't hear my friend over the water, I think he fell in")
    assert danger is not None
    assert danger.kind is DangerKind.IN_WATER


@pytest.mark.parametrize(
    "text", ["I'm cold", "we are cold", "mir ist kalt", "tengo un poco de frío"]
)
def test_who_is_cold_is_told_to_warm_up(text: str) -> None:
    """The walk goes on; shivering and the like are another matter."""
    assert only_cold(text)
    assert last(text)[0] == "precaution.cold"


@pytest.mark.parametrize(
    "text",
    [
        "I'm cold and wet",
        "I'm so cold",
        "I'm cold and shivering",
        "we are cold and lost",
        "mir ist kalt und ich zittere",
        "tengo frío y estoy mojado",
    ],
)
def test_worse_than_cold_stays_worse(text: str) -> None:
    """Only known words may stand beside it."""
    assert not only_cold(text)


@pytest.mark.parametrize(
    "text",
    [
        "my fingers are freezing, can't turn the ring",
        "mir sind die Finger kalt",
        "tengo los dedos dormidos",
    ],
)
def test_cold_fingers_are_only_that(text: str) -> None:
    """Hands are warmed; they need no rescue."""
    assert only_cold_hands(text)
    assert last(text)[0] == "precaution.cold_hands"


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("tomorrow I want to stand on the lip, what shutter?", "danger.lip.planned"),
        ("next week we climb up beside the fall. which lens", "danger.climb.planned"),
        ("morgen will ich an der Kante stehen, welche Zeit?", "danger.lip.planned"),
    ],
)
def test_who_plans_it_stands_nowhere(text: str, key: str) -> None:
    """The place is left out of the plan, and nobody is called back."""
    keys = last(text)
    assert keys[0] == key
    assert "ask.out_there" not in keys


@pytest.mark.parametrize(
    "text",
    [
        "I stand at the edge of the path",
        "we're at the edge of the meadow",
        "ich stehe am Wegrand",
        "estoy al borde del camino",
    ],
)
def test_other_edges_are_none(text: str) -> None:
    """Nobody falls from a meadow."""
    assert read_danger(text) is None


def test_an_edge_beside_another_is_heard() -> None:
    """The path's side is no shelter for the lip."""
    danger = read_danger("from the edge of the path I climbed out onto the lip of the falls")
    assert danger is not None


def test_one_of_several_clears_no_doubt() -> None:
    """Two may be in danger: one who is back leaves one."""
    doubted = unsure_of_two()
    assert last(doubted, "one is back")[-1] == "ask.in_danger"
    assert last(doubted, "all 6 on the path")[-1] != "ask.in_danger"
    told = "we are 5, two of them on the lip"
    assert last(told, "one is back")[-1] == "ask.out_there"
    assert last(told, "all 5 on the path")[-1] != "ask.out_there"


def test_brown_as_ever_clears_a_doubt() -> None:
    """As it ends an emergency."""
    assert last("the river is brown after rain", "it's always brown here")[-1] != "ask.in_danger"


def test_leave_to_wade_is_asked_for_whatever_else_sounds_so() -> None:
    """A doubtful message that asks to stand in told water is answered as that."""
    text = unsure_before("the water is ankle deep, can I stand in it")
    assert last("start", text)[0] == "danger.wading"
