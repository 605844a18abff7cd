"""From a message on its way out to the content of its event; pure."""

from __future__ import annotations

import json
from typing import Any, Final

from bot.matrix.shown import POLL_START, place_content, poll_content
from bot.runtime.ports import Outgoing, UploadedMedia, UploadedPicture

#: Where an event carries the outbox row that it came from, so that it can be found again.
ROW_KEY: Final = "linn.row_id"
#: An event may have 65,536 bytes (Matrix specification 1.16, client-server interface, "Size
#: limits"); encryption adds a third and its own frame, and 48,500 bytes were seen to fail.
MAX_CONTENT_BYTES: Final = 40_000
_CUT_MARK: Final = " …"
_FORMATTING_KEYS: Final = frozenset({"format", "formatted_body"})

Content = dict[str, Any]


def kind_of(outgoing: Outgoing) -> str:
    """The type of the event for `outgoing`."""
    return "m.room.message" if outgoing.poll is None else POLL_START


def content_of(outgoing: Outgoing) -> Content:
    """The content of the event for `outgoing`, whose type is `kind_of(outgoing)`.

    What would be too large loses its formatting first, then its end: a message that is cut is
    better than none.

    Args:
        outgoing: the message, with its picture uploaded already.

    Returns:
        JSON content of at most 40,000 bytes, in which `ROW_KEY` holds the row id.
    """
    content = _meant(outgoing)
    content["m.mentions"] = {"user_ids": list(outgoing.mentions)} if outgoing.mentions else {}
    content[ROW_KEY] = outgoing.row_id
    if outgoing.replaces is not None:
        return _replacing(content, outgoing.replaces)
    if relation := _relation(outgoing):
        content["m.relates_to"] = relation
    return _bounded(content)


def _replacing(content: Content, event_id: str) -> Content:
    """Other words for an event; what a client shows that knows no such thing begins with a star.

    Source: Matrix specification 1.16, client-server interface, "Event replacements".
    """
    words = {key: value for key, value in content.items() if key != ROW_KEY}
    relation = {"rel_type": "m.replace", "event_id": event_id}
    body = f"* {content['body']}"
    return content | {"body": body, "m.new_content": words, "m.relates_to": relation}


def _meant(outgoing: Outgoing) -> Content:
    """What the message is: a poll, a place, a picture, or words."""
    if outgoing.poll is not None:
        return poll_content(outgoing.poll, outgoing.body)
    if outgoing.place is not None:
        return place_content(outgoing.place, outgoing.body)
    return _words(outgoing) if outgoing.picture is None else _picture(outgoing, outgoing.picture)


def size_of(content: Content) -> int:
    """Bytes of the content as nio writes it before it is encrypted: in ASCII."""
    return len(json.dumps(content, separators=(",", ":")))


def _words(outgoing: Outgoing) -> Content:
    content: Content = {
        "msgtype": "m.notice" if outgoing.notice else "m.text",
        "body": outgoing.body,
    }
    return content | _formatting(outgoing)


def _formatting(outgoing: Outgoing) -> Content:
    if outgoing.formatted_body is None:
        return {}
    return {"format": "org.matrix.custom.html", "formatted_body": outgoing.formatted_body}


def _picture(outgoing: Outgoing, picture: UploadedPicture) -> Content:
    # A caption is a body that differs from the file name; without one, the words that say what
    # the picture shows take its place.
    body = outgoing.body or picture.alt or picture.file_name
    content: Content = {
        "msgtype": "m.file" if picture.as_file else "m.image",
        "body": body,
        "filename": picture.file_name,
        "info": _info(picture),
        **_address("url", "file", picture.media, picture.mime),
    }
    return content | (_formatting(outgoing) if outgoing.body else {})


def _info(picture: UploadedPicture) -> Content:
    info: Content = {"mimetype": picture.mime, "size": picture.size}
    if not picture.as_file:
        info |= {"w": picture.width, "h": picture.height}
    if picture.thumbnail is not None:
        info |= _address(
            "thumbnail_url", "thumbnail_file", picture.thumbnail, picture.thumbnail_mime
        )
        info["thumbnail_info"] = {
            "mimetype": picture.thumbnail_mime,
            "w": picture.thumbnail_width,
            "h": picture.thumbnail_height,
            "size": picture.thumbnail_size,
        }
    return info


def _address(plain_key: str, encrypted_key: str, media: UploadedMedia, mime: str) -> Content:
    if media.encryption is None:
        return {plain_key: media.address}
    return {encrypted_key: {**media.encryption, "url": media.address, "mimetype": mime}}


def _relation(outgoing: Outgoing) -> Content:
    """A thread always names its root; the reply inside serves clients that know no threads."""
    if outgoing.thread_id is not None:
        return {
            "rel_type": "m.thread",
            "event_id": outgoing.thread_id,
            "is_falling_back": True,
            "m.in_reply_to": {"event_id": outgoing.reply_to or outgoing.thread_id},
        }
    if outgoing.reply_to is not None:
        return {"m.in_reply_to": {"event_id": outgoing.reply_to}}
    return {}


def _bounded(content: Content) -> Content:
    if size_of(content) <= MAX_CONTENT_BYTES:
        return content
    plain = {key: value for key, value in content.items() if key not in _FORMATTING_KEYS}
    while (over := size_of(plain) - MAX_CONTENT_BYTES) > 0 and plain["body"] != _CUT_MARK:
        # A character takes at most 12 bytes, so this never cuts too much; nearly all take one.
        kept = plain["body"].removesuffix(_CUT_MARK)[: -max(1, over // 12)]
        plain["body"] = kept.rstrip() + _CUT_MARK
    return plain
