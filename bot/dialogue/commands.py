"""The words that work anywhere: start, back, skip, why, where am I, kit, taps, language, stop."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Final

from bot.dialogue import solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Units
from bot.dialogue.slots import KIT_SLOTS
from bot.dialogue.states import BEFORE_LENS
from bot.dialogue.steps.anywhere import access, forget, manner, my_data, planning, repeat
from bot.dialogue.steps.asked import explained, why
from bot.dialogue.steps.frames import measuring
from bot.dialogue.steps.home import my_look
from bot.dialogue.steps.safety import emergency, whole_room
from bot.dialogue.steps.visits import cards, plan
from bot.dialogue.steps.walk import arrive, keep, now, skip
from bot.dialogue.steps.walk.day_plan import clock_of
from bot.dialogue.texts import TEXTS, known, known_trip
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import Walk
from bot.dialogue.way_out import turn_back_of

#: Words whose feature is still to come: one honest line each.
_TO_COME: Final = frozenset({"log"})


def run(turn: Turn, command: str) -> None:
    """Answer a command."""
    if command in _TO_COME:
        turn.say(Role.SETTINGS, f"to_come.{command}")
        repeat.put_again_if_open(turn)
        return
    _COMMANDS[command](turn)


def _start(turn: Turn) -> None:
    walk = turn.context.conversation.walk
    if planning.is_planning(turn) or _is_only_told(turn, walk):
        arrive.start_planned(turn)
        return
    if walk is not None and _has_answers(turn, walk):
        turn.say(Role.SETTINGS, "restart", step=TEXTS[f"step.{walk.state.value}"])
        turn.ask("restart")
        return
    arrive.start(turn)


def _is_only_told(turn: Turn, walk: Walk | None) -> bool:
    """Whether a walk began by itself with what was told, and has come no further."""
    told = walk is not None and walk.state in BEFORE_LENS and walk.given is None
    return told and "arrive" not in turn.context.person.cautions


def _has_answers(turn: Turn, walk: Walk) -> bool:
    """Whether a new walk would drop something that was told or given for this one."""
    place = turn.context.place
    told = walk.facts.known() or (place is not None and place.facts.known())
    return bool(told or turn.context.conversation.history) or walk.given is not None


def answer_restart(turn: Turn, value: str) -> None:
    """Go on with the walk that was under way, or begin a new one."""
    if value == "new":
        arrive.start(turn)
    else:
        turn.change_conversation(home_at=None, review=None)
        now.put_question(turn, whole=True)


def _back(turn: Turn) -> None:
    """Undo the last accepted answer; frames and cautions stay."""
    conversation = turn.context.conversation
    if not conversation.history:
        turn.say(Role.SETTINGS, "back.nothing")
        repeat.put_again_if_open(turn)
        return
    take_back(turn)


def take_back(turn: Turn) -> None:
    """Undo the last accepted answer, and put again what it had answered."""
    turn.undo()
    if emergency.is_held(turn):
        whole_room.tell(turn)
        emergency.held(turn)
        return
    turn.say(Role.SETTINGS, "back.done")
    repeat.put_again(turn, whole=True)


def _where(turn: Turn) -> None:
    """What was understood, and the step."""
    turn.in_full = True
    conversation = turn.context.conversation
    if conversation.walk is None:
        turn.say(Role.SETTINGS, "where.no_walk")
        _say_known(turn)
        return
    step = TEXTS[f"step.{turn.walk.state.value}"]
    planned = planning.is_planning(turn)
    turn.say(Role.SETTINGS, "where.planned" if planned else "where.step", step=step)
    _say_known(turn)
    given = turn.walk.given
    if given is not None:
        camera = turn.camera
        turn.say(Role.CHECK, "where.given", settings=solving.settings_on(given, camera))
    repeat.put_again_if_open(turn)


def _say_known(turn: Turn) -> None:
    # Others read in a group room: only what was told there is named there.
    told_there = turn.context.room.facts.updated(turn.walk.facts)
    facts = turn.facts if turn.origin.direct else told_there
    lists = (known(facts, turn.units), known_trip(turn.trip.without_names()))
    listed = ", ".join(told for told in lists if told)
    if listed:
        turn.say(Role.CHECK, "where.known", list=listed)
    if turn.origin.direct and (needs := access.names(turn)):
        turn.say(Role.ASSUMPTION, "where.needs", list=needs)
    moment = turn_back_of(turn)
    if moment is not None:
        sure = turn.position is not None
        turn.say(Role.CHECK, "where.turn_back", time=clock_of(moment, sure=sure))


def _kit(turn: Turn) -> None:
    if not turn.origin.direct:
        turn.say(Role.SETTINGS, "kit.in_private")
        turn.say(Role.CHECK, "kit.how")
        repeat.put_again_if_open(turn)
        return
    kit = turn.context.person.kit
    listed = known(kit, turn.units, only=KIT_SLOTS)
    turn.say(Role.SETTINGS, "kit.known" if listed else "kit.unknown", list=listed)
    turn.say(Role.CHECK, "kit.how")
    repeat.put_again_if_open(turn)


def _units(turn: Turn) -> None:
    new = Units.METRIC if turn.units is Units.IMPERIAL else Units.IMPERIAL
    _set_units(turn, new)


def _set_units(turn: Turn, units: Units) -> None:
    """Answer in these units from now on."""
    turn.change_person(units=units)
    turn.say(Role.SETTINGS, f"units.{units.value}")
    repeat.put_again_if_open(turn)


def _taps(turn: Turn) -> None:
    """Questions with options as polls from now on, or as plain words again."""
    wanted = not turn.context.person.taps
    turn.change_person(taps=wanted)
    turn.say(Role.SETTINGS, "taps.on" if wanted else "taps.off")
    repeat.put_again_if_open(turn)


def _help(turn: Turn) -> None:
    """It may be a cry: what protects first, then how to see what can be typed."""
    turn.urgent = True
    turn.say(Role.SAFETY, "danger.cry")
    turn.say(Role.CHECK, "help.how")


def _list_commands(turn: Turn) -> None:
    turn.say(Role.SETTINGS, "help.first")
    turn.say(Role.CHECK, "help.words")


def _cancel(turn: Turn) -> None:
    """Ends what is being measured; where nothing was lately, the walk, as `stop` does."""
    if measuring.is_under_way(turn):
        measuring.end(turn)
        turn.say(Role.SETTINGS, "together.ended")
    elif measuring.was_under_way(turn):
        turn.say(Role.SETTINGS, "together.ended_before")
    else:
        _stop(turn)
        return
    repeat.put_again_if_open(turn)


def _stop(turn: Turn) -> None:
    under_way = measuring.is_under_way(turn)
    if under_way:
        measuring.end(turn)
    turn.change_conversation(home_at=None, review=None)
    if turn.context.conversation.walk is None:
        turn.say(Role.SETTINGS, "together.ended" if under_way else "stop.nothing")
        return
    turn.change_conversation(walk=None, history=(), closed=False, doubted=None)
    turn.close_question()
    turn.say(Role.SETTINGS, "stop.done")


def _leaf_frame(turn: Turn) -> None:
    keep.leaf_frame(turn)
    repeat.put_again_if_open(turn)


def _thanks(turn: Turn) -> None:
    """Thanks need no question behind them: it stands open all the same."""
    turn.say(Role.SETTINGS, "thanks")


def _hello(turn: Turn) -> None:
    turn.say(Role.SETTINGS, "hello")
    repeat.put_again(turn)


_COMMANDS: Final[Mapping[str, Callable[[Turn], None]]] = {
    "start": _start,
    "back": _back,
    "skip": skip.tell,
    "now": now.tell,
    "unclear": explained.tell,
    "why": why.tell,
    "where": _where,
    "kit": _kit,
    "plan": plan.tell,
    "card": cards.draw,
    "units": _units,
    "metric": lambda turn: _set_units(turn, Units.METRIC),
    "imperial": lambda turn: _set_units(turn, Units.IMPERIAL),
    "taps": _taps,
    "short": lambda turn: manner.be(turn, "short"),
    "usual": lambda turn: manner.be(turn, "usual"),
    "long": lambda turn: manner.be(turn, "long"),
    "language": manner.list_languages,
    "english": lambda turn: manner.speak(turn, "en"),
    "german": lambda turn: manner.speak(turn, "de"),
    "spanish": lambda turn: manner.speak(turn, "es"),
    "help": _help,
    "commands": _list_commands,
    "stop": _stop,
    "cancel": _cancel,
    "keep": my_look.keep,
    "leaf_frame": _leaf_frame,
    "my_look": my_look.show,
    "reset_look": my_look.reset,
    "forget": forget.ask,
    "data": my_data.tell,
    "thanks": _thanks,
    "hello": _hello,
}
