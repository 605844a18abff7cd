"""The events of a verification as they travel, by to-device message or in a room; pure."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from enum import Enum
from typing import Any, Final

from bot.matrix.plain import Source, part_of

JsonObject = dict[str, Any]
#: Which verification an event belongs to: room and request in a room, person and id outside.
Key = tuple[str, str]

#: Own rule: an id is never longer than a Matrix identifier may be (appendix, "Identifiers").
_LONGEST_ID: Final = 255


class Kind(Enum):
    """What an event of a verification says; the value is its type."""

    REQUEST = "m.key.verification.request"
    READY = "m.key.verification.ready"
    START = "m.key.verification.start"
    ACCEPT = "m.key.verification.accept"
    KEY = "m.key.verification.key"
    MAC = "m.key.verification.mac"
    DONE = "m.key.verification.done"
    CANCEL = "m.key.verification.cancel"


class Code(Enum):
    """Why a verification is cancelled: the code of the specification and our words for it."""

    USER = ("m.user", "Too many verifications at once; try again in ten minutes.")
    TIMEOUT = ("m.timeout", "The verification took too long.")
    UNKNOWN_TRANSACTION = ("m.unknown_transaction", "This verification is not known (any more).")
    UNKNOWN_METHOD = ("m.unknown_method", "No method that both sides know.")
    UNEXPECTED_MESSAGE = ("m.unexpected_message", "This message was not expected now.")
    KEY_MISMATCH = ("m.key_mismatch", "The keys are not the ones that were expected.")
    USER_MISMATCH = ("m.user_mismatch", "This is not the device that began the verification.")
    INVALID_MESSAGE = ("m.invalid_message", "This message could not be understood.")
    MISMATCHED_COMMITMENT = ("m.mismatched_commitment", "The key is not the announced one.")

    @property
    def content(self) -> JsonObject:
        """What a cancellation says, without its reference."""
        return {"code": self.value[0], "reason": self.value[1]}


@dataclass(frozen=True)
class Incoming:
    """An event of a verification that somebody sent.

    Attributes:
        key: which verification it belongs to.
        kind: what it says.
        sender: full user id.
        room_id: the room; None for a to-device message.
        content: as it was sent.
        sent_at: when, for a request; None when it does not say.
    """

    key: Key
    kind: Kind
    sender: str
    room_id: str | None
    content: JsonObject
    sent_at: datetime | None = None

    @property
    def reference(self) -> JsonObject:
        """What every event of the same verification carries."""
        if self.room_id is None:
            return {"transaction_id": self.key[1]}
        return {"m.relates_to": {"rel_type": "m.reference", "event_id": self.key[1]}}

    @property
    def device_id(self) -> str | None:
        """The device that it comes from, when it says so."""
        return _id_of(self.content.get("from_device"))


def is_verification(source: Source) -> bool:
    """Whether a room's event belongs to some verification, well formed or not."""
    kind = source.get("type")
    if kind == "m.room.message":
        kind = part_of(source, "content").get("msgtype")
    return isinstance(kind, str) and kind.startswith("m.key.verification.")


def read_to_device(source: Source) -> Incoming | None:
    """The event behind a to-device message; None for all that is no verification."""
    kind, content = _kind_of(source.get("type")), part_of(source, "content")
    sender, transaction = _id_of(source.get("sender")), _id_of(content.get("transaction_id"))
    if kind is None or sender is None or transaction is None:
        return None
    sent_at = _moment(content.get("timestamp"))
    return Incoming((sender, transaction), kind, sender, None, dict(content), sent_at)


def read_in_room(room_id: str, source: Source) -> Incoming | None:
    """The event behind a room's (decrypted) event; None for all that is no verification."""
    content = part_of(source, "content")
    if source.get("type") == "m.room.message":
        kind = _kind_of(content.get("msgtype"))
        begun_by = source.get("event_id") if kind is Kind.REQUEST else None
    else:
        kind = _kind_of(source.get("type"))
        begun_by = _referred(content) if kind is not Kind.REQUEST else None
    sender, transaction = _id_of(source.get("sender")), _id_of(begun_by)
    if kind is None or sender is None or transaction is None:
        return None
    sent_at = _moment(source.get("origin_server_ts"))
    return Incoming((room_id, transaction), kind, sender, room_id, dict(content), sent_at)


def _referred(content: Source) -> object:
    relation = part_of(content, "m.relates_to")
    return relation.get("event_id") if relation.get("rel_type") == "m.reference" else None


def _kind_of(value: object) -> Kind | None:
    return _KINDS.get(value) if isinstance(value, str) else None


def _id_of(value: object) -> str | None:
    """An id as it is: an altered one would be another; None for what can be none."""
    if not isinstance(value, str) or not 0 < len(value) <= _LONGEST_ID or not value.isprintable():
        return None
    return value


def _moment(milliseconds: object) -> datetime | None:
    if not isinstance(milliseconds, int) or isinstance(milliseconds, bool):
        return None
    try:
        return datetime.fromtimestamp(milliseconds / 1000, UTC)
    except (ValueError, OverflowError, OSError):
        return None


_KINDS: Final[Mapping[str, Kind]] = {kind.value: kind for kind in Kind}
