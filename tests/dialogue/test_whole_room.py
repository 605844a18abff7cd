"""A group room with a thread for each person: danger there, names, and talk among people."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.dialogue.actions import Action, Say
from bot.dialogue.context import Context
from bot.dialogue.danger import DangerKind, Level
from bot.dialogue.danger.people_here import danger_in, with_friends
from bot.dialogue.engine import handle
from bot.dialogue.events import Event, Origin, OtherReceived, TextReceived
from bot.store.rows import conversation_key
from tests.dialogue.player import START

TOLD = "12 m tall, 18 m away, rock at 1.5 m, full frame 24-70"


class Classroom:
    """A group room in which each person writes in a thread of their own."""

    def __init__(self) -> None:
        self.contexts: dict[object, Context] = {}
        self.rooms: dict[str, Context] = {}
        self.minutes = 0

    def _origin(self, person: str, more: dict[str, object]) -> Origin:
        minutes = getattr(self, "minutes", 0)
        place = {
            "event_id": f"$event{minutes}",
            "room_id": "!workshop",
            "person_id": f"@{person}:example.org",
            "thread_id": f"${person}",
            "direct": False,
            "leader": person == "fern",
            "teaches": person == "fern",
            "sent_at": START + timedelta(minutes=minutes),
        }
        return Origin.model_validate(place | more)

    def take(self, event: Event) -> tuple[Action, ...]:
        """What follows from an event."""
        key = conversation_key(event.origin)
        context = self.contexts.get(key) or Context.fresh(event.origin)
        if before := self.rooms.get(event.origin.room_id):
            context = context.model_copy(update={"room": before.room})
        context, actions = handle(context, event, event.origin.sent_at)
        self.contexts[key] = self.rooms[event.origin.room_id] = context
        return actions

    def say(self, person: str, text: str, **more: object) -> str:
        """What a person writes there, and what is answered; "" for nothing."""
        self.minutes += 1
        event = TextReceived(origin=self._origin(person, more), text=text)
        said = [action.body for action in self.take(event) if isinstance(action, Say)]
        return "\n".join(said)

    def voice(self, person: str, **more: object) -> tuple[Action, ...]:
        """A voice message."""
        self.minutes += 1
        return self.take(OtherReceived(origin=self._origin(person, more), what="voice"))


@pytest.fixture
def classroom() -> Classroom:
    """Two students on their walks."""
    room = Classroom()
    for person in ("ben", "mara"):
        room.say(person, TOLD)
    return room


SLIPPED = {"people": ("Mara",), "addressed": False, "thread_id": None}


# names


@pytest.mark.parametrize(
    ("text", "language", "kind"),
    [
        ("Mara slipped in", "en", DangerKind.IN_WATER),
        ("@mara fell in", "en", DangerKind.IN_WATER),
        ("Mara ist ins Wasser gefallen", "de", DangerKind.IN_WATER),
        ("Mara se ha caído al agua", "es", DangerKind.IN_WATER),
        ("has anyone seen Mara?", "en", DangerKind.MISSING),
    ],
)
def test_people_of_the_room_are_no_unknown_words(
    text: str, language: str, kind: DangerKind
) -> None:
    """A name that stands for a person is read as one."""
    danger = danger_in(with_friends(text, ("Mara", "mara"), language), text)
    assert danger is not None
    assert (danger.kind, danger.level) == (kind, Level.EMERGENCY)


@pytest.mark.parametrize("text", ["Mara slipped in a polariser", "Mara fell in love with it"])
def test_a_name_alone_is_no_danger(text: str) -> None:
    """What is harmless of a friend is harmless of somebody with a name."""
    assert danger_in(with_friends(text, ("Mara",), "en"), text) is None


def test_a_danger_read_as_typed_stays() -> None:
    """Names are read anew only where nothing certain was heard."""
    danger = danger_in(
        with_friends("Mara broke her ankle", ("Mara",), "en"), "Mara broke her ankle"
    )
    assert danger is not None
    assert danger.kind is DangerKind.HURT
    assert with_friends("Mara", (), "en") == "Mara"


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("Tom slipped in", True),
        ("Mara ist ins Wasser gefallen", True),
        ("Brais ha caído al río", True),
        ("Tom fell behind", False),
        ("Tom broke the tripod", False),
        ("lunch?", False),
    ],
)
def test_somebody_who_is_not_in_the_room_is_asked_about(
    classroom: Classroom, text: str, *, asked: bool
) -> None:
    """A name that nobody there has says too little to alarm, and too much to stay silent."""
    said = classroom.say("ben", text, addressed=False, thread_id=None)
    assert bool(said) is asked
    if asked:
        assert "told of in this room" not in classroom.say("mara", "where am i")
        root = f"$event{classroom.minutes - 1}"
        assert "112" in classroom.say("ben", "2", thread_id=root)
        assert "told of in this room" in classroom.say("mara", "where am i")


# an emergency is everybody's


def test_an_emergency_holds_every_walk_of_the_room(classroom: Classroom) -> None:
    """No settings for anybody: neither for who told of it nor for others, in any thread."""
    assert "Call the emergency number" in classroom.say("ben", "Mara slipped in", **SLIPPED)
    for person in ("ben", "mara", "uli"):
        said = classroom.say(person, "1")
        assert said.startswith("An emergency was told of in this room"), person
        assert "Are all safe now?" in said
        assert "f/" not in said


def test_the_leader_ends_it_for_all(classroom: Classroom) -> None:
    """In passing too; then each walk stands where it stood."""
    classroom.say("ben", "Mara slipped in", **SLIPPED)
    assert "told of in this room" in classroom.say("mara", "where am i")
    leaders = {"addressed": False, "thread_id": None}
    assert classroom.say("fern", "everyone is ok, she is out and warm", **leaders)
    assert "composition" in classroom.say("mara", "where am i")
    assert "composition" in classroom.say("ben", "where am i")


def test_who_told_of_it_ends_it_too(classroom: Classroom) -> None:
    """In the thread where it was told; `back` takes that back for all."""
    classroom.say("ben", "Mara slipped in", people=("Mara",))
    classroom.say("mara", "1")
    assert "Warm, dry" in classroom.say("ben", "all are safe")
    assert "composition" in classroom.say("mara", "where am i")
    classroom.say("ben", "back")
    assert "told of in this room" in classroom.say("mara", "1")


def test_a_number_of_the_walk_ends_nothing(classroom: Classroom) -> None:
    """Who leads has a walk, too: its answer is none of "are all safe?"."""
    classroom.say("fern", TOLD)
    classroom.say("ben", "Mara slipped in", **SLIPPED)
    assert "told of in this room" in classroom.say("fern", "2")
    assert "Warm, dry" in classroom.say("fern", "2")


def test_a_bystander_ends_nothing(classroom: Classroom) -> None:
    """Who heard of it is asked like all; the walks wait for who knows."""
    classroom.say("ben", "Mara slipped in", **SLIPPED)
    assert "told of in this room" in classroom.say("uli", "1")
    assert "who leads" in classroom.say("uli", "2")
    overheard = {"addressed": False, "thread_id": None}
    assert not classroom.say("uli", "all are safe", **overheard)
    assert "told of in this room" in classroom.say("uli", "1 s at f/8?")
    assert "An emergency" in classroom.say("uli", "hello")


def test_talk_beside_an_emergency_leaves_no_trace(classroom: Classroom) -> None:
    """Who says something to others is held only once they speak to Linn."""
    classroom.say("ben", "Mara slipped in", **SLIPPED)
    assert not classroom.say("uli", "lunch?", addressed=False, thread_id=None)
    assert classroom.rooms["!workshop"].conversation.emergency is None
    assert not classroom.voice("uli", addressed=False, thread_id="$voice")


def test_a_flood_is_told_of_with_what_protects(classroom: Classroom) -> None:
    """Leaving may not wait for who told of it."""
    classroom.say("ben", "the water is rising fast and brown, we are on the rocks")
    said = classroom.say("mara", "1")
    assert said.startswith("An emergency was told of in this room")
    assert "Higher still" in said


def test_what_nobody_ends_holds_others_for_three_hours(classroom: Classroom) -> None:
    """Who told of it stays held; a walk of the others goes on."""
    classroom.say("ben", "Mara slipped in", people=("Mara",))
    classroom.say("mara", "1")
    classroom.minutes += 200
    assert "told of in this room" not in classroom.say("mara", "where am i")
    assert "Are all safe" in classroom.say("ben", "where am i")


def test_a_retraction_lets_all_go(classroom: Classroom) -> None:
    """An edit of the message that told of it ends it for the room."""
    classroom.say("ben", "my friend slipped in")
    told = f"$event{classroom.minutes}"
    classroom.say("mara", "1")
    classroom.minutes += 1
    event = TextReceived(
        origin=classroom._origin("ben", {}), text="my friend slipped by", corrects=told
    )
    assert classroom.take(event)
    assert "composition" in classroom.say("mara", "where am i")


def test_another_room_is_not_held(classroom: Classroom) -> None:
    """A direct room keeps its own emergencies, and hears of none."""
    classroom.say("ben", "my friend slipped in", direct=True, room_id="!direct", thread_id=None)
    assert "composition" in classroom.say("mara", "where am i")


# talk among people in a thread of the bot's


def test_what_is_said_to_others_is_not_answered(classroom: Classroom) -> None:
    """Facts, questions and voices among people leave everything as it is."""
    for text in ("1/8 looks nice", "look at the left edge, there is a twig", "thanks"):
        assert not classroom.say("ben", text, aside=True), text
    assert not classroom.voice("ben", aside=True)
    assert "composition" in classroom.say("ben", "where am i")


def test_danger_of_any_kind_is_heard_among_people(classroom: Classroom) -> None:
    """In a thread of the bot's not emergencies alone; and what closes a place opens it, too."""
    said = classroom.say("ben", "I'll climb up to the lip for it", aside=True)
    assert said
    assert "f/" not in said
    assert classroom.say("ben", "nobody is out there", aside=True)
