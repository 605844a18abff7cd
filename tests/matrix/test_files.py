"""Private files, pauses and the events that wait in a file."""

from __future__ import annotations

import stat
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.matrix.backoff import LONGEST_ASKED_S, Backoff, asked_s
from bot.matrix.private_file import read_private, write_private
from bot.matrix.waiting import WaitingEvent, WaitingEvents

NOW = datetime(2027, 6, 1, 12, tzinfo=UTC)
#: What a server says of its own clock.
DATE = {"Date": "Tue, 01 Jun 2027 12:00:00 GMT"}


def test_a_private_file_is_for_its_owner_alone(tmp_path: Path) -> None:
    """Mode 0600, also when it takes the place of another, and nothing is left beside it."""
    path = tmp_path / "secret.json"
    path.write_text("{}")
    path.chmod(0o644)
    write_private(path, {"a": 1})
    assert read_private(path) == {"a": 1}
    assert stat.S_IMODE(path.stat().st_mode) == 0o600
    assert list(tmp_path.iterdir()) == [path]


def test_a_write_that_fails_leaves_the_old_file(tmp_path: Path) -> None:
    """What cannot be written as JSON neither harms the old file nor leaves a piece behind."""
    path = tmp_path / "secret.json"
    write_private(path, {"a": 1})
    with pytest.raises(TypeError):
        write_private(path, {"a": object()})
    assert read_private(path) == {"a": 1}
    assert list(tmp_path.iterdir()) == [path]


def test_no_file_is_nothing_and_a_wrong_one_an_error(tmp_path: Path) -> None:
    """A missing file is told apart from one that holds something else."""
    assert read_private(tmp_path / "none.json") is None
    wrong = tmp_path / "wrong.json"
    for text in ("[1]", "{"):
        wrong.write_text(text)
        with pytest.raises(ValueError, match=r"."):
            read_private(wrong)


@given(st.integers(0, 60))
def test_pauses_grow_and_stay_bounded(failures: int) -> None:
    """Between half and all of a doubling ceiling, never over the longest."""
    backoff = Backoff(first_s=1.0, longest_s=60.0)
    for _ in range(failures):
        backoff.next_s()
    ceiling = min(60.0, 2.0**failures)
    assert ceiling / 2 <= backoff.next_s() <= ceiling
    backoff.reset()
    assert 0.5 <= backoff.next_s() <= 1.0


def test_the_servers_wish_lengthens_a_pause() -> None:
    """What the server asks for is obeyed even over the longest pause."""
    assert 330.0 <= Backoff().next_s(330.0) <= 363.0


@pytest.mark.parametrize(
    ("answer", "headers", "expected_s"),
    [
        ({}, {}, None),
        ({"retry_after_ms": 2500}, {}, 2.5),
        ({"retry_after_ms": 2500}, {"Retry-After": "7"}, 7.0),
        ({"retry_after_ms": 9000}, {"Retry-After": "7"}, 9.0),
        ({"retry_after_ms": "soon"}, {"Retry-After": " 7 "}, 7.0),
        ({"retry_after_ms": True}, {"Retry-After": "soon"}, None),
        ({"retry_after_ms": -5}, {}, 0.0),
        ({"retry_after_ms": float("nan")}, {}, None),
        ({"retry_after_ms": float("inf")}, {}, LONGEST_ASKED_S),
        ({}, {"Retry-After": "9" * 400}, LONGEST_ASKED_S),
        ({}, {"Retry-After": "Tue, 01 Jun 2027 12:01:00 GMT"}, None),
        ({}, {"Retry-After": "Tue, 01 Jun 2027 12:01:00 GMT"} | DATE, 60.0),
        ({}, {"Retry-After": "Tue, 01 Jun 2027 12:01:00 -0000"} | DATE, 60.0),
        ({}, {"Retry-After": "Tue, 01 Jun 2027 11:00:00 GMT"} | DATE, 0.0),
    ],
)
def test_a_server_asks_to_wait_in_two_ways(
    answer: dict[str, Any], headers: dict[str, str], expected_s: float | None
) -> None:
    """In the body or in a header, there in seconds or as a date; nonsense is not obeyed."""
    assert asked_s(answer, headers) == expected_s


def _sealed(number: int, sender: str = "@ada:example.org") -> dict[str, Any]:
    return {"event_id": f"${number}", "sender": sender, "content": {"ciphertext": "…"}}


def test_waiting_events_outlive_a_restart(tmp_path: Path) -> None:
    """They are kept once each, in order, and read when a key has come."""
    path = tmp_path / "waiting.json"
    waiting = WaitingEvents(path)
    for number in (1, 2, 1):
        waiting.add("!r", _sealed(number), NOW)
    waiting.save()
    again = WaitingEvents(path)
    assert len(again) == 2

    def second(event: WaitingEvent) -> dict[str, Any] | None:
        return {"body": "read"} if event.source["event_id"] == "$2" else None

    ((event, source),) = again.readable(second)
    assert (event.room_id, source) == ("!r", {"body": "read"})
    again.drop([event])
    again.save()
    assert len(WaitingEvents(path)) == 1


def test_what_waited_too_long_is_given_up_by_room_and_sender(tmp_path: Path) -> None:
    """The group of the first that is too old expires as a whole; others and late ones do not."""
    waiting = WaitingEvents(tmp_path / "waiting.json", timedelta(seconds=30))
    waiting.add("!r", _sealed(1), NOW)
    waiting.add("!r", _sealed(2), NOW + timedelta(seconds=29))
    waiting.add("!r", _sealed(3, "@bo:example.org"), NOW + timedelta(seconds=29))
    late = NOW + timedelta(seconds=30)
    assert waiting.expired(NOW) == []
    expired = waiting.expired(late)
    assert [event.source["event_id"] for event in expired] == ["$1", "$2"]
    assert waiting.expired(late, besides=expired[:1]) == []


def test_what_a_forgotten_person_sent_waits_no_longer(tmp_path: Path) -> None:
    """Up to the wish their events go, in the file too; later ones and those of others stay."""
    path, until_ms = tmp_path / "waiting.json", int(NOW.timestamp() * 1000)
    waiting = WaitingEvents(path)
    for number, sender, sent_ms in (
        (1, "@ada:example.org", until_ms),
        (2, "@ada:example.org", until_ms + 1),
        (3, "@bo:example.org", until_ms),
        (4, "@ada:example.org", "no time"),
    ):
        waiting.add("!r", _sealed(number, sender) | {"origin_server_ts": sent_ms}, NOW)
    waiting.save()
    waiting.forget("@ada:example.org", NOW)
    left = WaitingEvents(path).readable(lambda event: event.source)
    assert [source["event_id"] for _, source in left] == ["$2", "$3"]


def test_the_file_is_bounded_and_written_only_when_something_changed(tmp_path: Path) -> None:
    """A flood pushes out its own oldest; without news there is no write."""
    path = tmp_path / "waiting.json"
    waiting = WaitingEvents(path)
    waiting.save()
    assert not path.exists()
    for number in range(1005):
        waiting.add("!r", _sealed(number), NOW)
    assert len(waiting) == 1000
