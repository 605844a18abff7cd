"""A walk of yesterday: go on with it or begin a new one; the message waits meanwhile."""

from __future__ import annotations

from datetime import timedelta
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.numbered_reply import numbered
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import read
from bot.dialogue.reading.command_words import command_of
from bot.dialogue.reading.frame_words import wished
from bot.dialogue.replies import chosen
from bot.dialogue.steps.anywhere import manner, repeat
from bot.dialogue.steps.walk import arrive
from bot.dialogue.texts import TEXTS
from bot.dialogue.turn import Turn
from bot.dialogue.worded_choice import worded

#: A walk that was silent for longer is asked about: go on or new? (own rule: a night).
STALE_WALK: Final = timedelta(hours=8)
#: Words that are answered after a night without asking whether the walk goes on; what is asked of
#: frames is too: that is done at home.
_AT_ANY_HOUR: Final = frozenset(
    {"forget", "help", "commands", "stop", "cancel", "kit", "keep", "my_look", "reset_look"}
)


def text_to_answer(turn: Turn, text: str) -> str | None:
    """The words to go on with: those that came, or those that waited; None when answered here."""
    command = command_of(text)
    if command in _AT_ANY_HOUR or _is_of_frames(text):
        return text
    question = turn.context.conversation.question
    if question is not None and question.name == "resume":
        return _resumed(turn, text, command)
    if not _silent_for_a_night(turn):
        return text
    if command == "start":
        arrive.start(turn)
        return None
    turn.change_conversation(held_text=text, held_seen=turn.seen)
    _ask(turn)
    return None


def _is_of_frames(text: str) -> bool:
    wish = wished(text)
    return wish is not None and wish.what != "direction"


def _silent_for_a_night(turn: Turn) -> bool:
    """Counted between messages: the hours while the bot was down are no night."""
    conversation = turn.before.conversation
    heard_at = conversation.heard_at or conversation.last_at
    if turn.context.conversation.walk is None or heard_at is None:
        return False
    return turn.origin.sent_at - heard_at > STALE_WALK


def _ask(turn: Turn) -> None:
    turn.say(Role.SETTINGS, "resume", step=TEXTS[f"step.{turn.walk.state.value}"])
    turn.ask("resume")


def _chosen(turn: Turn, text: str) -> tuple[str | None, str]:
    """The option that is chosen, and what facts are told beside it; "" without any."""
    asked, said = QUESTIONS["resume"], manner.as_said(turn, text)
    value = chosen(asked, text)
    among = None if value is not None else numbered(asked, said) or worded(asked, said)
    if among is None:
        return value, ""
    return among.value, among.rest.typed if read(among.rest.english).known() else ""


def _resumed(turn: Turn, text: str, command: str | None) -> str | None:
    """Go on with the old walk, or begin a new one; what waited is read after that."""
    value, beside = ("new", "") if command == "start" else _chosen(turn, text)
    waiting = turn.context.conversation.held_text
    if value is None:
        _ask(turn)
        return None
    held_seen = turn.context.conversation.held_seen
    turn.change_conversation(held_text=None, held_seen=None)
    if value == "new":
        arrive.start(turn)
        if beside:
            turn.leave_question_unsaid()
        return beside or None
    turn.resume_question()
    if waiting is None or command_of(waiting) is not None:
        if not beside:
            repeat.put_again(turn, whole=True)
        return beside or None
    turn.seen = held_seen or turn.seen
    return ". ".join(filter(None, (waiting, beside)))
