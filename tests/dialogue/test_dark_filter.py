"""A dark filter without a number, a button held down, and shade under trees: phones among them."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player
from tests.dialogue.test_filters_on import lens
from tests.dialogue.walked import known, walked

PHONE = "phone, 2 m tall, 5 m away, log at 1 m, tripod, full sun"


@pytest.mark.parametrize(
    ("command", "text", "answer"),
    [
        (
            "english",
            "idk what number the filter is theres nothing written on it how do i find out",
            "each doubling of the time is 1 stop",
        ),
        ("english", "bought this clip on dark filter thing do i bring it", "Bring it"),
        (
            "sprache deutsch",
            "weiß nicht wie stark der filter ist, steht nix drauf. wie find ich das raus",
            "jede Verdopplung der Zeit ist 1 Stufe",
        ),
        ("sprache deutsch", "soll ich den dunklen aufsteckfilter mitnehmen?", "Nimm ihn mit"),
        (
            "idioma español",
            "no sé qué número es el filtro, no pone nada, cómo lo averiguo",
            "cada vez que el tiempo se dobla es 1 paso",
        ),
        ("idioma español", "tengo un filtro oscuro de pinza, lo llevo?", "Tráelo"),
    ],
)
def test_filter_without_a_number(command: str, text: str, answer: str) -> None:
    """How it is measured, and whether it comes along."""
    player = Player()
    player.say(command)
    assert answer in player.say(text)[0].body


def test_measured_filter_is_taken() -> None:
    """Once settings were given its strength is asked for, and counts."""
    player = walked(told=PHONE)
    said = player.say("no idea how strong the filter is, how do i find out")[0].body
    assert "How strong is the filter?" in said
    player.say("nd32")
    assert lens(player)[0] == 5.0


@pytest.mark.parametrize(
    "text",
    ["how strong is the current", "what is a filter", "how many stops of dark glass do I need"],
)
def test_other_strengths_and_filters(text: str) -> None:
    """Neither is a filter without a number."""
    assert "each doubling" not in walked().say(text)[0].body


@pytest.mark.parametrize(
    ("told", "command", "text", "answer"),
    [
        (PHONE, "", "how do i get it silky, do i just hold shutter longer", "pro mode at"),
        (PHONE, "sprache deutsch", "muss ich länger drücken?", "länger drücken ändert nichts"),
        (PHONE, "idioma español", "¿mantengo el botón pulsado más tiempo?", "no cambia nada"),
        ("full frame, 12 m tall, 18 m away, rock at 1.5 m", "", "hold the button longer?", "bulb"),
    ],
)
def test_button_held_longer(told: str, command: str, text: str, answer: str) -> None:
    """It changes nothing; what does is said."""
    player = walked(*filter(None, [command]), told=told)
    assert answer in player.say(text)[0].body


@pytest.mark.parametrize("text", ["i'll hold on longer", "keep it longer"])
def test_no_button(text: str) -> None:
    """Other things that last longer."""
    assert "bulb" not in walked().say(text)[0].body


def test_light_of_the_trees_holds() -> None:
    """The sun is left behind, and "just shady" is the same shade."""
    player = walked("nd32 on", told=PHONE)
    player.say("we moved in under the trees, want it silky")
    assert known(player).facts.light == "light canopy"
    player.say("its just shady")
    assert known(player).facts.light == "light canopy"
    player.say("moved back out into the shade of a rock, its shady")
    assert known(player).facts.light == "open shade"


def test_moved_into_the_shade() -> None:
    """In these words, too."""
    player = walked("full sun", "moved into the shade")
    assert known(player).facts.light == "open shade"


def test_stronger_nd_stands_in_place_of_the_one_that_is_on() -> None:
    """It is not put on top of it."""
    player = walked("nd32 on", "silky", "all of it", told=PHONE)
    said = player.say("all of it")[0].body
    assert "in place of the 5-stop" in said
