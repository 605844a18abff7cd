"""Times in the text: found where a message tells of then, left alone where it tells of now."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dialogue.reading.moments import split_moment
from bot.dialogue.when_told import When, WhenKind

AGO, CLOCK, PART = WhenKind.AGO, WhenKind.CLOCK, WhenKind.PART
DAYS, EARLIER = WhenKind.DAYS, WhenKind.EARLIER


@pytest.mark.parametrize(
    ("text", "rest", "kind", "amount"),
    [
        ("an hour ago it blinked in patches", "it blinked in patches", AGO, 60),
        ("Half an hour ago f/11 1/4", "f/11 1/4", AGO, 30),
        ("a quarter of an hour ago it held", "it held", AGO, 15),
        ("1 h 20 min ago too bright", "too bright", AGO, 80),
        ("45min ago", "", AGO, 45),
        ("1,5 hours ago", "", AGO, 90),
        ("1½ hours ago", "", AGO, 90),
        ("one and a half hours ago", "", AGO, 90),
        ("an hour and a half ago it was mush", "it was mush", AGO, 90),
        ("two hours earlier: 1/4 s, white", "1/4 s, white", AGO, 120),
        ("it blinked a couple of hours ago", "it blinked", AGO, 120),
        ("at 14:10 it was 2 stops over", "it was 2 stops over", CLOCK, 850),
        ("taken at 9:30, too dark", "taken too dark", CLOCK, 570),
        ("at 2 pm it was too bright", "it was too bright", CLOCK, 840),
        ("at 12:15 am it was dark", "it was dark", CLOCK, 15),
        ("14:10: patches", "patches", CLOCK, 850),
        ("at 14:10 2 stops over", "2 stops over", CLOCK, 850),
        ("14h10 3", "3", CLOCK, 850),
        ("this morning it was too dark", "it was too dark", PART, 0),
        ("at noon it was too bright", "it was too bright", PART, 0),
        ("yesterday's frame was 2 stops over", "frame was 2 stops over", DAYS, 1),
        ("3 days ago all white", "all white", DAYS, 3),
        ("a few weeks ago all white", "all white", DAYS, 21),
        ("last Sunday all white", "all white", DAYS, 2),
        ("too dark, from earlier", "too dark", EARLIER, 0),
        ("an older frame, all white", "an older frame, all white", EARLIER, 0),
    ],
)
def test_told_of_then(text: str, rest: str, kind: WhenKind, amount: float) -> None:
    """The moment and the message without its words."""
    found_rest, when = split_moment(text)
    assert when is not None
    assert (found_rest, when.kind, when.amount) == (rest, kind, amount)


@pytest.mark.parametrize(
    "text",
    [
        "now 2 stops over, an hour ago it was fine",
        "just took it, too dark",
        "sunset 18:40",
        "sunset at 18:40, it was 18:38 yesterday and now",
        "we leave at 14:10",
        "turn back at 15:00, it was bright",
        "at 24 mm f/11 it was too bright",
        "at 1/4 s it was white",
        "at 9 it was too dark",
        "1:30 exposure was too long",
        "2:15 min exposure too bright",
        "can I do it at noon?",
        "is it better this evening?",
        "same as earlier",
        "f/11, ISO 100, 1/4 s",
        "12 m tall, 18 m away, rock at 1.5 m",
        "the walk is 2 hours",
        "16:9",
        "",
    ],
)
def test_told_of_now(text: str) -> None:
    """Plans, questions, settings and what is said of now are no moments."""
    assert split_moment(text) == (text, None)


def test_an_hour_of_either_half_of_the_day() -> None:
    """The clock of "2:10" may be that of the afternoon; "02:10" and "14:10" may not."""
    said = ("at 2:10 it was dark", "at 02:10 it was dark", "at 14:10 it was dark")
    found = [split_moment(text)[1] for text in said]
    assert [when and when.either_half for when in found] == [True, False, False]
    assert found[0] == When(CLOCK, "02:10", 130.0, either_half=True)


@given(st.text(max_size=200))
def test_any_text_is_read(text: str) -> None:
    """Whatever is typed, the rest is never longer."""
    rest, when = split_moment(text)
    assert len(rest) <= len(text) + 1
    assert when is not None or rest == text
