"""The lip, or a branch over it, told of the frame's edge that was just asked about: no danger."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger import Danger, DangerKind
from bot.dialogue.danger.whose import names_myself, names_somebody
from bot.dialogue.reading.edge_words import COVER, THINGS
from bot.dialogue.reading.edges import things_told
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.phrases import plain
from bot.dialogue.steps.anywhere import manner
from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn

#: What words of an edge sound like.
_KINDS: Final = frozenset({DangerKind.LIP, DangerKind.UNCLEAR})
_ASKED: Final = frozenset({"top", "sides"})
#: "I see", "I'd say": who tells of a picture, and stands nowhere in it.
_LOOKS: Final = re.compile(rf"\b{in_any('frame_edges.looks')}\b", re.IGNORECASE)
#: What a body does, in any form of it: where one is named, nothing is of the frame.
_BODY: Final = re.compile(rf"\b{in_any('frame_edges.body')}", re.IGNORECASE)
_PLACED: Final = re.compile(rf"(?:^|(?<=[.,;:!?]))\s*{in_any('frame_edges.placed')}", re.IGNORECASE)
_NAMED: Final = re.compile(rf"\b(?:{THINGS}|{COVER}|lip|crest|tops?|edges?|sky|sides?|corners?)\b")
#: Who hangs there may be somebody, unless it is a branch.
_HANGS: Final = re.compile(rf"\b{in_any('frame_edges.hangs')}", re.IGNORECASE)
_BRANCH_HANGS: Final = re.compile(
    rf"\b{THINGS}(?: \w+){{0,3}} {in_any('frame_edges.hangs')}"
    rf"|\b{in_any('frame_edges.it_hangs')}(?: \w+){{0,3}} {THINGS}\b"
)
_CLAUSES: Final = re.compile(r"(?<=[.,;!?])\s+")


def beside(turn: Turn, text: str, danger: Danger) -> str | None:
    """A message without what it tells of the frame's edges, to be read for danger once more.

    Args:
        turn: the answer under construction.
        text: as typed.
        danger: what was heard in all of it.

    Returns:
        None where the message as a whole counts: no edge is asked about, somebody or somebody's
        body is named anywhere in it, or it tells of no edge.
    """
    question = turn.context.conversation.question
    if question is None or question.name not in _ASKED or danger.kind not in _KINDS:
        return None
    said = _LOOKS.sub(" ", text)
    if names_somebody(said) or names_myself(said) or _somebody_is_there(said):
        return None
    language = manner.written_in(turn, text)
    clauses = [(one, plain(glossed(one, language))) for one in _CLAUSES.split(text)]
    rest = [one for one, english in clauses if not _is_of_edge(english, question.name)]
    return None if len(rest) == len(clauses) else " ".join(rest)


def _somebody_is_there(said: str) -> bool:
    """Whether somebody is told of without a name for them: by a body, or a place to be in."""
    return bool(_BODY.search(said) or _PLACED.search(said))


def _is_of_edge(clause: str, asked: str) -> bool:
    """Whether a clause tells of an edge of the frame; what hangs there is a branch."""
    hangs = _HANGS.search(clause) and not _BRANCH_HANGS.search(clause)
    return bool(_NAMED.search(clause) and things_told(clause, asked)) and not hangs
