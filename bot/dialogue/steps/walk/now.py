"""What to do now: the step at which the walk stands in one line, and its question."""

from __future__ import annotations

from bot.dialogue import solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.arrival import is_arrival
from bot.dialogue.states import BEFORE_LENS, State
from bot.dialogue.steps.anywhere import planning, repeat
from bot.dialogue.steps.walk import arrive, composition, lens
from bot.dialogue.turn import Turn


def tell(turn: Turn) -> None:
    """Say what is to be done at this step; before a walk begin one, after it say how."""
    if turn.is_at_home:
        turn.say(Role.SETTINGS, "home.send")
    elif turn.context.conversation.walk is not None:
        _say_step(turn)
        put_question(turn, whole=True)
    elif turn.context.person.kit.known():
        turn.say(Role.SETTINGS, "help.first")
    else:
        arrive.start(turn)


def arrived(turn: Turn, typed: str) -> bool:
    """Who tells that they stand at the water, and no more, hears what comes first."""
    if not is_arrival(typed):
        return False
    planning.end(turn)
    if turn.context.conversation.walk is None:
        arrive.start(turn)
    else:
        put_question(turn)
    return True


def _say_step(turn: Turn) -> None:
    state, given = turn.walk.state, turn.walk.given
    if state in BEFORE_LENS:
        turn.say(Role.SETTINGS, "now.lens")
    elif state is State.COMPOSITION:
        turn.say(Role.SETTINGS, "now.composition")
    elif given is None:  # a phone that shows no settings has none
        turn.say(Role.SETTINGS, "now.take")
    else:
        camera = turn.camera
        key = "now.keep" if state is State.KEEP else "now.frame"
        turn.say(Role.SETTINGS, key, settings=solving.settings_on(given, camera))


def goes_on_from(turn: Turn, facts: Facts) -> bool:
    """Ask for what is still missing of fall and kit, where some of it was told beside a question.

    Args:
        turn: the answer under construction, which has answered the question.
        facts: what was told, already learnt.

    Returns:
        Whether the walk stands there and was told something.
    """
    walk = turn.context.conversation.walk
    told = bool(facts.known()) and not planning.is_planning(turn)
    if walk is None or walk.state not in BEFORE_LENS or not told:
        return False
    lens.go_on(turn)
    return True


def put_question(turn: Turn, *, whole: bool = False) -> None:
    """The walk's question once more; where none stands open, the one of its step.

    Args:
        turn: the answer under construction.
        whole: with all its options, however often it was put.
    """
    if planning.is_planning(turn):
        planning.go_on(turn)
    elif repeat.standing(turn) is not None:
        repeat.put_again(turn, whole=whole)
    elif turn.walk.state in BEFORE_LENS:
        lens.go_on(turn)
    elif turn.walk.state is State.COMPOSITION:
        composition.go_on(turn)
    elif turn.walk.state is State.KEEP:
        turn.ask("next")
    else:
        turn.ask("blink")
