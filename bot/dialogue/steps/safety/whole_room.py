"""An emergency told in a group room holds all there, until who told of it or leads ends it."""

from __future__ import annotations

from datetime import timedelta
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn

#: For so long others are held by what nobody has ended: by then who leads has acted (own rule).
_HELD: Final = timedelta(hours=3)


def tell(turn: Turn) -> None:
    """Let what holds this conversation hold the room: its kind and time, and nobody's name."""
    held = turn.context.conversation.emergency
    if held is None or turn.context.room.direct:
        return
    turn.change_conversation(emergency=held.model_copy(update={"shared": "told"}))
    everybodys = {"own": False, "others": 2, "event_id": "", "shared": "heard"}
    turn.change_room(emergency=held.model_copy(update=everybodys))


def enter(turn: Turn) -> None:
    """Take over the room's emergency before a message is answered, or let go what it has ended."""
    held, told = turn.context.conversation.emergency, turn.context.room.emergency
    lasts = told is not None and turn.now - told.since <= _HELD
    if held is None and lasts:
        turn.change_conversation(emergency=told)
    elif held is not None and held.shared and (told is None or not (lasts or _is_told(turn))):
        turn.change_conversation(emergency=None)
        turn.resume_question()


def leave(turn: Turn) -> None:
    """Leave no trace of it in the conversation of somebody to whom nothing was said."""
    if turn.before.conversation.emergency is None and not turn.parts and not _is_told(turn):
        turn.change_conversation(emergency=None)


def may_end(turn: Turn) -> bool:
    """Whether "all are safe" of who writes counts: they told of it, or teach there."""
    return not is_heard(turn) or turn.origin.teaches


def waits(turn: Turn) -> bool:
    """Whether somebody else has to say that all are safe, which then is said."""
    if may_end(turn):
        return False
    turn.say(Role.SAFETY, "danger.room_waits")
    return True


def say(turn: Turn) -> bool:
    """Say that somebody else has told of it, and how long ago; whether that is so."""
    held = turn.context.conversation.emergency
    if held is None or not is_heard(turn):
        return False
    age = measures.minutes((turn.now - held.since).total_seconds() / 60)
    turn.say(Role.SAFETY, "danger.in_room", age=age)
    return True


def is_heard(turn: Turn) -> bool:
    """Whether somebody else in the room has told of what holds this conversation."""
    held = turn.context.conversation.emergency
    return held is not None and held.shared == "heard"


def is_new(turn: Turn) -> bool:
    """Whether who writes hears of it with the answer to this message."""
    return is_heard(turn) and turn.before.conversation.emergency is None


def end(turn: Turn) -> None:
    """Nobody is held any more."""
    turn.change_conversation(emergency=None)
    if turn.context.room.emergency is not None:
        turn.change_room(emergency=None)


def _is_told(turn: Turn) -> bool:
    held = turn.context.conversation.emergency
    return held is not None and held.shared == "told"
