"""Questions that only try a value, in whatever words; lights by their level; bare lenses."""

from __future__ import annotations

import pytest

from bot.dialogue.facts import Facts
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from tests.dialogue.player import Player
from tests.dialogue.test_two_settings import in_the_gorge
from tests.dialogue.walked import keys_of, known

#: f/11, ISO 100, 1/6 s with the polariser on, on 35 mm from 22 m.
_PRIMES = (
    "full frame, 20 mm, 35 mm and 85 mm primes, 6 and 10 stop, CPL",
    "14 m tall, 22 m away, rock at 1.8 m",
    "35 mm",
    "1",
    "1",
    "f/11, 1/6 s, ISO 100, polariser on",
)


def with_primes() -> Player:
    """Somebody with three primes and two filters."""
    player = Player()
    for line in _PRIMES:
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("language", "line", "told"),
    [
        ("en", "could i get away with an eighth", "1/8 s: 1 stop darker than 1/4 s, textured"),
        ("en", "half a second looks like cotton wool could i get away with 1/8", "1/8 s: 1 stop"),
        ("en", "can I not just go to f11", "f/11, ISO 100: 1 stop darker; 1/2 s"),
        ("en", "can't i just use iso 200?", "f/8, ISO 200: 1 stop brighter; 1/8 s"),
        ("en", "is 1/8 enough?", "Equally bright: 1/8 s ISO 200."),
        ("en", "is a sixth not enough?", "1/6 s: 2/3 stop darker"),
        ("en", "1/15 instead?", "1/15 s: 2 stops darker"),
        ("en", "do i lose much at 1/8?", "1/8 s: 1 stop darker"),
        ("en", "is 1/2 too long?", "1/2 s: 1 stop brighter than 1/4 s, silky"),
        ("en", "should i just open up to f/5.6?", "The rock at 1.5 m goes soft"),
        ("en", "what if EV 12, what time?", "1/60 s is right there"),
        ("en", "suppose EV 12, what time?", "1/60 s is right there"),
        ("en", "at EV 14 and a 3 stop, what time", "In hazy sun 1/30 s at f/8, ISO 100, 3-stop ND"),
        ("de", "reicht nicht ein sechstel?", "1/6 s: 2/3 Stufe dunkler"),
        ("de", "geht auch 1/8?", "1/8 s: 1 Stufe dunkler"),
        ("de", "kann ich nicht einfach f/11 nehmen?", "f/11, ISO 100: 1 Stufe dunkler"),
        ("de", "komm ich mit einer achtel hin?", "1/8 s: 1 Stufe dunkler"),
        ("de", "angenommen LW 13, 3-Stufen-ND bei f/8, welche Zeit?", "1/15 s bei f/8"),
        ("de", "bei LW 13 mit dem 3-Stufen-ND, welche Zeit?", "1/15 s bei f/8"),
        ("es", "¿no basta con 1/6?", "1/6 s: 2/3 de paso más oscuro"),
        ("es", "¿me vale 1/8?", "1/8 s: 1 paso más oscuro"),
        ("es", "¿puedo usar f/11 sin más?", "f/11, ISO 100: 1 paso más oscuro"),
        ("es", "supón EV 13, ND de 3 pasos y f/8, ¿qué tiempo?", "1/15 s a f/8"),
    ],
)
def test_what_a_value_would_do(language: str, line: str, told: str) -> None:
    """It is said, and neither the walk nor its question moves."""
    player = in_the_gorge(language)
    walk = known(player).conversation.walk
    said = player.say(line)[0]
    assert told in said.body
    assert known(player).conversation.walk == walk
    assert "ask.blink" in said.keys


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("so whats 1/6 look like at 85, mush?", "85 mm from 22 m shows 9.3 m"),
        (
            "say sun comes out at 4, EV 13ish. 6 stop plus CPL at f8 on the 85, what time?",
            "In bright cloud 1.6 s at f/8, ISO 100, polariser and 6-stop ND",
        ),
        ("redo the share at 85, 15m, 1/6", "85 mm from 15 m shows 6.4 m"),
        ("redo the share at 35, 22m, 1/6", "water crosses 5.8 %"),
        ("could I use 1/30 at 17?", "1/30 s: 2 1/3 stops darker"),
    ],
)
def test_lenses_filters_and_light_at_once(line: str, told: str) -> None:
    """A bare number is the person's lens; nothing of it is real afterwards."""
    player = with_primes()
    walk = known(player).conversation.walk
    assert told in player.say(line)[0].body
    assert known(player).conversation.walk == walk
    body = player.say("nothing blinks")[0].body
    assert "f/11, ISO 100, 1/6 s" in body


def test_what_is_told_beside_is_kept() -> None:
    """A nearer rock is told, and a value tried."""
    player = in_the_gorge()
    said = player.say("the boulder is at 1.2 m. could I use 1/8?")[0]
    assert "what_if.time" in said.keys
    assert known(player).facts.nearest_m == pytest.approx(1.2)


@pytest.mark.parametrize(
    ("line", "key"),
    [
        ("can i handhold 1/15?", "asked.by_hand_short"),
        ("do I need a tripod for 1/8?", "asked.tripod"),
        ("does 1/8 need the nd?", "asked.nd"),
        ("how grainy is ISO 1600?", "asked.grain"),
        ("why f/22?", "asked.why_not_f22"),
        ("which iso for 1/8?", "asked.iso"),
        ("could I take 1/8, 1/15?", "un"),
        ("could I stay here till 6?", "asked"),
        ("may I climb up there for 1/8?", ""),
        ("I could use f/11", "told.settings"),
        ("took it at 1/8, is it silky?", "told.settings"),
    ],
)
def test_what_tries_nothing(line: str, key: str) -> None:
    """Questions with an answer of their own, and what is told."""
    keys = keys_of(in_the_gorge(), line)
    assert not any(one.startswith("what_if") for one in keys), keys
    assert any(one.startswith(key) for one in keys), keys


def test_another_topic_by_its_sense_is_no_try() -> None:
    """Who asks of something else names a value by the way."""
    keys = keys_of(in_the_gorge(), "is there a way to see sharpness at 1/4?")
    assert not any(one.startswith("what_if") for one in keys)
    assert "what_if" not in "".join(keys_of(Player(), "is 1/8 enough?"))


@pytest.mark.parametrize(
    ("language", "text", "light"),
    [
        ("en", "EV 13ish", "bright cloud"),
        ("en", "that's nearer EV 8", "wooded gorge"),
        ("en", "ev 11 here", "open gorge"),
        ("en", "EV 8-9", "light canopy"),
        ("en", "meter says EV 15", "full sun"),
        ("en", "wooded gorge, nearer EV 10", "open gorge"),
        ("de", "LW 12", "overcast"),
        ("es", "EV 7", "dense canopy"),
        ("en", "EV 2", None),
        ("en", "EV +1", None),
        ("en", "ev 13 compensation", None),
    ],
)
def test_light_by_its_level(language: str, text: str, light: str | None) -> None:
    """The name whose level lies nearest; a level says more than words, a correction is none."""
    assert read(glossed(text, language)).light == light


@pytest.mark.parametrize(
    ("text", "facts"),
    [
        ("6 stop plus CPL", Facts(nd_stops=(6.0,), has_polariser=True)),
        ("the 3 stop and the polariser", Facts(nd_stops=(3.0,), has_polariser=True)),
        ("2 stops plus", Facts(meter_stops=2.0)),
    ],
)
def test_glass_beside_glass_is_no_reading(text: str, facts: Facts) -> None:
    """A filter with a plus behind it is not over by so much."""
    told = read(text).known()
    assert {slot: told.get(slot) for slot in facts.known()} == facts.known()
    assert ("meter_stops" in told) == (facts.meter_stops is not None)


@pytest.mark.parametrize(
    ("language", "line"),
    [
        ("en", "I see grain in the shadows, can that be ISO 200?"),
        ("de", "etwas Rauschen, kann das ISO 200 sein?"),
        ("es", "hay ruido, ¿puede ser el ISO 200?"),
    ],
)
def test_a_cause_is_no_try(language: str, line: str) -> None:
    """Who asks whether a value is to blame tries none."""
    assert not any(key.startswith("what_if") for key in keys_of(in_the_gorge(language), line))


def test_a_phone_sets_no_filter_for_another_time() -> None:
    """Its opening is fixed, and no glass takes seventeen stops."""
    player = Player()
    player.say("phone, 12 m tall, 18 m away, rock at 2 m, full sun")
    for line in ("1", "1", "what if 40 s"):
        said = player.say(line)[0]
    assert "what_if.time" in said.keys
    assert "weighed.as_bright" not in said.keys
