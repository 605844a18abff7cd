"""The walk that the trial plays by itself: what the person says, and what must come back."""

from __future__ import annotations

import re
from collections.abc import Awaitable, Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from bot.terminal.commands import Frame, Message, Place, Said
from bot.trial.person import Heard

Ask = Callable[[Said], Awaitable[Sequence[Heard]]]


@dataclass(frozen=True)
class Line:
    """One line of the walk.

    Args:
        says: the person's part.
        expects: a pattern that some message of the answer must match.
        picture: a picture must come with the answer.
    """

    says: Said
    expects: str
    picture: bool = False


class MissingAnswerError(Exception):
    """The bot did not say what the walk expects; the text says what was missing."""


async def play(lines: Sequence[Line], ask: Ask, show: Callable[[str], None]) -> None:
    """Say the lines one after the other and hold the answers against what is expected.

    Args:
        lines: the walk.
        ask: says a line and gives the answers.
        show: prints what the person does.

    Raises:
        MissingAnswerError: at the first answer that is missing or another.
    """
    for line in lines:
        show(shown(line.says))
        answers = await ask(line.says)
        if not any(re.search(line.expects, heard.body, re.IGNORECASE) for heard in answers):
            raise MissingAnswerError(
                f"after “{shown(line.says)}”: an answer that holds “{line.expects}”"
            )
        if line.picture and not any(heard.picture for heard in answers):
            raise MissingAnswerError(f"after “{shown(line.says)}”: a picture")


def shown(said: Said) -> str:
    """What the person does, as one line of the printed talk."""
    match said:
        case Message(text):
            return text
        case Frame(path):
            return f"(shares {path.name})"
        case Place(latitude, longitude):
            return f"(shares the place {latitude}, {longitude})"


def walk(frames: Path) -> tuple[Line, ...]:
    """The whole walk, from arriving to keeping, with the frames in this folder."""
    return (
        Line(Message("start"), "signs, closures"),
        Line(
            Message("40 ft, 60 ft away, rocks at 5 ft. full frame, 16-35 and 24-105"),
            "27 mm, portrait",
        ),
        Line(Message("1"), "sides and corners"),
        Line(Message("1"), "does the main water blink"),
        Line(Frame(frames / "frame1.jpg"), "outlined", picture=True),
        Line(Message("why"), "share = speed"),
        Line(Frame(frames / "frame2.jpg"), "the white holds"),
        Line(Message("card"), "save this", picture=True),
    )
