"""Trouble in the log: once when it begins, every ten minutes, once when it is over."""

from __future__ import annotations

import pytest

from bot.trouble import AGAIN_S, CALM_S, Trouble, Troubles


class Clock:
    """A clock that a test moves."""

    def __init__(self) -> None:
        self.now_s = 1000.0

    def __call__(self) -> float:
        """The time [s]."""
        return self.now_s


@pytest.fixture
def clock() -> Clock:
    """The clock."""
    return Clock()


def test_an_outage_is_told_when_it_begins_and_when_it_is_over(
    clock: Clock, caplog: pytest.LogCaptureFixture
) -> None:
    """Two lines for a thousand failures within ten minutes; success alone is not worth one."""
    trouble = Trouble("sync", clock)
    trouble.over()
    for _ in range(1000):
        trouble.met("502")
        clock.now_s += 0.5
    trouble.over()
    trouble.over()
    assert caplog.messages == [
        "Trouble with sync (502); it is tried again and again",
        "No more trouble with sync, after 500 s",
    ]


def test_a_long_outage_is_told_every_ten_minutes_with_its_count(
    clock: Clock, caplog: pytest.LogCaptureFixture
) -> None:
    """Each line counts the failures since the one before, by kind."""
    trouble = Trouble("sync", clock)
    for number in range(121):
        trouble.met("502" if number % 3 else "TimeoutError")
        clock.now_s += 10
    assert caplog.messages[1:] == [
        "Still trouble with sync: 40 x 502, 20 x TimeoutError in the last 10 min",
        "Still trouble with sync: 40 x 502, 20 x TimeoutError in the last 10 min",
    ]


def test_what_fails_now_and_then_is_told_every_ten_minutes(
    clock: Clock, caplog: pytest.LogCaptureFixture
) -> None:
    """Every other try fails for half an hour: a beginning, an end, then one pair in ten minutes."""
    trouble = Trouble("sending", clock)
    for _ in range(180):
        trouble.met("502")
        clock.now_s += 5
        trouble.over()
        clock.now_s += 5
    assert len(caplog.messages) == 6
    assert caplog.messages[2] == (
        "Trouble with sending comes and goes: 60 x 502 in the last 10 min"
    )


@pytest.mark.parametrize(
    ("calm_s", "lasts_s", "lines"),
    [(CALM_S, 0, 1), (CALM_S / 2, 0, 0), (CALM_S / 2, CALM_S, 1), (CALM_S / 2, AGAIN_S, 1)],
    ids=["after calm", "back at once and gone", "back at once and lasting", "and seldom tried"],
)
def test_trouble_that_comes_back(
    clock: Clock, caplog: pytest.LogCaptureFixture, calm_s: float, lasts_s: float, lines: int
) -> None:
    """After a minute of calm it is new at once, else when it has lasted a minute."""
    trouble = Trouble("sync", clock)
    trouble.met("502")
    trouble.over()
    caplog.clear()
    clock.now_s += calm_s
    trouble.met("502")
    clock.now_s += lasts_s
    trouble.met("502")
    assert len(caplog.messages) == lines


def test_all_who_try_the_same_share_its_trouble(clock: Clock) -> None:
    """One subject, one line, whoever meets it."""
    troubles = Troubles(clock)
    assert troubles.of("sync") is troubles.sync
    named = (troubles.sync, troubles.sending, troubles.keys, troubles.jobs, troubles.store)
    assert len(set(named)) == len(named)
