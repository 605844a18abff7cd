"""What a message tells of the white beside other things: taken in behind what answers those."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.facts import Blink, Facts
from bot.dialogue.meaning import whites
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.topics import TALK, topic_of
from bot.dialogue.meaning.whites import White
from bot.dialogue.reading import read
from bot.dialogue.steps.anywhere import manner, repeat
from bot.dialogue.steps.asked import by_meaning
from bot.dialogue.steps.telling import late
from bot.dialogue.steps.walk import adjust, highlights, keep
from bot.dialogue.turn import Turn

#: Questions to which a size alone is an answer.
_ASKS_FOR_IT: Final = frozenset({"blink", "blink_again", "seen", "sky_gap", "screen_says"})
#: Questions behind which the frame before is still in question.
_OF_THE_LAST: Final = _ASKS_FOR_IT | {"leaves", "next", "settings"}
#: What is reckoned together with what blinks.
_WITH_IT: Final = frozenset({"meter_stops", "change_stops", "histogram_at_right"})
#: Answers that tell the settings of a frame alone: what the white does tells them again.
_OF_THE_FRAME: Final = frozenset(
    {"told.settings", "told.better", "not_understood", "which_one", "noted", "talk.other_told"}
)
#: Answers that lead on from that frame already.
_LEADS_ON: Final = ("base.", "adjust.", "highlights.", "lens.", "frame.for_look")
_LEAF_FRAME: Final = "keep.leaf_frame"
#: A clause of fewer words is no question by its sense (own rule).
_LEAST_WORDS: Final = 5
_WORDS: Final = re.compile(r"[^\W\d_]+")
#: These are answered by what comes next, in front of all else.
_LOST: Final = frozenset({Blink.PATCHES, Blink.SHEET})


def hear(turn: Turn, said: Said) -> Said:
    """Note what a message tells of the white; the words to be answered in front of that.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        The message, or what it says beside the white where that is more than facts of the frame.
    """
    facts, question = read(said.english), repeat.standing(turn)
    asked = question is not None and question.name in _ASKS_FOR_IT
    told = whites.told(said, asked=asked or facts.shutter_s is not None)
    if told is None or facts.ask_what_if:
        return said
    turn.white, turn.white_alone = told.white, not told.rest
    rest = manner.as_said(turn, told.rest)
    begun = turn.context.conversation.walk is not None
    framed = turn.walk.given is not None or facts.shutter_s is not None
    if not (begun and framed and _is_beside(turn, told.others, rest)):
        return rest if told.rest else said
    turn.beside_white = told.others
    _note_level(turn, told.white, rest)
    return rest


def _is_beside(turn: Turn, others: tuple[str, ...], rest: Said) -> bool:
    """Whether the rest of a message asks or complains of what is not reckoned with the white."""
    facts = read(rest.english)
    if _WITH_IT & facts.known().keys() or adjust.EXPOSURE & set(facts.symptoms):
        return False
    return bool(facts.symptoms) or asks(rest) or any(_may_ask(turn, one) for one in others)


def _may_ask(turn: Turn, clause: str) -> bool:
    """Whether a clause has words enough to ask something, and tells no facts."""
    facts = read(manner.as_said(turn, clause).english)
    enough = len(_WORDS.findall(clause)) >= _LEAST_WORDS
    return enough and not (facts.known() or facts.unread)


def _note_level(turn: Turn, white: White, rest: Said) -> None:
    """The frame's level is known to what answers the rest: a wish for a look begins from there."""
    given, told = turn.walk.given, read(rest.english)
    if given is not None and told.shutter_s is None and white.blink in _LOST and asks(rest):
        highlights.note_levels(turn, given, clipped=True)


def laid_over(turn: Turn, facts: Facts) -> Facts:
    """The facts of a message with what blinks as it tells it; without, where that waits."""
    if turn.white is None:
        return facts
    if turn.beside_white:
        return facts.model_copy(update={"blink": None})
    changed: dict[str, object] = {"blink": turn.white.blink}
    if turn.white_alone and turn.white.blink in _LOST:  # "a white patch without texture" is one
        changed["symptoms"] = tuple(set(facts.symptoms) - adjust.EXPOSURE)
    return facts.model_copy(update=changed)


def take_in(turn: Turn, typed: str) -> None:
    """Answer what the message tells of the white, where nothing has yet.

    Args:
        turn: the answer under construction.
        typed: the message.
    """
    white = turn.white
    if white is None or not _is_in_question(turn):
        return
    before = [part for part in turn.parts if part.role is not Role.QUESTION]
    if any(part.key.startswith(_LEADS_ON) for part in before):
        return
    before = [part for part in before if part.key not in _OF_THE_FRAME] or _by_clauses(turn)
    turn.remember_for_back()
    if late.holds_back_reply(turn, "blink", white.blink.value, typed):
        return
    turn.parts = []
    adjust.trouble(turn, Facts(blink=white.blink))
    if _LEAF_FRAME in {part.key for part in before} and white.blink in _LOST:
        before = [part for part in before if part.key != _LEAF_FRAME]
        keep.leaf_frame(turn)  # as bright as the water's next frame
    _in_front(turn, before, last=white.blink in _LOST)


def _by_clauses(turn: Turn) -> list[Part]:
    """What answers a clause by itself, where the other words together led to nothing.

    Dictated words have no sign between what they tell and what they ask: "got one at an eighth
    only dots now but the rocks look a bit green is that the filter".
    """
    for clause in turn.beside_white:
        said = manner.as_said(turn, clause)
        if not _may_ask(turn, clause) or (topic_of(said) or TALK).startswith(TALK):
            continue
        turn.parts = []
        if by_meaning.answer(turn, said, Facts()):
            return [part for part in turn.parts if part.role is not Role.QUESTION]
    return []


def _is_in_question(turn: Turn) -> bool:
    """Whether the walk still stands at the frame, and nothing else was asked in front of it."""
    if turn.question_put and turn.question_name not in _OF_THE_LAST:
        return False
    return turn.walk.given is not None or turn.facts.shutter_s is not None


def _in_front(turn: Turn, others: list[Part], *, last: bool) -> None:
    """Put the answers to the rest in front of that to the white, or behind it."""
    question = [part for part in turn.parts if part.role is Role.QUESTION]
    said = [part for part in turn.parts if part.role is not Role.QUESTION]
    others = [part for part in others if part.key not in {one.key for one in said}]
    turn.parts = [*said, *others, *question] if last else [*others, *said, *question]
