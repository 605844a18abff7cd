"""A bot that was lost with its machine comes back from a backup, and the talk goes on."""

from __future__ import annotations

import asyncio
import dataclasses
from pathlib import Path
from typing import Any

import pytest

from bot.exits import Exit
from bot.matrix.private_file import read_private
from bot.matrix.server_api import ServerApi
from bot.matrix.session import Account
from tests.postgres import PostgresServer
from tests.server.homeserver import Town
from tests.server.person import PATIENCE_S, Person
from tests.server.second_client import SecondClient, Seen
from tests.server.served import ServedBot

pytestmark = pytest.mark.server


class Talk:
    """What a person says to the bot in a room, and what the bot answers.

    Args:
        fern: the person, whose client exchanges keys with signed devices only.
        bot_id: the bot.
        room_id: their room.
    """

    def __init__(self, fern: SecondClient, bot_id: str, room_id: str) -> None:
        self._fern = fern
        self._bot_id = bot_id
        self._room_id = room_id

    async def say(self, words: str) -> None:
        """Say something that may not be answered."""
        await self._fern.asks("say", room_id=self._room_id, body=words)

    async def ask(self, words: str, answer: str) -> Seen:
        """Say something, and wait for an answer with these words."""
        before = len(self._fern.seen)
        await self.say(words)
        return await self._fern.sees(
            lambda event: event.sender == self._bot_id and answer in event.body, before
        )

    def answers(self, words: str) -> int:
        """How many of the bot's messages have these words."""
        return sum(words in event.body for event in self._fern.seen)


async def _shown(town: Town, user_id: str) -> tuple[Any, set[str]]:
    """The account's master key and its devices, as the homeserver shows them to others."""
    async with Person(town.account("ada")) as ada:
        shown = await ServerApi(ada.client).call(
            "POST", "keys", "query", body={"device_keys": {user_id: []}}
        )
    return shown["master_keys"][user_id], set(shown["device_keys"][user_id])


async def _device_of(account: Account) -> str:
    """The device as which the bot has signed in."""
    async with asyncio.timeout(PATIENCE_S):
        while (session := read_private(account.session_path)) is None:  # noqa: ASYNC110  (a file)
            await asyncio.sleep(0.1)
    return str(session["device_id"])


async def test_the_talk_goes_on_after_a_restore(
    town: Town, tmp_path: Path, postgres: PostgresServer
) -> None:
    """Saved while it runs, lost, brought back elsewhere and into the other kind of database.

    The kit is remembered, the identity is the same, the device is new, and what was said while
    the bot was away is left alone. The second bot knows nothing of what came after the backup.
    """
    account = town.account("linn")
    first = ServedBot(account, "*:localhost")
    archive = tmp_path / "backup"
    async with (
        postgres.database() as database,
        SecondClient(town.account("fern"), _made(tmp_path / "client")) as fern,
    ):
        moved = dataclasses.replace(account, data_dir=_made(tmp_path / "elsewhere"))
        second = ServedBot(moved, "*:localhost", LINN_DATABASE_URL=database)
        first.start()
        try:
            room_id = str(await fern.asks("make_room", invite=[account.user_id]))
            await fern.asks("meet", room_id=room_id, user_id=account.user_id)
            talk = Talk(fern, account.user_id, room_id)
            await talk.ask("full frame, 24-70, tripod", "12 m tall")
            saved = await asyncio.to_thread(first.does, "backup", str(archive))
            assert (saved.returncode, saved.stderr) == (Exit.DONE, "")
            again = await asyncio.to_thread(first.does, "backup", str(archive))
            assert again.returncode == Exit.CANNOT_CREATE
            await talk.ask("kit", "24-70")
            before = await _shown(town, account.user_id)
            first.kill()
            await talk.say("are you there? f/8")

            brought = await asyncio.to_thread(second.does, "restore", str(archive))
            assert (brought.returncode, brought.stderr) == (Exit.DONE, "")
            second.start()
            device_id = await _device_of(moved)
            await fern.asks("trust", user_id=account.user_id, device_id=device_id)
            answer = await talk.ask("kit", "24-70")
        finally:
            first.kill()
            second.kill()
    after = await _shown(town, account.user_id)
    assert answer.shield == (0, None)
    assert after[0]["keys"] == before[0]["keys"]
    assert after[1] - before[1] == {device_id}
    assert talk.answers("24-70") == 2  # one of each bot; nothing said twice
    assert talk.answers("f/8") == 0
    assert not any(event.failure for event in fern.seen)


def _made(folder: Path) -> Path:
    folder.mkdir()
    return folder
