"""Danger and emergencies: the instruction that protects first, no settings, the walk held."""

from __future__ import annotations

from datetime import timedelta
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.context import Doubt, Emergency, Position
from bot.dialogue.danger import Danger, DangerKind, Level, Whose, gravest, whose
from bot.dialogue.danger.came_away import speaks_for_oneself
from bot.dialogue.danger.cold_child import child_is_cold
from bot.dialogue.danger.given_up import wishes
from bot.dialogue.danger.leaps import wishes_to_leap
from bot.dialogue.danger.names import asks
from bot.dialogue.danger.storm_words import tells_of_storm
from bot.dialogue.danger.whereabouts import tells_of_being_there, tells_of_outside
from bot.dialogue.events import PlaceReceived
from bot.dialogue.lateness import CLOCKS_DIFFER
from bot.dialogue.meaning.asides import Aside, aside_of
from bot.dialogue.meaning.visit_words import speaks_of_day_to_come, wishes_for_day_to_come
from bot.dialogue.reading.standing import asks_to_stand
from bot.dialogue.steps.anywhere import planning, repeat
from bot.dialogue.steps.safety import (
    numbers,
    on_map,
    safe_picture,
    shore_asked,
    storm_distance,
    whole_room,
)
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import Question

#: So long a storm may go on over who has taken shelter (own rule).
_SHELTERED: Final = timedelta(hours=3)


def answer(turn: Turn, danger: Danger, text: str) -> None:
    """Say what protects; hold the walk if it is an emergency, else offer a safe picture.

    Args:
        turn: the answer under construction.
        danger: what is told of.
        text: the message that tells of it.
    """
    turn.urgent = True
    turn.change_conversation(doubted=None, doubt=Doubt())
    if shore_asked.answer(turn, danger, text):
        return
    if danger.kind is DangerKind.THUNDER and _is_sheltered(turn, text):
        turn.say(Role.SAFETY, "danger.thunder.sheltered")
        storm_distance.say(turn, text)
        return
    turn.say(Role.SAFETY, _instruction(turn, danger, text))
    numbers.say(turn, danger.kind, text)
    _say_age(turn)
    if danger.level is Level.EMERGENCY:
        if not is_held(turn):
            on_map.show(turn)
        _hold(turn, danger.kind.value, whose(text, danger.kind))
    elif turn.context.conversation.emergency is None:
        if not wishes_to_leap(text):  # who wants to jump wanted no picture
            safe_picture.offer(turn)
        if not _is_planned(turn, text):
            _close(turn, danger, text)
        numbers.keep_question(turn)
        return
    ask_again(turn)
    numbers.keep_question(turn)


def _close(turn: Turn, danger: Danger, text: str) -> None:
    """Close that place; of two kinds none is known, and who writes may be there from then on."""
    before = turn.context.conversation
    others = not whose(text, danger.kind).own and not speaks_for_oneself(text)
    leave = asks(text) or wishes(text) or asks_to_stand(text) or wishes_to_leap(text)
    asked = leave and not tells_of_being_there(text)
    same = not before.closed or before.closed_kind == danger.kind.value
    turn.change_conversation(
        closed=True,
        closed_kind=danger.kind.value if same else "",
        closed_others=others and (before.closed_others or not before.closed),
        closed_asked=asked and (before.closed_asked or not before.closed),
    )
    turn.ask("out_there")


def _say_age(turn: Turn) -> None:
    age = turn.now - turn.origin.sent_at
    if age > CLOCKS_DIFFER:
        turn.say(Role.ASSUMPTION, "danger.late", age=measures.minutes(age.total_seconds() / 60))


def rumbles_on(turn: Turn, text: str) -> bool:
    """Answer words of a storm over people in shelter that alone would be asked about.

    Args:
        turn: the answer under construction.
        text: the message, which may tell of danger.

    Returns:
        Whether it was that.
    """
    if not (tells_of_storm(text) and _is_sheltered(turn, text)):
        return False
    turn.say(Role.SAFETY, "danger.thunder.sheltered")
    storm_distance.say(turn, text)
    return True


def _is_sheltered(turn: Turn, text: str) -> bool:
    """Whether people said that they are in shelter from a storm, and still are."""
    conversation = turn.context.conversation
    since = conversation.sheltered_at
    if since is None:
        return False
    stayed = conversation.question is None and conversation.emergency is None
    return stayed and turn.now - since <= _SHELTERED and not tells_of_outside(text)


def _is_planned(turn: Turn, text: str) -> bool:
    """Whether the place is one of a visit to come: nobody is there who would have to come back."""
    if turn.context.conversation.closed or tells_of_being_there(text):
        return False
    if planning.is_planning(turn):
        return asks(text) or speaks_of_day_to_come(text)
    return wishes_for_day_to_come(text)


def _instruction(turn: Turn, danger: Danger, text: str) -> str:
    """What protects from it; in a flood nobody is sent to the bank, or down again."""
    if danger.kind is DangerKind.COLD and child_is_cold(text):
        return "danger.cold.child"
    if danger.level is Level.STOP and wishes_to_leap(text):
        return "danger.leap"
    planned = f"danger.{danger.kind.value}.planned"
    if planned in TEXTS and _is_planned(turn, text):
        return planned
    held = turn.context.conversation.emergency
    flooded = held is not None and held.kind == DangerKind.FLOOD.value
    if flooded and danger.kind in {DangerKind.WADING, DangerKind.CLIMB}:
        return "danger.flood.again"
    return f"danger.{danger.kind.value}"


def _hold(turn: Turn, kind: str, who: Whose) -> None:
    """Hold the walk; a second danger leaves the first one's time and the graver kind."""
    held = turn.context.conversation.emergency
    told_by = turn.origin.event_id
    told = {kind}
    if held is None:
        new = Emergency(kind=kind, since=turn.now, **who._asdict(), event_id=told_by)
    else:
        both = Whose(held.own, held.others).with_also(who)
        kind = gravest(held.kind, kind)
        told |= held.told
        new = Emergency(kind=kind, since=held.since, **both._asdict())
    new = new.model_copy(update={"told": frozenset(told)})
    turn.change_conversation(emergency=new, sheltered_at=None)
    whole_room.tell(turn)


def repeat_card(turn: Turn) -> None:
    """The first instruction once more, for a cry in an emergency."""
    emergency = turn.context.conversation.emergency
    turn.urgent = True
    turn.say(Role.SAFETY, f"danger.{emergency.kind if emergency else DangerKind.UNCLEAR.value}")
    ask_again(turn)


def ask_again(turn: Turn) -> None:
    """Whether all are safe, with the position to be read out."""
    position = turn.context.person.position
    if whole_room.is_heard(turn):
        pass  # where they are is for who told of it to say
    elif position is None:
        turn.say(Role.CHECK, "danger.position_unknown")
    elif not position.is_for(turn.origin):
        turn.say(Role.CHECK, "danger.position_elsewhere")
    else:
        _say_position(turn, position)
    turn.ask("safe")


def _say_position(turn: Turn, position: Position) -> None:
    """The position with its time and its age, to be read out."""
    age_min = max(0.0, (turn.now - position.shared_at).total_seconds() / 60)
    place, time = on_map.place_and_time(position)
    turn.say(Role.CHECK, "danger.position", place=place, time=time, age=measures.minutes(age_min))


def is_held(turn: Turn) -> bool:
    """Whether an emergency holds this conversation."""
    return turn.context.conversation.emergency is not None


def held(turn: Turn, text: str = "") -> None:
    """Anything else while an emergency is held: no settings, only the question."""
    turn.urgent = True
    if numbers.source_asked(turn, text):
        turn.ask("safe")
        return
    emergency = turn.context.conversation.emergency
    heard = whole_room.say(turn)
    if aside_of(text) is Aside.BYE:
        turn.say(Role.SAFETY, "danger.bye_open")
    elif emergency is not None and emergency.kind in STAY_AWAY:  # leaving may not wait
        turn.say(Role.SAFETY, f"danger.{emergency.kind}.again")
    elif not heard:
        turn.say(Role.SAFETY, "danger.held")
    storm_distance.say_held(turn, text)
    ask_again(turn)
    numbers.keep_question(turn)


def place_shared(turn: Turn, event: PlaceReceived) -> None:
    """A location shared in an emergency: kept and given back to be read out, nothing else."""
    turn.change_person(position=Position.shared(event))
    held(turn)


def answer_safe(turn: Turn, value: str) -> None:
    """All safe, or not yet."""
    turn.urgent = True
    emergency = turn.context.conversation.emergency
    if value == "not_yet" and emergency is not None:
        turn.say(Role.SAFETY, f"danger.{emergency.kind}.again")
        ask_again(turn)
        return
    if whole_room.waits(turn):
        return
    turn.remember_for_back()
    whole_room.end(turn)
    told = frozenset() if emergency is None else emergency.told | {emergency.kind}
    away = STAY_AWAY & told
    for kind in sorted(away):
        turn.say(Role.SAFETY, f"danger.{kind}.over")
    if not away:
        turn.say(Role.SAFETY, "danger.over")
    if turn.context.conversation.walk is not None:
        turn.say(Role.CHECK, "danger.walk_waits" if away else "danger.walk_kept")
    if away:
        sheltered_at = turn.now if DangerKind.THUNDER.value in away else None
        # The walk's own question stays paused; at a closed place of that water nobody is left.
        turn.change_conversation(question=None, sheltered_at=sheltered_at, away=True, closed=False)
    else:
        repeat.put_again(turn, whole=True)


def end_retracted(turn: Turn) -> None:
    """Nobody ever was in danger: the walk is as it was."""
    turn.urgent = True
    turn.remember_for_back()
    whole_room.end(turn)
    turn.say(Role.SAFETY, "danger.retracted")
    if turn.context.conversation.walk is not None:
        turn.say(Role.CHECK, "danger.walk_kept")
    repeat.put_again(turn, whole=True)


#: After these nobody goes back to the water at once: the walk waits until somebody begins.
STAY_AWAY: Final = frozenset({DangerKind.FLOOD.value, DangerKind.THUNDER.value})


#: So often the place is named before its question alone is put (own rule).
_INSISTS: Final = 3


def insist(turn: Turn, *, asked_why: bool = False, text: str = "") -> None:
    """Words that answer nothing while somebody may be out there: that place stays closed."""
    turn.urgent = True
    times, answered = _times_asked(turn), numbers.source_asked(turn, text)
    if not answered and (times < _INSISTS or asked_why):
        turn.say(Role.SAFETY, "danger.insist")
    elif not answered and times > _INSISTS + 1:
        turn.say(Role.SAFETY, "danger.insist_how")
    ask_out_there_again(turn)


def ask_out_there_again(turn: Turn) -> None:
    """Whether somebody is out there, once more."""
    times = _times_asked(turn)
    turn.ask_again(Question(name="out_there", asked_at=turn.now, times=times))


def _times_asked(turn: Turn) -> int:
    question = turn.context.conversation.question
    return question.times if question is not None else 1


def answer_out_there(turn: Turn, value: str) -> None:
    """Is anybody out at the dangerous place?"""
    turn.urgent = True
    if value == "yes":
        turn.say(Role.SAFETY, "danger.call_back")
        turn.ask("out_there")
        return
    nobody_there(turn)
    repeat.put_again(turn, whole=True)


def nobody_there(turn: Turn) -> None:
    """Nobody is at the dangerous place: it is open again, and so is the walk's question."""
    turn.change_conversation(closed=False)
    turn.say(Role.SAFETY, "danger.nobody_there")
    turn.resume_question()
