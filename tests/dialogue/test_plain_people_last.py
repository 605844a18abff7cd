"""What a third round of fresh people typed: home on the sofa, lists of kit, wishes, slips."""

from __future__ import annotations

import pytest

from bot.dialogue.danger.given_up import gives_up, wishes
from bot.dialogue.facts import Symptom
from bot.dialogue.meaning.at_home import is_home
from bot.dialogue.reading import read
from bot.dialogue.reading.edges import edges_told
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked


@pytest.mark.parametrize(
    ("text", "home"),
    [("now in my armchair", True), ("back indoors at last", True), ("I'm behind the wall", False)],
)
def test_who_sits_at_home_is_home(text: str, *, home: bool) -> None:
    """A sofa stands in no gorge."""
    assert is_home(text) is home


def test_a_lens_before_a_filter_is_no_filter() -> None:
    """Nothing takes so many stops: "50, 3 stop nd" holds one filter."""
    assert read("full frame, 50, 3 stop nd").nd_stops == (3,)
    assert read("3 and 6 stop nd").nd_stops == (3, 6)


@pytest.mark.parametrize(
    "text", ["a tiny burn", "the water runs between mossy boulders", "no real waterfall, a creek"]
)
def test_water_that_only_runs(text: str) -> None:
    """A burn, or water among stones, is a stream."""
    assert read(text).stream is True


def test_a_telephone_is_a_phone() -> None:
    """In full, as older people write it."""
    assert read("only my telephone").camera_format == "phone"


@pytest.mark.parametrize(
    ("text", "symptom"),
    [
        ("too blury everthing", Symptom.SOFT_ALL),
        ("ok but the waters frozen-ish", Symptom.TOO_FROZEN),
    ],
)
def test_complaints_with_slips(text: str, symptom: Symptom) -> None:
    """Read as they are meant."""
    assert symptom in read(text).symptoms


@pytest.mark.parametrize(
    ("text", "asked", "told"),
    [
        ("a brnach at the right edge", "", {"sides": "twig"}),
        ("stepped past it", "sides", {"sides": "clean"}),
        ("the lip is barely inside the frame", "", {"top": "lip"}),
    ],
)
def test_edges_with_slips(text: str, asked: str, told: dict[str, str]) -> None:
    """A slip of the thumb is read as its word."""
    assert edges_told(text, asked) == told


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("she told me to use a burst, what is that", "term.burst"),
        ("my tripod keeps sinking", "asked.sinking"),
        ("could I print it on A3, large", "asked.print_big"),
        ("can I retouch the sky", "asked.clone_sky"),
        ("should I bracket here", "asked.bracket_or_not"),
        ("what should I tell them before we start at the water", "asked.briefing"),
        ("what does aperture mean again", "term.f_number"),
        ("quick, what are the final settings", "where.given"),
    ],
)
def test_questions_of_the_third_round(text: str, key: str) -> None:
    """Each has its own answer."""
    assert keys_of(walked(), text)[0] == key


def test_a_near_thing_without_its_distance() -> None:
    """Asked for the nearest thing, a name alone is asked for its distance."""
    player = Player()
    player.say("9 m tall, 14 m away")
    assert keys_of(player, "there is a fence in front of me")[0] == "nearest.how_far"


@pytest.mark.parametrize(
    ("text", "given_up"),
    [
        ("he is staying back, nobody is going there", True),
        ("they aren't crossing now", True),
        ("she is crossing", False),
        ("he's going up", False),
        ("they are staying at the lip", False),
    ],
)
def test_others_who_let_it_be(text: str, *, given_up: bool) -> None:
    """Who does not go is told in known words; who goes never counts."""
    assert gives_up(text) is given_up


def test_a_wish_of_another_is_let_be() -> None:
    """One who only wanted to cross, and stays, opens the place; one who crosses does not."""
    assert wishes("my wife wants to cross above the fall")
    assert not wishes("my wife is crossing above the fall")
    player = walked("one of us wants to cross the stream above the fall")
    assert known(player).conversation.closed
    assert "danger.nobody_there" not in keys_of(player, "she is crossing")
    assert keys_of(player, "she is staying with us, nobody is crossing")[0] == "danger.nobody_there"
