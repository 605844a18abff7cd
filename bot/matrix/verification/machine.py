"""One emoji verification as a state machine: events in, events out; no network, no clock."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import Enum
from typing import ClassVar, Final

from nio import Api

from bot.matrix.verification.agreement import METHOD, Agreement, commitment
from bot.matrix.verification.exchange import Exchange, Party
from bot.matrix.verification.messages import Code, JsonObject, Kind
from bot.matrix.verification.negotiation import (
    CHOICE,
    OFFER,
    RefusedError,
    check_accept,
    check_start,
    common_strings,
    reason_of,
    text,
)

#: A verification ends after ten minutes (specification 1.16, "General key verification error
#: handling").
WHOLE: Final = timedelta(minutes=10)
#: Own rule: a client answers within seconds; only the comparing of emoji waits for a person.
IDLE: Final = timedelta(minutes=2)
#: Own rule: either side may begin after `ready`; the bot does when the other one does not.
START_AFTER: Final = timedelta(seconds=20)


class State(Enum):
    """Where a verification stands: what it waits for."""

    READY = "either side's start"
    STARTED = "their acceptance of our start"
    ACCEPTED = "their key; ours is promised"
    KEYED = "their key; theirs is promised"
    SHOWN = "their codes; the emoji are shown"
    CONFIRMED = "their last word; ours is sent"
    DONE = "nothing"
    CANCELLED = "nothing; it failed"


@dataclass(frozen=True)
class Send:
    """An event to send to the other side; the content is whole."""

    kind: Kind
    content: JsonObject


@dataclass(frozen=True)
class Show:
    """What people compare now: seven emoji by name, or three numbers."""

    words: tuple[str, ...]


@dataclass(frozen=True)
class End:
    """It is over: verified, or cancelled for a reason (a code of ours or of theirs)."""

    verified: bool
    reason: str = ""


Output = Send | Show | End
Move = Callable[["Verification", JsonObject], list[Output]]


class Verification:
    """One verification between two devices, seen from ours.

    Both roles are here: either side may start, and when both do, the smaller user id (then the
    smaller device id) wins. Our side confirms as soon as there is something to compare, because
    comparing is what the other side's person does; what comes out says nothing about whom to
    trust here.

    Args:
        ours: this device.
        theirs: the other one, with the keys that the server shows for it.
        transaction_id: the id that both sides know it by.
        reference: what each of its events carries.
        now: the present.
        agreement: makes this side's key.
    """

    def __init__(
        self,
        ours: Party,
        theirs: Party,
        transaction_id: str,
        reference: JsonObject,
        now: datetime,
        agreement: Callable[[], Agreement] = Agreement,
    ) -> None:
        self.ours = ours
        self.theirs = theirs
        self.state = State.READY
        self._exchange = Exchange(ours, theirs, transaction_id, agreement)
        self._reference = reference
        self._begun_at = now
        self._last_at = now
        self._start: JsonObject = {}
        self._strings: list[str] = []
        self._promise = ""
        self._seen: set[tuple[Kind, str]] = set()

    @property
    def over(self) -> bool:
        """Whether nothing more comes of it."""
        return self.state in {State.DONE, State.CANCELLED}

    def ready(self) -> list[Output]:
        """Say yes to a request."""
        return [self._send(Kind.READY, from_device=self.ours.device_id, methods=[METHOD])]

    def start(self) -> list[Output]:
        """Begin, when the other side has not."""
        start = self._send(Kind.START, from_device=self.ours.device_id, **OFFER)
        self._start, self.state = start.content, State.STARTED
        return [start]

    def receive(self, kind: Kind, content: JsonObject, now: datetime) -> list[Output]:
        """What an event of the other side leads to; nothing when it was here before."""
        if self.over or self._is_repeated(kind, content):
            return []
        if kind is Kind.CANCEL:
            return self.end_silently(reason_of(content))
        act = self._MOVES.get((self.state, kind))
        if act is None:
            return self.cancel(Code.UNEXPECTED_MESSAGE)
        try:
            outputs = act(self, content)
        except RefusedError as refused:
            return self.cancel(refused.code)
        self._last_at = now
        return outputs

    def tick(self, now: datetime) -> list[Output]:
        """What the passing of time leads to."""
        idle = now - self._last_at
        if self.over:
            return []
        if self.state is State.CONFIRMED and idle >= IDLE:
            # We have all that we need; that their last word is missing harms nobody.
            return self._finish({})
        if now - self._begun_at >= WHOLE or (self.state is not State.SHOWN and idle >= IDLE):
            return self.cancel(Code.TIMEOUT)
        if self.state is State.READY and idle >= START_AFTER:
            self._last_at = now
            return self.start()
        return []

    def cancel(self, code: Code) -> list[Output]:
        """Give up and say why."""
        return [self._send(Kind.CANCEL, **code.content), *self.end_silently(code.value[0])]

    def end_silently(self, reason: str) -> list[Output]:
        """Give up without a word: the other side has, or somebody else goes on with it."""
        self.state = State.CANCELLED
        return [End(verified=False, reason=reason)]

    def _is_repeated(self, kind: Kind, content: JsonObject) -> bool:
        seen = (kind, Api.to_canonical_json(content))
        repeated = seen in self._seen
        self._seen.add(seen)
        return repeated

    def _send(self, kind: Kind, **content: object) -> Send:
        return Send(kind, content | self._reference)

    def _accept(self, content: JsonObject) -> list[Output]:
        """Their start: promise our key."""
        check_start(content, self.theirs.device_id)
        self._strings = common_strings(content)
        try:
            promise = commitment(self._exchange.public_key, content)
        except ValueError as error:
            raise RefusedError(Code.INVALID_MESSAGE) from error
        # Not our start any more, if there was one: the smaller side's counts.
        self._start, self.state = {}, State.ACCEPTED
        choice = CHOICE | {"short_authentication_string": self._strings, "commitment": promise}
        return [self._send(Kind.ACCEPT, **choice)]

    def _settle(self, content: JsonObject) -> list[Output]:
        """Both started: the smaller one's start counts, the other is as if it were not sent."""
        started_before = sum(kind is Kind.START for kind, _ in self._seen) > 1
        if started_before or text(content, "method") != METHOD:
            raise RefusedError(Code.UNEXPECTED_MESSAGE)
        ours = (self.ours.user_id, self.ours.device_id)
        if ours < (self.theirs.user_id, self.theirs.device_id):
            return []
        return self._accept(content)

    def _show_key(self, content: JsonObject) -> list[Output]:
        """Their acceptance and promise: now our key may be seen."""
        check_accept(content)
        self._strings = common_strings(content)
        self._promise = text(content, "commitment")
        self.state = State.KEYED
        return [self._send(Kind.KEY, key=self._exchange.public_key)]

    def _answer_key(self, content: JsonObject) -> list[Output]:
        """Their key, while ours is promised: now ours may be seen."""
        self._exchange.meet(content)
        return [self._send(Kind.KEY, key=self._exchange.public_key), *self._show()]

    def _check_key(self, content: JsonObject) -> list[Output]:
        """Their key, which has to be the one that they promised before they saw ours."""
        their_key = self._exchange.meet(content)
        if commitment(their_key, self._start) != self._promise.rstrip("="):
            raise RefusedError(Code.MISMATCHED_COMMITMENT)
        return self._show()

    def _show(self) -> list[Output]:
        """What is compared, and at once our codes over our keys."""
        words = self._exchange.words(self._strings, we_started=bool(self._start))
        self.state = State.SHOWN
        return [Show(words), self._send(Kind.MAC, **self._exchange.our_codes())]

    def _confirm(self, content: JsonObject) -> list[Output]:
        """Their codes: their person found the emoji alike."""
        self._exchange.check_codes(content)
        self.state = State.CONFIRMED
        return [self._send(Kind.DONE)]

    def _finish(self, _: JsonObject) -> list[Output]:
        self.state = State.DONE
        return [End(verified=True)]

    #: Where it stands and what comes, to what is done. All else was not to be expected.
    _MOVES: ClassVar[Mapping[tuple[State, Kind], Move]] = {
        (State.READY, Kind.START): _accept,
        (State.STARTED, Kind.START): _settle,
        (State.STARTED, Kind.ACCEPT): _show_key,
        (State.ACCEPTED, Kind.KEY): _answer_key,
        (State.KEYED, Kind.KEY): _check_key,
        (State.SHOWN, Kind.MAC): _confirm,
        (State.CONFIRMED, Kind.DONE): _finish,
    }
