"""What the meter or the camera reads is the light; and what to change first where it is short."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.dark_order import told_beside
from bot.dialogue.meaning.said import in_english
from bot.dialogue.steps.asked import dark_order
from bot.dialogue.walk_state import GivenSettings
from tests.dialogue.player import Player
from tests.dialogue.walked import TOLD, keys_of, known, turn_of, walked

_FRAME = "f/11 1/2 s ISO 100, polariser on"


def _given(player: Player) -> GivenSettings:
    walk = known(player).conversation.walk
    assert walk is not None
    assert walk.given is not None
    return walk.given


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ((), "camera meters 2 s at f/11 iso 100 now"),
        ((), "the reading is 2 s at f/11, ISO 100"),
        (("deutsch",), "Die Belichtungsmessung zeigt bei ISO 100 und f/11 2 s."),
        (("deutsch",), "Bei f/11 und ISO 100 misst die Kamera jetzt 2 s"),
        (("deutsch",), "gemessen 2 s, f/11, ISO 100"),
        (("español",), "la cámara mide 2 s a f/11, ISO 100"),
        (("español",), "el fotómetro marca 2 s a f/11, ISO 100"),
    ],
)
def test_a_reading_sets_the_light(language: tuple[str, ...], text: str) -> None:
    """Settings follow that are as bright as f/11, 2 s, ISO 100 (2 * 100 / 121 = 1.65)."""
    player = walked(*language)
    player.say(text)
    given = _given(player)
    light = given.shutter_s * given.iso / given.f_number**2
    assert 1.3 < light < 2.1


def test_who_reads_how_much_darker_it_is_is_not_asked_for_it() -> None:
    """The time alone is of the settings that stand."""
    keys = keys_of(walked(_FRAME), "It got darker, the camera reads 2 s now")
    assert keys[0] == "base.settings" or keys[0].startswith("base.")
    assert not any(key.startswith("light_changed.") for key in keys)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        (
            (),
            "It got darker, the meter reads 2 s at f/11, ISO 100. ISO up or pola off first?",
        ),
        (
            ("deutsch",),
            "Bei f/11, ISO 100 misst die Kamera 2 s. ISO hoch oder Pol runter, was zuerst?",
        ),
        (
            ("español",),
            "la cámara mide 2 s a f/11, ISO 100. ¿subo ISO o quito el polarizador, en qué orden?",
        ),
    ],
)
def test_order_where_light_is_short(language: tuple[str, ...], text: str) -> None:
    """Aperture as depth allows, polariser, ISO (common practice): f/11 to f/8 is one stop."""
    player = walked(*language, _FRAME)
    (said,) = player.say(text)
    assert said.keys[:3] == ("dark_order.open", "dark_order.polariser", "dark_order.iso")
    body = said.body.replace(",", ".")
    assert "1 s." in body  # 2 s at f/11
    assert "0.3 s" in body  # 1 s less 1.7 stops
    assert _given(player).shutter_s == pytest.approx(2.0)


def test_order_from_the_settings_of_now() -> None:
    """Asked alone it begins with what is set."""
    keys = keys_of(walked("f/8 1/2 s ISO 100"), "should I raise the ISO or open up first?")
    assert keys[:2] == ("dark_order.kept", "dark_order.iso")


def test_a_phone_has_no_aperture_to_open() -> None:
    """Its f-number is fixed."""
    player = walked(told="12 m tall, 18 m away, rock at 1.5 m, phone, tripod")
    turn = turn_of(player)
    dark_order.say(turn, GivenSettings(f_number=1.8, shutter_s=0.5, iso=100.0))
    assert [part.key for part in turn.parts] == ["dark_order.iso"]


@pytest.mark.parametrize(
    "text",
    [
        "sun is out. lower ISO, stop down or ND first?",
        "polariser or ND first?",
        "I raise ISO first, then open up.",
    ],
)
def test_other_orders_are_no_such_question(text: str) -> None:
    """Too bright, of filters, or told."""
    assert told_beside(in_english(text)) is None


def test_before_settings_there_is_nothing_to_change() -> None:
    """Nothing is set yet."""
    player = Player()
    player.say(TOLD)
    keys = keys_of(player, "ISO up or polariser off first?")
    assert not any(key.startswith("dark_order.") for key in keys)
