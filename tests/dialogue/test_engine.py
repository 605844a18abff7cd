"""What the engine keeps to whatever the steps do: failures, cautions, contexts of any age."""

from __future__ import annotations

from datetime import timedelta

from bot.dialogue.context import Context, Conversation
from bot.dialogue.engine import failure
from bot.dialogue.states import State
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings, Question, Walk
from tests.dialogue.player import START, Player


def test_a_failure_names_its_number_and_the_way_back() -> None:
    """The person can quote the number; nothing given is lost."""
    said = failure(Player().origin(), "a1b2c3")
    assert "a1b2c3" in said.body
    assert "where am I" in said.body


def test_a_caution_is_given_once() -> None:
    """The second time it is left out."""
    turn = Turn(Context(), Player().origin(), START)
    turn.caution("arrive")
    turn.caution("arrive")
    assert [part.key for part in turn.parts] == ["caution.arrive"]


def test_a_stored_question_without_settings_asks_for_them() -> None:
    """A context of an older version may lack what a step expects: it is asked for."""
    player = Player()
    question = Question(name="blink", asked_at=START)
    walk = Walk(state=State.HIGHLIGHTS)
    player.context = Context(conversation=Conversation(walk=walk, question=question))
    assert player.say("1")[0].question == "settings"


def test_a_walk_without_an_open_question_gets_one() -> None:
    """Facts that answer nothing still end with a question."""
    player = Player()
    walk = Walk(state=State.HIGHLIGHTS)
    player.context = Context(conversation=Conversation(walk=walk, last_at=START))
    player.now += timedelta(minutes=1)
    assert player.say("windy, leaves moving")[0].question == "blink"


def test_small_steps_of_a_plan_that_changed_nothing() -> None:
    """Where the plan ends as it began there are no marks between; the wish is noted."""
    player = Player()
    given = GivenSettings(f_number=11.0, shutter_s=0.25, iso=100.0)
    walk = Walk(state=State.HIGHLIGHTS, given=given, planned_from=given)
    player.context = Context(conversation=Conversation(walk=walk, last_at=START))
    assert "noted" in player.say("in small steps please")[0].keys
