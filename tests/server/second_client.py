"""A person with a client that shares no code with the bot: matrix-js-sdk, signed devices only."""

from __future__ import annotations

import asyncio
import base64
import contextlib
import json
import shutil
from collections.abc import Callable
from dataclasses import dataclass
from itertools import count
from pathlib import Path
from types import TracebackType
from typing import Any, Final, Self

from bot.matrix.session import Account
from tests.server.node import FOLDER, find_node, installed_packages
from tests.server.person import PATIENCE_S

#: A picture in an answer is one line; far more than any of the tests' pictures.
_LONGEST_LINE: Final = 2**26


@dataclass(frozen=True)
class Seen:
    """An event as the second client shows it: decrypted, or why not."""

    room_id: str
    event_id: str
    sender: str
    type: str | None
    encrypted: bool
    failure: str | None
    content: dict[str, Any]
    #: Colour (0: none) and reason of the shield at an encrypted event.
    shield: tuple[int, int | None] | None = None
    reply_to: str | None = None
    thread_id: str | None = None
    poll: dict[str, Any] | None = None
    place: dict[str, Any] | None = None

    @property
    def body(self) -> str:
        """The words."""
        return str(self.content.get("body", ""))


class SecondClient:
    """Sends what people send, by another library, and keeps what it shows of others.

    async with SecondClient(account, tmp_path) as ada:
        room_id = await ada.asks("make_room", invite=[bot_id])
        await ada.asks("say", room_id=room_id, body="hello")
        answer = await ada.sees(lambda event: "Linn" in event.body)
    """

    def __init__(self, account: Account, folder: Path) -> None:
        self.account = account
        self.user_id = account.user_id
        self.seen: list[Seen] = []
        self._folder = folder
        self._numbers = count(1)
        self._answers: dict[int, asyncio.Future[Any]] = {}
        self._news = asyncio.Condition()

    async def __aenter__(self) -> Self:
        node = find_node()
        packages = await asyncio.to_thread(installed_packages, node)
        for script in FOLDER.glob("*.mjs"):
            shutil.copy(script, self._folder)
        (self._folder / "node_modules").symlink_to(packages, target_is_directory=True)
        self._process = await asyncio.create_subprocess_exec(
            *node.node,
            str(self._folder / "client.mjs"),
            stdin=asyncio.subprocess.PIPE,
            stdout=asyncio.subprocess.PIPE,
            limit=_LONGEST_LINE,
        )
        self._listening = asyncio.create_task(self._listen())
        started = await self.asks(
            "start",
            homeserver=self.account.homeserver,
            user_id=self.user_id,
            password=self.account.password,
        )
        self.device_id = str(started["device_id"])
        return self

    async def __aexit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        with contextlib.suppress(ProcessLookupError):
            self._process.kill()
        await self._process.wait()
        self._listening.cancel()
        with contextlib.suppress(asyncio.CancelledError):
            await self._listening

    async def asks(self, command: str, **given: Any) -> Any:
        """What the client answers to one of its commands (`client.mjs` lists them)."""
        number = next(self._numbers)
        answer = self._answers[number] = asyncio.get_running_loop().create_future()
        assert self._process.stdin is not None
        line = json.dumps({"id": number, "do": command, **given})
        self._process.stdin.write(line.encode() + b"\n")
        async with asyncio.timeout(PATIENCE_S):
            return await answer

    async def sees(self, wanted: Callable[[Seen], bool], after: int = 0) -> Seen:
        """Wait for an event of others, the first after that many, that is wanted."""

        def found() -> Seen | None:
            return next((event for event in self.seen[after:] if wanted(event)), None)

        async with asyncio.timeout(PATIENCE_S), self._news:
            await self._news.wait_for(lambda: found() is not None)
        event = found()
        assert event is not None
        return event

    async def fetches(self, file: dict[str, Any]) -> bytes:
        """A file of an encrypted event, downloaded and decrypted."""
        return base64.b64decode(await self.asks("fetch", file=file))

    async def _listen(self) -> None:
        assert self._process.stdout is not None
        while line := await self._process.stdout.readline():
            told = json.loads(line)
            if "event" in told:
                await self._take(told["event"])
                continue
            answer = self._answers.pop(told["id"])
            if answer.done():
                continue
            if "failed" in told:
                answer.set_exception(AssertionError(told["failed"]))
            else:
                answer.set_result(told["done"])

    async def _take(self, event: dict[str, Any]) -> None:
        if event["sender"] == self.user_id:
            return
        shield = tuple(event.pop("shield", None) or ()) or None
        seen = Seen(**{"content": {}, **event}, shield=shield)
        # The library shows an event again when it files it under its thread.
        if any((known.event_id, known.type) == (seen.event_id, seen.type) for known in self.seen):
            return
        self.seen.append(seen)
        async with self._news:
            self._news.notify_all()
