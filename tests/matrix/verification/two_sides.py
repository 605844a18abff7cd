"""Two sides of one verification that send each other what they say."""

from __future__ import annotations

import json
from collections import deque
from collections.abc import Iterable
from datetime import UTC, datetime, timedelta
from typing import Any, Final

from bot.matrix.verification.exchange import Party
from bot.matrix.verification.machine import End, Output, Send, Show, Verification
from bot.matrix.verification.messages import Kind

NOON: Final = datetime(2027, 6, 21, 12, 0, tzinfo=UTC)
ADA: Final = Party(
    "@ada:example.org", "ADADEVICE", {"ed25519:ADADEVICE": "adakey", "ed25519:am": "am"}
)
LINN: Final = Party(
    "@linn:example.org", "LINNDEVICE", {"ed25519:LINNDEVICE": "linnkey", "ed25519:lm": "lm"}
)
REFERENCE: Final = {"transaction_id": "t"}

Content = dict[str, Any]


class Side:
    """One side, and all that it said."""

    def __init__(self, ours: Party, theirs: Party) -> None:
        self.machine = Verification(ours, theirs, "t", dict(REFERENCE), NOON)
        self.said: list[Output] = []

    @property
    def shown(self) -> tuple[str, ...]:
        """What its person compares."""
        (show,) = [output for output in self.said if isinstance(output, Show)]
        return show.words

    @property
    def ended(self) -> list[End]:
        """How it ended; no more than once."""
        return [output for output in self.said if isinstance(output, End)]

    @property
    def kinds(self) -> list[Kind]:
        """What it sent, in order."""
        return [output.kind for output in self.said if isinstance(output, Send)]

    def says(self, outputs: Iterable[Output]) -> list[Send]:
        """Note what came out; what of it goes to the other side."""
        noted = list(outputs)
        self.said += noted
        return [output for output in noted if isinstance(output, Send)]

    def hears(self, kind: Kind, content: Content, after_s: float = 0.0) -> list[Send]:
        """Take in what the other side sent, as it comes off the wire."""
        now = NOON + timedelta(seconds=after_s)
        return self.says(self.machine.receive(kind, json.loads(json.dumps(content)), now))


def sides(first: Party = ADA, second: Party = LINN) -> tuple[Side, Side]:
    """Two sides that have agreed to begin."""
    return Side(first, second), Side(second, first)


def talk(speaker: Side, listener: Side, words: Iterable[Send]) -> None:
    """Hand over what is said until nobody says anything more."""
    waiting = deque((listener, speaker, send) for send in words)
    while waiting:
        hearer, sayer, send = waiting.popleft()
        waiting += [(sayer, hearer, answer) for answer in hearer.hears(send.kind, send.content)]
