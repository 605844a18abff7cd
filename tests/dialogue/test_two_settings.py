"""Two settings that are asked about are weighed against each other; the walk stays where it is."""

from __future__ import annotations

import pytest

from bot.dialogue.facts import Facts
from bot.dialogue.meaning.compared import weighed_in
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.steps.asked.as_bright import with_time
from bot.dialogue.walk_state import GivenSettings
from core.camera import FORMATS, Camera
from core.series import Dial
from tests.dialogue.player import Player

#: A fall of 10 m from 15 m on 27 mm: f/8, ISO 100, 1/4 s; water crosses 8.7 % of the frame.
_GORGE = {
    "en": ("10 m tall, 15 m away, boulder at 1.5 m, full frame 24-70", "1", "1", "wooded gorge"),
    "de": (
        "10 m hoch, 15 m weg, Stein bei 1,5 m, Vollformat 24-70",
        "1",
        "1",
        "bewaldete Schlucht",
    ),
    "es": ("cascada de 10 m, a 15 m, roca a 1,5 m, full frame 24-70", "1", "1", "barranco boscoso"),
}


def in_the_gorge(language: str = "en") -> Player:
    """Somebody with settings."""
    player = Player()
    for line in _GORGE[language]:
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("language", "line", "told"),
    [
        ("en", "f8 or f11?", ("f/8 1/4 s: textured, 8.7 %", "f/11 1/2 s: silky, 17.4 %", "1 stop")),
        ("en", "Compare f/8 to f/16 for me: time, look, detail", ("f/16 1 s", "21 µm", "f/7.6")),
        (
            "en",
            "Good, f/8 and a quarter I can live with. Compare that to f/16: what does she lose?",
            ("f/8 1/4 s: textured, 8.7 %; f/16 1 s: silky, 35 %", "f/8 11 µm, f/16 21 µm"),
        ),
        ("en", "compare that to f/16", ("f/8 1/4 s", "f/16 1 s")),
        (
            "en",
            "and 1/15 against 1/2 s, same brightness, how would the strands differ?",
            ("1/15 s: textured, 2.2 %; 1/2 s: silky, 17.4 %", "1/15 s ISO 400, 1/2 s f/11"),
        ),
        ("en", "1/4 vs 1/8", ("1/4 s: textured, 8.7 %; 1/8 s: textured, 4.4 %",)),
        ("en", "a quarter or an eighth?", ("1/4 s: textured, 8.7 %; 1/8 s: textured, 4.4 %",)),
        ("en", "1/125 or 250?", ("1/125 s", "1/250 s")),
        ("en", "is 1/4 better than 1/2?", ("1/4 s: textured, 8.7 %; 1/2 s: silky",)),
        ("en", "ISO 100 vs 400?", ("ISO 400 1/15 s: textured, 2.2 %", "grain")),
        ("en", "f8-f16, what's the difference", ("f/8 1/4 s", "f/16 1 s")),
        ("en", "ISO 100 or 400 at 1/8?", ("ISO 100 1/8 s", "ISO 400 1/30 s")),
        ("en", "35 or 50 mm from here?", ("35 mm shows 15 m", "50 mm shows 11 m", "58 mm")),
        ("en", "70 or 85 mm?", ("58 mm or shorter: a part with these",)),
        ("en", "24 or 70?", ("24 mm shows 22 m", "70 mm shows 7.7 m")),
        ("en", "f/2.8 or f/4?", ("needs f/7.6: none of them holds it",)),
        ("en", "f/5.6 or f/8?", ("needs f/7.6: f/8 holds it",)),
        ("en", "f/8, f/11 or f/22?", ("past f/16 all goes softer",)),
        ("de", "Blende 8 oder 11?", ("f/8 1/4 s", "f/11 1/2 s", "17,4 %")),
        ("de", "ISO 100 gegen 400?", ("ISO 400 1/15 s",)),
        ("de", "vergleich mal 1/15 mit 1/2 s", ("1/15 s: strukturiert, 2,2 %; 1/2 s: seidig",)),
        ("de", "vergleich das mit f/16", ("f/8 1/4 s", "f/16 1 s")),
        ("es", "f/8 frente a f/16", ("f/8 1/4 s: con textura, 8,7 %", "f/16 1 s")),
        ("es", "¿1/4 o 1/8?", ("1/4 s: con textura, 8,7 %; 1/8 s",)),
        ("es", "compáralo con f/16", ("f/8 1/4 s", "f/16 1 s")),
    ],
)
def test_two_are_weighed(language: str, line: str, told: tuple[str, ...]) -> None:
    """Time, look and share of each, depth and diffraction; nothing is kept of it."""
    player = in_the_gorge(language)
    assert player.context is not None
    walk = player.context.conversation.walk
    body = player.say(line)[0].body
    assert all(piece in body for piece in told), body
    assert player.context.conversation.walk == walk
    assert len(body.split("\n", 1)[0]) <= 160


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("f8 or f16?", ("2 stops darker; as bright with 4 × the time", "f/16 21 µm")),
        ("ISO 100 gegen 400?", ("2 stops brighter; as bright with 1/4 × the time",)),
        ("1/15 vs 1/2 s", ("1/15 s: textured, 1.9 %; 1/2 s: silky", "Assumed")),
        ("35 or 70 mm?", ("70 mm shows 0.5 of what 35 mm does",)),
        ("f/8 or f/16 at 1/4?", ("f/8 1/4 s", "f/16 1 s")),
        ("ISO 100 or 400 at 1/4?", ("ISO 100 1/4 s", "ISO 400 1/15 s")),
        ("compare that to f/16", ("once there are settings",)),
        ("good, f/8. compare that to f/16", ("f/8 to f/16: 2 stops darker",)),
    ],
)
def test_before_any_walk_by_what_can_be_said_alone(line: str, told: tuple[str, ...]) -> None:
    """Stops and diffraction need no fall; a look is that of the usual one, which is named."""
    player = Player()
    body = player.say(line)[0].body
    assert all(piece in body for piece in told), body
    assert player.context is not None
    assert player.context.conversation.walk is None


def test_focal_lengths_before_settings_have_no_time() -> None:
    """From where somebody stands it is told what each shows."""
    player = Player()
    player.say("25 m wide stream, full frame")
    player.say("I am 10 m away")
    body = player.say("35 or 50 mm?")[0].body
    assert "35 mm shows 6.9 m; 50 mm shows 4.8 m." in body


def test_a_phone_has_one_opening() -> None:
    """There is nothing to weigh."""
    player = Player()
    player.say("phone, 12 m tall, 18 m away, rock at 2 m, overcast")
    assert "fixed" in player.say("f/8 or f/11?")[0].body


def test_what_is_told_beside_is_kept_and_weighed_with() -> None:
    """A nearer rock needs more depth; a further question is answered, too."""
    player = in_the_gorge()
    said = player.say("would f/8 or f/16 be sharper, boulder is at 1.2 m")[0]
    assert "1.2 m at 27 mm needs f/9.8: f/16 holds it" in said.body
    assert player.context is not None
    assert player.context.facts.nearest_m == pytest.approx(1.2)
    said = Player().say("f/8 or f/11? and do I need the nd")[0]
    assert "asked.nd_plain" in said.keys
    assert "weighed.f_number_alone" in said.keys


@pytest.mark.parametrize(
    ("language", "line"),
    [
        ("en", "it was 1/4 or 1/8, not sure"),
        ("en", "I shoot f/8 or f/11 usually"),
        ("en", "took it at 1/4 and 1/8"),
        ("en", "is it 12 or 15 m?"),
        ("en", "24-70 or 70-200?"),
        ("en", "35 or 50?"),
        ("en", "f/8, 1/4 s, iso 100"),
        ("en", "f/8 or 1/4?"),
        ("en", "iso 100 or 17?"),
        ("en", "50 mm or 2?"),
        ("en", "1/8 or 2?"),
        ("de", "es war 1/4 oder 1/8"),
        ("es", "era 1/4 o 1/8"),
    ],
)
def test_what_is_told_is_not_weighed(language: str, line: str) -> None:
    """Nor are lengths, zooms and numbers of two kinds; two bare numbers only kit explains."""
    said = Said(glossed(line, language), line, language)
    weighed = weighed_in(said)
    assert weighed is None or weighed.slot == ""
    assert not any(key.startswith("weighed") for key in Player().say(line)[0].keys)


@pytest.mark.parametrize(
    ("time_s", "told"),
    [
        (1 / 4, "1/4 s"),
        (1 / 16, "1/15 s ISO 400"),
        (1 / 2, "1/2 s f/11"),
        (8.0, "8 s 5-stop ND"),
    ],
)
def test_as_bright_at_another_time(time_s: float, told: str) -> None:
    """ISO for a shorter one, the opening for a longer, and a filter where that ends."""
    given = GivenSettings(f_number=8.0, shutter_s=1 / 4, iso=100.0)
    camera = Camera(sensor=FORMATS["full frame"], dial=Dial.THIRDS, base_iso=100.0)
    assert with_time(given, time_s, camera, Facts()) == told


def test_a_raised_iso_is_given_back_first() -> None:
    """From ISO 400 a time four times as long takes ISO 100, and longer ones name it, too."""
    given = GivenSettings(f_number=8.0, shutter_s=1 / 4, iso=400.0)
    camera = Camera(sensor=FORMATS["full frame"], dial=Dial.THIRDS, base_iso=100.0)
    assert with_time(given, 1.0, camera, Facts()) == "1 s ISO 100"
    assert with_time(given, 2.0, camera, Facts()) == "2 s ISO 100 f/11"
