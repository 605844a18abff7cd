"""Saying something and waiting for the answers."""

from __future__ import annotations

import asyncio
from pathlib import Path

import pytest

from bot.terminal.commands import Frame, Message, Place, Said
from bot.trial.conversation import Conversation
from bot.trial.person import Heard

NOTICE = Heard("measuring", notice=True)
ANSWER = Heard("f/11", notice=False)


class Echo:
    """A client whose bot answers with prepared messages, each after a pause [s]."""

    def __init__(self, *answers: tuple[float, Heard]) -> None:
        self.answers = answers
        self.said: list[object] = []
        self.conversation = Conversation(self.said.append, answer_limit_s=0.2, quiet_s=0.05)

    async def _answer(self, what: object) -> None:
        self.said.append(what)
        self.task = asyncio.create_task(self._play())

    async def _play(self) -> None:
        for pause_s, heard in self.answers:
            await asyncio.sleep(pause_s)
            self.conversation.hear(heard)

    async def say(self, text: str) -> None:
        """Words."""
        await self._answer(text)

    async def share_frame(self, path: Path) -> None:
        """A picture."""
        await self._answer(path)

    async def share_place(self, latitude: float, longitude: float) -> None:
        """A location."""
        await self._answer((latitude, longitude))

    async def ask(self, command: Said) -> list[Heard]:
        """One turn of the conversation."""
        return await self.conversation.ask(self, command)


@pytest.mark.parametrize(
    ("command", "sent"),
    [
        (Message("why"), "why"),
        (Frame(Path("a.jpg")), Path("a.jpg")),
        (Place(44.15, -71.35), (44.15, -71.35)),
    ],
)
async def test_each_command_is_sent(command: Said, sent: object) -> None:
    """Words, pictures and places go out, and what comes back is shown and returned."""
    echo = Echo((0.0, ANSWER))
    assert await echo.ask(command) == [ANSWER]
    assert echo.said == [sent, ANSWER]


async def test_progress_is_no_answer() -> None:
    """After a notice the wait goes on as long as for the first answer."""
    echo = Echo((0.0, NOTICE), (0.1, ANSWER))
    assert await echo.ask(Message("why")) == [NOTICE, ANSWER]


async def test_silence_ends_the_wait() -> None:
    """Without an answer the turn comes back empty, and the next turn starts clean."""
    echo = Echo()
    assert await echo.ask(Message("why")) == []
    echo.conversation.hear(ANSWER)
    assert await echo.ask(Message("why")) == []
