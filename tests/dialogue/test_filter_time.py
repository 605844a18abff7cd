"""The time behind an ND, and what its number or density takes, from the question's own numbers."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player
from tests.dialogue.walked import walked


def said_to(*lines: str) -> tuple[tuple[str, ...], str]:
    """The keys and the words of the answer to the last line."""
    player = Player()
    for line in lines[:-1]:
        player.say(line)
    (said,) = player.say(lines[-1])
    return said.keys, said.body


@pytest.mark.parametrize(
    ("lines", "time"),
    [
        # each stop doubles the time: 1/30 s behind 3 stops is 1/4 s on the dial (8/30 = 0.27)
        (("start", "without filter 1/30 s. with the 3 stop nd how long?"), "becomes 1/4 s"),
        (("meter says 1/8 without the filter, 6 stop nd is on, how long do I expose?",), "8 s"),
        (("from 1/15 with a 6 stop nd on, what time do i get?",), "becomes 4 s"),
        (("1/60 bare, nd 0.9 goes on, which shutter?",), "becomes 1/8 s"),
        (("bare it is 1/30, how long with ND8?",), "becomes 1/4 s"),
        (
            ("deutsch", "Ohne Filter 1/30 Sekunde. Mit Graufilter 0,9 wie lange?"),
            "3 Stufen ND 1/4 s",
        ),
        (("español", "sin filtro 1/30, ¿cuánto tiempo con el ND de 6 pasos?"), "a 2 s con 6 pasos"),
    ],
)
def test_time_behind_a_filter(lines: tuple[str, ...], time: str) -> None:
    """In each language, by stops, by factor and by density."""
    keys, body = said_to(*lines)
    assert keys[0] == "asked.nd_time"
    assert time in body


@pytest.mark.parametrize(
    ("text", "time"),
    [
        ("1 s without it, how long with a 6 stop nd?", "64 s"),  # 2^6
        ("1 second bare, how long with the 10 stop", "17 min"),  # 2^10 = 1024 s
    ],
)
def test_long_times_take_a_watch(text: str, time: str) -> None:
    """Cameras end at 30 s."""
    keys, body = said_to(text)
    assert keys[0] == "asked.nd_time_bulb"
    assert time in body


@pytest.mark.parametrize(
    ("lines", "takes"),
    [
        (("ND8, how many times longer is that?",), "3 stops: 8 times"),
        (("nd 64 in stops?",), "6 stops: 64 times"),
        (("what is density 1.8 in stops?",), "6 stops: 63.1 times"),  # 10^1.8
        (("deutsch", "Und ND8, wieviel mal länger ist das?"), "die 8-fache Zeit"),
    ],
)
def test_what_a_filter_takes(lines: tuple[str, ...], takes: str) -> None:
    """A factor is a power of two, a density a power of ten."""
    keys, body = said_to(*lines)
    assert keys[0] == "asked.nd_takes"
    assert takes in body


@pytest.mark.parametrize(
    "text",
    [
        "how long can I stay at the fall",
        "nd1 in stops?",
        "nd 0.0 in stops?",
        "3 stop and 6 stop nd, 1/30 bare, how long?",
        "6 stop nd at 1/30, is that silky?",
        "1/30 without it and 1/8 before, how long with the 3 stop nd?",
    ],
)
def test_what_is_no_such_question(text: str) -> None:
    """Without a filter, with several, with two times, or with none asked for."""
    keys, _ = said_to("start", text)
    assert not any(key.startswith("asked.nd_t") for key in keys)


def test_how_long_behind_a_filter_from_the_time_that_is_set() -> None:
    """1/25 s and six stops: 64 times as long (definition of a stop)."""
    told = "12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod, 6-stop ND, cloudy"
    body = walked(told=told).say("I meant my ND, six stops. How long would I expose then?")[0].body
    assert "1/25 s without it becomes 2.5 s" in body


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ((), "3 stop ND on, same aperture: which time?"),
        ((), "I put the 3 stop ND on, what shutter now?"),
        (("deutsch",), "ND 3 Blenden drauf, gleiche Blende: welche Zeit?"),
        (("deutsch",), "3-Blenden-ND bei f/11, welche Zeit?"),
        (("español",), "ND de 3 pasos puesto, misma apertura: ¿qué tiempo?"),
    ],
)
def test_which_time_behind_a_filter_from_the_time_that_is_set(
    language: tuple[str, ...], text: str
) -> None:
    """1/5 s and three stops: 8 times as long, and nothing is put on by asking."""
    (said,) = walked(*language, "f/11 1/5 s ISO 100").say(text)
    assert said.keys[0] == "asked.nd_time"
    assert "1.6 s" in said.body.replace(",", ".")
    assert not any(key.startswith("base.") for key in said.keys)


@pytest.mark.parametrize(
    "text",
    [
        "3 stop nd at f/16, which time?",
        "3 stop nd in full sun, which time?",
        "3 stop nd at EV 12, which time?",
        "3 stop nd, how grainy is it?",
    ],
)
def test_what_changes_more_than_the_filter_is_no_such_question(text: str) -> None:
    """Another opening, light or question."""
    keys = walked("f/11 1/5 s ISO 100").say(text)[0].keys
    assert "asked.nd_time" not in keys


def test_behind_a_filter_that_is_on_the_time_is_no_bare_one() -> None:
    """Who has an ND on already asks something else."""
    keys = walked("f/11 1/5 s ISO 100, 3 stop ND is on").say("3 stop nd, which time?")[0].keys
    assert "asked.nd_time" not in keys
