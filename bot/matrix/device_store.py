"""The device's own keys out of nio's key store, read beside a running bot; nothing is written."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path
from typing import Final

from nio import AsyncClientConfig
from nio.crypto.sessions import OlmAccount

from bot.matrix.identity import Device

#: Own rule: how long a writer may keep us waiting [s].
_PATIENCE_S: Final = 10.0


def read_device(folder: Path, user_id: str, device_id: str) -> Device | None:
    """The device with its keys, None when they are not there or cannot be read.

    nio's own way in makes new keys where it finds none, and writes at opening.

    Args:
        folder: nio's key store.
        user_id: whose device.
        device_id: which device.
    """
    path = folder / f"{user_id}_{device_id}.db"
    if not path.is_file():
        return None
    try:
        uri = f"{path.absolute().as_uri()}?mode=ro"
        with closing(sqlite3.connect(uri, timeout=_PATIENCE_S, uri=True)) as store:
            row = store.execute(
                "SELECT account FROM accounts WHERE user_id = ? AND device_id = ?",
                (user_id, device_id),
            ).fetchone()
        if row is None:
            return None
        account = OlmAccount.from_pickle(bytes(row[0]), AsyncClientConfig().pickle_key)
    except (sqlite3.Error, ValueError, TypeError):
        return None
    keys = account.identity_keys
    return Device(user_id, device_id, keys["ed25519"], keys["curve25519"], account)
