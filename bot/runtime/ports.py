"""What the runtime asks of the outside, and what the outside may ask of the runtime."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Protocol

from bot.dialogue.actions import MeasureOptions, Poll, SharedPlace
from bot.dialogue.events import Event, MeasuredKind, MediaRef
from bot.runtime.outcomes import Outcome
from bot.store.rows import OwnMessage


class TransportError(Exception):
    """Something that the transport could not do; never carries message text."""


class SendRefusedError(TransportError):
    """The server will never take it: not in the room, too large, forbidden. Nothing was sent."""


class SendUncertainError(TransportError):
    """It may or may not have arrived (time limit, lost connection): repeat with the same id."""


class UnreachableError(SendUncertainError):
    """Nobody answered, or something in front of the homeserver did: so it is for every room."""


class SendLaterError(TransportError):
    """It can't go yet; nothing was sent.

    Args:
        retry_after_s: how long to wait before it is sent again [s].
        limited: it is the server that asks to wait, and for everything that the bot sends.
    """

    def __init__(self, retry_after_s: float = 1.0, *, limited: bool = False) -> None:
        self.retry_after_s = retry_after_s
        self.limited = limited
        super().__init__(f"wait {retry_after_s:g} s")


class MediaBrokenOffError(SendUncertainError):
    """A shared file began to come and did not get to its end: too slowly, or it was cut off."""


class MediaTooLargeError(TransportError):
    """A shared file is larger than allowed.

    Args:
        limit: the limit [bytes].
    """

    def __init__(self, limit: int) -> None:
        self.limit = limit
        super().__init__(f"more than {limit} bytes")


class MediaGoneError(TransportError):
    """The server no longer has the file, or does not hand it out."""


class MediaDamagedError(TransportError):
    """The file arrived, but its hash or its key does not fit."""


def kind_of(error: BaseException) -> str:
    """What the log says of a failed try: the text of our own errors holds nobody's words."""
    if isinstance(error, TransportError):
        return str(error) or type(error).__name__
    return type(error).__name__


@dataclass(frozen=True)
class UploadedMedia:
    """A file that lies on the homeserver.

    `encryption` is the attachment's key, iv and hashes as the event carries them (JSON), or None
    for a room that is not encrypted.
    """

    address: str
    encryption: dict[str, object] | None = None


@dataclass(frozen=True)
class UploadedPicture:
    """A picture and its thumbnail on the homeserver, with all that the event says of them."""

    media: UploadedMedia
    mime: str
    width: int  # [px]
    height: int  # [px]
    size: int  # [bytes]
    file_name: str
    alt: str = ""
    thumbnail: UploadedMedia | None = None
    thumbnail_mime: str = ""
    thumbnail_width: int = 0  # [px]
    thumbnail_height: int = 0  # [px]
    thumbnail_size: int = 0  # [bytes]
    #: It goes as a file to be saved, not as a picture to be shown; it has no sides then.
    as_file: bool = False


@dataclass(frozen=True)
class Outgoing:
    """One message on its way out.

    `row_id` is the transaction id, and stands in the event's content as well, so that the message
    can be found again in the room (see `Transport.find_sent`). `thread_id` is the thread's root.
    `reply_to` is the event that is answered: outside threads a real reply; inside a thread, where
    clients that know no threads need something, it is the fall-back. With a picture, `body` is
    its caption. `mentions` are full user ids, empty when nobody is called. With a poll or a place,
    `body` says the same for clients that show no such thing. With `replaces` it gives that event
    other words, and is no message of its own.
    """

    row_id: str
    room_id: str
    body: str
    formatted_body: str | None = None
    thread_id: str | None = None
    reply_to: str | None = None
    notice: bool = False
    picture: UploadedPicture | None = None
    mentions: tuple[str, ...] = ()
    poll: Poll | None = None
    place: SharedPlace | None = None
    replaces: str | None = None


class Transport(Protocol):
    """The way to the rooms: the Matrix client, the terminal, or a test's fake.

    Each method may take its time; the runtime sets the limit around it and treats a limit that
    ran out as SendUncertainError. All methods may also raise SendLaterError (wait, then the same
    again) and SendUncertainError (repeat).
    """

    @property
    def scope(self) -> str:
        """Within what transaction ids hold: the device id. Another scope knows none of ours."""
        ...

    async def send(self, outgoing: Outgoing) -> str:
        """Send a message and return its event id; the same `row_id` again sends nothing new.

        Raises:
            SendRefusedError: final.
            SendUncertainError: repeat with the same row id.
            SendLaterError: wait first.
        """
        ...

    async def find_sent(self, room_id: str, row_id: str, since: datetime) -> str | None:
        """The event id of a message with this row id among the bot's own since then, or None.

        Asked before a repeat when the server may have forgotten the transaction id: after 20
        minutes, or when the scope has changed.
        """
        ...

    async def upload(self, data: bytes, mime: str, encrypt_for_room: str) -> UploadedMedia:
        """Upload a file, encrypted if that room is."""
        ...

    async def download(self, media: MediaRef, max_bytes: int) -> bytes:
        """Fetch and decrypt a shared file.

        Raises:
            MediaTooLargeError: more than `max_bytes`, whatever was stated.
            MediaBrokenOffError: it did not come whole; it may be tried again, a few times.
            MediaGoneError: not there.
            MediaDamagedError: hash or key does not fit.
        """
        ...

    async def redact(self, room_id: str, event_id: str, txn_id: str) -> None:
        """Take back one of the bot's own messages. SendRefusedError: it cannot be done."""
        ...

    async def forget_person(self, person_id: str, until: datetime) -> None:
        """Drop what is kept outside of the store of what the person sent until then."""
        ...

    async def set_typing(self, room_id: str, on: bool) -> None:
        """Show or hide the typing mark; the server hides it after 30 s by itself."""
        ...

    async def mark_read(self, room_id: str, event_id: str) -> None:
        """Set the read mark."""
        ...

    def people(self, room_id: str) -> Mapping[str, str]:
        """Who is in a room beside the bot: names as they are shown, by user ids."""
        ...


class Inbox(Protocol):
    """What the transport's side may ask of the runtime."""

    async def take_in(self, events: Sequence[Event], sync_token: str | None) -> None:
        """Store events and the sync token in one transaction; known event ids are ignored.

        When this returns, the events are safe: the caller may forget them. An exception means
        that nothing was stored, and the same call must be made again.
        """
        ...

    async def saw_own(self, seen: Mapping[str, str]) -> None:
        """Learn which of the bot's own messages stand in rooms: event ids by row ids.

        Their requests may still be without an answer; people reply to them all the same.
        """
        ...

    async def sync_token(self) -> str | None:
        """The token that was stored with the last events, None on a new database."""
        ...

    async def move_room(self, before: str, after: str) -> None:
        """Go on in the room `after` with all that is stored of `before`, which it replaces.

        In one transaction; the same again does no harm. What still comes from the old room, or
        was begun for it, is answered in the new one.
        """
        ...

    async def is_own_thread(self, room_id: str, thread_id: str) -> bool:
        """Whether the bot has answered in this thread, so that what stands in it is for the bot."""
        ...

    async def own_message(self, room_id: str, event_id: str) -> OwnMessage | None:
        """To whom the bot has sent this event, None for others' events.

        A reply to it is for the bot, and that person may tap on it.
        """
        ...


class FrameChecker(Protocol):
    """Measures shared files, each in a process of its own."""

    @property
    def at_once(self) -> int:
        """How many pieces of work it does at the same time; it may change."""
        ...

    async def check(self, data: bytes, options: MeasureOptions | None = None) -> Outcome:
        """Measure one file; never raises for a bad one."""
        ...

    async def measure(
        self,
        what: MeasuredKind,
        files: Sequence[bytes],
        options: MeasureOptions,
        tell: Callable[[int], None] = lambda _: None,
    ) -> Outcome:
        """Measure files of one person together, or one again; never raises for bad ones.

        `tell` is told how many of them have been read.
        """
        ...
