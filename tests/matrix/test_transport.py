"""What a server's answers mean for the outbox, and what files may do."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import pytest
from nio import AsyncClient, MatrixRoom

from bot.dialogue.events import MediaRef
from bot.matrix.content import ROW_KEY
from bot.matrix.keys import RoomKeys
from bot.matrix.server_api import ServerApi
from bot.matrix.transport import MatrixTransport
from bot.matrix.waiting import WaitingEvents
from bot.runtime.ports import (
    MediaGoneError,
    MediaTooLargeError,
    Outgoing,
    SendLaterError,
    SendRefusedError,
    SendUncertainError,
    TransportError,
    UnreachableError,
)
from tests.matrix.scripted_server import (
    DEVICE_ID,
    USER_ID,
    Answer,
    ScriptedServer,
    error,
    file,
    hang_up,
    json,
    page,
)

ROOM = "!room:example.org"
MESSAGE = Outgoing("row-1", ROOM, "hello")
SINCE = datetime(2027, 6, 1, tzinfo=UTC)
FILE = MediaRef(address="mxc://example.org/leaf")

OUTCOMES = [
    (page(502), UnreachableError),
    (page(404), UnreachableError),
    (page(413), SendRefusedError),
    (hang_up, UnreachableError),
    (page(200), UnreachableError),
    (error(500, "M_UNKNOWN"), SendUncertainError),
    (error(403, "M_FORBIDDEN"), SendRefusedError),
    (error(413, "M_TOO_LARGE"), SendRefusedError),
    (error(429, "M_LIMIT_EXCEEDED", retry_after_ms=2500), SendLaterError),
    (error(401, "M_UNKNOWN_TOKEN"), SendLaterError),
]


@pytest.fixture
def transport(signed_in: AsyncClient, tmp_path: Path) -> MatrixTransport:
    """The transport, in one plain room."""
    signed_in.rooms[ROOM] = MatrixRoom(ROOM, USER_ID)
    api = ServerApi(signed_in)
    waiting = WaitingEvents(tmp_path / "waiting.json")
    return MatrixTransport(signed_in, api, RoomKeys(signed_in, api), waiting)


async def test_a_message_goes_out_with_its_row(
    scripted: ScriptedServer, transport: MatrixTransport
) -> None:
    """The row id is the transaction id; the scope of such ids is the device."""
    scripted.say("/send/m.room.message/row-1", json(event_id="$sent"))
    assert await transport.send(MESSAGE) == "$sent"
    assert transport.scope == DEVICE_ID


@pytest.mark.parametrize(("answer", "raised"), OUTCOMES)
async def test_what_answers_mean(
    scripted: ScriptedServer,
    transport: MatrixTransport,
    answer: Answer,
    raised: type[TransportError],
) -> None:
    """Refused for good, uncertain, or later: for messages, withdrawals and uploads alike."""
    for path_end in ("/row-1", "/upload", "/txn-1"):
        scripted.say(path_end, answer)
    with pytest.raises(raised):
        await transport.send(MESSAGE)
    with pytest.raises(raised):
        await transport.redact(ROOM, "$e", "txn-1")
    with pytest.raises(raised):
        await transport.upload(b"leaf", "image/png", ROOM)


async def test_a_wait_says_how_long(scripted: ScriptedServer, transport: MatrixTransport) -> None:
    """The server's wish in seconds; 5 s, as is common practice, when it names none."""
    scripted.say(
        "/row-1",
        error(429, "M_LIMIT_EXCEEDED", retry_after_ms=2500),
        error(429, "M_LIMIT_EXCEEDED"),
    )
    waits = []
    for _ in range(2):
        with pytest.raises(SendLaterError) as caught:
            await transport.send(MESSAGE)
        waits.append(caught.value.retry_after_s)
    assert waits == [2.5, 5.0]


async def test_a_room_that_sync_has_not_brought(
    scripted: ScriptedServer, transport: MatrixTransport
) -> None:
    """Never guessed whether it is encrypted: wait when the bot is in it, else refuse."""
    scripted.say("/joined_rooms", json(joined_rooms=["!new"]))
    with pytest.raises(SendLaterError):
        await transport.send(Outgoing("row-1", "!new", "hello"))
    with pytest.raises(SendRefusedError):
        await transport.upload(b"leaf", "image/png", "!other")


async def test_an_old_message_is_looked_for_back_to_its_time(
    scripted: ScriptedServer, transport: MatrixTransport
) -> None:
    """Page by page until it is found, the time is reached, or the room's beginning."""
    stamp = int(SINCE.timestamp() * 1000)
    newer = {"event_id": "$n", "origin_server_ts": stamp + 9, "content": {ROW_KEY: "row-9"}}
    wanted = {"event_id": "$w", "origin_server_ts": stamp + 1, "content": {ROW_KEY: "row-1"}}
    older = {"event_id": "$o", "origin_server_ts": stamp - 1, "content": {}}
    scripted.say("/messages", json(chunk=[newer], end="t1"), json(chunk=[wanted, older], end="t2"))
    assert await transport.find_sent(ROOM, "row-1", SINCE) == "$w"
    scripted.say("/messages", json(chunk=[newer], end="t1"), json(chunk=[older], end="t2"))
    assert await transport.find_sent(ROOM, "row-1", SINCE) is None
    scripted.say("/messages", json(chunk=[], end="t1"), json(chunk=[]))
    assert await transport.find_sent(ROOM, "row-1", SINCE) is None
    scripted.asked.clear()
    scripted.say("/messages", json(chunk=[newer], end="t"))
    assert await transport.find_sent(ROOM, "row-1", SINCE) is None
    assert len(scripted.asked) == 20


@pytest.mark.parametrize(
    ("answer", "raised"),
    [
        (error(404, "M_NOT_FOUND"), MediaGoneError),
        (error(403, "M_FORBIDDEN"), MediaGoneError),
        (page(502), SendUncertainError),
        (hang_up, UnreachableError),
        (error(429, "M_LIMIT_EXCEEDED"), SendLaterError),
        (file(b"x" * 5001), MediaTooLargeError),
        (file(b"x" * 5001, sized=False), MediaTooLargeError),
    ],
)
async def test_downloads_that_fail(
    scripted: ScriptedServer,
    transport: MatrixTransport,
    answer: Answer,
    raised: type[TransportError],
) -> None:
    """Gone, later, uncertain or too large, with and without a stated size."""
    scripted.say("/media/download/example.org/leaf", answer)
    with pytest.raises(raised):
        await transport.download(FILE, 5000)


@pytest.mark.parametrize("sized", [True, False])
async def test_a_file_at_the_limit_comes_whole(
    scripted: ScriptedServer, transport: MatrixTransport, sized: bool
) -> None:
    """The limit itself is allowed."""
    scripted.say("/media/download/example.org/leaf", file(b"x" * 5000, sized=sized))
    assert await transport.download(FILE, 5000) == b"x" * 5000


async def test_a_stated_size_over_the_limit_costs_no_request(
    scripted: ScriptedServer, transport: MatrixTransport
) -> None:
    """Who says that it is too large is believed."""
    with pytest.raises(MediaTooLargeError):
        await transport.download(FILE.model_copy(update={"stated_bytes": 5001}), 5000)
    assert scripted.asked == []


async def test_what_an_encrypted_upload_tells_the_server(
    scripted: ScriptedServer, transport: MatrixTransport, signed_in: AsyncClient
) -> None:
    """In an encrypted room the server sees neither the bytes nor their kind."""
    signed_in.rooms[ROOM].encrypted = True
    scripted.say("/upload", json(content_uri="mxc://example.org/up"))
    uploaded = await transport.upload(b"leaf" * 10, "image/png", ROOM)
    assert uploaded.address == "mxc://example.org/up"
    assert uploaded.encryption is not None
    assert b"leaf" not in scripted.bodies[-1]
    assert len(scripted.bodies[-1]) == 40


async def test_a_message_to_a_room_that_was_replaced_waits(
    scripted: ScriptedServer, transport: MatrixTransport
) -> None:
    """Upgrading closes a room; until its rows have moved, nothing for it is given up."""
    scripted.say("/row-1", error(403, "M_FORBIDDEN"))
    tombstone = "/state/m.room.tombstone"
    scripted.say(tombstone, json(body="moved", replacement_room="!new"))
    with pytest.raises(SendLaterError) as caught:
        await transport.send(MESSAGE)
    assert not caught.value.limited
    for state in (json(body="closed"), error(404, "M_NOT_FOUND"), error(403, "M_FORBIDDEN")):
        scripted.say(tombstone, state)
        with pytest.raises(SendRefusedError):
            await transport.send(MESSAGE)


async def test_an_operator_is_told_once_what_to_raise(
    scripted: ScriptedServer, transport: MatrixTransport, caplog: pytest.LogCaptureFixture
) -> None:
    """At the first limit that a message meets; both ways are named, with the bot's own id."""
    scripted.say("/row-1", error(429, "M_LIMIT_EXCEEDED", retry_after_ms=100))
    for _ in range(3):
        with pytest.raises(SendLaterError) as caught:
            await transport.send(MESSAGE)
        assert caught.value.limited
    (advice,) = [message for message in caplog.messages if "limits" in message]
    assert "rc_message" in advice
    assert f"/_synapse/admin/v1/users/{USER_ID}/override_ratelimit" in advice


async def test_the_bots_clock_may_be_ahead(
    scripted: ScriptedServer, transport: MatrixTransport
) -> None:
    """A message is found that the server stamped some minutes before it was written."""
    stamp = int(SINCE.timestamp() * 1000) - 5 * 60_000
    other = {"event_id": "$o", "origin_server_ts": stamp, "content": {}}
    wanted = {"event_id": "$w", "origin_server_ts": stamp - 1, "content": {ROW_KEY: "row-1"}}
    scripted.say("/messages", json(chunk=[other], end="t1"), json(chunk=[wanted]))
    assert await transport.find_sent(ROOM, "row-1", SINCE) == "$w"


async def test_an_answer_that_says_nothing_is_no_success(
    scripted: ScriptedServer, transport: MatrixTransport
) -> None:
    """JSON without the id that a homeserver gives came from somebody else."""
    for path_end in ("/row-1", "/upload"):
        scripted.say(path_end, json(status_page="ok"))
    with pytest.raises(UnreachableError):
        await transport.send(MESSAGE)
    with pytest.raises(UnreachableError):
        await transport.upload(b"leaf", "image/png", ROOM)
