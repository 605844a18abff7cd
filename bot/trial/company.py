"""The bot and one person beside a homeserver that runs: starting, meeting, talking, stopping."""

from __future__ import annotations

import asyncio
import contextlib
from collections.abc import Coroutine
from pathlib import Path
from typing import Any, Final, Self

from bot.app import run_bot
from bot.matrix.session import Account
from bot.settings import Settings
from bot.terminal.commands import Said
from bot.terminal.printing import Printer
from bot.trial.conversation import Conversation
from bot.trial.folder import Kept
from bot.trial.homeserver import Homeserver
from bot.trial.person import Heard, Person

#: Invented names; both accounts exist on the throwaway homeserver alone.
BOT_NAME: Final = "linn"
PERSON_NAME: Final = "wren"
#: Own rule: long enough to sign in, sign the device and join, on a slow machine too [s].
_MEETING_LIMIT_S: Final = 90.0


class Company:
    """Both sides of the trial's talk.

    Args:
        server: the homeserver; the accounts are made when they are not there.
        folder: where both keep their keys.
        values: their passwords.
        printer: prints what the bot says.
    """

    def __init__(self, server: Homeserver, folder: Path, values: Kept, printer: Printer) -> None:
        self.person_id = server.register(PERSON_NAME, values.person_password)
        self.bot_id = server.register(BOT_NAME, values.bot_password)
        self._printer = printer
        self._settings = _settings(server, folder, values, self.bot_id, self.person_id)
        self._account = _account(server, folder, values, self.person_id)
        self._conversation = Conversation(self._print)

    async def __aenter__(self) -> Self:
        """Start the bot, sign the person in, and wait until they have met.

        Raises:
            TimeoutError: they did not meet in time.
        """
        async with contextlib.AsyncExitStack() as stack:
            self._bot = asyncio.create_task(run_bot(self._settings), name="bot")
            stack.push_async_callback(self._stop_bot)
            self._person = Person(self._account, self.bot_id, self._conversation.hear)
            stack.push_async_callback(self._person.stop)
            async with asyncio.timeout(_MEETING_LIMIT_S):
                await self._unless_bot_ends(self._meet())
            self._stack = stack.pop_all()
        return self

    async def __aexit__(self, *_: object) -> None:
        """Sign nobody out, so that the next trial goes on; stop the bot."""
        await self._stack.aclose()

    async def ask(self, said: Said) -> list[Heard]:
        """The bot's messages to what was said; empty when none came in time."""
        return await self._unless_bot_ends(self._conversation.ask(self._person, said))

    async def _meet(self) -> list[Heard]:
        await self._person.start()
        await self._person.meet_bot()
        return []

    async def _unless_bot_ends(self, talk: Coroutine[Any, Any, list[Heard]]) -> list[Heard]:
        """The talk's result; what the bot broke down with, if it ends meanwhile."""
        talking = asyncio.ensure_future(talk)
        try:
            await asyncio.wait({talking, self._bot}, return_when=asyncio.FIRST_COMPLETED)
            if not talking.done():
                await self._bot
            return await talking
        finally:
            talking.cancel()

    async def _stop_bot(self) -> None:
        self._bot.cancel()
        with contextlib.suppress(asyncio.CancelledError):
            await self._bot

    def _print(self, heard: Heard) -> None:
        self._printer.bot(heard.body, heard.picture)


def _settings(
    server: Homeserver, folder: Path, values: Kept, bot_id: str, person_id: str
) -> Settings:
    """The bot's settings for the trial alone, whatever the environment says."""
    return Settings(
        homeserver=server.url,
        user=bot_id,
        password=values.bot_password,
        access_token=None,
        device_id=None,
        database_url=None,
        data_dir=folder / "bot",
        allowed=(person_id,),
    )


def _account(server: Homeserver, folder: Path, values: Kept, person_id: str) -> Account:
    data_dir = folder / "person"
    data_dir.mkdir(mode=0o700, exist_ok=True)
    return Account(
        homeserver=server.url,
        user_id=person_id,
        data_dir=data_dir,
        password=values.person_password,
        device_name="linn try",
    )
