"""A question may stand open while the walk stands elsewhere: nothing that is said then raises."""

from __future__ import annotations

import string
from typing import Final

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.dialogue.context import Context
from bot.dialogue.questions import QUESTIONS, Asked
from bot.dialogue.states import State
from bot.dialogue.texts import TEXTS
from bot.dialogue.walk_state import Question
from tests.dialogue.player import Player
from tests.dialogue.test_message_rules import check
from tests.dialogue.walked import TOLD, known

#: Where a walk rests between two messages; the base and the adjusting end in their own answer.
RESTS: Final = (State.ARRIVE, State.LENS, State.COMPOSITION, State.HIGHLIGHTS, State.KEEP)
OF_THE_WALK: Final = [asked for asked in QUESTIONS.values() if not asked.passing]
#: Nothing known, a fall and its lens, settings that were given, a phone that shows none.
BEGUN: Final = {
    "nothing": ("start",),
    "a lens": (TOLD,),
    "a time": (f"{TOLD}, 1/30 s",),
    "settings": (TOLD, "1", "1"),
    "a phone": ("12 m tall, 18 m away, rock at 1.5 m, just my phone", "1", "1"),
}


def _placed(context: Context, state: State, asked: Asked) -> Player:
    """Somebody whose walk stands at `state` while a question of any step stands open."""
    keys = (asked.key, *asked.option_keys)
    fields = {n for key in keys for _, n, _, _ in string.Formatter().parse(TEXTS[key]) if n}
    player = Player()
    question = Question(
        name=asked.name, asked_at=player.now, values=dict.fromkeys(fields, "4 m"), times=1
    )
    walk = context.conversation.walk
    assert walk is not None
    changes = {"walk": walk.model_copy(update={"state": state}), "question": question}
    conversation = context.conversation.model_copy(update=changes | {"paused": None})
    player.context = context.model_copy(update={"conversation": conversation})
    return player


def _said(begun: tuple[str, ...]) -> Context:
    player = Player()
    for line in begun:
        player.say(line)
    return known(player)


@pytest.mark.parametrize("begun", BEGUN)
@pytest.mark.parametrize("state", RESTS, ids=lambda state: state.value)
def test_every_question_may_be_answered_from_every_state(state: State, begun: str) -> None:
    """Each numbered reply, and `skip`, to each question of the walk is answered at each step."""
    context = _said(BEGUN[begun])
    for asked in OF_THE_WALK:
        for reply in (*map(str, range(1, len(asked.options) + 1)), "skip"):
            player = _placed(context, state, asked)
            check(player.say(reply))
            assert player.actions, (asked.name, reply)
            walk = known(player).conversation.walk
            assert walk is None or walk.state in RESTS


#: One message says all this at once, in any order: replies, facts, complaints, questions.
SAID_AT_ONCE: Final = [
    "all rock up there, no sky",
    "leaves all along the top",
    "edges clean",
    "a twig on the left",
    "dots only",
    "patches",
    "the leaves move",
    "another frame",
    "full frame",
    "section",
    "what would 1/6 look like at 85, mush?",
    "why does it blink?",
    "the water is mush, why?",
    "what if f/16?",
    "how long for silky?",
    "f/11, 1/4 s, iso 100",
    "13 m tall, 30 m away",
    "going with 35 mm",
    "the 70-200 is on",
    "too dark",
    "full sun now",
    "2",
    "1",
]


@settings(max_examples=80)
@given(
    st.sampled_from(list(BEGUN)),
    st.lists(st.lists(st.sampled_from(SAID_AT_ONCE), min_size=1, max_size=3), max_size=8),
)
def test_replies_with_more_beside_them_move_no_walk_twice(
    begun: str, messages: list[list[str]]
) -> None:
    """What stands beside a reply may take the walk on before the reply is heard: that is fine."""
    player = Player()
    for line in BEGUN[begun]:
        player.say(line)
    for pieces in messages:
        check(player.say(". ".join(pieces)))
        assert player.actions
        walk = known(player).conversation.walk
        assert walk is None or walk.state in RESTS


def test_a_check_that_is_answered_late_is_kept_and_leads_back_nowhere() -> None:
    """The top, and a complaint of a frame beside it: the walk stands at the next frame then."""
    player = Player()
    player.say(f"{TOLD}, 1/30 s")
    player.say("all rock up there, no sky. the water is mush, why?")
    walk = known(player).conversation.walk
    assert walk is not None
    assert walk.checks["top"] == "covered"
    assert walk.state is State.HIGHLIGHTS
    question = known(player).conversation.question
    assert question is not None
    assert question.name == "blink"
    check(player.say("1"))
