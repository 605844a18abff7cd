"""Polls and places as events that clients show."""

from __future__ import annotations

from datetime import UTC, datetime

from bot.dialogue.actions import Poll, SharedPlace
from bot.matrix.content import ROW_KEY, content_of, kind_of
from bot.runtime.ports import Outgoing

POLL = Poll(question="Blinking now?", options=("no", "dots"))
FALLBACK = "Blinking now?\n1 no\n2 dots"


def test_a_poll_is_an_event_of_its_own_kind() -> None:
    """One choice, ids that are the numbers people may type, and plain text beside it."""
    outgoing = Outgoing("r", "!a", FALLBACK, thread_id="$root", poll=POLL)
    content = content_of(outgoing)
    assert kind_of(outgoing) == "org.matrix.msc3381.poll.start"
    assert content["org.matrix.msc3381.poll.start"] == {
        "kind": "org.matrix.msc3381.poll.disclosed",
        "max_selections": 1,
        "question": {
            "msgtype": "m.text",
            "body": "Blinking now?",
            "org.matrix.msc1767.text": "Blinking now?",
        },
        "answers": [
            {"id": "1", "org.matrix.msc1767.text": "no"},
            {"id": "2", "org.matrix.msc1767.text": "dots"},
        ],
    }
    assert content["org.matrix.msc1767.text"] == content["body"] == FALLBACK
    assert content["m.relates_to"]["event_id"] == "$root"
    assert (content["m.mentions"], content[ROW_KEY]) == ({}, "r")


def test_a_place_is_shown_on_a_map() -> None:
    """The address of the specification, and the pin and time that clients read beside it."""
    shared_at = datetime(2027, 6, 18, 12, 0, tzinfo=UTC)
    place = SharedPlace(latitude=44.1512, longitude=-71.34985, shared_at=shared_at)
    outgoing = Outgoing("r", "!a", "To show rescuers.", place=place)
    uri = "geo:44.151200,-71.349850"
    assert kind_of(outgoing) == "m.room.message"
    assert content_of(outgoing) == {
        "msgtype": "m.location",
        "body": "To show rescuers.",
        "geo_uri": uri,
        "org.matrix.msc3488.location": {"uri": uri, "description": "To show rescuers."},
        "org.matrix.msc3488.asset": {"type": "m.pin"},
        "org.matrix.msc3488.ts": 1_813_320_000_000,  # 2027-06-18 12:00 UTC
        "org.matrix.msc1767.text": "To show rescuers.",
        "m.mentions": {},
        ROW_KEY: "r",
    }
