"""A question that nobody answers is let go: the walk goes on with what can be said."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.states import BEFORE_LENS
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.walk import composition, lens, lens_choice
from bot.dialogue.turn import Turn

#: What is asked on the way to the lens and can be assumed instead.
_ASSUMABLE: Final = frozenset({"nearest", "water_speed", "kit", "format", "lenses"})
#: So often these are put on a walk; then an assumption stands in (own rule: a third is nagging).
_MOST_PUT: Final = 2
_SECTION: Final = "section"
_COUNTED: Final = composition.CHECKS | {_SECTION}
_ASSUMED: Final = {"top": "let_go.top", "sides": "let_go.sides"}
#: Who tried to answer sees the options once more.
_TRIED: Final = frozenset({"no_such_option", "old_answer", "which_one"})


def close(turn: Turn, *, wanted: bool) -> None:
    """At the end of an answer: no check that was told is asked, and nothing here a third time.

    Args:
        turn: the answer, with the question that it ends with.
        wanted: whether the person asked to see the question.
    """
    composition.leave_out_told(turn)
    wanted = wanted or any(part.key in _TRIED for part in turn.parts)
    while not wanted and turn.walk.put.count(_asked(turn)) >= _MOST_PUT:
        _assume(turn, _asked(turn))
    name = _asked(turn)
    if name in _COUNTED and turn.question_name:
        turn.change_walk(put=(*turn.walk.put, name))


def _asked(turn: Turn) -> str:
    return composition.asked_now(turn).removesuffix("_feet")


def _assume(turn: Turn, name: str) -> None:
    """Go on as if the usual had been answered, which is said."""
    turn.passed_over = turn.left_out_question = False
    if name == _SECTION:
        turn.end_with(None)
        turn.change_walk(checks=turn.walk.checks | {name: lens_choice.ASSUMED})
        lens_choice.choose(turn)
        return
    turn.say(Role.ASSUMPTION, _ASSUMED.get(name, "let_go"))
    composition.skip(turn, name)


def let_go(turn: Turn) -> None:
    """Where a check or a piece of kit would be asked for the fourth time, go on instead."""
    question = repeat.standing(turn)
    if not turn.passed_over or question is None:
        return
    if any(part.key.startswith("what_if.") for part in turn.parts):
        return  # who tries something on paper is still at the question
    name = question.name.removesuffix("_feet")
    if name in composition.CHECKS:
        turn.say(Role.ASSUMPTION, "let_go")
        composition.skip(turn, name)
    elif name in _ASSUMABLE and turn.walk.state in BEFORE_LENS:
        turn.say(Role.ASSUMPTION, "let_go")
        turn.change_walk(asked=(*turn.walk.asked, question.name))
        lens.go_on(turn)
