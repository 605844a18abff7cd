"""One verification: both roles, every refusal, every time limit, and whatever strangers send."""

from __future__ import annotations

import string
from dataclasses import replace
from datetime import timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.matrix.verification.agreement import Agreement
from bot.matrix.verification.machine import End, Send, State, Verification
from bot.matrix.verification.messages import Code, Kind
from tests.matrix.verification.two_sides import (
    ADA,
    LINN,
    NOON,
    REFERENCE,
    Content,
    Side,
    sides,
    talk,
)

VERIFIED = [End(verified=True)]


def _cancelled(code: Code) -> list[End]:
    return [End(verified=False, reason=code.value[0])]


@pytest.mark.parametrize("linn_starts", [False, True])
def test_both_sides_see_the_same_seven_emoji_and_are_done(linn_starts: bool) -> None:
    """Whoever starts: one accepts, both show their keys, compare, confirm, and say so."""
    ada, linn = sides()
    starter, other = (linn, ada) if linn_starts else (ada, linn)
    talk(starter, other, starter.says(starter.machine.start()))
    assert ada.shown == linn.shown
    assert len(ada.shown) == 7
    assert ada.ended == linn.ended == VERIFIED
    assert starter.kinds == [Kind.START, Kind.KEY, Kind.MAC, Kind.DONE]
    assert other.kinds == [Kind.ACCEPT, Kind.KEY, Kind.MAC, Kind.DONE]


def test_a_client_without_emoji_compares_numbers() -> None:
    """Every client knows decimal: three numbers from 1000 to 9191 (specification 1.16)."""
    ada, linn = sides()
    (start,) = ada.says(ada.machine.start())
    ada.machine._start = start.content | {"short_authentication_string": ["decimal"]}
    talk(ada, linn, [replace(start, content=ada.machine._start)])
    assert ada.shown == linn.shown
    assert all(1000 <= int(number) <= 9191 for number in ada.shown)
    assert ada.ended == linn.ended == VERIFIED


@pytest.mark.parametrize(
    ("first", "second"),
    [(ADA, LINN), (LINN, ADA), (ADA, replace(LINN, user_id=ADA.user_id))],
)
def test_when_both_start_the_smaller_one_counts(first: Any, second: Any) -> None:
    """The smaller user id, then the smaller device id ("Key verification framework")."""
    one, two = sides(first, second)
    (start_one,), (start_two,) = one.says(one.machine.start()), two.says(two.machine.start())
    answers_one = one.hears(start_two.kind, start_two.content)
    answers_two = two.hears(start_one.kind, start_one.content)
    assert sorted([len(answers_one), len(answers_two)]) == [0, 1]
    accepting = two if answers_two else one
    assert (accepting.machine.ours.user_id, accepting.machine.ours.device_id) == max(
        (party.user_id, party.device_id) for party in (first, second)
    )
    talk(one, two, answers_one)
    talk(two, one, answers_two)
    assert one.shown == two.shown
    assert one.ended == two.ended == VERIFIED


def test_two_starts_of_different_methods_end_it() -> None:
    """So the specification has it; and a third start is no start."""
    ada, linn = sides()
    linn.says(linn.machine.start())
    (start,) = ada.says(ada.machine.start())
    linn.hears(Kind.START, start.content | {"method": "m.qr_code.scan.v1"})
    assert linn.ended == _cancelled(Code.UNEXPECTED_MESSAGE)
    ada, linn = sides()
    ada.says(ada.machine.start())
    (start,) = linn.says(linn.machine.start())
    assert ada.hears(Kind.START, start.content) == []
    ada.hears(Kind.START, start.content | {"hashes": ["sha256", "other"]})
    assert ada.ended == _cancelled(Code.UNEXPECTED_MESSAGE)


def test_the_same_event_again_is_no_event() -> None:
    """Sync may bring an event once more; nothing is said twice, nothing breaks by it."""
    ada, linn = sides()
    (start,) = ada.says(ada.machine.start())
    (accept,) = linn.hears(start.kind, start.content)
    assert linn.hears(start.kind, start.content) == []
    (key,) = ada.hears(accept.kind, accept.content)
    assert ada.hears(accept.kind, accept.content) == []
    talk(ada, linn, [key, key])
    assert ada.ended == linn.ended == VERIFIED


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ({"method": "m.qr_code.scan.v1"}, Code.UNKNOWN_METHOD),
        ({"method": 7}, Code.INVALID_MESSAGE),
        ({"from_device": "OTHER"}, Code.USER_MISMATCH),
        ({"from_device": None}, Code.INVALID_MESSAGE),
        ({"key_agreement_protocols": ["curve25519"]}, Code.UNKNOWN_METHOD),
        ({"key_agreement_protocols": "curve25519-hkdf-sha256"}, Code.INVALID_MESSAGE),
        ({"hashes": []}, Code.UNKNOWN_METHOD),
        ({"message_authentication_codes": ["hkdf-hmac-sha256"]}, Code.UNKNOWN_METHOD),
        ({"short_authentication_string": ["song"]}, Code.UNKNOWN_METHOD),
        ({"short_authentication_string": {}}, Code.INVALID_MESSAGE),
        ({"extra": "\ud800"}, Code.INVALID_MESSAGE),
    ],
)
def test_a_start_that_cannot_be_followed_is_cancelled(change: Content, code: Code) -> None:
    """With the code that says why."""
    ada, linn = sides()
    (start,) = ada.says(ada.machine.start())
    (cancel,) = linn.hears(Kind.START, start.content | change)
    assert cancel.content == code.content | REFERENCE
    assert linn.ended == _cancelled(code)
    ada.hears(Kind.CANCEL, cancel.content)
    assert ada.ended == _cancelled(code)


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ({"hash": "md5"}, Code.UNKNOWN_METHOD),
        ({"message_authentication_code": "hkdf-hmac-sha256"}, Code.UNKNOWN_METHOD),
        ({"key_agreement_protocol": None}, Code.INVALID_MESSAGE),
        ({"short_authentication_string": []}, Code.UNKNOWN_METHOD),
        ({"commitment": 5}, Code.INVALID_MESSAGE),
    ],
)
def test_a_choice_that_was_not_offered_is_cancelled(change: Content, code: Code) -> None:
    """The other side chooses of what we offer, and promises its key."""
    ada, linn = sides()
    (start,) = linn.says(linn.machine.start())
    (accept,) = ada.hears(start.kind, start.content)
    linn.hears(Kind.ACCEPT, accept.content | change)
    assert linn.ended == _cancelled(code)


def test_another_key_than_the_promised_one_is_cancelled() -> None:
    """Whoever sits in between has one guess, not as many as it likes."""
    ada, linn = sides()
    (start,) = linn.says(linn.machine.start())
    (accept,) = ada.hears(start.kind, start.content)
    linn.hears(accept.kind, accept.content)
    linn.hears(Kind.KEY, {"key": Agreement().public_key} | REFERENCE)
    assert linn.ended == _cancelled(Code.MISMATCHED_COMMITMENT)


@pytest.mark.parametrize("key", ["", "AAAA", "!", "\ud800", 5, None, "A" * 43])
def test_a_key_that_is_none_is_cancelled(key: object) -> None:
    """Too short, no base64, no text, or the point that makes the secret known to all."""
    ada, linn = sides()
    (start,) = ada.says(ada.machine.start())
    linn.hears(start.kind, start.content)
    linn.hears(Kind.KEY, {"key": key} | REFERENCE)
    assert linn.ended == _cancelled(Code.INVALID_MESSAGE)


def _mac_of(ada: Side, linn: Side) -> Content:
    """Go on until Ada's codes are made, and keep them from Linn."""
    (start,) = ada.says(ada.machine.start())
    (accept,) = linn.hears(start.kind, start.content)
    (key,) = ada.hears(accept.kind, accept.content)
    answers = linn.hears(key.kind, key.content)
    (mac,) = ada.hears(answers[0].kind, answers[0].content)
    assert linn.machine.state is State.SHOWN
    return mac.content


@pytest.mark.parametrize(
    ("known", "code"),
    [
        ({"ed25519:ADADEVICE": "other"}, Code.KEY_MISMATCH),
        ({"ed25519:ADADEVICE": "adakey", "ed25519:am": "other"}, Code.KEY_MISMATCH),
        ({"ed25519:am": "am"}, Code.KEY_MISMATCH),
        ({}, Code.KEY_MISMATCH),
    ],
)
def test_other_keys_than_the_server_shows_are_cancelled(known: Content, code: Code) -> None:
    """The device's own key has to be among them, and each that we know has to be right."""
    ada, linn = Side(ADA, LINN), Side(LINN, replace(ADA, keys=known))
    linn.hears(Kind.MAC, _mac_of(ada, linn))
    assert linn.ended == _cancelled(code)


def test_keys_that_nobody_here_knows_do_no_harm() -> None:
    """A client may vouch for more than the server shows us."""
    ada, linn = Side(ADA, LINN), Side(LINN, replace(ADA, keys={"ed25519:ADADEVICE": "adakey"}))
    (done,) = linn.hears(Kind.MAC, _mac_of(ada, linn))
    assert done.kind is Kind.DONE


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ({"keys": "AAAA"}, Code.KEY_MISMATCH),
        ({"keys": None}, Code.INVALID_MESSAGE),
        ({"mac": None}, Code.INVALID_MESSAGE),
        ({"mac": {"ed25519:ADADEVICE": 5}}, Code.INVALID_MESSAGE),
        ({"mac": {}}, Code.KEY_MISMATCH),
        ({"mac": {"ed25519:ADADEVICE": "\ud800"}}, Code.KEY_MISMATCH),
    ],
)
def test_codes_that_are_wrong_are_cancelled(change: Content, code: Code) -> None:
    """Changed, missing, or over another list of keys."""
    ada, linn = sides()
    linn.hears(Kind.MAC, _mac_of(ada, linn) | change)
    assert linn.ended == _cancelled(code)


@pytest.mark.parametrize("kind", [Kind.READY, Kind.ACCEPT, Kind.KEY, Kind.MAC, Kind.DONE])
def test_what_is_out_of_order_is_cancelled(kind: Kind) -> None:
    """Before anything has started, only a start may come."""
    _, linn = sides()
    (cancel,) = linn.hears(kind, dict(REFERENCE))
    assert cancel.kind is Kind.CANCEL
    assert linn.ended == _cancelled(Code.UNEXPECTED_MESSAGE)
    assert linn.hears(Kind.MAC, {}) == []


@pytest.mark.parametrize(
    ("content", "reason"),
    [
        ({"code": "m.user", "reason": "a person's words"}, "m.user"),
        ({"code": "a person's words"}, "no code"),
        ({"code": 5}, "no code"),
        ({"code": "m." + "x" * 100}, "m." + "x" * 48),
    ],
)
def test_their_cancellation_is_not_answered(content: Content, reason: str) -> None:
    """Of what it says only a code is kept."""
    _, linn = sides()
    assert linn.hears(Kind.CANCEL, content | REFERENCE) == []
    assert linn.ended == [End(verified=False, reason=reason)]


def test_the_bot_starts_when_nobody_does() -> None:
    """20 s after its `ready` (own rule); then it waits as for anything else."""
    _, linn = sides()
    (ready,) = linn.says(linn.machine.ready())
    assert (
        ready.content
        == {
            "from_device": "LINNDEVICE",
            "methods": ["m.sas.v1"],
        }
        | REFERENCE
    )
    assert linn.machine.tick(NOON + timedelta(seconds=19)) == []
    (start,) = linn.says(linn.machine.tick(NOON + timedelta(seconds=20)))
    assert start.kind is Kind.START
    assert linn.machine.tick(NOON + timedelta(seconds=139)) == []
    (cancel, _) = linn.machine.tick(NOON + timedelta(seconds=140))
    assert isinstance(cancel, Send)
    assert cancel.content["code"] == "m.timeout"
    assert linn.machine.tick(NOON + timedelta(days=1)) == []


def test_a_person_may_compare_for_ten_minutes() -> None:
    """A client has two minutes (own rule), a whole verification ten (specification 1.16)."""
    ada, linn = sides()
    _mac_of(ada, linn)
    assert linn.machine.tick(NOON + timedelta(minutes=9, seconds=59)) == []
    linn.says(linn.machine.tick(NOON + timedelta(minutes=10)))
    assert linn.ended == _cancelled(Code.TIMEOUT)


def test_a_missing_last_word_harms_nobody() -> None:
    """Both have confirmed; some clients say no more."""
    ada, linn = sides()
    linn.hears(Kind.MAC, _mac_of(ada, linn), after_s=60)
    assert linn.machine.tick(NOON + timedelta(seconds=179)) == []
    linn.says(linn.machine.tick(NOON + timedelta(seconds=180)))
    assert linn.ended == VERIFIED


_ANY = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(),
    lambda parts: st.lists(parts, max_size=3) | st.dictionaries(st.text(), parts, max_size=3),
    max_leaves=6,
)
_FIELDS = st.dictionaries(
    st.sampled_from(
        [
            *("method", "from_device", "key_agreement_protocols", "hashes", "hash", "key"),
            *("message_authentication_codes", "short_authentication_string", "commitment"),
            *("mac", "keys", "code", "reason", "methods"),
        ]
    ),
    _ANY | st.text(string.ascii_letters, max_size=50),
)


@given(reached=st.integers(0, 4), events=st.lists(st.tuples(st.sampled_from(Kind), _FIELDS)))
def test_whatever_comes_the_answer_is_a_cancellation_or_silence(
    reached: int, events: list[tuple[Kind, Content]]
) -> None:
    """At each point of a verification: no crash, and never a `done` for what is not right."""
    ada, linn = sides()
    honest = ada.says(ada.machine.start())
    for _ in range(reached):
        honest = [
            answer
            for send in honest
            for reply in linn.hears(send.kind, send.content)
            for answer in ada.hears(reply.kind, reply.content)
        ]
    before = len(linn.kinds)
    for kind, content in events:
        linn.hears(kind, content)
    linn.says(linn.machine.tick(NOON + timedelta(hours=1)))
    assert set(linn.kinds[before:]) <= {Kind.CANCEL}
    assert len(linn.ended) <= 1
    assert linn.machine.over


def test_the_end_can_be_silent() -> None:
    """When another device goes on with it, nobody is told."""
    machine = Verification(LINN, ADA, "t", {}, NOON)
    assert machine.end_silently("m.accepted") == [End(verified=False, reason="m.accepted")]
    assert machine.over
