"""Which rooms the bot enters, follows and leaves, and who leads in them."""

from __future__ import annotations

import time
from collections.abc import Sequence
from typing import Any

import pytest
from nio import SyncResponse

from bot.matrix.rooms import Rooms
from tests.matrix.receiving import (
    ADA,
    CREW,
    MEMBERS,
    ROOM,
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
    Answer,
    ScriptedServer,
    error,
    hang_up,
    json,
    page,
)

BO = "@bo:example.org"
EVE = "@eve:elsewhere.example"
NEW = "!upgraded"
CY = "@cy:example.org"
IDLE = [json(next_batch=f"idle{number}") for number in range(3)]


def state(kind: str, content: dict[str, Any], sender: str = ADA, number: int = 800) -> Any:
    """A state event of which a room has one."""
    return event(number, kind, content, sender, state_key="")


def created(version: str, sender: str = ADA, **content: Any) -> Any:
    """A room's first event."""
    return state("m.room.create", {"room_version": version, **content}, sender, 700)


def tombstone(sender: str = ADA, replacement: str = NEW) -> Any:
    """A room's last one."""
    return state("m.room.tombstone", {"replacement_room": replacement}, sender, 899)


def room_sync(token: str, **rooms: Sequence[Any]) -> Answer:
    """What sync says of several rooms at once: the state and the words of each."""
    joined = {
        {"old": ROOM, "new": NEW}[name]: {
            "state": {"events": [item for item in events if "state_key" in item]},
            "timeline": {
                "events": [item for item in events if "state_key" not in item],
                "limited": False,
                "prev_batch": f"before-{token}",
            },
        }
        for name, events in rooms.items()
    }
    return json(next_batch=token, rooms={"join": joined})


def joins(scripted: ScriptedServer, room_id: str) -> int:
    """How often the bot tried to enter a room."""
    return sum(path.endswith(f"/join/{room_id}") for _, path in scripted.asked)


def left(scripted: ScriptedServer) -> list[str]:
    """Leaving and forgetting, in order."""
    ends = [path.rpartition("/rooms/")[2] for _, path in scripted.asked]
    return [end for end in ends if end.endswith(("/leave", "/forget"))]


REPLACING = [
    created("12", predecessor={"room_id": ROOM}),
    member(701, ADA, "join"),
    member(702, USER_ID, "join"),
]


# --- following ------------------------------------------------------------------------------


async def test_an_upgraded_room_is_followed_and_the_old_one_left(
    scripted: ScriptedServer, run: Run
) -> None:
    """Joined by the sender's server, moved before its events are handed on, then left."""
    scripted.say(f"/join/{NEW}", json(room_id=NEW))
    scripted.say("/messages", json(chunk=[said(601, "before"), *REPLACING[::-1]], start="a"))
    scripted.say("/leave", json())
    scripted.say("/forget", json())
    tables = Tables()
    await run(
        tables,
        room_sync("t1", old=[*MEMBERS, created("10"), said(1, "last words"), tombstone()]),
        room_sync("t2", new=[*REPLACING, said(602, "here we are")]),
        room_sync("t3", old=[said(2, "even later")]),
        *IDLE,
    )
    assert tables.moves == [(ROOM, NEW)]
    assert tables.texts == ["last words", "before", "here we are", "even later"]
    assert left(scripted) == [f"{ROOM}/leave", f"{ROOM}/forget"]
    (query,) = scripted.queries(f"/join/{NEW}")
    assert query == {"via": "example.org", "server_name": "example.org"}


async def test_a_room_that_somebody_else_replaced_is_entered_by_invitation(
    scripted: ScriptedServer, run: Run
) -> None:
    """A stranger with power leads the bot nowhere; somebody allowed may ask it over."""
    scripted.say(f"/join/{NEW}", json(room_id=NEW))
    scripted.say("/messages", json(chunk=[], start="a"))
    ended = room_sync("t1", old=[*CREW, member(905, EVE, "join"), tombstone(EVE)])
    tables = Tables()
    await run(tables, ended, *IDLE)
    assert (joins(scripted, NEW), left(scripted)) == (0, [])
    asked = invited(NEW, BO)
    await run(
        tables,
        ended,
        asked,
        room_sync("t3", new=[*REPLACING, said(601)]),
        *IDLE,
        allowed=(ADA, BO),
        leaders=(ADA,),  # Bo may bring the bot into no new group; this one is the old one
    )
    assert (joins(scripted, NEW), tables.moves) == (1, [(ROOM, NEW)])


@pytest.mark.parametrize(
    ("claim", "ended"),
    [
        ({}, tombstone()),
        ({"predecessor": {"room_id": "!another"}}, tombstone()),
        ({"predecessor": {"room_id": ROOM}}, tombstone(replacement="!another")),
        ({"predecessor": {"room_id": ROOM}}, said(1)),
        ({"predecessor": {"room_id": NEW}}, tombstone()),
        ({"predecessor": ROOM}, tombstone()),
    ],
    ids=["no claim", "claims another", "other heir", "no end", "itself", "not formed"],
)
async def test_a_room_that_only_one_side_names_moves_nothing(
    scripted: ScriptedServer, run: Run, claim: dict[str, Any], ended: Any
) -> None:
    """Anybody can make a room that claims to follow another, or end one at somebody else's."""
    scripted.say("/join/!another", error(403, "M_FORBIDDEN"))
    tables = Tables()
    people = [member(701, ADA, "join"), member(702, USER_ID, "join")]
    await run(
        tables, room_sync("t1", old=[*MEMBERS, ended], new=[created("12", **claim), *people]), *IDLE
    )
    assert (tables.moves, left(scripted)) == ([], [])


async def test_a_tombstone_without_a_room_is_nothing(scripted: ScriptedServer, run: Run) -> None:
    """A room that is closed for good is stayed in while somebody is there."""
    await run(Tables(), room_sync("t1", old=[*MEMBERS, tombstone(replacement="")]), *IDLE)
    assert left(scripted) == []
    assert not any("/join/" in path for _, path in scripted.asked)


async def test_a_restart_in_the_midst_of_an_upgrade_ends_it(
    scripted: ScriptedServer, run: Run
) -> None:
    """The first sync shows both rooms: what is stored moves (again), then the old one is left."""
    scripted.say("/messages", json(chunk=[], start="a"))
    scripted.say("/leave", page(502), json())
    scripted.say("/forget", error(400, "M_UNKNOWN"))
    tables = Tables()
    both = room_sync("t1", old=[*MEMBERS, tombstone()], new=[*REPLACING, said(601)])
    await run(tables, both, *IDLE)
    assert tables.moves == [(ROOM, NEW)]
    assert left(scripted) == [f"{ROOM}/leave", f"{ROOM}/leave", f"{ROOM}/forget"]
    assert not any("/join/" in path for _, path in scripted.asked)


# --- entering -------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("inviter", "leaders", "content", "entered"),
    [
        (ADA, (), {}, 1),
        (BO, (), {}, 1),
        (EVE, (), {}, 0),
        (EVE, (), {"is_direct": True}, 0),
        (ADA, (ADA,), {}, 1),
        (BO, (ADA,), {}, 0),
        (BO, (ADA,), {"is_direct": False}, 0),
        (BO, (ADA,), {"is_direct": "yes"}, 0),
        (BO, (ADA,), {"is_direct": True}, 1),
    ],
)
async def test_who_brings_the_bot_where(
    scripted: ScriptedServer,
    run: Run,
    inviter: str,
    leaders: Sequence[str],
    content: dict[str, Any],
    entered: int,
) -> None:
    """Anybody allowed, where no leaders are named; else leaders, and the others for themselves."""
    scripted.say("/join/!there", json(room_id="!there"))
    await run(
        Tables(),
        invited("!there", inviter, **content),
        *IDLE,
        allowed=(ADA, BO),
        leaders=leaders,
    )
    assert joins(scripted, "!there") == entered
    assert not any("/leave" in path for _, path in scripted.asked)


@pytest.mark.parametrize(("members", "leaves"), [(CREW, True), (MEMBERS, False)])
async def test_a_direct_room_that_is_none_is_left_at_once(
    scripted: ScriptedServer, run: Run, members: list[Any], leaves: bool
) -> None:
    """Who may not bring the bot into groups cannot do it by calling a group a direct room."""
    scripted.say(f"/join/{ROOM}", json(room_id=ROOM))
    scripted.say("/leave", json())
    scripted.say("/forget", json())
    await run(
        Tables(),
        invited(ROOM, BO, is_direct=True),
        synced("t2", state=members),
        synced("t3", said(1)),
        allowed=(ADA, BO),
        leaders=(ADA,),
    )
    assert bool(left(scripted)) is leaves


# --- leaving --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("before", "change", "leaves"),
    [
        (MEMBERS, member(2, ADA, "leave", "join"), True),
        (MEMBERS, member(2, ADA, "ban", "join"), True),
        (CREW, member(2, ADA, "leave", "join"), True),
        (CREW, member(2, "@cy:example.org", "leave", "join"), False),
        ([member(900, ADA, "invite"), member(901, USER_ID, "join")], said(3, sender=EVE), False),
        ([member(901, USER_ID, "join"), member(902, EVE, "join")], said(3, sender=EVE), True),
        ([member(901, USER_ID, "join")], said(3, sender=EVE), True),
    ],
    ids=["left", "banned", "left others", "another left", "invited", "strangers", "alone"],
)
async def test_a_room_without_anybody_allowed_is_left_and_forgotten(
    scripted: ScriptedServer, run: Run, before: list[Any], change: Any, leaves: bool
) -> None:
    """Never while an allowed person is there or asked to come."""
    gone = [item for item in before if item.get("state_key") != change.get("state_key")]
    scripted.say("/members", json(chunk=[*gone, change]))
    scripted.say("/leave", json())
    scripted.say("/forget", json())
    await run(Tables(), synced("t1", state=before), synced("t2", change), *IDLE)
    assert left(scripted) == ([f"{ROOM}/leave", f"{ROOM}/forget"] if leaves else [])


async def test_the_server_is_asked_before_a_room_is_left(
    scripted: ScriptedServer, run: Run
) -> None:
    """A gap in what sync brought costs one question, not a room with somebody in it."""
    scripted.say("/members", hang_up, hang_up, json(chunk=[*MEMBERS, "not formed"]))
    await run(
        Tables(),
        synced("t1", state=[member(901, USER_ID, "join")]),
        synced("t2", said(1)),
        synced("t3", said(2)),
    )
    assert left(scripted) == []
    assert 1 <= scripted.asked_for("/members") <= 3


async def test_with_nobody_allowed_at_all_the_bot_stays(scripted: ScriptedServer, run: Run) -> None:
    """An empty list is more likely a slip than a wish, and there is no way back into rooms."""
    await run(Tables(), synced("t1", said(1), state=MEMBERS), *IDLE, allowed=())
    assert left(scripted) == []
    assert scripted.asked_for("/members") == 0


async def test_a_room_that_the_bot_was_thrown_out_of_is_forgotten(
    scripted: ScriptedServer, run: Run
) -> None:
    """And when it is brought back by nobody allowed, it leaves."""
    scripted.say("/members", json(chunk=[]))
    scripted.say("/leave", json())
    scripted.say("/forget", json())
    kicked = json(next_batch="t2", rooms={"leave": {ROOM: {"timeline": {"events": []}}}})
    back = synced("t3", state=[member(901, USER_ID, "join"), member(902, EVE, "join")])
    await run(Tables(), synced("t1", state=MEMBERS), kicked, back, *IDLE)
    assert left(scripted) == [f"{ROOM}/forget", f"{ROOM}/leave", f"{ROOM}/forget"]


async def test_a_room_with_very_many_people_costs_no_more_than_its_members_once(
    scripted: ScriptedServer, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Ten thousand strangers: each later sync takes as long as in a small room.

    The bound is on our own part: nio's reading of the list is the price of encryption.
    """
    many = [member(n, f"@p{n}:crowd.example", "join") for n in range(10_000, 20_000)]
    spent: list[float] = []
    note = Rooms.note

    def timed(self: Rooms, response: SyncResponse) -> None:
        begin = time.perf_counter()
        note(self, response)
        spent.append(time.perf_counter() - begin)

    monkeypatch.setattr(Rooms, "note", timed)
    await run(
        Tables(),
        synced("t1", state=[*MEMBERS, *many]),
        *(synced(f"t{n}", member(n, f"@p{10_000 + n}:crowd.example", "leave")) for n in (2, 3)),
    )
    assert spent[0] < 1.0  # seconds, for 10,000 people; some 0.05 s where nothing else runs
    assert max(spent[1:]) < 0.01
    assert scripted.asked_for("/members") == 0


# --- leading --------------------------------------------------------------------------------


LEVELS = {"users": {ADA: 100, BO: 50, "@cy:example.org": 49}, "users_default": 0}


@pytest.mark.parametrize(
    ("version", "creator", "more", "levels", "led_by", "taught_by"),
    [
        ("10", ADA, {}, LEVELS, {ADA, BO}, {ADA}),
        ("10", CY, {"additional_creators": [BO]}, {"users": {ADA: 100}}, {ADA}, set()),
        ("12", CY, {}, {"users": {BO: 50}}, {CY, BO}, {CY}),
        ("12", EVE, {"additional_creators": [ADA]}, {"users": {}}, {ADA}, set()),
        ("12", EVE, {"additional_creators": [7, {}]}, {"users": {}}, set(), set()),
        ("12", EVE, {"additional_creators": ADA}, {"users": {}}, set(), set()),
        ("odd", ADA, {}, {"users": {}}, set(), set()),
        ("12", ADA, {}, {"users": {}, "users_default": 50}, {ADA, BO, CY}, {ADA}),
    ],
)
async def test_who_leads_a_group(
    run: Run,
    version: str,
    creator: str,
    more: dict[str, Any],
    levels: Any,
    led_by: set[str],
    taught_by: set[str],
) -> None:
    """Moderators by their level; from version 12 on creators, who stand in no list of levels.

    Where everybody has a leader's power only who made the room teaches in it.
    """
    tables = Tables()
    await run(
        tables,
        synced(
            "t1",
            *(said(n, sender=who) for n, who in enumerate((ADA, BO, CY))),
            state=[
                created(version, creator, **more),
                *CREW,
                state("m.room.power_levels", levels),
            ],
        ),
        allowed=["*:example.org"],
    )
    assert {item.origin.person_id for item in tables.taken if item.origin.leader} == led_by
    assert {item.origin.person_id for item in tables.taken if item.origin.teaches} == taught_by
    assert len(tables.taken) == 3


@pytest.mark.parametrize(
    ("users", "taught_by"),
    [
        ({ADA: 100, BO: 100}, {ADA, BO}),
        ({ADA: 100, BO: 99}, {ADA}),
        ({ADA: 100, BO: 100, CY: 100}, {ADA}),
    ],
)
async def test_teaching_is_handed_over(
    run: Run, users: dict[str, int], taught_by: set[str]
) -> None:
    """Who made the room gives all its power to one or two; where most have it, it says nothing."""
    tables = Tables()
    levels = state("m.room.power_levels", {"users": users}) | {"sender": ADA}
    crowd = [*CREW, member(904, "@di:example.org", "join")]
    lines = (said(n, sender=who) for n, who in enumerate((ADA, BO, CY)))
    await run(
        tables,
        synced("t1", *lines, state=[created("10", ADA), *crowd, levels]),
        allowed=["*:example.org"],
    )
    assert {item.origin.person_id for item in tables.taken if item.origin.teaches} == taught_by


async def test_in_a_direct_room_only_named_leaders_lead(run: Run) -> None:
    """Everybody made their own direct room; that makes nobody a teacher."""
    members = [created("12"), *MEMBERS]
    for leaders in ((), (ADA,)):
        tables = Tables()
        await run(tables, synced("t1", said(1), state=members), leaders=leaders)
        assert [item.origin.leader for item in tables.taken] == [bool(leaders)]
        assert [item.origin.teaches for item in tables.taken] == [bool(leaders)]


async def test_a_bug_over_one_room_costs_the_others_nothing(
    scripted: ScriptedServer, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What breaks over an invitation is logged; the next one is accepted all the same."""
    enter = Rooms._enter

    async def breaking(self: Rooms, room_id: str, by: str) -> None:
        if room_id == "!odd":
            raise KeyError("a bug")
        await enter(self, room_id, by)

    monkeypatch.setattr(Rooms, "_enter", breaking)
    scripted.say("/join/!fine", json(room_id="!fine"))
    await run(Tables(), invited("!odd", ADA), invited("!fine", ADA), *IDLE)
    assert (joins(scripted, "!odd"), joins(scripted, "!fine")) == (0, 1)
