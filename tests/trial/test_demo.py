"""Playing a walk and holding the answers against what is expected."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import pytest

from bot.terminal.commands import Frame, Message, Place, Said
from bot.trial.demo import Line, MissingAnswerError, play, shown, walk
from bot.trial.person import Heard


async def bot(command: Said) -> Sequence[Heard]:
    """Answers words with a sentence and frames with a picture."""
    if isinstance(command, Frame):
        return [Heard("measuring", notice=True), Heard("Area A", False, ("a.png", b"png"))]
    return [Heard("f/11, 1/4 s", notice=False)]


async def test_a_walk_that_holds() -> None:
    """When every expected answer comes, the walk ends well."""
    lines = [Line(Message("settings"), "1/4 S"), Line(Frame(Path("a.jpg")), "area", picture=True)]
    said: list[str] = []
    await play(lines, bot, said.append)
    assert said == ["settings", "(shares a.jpg)"]


@pytest.mark.parametrize(
    ("line", "missing"),
    [
        (Line(Message("settings"), "f/16"), "after “settings”: an answer that holds “f/16”"),
        (Line(Message("card"), "f/11", picture=True), "after “card”: a picture"),
    ],
)
async def test_a_missing_answer_is_named(line: Line, missing: str) -> None:
    """The walk stops at the first answer that does not come, and says which."""
    said: list[str] = []
    with pytest.raises(MissingAnswerError, match=missing):
        await play([line, Line(Message("never said"), "nothing")], bot, said.append)
    assert "never said" not in said


@pytest.mark.parametrize(
    ("command", "text"),
    [
        (Message("why"), "why"),
        (Frame(Path("frames") / "a.jpg"), "(shares a.jpg)"),
        (Place(44.15, -71.35), "(shares the place 44.15, -71.35)"),
    ],
)
def test_what_the_person_does_is_shown(command: Said, text: str) -> None:
    """Each command has its line in the printed talk."""
    assert shown(command) == text


def test_the_walk_of_the_demonstration_is_whole() -> None:
    """From arriving to the card, with two frames at least and a question for the reasons."""
    lines = walk(Path("frames"))
    said = [line.says for line in lines]
    assert said[0] == Message("start")
    assert Message("why") in said
    assert Message("card") in said
    assert sum(isinstance(part, Frame) for part in said) >= 2
