"""Skip: the open question is left out, and the walk goes on where that leads."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.states import BEFORE_LENS, State, Trigger
from bot.dialogue.steps.anywhere import planning, repeat
from bot.dialogue.steps.walk import base, composition, keep, lens
from bot.dialogue.turn import Turn

#: Questions about the fall; who skips one frames by eye, with the usual case assumed.
_MEASURED: Final = frozenset({"geometry", "stream", "height", "distance"})
#: Questions without whose answer the walk cannot go on.
_NEEDED: Final = frozenset({"section", "too_near", "other_lens"})


def tell(turn: Turn) -> None:
    """Leave out what stands open: an offer, an interruption, or the question of the step."""
    if not planning.skips(turn):
        _skip_at_the_water(turn)


def _skip_at_the_water(turn: Turn) -> None:
    if _passes_over(turn):
        repeat.put_again(turn, whole=True)
        return
    question = repeat.standing(turn)
    if question is None:
        turn.say(Role.SETTINGS, "skip.nothing")
        return
    turn.remember_for_back()
    name = question.name.removesuffix("_feet")
    if name in composition.CHECKS:
        composition.skip(turn, name)
    elif name == "leaves":
        keep.answer_leaves(turn, "no")
    elif name in _MEASURED:
        turn.change_walk(checks=turn.walk.checks | {"geometry": "skipped"})
        lens.go_on(turn)
    elif name in {"settings", "seen", "blink", "blink_again", "phone_again"}:
        _skip_frame(turn, name)
    elif turn.walk.state in {State.LENS, State.ARRIVE} and name not in _NEEDED:
        lens.go_on(turn)
    else:
        turn.say(Role.SETTINGS, "skip.needed")
        repeat.put_again(turn, whole=True)


def _skip_frame(turn: Turn, name: str) -> None:
    """What was asked about a frame is left out: the walk goes on where it stood."""
    turn.change_walk(complaint=None)
    state = turn.walk.state
    if name != "settings" and turn.walk.given is not None:
        turn.be_in(State.HIGHLIGHTS, Trigger.NEW_FRAME)
        keep.reached(turn)
    elif state in BEFORE_LENS:
        turn.say(Role.SETTINGS, "skip.no_settings")
        lens.go_on(turn)
    elif state is State.COMPOSITION:
        turn.say(Role.SETTINGS, "skip.no_settings")
        composition.go_on(turn)
    else:
        base.give(turn)


def _passes_over(turn: Turn) -> bool:
    """Whether an interruption's question stands open, which `skip` drops."""
    question = turn.context.conversation.question
    return question is not None and QUESTIONS[question.name].passing
