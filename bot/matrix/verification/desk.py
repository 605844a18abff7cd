"""All verifications under way: which event belongs to which, what is new, what is too much; pure.

Nothing of this outlives the process. A verification takes a minute and its keys must not be used
twice, so one that a restart cuts off is cancelled when its next event comes, and people begin
anew; an event that sync brings once more after a crash does no more harm than that.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final

from bot.matrix.verification.agreement import METHOD
from bot.matrix.verification.exchange import Party
from bot.matrix.verification.machine import WHOLE, End, Output, Send, Verification
from bot.matrix.verification.messages import Code, Incoming, Key, Kind

#: A request from further in the future is ignored, as is one older than a whole verification
#: (specification 1.16, "m.key.verification.request", `timestamp`).
_FUTURE: Final = timedelta(minutes=5)
#: Own rule: more than anybody has in hand, few enough to be borne.
MOST_OF_ONE: Final = 3
MOST: Final = 30
#: What may come of a verification that nobody knows, without an answer.
_NEEDS_NO_ANSWER: Final = frozenset({Kind.REQUEST, Kind.CANCEL, Kind.DONE})


@dataclass(frozen=True)
class Turn:
    """What comes out of a verification, and what it is about.

    Attributes:
        key: which verification.
        room_id: where its events go; None for to-device messages.
        theirs: the other side.
        outputs: what is to be sent, shown and noted, in order.
    """

    key: Key
    room_id: str | None
    theirs: Party
    outputs: tuple[Output, ...]


class Desk:
    """Keeps verifications apart. All times are the caller's.

    Args:
        user_id: whose desk it is.
        device_id: which device.
    """

    def __init__(self, user_id: str, device_id: str) -> None:
        self._user_id = user_id
        self._device_id = device_id
        self._open: dict[Key, tuple[str | None, Verification]] = {}
        self._over: dict[Key, datetime] = {}

    @property
    def idle(self) -> bool:
        """Whether nothing is under way."""
        return not self._open

    def knows(self, incoming: Incoming) -> bool:
        """Whether the event belongs to a verification that is open or has ended lately."""
        return incoming.key in self._open or incoming.key in self._over

    def begins(self, incoming: Incoming, now: datetime) -> bool:
        """Whether the event begins a verification that we can take part in."""
        if self.knows(incoming) or incoming.device_id is None:
            return False
        if incoming.kind is Kind.START:
            # Without a request: deprecated, by to-device message only, and still to be answered.
            return incoming.room_id is None
        methods = incoming.content.get("methods")
        # With another method only, another device of ours may still be able to answer.
        able = isinstance(methods, list) and METHOD in methods
        return incoming.kind is Kind.REQUEST and able and self._is_fresh(incoming, now)

    def is_for_us(self, incoming: Incoming) -> bool:
        """Whether a request is meant for this account; in a room it says for whom it is."""
        return incoming.room_id is None or incoming.content.get("to") == self._user_id

    def open(self, incoming: Incoming, ours: Party, theirs: Party, now: datetime) -> list[Turn]:
        """Take up what `begins`; an earlier attempt of the same device gives way to it.

        The specification has all attempts of one device cancelled; then somebody whose client
        was closed midway would have to try three times.
        """
        turns = self._give_way(theirs, now)
        transaction_id = incoming.key[1]
        new = Verification(ours, theirs, transaction_id, incoming.reference, now)
        self._open[incoming.key] = (incoming.room_id, new)
        if self._is_crowded(theirs):
            outputs = new.cancel(Code.USER)
        elif theirs.own_key_id not in theirs.keys:
            outputs = new.cancel(Code.KEY_MISMATCH)
        elif incoming.kind is Kind.START:
            outputs = new.receive(Kind.START, incoming.content, now)
        else:
            outputs = new.ready()
        return [*turns, *self._turns(incoming.key, outputs, now)]

    def receive(self, incoming: Incoming, now: datetime) -> list[Turn]:
        """What an event of a known verification leads to."""
        if incoming.key not in self._open:
            return []
        _, verification = self._open[incoming.key]
        if incoming.sender == verification.theirs.user_id:
            outputs = verification.receive(incoming.kind, incoming.content, now)
        elif self._is_taken_elsewhere(incoming):
            outputs = verification.end_silently("m.accepted")
        else:
            return []  # somebody else in the room, or what we have sent ourselves
        return self._turns(incoming.key, outputs, now)

    def refuse_unknown(self, incoming: Incoming, now: datetime) -> list[Turn]:
        """Cancel, once, what nobody here knows: it was cut off, or it never was."""
        if self.knows(incoming) or incoming.kind in _NEEDS_NO_ANSWER:
            return []
        self._over[incoming.key] = now
        # Without a device's name all devices are told; those that know nothing of it don't care.
        theirs = Party(incoming.sender, incoming.device_id or "*", {})
        code = Code.UNKNOWN_TRANSACTION
        outputs = (
            Send(Kind.CANCEL, code.content | incoming.reference),
            End(verified=False, reason=code.value[0]),
        )
        return [Turn(incoming.key, incoming.room_id, theirs, outputs)]

    def leave(self, key: Key, now: datetime) -> None:
        """Take no further part, without a word."""
        self._open.pop(key, None)
        self._over[key] = now

    def tick(self, now: datetime) -> list[Turn]:
        """What the passing of time leads to."""
        self._over = {key: at for key, at in self._over.items() if now - at < WHOLE}
        return [
            turn
            for key, (_, verification) in list(self._open.items())
            for turn in self._turns(key, verification.tick(now), now)
        ]

    def _is_fresh(self, incoming: Incoming, now: datetime) -> bool:
        if incoming.sent_at is None:
            return False
        return now - WHOLE < incoming.sent_at < now + _FUTURE

    def _is_taken_elsewhere(self, incoming: Incoming) -> bool:
        """Whether another device of ours has answered in the room."""
        if incoming.sender != self._user_id or incoming.kind not in {Kind.READY, Kind.START}:
            return False
        return incoming.device_id not in {None, self._device_id}

    def _is_crowded(self, theirs: Party) -> bool:
        people = [verification.theirs.user_id for _, verification in self._open.values()]
        return people.count(theirs.user_id) > MOST_OF_ONE or len(people) > MOST

    def _give_way(self, theirs: Party, now: datetime) -> list[Turn]:
        device = (theirs.user_id, theirs.device_id)
        return [
            turn
            for key, (_, old) in list(self._open.items())
            if (old.theirs.user_id, old.theirs.device_id) == device
            for turn in self._turns(key, old.cancel(Code.UNEXPECTED_MESSAGE), now)
        ]

    def _turns(self, key: Key, outputs: list[Output], now: datetime) -> list[Turn]:
        room_id, verification = self._open[key]
        if verification.over:
            del self._open[key]
            self._over[key] = now
        return [Turn(key, room_id, verification.theirs, tuple(outputs))] if outputs else []
