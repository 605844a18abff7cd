"""One person's talk with the bot over the real connection: say something, wait for the answers."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from pathlib import Path
from typing import Final, Protocol

from bot.terminal.commands import Frame, Message, Place, Said
from bot.trial.person import Heard

#: Own rule: longer than a frame check may take (30 s) and its way there and back.
ANSWER_LIMIT_S: Final = 45.0
#: Own rule: after this much silence the bot has said all that it had to say.
QUIET_S: Final = 1.0


class Speaker(Protocol):
    """What the conversation needs of the person's client."""

    async def say(self, text: str) -> None:
        """Send words."""
        ...

    async def share_frame(self, path: Path) -> None:
        """Send a picture."""
        ...

    async def share_place(self, latitude: float, longitude: float) -> None:
        """Send a location."""
        ...


class Conversation:
    """Sends what was asked for and gathers what the bot says to it.

    Args:
        on_message: called for each message as it arrives.
        answer_limit_s: how long the first answer may take [s].
        quiet_s: how long the bot must be silent until it is the person's turn again [s].
    """

    def __init__(
        self,
        on_message: Callable[[Heard], None],
        *,
        answer_limit_s: float = ANSWER_LIMIT_S,
        quiet_s: float = QUIET_S,
    ) -> None:
        self._on_message = on_message
        self._answer_limit_s = answer_limit_s
        self._quiet_s = quiet_s
        self._heard: asyncio.Queue[Heard] = asyncio.Queue()

    def hear(self, message: Heard) -> None:
        """Take a message of the bot."""
        self._on_message(message)
        self._heard.put_nowait(message)

    async def ask(self, speaker: Speaker, said: Said) -> list[Heard]:
        """The bot's messages to it, progress included; empty when none came in time."""
        while not self._heard.empty():
            self._heard.get_nowait()
        await _send(speaker, said)
        return await self._answers()

    async def _answers(self) -> list[Heard]:
        answers: list[Heard] = []
        limit_s = self._answer_limit_s
        while True:
            try:
                async with asyncio.timeout(limit_s):
                    answers.append(await self._heard.get())
            except TimeoutError:
                return answers
            if not answers[-1].notice:
                limit_s = self._quiet_s


async def _send(speaker: Speaker, said: Said) -> None:
    match said:
        case Message(text):
            await speaker.say(text)
        case Frame(path):
            await speaker.share_frame(path)
        case Place(latitude, longitude):
            await speaker.share_place(latitude, longitude)
