"""Groups: mixed cameras, other people's kit, and what a leader tells for everybody."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.dialogue.actions import Say
from bot.dialogue.context import Context
from bot.dialogue.engine import handle
from bot.dialogue.events import Origin, TextReceived
from bot.dialogue.meaning import group
from bot.store.rows import conversation_key
from tests.dialogue.player import START, Player
from tests.dialogue.walked import TOLD, walked


@pytest.mark.parametrize(
    ("text", "mixed"),
    [
        ("we are eight with mixed cameras", True),
        ("I teach eight students, all with different cameras", True),
        ("three full frame, two aps-c, two m43 and a phone", True),
        ("which settings for the whole group?", True),
        ("what do I tell my students?", True),
        ("wir sind acht mit verschiedenen Kameras", True),
        ("was sage ich den Teilnehmern?", True),
        ("somos ocho con cámaras distintas", True),
        ("¿qué les digo a mis alumnos?", True),
        ("i have an aps-c and a full frame", False),
        ("full frame, 24-70", False),
        ("my students are late", False),
    ],
)
def test_a_mixed_group_is_heard(text: str, *, mixed: bool) -> None:
    """Who tells of a group of cameras, or asks for one line for all."""
    assert group.is_mixed(text) is mixed


def test_one_line_works_for_all() -> None:
    """The time is everybody's; each format has its own f-number and focal length of one view."""
    player = walked()
    (message,) = player.say("we are eight with mixed cameras")
    first, view, question = message.body.split("\n")
    # f/13 on 36 mm; ÷ 1.53 and ÷ 2 (crop factors by the diagonal), on the marked thirds.
    assert first.startswith("All keep 1/8 s")
    assert "f/13 full frame, f/8 APS-C, f/6.3 four thirds" in first
    assert "27 mm full frame" in view
    assert "13 mm four thirds" in view
    assert question.startswith("Does the main water blink?")
    assert player.say("why")[0].body.startswith("Phones")


def test_a_phone_is_no_measure_of_depth() -> None:
    """Who teaches with a phone gives the others the f-number of the depth."""
    (message,) = walked(told="12 m tall, 30 m away, rock at 1.5 m, phone").say("and on full frame?")
    assert "f/1.8" not in message.body
    assert message.body.startswith("Full frame: f/")


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("ben shoots m43 with 12-40", "group.one"),
        ("Lena: aps-c, 18-55", "group.one"),
        ("student 2 has a canon with 18-150", "group.some"),
        ("tom has a phone", "group.phone"),
        ("lena hat eine APS-C Kamera", "group.one"),
        ("and on aps-c?", "group.one"),
        ("what does that mean for a phone", "group.phones"),
        ("translate the settings for aps-c and m43", "asked.group"),
    ],
)
def test_what_others_carry_stays_theirs(text: str, key: str) -> None:
    """Another camera gets its own numbers; kit, walk and question of who writes stay."""
    player = walked()
    assert player.context is not None
    before = player.context
    (message,) = player.say(text)
    assert key in message.keys
    assert player.context.person.kit == before.person.kit
    assert player.context.conversation.walk is not None
    assert before.conversation.walk is not None
    assert player.context.conversation.walk.given == before.conversation.walk.given
    assert player.context.conversation.question is not None


def test_a_format_beside_a_fall_is_the_persons_own() -> None:
    """Measures beside a format tell of a walk, not of a translation."""
    (message,) = Player().say("settings for aps-c, 12 m tall, 18 m away")
    assert not any(key.startswith("group.") for key in message.keys)


@pytest.mark.parametrize(
    "text",
    ["my camera: aps-c, 18-55", "camera: aps-c", "it has a 24-70", "i have m43", "nikon has aps-c"],
)
def test_own_kit_is_nobody_elses(text: str) -> None:
    """Things have no names of people."""
    assert group.someone(text) is None


def test_somebody_without_kit_is_left_to_the_rest() -> None:
    """A name beside anything else than kit is no camera to reckon for."""
    (message,) = walked().say("ben has 3 full bags of chips")
    assert not any(key.startswith("group.") for key in message.keys)


# in a group room


class Workshop:
    """A group room with one thread; each person's context lies under its own key."""

    def __init__(self) -> None:
        self.contexts: dict[object, Context] = {}
        self.room: Context | None = None
        self._count = 0

    def say(self, person: str, text: str, *, leader: bool = False) -> Say:
        """What a person writes there, and the answer."""
        self._count += 1
        origin = Origin(
            event_id=f"$event{self._count}",
            room_id="!workshop",
            person_id=f"@{person}:example.org",
            thread_id="$thread",
            direct=False,
            leader=leader,
            teaches=leader,
            sent_at=START + timedelta(minutes=self._count),
        )
        key = conversation_key(origin)
        context = self.contexts.get(key) or Context.fresh(origin)
        if self.room is not None:
            context = context.model_copy(update={"room": self.room.room})
        event = TextReceived(origin=origin, text=text)
        context, actions = handle(context, event, origin.sent_at)
        self.contexts[key] = self.room = context
        (said,) = (action for action in actions if isinstance(action, Say))
        return said


def test_what_a_student_tells_is_the_students() -> None:
    """In one thread the teacher's walk keeps its camera whatever a student tells of theirs."""
    workshop = Workshop()
    for line in (TOLD, "1", "1"):
        workshop.say("fern", line, leader=True)
    workshop.say("ash", "aps-c, 18-55")
    where = workshop.say("fern", "where am i", leader=True)
    assert "f/13" in where.body
    formats = [one.person.kit.camera_format for one in workshop.contexts.values()]
    assert formats == ["full frame", "aps-c"]


def test_the_fall_of_the_leader_is_everybodys() -> None:
    """A student tells only the camera: fall, distance and look were told for all."""
    workshop = Workshop()
    workshop.say("fern", "12 m tall, 18 m away, silky, full frame 24-70", leader=True)
    said = workshop.say("ash", "m43 with 12-40, rock at 1.5 m")
    assert said.body.startswith("13 mm (26 as full frame)")
    workshop.say("ash", "1")
    base = workshop.say("ash", "1")
    assert "base.settings" in base.keys
    look = workshop.say("ash", "why")
    assert "Silky" in look.body or "16 %" in look.body or "%" in look.body


def test_a_students_numbers_move_nobody_else() -> None:
    """What is told for all is the leader's; a new walk of the leader begins without it."""
    workshop = Workshop()
    workshop.say("fern", TOLD, leader=True)
    workshop.say("ash", "30 m tall, 40 m away")
    assert workshop.room is not None
    assert workshop.room.room.facts.fall_height_m == 12
    workshop.say("fern", "start", leader=True)
    workshop.say("fern", "2", leader=True)
    assert workshop.room.room.facts.fall_height_m is None


# who teaches asks for one line, an exercise, an evening's round


def test_crops_among_other_cameras() -> None:
    """Two full frame, two crop: counted among others a crop is APS-C."""
    told = "I teach six: two full frame, two crop, one four thirds and a phone"
    assert group.formats_of(told) == ("full frame", "aps-c", "four thirds", "phone")
    assert group.formats_of("I crop later") == ()


@pytest.mark.parametrize(
    ("text", "key", "words"),
    [
        ("I want everybody to get threads. one line I can read out?", "asked.group", "All keep"),
        ("give them an exercise for the next half hour", "asked.exercise", "1/15, 1/8, 1/4"),
        (
            "how do we do the review tonight, six pictures, one hour",
            "asked.group_review",
            "6 pictures: 24 min",
        ),
        ("how long does a critique take?", "asked.group_review", "8 pictures: 32 min"),
        ("how long is a review of 12 photos", "asked.group_review", "12 pictures: 48 min"),
    ],
)
def test_what_a_teacher_asks(text: str, key: str, words: str) -> None:
    """Four minutes a picture (common practice); tasks from dry ground."""
    (said,) = walked().say(text)
    assert key in said.keys
    assert words in said.body
