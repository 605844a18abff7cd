"""Numbers that are no exposure times: stops of glass, answers to "how many stops", temperatures."""

from __future__ import annotations

import pytest

from bot.dialogue.reading import read
from tests.dialogue.test_two_settings import in_the_gorge
from tests.dialogue.walked import keys_of, known


@pytest.mark.parametrize(
    "text",
    [
        "how many stops does a polariser eat, I tell them one and a half to two",
        "how many stops does it take, 1/2 or 1?",
        "one and a half to two stops",
        "the polariser costs me 1 1/2",
        "polariser's on, eaten about 1.5",
        "the nd ate 1/2",
        "it's in the low 40s",
        "high 30s and humid",
        "upper-20s? no, low-30s",
        "it's about 45 F",
        "45 fahrenheit here",
        "40 degrees out",
    ],
)
def test_no_time_is_read(text: str) -> None:
    """Neither is anything else, and a bare number of them is not called unread."""
    told = read(text)
    assert told.shutter_s is None
    assert told.f_number is None
    assert not set(told.unread) & {"1", "1/2", "1.5"}


@pytest.mark.parametrize(
    ("text", "slot", "value"),
    [
        ("one and a half seconds", "shutter_s", 1.5),
        ("f/8 1/2 s, how many stops is the polariser?", "shutter_s", 0.5),
        ("40 s", "shutter_s", 40.0),
        ("f 11 1/2", "shutter_s", 0.5),
        ("50 f/1.8 lens at f/8", "f_number", 8.0),
        ("f/8 at 1/40s", "shutter_s", 1 / 40),
    ],
)
def test_times_are_still_read(text: str, slot: str, value: float) -> None:
    """With their unit, beside an f-number, and before the question."""
    assert getattr(read(text), slot) == pytest.approx(value)


@pytest.mark.parametrize(
    ("line", "key"),
    [
        ("And how many stops does a polariser really eat, I tell them one and a half to two", ""),
        ("it's in the low 40s here", ""),
        ("it's about 45 F", ""),
        ("how many stops between 1/125 and 0.8 s?", "asked.stops_between"),
    ],
)
def test_the_walk_keeps_its_time(line: str, key: str) -> None:
    """What was said of degrees and of filters set a frame of half a second, or of forty."""
    player = in_the_gorge()
    walk = known(player).conversation.walk
    keys = keys_of(player, line)
    assert "told.settings" not in keys
    assert any(one.startswith(key) for one in keys)
    assert known(player).conversation.walk == walk
