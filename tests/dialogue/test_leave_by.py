"""A bus, a train or a gate sets the hour to leave by; no sunset is needed for it.

20 min on foot are 30 min there (x 1.5, wet rock, pack, tripod), 15 min are spare (own rule).
"""

from __future__ import annotations

import pytest

from bot.dialogue.reading.visit import read_visit
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked

_WAY = "My bus home goes at 17:20, and it is 20 minutes' walk from the creek to the stop."


def _said(player: Player, text: str) -> str:
    return "\n".join(message.body for message in player.say(text))


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("english", f"{_WAY} When should I stop taking pictures?"),
        ("english", "20 minutes walk to the bus at 17:20 on a muddy path. Time to go?"),
        ("english", "the 5:20 train, 20 min walk to the station, am I late?"),
        ("english", "how late can I stay? bus 17:20, 20 minutes walk"),
        ("deutsch", "Bus um 17:20, 20 Minuten zu Fuß. Wie lange kann ich noch bleiben?"),
        ("español", "bus a las 17:20, 20 minutos a pie. ¿Hasta qué hora puedo quedarme?"),
        ("deutsch", "mein Bus fährt um 17:20, zu Fuß sind es 20 Minuten. Wann muss ich aufhören?"),
        ("deutsch", "der Zug geht um 17:20, 20 Minuten bis zum Bahnhof. Muss ich los?"),
        ("español", "mi bus sale a las 17:20, 20 minutos a pie. ¿Es hora de irme?"),
    ],
)
def test_the_hour_to_leave_by(language: str, text: str) -> None:
    """17:20 less 30 min for the way and 15 min spare; nothing of a car or of others."""
    player = Player()
    player.say(language)
    said = _said(player, text)
    assert "16:35" in said or "4:35 pm" in said
    assert "car" not in said


def test_it_is_told_at_home_too() -> None:
    """The visit lies ahead, and when to pack up there is asked."""
    player = Player()
    player.say(_WAY)
    said = _said(player, "I am still at home. The bus leaves at 17:20, what time must I pack up?")
    assert "16:35" in said


def test_a_start_is_asked_for_at_home() -> None:
    """Without an hour to be back by, a question of leaving is one of the start, or none."""
    player = Player()
    player.say("tomorrow we go to the gorge")
    assert "leave.due" not in keys_of(player, "am I late?")


def test_where_the_light_goes_lamps_come_beside() -> None:
    """Somebody alone stays together with nobody."""
    player = walked("I'm alone")
    said = _said(player, f"{_WAY} It's getting dark, I have one headlamp. Time to go?")
    assert "16:35" in said
    assert "Few lamps" in said
    assert "together" not in said


def test_a_group_stays_together() -> None:
    """So it is said to more than one."""
    said = _said(walked(), f"{_WAY} It's getting dark. Time to go?")
    assert "stay together" in said


def test_beside_questions_of_a_frame_the_hour_is_told() -> None:
    """A frame's settings are answered first; the hour does not get lost behind them."""
    player = walked("2 km out, 100 m climb, sunset 18:45")
    text = "f/11, 1/5 s, it's gone half past four, am I late and is a fifth daft on a bridge?"
    assert "arrive.turn_back" in keys_of(player, text)


def test_beside_questions_of_a_frame_the_bus_goes() -> None:
    """So is the hour before a bus, and that it is over."""
    player = walked(_WAY)
    assert "leave.due" in keys_of(player, "f/11, 1/5 s, am I late?")
    assert "leave.too_late" in keys_of(player, "f/11, 1/5 s, it's 5 pm, am I late?")


def test_beside_a_frame_nothing_is_known_of_the_way() -> None:
    """Then no hour is told."""
    assert "leave.due" not in keys_of(walked(), "f/11, 1/5 s, am I late?")


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("20 min to the station", 20),
        ("it is 25 minutes to the bus stop", 25),
        ("20 min to go", None),
    ],
)
def test_ways_to_a_stop(text: str, minutes: float | None) -> None:
    """A stop, a station or a pier is where a way ends, as a car is."""
    assert read_visit(text).walk_min == minutes


def test_a_watch_tells_the_hour() -> None:
    """Quarter to five: 16 min less than 17:01 (18:45 less 60 min and a way of 44 min)."""
    player = walked("a mile and a half in, three hundred up, sunset 18:45")
    said = _said(player, "is it time to turn round, quarter to five on my watch?")
    assert "left" in said


def test_the_bus_goes_whatever_walk_begins() -> None:
    """A new walk of the same day keeps who walks and the hour to be back by, and not the way."""
    player = walked(f"I'm alone. {_WAY}", "a new walk please")
    trip = known(player).trip
    assert (trip.people, trip.back_by, trip.walk_min) == (1, "17:20", None)


def test_another_day_has_another_bus() -> None:
    """After a night nothing of it holds."""
    player = walked(_WAY)
    player.happen("later 9 h")
    player.say("start")
    assert known(player).trip.back_by is None
