"""A message while an emergency is held: what it says of who is safe, and when all of them are."""

from __future__ import annotations

from functools import partial
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.context import Emergency
from bot.dialogue.danger import (
    Danger,
    DangerKind,
    Level,
    Safe,
    anyone_out_there,
    explained,
    speaks_for_everybody,
    tells_only_where,
    who_is_safe,
)
from bot.dialogue.danger.aftermath import leaves_somebody
from bot.dialogue.danger.came_away import speaks_for_one
from bot.dialogue.danger.cold_hands import without_cold_hands
from bot.dialogue.danger.denied import tells_of_danger
from bot.dialogue.danger.drowsy import is_drowsy
from bot.dialogue.danger.explained import without_good
from bot.dialogue.danger.moves import Move, move_of
from bot.dialogue.events import TextReceived
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.replies import chosen
from bot.dialogue.safety_clauses import Heard
from bot.dialogue.safety_clauses import heard as heard_in_parts
from bot.dialogue.safety_sense import says_safe
from bot.dialogue.steps.anywhere import manner
from bot.dialogue.steps.safety import afterwards, emergency, gear_asked, shaken, whole_room
from bot.dialogue.turn import Turn

#: These speak for everybody; a bare yes does where it was asked for.
_FOR_ALL: Final = frozenset({Safe.ALL, Safe.RETRACTED})
#: Nothing of who is safe: what the question's own words or a number say counts then.
_OPEN: Final = frozenset({None, Safe.NOT, Safe.YES})
_SEVERAL: Final = 2
#: Dangers of one among others: where the others are says nothing of that one.
_OF_ONE: Final = frozenset(
    kind.value
    for kind in (DangerKind.IN_WATER, DangerKind.HURT, DangerKind.MISSING, DangerKind.COLD)
)
_FLOOD: Final = Danger(DangerKind.FLOOD, Level.EMERGENCY)


def answer(turn: Turn, held: Emergency, event: TextReceived, *, of_the_walk: bool) -> str:
    """Answer it: the next instruction, who is still to be asked about, or the end.

    Args:
        turn: the answer under construction.
        held: the emergency that holds the conversation.
        event: the message.
        of_the_walk: whether it answers a question that was put before the emergency.

    Returns:
        What the message says besides, once all are safe; "" while the emergency is held.
    """
    text = shaken.calmed(held, event.text)
    safe, rest = _heard(turn, held, text)
    # Who hears of it with this answer was not asked yet: a bare number is the walk's.
    of_the_walk = of_the_walk or (whole_room.is_new(turn) and safe in _OPEN)
    option = chosen(QUESTIONS["safe"], event.text) if safe in _OPEN else None
    if of_the_walk or (safe is None and option is None):
        asked = _asks_of_gear(turn, held, event.text)
        if asked or of_the_walk or not _moved(turn, held, event.text):
            emergency.held(turn, event.text)
    elif option == "not_yet" or safe in {Safe.HEARD, Safe.NOT}:
        emergency.answer_safe(turn, "not_yet")
    elif option == "yes" or safe is Safe.YES:
        emergency.answer_safe(turn, "yes")
    else:
        if speaks_for_everybody(event.text) and anyone_out_there(event.text) is False:
            turn.change_conversation(closed=False)  # nobody stands at a closed place either
        _of_some(turn, held, safe or Safe.NOT)
    if emergency.is_held(turn):
        return ""
    shaken.say(turn, held, event.text)
    return _besides(turn, held, rest, retracted=safe is Safe.RETRACTED)


def _besides(turn: Turn, held: Emergency, rest: str, *, retracted: bool) -> str:
    """What is left to be answered: little, where nobody goes back to water that rose."""
    if retracted or not emergency.STAY_AWAY & (held.told | {held.kind}):
        return rest
    return afterwards.answer(turn, rest)


def _heard(turn: Turn, held: Emergency, text: str) -> tuple[Safe | None, str]:
    """Who is safe, by a message as a whole and part by part, and what it says besides."""
    if held.kind in _OF_ONE and is_drowsy(text):
        return None, ""  # "all good, he is asleep now" is what deep cold looks like
    if leaves_somebody(text):
        return Safe.NOT, ""
    parts = _heard_in_parts(turn, held, text)
    whole = _said(held, text) if parts.doubtful else _heard_as_a_whole(turn, held, text)
    if whole in _OPEN and parts.safe is not None:
        retracted = parts.safe and who_is_safe(text) is Safe.RETRACTED
        whole = Safe.RETRACTED if retracted else Safe.ALL if parts.safe else Safe.NOT
    return whole, parts.rest


def _heard_in_parts(turn: Turn, held: Emergency, text: str) -> Heard:
    """Whether all are safe by one part of a message: "2, all fine. Which days after rain?"."""

    def by_words(part: str) -> bool | None:
        part = without_cold_hands(part)
        safe = _said(held, part)
        if safe is Safe.RETRACTED:
            return True
        bare = without_good(part, held.kind)
        if tells_of_danger(bare):
            return False
        if bare != part:
            return True
        return True if safe in _FOR_ALL or _left_nobody(held, safe) else None

    return heard_in_parts("safe", text, by_words, partial(manner.as_said, turn))


def _left_nobody(held: Emergency, safe: Safe | None) -> bool:
    """Whether those who are said to be safe are all that were in danger."""
    if safe not in {Safe.OWN, Safe.ONE, Safe.THEY}:
        return False
    left = _left(held, safe)
    return not left.own and not left.others


def _asks_of_gear(turn: Turn, held: Emergency, text: str) -> bool:
    """Whether who left the water asks for their gear, or to go back: answered in front."""
    return held.kind in emergency.STAY_AWAY and gear_asked.answer(turn, text)


def _heard_as_a_whole(turn: Turn, held: Emergency, text: str) -> Safe | None:
    """Who is safe, by the words of a message and its sense: "out and dry, all of us"."""
    safe = _said(held, text)
    if safe is Safe.RETRACTED and who_is_safe(text) is not safe:
        return safe  # explained by what only this kind of danger can have
    of_others = held.others and speaks_for_one(text)
    if safe not in {None, Safe.NOT, Safe.ALL, Safe.RETRACTED} or of_others:
        return safe
    by_words = True if safe in _FOR_ALL else None  # "what? nobody is in danger" is no "no"
    found = says_safe("safe", manner.as_said(turn, text), by_words)
    if found is None:
        return safe if safe is Safe.NOT else None
    return (safe if safe in _FOR_ALL else Safe.ALL) if found else Safe.NOT


def _moved(turn: Turn, held: Emergency, text: str) -> bool:
    """Whether a message tells what people do or see now, and was answered as that."""
    move = move_of(text)
    lasting = held.kind in emergency.STAY_AWAY
    if move is Move.LOUDER and lasting:
        emergency.answer(turn, _FLOOD, text)
        return True
    if move is Move.LEAD and DangerKind.MISSING.value in held.told:
        said = "danger.missing.lead"
    elif move is Move.WAY and held.kind == DangerKind.FLOOD.value:
        said = "danger.flood.way"
    elif move is Move.GOING and lasting:
        said = f"danger.{held.kind}.going"
    else:
        return False
    turn.urgent = True
    turn.say(Role.SAFETY, said)
    emergency.ask_again(turn)
    return True


def clears(turn: Turn, text: str, danger: Danger) -> bool:
    """Whether a message that sounds like the held emergency, or like some, says that it is over.

    "All seven are up on the path, nobody hurt" is good news of every kind.
    """
    held = turn.context.conversation.emergency
    if leaves_somebody(text):
        return False
    if held is not None and speaks_for_everybody(text):
        return True
    if held is not None and shaken.is_all_the_danger(held, text):
        return True
    if held is None or danger.kind.value not in {held.kind, DangerKind.UNCLEAR.value}:
        return False
    return _said(held, text) not in {*_OPEN, Safe.HEARD} or bool(
        _heard_in_parts(turn, held, text).safe
    )


def _said(held: Emergency, text: str) -> Safe | None:
    """Who is safe, also by an explanation: what sounded like thunder was a truck."""
    safe = who_is_safe(text)
    if held.kind not in {kind.value for kind in DangerKind}:
        return safe
    if safe is Safe.ALL and held.kind in _OF_ONE and not held.own and tells_only_where(text):
        safe = Safe.OWN  # "we're at the car" finds nobody
    open_still = safe in {None, Safe.NOT, Safe.OWN}
    return (explained(text, DangerKind(held.kind)) if open_still else None) or safe


def _of_some(turn: Turn, held: Emergency, safe: Safe) -> None:
    """Some are said to be safe: who is left is asked about."""
    left = _left(held, safe)
    if safe is Safe.RETRACTED:
        emergency.end_retracted(turn)
    elif not left.own and not left.others:
        emergency.answer_safe(turn, "yes")
    else:
        turn.change_conversation(emergency=left)
        turn.urgent = True
        turn.say(Role.SAFETY, "danger.others_left" if left.others else "danger.you_left")
        emergency.ask_again(turn)


def _left(held: Emergency, safe: Safe) -> Emergency:
    """The emergency without those who are safe; of several, one alone ends nothing."""
    if safe in _FOR_ALL:
        return held.model_copy(update={"own": False, "others": 0})
    if safe is Safe.OWN:
        return held.model_copy(update={"own": False})
    one_of_several = safe is Safe.ONE and held.others >= _SEVERAL
    return held if one_of_several else held.model_copy(update={"others": 0})


def overheard(turn: Turn, held: Emergency, event: TextReceived) -> None:
    """A message to others in the room: only good news of all who are in it counts."""
    safe = _said(held, event.text)
    if safe in {*_OPEN, Safe.HEARD} or not whole_room.may_end(turn):
        return
    left = _left(held, safe or Safe.NOT)
    if not left.own and not left.others:
        _of_some(turn, held, safe or Safe.NOT)


def taken_back(turn: Turn, held: Emergency, event: TextReceived) -> bool:
    """Whether the one message that told of the emergency was edited into a harmless one."""
    if not held.event_id or event.corrects != held.event_id:
        return False
    emergency.end_retracted(turn)
    return True
