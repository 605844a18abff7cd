"""A question of a message that nothing answered: one line says so, and how to ask it."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.meaning.left_unanswered import (
    asking_clause,
    is_of_settings,
    is_of_view,
    is_same,
    questions_in,
)
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.steps.anywhere import manner
from bot.dialogue.turn import Turn

#: What the walk says by itself, whatever was asked: settings and what a frame leads to …
_SETTINGS: Final = (
    "base.",
    "told.",
    "adjust.",
    "highlights.",
    "light_told.",
    "light.",
    "where.given",
)
#: … lens, place and borders …
_VIEW: Final = ("lens.", "edges.", "top.", "sides.", "anchor.", "where.")
#: … and what only takes in, reminds or goes on.
_OTHERS: Final = ("noted", "unread_rest", "assumed", "caution.", "keep.ladder", "keep.check")
#: … or puts its question, which may be what an answer of either kind still needs.
_PUTS: Final = ("ask.", "still_open")
_WALK: Final = (*_SETTINGS, *_VIEW, *_OTHERS, *_PUTS)
#: So much of a question is named [characters] (own rule: it is known again by its beginning).
_QUOTED: Final = 40


def say(turn: Turn, typed: str) -> None:
    """Say that a question of a message was not answered, where that is sure.

    Args:
        turn: the answer under construction, else finished.
        typed: the message.
    """
    question = _left(turn, typed)
    before = turn.context.conversation.unanswered
    if question is None:
        if before:
            turn.change_conversation(unanswered="")
        return
    turn.change_conversation(unanswered=question)
    if before and is_same(before, question):
        return  # it was said of the message before
    alone = len(typed.strip()) <= len(question) + _ALONE
    part = Part(
        Role.CAUTION,
        "unanswered.alone" if alone else "unanswered.among",
        {"question": _quoted(question, manner.written_in(turn, typed))},
    )
    _make_room(turn, part)
    turn.parts.append(part)


#: With so few characters beside it a question stands alone already (own rule).
_ALONE: Final = 12


def _left(turn: Turn, typed: str) -> str | None:
    """The question that no part of the answer is of; None where none surely is left."""
    if not _goes_on_only(turn):
        return None
    keys = [part.key for part in turn.parts]
    needs = all(key.startswith(_PUTS) for key in keys)
    settings = needs or any(key.startswith(_SETTINGS) for key in keys)
    view = needs or any(key.startswith(_VIEW) for key in keys)
    for question in questions_in(typed, manner.written_in(turn, typed)):
        if not ((settings and is_of_settings(question)) or (view and is_of_view(question))):
            return question
    return None


def _goes_on_only(turn: Turn) -> bool:
    """Whether an answer at the water only takes in and goes on with the walk."""
    if turn.before.conversation.walk is None or turn.urgent or turn.is_at_home or not turn.parts:
        return False
    named = turn.question_name
    if named and QUESTIONS[named].passing:
        return False  # an interruption: the message may wait for its answer
    return all(part.role is not Role.SAFETY and part.key.startswith(_WALK) for part in turn.parts)


def _quoted(question: str, language: str) -> str:
    """The words of a question that its line names: a clause that asks, or how it begins."""
    said = question.lstrip(" ¿").rstrip(" ?").replace("`", "'")
    if len(said) > _QUOTED:
        said = asking_clause(said, language, _QUOTED) or said
    if len(said) <= _QUOTED:
        return f"`{said}?`"
    return f"`{said[:_QUOTED].rpartition(' ')[0]} …`"


def _make_room(turn: Turn, part: Part) -> None:
    """Leave the least of the other lines to `why`, so that the walk's question stays."""
    weaker = [one for one in turn.parts if one.role in {Role.CHECK, Role.ASSUMPTION}]
    while weaker and not turn.has_room_for(part):
        least = max(weaker, key=lambda one: (one.role, turn.parts.index(one)))
        weaker.remove(least)
        turn.parts.remove(least)
        turn.reason(least.key, **dict(least.values))
