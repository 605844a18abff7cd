"""A filter that is told to be on the lens: settings with it; its strength where it is unknown."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player
from tests.dialogue.walked import TOLD, known, walked

KIT = f"{TOLD}, polariser, 6 stop ND, cloudy"
ND_ON = (
    "The filter is on, 6 stops",
    "filter's on now",
    "putting the 6 stop filter on now",
    "screwed it on",
    "with the 6 stop",
    "with nd",
    "dark filter on now",
)
POLARISER_ON = ("with polariser", "w/ the polariser", "the pola is on")
BOTH_ON = ("with the polariser and the 6 stop", "now with both filters", "both filters on")
ABROAD = (
    ("sprache deutsch", "Filter ist drauf", 6.0, False),
    ("sprache deutsch", "ist drauf", 6.0, False),
    ("sprache deutsch", "mit dem 6er", 6.0, False),
    ("sprache deutsch", "mit Polfilter", 0.0, True),
    ("sprache deutsch", "jetzt mit beiden Filtern", 6.0, True),
    ("idioma español", "el filtro está puesto", 6.0, False),
    ("idioma español", "con el de 6 pasos", 6.0, False),
    ("idioma español", "con polarizador", 0.0, True),
    ("idioma español", "ahora con los dos filtros", 6.0, True),
)


def lens(player: Player) -> tuple[float, bool]:
    """What stands before the lens by the settings given last: ND stops, polariser."""
    given = known(player).conversation.walk
    assert given is not None
    assert given.given is not None
    return given.given.nd_on_stops, given.given.polariser_on


@pytest.mark.parametrize("text", ND_ON)
def test_nd_is_on(text: str) -> None:
    """Its settings are given, and it is not told to come off."""
    player = walked(told=KIT)
    said = player.say(text)[0].body
    assert lens(player) == (6.0, False)
    assert "6-stop ND on" in said


@pytest.mark.parametrize("text", POLARISER_ON)
def test_polariser_is_on(text: str) -> None:
    """By a few words, once settings were given."""
    player = walked(told=KIT)
    player.say(text)
    assert lens(player) == (0.0, True)


@pytest.mark.parametrize("text", BOTH_ON)
def test_both_are_on(text: str) -> None:
    """Told, not asked."""
    player = walked(told=KIT)
    player.say(text)
    assert lens(player) == (6.0, True)


@pytest.mark.parametrize(("command", "text", "stops", "polariser"), ABROAD)
def test_filters_in_other_languages(
    command: str, text: str, stops: float, *, polariser: bool
) -> None:
    """German and Spanish words of the same."""
    player = walked(command, told=KIT)
    player.say(text)
    assert lens(player) == (stops, polariser)


def test_it_is_on() -> None:
    """Where a filter was advised, it is that; else it may be the stabiliser."""
    player = walked(told=KIT)
    before = lens(player)
    player.say("it's on")
    assert lens(player) == before
    player.say("f/8, ISO 100, 1/2 s, 6-stop nd on")
    player.say("yes it's on")
    assert lens(player)[0] == 6.0


def test_only_polariser_is_known() -> None:
    """Then it is the filter that is on."""
    player = walked(told=f"{TOLD}, polariser, no nd, cloudy")
    player.say("the filter is on")
    assert lens(player) == (0.0, True)


def test_unknown_strength_is_asked_for() -> None:
    """With the way to measure it; the number that comes is taken, by stops or as a factor."""
    player = walked(told=f"{TOLD}, cloudy")
    said = player.say("clipped the dark filter on, what time now")[0].body
    assert "each doubling of the time is 1 stop" in said
    assert "How strong is the filter?" in said
    player.say("64")
    assert lens(player)[0] == pytest.approx(6.0)


def test_two_nds_are_told_apart_by_number() -> None:
    """By stops or by factor; without one the strength is asked for."""
    told = f"{TOLD}, nd8 and nd64, cloudy"
    for text, stops in (("with the 3 stop", 3.0), ("with the nd64", 6.0)):
        player = walked(told=told)
        player.say(text)
        assert lens(player)[0] == stops
    assert "How strong" in walked(told=told).say("the filter is on")[0].body


def test_owned_before_settings() -> None:
    """Before settings were given a filter that is named is gear."""
    player = Player()
    player.say("start")
    player.say(
        "full frame 24-70 with polariser, with a three stop and a six stop, tripod, i've got"
    )
    facts = known(player).facts
    assert facts.has_polariser
    assert facts.nd_stops == (3.0, 6.0)


@pytest.mark.parametrize(
    "text", ["is the filter on?", "should i put the filter on?", "i have a filter"]
)
def test_asked_or_owned_is_not_on(text: str) -> None:
    """No filter goes on by a question, or by what is in the bag."""
    player = walked(told=KIT)
    before = lens(player)
    player.say(text)
    assert lens(player) == before


def test_filter_taken_off_beside_a_light() -> None:
    """What came off is not told to come off again."""
    player = walked("the nd is on", told=KIT)
    said = player.say("its shady now, took off the filter. whats the number")[0].body
    assert "take the ND off" not in said
    assert lens(player)[0] == 0.0
