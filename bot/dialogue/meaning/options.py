"""Which option of an open question a reply in other words means: "zoomed past it"."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final, NamedTuple

from bot.dialogue.meaning.likeness import learned
from bot.dialogue.meaning.said import Said

#: What is said at a question and answers something else.
OTHER: Final = "other"


class Meant(NamedTuple):
    """An option, and how far before all else that the question could hear.

    Args:
        option: the nearest of the question's options, or `OTHER`.
        near: its nearness.
        ahead: how much nearer it is than the next.
    """

    option: str
    near: float
    ahead: float


def question_of(label: str) -> str:
    """The question that a label of the table belongs to."""
    return label.partition(".")[0]


def meant_at(question: str, options: Sequence[str], said: Said) -> Meant | None:
    """What a message means as a reply to a question of the walk.

    Args:
        question: its name; None is returned for one without examples.
        options: what it may mean: the options as they are offered, and `OTHER`.
        said: the message.
    """
    return _nearest("options", question, options, said)


def meant_of_safety(question: str, options: Sequence[str], said: Said) -> Meant | None:
    """The same of whether anybody is in danger, out there, or safe.

    Args:
        question: `in_danger`, `out_there` or `safe`.
        options: as above.
        said: the message.
    """
    return _nearest("safety", question, options, said)


def _nearest(table: str, question: str, options: Sequence[str], said: Said) -> Meant | None:
    near = learned(table).nearness(said.own)
    found = [
        (near[label], option) for option in options if (label := f"{question}.{option}") in near
    ]
    if not found:
        return None
    (first, option), (second, _) = sorted(found, reverse=True)[:2]
    return Meant(option, first, first - second)
