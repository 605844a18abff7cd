"""Fixtures: a homeserver that says what a test wants, and nio's client at it."""

from __future__ import annotations

from collections.abc import AsyncIterator
from pathlib import Path

import pytest
from nio import AsyncClient

from bot.matrix.backoff import Backoff
from bot.matrix.session import Account, new_client
from tests.matrix.receiving import run
from tests.matrix.scripted_server import DEVICE_ID, TOKEN, USER_ID, ScriptedServer

__all__ = ["run"]


@pytest.fixture
async def scripted() -> AsyncIterator[ScriptedServer]:
    """The homeserver."""
    server = ScriptedServer()
    await server.start()
    yield server
    await server.stop()


@pytest.fixture
def account(scripted: ScriptedServer, tmp_path: Path) -> Account:
    """The bot's account there."""
    return Account(scripted.url, USER_ID, tmp_path, password="quartz")


@pytest.fixture
async def signed_in(account: Account) -> AsyncIterator[AsyncClient]:
    """Nio's client, signed in."""
    client = new_client(account)
    client.restore_login(USER_ID, DEVICE_ID, TOKEN)
    yield client
    await client.close()  # type: ignore[no-untyped-call]
    assert client.store is not None
    client.store.database.close()


@pytest.fixture
def no_pauses(monkeypatch: pytest.MonkeyPatch) -> list[float | None]:
    """Pauses take no time; what the server asked for [s] is noted, once for each pause."""
    pauses: list[float | None] = []

    def next_s(_: Backoff, asked_s: float | None = None) -> float:
        pauses.append(asked_s)
        return 0.0

    monkeypatch.setattr(Backoff, "next_s", next_s)
    return pauses
