"""Numbers that put an earlier message right, and settings that somebody decides on."""

from __future__ import annotations

import pytest

from bot.dialogue.facts import Facts
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.steps.telling.corrected import puts_right
from tests.dialogue.player import Player

KIT = "full frame, 24-70, tripod"


def known_after(*lines: str) -> Facts:
    """What is known after these messages."""
    player = Player()
    for line in lines:
        player.say(line)
    assert player.context is not None
    return player.context.facts


@pytest.mark.parametrize(
    ("lines", "slot", "value"),
    [
        (["12 m tall, 20 m away, 2 m nearest", "feet not metres, 20 feet"], "distance_m", 6.096),
        (["12 m tall, 20 m away", "feet not metres, 31 feet"], "fall_height_m", 9.4488),
        (["12 m tall, 18 m away", "no wait, 14 m"], "fall_height_m", 14.0),
        (["12 m tall, 18 m away", "sorry, I meant 21"], "distance_m", 21.0),
        (["12 m tall, 18 m away", "its 16 m not 18"], "distance_m", 16.0),
        (["40 ft tall, 50 yards away", "feet not yards, fifty feet"], "distance_m", 15.24),
        (["40 ft tall", "50 yards away", "feet not yards, sorry"], "distance_m", 15.24),
        (["40 ft tall", "oops, metres not feet"], "fall_height_m", 40.0),
        (["12 m tall, 18 m away", "I misread, the fall is 9 m tall"], "fall_height_m", 9.0),
        (["20 m away", "feet not yards, sorry"], "distance_m", 20.0),  # no yards were told
        (["18 m away", "sorry about the dog"], "distance_m", 18.0),
    ],
)
def test_the_newest_value_takes_the_slot_told_last(
    lines: list[str], slot: str, value: float
) -> None:
    """A bare number goes to the nearest of the values told last; words may say which.

    1 yd = 0.9144 m and 1 ft = 0.3048 m by definition.
    """
    assert getattr(known_after("start", *lines), slot) == pytest.approx(value)


TOLD = {
    "en": ("start", "12 m tall, 18 m away"),
    "de": ("deutsch", "start", "12 m hoch, 18 m entfernt"),
    "es": ("español", "start", "12 m de alto, a 18 m"),
}
FOOT_M = 0.3048


@pytest.mark.parametrize(
    ("language", "text", "changed"),
    [
        ("en", "not 12 m, 15 m", {"fall_height_m": 15}),
        ("en", "15 instead of 12", {"fall_height_m": 15}),
        ("en", "20 m rather than 18 m", {"distance_m": 20}),
        ("en", "not 12 feet, 15", {"distance_m": 15}),  # nothing was 12 ft: the nearest
        ("en", "the distance should be 20", {"distance_m": 20}),
        ("en", "distance was wrong, it's 10", {"distance_m": 10}),
        ("en", "change the height to 14", {"fall_height_m": 14}),
        ("en", "i meant feet", {"fall_height_m": 12 * FOOT_M, "distance_m": 18 * FOOT_M}),
        ("en", "sorry, in feet", {"fall_height_m": 12 * FOOT_M, "distance_m": 18 * FOOT_M}),
        ("en", "and feet not metres", {"fall_height_m": 12 * FOOT_M, "distance_m": 18 * FOOT_M}),
        ("en", "the width, not the height", {"fall_width_m": 12, "fall_height_m": None}),
        ("en", "not the height but the width", {"fall_width_m": 12, "fall_height_m": None}),
        ("en", "12 is the width, not the height", {"fall_width_m": 12, "fall_height_m": None}),
        ("en", "swap those two", {"fall_height_m": 18, "distance_m": 12}),
        ("en", "swap height and distance", {"fall_height_m": 18, "distance_m": 12}),
        ("en", "i mixed them up", {"fall_height_m": 18, "distance_m": 12}),
        ("de", "nicht 12 m, sondern 15 m", {"fall_height_m": 15}),
        ("de", "ich meinte Fuß", {"fall_height_m": 12 * FOOT_M, "distance_m": 18 * FOOT_M}),
        ("de", "die Breite, nicht die Höhe", {"fall_width_m": 12, "fall_height_m": None}),
        ("de", "andersrum", {"fall_height_m": 18, "distance_m": 12}),
        ("es", "no son 12 sino 15", {"fall_height_m": 15}),
        ("es", "quise decir pies", {"fall_height_m": 12 * FOOT_M, "distance_m": 18 * FOOT_M}),
        ("es", "el ancho, no el alto", {"fall_width_m": 12, "fall_height_m": None}),
        ("es", "al revés", {"fall_height_m": 18, "distance_m": 12}),
    ],
)
def test_one_value_the_unit_or_the_slot_is_put_right(
    language: str, text: str, changed: dict[str, float | None]
) -> None:
    """What is not named stays as it was, and what was understood is said first."""
    player = Player()
    for line in TOLD[language]:
        player.say(line)
    (said,) = player.say(text)
    assert player.context is not None
    wanted = {"fall_height_m": 12, "distance_m": 18, "fall_width_m": None} | changed
    told = {slot: getattr(player.context.facts, slot) for slot in wanted}
    assert told == {
        slot: None if value is None else pytest.approx(value) for slot, value in wanted.items()
    }
    assert said.keys[0] == "noted"


@pytest.mark.parametrize(
    "text", ["swap height and width", "the depth, not the width", "the height, not 9 but tall"]
)
def test_what_was_never_told_is_not_exchanged(text: str) -> None:
    """A swap needs two values, and a new name one that was told."""
    facts = known_after(*TOLD["en"], text)
    assert (facts.fall_height_m, facts.distance_m) == (12, 18)


def test_a_number_that_nobody_told_takes_nothing_back() -> None:
    """No slot holds it, kit included: the new one goes to what was told last."""
    facts = known_after(*TOLD["en"], "rock at 2 m", KIT, "not 44 m, 3 m")
    assert (facts.fall_height_m, facts.distance_m, facts.nearest_m) == (12, 18, 3)


def test_only_two_lengths_told_last_change_places() -> None:
    """After one length, or three, nobody knows which two."""
    facts = known_after("start", "12 m tall", "18 m away", "swap those two")
    assert (facts.fall_height_m, facts.distance_m) == (12, 18)


@pytest.mark.parametrize(
    ("text", "slot", "value"),
    [
        ("not f/11, f/16", "f_number", 16),
        ("1/8 not 1/4", "shutter_s", 1 / 8),
        ("iso 200 not 100", "iso", 200),
        ("not f/11", "f_number", 11),
    ],
)
def test_one_setting_takes_the_place_of_another(text: str, slot: str, value: float) -> None:
    """The setting that is taken back says which dial the new one is of."""
    player = Player()
    for line in (*TOLD["en"], "rock at 2 m", KIT, "1", "1", "f/11 1/4 s iso 100, just dots"):
        player.say(line)
    player.say(text)
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    assert walk.given is not None
    assert getattr(walk.given, slot) == pytest.approx(value, rel=0.03)


def test_a_correction_is_named_and_answers_no_question() -> None:
    """What changed is said first, and the open question stands as before."""
    player = Player()
    player.say("start")
    player.say("12 m tall, 18 m away")
    (said,) = player.say("no wait, 14 m")
    assert said.keys[0] == "noted"
    assert said.keys[-1] == "ask.nearest"
    (said,) = player.say("sorry, nearest rock 2 m")
    assert said.keys[-1] == "ask.kit"


@pytest.mark.parametrize(
    ("lines", "text", "f_number", "time"),
    [
        (["f/22"], "all right, eleven it is", 11.0, None),
        ([], "I'll go with 8", 8.0, None),
        ([], "fine, make it f/9 then", 9.0, None),
        ([], "we'll use banana", None, None),
        (["f/11 1/4 s iso 100, just dots"], "no wait, 1/8", None, 1 / 8),
    ],
)
def test_settings_that_are_decided_on(
    lines: list[str], text: str, f_number: float | None, time: float | None
) -> None:
    """A number that somebody decides on is a setting, with or without its sign."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away, rock at 2 m", KIT, *lines, text):
        player.say(line)
    assert player.context is not None
    assert player.context.facts.f_number == f_number
    walk = player.context.conversation.walk
    assert walk is not None
    if time is not None:
        assert walk.given is not None
        assert walk.given.shutter_s == pytest.approx(time, rel=0.1)


def test_an_f_number_past_the_limit_is_not_only_noted() -> None:
    """f/22 softens everything on full frame, whoever used it (common practice)."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away, rock at 2 m", KIT):
        player.say(line)
    assert "told.past_limit" in player.say("I have set f/22")[0].keys


def test_words_of_correction() -> None:
    """In three languages."""
    assert puts_right(glossed("Entschuldigung, 14 m", "de"))
    assert puts_right(glossed("ich meinte Fuß", "de"))
    assert puts_right(glossed("perdón, 14 m", "es"))
    assert puts_right(glossed("quise decir pies", "es"))
    assert not puts_right("14 m tall")
    assert not puts_right("why 1/5 and not 1 s")


def test_a_correction_of_what_nobody_knows_is_a_message_like_any_other() -> None:
    """A setting that lives on in what was given, and a slot that was taken back since."""
    player = Player()
    for line in ("12 m tall, 18 m away, rock at 2 m", KIT, "1", "1"):
        player.say(line)
    player.say("f/11 1/4 s iso 100, just dots")
    player.say("sorry, 200")
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    assert walk.given is not None
    assert walk.given.iso == pytest.approx(200)


def test_a_correction_fills_what_was_asked_only_by_its_name() -> None:
    """A question that the correction did answer is not put again."""
    player = Player()
    player.say("start")
    player.say("fall 12 m tall")
    (said,) = player.say("sorry, I meant 14 m tall, 18 m away")
    assert said.keys[-1] == "ask.nearest"
