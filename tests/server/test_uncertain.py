"""A message that may have arrived is looked for in its room before it is said again."""

from __future__ import annotations

import asyncio
import shutil
from collections.abc import Awaitable, Callable
from datetime import timedelta

import pytest

from bot.matrix import transport as transport_module
from bot.matrix.client import MatrixClient
from bot.matrix.policy import Policy
from bot.matrix.session import Account
from bot.runtime import runtime as runtime_module
from bot.runtime.ports import Outgoing
from bot.runtime.runtime import utc_now
from tests.server.homeserver import Town
from tests.server.person import Person
from tests.server.whole import whole_bot

pytestmark = pytest.mark.server


@pytest.mark.parametrize(
    ("encrypted", "new_device", "after_it", "later", "arrived"),
    [
        (False, False, 0, timedelta(), True),
        (False, False, 7, timedelta(minutes=30), True),
        (False, False, 0, timedelta(minutes=30), False),
        (True, False, 0, timedelta(minutes=30), True),
        (True, True, 1, timedelta(), True),
    ],
    ids=[
        "id still known",
        "beyond a page",
        "never arrived",
        "encrypted",
        "encrypted, new device",
    ],
)
async def test_it_is_said_once(
    town: Town,
    monkeypatch: pytest.MonkeyPatch,
    *,
    encrypted: bool,
    new_device: bool,
    after_it: int,
    later: timedelta,
    arrived: bool,
) -> None:
    """Whether the answer to the send was lost or the send itself, after a restart, however old."""
    monkeypatch.setattr(runtime_module, "_GRACE_S", 0.1)
    monkeypatch.setattr(transport_module, "_PAGE", 5)
    bot = town.account("bot")
    async with Person(town.account("ada")) as ada:
        policy = Policy.of([ada.user_id])
        lost = Lost(arrived)
        async with whole_bot(bot, policy, prepare=lost.take):
            room_id = await ada.direct_room(bot.user_id, encrypted=encrypted)
            await ada.meets(room_id, bot.user_id)
            await ada.say(room_id, "a")
            await asyncio.wait_for(lost.stuck.wait(), 20)
            for number in range(after_it):
                await lost.send(Outgoing(f"filler-{number}", room_id, "filler"))
        if new_device:
            _forget_device(bot)
        async with whole_bot(bot, policy, clock=lambda: utc_now() + later) as linn:
            await linn.runtime.drain()
            await ada.say(room_id, "b")
            await ada.hears(room_id, "2: b")
    said = [body for body in ada.bodies(room_id) if body != "filler"]
    assert said == ["1: a", "2: b"]
    assert len(ada.bodies(room_id)) == 2 + after_it


class Lost:
    """A way out on which the first message never comes to an end.

    Args:
        arrived: whether the message arrives all the same, and only nobody hears of it.
    """

    def __init__(self, arrived: bool) -> None:
        self._arrived = arrived
        self.stuck = asyncio.Event()
        self.send: Callable[[Outgoing], Awaitable[str]]

    def take(self, client: MatrixClient) -> None:
        """Stand in the client's way out; `send` is the true one."""
        self.send = client.transport.send
        client.transport.send = self._lose  # type: ignore[method-assign]

    async def _lose(self, outgoing: Outgoing) -> str:
        if self._arrived:
            await self.send(outgoing)
        self.stuck.set()
        await asyncio.Event().wait()
        raise AssertionError


def _forget_device(account: Account) -> None:
    """As after a restore: the next start signs in anew."""
    account.session_path.unlink()
    shutil.rmtree(account.data_dir / "matrix_keys")
