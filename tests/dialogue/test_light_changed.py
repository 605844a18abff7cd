"""Light that changes after the settings, and a time told as a multiple of the last one."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.light_changed import light_change_in
from bot.dialogue.meaning.time_factor import time_factor_in
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, walked

_TOLD = {
    "de": (
        "deutsch",
        "12 m hoch, 18 m weg, Fels bei 1,5 m, Vollformat 24-70, Stativ, bewölkt",
        "1",
        "1",
    ),
    "es": (
        "español",
        "12 m de alto, a 18 m, roca a 1,5 m, full frame 24-70, trípode, nublado",
        "1",
        "1",
    ),
}


def _begun(language: str) -> Player:
    player = Player()
    for line in _TOLD[language]:
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("language", "text", "told"),
    [
        ("en", "It's darker now, I'd say by about a stop.", (-1, 1.0)),
        ("en", "light dropped two stops", (-1, 2.0)),
        ("en", "the light's gone down one and a half stops", (-1, 1.5)),
        ("en", "it is 1 stop darker now", (-1, 1.0)),
        ("en", "the clouds got thicker, everything looks a good deal dimmer", (-1, None)),
        ("en", "it's brighter now", (1, None)),
        ("en", "the light came up a third of a stop", (1, pytest.approx(1 / 3))),
        ("en", "looks darker on the screen", None),
        ("en", "it's darker at the left edge", None),
        ("en", "is it darker now?", None),
        ("en", "a stop darker", None),
        ("en", "it's a bit darker", None),
        ("de", "es ist jetzt um eine Blende dunkler", (-1, 1.0)),
        ("de", "jetzt 1 Stufe dunkler", (-1, 1.0)),
        ("de", "es ist viel dunkler geworden", (-1, None)),
        ("de", "inzwischen ist es heller", (1, None)),
        ("de", "mehr Licht jetzt", (1, None)),
        ("de", "das Bild ist dunkler geworden", None),
        ("es", "ahora está un paso más oscuro", (-1, 1.0)),
        ("es", "ahora 1 paso más oscuro", (-1, 1.0)),
        ("es", "bajó la luz dos pasos", (-1, 2.0)),
        ("es", "se puso más oscuro", (-1, None)),
        ("es", "la foto está más oscura ahora", None),
    ],
)
def test_the_light_and_not_the_picture(
    language: str, text: str, told: tuple[int, float | None] | None
) -> None:
    """Which way, and by how many stops where that is said."""
    assert light_change_in(text, language) == told


@pytest.mark.parametrize(
    ("line", "settings"),
    [
        # each stop of light is one stop of time (definition of a stop)
        ("It's darker now, I'd say by about a stop.", "ISO 100, 1/13 s"),
        ("light dropped two stops", "ISO 100, 1/6 s"),
        ("it is 1 stop brighter now", "ISO 100, 1/50 s"),
        ("double the time then", "ISO 100, 1/13 s"),
        ("ok, half the time", "ISO 100, 1/50 s"),
        ("what if I double the time", "1/13 s instead of 1/25 s"),
    ],
)
def test_settings_follow(line: str, settings: str) -> None:
    """From f/13, ISO 100, 1/25 s; what is only tried moves nothing."""
    player = walked(told="12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod, cloudy")
    body = player.say(line)[0].body
    assert settings in body or "what if" in line
    assert "1/13 s" in body or "what if" not in line


def test_without_an_amount_it_is_asked_for() -> None:
    """With what a stop does, in each language; what is named then is taken."""
    player = walked(told="12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod, cloudy")
    assert "light_changed.darker" in keys_of(player, "everything looks a good deal dimmer now")
    assert "light_changed.brighter" in keys_of(walked(), "it's brighter now")
    assert "1/13 s" in _begun("de").say("es ist viel dunkler geworden")[0].body
    assert "1/13 s" in _begun("de").say("jetzt 1 Stufe dunkler")[0].body
    assert "1/13 s" in _begun("es").say("se puso más oscuro")[0].body
    assert "1/13 s" in _begun("es").say("ahora 1 paso más oscuro")[0].body


def test_a_light_by_its_name_says_more() -> None:
    """Before any settings, and beside a name, no amount is asked for."""
    assert "light_changed.brighter" not in keys_of(walked(), "it's brighter now, full sun")
    player = Player()
    assert "light_changed.darker" not in keys_of(player, "it's darker now")


@pytest.mark.parametrize(
    ("text", "factor"),
    [
        ("double the time then", 2.0),
        ("ok, half the time", 0.5),
        ("All right, double the time then. I'd love one more view", 2.0),
        ("half the time people walk through", None),
        ("doppelt so lang dann", 2.0),
        ("halbe Zeit", 0.5),
        ("entonces el doble de tiempo", 2.0),
        ("la mitad del tiempo", 0.5),
        ("the fall is double the height", None),
    ],
)
def test_a_factor_stands_alone_in_its_clause(text: str, factor: float | None) -> None:
    """Beside other words it may be anything."""
    assert time_factor_in(text) == factor


def test_a_time_of_its_own_counts() -> None:
    """A factor beside a time changes nothing, nor does one before any settings."""
    player = walked(told="12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod, cloudy")
    assert "1/4 s" in player.say("1/4 s, so double the time")[0].body
    assert "1/13 s" not in Player().say("double the time")[0].body
