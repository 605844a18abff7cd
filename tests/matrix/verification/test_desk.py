"""Many verifications at once: kept apart, begun, refused, limited, forgotten."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from bot.matrix.verification.desk import MOST, MOST_OF_ONE, Desk, Turn
from bot.matrix.verification.exchange import Party
from bot.matrix.verification.machine import End, Send
from bot.matrix.verification.messages import Incoming, Kind, read_in_room, read_to_device
from tests.matrix.verification.two_sides import ADA, LINN, NOON, Content, Side

ROOM = "!gorge:example.org"


def _request(transaction: str = "t", *, sender: Party = ADA, **change: Any) -> Incoming:
    """A request by to-device message."""
    content = {
        "transaction_id": transaction,
        "from_device": sender.device_id,
        "methods": ["m.sas.v1", "m.qr_code.show.v1"],
        "timestamp": int(NOON.timestamp() * 1000),
    }
    return _said(Kind.REQUEST, content | change, sender.user_id)


def _said(kind: Kind, content: Content, sender: str = ADA.user_id) -> Incoming:
    content = {"transaction_id": "t"} | content
    read = read_to_device({"type": kind.value, "sender": sender, "content": content})
    assert read is not None
    return read


def _in_room(kind: Kind, content: Content, sender: str = ADA.user_id) -> Incoming:
    relation = {"m.relates_to": {"rel_type": "m.reference", "event_id": "$request"}}
    source = {
        "type": kind.value,
        "event_id": "$request",
        "sender": sender,
        "content": relation | content,
        "origin_server_ts": int(NOON.timestamp() * 1000),
    }
    if kind is Kind.REQUEST:
        source |= {"type": "m.room.message", "content": {"msgtype": kind.value} | content}
    read = read_in_room(ROOM, source)
    assert read is not None
    return read


def _room_request(**change: Any) -> Incoming:
    content = {"from_device": "ADADEVICE", "methods": ["m.sas.v1"], "to": LINN.user_id}
    return _in_room(Kind.REQUEST, content | change)


def _sent(turns: list[Turn]) -> list[tuple[str, Kind, str | None]]:
    """Device, kind and code of what is sent."""
    return [
        (turn.theirs.device_id, output.kind, output.content.get("code"))
        for turn in turns
        for output in turn.outputs
        if isinstance(output, Send)
    ]


@pytest.fixture
def desk() -> Desk:
    """An empty one."""
    return Desk(LINN.user_id, LINN.device_id)


def test_a_request_is_answered_once(desk: Desk) -> None:
    """With `ready`, on the way it came; the same request again is no other one."""
    assert desk.idle
    assert desk.begins(_request(), NOON)
    (turn,) = desk.open(_request(), LINN, ADA, NOON)
    assert (turn.room_id, _sent([turn])) == (None, [("ADADEVICE", Kind.READY, None)])
    assert not desk.begins(_request(), NOON)
    assert desk.receive(_request(), NOON) != []  # out of order now: a second request
    assert desk.idle


@pytest.mark.parametrize(
    ("change", "begins"),
    [
        ({"timestamp": int(NOON.timestamp() * 1000) - 599_000}, True),
        ({"timestamp": int(NOON.timestamp() * 1000) - 600_000}, False),
        ({"timestamp": int(NOON.timestamp() * 1000) + 299_000}, True),
        ({"timestamp": int(NOON.timestamp() * 1000) + 300_000}, False),
        ({"timestamp": None}, False),
        ({"timestamp": True}, False),
        ({"timestamp": 10**30}, False),
        ({"methods": ["m.qr_code.scan.v1"]}, False),
        ({"methods": "m.sas.v1"}, False),
        ({"from_device": None}, False),
        ({"from_device": "A\nB"}, False),
    ],
)
def test_a_request_has_to_be_fresh_and_possible(desk: Desk, change: Content, begins: bool) -> None:
    """Ten minutes back, five ahead (specification 1.16, "m.key.verification.request")."""
    assert desk.begins(_request(**change), NOON) is begins


def test_a_request_in_a_room_says_for_whom_it_is(desk: Desk) -> None:
    """Others in the room verify each other; their events are left alone."""
    assert desk.begins(_room_request(), NOON)
    assert desk.is_for_us(_room_request())
    assert desk.is_for_us(_request())
    others = _room_request(to="@ben:example.org")
    assert not desk.is_for_us(others)
    desk.leave(others.key, NOON)
    start = _in_room(Kind.START, {"from_device": "ADADEVICE"})
    assert desk.knows(start)
    assert desk.receive(start, NOON) == desk.refuse_unknown(start, NOON) == []


def test_events_in_a_room_carry_their_reference(desk: Desk) -> None:
    """Every one of them refers to the request."""
    (turn,) = desk.open(_room_request(), LINN, ADA, NOON)
    (ready,) = turn.outputs
    assert isinstance(ready, Send)
    assert turn.room_id == ROOM
    assert ready.content["m.relates_to"] == {"rel_type": "m.reference", "event_id": "$request"}


def test_a_start_without_a_request_is_followed(desk: Desk) -> None:
    """Deprecated, and still to be handled; in a room there is nothing to refer to."""
    (start,) = [send for send in Side(ADA, LINN).machine.start() if isinstance(send, Send)]
    incoming = _said(Kind.START, start.content)
    assert desk.begins(incoming, NOON)
    assert _sent(desk.open(incoming, LINN, ADA, NOON)) == [("ADADEVICE", Kind.ACCEPT, None)]
    assert not desk.begins(_in_room(Kind.START, {"from_device": "ADADEVICE"}), NOON)


def test_a_device_without_keys_is_not_verified(desk: Desk) -> None:
    """The server shows none for it: nothing could be compared."""
    unknown = Party(ADA.user_id, ADA.device_id, {})
    turns = desk.open(_request(), LINN, unknown, NOON)
    assert _sent(turns) == [("ADADEVICE", Kind.CANCEL, "m.key_mismatch")]


def test_the_newest_attempt_of_a_device_counts(desk: Desk) -> None:
    """Somebody's client was closed midway: the second attempt need not wait for the first."""
    desk.open(_request("first"), LINN, ADA, NOON)
    turns = desk.open(_request("second"), LINN, ADA, NOON)
    assert _sent(turns) == [
        ("ADADEVICE", Kind.CANCEL, "m.unexpected_message"),
        ("ADADEVICE", Kind.READY, None),
    ]


def test_one_person_cannot_fill_the_desk(desk: Desk) -> None:
    """A few devices at once, and so many people in all (own rules)."""
    for number in range(MOST_OF_ONE + 1):
        device = Party(ADA.user_id, f"D{number}", {f"ed25519:D{number}": "key"})
        turns = desk.open(_request(str(number), sender=device), LINN, device, NOON)
    assert _sent(turns) == [(f"D{MOST_OF_ONE}", Kind.CANCEL, "m.user")]
    for number in range(MOST + 1 - MOST_OF_ONE):
        other = Party(f"@p{number}:example.org", "D", {"ed25519:D": "key"})
        turns = desk.open(_request(sender=other), LINN, other, NOON)
    assert _sent(turns) == [("D", Kind.CANCEL, "m.user")]


def test_two_people_with_one_id_are_two(desk: Desk) -> None:
    """Outside rooms, an id is its sender's."""
    ben = Party("@ben:example.org", "BEN", {"ed25519:BEN": "key"})
    desk.open(_request(), LINN, ADA, NOON)
    desk.open(_request(sender=ben), LINN, ben, NOON)
    desk.receive(_said(Kind.CANCEL, {"code": "m.user"}, ben.user_id), NOON)
    assert not desk.idle
    assert _sent(desk.tick(NOON + timedelta(seconds=20))) == [("ADADEVICE", Kind.START, None)]


def test_somebody_else_in_the_room_has_no_say(desk: Desk) -> None:
    """Only the two sides count."""
    desk.open(_room_request(), LINN, ADA, NOON)
    stranger = _in_room(Kind.CANCEL, {"code": "m.user"}, "@ben:example.org")
    assert desk.receive(stranger, NOON) == []
    assert not desk.idle


@pytest.mark.parametrize(
    ("kind", "device", "ends"),
    [
        (Kind.READY, "LINNSOTHER", True),
        (Kind.START, "LINNSOTHER", True),
        (Kind.READY, "LINNDEVICE", False),
        (Kind.READY, None, False),
        (Kind.CANCEL, "LINNSOTHER", False),
    ],
)
def test_another_device_of_ours_may_take_it(
    desk: Desk, kind: Kind, device: str | None, ends: bool
) -> None:
    """In a room its `ready` tells us; what we have sent ourselves tells us nothing."""
    desk.open(_room_request(), LINN, ADA, NOON)
    turns = desk.receive(_in_room(kind, {"from_device": device}, LINN.user_id), NOON)
    outputs = [output for turn in turns for output in turn.outputs]
    assert outputs == ([End(verified=False, reason="m.accepted")] if ends else [])
    assert desk.idle is ends


def test_what_a_restart_cut_off_is_cancelled_once(desk: Desk) -> None:
    """Politely, to the device that it names or to all of them; never a cancellation."""
    key = _said(Kind.KEY, {"key": "k"})
    (turn,) = desk.refuse_unknown(key, NOON)
    assert _sent([turn]) == [("*", Kind.CANCEL, "m.unknown_transaction")]
    assert turn.outputs[0].content["transaction_id"] == "t"  # type: ignore[union-attr]
    assert desk.refuse_unknown(_said(Kind.MAC, {}), NOON) == []
    start = _said(Kind.START, {"transaction_id": "u", "from_device": "ADADEVICE"})
    assert _sent(desk.refuse_unknown(start, NOON)) == [
        ("ADADEVICE", Kind.CANCEL, "m.unknown_transaction")
    ]
    for kind in (Kind.CANCEL, Kind.DONE, Kind.REQUEST):
        assert desk.refuse_unknown(_said(kind, {"transaction_id": "v"}), NOON) == []


def test_what_is_over_is_remembered_for_ten_minutes(desk: Desk) -> None:
    """Late events of it get no answer; then its id is as good as new."""
    desk.open(_request(), LINN, ADA, NOON)
    desk.receive(_said(Kind.CANCEL, {"code": "m.user"}), NOON)
    assert desk.receive(_said(Kind.KEY, {}), NOON) == []
    assert desk.knows(_request())
    desk.tick(NOON + timedelta(minutes=10))
    assert not desk.knows(_request())


@pytest.mark.parametrize(
    "source",
    [
        {},
        {"type": "m.room.message", "sender": "@a:b", "content": {"transaction_id": "t"}},
        {"type": 5, "sender": "@a:b", "content": {"transaction_id": "t"}},
        {"type": "m.key.verification.key", "content": {"transaction_id": "t"}},
        {"type": "m.key.verification.key", "sender": "@a:b", "content": []},
        {"type": "m.key.verification.key", "sender": "@a:b", "content": {"transaction_id": ""}},
        {"type": "m.key.verification.key", "sender": "@a:b", "content": {"transaction_id": "\0"}},
        {
            "type": "m.key.verification.key",
            "sender": "@a:b",
            "content": {"transaction_id": "x" * 256},
        },
    ],
)
def test_what_names_no_verification_is_none(source: Content) -> None:
    """To-device messages of all kinds, and malformed ones."""
    assert read_to_device(source) is None


@pytest.mark.parametrize(
    "content",
    [
        {},
        {"m.relates_to": "$request"},
        {"m.relates_to": {"rel_type": "m.thread", "event_id": "$request"}},
        {"m.relates_to": {"rel_type": "m.reference", "event_id": 5}},
    ],
)
def test_what_refers_to_nothing_is_none(content: Content) -> None:
    """In a room the reference is the id."""
    source = {"type": "m.key.verification.key", "sender": "@a:b", "content": content}
    assert read_in_room(ROOM, source) is None
    assert read_in_room(ROOM, source | {"type": "m.key.verification.request"}) is None
