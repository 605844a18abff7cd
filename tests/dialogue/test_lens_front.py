"""What is on the lens: named with settings, metered without, asked after, and reckoned by hand."""

from __future__ import annotations

import pytest

from tests.dialogue.test_filters_on import lens
from tests.dialogue.walked import TOLD, known, walked

KIT = f"{TOLD}, 24 mm, polariser, a three stop and a six stop nd"


@pytest.mark.parametrize(
    ("command", "text"),
    [
        (
            "silky",
            (
                "neither is on the lens yet, only the pola. Meter gives me a fifteenth at f eleven "
                "iso one hundred. Which glass and what time"
            ),
        ),
        ("sprache deutsch", "Pol ist drauf. Der Beli sagt 1/15 bei f/11, ISO 100, seidig bitte"),
        (
            "idioma español",
            "polarizador puesto, el fotómetro da 1/15 a f/11, ISO 100, lo quiero sedoso",
        ),
    ],
)
def test_metered_settings_are_the_light(command: str, text: str) -> None:
    """From them follow the filter and the time of the look; the f-number stays."""
    player = walked(command, told=KIT)
    said = player.say(text)[0].body
    assert "f/11, ISO 100, 1/2 s" in said.replace("0.4 s", "1/2 s")
    assert lens(player) == (3.0, True)


@pytest.mark.parametrize(
    "text", ["meter says 2 stops over", "metered it, is f/8 1/15 one stop darker?"]
)
def test_other_words_of_the_meter(text: str) -> None:
    """A reading in stops, or a claim, is no light of its own."""
    player = walked("f/11, ISO 100, 1/4 s", told=KIT)
    player.say(text)
    walk = known(player).conversation.walk
    assert walk is not None
    assert walk.clean_stops is None


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        (
            "three stops on a fifteenth is half a second. Agree?",
            "Yes: 1/15 s and 3 stops make 1/2 s.",
        ),
        ("6 stops on 1/60 makes 4 seconds, right?", "No: 1/60 s and 6 stops make 1 s."),
    ],
)
def test_own_sum_is_checked(text: str, answer: str) -> None:
    """Yes or no, and the right time."""
    assert answer in walked(told=KIT).say(text)[0].body


def test_sums_that_are_none() -> None:
    """A sum that is not asked about, or of no time."""
    for text in ("3 stops on 1/15 is 1/2 s", "3 stops on 0 s is 1 s, right?"):
        assert "make" not in walked(told=KIT).say(text)[0].body


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("so is that with the six or the three in front?", "With polariser and 3-stop ND: f/11"),
        ("which filter is on", "With polariser and 3-stop ND: f/11"),
    ],
)
def test_what_is_on_is_said(text: str, answer: str) -> None:
    """With the settings that count it."""
    player = walked("took it: f/11, ISO 100, 1/2 s, polariser on, 3-stop nd on", told=KIT)
    assert answer in player.say(text)[0].body


def test_nothing_is_on() -> None:
    """Said so."""
    player = walked("took it: f/11, ISO 100, 1/2 s, no filters on", told=KIT)
    assert "Without a filter: f/11" in player.say("is that with the filter?")[0].body
    assert "Without" not in walked().say("was it nice?")[0].body


def test_every_next_setting_names_the_lens_front() -> None:
    """Not only what changes on it."""
    player = walked("took it: f/8, ISO 100, 1/8 s, polariser on, 3-stop nd on", told=KIT)
    assert "polariser on, 3-stop ND on" in player.say("patches")[0].body
    assert "with polariser and 3-stop ND" in player.say("dots")[0].body


def test_polariser_that_was_on_all_along() -> None:
    """It is not reckoned again: the settings stay."""
    player = walked("took it: f/11, ISO 100, 1/4 s", "dots", told=KIT)
    before = known(player).conversation.walk
    player.say("the pola's been on since I set up so don't count it twice")
    after = known(player).conversation.walk
    assert before is not None
    assert after is not None
    assert before.given is not None
    assert after.given is not None
    assert lens(player)[1]
    assert after.given.filter_stops > before.given.filter_stops
    assert after.clean_stops is not None
    assert before.clean_stops is not None
    assert after.clean_stops < before.clean_stops


def test_polariser_for_glare_keeps_the_nd() -> None:
    """The line names it, and its light is not lost."""
    player = walked("took it: f/8, ISO 100, 1/4 s, 3-stop nd on", told=KIT)
    said = player.say("the rock shines like a mirror")[0].body
    assert "with 3-stop ND" in said
    assert lens(player) == (3.0, True)


def test_phone_names_its_filter() -> None:
    """A clip-on ND stands in its line, too."""
    player = walked("cloudy", "nd32 is on", told="2 m tall, 5 m away, log at 1 m, phone, tripod")
    walk = known(player).conversation.walk
    assert walk is not None
    assert walk.given is not None
    assert walk.given.nd_on_stops == 5.0
    assert "5-stop ND on, phone propped" in player.say("in shade now, nd32 on")[0].body
