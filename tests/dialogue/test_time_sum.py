"""A time asked for from one that was right, an opening against an ISO, and equal settings."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player
from tests.dialogue.test_left_unanswered import _begun
from tests.dialogue.walked import known


def _at_a_quarter(language: str = "en") -> Player:
    """At f/11, ISO 100, 1/4 s without a filter."""
    player = _begun(language)
    player.say("f/11, iso 100, 1/4 s")
    return player


@pytest.mark.parametrize(
    ("language", "line", "told", "bright"),
    [
        # 1/60 × 1.6 × (11 / 7.1)² × 2³ = 0.51 s, by definition of the stop
        (
            "en",
            "shutter at f/11 iso100 with cpl + 3 stop, if 1/60 at f/7.1 iso160 cpl was right",
            "1/2 s at f/11, ISO 100, polariser and 3-stop ND",
            "f/7.1, ISO 160, 1/60 s with polariser",
        ),
        # 1/30 × 2 × 4 = 0.27 s
        (
            "en",
            "1/30 at f/8 iso 200 was right. what time at f/16 iso 100?",
            "1/4 s at f/16, ISO 100, no filter",
            "f/8, ISO 200, 1/30 s",
        ),
        # 1/15 × 4 × 2 = 0.53 s
        (
            "en",
            "what shutter at f/16, iso 50 if f/8 iso 100 1/15 was good with no filter",
            "1/2 s at f/16, ISO 50, no filter",
            "f/8, ISO 100, 1/15 s",
        ),
        # 1/4 ÷ 2 × 2^1.7 = 0.41 s
        (
            "en",
            "Polariser: how many stops, and what time do I set with it on at f/8, ISO 100?",
            "0.4 s at f/8, ISO 100, polariser",
            "about 1.7 stops",
        ),
        # 1/30 × 4 × 2^1.7 = 0.43 s
        (
            "de",
            "welche Zeit bei f/16, iso 100 mit Polfilter, wenn f/8 iso 100 1/30 richtig war?",
            "0,4 s bei f/16, ISO 100, Polfilter",
            "f/8, ISO 100, 1/30 s",
        ),
        (
            "es",
            "¿qué tiempo a f/16 iso 100 con polarizador, si f/8 iso 100 1/30 estaba bien?",
            "0,4 s a f/16, ISO 100, polarizador",
            "f/8, ISO 100, 1/30 s",
        ),
    ],
)
def test_the_time_from_one_that_was_right(language: str, line: str, told: str, bright: str) -> None:
    """Each stop of opening, ISO and filters counts; the walk does not move."""
    player = _at_a_quarter(language)
    walk = known(player).conversation.walk
    said = player.say(line)[0]
    assert said.body.startswith(told)
    assert bright in said.body
    assert known(player).conversation.walk == walk


@pytest.mark.parametrize(
    "line",
    [
        "f/8 at iso 400 and 1/6 is 3 stops over. what time at f/8, iso 100?",
        "took f/8 iso 100 1/30, patches. what shutter now?",
        "what time at f/8, iso 100?",
        "what shutter without the polariser off?",
    ],
)
def test_what_was_not_right_is_no_reference(line: str) -> None:
    """A frame that was too bright, or none, is nothing to reckon from."""
    assert "time_sum.is" not in _at_a_quarter().say(line)[0].keys


def test_before_any_settings_nothing_is_reckoned() -> None:
    """Nothing is set, and no lens known."""
    line = "1/30 at f/8 iso 200 was right. what time at f/16 iso 100?"
    assert "time_sum.is" not in Player().say(line)[0].keys


def test_with_no_filter_from_behind_one() -> None:
    """1/15 × 4 × 2 ÷ 2³ = 1/15 s: what was on is off."""
    line = "what shutter at f/16, iso 50 with no filter if f/8 iso 100 1/15 was good with my 3 stop"
    assert _at_a_quarter().say(line)[0].body.startswith("1/15 s at f/16, ISO 50, no filter")


def test_without_the_polariser_that_was_on() -> None:
    """Taken off, the time is shorter by what it took: 1/4 ÷ 2^1.7 = 0.08 s."""
    line = "what time at f/11 iso 100, no polariser, if f/11 iso 100 1/4 with the cpl was right"
    assert _at_a_quarter().say(line)[0].body.startswith("1/13 s at f/11, ISO 100, no filter")


@pytest.mark.parametrize(
    ("language", "line", "key", "told"),
    [
        # f/11 to f/8 is a stop: 1/8 s; ISO 100 to 400 is two: 1/15 s
        ("en", "I asked: f/8 or ISO 400 for the fast frame?", "either.open", "f/8, ISO 100, 1/8 s"),
        ("en", "f/5.6 or iso 800, what costs less?", "either.iso", "f/11, ISO 800, 1/30 s"),
        ("de", "f/8 oder ISO 400 für das kurze Bild?", "either.open", "f/11, ISO 400, 1/15 s"),
        ("es", "¿f/8 o ISO 400 para la toma corta?", "either.open", "f/8, ISO 100, 1/8 s"),
    ],
)
def test_an_opening_or_an_iso(language: str, line: str, key: str, told: str) -> None:
    """A choice is weighed, and not taken as an order."""
    player = _at_a_quarter(language)
    walk = known(player).conversation.walk
    said = player.say(line)[0]
    assert said.keys[:2] == (key, "either.equal")
    assert told in said.body
    assert known(player).conversation.walk == walk


def test_an_opening_or_an_iso_where_nothing_is_near() -> None:
    """Without a near thing the opening comes first, as far as the depth allows."""
    player = Player()
    for line in ("14 m tall, 20 m away, nothing near, full frame 24-105", "1", "1"):
        player.say(line)
    player.say("f/11, iso 100, 1/4 s")
    assert "either.plain" in player.say("f/8 or iso 400 for the fast frame?")[0].keys


@pytest.mark.parametrize("line", ["I had f/8 or iso 400, not sure", "f/8 and iso 400 now"])
def test_what_tells_is_no_choice(line: str) -> None:
    """Who tells does not choose."""
    assert "either.equal" not in _at_a_quarter().say(line)[0].keys


def test_a_frame_told_is_held_against_the_settings_of_now() -> None:
    """A frame just told is what "that" is: 2/3 stop brighter, with its patches heard."""
    player = _at_a_quarter()
    said = player.say("took f/8 iso200 1/10. is that same as the 1/4? patches again")[0]
    assert "No: f/8, ISO 200, 1/10 s is 2/3 stop brighter than f/11, ISO 100, 1/4 s." in said.body
    assert any(key.startswith("highlights.") for key in said.keys)


@pytest.mark.parametrize(
    ("language", "line", "told"),
    [
        ("de", "habs mit f/8 iso 200 1/10 gemacht. ist das gleich hell wie 1/4?", "2/3 Stufe"),
        ("es", "saqué una a f/8 iso 200 1/10. ¿es lo mismo que 1/4?", "2/3 de paso"),
    ],
)
def test_a_frame_told_in_other_languages(language: str, line: str, told: str) -> None:
    """So it is in German and Spanish; the frame told is the one that stands."""
    said = _at_a_quarter(language).say(line)[0]
    assert told in said.body
    assert "told.settings" in said.keys


def test_equal_settings_have_no_difference() -> None:
    """What is set already is said to be; nothing is crisper or brighter than itself."""
    said = _at_a_quarter().say("what if f/11?")[0]
    assert said.keys[0] == "what_if.set"
    assert "against" not in said.body


def test_of_two_values_tried_the_other_one_counts() -> None:
    """Of f/11, which is set, and f/8 the other one is tried, and nothing is set."""
    player = _at_a_quarter()
    walk = known(player).conversation.walk
    said = player.say("I said soft not dark. is it f/11 or the lens? f/8 better?")[0]
    assert "1/8 s instead of 1/4 s" in said.body
    assert "What is set" not in said.body
    assert known(player).conversation.walk == walk


def test_a_tag_belongs_to_what_it_is_behind() -> None:
    """What ends with "right?" is asked, whatever was said before it."""
    said = _at_a_quarter().say("f/8 at 1/4 is a stop brighter, whites go. f/8 at 1/8 then, right?")
    assert said[0].body.startswith("No difference in brightness; at 1/8 s")


def test_depth_asked_behind_a_lens() -> None:
    """Two questions of numbers are two answers."""
    player = Player()
    told = "8 m tall, 10 m away, rock at 0.6 m, aps-c, 10-20 and 16-55, tripod"
    for line in (told, "1", "1", "f/11, iso 100, 1/60 s"):
        player.say(line)
    said = player.say("14mm or 10mm for that? f/11 at 14 enough or two frames")[0]
    assert "weighed.focals_at" in said.keys
    assert "verdict.enough_yes" in said.keys


@pytest.mark.parametrize(
    ("line", "key"),
    [
        ("just tell me how long the shutter must be for silky", "asked.time"),
        ("I asked what iso", "asked.iso"),
        ("f/8, ISO 100, 1/15 s. Now, the polariser: the rock shines. What will it cost me?",
         "asked.polariser_stops"),
        ("that grey filter is new. how many stops does it take?", ""),
    ],
)  # fmt: skip
def test_questions_at_second_hand_and_by_a_pronoun(line: str, key: str) -> None:
    """Who says "tell me how long" asks how long; "it" is the polariser that was spoken of."""
    keys = _at_a_quarter().say(line)[0].keys
    assert key in keys if key else "asked.polariser_stops" not in keys


@pytest.mark.parametrize(
    ("language", "line", "told"),
    [
        # 1/13 as the dial means it, times 1024
        ("en", "Ten stops from one thirteenth of a second: how many seconds?", "81 s"),
        ("en", "with the ten stop instead, 1/13 becomes how many seconds?", "81 s"),
        ("de", "zehn Stufen aus 1/13 s: wie viele Sekunden sind das?", "81 s"),
        ("es", "diez pasos desde 1/13 s, ¿cuántos segundos?", "81 s"),
        ("en", "with a 6 stop, 1/15 becomes what time?", "There: misty"),
    ],
)
def test_the_time_behind_a_filter_and_its_sense(language: str, line: str, told: str) -> None:
    """The number, and what it makes of this water."""
    said = _at_a_quarter(language).say(line)[0]
    assert told in said.body
    assert said.keys[1] in {"asked.nd_past_misty", "asked.nd_look"}


def test_how_far_back_for_a_height_that_is_named() -> None:
    """(50 ft − 1.6 m) × 12 mm ÷ (17.3 mm ÷ 2) is 62 ft; the wide end is the bag's shortest."""
    player = Player()
    player.say("micro four thirds with the 12-40, fall 50 ft tall, 90 ft away")
    for line in (
        "how far back from a 50 foot fall do I stand to fit it in, wide end, vertical",
        "let's move on. at 50 ft tall where would I stand to get it all with the 12mm end?",
        "how far back do I stand to fit it all in at 12 mm?",
    ):
        said = player.say(line)[0]
        assert "one.how_far" in said.keys
        assert said.body.startswith("65 ft back")
