"""The homeserver of the tests: one for all of them, started when the first one asks."""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from pathlib import Path
from typing import Final

import pytest

from bot.matrix.session import Account
from bot.trial.homeserver import Homeserver

PASSWORD: Final = "quartz gravel 7"


class Town:
    """A homeserver and the accounts that tests make on it; each name is used once.

    Args:
        server: a started homeserver.
        folder: where accounts keep their keys.
    """

    def __init__(self, server: Homeserver, folder: Path) -> None:
        self.server = server
        self._folder = folder
        self._numbers = itertools.count(1)

    def account(self, name: str, *, admin: bool = False) -> Account:
        """A new account whose name begins with `name`."""
        unique = f"{name}{next(self._numbers)}"
        user_id = self.server.register(unique, PASSWORD, admin=admin)
        folder = self._folder / unique
        folder.mkdir(parents=True)
        return Account(self.server.url, user_id, folder, password=PASSWORD)


@pytest.fixture(scope="session")
def town(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Town]:
    """A real homeserver on loopback, without rate limits."""
    folder = tmp_path_factory.mktemp("town")
    with Homeserver(folder / "homeserver", in_memory=True) as server:
        yield Town(server, folder / "accounts")
