"""Who leads a group asks how far the others are."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.dialogue import company
from bot.dialogue.actions import Say
from bot.dialogue.company import Talk
from bot.dialogue.context import Context, Conversation, Emergency, Room
from bot.dialogue.engine import handle
from bot.dialogue.events import Origin, OtherReceived, TextReceived
from bot.dialogue.kept import Measured
from bot.dialogue.meaning import roster
from bot.dialogue.states import State
from bot.dialogue.terms import Companion, Terms
from bot.dialogue.walk_state import Question, Walk
from tests.dialogue.player import START


@pytest.mark.parametrize(
    "text",
    [
        "who is stuck?",
        "Who's waiting",
        "who is still stuck",
        "where is everybody?",
        "where are they all",
        "how far are the others?",
        "how is the group doing?",
        "who hasn't kept a frame yet?",
        "who has no picture yet",
        "who has not started",
        "who needs help?",
        "who needs me most",
        "ok, who is where?",
        "roster",
        "wer hängt fest?",
        "wer steckt gerade fest",
        "wer wartet noch?",
        "wo sind alle?",
        "wie weit sind die anderen?",
        "wer braucht Hilfe?",
        "wer hat noch kein Bild?",
        "¿quién está atascado?",
        "¿quiénes esperan?",
        "¿dónde están todos?",
        "¿cómo va el grupo?",
        "¿quién necesita ayuda?",
        "¿quién no ha guardado una foto?",
    ],
)
def test_how_the_others_are_is_asked(text: str) -> None:
    """In the words of three languages."""
    assert roster.asks(text)


@pytest.mark.parametrize(
    "text",
    [
        "I am stuck",
        "who is stuck in the water",
        "where is the sun",
        "where am i",
        "who needs an ND?",
        "wer hat ein Stativ?",
        "how are the whites",
        "which one is done",
    ],
)
def test_other_questions_are_not_that(text: str) -> None:
    """Of whole messages alone."""
    assert not roster.asks(text)


def _origin(**more: object) -> Origin:
    place = {
        "event_id": "$1",
        "room_id": "!workshop",
        "person_id": "@fern:example.org",
        "thread_id": "$t",
        "direct": False,
        "leader": True,
        "sent_at": START,
    }
    return Origin.model_validate(place | more)


def _asked(*others: Companion, **more: object) -> str:
    origin = _origin(**more)
    context = Context.fresh(origin).model_copy(update={"terms": Terms(company=others)})
    _, actions = handle(context, TextReceived(origin=origin, text="who is stuck?"), START)
    (said,) = (action for action in actions if isinstance(action, Say))
    return said.body


def _ago(minutes: float) -> dict[str, object]:
    return {"waits_since": START - timedelta(minutes=minutes)}


def test_who_waits_comes_first_then_who_is_where() -> None:
    """The longest first, three of them; then the steps, who has not begun, who has no frame."""
    said = _asked(
        Companion.model_validate({"name": "ben", "step": "highlights"} | _ago(14)),
        Companion.model_validate({"name": "heike", "step": "lens"} | _ago(25)),
        Companion.model_validate({"name": "mara", "step": "keep", "kept": True} | _ago(1)),
        Companion.model_validate({"name": "rio", "step": "lens", "times": 3} | _ago(2)),
        Companion.model_validate({"name": "sam", "step": "base"} | _ago(3)),
        Companion(name="tove"),
        Companion.model_validate({"name": "uli", "step": "base"} | _ago(11)),
    )
    first, *rest = said.split("\n")
    assert first == (
        "Waiting longest: heike 25 min (the lens), ben 14 min (the highlights), "
        "uli 11 min (the base settings)."
    )
    assert rest == [
        "The lens: heike, rio.",
        "The base settings: sam, uli.",
        "The highlights: ben.",
        "Keeping: mara.",
        "Not begun: tove.",
        "No frame kept yet: ben, heike, rio, sam, uli.",
    ]


def test_nobody_waits() -> None:
    """Who answered just now, and who has no walk, wait for nothing."""
    asked = Companion.model_validate({"name": "ben", "step": "base"} | _ago(2))
    idle = Companion.model_validate({"name": "uli"} | _ago(60))
    said = _asked(asked, idle, Companion(name="sam", step="keep", kept=True))
    assert said.startswith("Nobody has waited longer than 10 min.")
    assert "Not begun: uli." in said


def test_an_emergency_comes_before_all() -> None:
    """Who told of one that is not said to be over."""
    said = _asked(Companion(name="ben", step="lens", emergency=True))
    assert said.startswith("Emergency told, not said to be over: ben.")


def test_names_are_no_markup_and_not_endless() -> None:
    """People choose the names that they show."""
    said = _asked(Companion(name="`help me`\nnow" + "x" * 90, step="lens"))
    assert "`" not in said
    assert "x" * 20 not in said


def test_who_is_alone_or_does_not_lead_hears_that() -> None:
    """Only who leads, and only in the group room."""
    assert _asked() == "Nobody else is here."
    assert _asked(leader=False) == "That I tell who leads here."
    assert _asked(direct=True, thread_id=None).startswith("Ask me that in the group room")


# what is known of the others


@pytest.mark.parametrize(
    ("more", "asked"),
    [
        ({}, True),
        ({"leader": False}, False),
        ({"direct": True, "thread_id": None}, False),
        ({"addressed": False}, False),
        ({"aside": True}, False),
    ],
)
def test_others_are_looked_up_for_who_leads_alone(more: dict[str, object], *, asked: bool) -> None:
    """Asked in the group room, of Linn."""
    origin = _origin(**more)
    assert company.is_asked_for(TextReceived(origin=origin, text="who is stuck?")) is asked
    assert not company.is_asked_for(TextReceived(origin=origin, text="where am i"))
    assert not company.is_asked_for(OtherReceived(origin=origin, what="voice"))


def _talk(person: str, minutes: int, conversation: Conversation) -> Talk:
    changed_at = START + timedelta(minutes=minutes)
    return Talk(person_id=person, conversation=conversation, changed_at=changed_at)


def test_of_several_talks_the_last_walk_counts() -> None:
    """Frames add up; who has left, and who asks, is not listed; who is silent is."""
    question = Question(name="blink", asked_at=START, times=2)
    measured = Measured(width=3, height=2, sent_at=START, kept=True)
    talks = [
        _talk("@ben:x", 5, Conversation(walk=Walk(state=State.BASE), question=question)),
        _talk("@ben:x", 1, Conversation(walk=Walk(), frames=("$f",), measured={"$f": measured})),
        _talk("@ben:x", 9, Conversation()),
        _talk("@gone:x", 9, Conversation(walk=Walk())),
        _talk("@fern:x", 9, Conversation(walk=Walk())),
    ]
    people = {"@ben:x": "Ben", "@fern:x": "Fern", "@ada:x": "ada"}
    found = company.companions(people, talks, "@fern:x")
    assert found == (
        Companion(name="ada"),
        Companion(name="Ben", step="base", waits_since=START, times=2, frames=1, kept=True),
    )


@pytest.mark.parametrize(("shared", "told"), [("told", True), ("heard", False), ("", True)])
def test_an_emergency_is_of_who_told_it(shared: str, *, told: bool) -> None:
    """Who is held by somebody else's is not in it."""
    held = Emergency.model_validate({"kind": "in_water", "since": START, "shared": shared})
    talks = [_talk("@ben:x", 1, Conversation(emergency=held))]
    (ben,) = company.companions({"@ben:x": "Ben"}, talks, "@fern:x")
    assert ben.emergency is told


# what holds for all


def test_what_is_told_for_all_is_said_back() -> None:
    """Who teaches sees what everybody's walk begins with."""
    origin = _origin(teaches=True)
    event = TextReceived(origin=origin, text="fall 12 m tall, 18 m away, silky")
    context, actions = handle(Context.fresh(origin), event, START)
    (said,) = (action for action in actions if isinstance(action, Say))
    assert "For all here: fall 12 m, from 18 m, look silky" in said.body
    again = TextReceived(origin=_origin(teaches=True, event_id="$2"), text="rock at 1.5 m")
    _, actions = handle(context, again, START)
    assert not any("For all" in action.body for action in actions if isinstance(action, Say))


def test_the_room_knows_what_was_told_for_all() -> None:
    """`where am i` of a student names the fall that was told there for everybody."""
    origin = _origin(person_id="@ben:example.org", leader=False)
    told = Context.fresh(_origin()).facts.model_copy(update={"fall_height_m": 12.0})
    room = Room(direct=False, facts=told)
    context = Context.fresh(origin).model_copy(
        update={"room": room, "conversation": Conversation(walk=Walk())}
    )
    _, actions = handle(context, TextReceived(origin=origin, text="where am i"), START)
    (said,) = (action for action in actions if isinstance(action, Say))
    assert "fall 12 m" in said.body
