"""Questions that want a yes or a no hear it first, then the number behind it.

Numbers are worked by hand beside each case: heights of the fall by division, light by the exposure
value, depth by the thin lens, the polariser's 1.7 stops (common practice) as 2^1.7 = 3.25.
"""

from __future__ import annotations

import pytest

from bot.dialogue.reading import read
from bot.dialogue.reckoning import camera_of
from bot.dialogue.solving import time_text, watch_text
from core.series import shutter_label
from tests.dialogue.test_first_settings import facts_of, told
from tests.dialogue.test_light_gives import given_of
from tests.dialogue.walked import keys_of

FALL = "12 m tall, 18 m away, rock at 3 m"
KIT = "full frame 24-105, tripod, polariser"


def body_of(*lines: str) -> str:
    """The answer to the last of these lines."""
    return told(*lines[:-1]).say(lines[-1])[0].body


# too far, too near


@pytest.mark.parametrize(
    ("text", "begins"),
    [
        # 25 / 15 = 1.67 heights, a little past 1 to 1.5; 36 mm upright over the fall's angle:
        # arctan(14.1 / 25) + arctan(0.9 / 25) = 31.48 deg, 18 / tan(15.74) = 63.9, less 10 % 57.5
        ("15 m fall, im 25 m off on a bridge, is that too far?", "No: 1.7 heights"),
        ("12 m tall, is 40 m too far?", "Rather: 3.3 heights"),  # 40 / 12
        ("12 m tall, 16 m away, is this too far?", "No: 1.3 heights"),  # 16 / 12
        ("4 m tall fall, 2 m away, is that too close?", "Rather: 0.5 heights"),
        ("10 m tall, 12 m away, am i standing too near?", "No: 1.2 heights"),
        ("is that too far?", "1 to 1.5 heights of the fall"),
        ("stream, 3 m away, is that too far?", "1 to 1.5 heights of the fall"),
    ],
)
def test_too_far_or_too_near(text: str, begins: str) -> None:
    """Heights of the fall decide; what else was told is kept."""
    assert body_of(text).startswith(begins)


def test_the_focal_length_that_holds_it_is_of_the_format_once_that_is_known() -> None:
    """57 mm on full frame; on four thirds 17.3 / 36 of it, 27.6 mm."""
    assert "57 mm (full frame) holds it" in body_of("15 m fall, 25 m away, is that too far?")
    body = body_of("four thirds with 12-60", "15 m fall, 25 m away, is that too far?")
    assert "28 mm (55 as full frame) holds it" in body


def test_the_distance_in_the_question_is_told() -> None:
    """A length that is asked about is where the person stands."""
    assert facts_of(told("12 m tall, is 40 m too far?")).distance_m == pytest.approx(40)


# a polariser that is on


def test_a_polariser_left_on_at_dusk_matters() -> None:
    """Yes, by 1.7 stops: the time given bare becomes 3.25 of it; then the settings without it."""
    lines = ("four thirds, 12-40, tripod", "6 m high, 10 m away", "nearest stone 80 cm", "dusk")
    player = told(*lines, "1", "1")
    bare_s = given_of(player).shutter_s
    assert bare_s == pytest.approx(0.25)
    said = player.say("The polariser is still on from midday, does it matter?")[0]
    # 0.25 x 3.25 = 0.81 s, the mark 0.8
    assert said.body.startswith(
        "Yes: the polariser takes about 1.7 stops (1.3 to 2), 1/4 s becomes 0.8 s"
    )
    assert "polariser off" in said.body.splitlines()[1]


def test_a_polariser_in_the_sun_does_not_matter() -> None:
    """Light to spare, and 1/13 s x 3.25 = 1/4 s is textured still (8 % of the frame)."""
    body = body_of(KIT, FALL, "bright cloud", "1", "1", "polariser is on, is that bad?")
    assert body.startswith("No: this light has the polariser's 1.7 stops")


def test_a_polariser_that_costs_the_look_matters() -> None:
    """Without a light the look decides: 2^1.7 of the aim of 4 % is 13 %, silky."""
    assert body_of(KIT, FALL, "1", "1", "the polariser is on, does that matter?").startswith("Yes")


# focus or wind


def test_soft_leaves_beside_sharp_rock_are_wind() -> None:
    """13.4 mm at f/5.6, focus 2.83 m: sharp from 1.5 m on.

    Hyperfocal 13.38^2 / (5.66 x 0.01443) = 2192 mm + 13 = 2.21 m; near = 2.83 (2.205 - 0.013) /
    (2.205 + 2.83 - 0.027) = 1.24 m, nearer than the leaf.
    """
    player = told("15 m fall, 25 m away", "m43 with 12-60", "nearest leaf 1.5 m", "1", "1")
    player.say("1/5 f5.6 iso 100, only dots blink")
    said = player.say("rock is sharp, leaves arent, is that focus?")[0]
    assert said.body.startswith("No, that is wind: at f/5.6 it is sharp from 1.5 m on.")
    assert "keep.leaf_frame" in said.keys


def test_leaves_nearer_than_the_depth_may_be_out_of_focus() -> None:
    """27.6 mm at f/5.6, focus 2.83 m: 27.6^2 / (5.66 x 0.01443) = 9.33 m hyperfocal.

    near = 2.83 x 9.33 / (9.36 + 2.83 - 0.06) = 2.18 m, farther than the leaf at 1.5 m.
    """
    player = told(
        "15 m fall, 25 m away", "m43 with 12-60, at 27.6 mm", "nearest leaf 1.5 m", "1", "1"
    )
    player.say("1/5 f5.6 iso 100, only dots blink")
    body = player.say("rock is sharp, leaves arent, is that focus?")[0].body
    assert body.startswith("No, wind; unless they are nearer than 2.2 m")


def test_without_numbers_the_rock_tells() -> None:
    """Nothing is known of the lens: sharp rock beside soft leaves is wind."""
    body = body_of("f/11 1/4 s iso 100 nothing blinks", "leaves are soft, is it the focus?")
    assert body.startswith("No, where the rock beside them is sharp")


# are these settings right here


@pytest.mark.parametrize(
    ("text", "begins"),
    [
        # EV 10 at f/11 (11.31^2 = 128): 128 / 2^10 = 1/8 s; 1/4 s is one stop over
        (
            "f eleven a quarter of a second is what I usually do is that right here",
            "No: in an open",
        ),
        ("is f/11 and 1/4 right here?", "No: in an open gorge that is 1 stop too bright"),
        (
            "1/8 s at f/11, is that ok?",
            "Yes: in an open gorge that is about right without a filter",
        ),
        ("1/30 at f/11, is this right?", "No: in an open gorge that is 2 stops too dark"),
    ],
)
def test_settings_that_are_asked_about(text: str, begins: str) -> None:
    """By the light that was told, bare as they are."""
    assert body_of(KIT, FALL, "open gorge", "1", "1", text).startswith(begins)


def test_what_the_polariser_makes_of_them_is_said_beside() -> None:
    """One stop over less 1.7 is 0.7 under, two thirds; with it on the answer counts with it."""
    lines = (KIT, FALL, "open gorge", "1", "1")
    assert "With the polariser on: 2/3 stop too dark." in body_of(
        *lines, "is f/11 and 1/4 right here?"
    )
    player = told(*lines, "polariser on")
    body = player.say("is f/11 and 1 s right here?")[0].body  # three over less 1.7: 1 1/3
    assert body.startswith("No: in an open gorge that is 1 1/3 stops too bright behind")
    assert "With the polariser" not in body


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("is 1/8 s at f/11 ok?", "verdict.look_yes"),
        ("is 4 s and f/11 right here?", "verdict.look_no"),
    ],
)
def test_without_a_light_the_look_is_judged(text: str, key: str) -> None:
    """7.67 m/s over 18 x 36 / 39 = 16.6 m: 1/8 s is 5.8 %, textured; 4 s is misty."""
    assert key in keys_of(told(KIT, FALL, "1", "1"), text)


@pytest.mark.parametrize(
    "text", ["is it bad that my tripod is wet?", "is that right?", "is that focus?"]
)
def test_other_questions_are_left_to_others(text: str) -> None:
    """No verdict where its subject is not named."""
    assert not any(key.startswith("verdict.") for key in keys_of(told(KIT, FALL, "1", "1"), text))


def test_a_polariser_that_makes_it_right_is_not_called_off() -> None:
    """1 2/3 stops over less 1.7 is nothing that could be told as bright or dark."""
    body = body_of(KIT, FALL, "open gorge", "1", "1", "is f/9 and 1/4 right here?")
    assert body.startswith("No: in an open gorge that is 1 2/3 stops too bright")
    assert "With the polariser" not in body


def test_a_time_beyond_the_dial_is_for_the_watch() -> None:
    """1/30 s behind 13 stops is 273 s; the longest mark would be four stops short."""
    camera = camera_of(read(KIT))
    assert watch_text(2**13 / 30, camera) == shutter_label(2**13 / 30, camera.dial) != "30 s"
    assert watch_text(1 / 4, camera) == time_text(1 / 4, camera) == "1/4 s"


# is that f-number enough: N = f² (1/n - 1/far) / 2c, c a 1500th of the diagonal


@pytest.mark.parametrize(
    ("lines", "begins"),
    [
        # 24 mm, 1.5 m to 18 m, c 0.0288: 576 x (1/1500 - 1/18000) / 0.0577 = 6.1
        (("at 24 mm", "is f/8 enough for the rock?"), "Yes: 1.5 m at 24 mm needs about f/6.3"),
        (("at 24 mm", "would f/4 do?"), "No: 1.5 m at 24 mm needs about f/6.3"),
        (("at 24 mm", "would f/22 be enough?"), "More than enough: 1.5 m at 24 mm"),
        (("deutsch", "24 mm", "Reicht Blende 8?"), "Ja: 1,5 m bei 24 mm"),
        (("deutsch", "24 mm", "reicht f/4 für den Stein?"), "Nein: 1,5 m bei 24 mm"),
        (("español", "a 24 mm", "¿me basta f/8?"), "Sí: 1,5 m a 24 mm"),
    ],
)
def test_an_f_number_that_is_enough_or_not(lines: tuple[str, ...], begins: str) -> None:
    """Yes or no first, with what the nearest thing needs."""
    body = body_of("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70", *lines)
    assert body.startswith(begins)


def test_an_f_number_with_nothing_near_or_on_a_phone() -> None:
    """The format's best range, and what would be reckoned; a phone has one f-number."""
    assert body_of("full frame 24-70", "is f/8 enough?").startswith("Yes, with nothing near: f/8")
    assert "fixed" in body_of("just my phone", "is f/8 enough?")


def test_a_focal_length_that_was_not_told_is_the_usual_one() -> None:
    """24 mm as on full frame: 12 mm on four thirds, as for the settings."""
    assert "at 12 mm (24 as full frame)" in body_of("m43, 12-40, rock at 1.2 m", "is f/8 enough?")


@pytest.mark.parametrize(
    ("language", "lines", "begins"),
    [
        ("deutsch", ("15 m hoher Fall, ich stehe 25 m weg, ist das zu weit?",), "Nein: 1,7"),
        ("español", ("cascada de 15 m, estoy a 25 m, ¿es demasiado lejos?",), "No: 1,7"),
        ("deutsch", ("die Blätter sind unscharf, ist das der Fokus?",), "Nein"),
        ("español", ("las hojas salen borrosas, ¿es el enfoque?",), "No"),
        ("deutsch", ("dichte Wolken", "f/8, 1/60 s, ISO 100, passt das so?"), "Ja: bei"),
        ("español", ("nublado", "f/8, 1/60 s, iso 100, ¿está bien?"), "Sí: con"),
    ],
)
def test_a_yes_or_a_no_in_other_languages(
    language: str, lines: tuple[str, ...], begins: str
) -> None:
    """What wants a yes or a no hears it first, whatever language it is asked in."""
    assert body_of(language, *lines).startswith(begins)
