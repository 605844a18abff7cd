"""The sync loop at a homeserver that fails, cuts timelines and sends what breaks the library."""

from __future__ import annotations

import asyncio
from typing import Any

import pytest
from aiohttp import web
from nio import AsyncClient, MatrixRoom
from peewee import OperationalError

from bot.dialogue.events import Event, OtherReceived, TextReceived, Withdrawn
from bot.matrix.chores import Chores
from bot.matrix.content import ROW_KEY
from bot.matrix.entering import Entering
from bot.matrix.keys import RoomKeys
from bot.matrix.policy import Policy
from bot.matrix.receiver import Receiver
from bot.matrix.room_reader import RoomReader
from bot.matrix.room_states import RoomStates
from bot.matrix.rooms import Rooms
from bot.matrix.server_api import ServerApi
from bot.matrix.session import Account
from bot.matrix.waiting import WaitingEvents
from bot.trouble import Troubles
from tests.matrix.receiving import (
    ADA,
    CREW,
    MEMBERS,
    NOW,
    Run,
    Tables,
    event,
    invited,
    member,
    said,
    synced,
)
from tests.matrix.scripted_server import (
    USER_ID,
    ScriptedServer,
    error,
    hang_up,
    json,
    page,
)


async def test_failures_are_repeated_with_pauses_and_nothing_is_skipped(
    scripted: ScriptedServer, run: Run, no_pauses: list[float | None]
) -> None:
    """Pages, refusals and lost connections cost one pause each; the token stays.

    The connection ends twice, because the first loss of a kept one is repeated by aiohttp.
    """
    tables = Tables()
    limit = error(429, "M_LIMIT_EXCEEDED", retry_after_ms=700)
    await run(tables, page(502), hang_up, hang_up, limit, synced("t1", said(1), state=MEMBERS))
    assert no_pauses == [None, None, 0.7]
    assert (tables.texts, tables.token) == (["1"], "t1")
    assert scripted.asked_for("/sync") == 6


async def test_events_stay_until_they_are_stored(
    run: Run, caplog: pytest.LogCaptureFixture
) -> None:
    """A store that fails gets the same events again; what it says of them is not logged."""
    tables = Tables(failures=3)
    await run(tables, synced("t1", said(1), state=MEMBERS))
    assert "OSError" in caplog.text
    assert "secret words" not in caplog.text
    assert (tables.texts, tables.token) == (["1"], "t1")


async def test_a_gap_is_filled_backwards(scripted: ScriptedServer, run: Run) -> None:
    """Pages are fetched from the cut back to the last token, a failing one again."""
    tables = Tables()
    scripted.say(
        "/messages",
        json(chunk=[said(4), said(3)], start="a", end="b"),
        error(500, "M_UNKNOWN"),
        json(chunk=[said(4), said(3)], start="a", end="b"),
        json(chunk=[said(2), said(1)], start="b"),
    )
    await run(tables, synced("t1", said(5), limited=True, state=MEMBERS))
    assert tables.texts == ["1", "2", "3", "4", "5"]


async def test_an_endless_gap_is_given_up(
    scripted: ScriptedServer, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A server that always has one more page does not hold everybody else up."""
    monkeypatch.setattr("bot.matrix.timeline._MOST_PAGES", 3)
    tables = Tables()
    scripted.say("/messages", *(json(chunk=[], start="a", end=f"{n}") for n in range(9)))
    await run(tables, synced("t1", said(5), limited=True, state=MEMBERS))
    assert tables.texts == ["5"]
    assert scripted.asked_for("/messages") == 3


@pytest.mark.parametrize(
    ("before", "expected"),
    [
        ([said(1), member(2, USER_ID, "invite"), said(3)], ["3", "9"]),
        ([said(1), said(3)], ["9"]),
    ],
)
async def test_what_was_said_before_the_invitation_is_not_read(
    scripted: ScriptedServer, run: Run, before: list[Any], expected: list[str]
) -> None:
    """From the invitation on, else from the entry on; nothing older is even fetched."""
    tables = Tables()
    entry = member(8, USER_ID, "join", "invite")
    await run(tables, synced("t1", *before, entry, said(9), limited=True))
    assert tables.texts == expected
    assert scripted.asked_for("/messages") == 0


async def test_a_new_name_of_the_bot_is_no_entry(run: Run) -> None:
    """A member event that keeps the membership hides nothing."""
    tables = Tables()
    await run(tables, synced("t1", said(1), member(2, USER_ID, "join", "join"), said(3)))
    assert tables.texts == ["1", "3"]


async def test_a_first_start_reads_nothing_older(run: Run) -> None:
    """Without a token the past is skipped, up to this moment."""
    tables = Tables(fresh=True)
    await run(tables, synced("t1", said(-1), said(1), state=MEMBERS))
    assert tables.texts == ["1"]


async def test_a_batch_that_breaks_the_library_is_given_up_at_last(
    run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It is tried three times, then the others are served; the next batch comes as usual."""
    tables, broken = Tables(), 0
    handle = MatrixRoom.handle_event

    def breaking(self: MatrixRoom, event: Any) -> None:
        nonlocal broken
        if event.source.get("content") == {"topic": "boom"}:
            broken += 1
            raise ValueError("list.remove(x): x not in list")
        handle(self, event)

    monkeypatch.setattr(MatrixRoom, "handle_event", breaking)
    bad = synced("t1", event(1, "m.room.topic", {"topic": "boom"}, state_key=""), state=MEMBERS)
    await run(tables, bad, bad, bad, synced("t2", said(2)))
    assert (broken, tables.texts) == (3, ["2"])


async def test_a_key_store_on_a_full_disk_costs_no_batch(
    run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    """However often the same batch fails for it: it is read when there is room again."""
    tables, tries = Tables(), 0
    handle = MatrixRoom.handle_event

    def full(self: MatrixRoom, event: Any) -> None:
        nonlocal tries
        tries += 1
        if tries <= 5:
            raise OperationalError("database or disk is full")
        handle(self, event)

    monkeypatch.setattr(MatrixRoom, "handle_event", full)
    await run(tables, *[synced("t1", said(1), state=MEMBERS)] * 6)
    assert tables.texts == ["1"]


async def test_an_event_that_cannot_be_read_is_skipped(
    run: Run, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    """A bug over one event costs that event, not the others; its words are not logged."""
    read = RoomReader.read

    async def breaking(self: RoomReader, room_id: str, source: Any, sender: Any) -> Event | None:
        if source["content"]["body"] == "secret":
            raise ValueError("cannot read secret")
        return await read(self, room_id, source, sender)

    monkeypatch.setattr(RoomReader, "read", breaking)
    tables = Tables()
    await run(tables, synced("t1", said(1), said(2, "secret"), said(3), state=MEMBERS))
    assert tables.texts == ["1", "3"]
    assert "Skipped an event" in caplog.text
    assert "secret" not in caplog.text


async def test_nobody_else_is_read(run: Run, caplog: pytest.LogCaptureFixture) -> None:
    """Own events, strangers, impossible stamps and state are no events; no words are logged."""
    caplog.set_level("DEBUG")
    tables = Tables()
    await run(
        tables,
        synced(
            "t1",
            said(1, sender=USER_ID),
            said(2, "secret", sender="@eve:example.org"),
            said(3) | {"origin_server_ts": -5},
            event(4, "m.room.topic", {"topic": "secret"}, state_key=""),
            event(6, "m.room.topic", {"topic": ["secret"]}),
            event(7, "m.room.message", ["secret"]),
            said(5),
            state=MEMBERS,
        ),
    )
    assert tables.texts == ["5"]
    assert "@eve:example.org" in caplog.text
    assert "secret" not in caplog.text


async def test_a_group_is_heard_but_not_addressed(run: Run) -> None:
    """A call, a reply to the bot and its threads are addressed; all else is marked as not."""
    tables = Tables()
    reply = {"m.relates_to": {"m.in_reply_to": {"event_id": "$own"}}}
    other = {"m.relates_to": {"m.in_reply_to": {"event_id": "$other"}}}
    inside = {"m.relates_to": {"rel_type": "m.thread", "event_id": "$thread"}}
    beside = {"m.relates_to": {"rel_type": "m.thread", "event_id": "$elsewhere"}}
    called = {"m.relates_to": {"rel_type": "m.thread", "event_id": "$2"}}
    await run(
        tables,
        synced(
            "t1",
            said(1, "nice"),
            said(2, "linn: start"),
            said(3, "a", more=reply),
            said(4, "b", more=other),
            said(5, "c", more=inside),
            said(6, "d", more=beside),
            said(7, "before the answer to the call", more=called),
            state=CREW,
        ),
    )
    heard = [(event.origin.addressed, event.origin.direct) for event in tables.taken]
    assert heard == [(flag, False) for flag in (False, True, True, False, True, False, True)]


async def test_a_reply_stands_in_the_thread_that_it_answers(run: Run) -> None:
    """Clients reply from the room itself; what was said to somebody else begins a thread anew."""
    tables = Tables()
    reply = {"m.relates_to": {"m.in_reply_to": {"event_id": "$own"}}}
    lines = (said(1, "1", more=reply), said(2, "1", sender="@bo:example.org", more=reply))
    await run(tables, synced("t1", *lines, state=CREW), allowed=["*:example.org"])
    assert [event.origin.thread_id for event in tables.taken] == ["$thread", None]
    assert all(event.origin.addressed for event in tables.taken)


async def test_people_talk_to_each_other_in_a_thread_of_the_bots(
    scripted: ScriptedServer, run: Run
) -> None:
    """Whoever is mentioned, replied to or called, and what who leads says to who began it."""
    tables = Tables()
    scripted.say("/event/$thread", json(**said(90, sender="@bo:example.org")))
    scripted.say("/event/$bos", json(**said(91, sender="@bo:example.org")))

    def inside(number: int, body: str, sender: str, **more: Any) -> dict[str, Any]:
        relation = {"rel_type": "m.thread", "event_id": "$thread"} | more.pop("answers", {})
        return said(number, body, sender, {"m.relates_to": relation} | more)

    def answers(event_id: str) -> dict[str, Any]:
        return {"answers": {"m.in_reply_to": {"event_id": event_id}}}

    bo, cy, bot = "@bo:example.org", "@cy:example.org", {"m.mentions": {"user_ids": [USER_ID]}}
    told = [
        (inside(1, "1", bo), False),
        (inside(2, "Cy, lunch?", bo), True),
        (inside(3, "1/8 looks good", cy), False),
        (inside(4, "1/8 looks good, Ada", cy), True),
        (inside(5, "look at the left edge", ADA), True),
        (inside(6, "linn: what is that?", ADA), False),
        (inside(7, "what is that? ", ADA, **bot), False),
        (inside(8, "nice", cy, **{"m.mentions": {"user_ids": [bo]}}), True),
        (inside(9, "nice", cy, **answers("$bos")), True),
        (inside(10, "1", cy, **answers("$own")), False),
        (inside(11, "1", cy, **answers("$unknown")), False),
    ]
    made = event(949, "m.room.create", {"room_version": "10"}, state_key="")
    levels = event(950, "m.room.power_levels", {"users": {ADA: 100}}, state_key="")
    synced_all = synced("t1", *(line for line, _ in told), state=[made, *CREW, levels])
    await run(tables, synced_all, allowed=["*:example.org"])
    heard = [(item.origin.event_id, item.origin.aside) for item in tables.taken]
    assert heard == [(line["event_id"], aside) for line, aside in told]
    assert tables.taken[3].origin.people == ("Ada",)
    assert scripted.asked_for("/event/$thread") == 1


async def test_the_correction_of_a_call_needs_no_second_call(
    scripted: ScriptedServer, run: Run
) -> None:
    """It belongs to the thread that the call began; one of a word to others stays theirs."""
    tables = Tables()
    scripted.say("/event/$1", json(**said(1, "linn: what if f/16")))
    scripted.say("/event/$2", json(**said(2, "nice")))

    def edit(number: int, target: str) -> dict[str, Any]:
        relation = {"rel_type": "m.replace", "event_id": target}
        new = {"msgtype": "m.text", "body": "card"}
        return said(number, more={"m.new_content": new, "m.relates_to": relation})

    lines = (said(1, "linn: what if f/16"), said(2, "nice"), edit(3, "$1"), edit(4, "$2"))
    await run(tables, synced("t1", *lines, state=CREW))
    assert [event.origin.addressed for event in tables.taken] == [True, False, True, False]


async def test_own_messages_are_noted_by_their_rows(run: Run) -> None:
    """The bot's own, readable or not, by its row; nobody else's, whatever it claims to be."""
    tables = Tables()
    row, claimed = {ROW_KEY: "row"}, {ROW_KEY: "claimed"}
    sealed = event(2, "m.room.encrypted", {"algorithm": "m.x", ROW_KEY: "sealed"}, USER_ID)
    mine = said(1, "mine", sender=USER_ID, more=row)
    await run(tables, synced("t1", mine, sealed, said(3, "theirs", more=claimed)))
    assert tables.seen == {"row": "$1", "sealed": "$2"}
    assert tables.texts == ["theirs"]


async def test_edits_and_withdrawals_look_up_what_they_name(
    scripted: ScriptedServer, run: Run
) -> None:
    """An edit stands where the original stands; only its sender edits; a withdrawal is theirs."""
    tables = Tables()
    inside = {"m.relates_to": {"rel_type": "m.thread", "event_id": "$thread"}}
    scripted.say("/event/$mine", json(**said(1, "f/1.1", more=inside)))
    scripted.say("/event/$theirs", json(**said(1, "f/8", sender="@bo:example.org")))
    scripted.say("/event/$flaky", page(502), json(**said(1)))
    scripted.say("/event/$gone", error(404, "M_NOT_FOUND"))

    def edit(number: int, target: str) -> dict[str, Any]:
        return said(
            number,
            more={
                "m.new_content": {"msgtype": "m.text", "body": target},
                "m.relates_to": {"rel_type": "m.replace", "event_id": target},
            },
        )

    await run(
        tables,
        synced(
            "t1",
            edit(2, "$mine"),
            edit(3, "$theirs"),
            edit(4, "$flaky"),
            edit(5, "$gone"),
            event(6, "m.room.redaction", {"redacts": "$theirs"}),
            event(7, "m.room.redaction", {"redacts": "$gone"}),
            state=CREW,
        ),
    )
    assert tables.texts == ["$mine", "$flaky", "$gone"]
    assert [event.origin.thread_id for event in tables.taken[:3]] == ["$thread", None, None]
    assert tables.taken[0].origin.addressed
    withdrawn = [event for event in tables.taken if isinstance(event, Withdrawn)]
    assert [event.origin.person_id for event in withdrawn] == ["@bo:example.org", ADA]


async def test_what_was_taken_back_is_not_waited_for(
    scripted: ScriptedServer, run: Run, account: Account
) -> None:
    """A sealed event that is empty, or withdrawn before its key came, is told to nobody."""
    tables = Tables()
    scripted.say("/event/$2", json(**event(2, "m.room.encrypted", {})))
    sealed = {"algorithm": "com.example.rot13", "ciphertext": "x"}
    await run(
        tables,
        synced(
            "t1",
            event(1, "m.room.encrypted", {}),
            event(2, "m.room.encrypted", sealed),
            state=MEMBERS,
        ),
        synced("t2", event(3, "m.room.redaction", {"redacts": "$2"})),
    )
    assert len(WaitingEvents(account.waiting_path)) == 0
    assert not [item for item in tables.taken if isinstance(item, OtherReceived)]


async def test_a_sealed_event_without_any_key_is_told_once(run: Run, account: Account) -> None:
    """Unreadable algorithms and lost keys end in one event for each person and room."""
    tables = Tables()
    megolm = {
        "algorithm": "m.megolm.v1.aes-sha2",
        "ciphertext": "x",
        "sender_key": "k",
        "device_id": "D",
        "session_id": "s",
    }
    foreign = {"algorithm": "com.example.rot13", "ciphertext": "x"}
    first = synced(
        "t1",
        event(1, "m.room.encrypted", megolm),
        event(2, "m.room.encrypted", foreign),
        event(3, "m.room.encrypted", megolm, "@eve:example.org"),
        state=MEMBERS,
    )
    await run(tables, first, synced("t2"), grace_s=0)
    (event_taken,) = tables.taken
    assert isinstance(event_taken, OtherReceived)
    assert (event_taken.what, event_taken.origin.event_id) == ("undecryptable", "$2")
    assert len(WaitingEvents(account.waiting_path)) == 0


async def test_invitations_are_tried_until_they_are_settled(
    scripted: ScriptedServer, run: Run
) -> None:
    """Passing failures are tried again at the next sync, final ones are not."""
    scripted.say("/join/!ok", page(502), hang_up, json(room_id="!ok"))
    scripted.say("/join/!no", error(403, "M_FORBIDDEN"))
    idle = [json(next_batch=f"t{number}") for number in range(4)]
    await run(Tables(), invited("!ok", ADA), invited("!no", ADA), *idle)
    assert (scripted.asked_for("/join/!ok"), scripted.asked_for("/join/!no")) == (3, 1)


async def test_an_invitation_that_never_works_is_given_up(
    scripted: ScriptedServer, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    """After some tries it rests until the next start."""
    monkeypatch.setattr("bot.matrix.chores._MOST_TRIES", 2)
    scripted.say("/join/!ok", page(502))
    idle = [json(next_batch=f"t{number}") for number in range(4)]
    await run(Tables(), invited("!ok", ADA), *idle)
    assert scripted.asked_for("/join/!ok") == 2
    scripted.say("/join/!ok", json(room_id="!ok"))
    for _ in range(2):
        await run(Tables(), *idle)
    assert scripted.asked_for("/join/!ok") == 3


async def test_a_stranger_is_not_joined(scripted: ScriptedServer, run: Run) -> None:
    """Not even a refusal is sent."""
    await run(Tables(), invited("!bad", "@eve:example.org"))
    assert not any("!bad" in path for _, path in scripted.asked)


async def test_a_stop_does_not_wait_for_the_poll(
    scripted: ScriptedServer, signed_in: AsyncClient, account: Account
) -> None:
    """Cancelling ends a long poll at once."""
    polling = asyncio.Event()

    async def hold(_: web.Request) -> web.StreamResponse:
        polling.set()
        await asyncio.sleep(30)
        return web.Response()

    scripted.say("/sync", hold)
    tables, policy = Tables(), Policy()
    states = RoomStates(signed_in, policy)
    receiver = Receiver(
        signed_in,
        RoomKeys(signed_in, ServerApi(signed_in)),
        RoomReader(signed_in, ServerApi(signed_in), policy, tables, lambda: NOW, states),
        WaitingEvents(account.waiting_path),
        Rooms(
            signed_in,
            ServerApi(signed_in),
            policy,
            tables,
            states,
            Chores(Troubles()),
            Entering(account.entering_path),
        ),
        tables,
        lambda: NOW,
    )
    running = asyncio.create_task(receiver.run())
    await polling.wait()
    running.cancel()
    with pytest.raises(asyncio.CancelledError):
        await asyncio.wait_for(running, 1)


async def test_taps_count_on_what_the_bot_said_to_that_person(run: Run) -> None:
    """A reaction or a vote on its own message stands in that message's thread; others do not."""

    def tap(number: int, target: str, key: str = "2", sender: str = ADA) -> dict[str, Any]:
        relation = {"rel_type": "m.annotation", "event_id": target, "key": key}
        return event(number, "m.reaction", {"m.relates_to": relation}, sender)

    def vote(number: int, target: str) -> dict[str, Any]:
        relation = {"rel_type": "m.reference", "event_id": target}
        content = {"m.relates_to": relation, "m.selections": ["1"]}
        return event(number, "m.poll.response", content)

    tables = Tables()
    await run(
        tables,
        synced(
            "t1",
            tap(1, "$own"),
            tap(2, "$of_others"),
            tap(3, "$own", sender="@bo:example.org"),
            tap(4, "$own", key="waves"),
            vote(5, "$own"),
            vote(6, "$of_others"),
            event(7, "m.reaction", {}),
            event(8, "org.matrix.msc3381.poll.start", {"body": "Tea?"}),
            event(9, "org.matrix.msc3381.poll.end", {"body": "closed"}),
            state=CREW,
        ),
        allowed=["*:example.org"],
    )
    assert [
        (tapped.text, tapped.replies_to, tapped.tapped, tapped.origin.thread_id)
        for tapped in tables.taken
        if isinstance(tapped, TextReceived)
    ] == [("2", "$own", True, "$thread"), ("1", "$own", True, "$thread")]
    assert len(tables.taken) == 2
