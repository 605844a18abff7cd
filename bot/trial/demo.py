"""The walk that the trial plays by itself: what the person says, and what must come back."""

from __future__ import annotations

import re
from collections.abc import Awaitable, Callable, Sequence
from dataclasses import dataclass

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


async def play(lines: Sequence[Line], ask: Ask) -> None:
    """Say the lines one after the other and hold the answers against what is expected.

    Raises:
        MissingAnswerError: at the first answer that is missing or another.
    """
    for line in lines:
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
