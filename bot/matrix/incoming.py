"""From a room's event to what a conversation understands; pure, trusting nothing."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Final, Literal

from bot.dialogue.events import (
    Event,
    FrameReceived,
    Origin,
    OtherReceived,
    PlaceReceived,
    TextReceived,
    Withdrawn,
)
from bot.matrix.attachment import media_of
from bot.matrix.plain import Source, part_of, text_of

#: RFC 5870, a geo URI: latitude, longitude, then altitude and parameters that are not read.
_GEO_URI: Final = re.compile(r"geo:(-?\d{1,3}(?:\.\d+)?),(-?\d{1,3}(?:\.\d+)?)(?:[,;].*)?")
#: The quoted fallback that clients put before a reply until version 1.13 of the specification.
_QUOTED_FALLBACK: Final = re.compile(r"> (?:\* )?<@[^>\n]+>[^\n]*\n(?:>[^\n]*\n)*\n?")
#: Version 1.16: timestamps are milliseconds; beyond the year 9999 Python has no date.
_MAX_TIMESTAMP_MS: Final = 253_402_300_799_000
_WORDS: Final = frozenset({"m.text", "m.emote"})
_PICTURES: Final = frozenset({"m.image", "m.file"})
_OTHERS: Final[dict[str, Literal["voice", "video"]]] = {"m.audio": "voice", "m.video": "video"}


@dataclass(frozen=True)
class Relation:
    """How an event refers to others.

    Attributes:
        thread_id: the root of the thread that it stands in.
        replies_to: the event that it answers; not a thread's fall-back for old clients.
        corrects: the event that it edits.
    """

    thread_id: str | None = None
    replies_to: str | None = None
    corrects: str | None = None


def relation_of(source: Source) -> Relation:
    """What the event says of its place among others."""
    relation = part_of(part_of(source, "content"), "m.relates_to")
    kind, target = relation.get("rel_type"), text_of(relation.get("event_id")) or None
    replies_to = text_of(part_of(relation, "m.in_reply_to").get("event_id")) or None
    if kind == "m.thread" and target:
        falling_back = relation.get("is_falling_back") is True
        return Relation(thread_id=target, replies_to=None if falling_back else replies_to)
    if kind == "m.replace" and target:
        return Relation(corrects=target)
    return Relation(replies_to=replies_to)


def sent_at(source: Source) -> datetime | None:
    """When the homeserver stamped the event; None when the stamp is no time."""
    stamp = source.get("origin_server_ts")
    if isinstance(stamp, bool) or not isinstance(stamp, int):
        return None
    if not 0 <= stamp <= _MAX_TIMESTAMP_MS:
        return None
    return datetime.fromtimestamp(stamp / 1000, UTC)


def mentioned(content: Source) -> tuple[str, ...]:
    """The user ids that a message mentions."""
    called = part_of(content, "m.mentions").get("user_ids")
    return tuple(map(text_of, called)) if isinstance(called, list) else ()


def is_mentioned(content: Source, user_id: str) -> bool:
    """Whether a message mentions this person."""
    return user_id in mentioned(content)


def mentions(source: Source, user_id: str, names: tuple[str, ...]) -> bool:
    """Whether the event calls this person: by a mention, or by name at its start."""
    content = part_of(source, "content")
    if is_mentioned(content, user_id):
        return True
    body = text_of(content.get("body"))
    return (user_id in body and "m.mentions" not in content) or body != without_call(body, names)


def without_call(body: str, names: tuple[str, ...]) -> str:
    """The body without "Name:" or "@name," at its start."""
    # The longest first: a user id begins like the name in it.
    called = sorted((name for name in names if name), key=len, reverse=True)
    if not called:
        return body
    alternatives = "|".join(f"@?{re.escape(name.removeprefix('@'))}" for name in called)
    return re.sub(rf"\A\s*(?:{alternatives})\s*[:,]\s*", "", body, count=1, flags=re.IGNORECASE)


def without_mention(content: Source, body: str, names: tuple[str, ...]) -> str:
    """The body without the call in it: a client that mentions need put no colon behind the name.

    The name may stand at the start or at the end, bare or as a link; a call alone stays.

    Args:
        content: says who is mentioned.
        body: the words.
        names: how the bot is called, its user id first.
    """
    if not names or not is_mentioned(content, names[0]):
        return without_call(body, names)
    called = sorted((re.escape(name.removeprefix("@")) for name in names if name), key=len)
    name = rf"\[?@?(?:{'|'.join(reversed(called))})(?:\]\([^()\s]*\))?"
    cut = re.sub(rf"\A\s*{name}(?!\w|:\w)[\s:,]*", "", body, count=1, flags=re.IGNORECASE)
    cut = re.sub(rf"[\s,]+{name}(?=[\s?!.]*\Z)", "", cut, count=1, flags=re.IGNORECASE)
    cut = without_call(cut, names)
    return cut if cut.strip(" ?!.") else body


def _without_quote(body: str, relation: Relation) -> str:
    """The body of a reply without the lines that old clients quote."""
    return _QUOTED_FALLBACK.sub("", body, count=1) if _may_quote(body, relation) else body


def _may_quote(body: str, relation: Relation) -> bool:
    return relation.replies_to is not None and _QUOTED_FALLBACK.match(body) is not None


def withdrawn_id(source: Source) -> str | None:
    """The event that a redaction takes back: in its content since room version 11."""
    if source.get("type") != "m.room.redaction":
        return None
    inside = part_of(source, "content").get("redacts")
    return text_of(inside or source.get("redacts")) or None


def read_event(
    source: Source, origin: Origin, relation: Relation, names: tuple[str, ...] = ()
) -> Event | None:
    """What the event means for a conversation, None when it means nothing.

    Nothing is: notices (other bots; answering them would loop), polls, state, verification
    requests, events that were taken back, and what is not formed as the specification says.

    Args:
        source: the decrypted event as JSON.
        origin: where it comes from, checked already.
        relation: as `relation_of` read it from this event, or from the one that it edits.
        names: how the bot is called, cut off the start of a text.
    """
    kind = source.get("type")
    if withdrawn := withdrawn_id(source):
        return Withdrawn(origin=origin, event_id=withdrawn)
    if kind == "m.sticker":
        return OtherReceived(origin=origin, what="sticker")
    if kind != "m.room.message":
        return None
    content = part_of(source, "content")
    if relation.corrects is not None:
        return _correction(part_of(content, "m.new_content"), origin, relation.corrects, names)
    return _message(content, origin, relation, names)


def _correction(
    content: Source, origin: Origin, corrects: str, names: tuple[str, ...]
) -> Event | None:
    """An edit, of a text or of a picture's caption."""
    kind = text_of(content.get("msgtype"))
    text = _caption_of(content) if kind in _PICTURES else text_of(content.get("body"))
    if kind not in _WORDS | _PICTURES or not text.strip():
        return None
    said = without_mention(content, text, names)
    return TextReceived(origin=origin, text=said, corrects=corrects)


def _message(
    content: Source, origin: Origin, relation: Relation, names: tuple[str, ...]
) -> Event | None:
    kind = text_of(content.get("msgtype"))
    if kind in _WORDS:
        return _text(content, origin, relation, names)
    if kind in _PICTURES:
        return _frame(content, origin, relation, names)
    if kind == "m.location":
        return _place(content, origin)
    if kind in {"", "m.notice"} or kind.startswith("m.key.verification."):
        return None
    return OtherReceived(origin=origin, what=_OTHERS.get(kind, "unknown"))


def _text(
    content: Source, origin: Origin, relation: Relation, names: tuple[str, ...]
) -> Event | None:
    text = _without_quote(text_of(content.get("body")), relation)
    text = without_mention(content, text, names)
    if not text.strip():
        return None
    return TextReceived(origin=origin, text=text, replies_to=relation.replies_to)


def _frame(content: Source, origin: Origin, relation: Relation, names: tuple[str, ...]) -> Event:
    media = media_of(content)
    if media is None:
        return OtherReceived(origin=origin, what="unknown")
    return FrameReceived(
        origin=origin,
        media=media,
        caption=without_mention(content, _caption_of(content), names),
        replies_to=relation.replies_to,
    )


def _caption_of(content: Source) -> str:
    """The caption of a picture: its body, when a file name stands beside it and differs."""
    body, name = text_of(content.get("body")), text_of(content.get("filename"))
    return body if name and body != name else ""


def _place(content: Source, origin: Origin) -> Event:
    uri = text_of(content.get("geo_uri"))
    # Clients repeat the address under the name that a proposal gave it.
    uri = uri or text_of(part_of(content, "org.matrix.msc3488.location").get("uri"))
    found = _GEO_URI.fullmatch(uri)
    if found is None:
        return OtherReceived(origin=origin, what="unknown")
    latitude, longitude = float(found[1]), float(found[2])
    if abs(latitude) > 90 or abs(longitude) > 180:
        return OtherReceived(origin=origin, what="unknown")
    return PlaceReceived(origin=origin, latitude=latitude, longitude=longitude)
