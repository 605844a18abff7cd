"""Polls and places on their way out: the content of their events; pure."""

from __future__ import annotations

from typing import Any, Final

from bot.dialogue.actions import Poll, SharedPlace

#: What clients send and show; the proposal's final names are not in use yet.
POLL_START: Final = "org.matrix.msc3381.poll.start"
_TEXT: Final = "org.matrix.msc1767.text"


def poll_content(poll: Poll, body: str) -> dict[str, Any]:
    """The content of a poll of one choice, whose answers have the ids "1", "2", ….

    Args:
        poll: the question and its options.
        body: the same as plain text, for clients that show no polls.

    Source: proposals MSC3381 (polls) and MSC1767 (texts) as clients send them.
    """
    return {
        POLL_START: {
            "kind": "org.matrix.msc3381.poll.disclosed",
            "max_selections": 1,
            "question": {"msgtype": "m.text", "body": poll.question, _TEXT: poll.question},
            "answers": [
                {"id": str(number), _TEXT: option} for number, option in enumerate(poll.options, 1)
            ],
        },
        _TEXT: body,
        "body": body,
    }


def place_content(place: SharedPlace, body: str) -> dict[str, Any]:
    """The content of a message with a location.

    Args:
        place: where [deg], and when it was shared.
        body: the same in words.

    Source: Matrix specification 1.16, `m.location`; RFC 5870 for the address; proposal MSC3488
        for the kind (a pin, not the sender) and the time, as clients send them.
    """
    # Six decimals are a tenth of a metre: no phone knows more.
    uri = f"geo:{place.latitude:.6f},{place.longitude:.6f}"
    return {
        "msgtype": "m.location",
        "body": body,
        "geo_uri": uri,
        "org.matrix.msc3488.location": {"uri": uri, "description": body},
        "org.matrix.msc3488.asset": {"type": "m.pin"},
        "org.matrix.msc3488.ts": int(place.shared_at.timestamp() * 1000),
        _TEXT: body,
    }
