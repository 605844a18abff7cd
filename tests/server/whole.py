"""The whole bot in this process, from sync to store to sending, with a dialogue that counts."""

from __future__ import annotations

import asyncio
import contextlib
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass
from datetime import datetime

from bot.matrix.client import MatrixClient
from bot.matrix.policy import Policy
from bot.matrix.session import Account
from bot.runtime.job_kinds import Surroundings
from bot.runtime.runtime import Runtime, utc_now
from bot.store.database import Database
from bot.store.pictures import PictureFiles
from bot.store.store import Store
from bot.trouble import Troubles
from tests.runtime.fakes import DIALOGUE, FakeChecker


@dataclass
class Whole:
    """A running bot."""

    client: MatrixClient
    runtime: Runtime
    checker: FakeChecker


@asynccontextmanager
async def whole_bot(
    account: Account,
    policy: Policy,
    *,
    clock: Callable[[], datetime] = utc_now,
    prepare: Callable[[MatrixClient], None] = lambda _: None,
) -> AsyncIterator[Whole]:
    """Start the bot, and stop it at the end; the account's folder keeps what a restart needs.

    Args:
        account: the bot's.
        policy: who is answered.
        clock: the present, as the runtime sees it.
        prepare: changes the Matrix side before it is used.
    """
    store = Store(Database(f"sqlite:///{account.data_dir / 'linn.db'}"))
    await store.open()
    troubles, checker = Troubles(), FakeChecker()
    client = MatrixClient(account, policy, poll_s=1.0, troubles=troubles)
    await client.start()
    prepare(client)
    files = PictureFiles(account.data_dir / "pictures")
    around = Surroundings(store, files, client.transport, checker)
    runtime = Runtime(around, DIALOGUE, clock=clock, troubles=troubles)
    await runtime.start()
    receiving = asyncio.create_task(client.run(runtime))
    try:
        yield Whole(client, runtime, checker)
    finally:
        receiving.cancel()
        with contextlib.suppress(asyncio.CancelledError):
            await receiving
        await runtime.stop()
        await client.close()
        await store.close()
