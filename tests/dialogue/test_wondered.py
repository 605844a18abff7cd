"""What people wonder about beside the numbers, in each language."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player
from tests.dialogue.test_left_unanswered import _begun


@pytest.mark.parametrize(
    ("language", "line", "key", "told"),
    [
        (
            "en",
            "Is level better than tilted by four and a half degrees, and what does the tilt cost?",
            "wondered.tilt",
            "27 mm does from here",
        ),
        ("en", "why tilted? the lip fits", "wondered.tilt", "lean in 1.8°"),
        ("de", "ist gerade besser als gekippt?", "wondered.tilt", "27 mm"),
        ("es", "¿nivelada o inclinada?", "wondered.tilt", "27 mm"),
        ("en", "fall and pool in one frame or two?", "wondered.two_looks", "two exposures"),
        (
            "en",
            "fall at 1/15, the pool smooth. Is that possible in one exposure, or must I take two?",
            "wondered.two_looks",
            "1/15 s for the fall",
        ),
        ("de", "Fall scharf und Becken glatt, in einem Bild oder zwei?", "wondered.two_looks", ""),
        ("es", "¿caída nítida y poza lisa en una toma o dos?", "wondered.two_looks", ""),
        ("en", "does a polariser alter the drops themselves?", "wondered.polariser_water", ""),
        (
            "en",
            "What I asked is whether falling water itself is changed by the filter.",
            "wondered.polariser_water",
            "Foam and drops hardly",
        ),
        ("de", "verändert der Polfilter das Wasser selbst?", "wondered.polariser_water", ""),
        ("es", "¿el polarizador cambia el agua misma?", "wondered.polariser_water", ""),
        ("en", "why such a long exposure at all?", "wondered.why_long", "1/60 s or shorter"),
        ("de", "warum soll man so lang belichten, kapier ich nich", "wondered.why_long", ""),
        ("de", "wieso nich einfach kurz, dann is alles scharf", "wondered.why_long", ""),
        ("es", "¿por qué exponer tanto tiempo?", "wondered.why_long", ""),
        ("en", "with the filter it is all darker, is that normal?", "wondered.filter_dark", ""),
        ("de", "mit dem filter ist alles dunkler, ist das normal?", "wondered.filter_dark", ""),
        ("es", "con el polarizador todo es oscuro, ¿es normal?", "wondered.filter_dark", ""),
    ],
)
def test_what_is_wondered_about(language: str, line: str, key: str, told: str) -> None:
    """It is answered, and the walk's question stays open."""
    said = _begun(language).say(line)[0]
    assert said.keys[0] == key
    assert told in said.body
    assert len(said.body.split("\n")[0]) <= 160


@pytest.mark.parametrize(
    "line",
    [
        "the horizon is tilted, not level",
        "sun on the fall, shade on the pool: one exposure or two?",
        "the polariser changed the water nicely",
    ],
)
def test_what_tells_or_is_of_light(line: str) -> None:
    """What tells, and a contrast of light, is no such question."""
    assert not any(key.startswith("wondered") for key in _begun().say(line)[0].keys)


def test_before_a_walk_nothing_is_wondered() -> None:
    """Who has told nothing yet begins a walk first."""
    said = Player().say("why such a long exposure at all?")[0]
    assert not any(key.startswith("wondered") for key in said.keys)


def test_a_tilt_without_numbers_and_down() -> None:
    """Without the fall's numbers, or where the camera looks down, the rule alone is said."""
    player = Player()
    player.say("start")
    assert "wondered.tilt_plain" in player.say("is level better than tilted?")[0].keys
    low = Player()
    low.say("1 m tall, 2 m away, nothing near, full frame 24-105")
    assert "wondered.tilt_plain" in low.say("is level better than tilted?")[0].keys


def test_on_a_phone() -> None:
    """A phone has a mode for it, and no dial; it has no second exposure behind an ND."""
    player = Player()
    for line in ("stream, 1.5 m away, rock at 0.5 m, phone", "1"):
        player.say(line)
    said = player.say("wheres the long exposure mode??")[0]
    assert "wondered.long_mode" in said.keys
    assert "Dial" not in player.say("how do I set it to manual mode?")[0].body
    assert "wondered.why_long_phone" in player.say("why such a long exposure?")[0].keys
    said = player.say("fall and pool in one frame or two?")[0]
    assert "wondered.two_looks" not in said.keys


def test_a_camera_has_no_such_mode_and_an_nd_its_own_dark() -> None:
    """Where a phone's mode is, and the polariser's stops, are no answers there."""
    player = _begun()
    assert "wondered.long_mode" not in player.say("where is the long exposure mode?")[0].keys
    player = Player()
    player.say("14 m tall, 20 m away, rock at 2 m, full frame 24-105")
    said = player.say("with the filter it is all darker, is that normal?")[0]
    assert "wondered.filter_dark" not in said.keys
