"""Cases of the trade typed in one message, without a guided walk: the answer, not the wording.

What is right comes from common practice of the trade's teachers (texture from 1 to 10 % of the
frame; ISO down before anything else; f/8 to f/11 on full frame; no filter in deep shade), the
arithmetic from exact thirds of a stop (Exif 2.3, Annex C).
"""

from __future__ import annotations

import re
from typing import NamedTuple

import pytest

from tests.dialogue.player import Player


class Case(NamedTuple):
    """One message and what the answer has to hold, as patterns; what it must not hold."""

    name: str
    typed: str
    holds: tuple[str, ...]
    not_holds: tuple[str, ...] = ()


CASES = [
    Case(
        "four stops over in the sun: the look stays, and what would hold it is named",
        "full frame 24 mm f/11 1/4 s iso 100, full sun, too bright; fall 10 m tall, 15 m away",
        (r"still 2( 1/3| 2/3)? stops too bright", r"-stop ND"),
        (r"frozen",),
    ),
    Case(
        "tele from near: the section's foot speed",
        "70-200 at 135, 1/4 s, f/11, iso 100. fall 30 m, 50 m away, only a part. mush",
        (r"1/(20|25|30) s", r"textured"),
    ),
    Case(
        "one over on the meter at ISO 200: the ISO goes first",
        "f/8 1/15 s iso 200, meter says +1, full frame 24 mm, fall 10 m tall, 15 m away",
        (r"f/8, ISO 100, 1/15 s",),
    ),
    Case(
        "a rule of the trade: two frames, take the quarter",
        "wide lens, f/11, ISO 100; at 1/2 s clipped and without texture, at 1/4 s a third under",
        (r"Take f/11, ISO 100, 1/4 s",),
    ),
    Case(
        "time and aperture fixed, two stops under: the ISO, nothing else",
        "f/11, 1/4 s, ISO 100, 2 stops under on the meter, keep the time and the aperture",
        (r"f/11, ISO 400, 1/4 s",),
    ),
    Case(
        "the same in small steps",
        "f/11, 1/4 s, ISO 100, 2 stops under, keep time and f-number, in small steps",
        (r"f/11, ISO 400, 1/4 s", r"ISO 125, ISO 160, ISO 200, ISO 250, ISO 320, ISO 400"),
    ),
    Case(
        "one over, time fixed, a polariser in the bag: it first, then open by the excess",
        "full frame f/11 1/4 s iso 100, one stop over, keep the time, I have a polariser",
        (r"f/9, ISO 100, 1/4 s, polariser on",),
        (r"f/16",),
    ),
    Case(
        "one over, time fixed, no polariser: f/16 with its price, and what spares it",
        "full frame f/11 1/4 s iso 100, one stop over, keep the time, no polariser",
        (r"f/16, ISO 100, 1/4 s", r"diffraction 15\.2 to 21\.5 µm"),
    ),
    Case(
        "too long and clipped at f/22 and ISO 400: all three mended together",
        "full frame, 24 mm, f/22, ISO 400, 1 s; fall 10 m high, 15 m away; blown, no texture",
        (r"f/(8|9|10|11),", r"1/[4-9] s", r"textured"),
        (r"Next: f/22", r"ISO 400,"),
    ),
    Case(
        "a tele user whose quarter is mush",
        "200 mm, full frame, 1/4 s f/8 iso 100 is mush, fall 20 m tall, section, 30 m away",
        (r"1/(20|25|30|40|50|60|80) s", r"textured"),
    ),
    Case(
        "deep shade where filters were the mistake",
        "dense canopy, nd8 and polariser on, f/11 iso 100 8 s, water is soup",
        (r"polariser off", r"ND off", r"textured"),
    ),
    Case(
        "too frozen: longer",
        "full frame 24 mm, f/8 iso 400 1/250 s, fall 10 m tall 15 m away, looks frozen like ice",
        (r"1/(8|10|13|15|20) s", r"ISO 100", r"textured"),
    ),
    Case(
        "f/22 by habit: the same brightness, sharper",
        "24-105 at 24, f/22 iso 400 1 s, fall 12 m away, nearest rock 2 m, full frame",
        (r"f/(8|9|10|11), ISO 100, (0\.8|1|0\.6) s", r"silky"),
    ),
    Case(
        "soft foreground: f-number and focus for the depth",
        "full frame 24 mm, nearest rock 1 m, fall 15 m away, the front is soft",
        # focus 2nf/(n+f); f-number sqrt(spread / (4.88 x 550 nm)) of the spread 0.552 mm = 14.3
        (r"Focus at 1\.9 m", r"f/14"),
    ),
]


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.name)
def test_solved_from_one_message(case: Case) -> None:
    """The first answer to a person nobody knows yet holds the right settings."""
    said = Player().say(case.typed)
    body = "\n".join(message.body for message in said)
    for pattern in case.holds:
        assert re.search(pattern, body), body
    for pattern in case.not_holds:
        assert not re.search(pattern, body), body


def test_units_follow_the_person() -> None:
    """Feet come back as feet, metres as metres, both while nobody has said."""
    imperial = Player()
    imperial.say("40 ft tall, 60 ft away, rock at 5 ft, full frame, 50 mm")
    bodies = " ".join(m.body for m in imperial.say("where am i"))
    assert "60 ft" in bodies
    assert " m," not in bodies.replace("mm", "")
    metric = Player()
    metric.say("12 m tall, 18 m away, rock at 1.5 m, full frame, 50 mm")
    bodies = " ".join(m.body for m in metric.say("where am i"))
    assert "18 m" in bodies
    assert "ft" not in bodies


def test_nothing_is_set_for_light_that_was_not_told() -> None:
    """Without a word about the light no level is claimed; with one it is."""
    player = Player()
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame, 24-70")
    player.say("1")
    assert "about right" not in player.say("1")[0].body
    told = player.say("overcast, no filters")[0].body
    assert "heavy overcast" in told
