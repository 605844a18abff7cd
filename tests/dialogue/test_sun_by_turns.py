"""Sun that comes and goes, or lies on a part: the light that was told is the one that counts."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sun_by_turns import told
from bot.dialogue.reading import read
from bot.dialogue.reading.light import denied
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked


@pytest.mark.parametrize(
    ("language", "text", "by_turns"),
    [
        ("en", "sun keeps coming and going through the trees where do i start", True),
        ("en", "no the suns not under the canopy its hitting the top half on and off", True),
        ("en", "patches of sun all over the water", True),
        ("en", "bright patches on the water when the sun comes through", True),
        ("en", "half in sun half in shade", True),
        ("en", "the sun's gone behind a cloud", False),
        ("en", "full sun on it", None),
        ("en", "when does the sun come out?", None),
        ("en", "the sun comes out", None),
        ("en", "on the left a sunny wall", None),
        ("de", "jetz kommt plötzlich die sonne durch, lauter helle flecken aufm wasser", True),
        ("de", "die sonne liegt auf der oberen hälfte", True),
        ("de", "die sonne is wieder weg hinter wolken", False),
        ("es", "el sol va y viene", True),
        ("es", "hay sol en la mitad de la cascada y sombra en la otra", True),
        ("es", "se fue el sol", False),
    ],
)
def test_sun_by_turns_is_told(language: str, text: str, by_turns: object) -> None:
    """In the words of each language; what is asked tells nothing."""
    assert told(Said(text, text, language)) is by_turns


def test_it_is_said_once_what_such_light_means() -> None:
    """Before any settings, and not at a plan for another day."""
    player = Player()
    assert "light_told.by_turns" in keys_of(player, "30 m fall, sun keeps coming and going")
    assert "light_told.by_turns" not in keys_of(player, "40 m off, the sun comes and goes")
    player = Player()
    player.say("plan")
    assert "light_told.by_turns" not in keys_of(player, "30 m fall, sun and clouds by turns")


def test_a_full_message_has_no_room_for_it() -> None:
    """It is kept all the same, and said with the settings."""
    player = Player()
    player.say("de")
    keys = keys_of(
        player,
        "30 m fall, 40 m off, rock at 3 m, aps-c, 10-18, tripod, polariser; 3 km walk out, 150 m"
        " climb, sunset 18:40, the sun comes and goes",
    )
    walk = known(player).conversation.walk
    assert walk is not None
    assert walk.checks["sun"] == "by_turns"
    assert "lens.tilted" in keys


def test_settings_in_such_light_say_to_wait() -> None:
    """No single light is claimed, and what is denied is forgotten."""
    player = walked("light canopy")
    keys = keys_of(
        player, "no the sun's not under the canopy, it hits the top half on and off. no polariser"
    )
    assert "base.by_turns" in keys
    assert "base.level_ok" not in keys
    assert known(player).facts.light is None


def test_even_light_ends_it() -> None:
    """Told as gone, or by another light."""
    player = walked("sun and shade by turns")
    player.say("the sun's gone behind a cloud")
    walk = known(player).conversation.walk
    assert walk is not None
    assert "sun" not in walk.checks
    player.say("sun comes and goes again")
    player.say("overcast now")
    walk = known(player).conversation.walk
    assert walk is not None
    assert "sun" not in walk.checks


def test_no_filter_evens_out_patches_of_sun() -> None:
    """And such patches are no drops on the glass."""
    player = walked("deutsch")
    keys = keys_of(
        player,
        "jetz kommt plötzlich die sonne durch, lauter helle flecken aufm wasser und auf den"
        " steinen. graufilter drauf? hab nd8 und nd64",
    )
    assert keys[0] == "asked.nd_by_turns"
    assert "symptom.spots" not in keys


@pytest.mark.parametrize(
    ("text", "lights"),
    [
        ("open gorge, not under the canopy", {"light canopy"}),
        ("no full sun here", {"full sun"}),
        ("it is overcast", set()),
    ],
)
def test_a_light_is_denied(text: str, lights: set[str]) -> None:
    """Of the words for a light with a "no" before them."""
    assert lights <= denied(text)
    assert bool(denied(text)) is bool(lights)


@pytest.mark.parametrize(
    ("text", "light"),
    [
        ("77m back is in the trees", None),
        ("30 m back puts me under the trees", None),
        ("im back in the trees now", "light canopy"),
        ("the fall is back in the shade", "open shade"),
    ],
)
def test_light_of_another_place_is_none(text: str, light: str | None) -> None:
    """Where somebody would stand is no light of the frame."""
    assert read(text).light == light


@pytest.mark.parametrize(
    "text",
    [
        "why does the foam go round in circles by the rocks",
        "leaves drift around in little circles",
        "the froth is spinning in rings",
    ],
)
def test_foam_in_an_eddy_is_no_drop_on_the_glass(text: str) -> None:
    """Circles that water draws are none of the lens."""
    assert read(text).symptoms == ()
