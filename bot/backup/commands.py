"""`linn backup` and `linn restore`: settings in, one sentence and an exit code out."""

from __future__ import annotations

import asyncio
import sqlite3
import sys
from collections.abc import Callable, Coroutine
from pathlib import Path
from typing import Any, Final

from sqlalchemy.exc import SQLAlchemyError

from bot.backup.errors import BackupError
from bot.backup.making import make_backup
from bot.backup.restoring import restore_backup
from bot.exits import Exit
from bot.faults import where_it_broke
from bot.settings import Settings, SettingsError, load_settings
from bot.store.database import SchemaNewerError
from bot.store.failures import DatabaseRefusedError

_MEGABYTE: Final = 1_000_000


def backup(path: Path) -> int:
    """Save the bot of the settings, running or not, into a new file."""
    return _run(lambda settings: _backup(path, settings))


def restore(path: Path, *, answer_old: bool) -> int:
    """Bring a backup into the empty data folder of the settings."""
    return _run(lambda settings: _restore(path, settings, answer_old=answer_old))


async def _backup(path: Path, settings: Settings) -> str:
    size, pictures = await make_backup(
        path,
        database=settings.database,
        data_dir=settings.data_dir,
        user_id=settings.user,
    )
    return (
        f"Saved the database, the signing identity and {pictures} pictures in {path} "
        f"({size / _MEGABYTE:.1f} MB). It holds what people wrote and the bot's secret keys: keep "
        "it where only you can read it, and delete it in time."
    )


async def _restore(path: Path, settings: Settings, *, answer_old: bool) -> str:
    restored = await restore_backup(
        path,
        database=settings.database,
        data_dir=settings.data_dir,
        user_id=settings.user,
        answer_old=answer_old,
    )
    return (
        f"Brought back the backup of {restored.made_at:%Y-%m-%d %H:%M} UTC with "
        f"{restored.pictures} pictures into {settings.data_dir}. `linn serve` signs in as a new "
        "device, so it needs LINN_PASSWORD. Who asked to be forgotten since then is known again: "
        "let them ask once more."
    )


def _run(work: Callable[[Settings], Coroutine[Any, Any, str]]) -> int:
    try:
        settings = load_settings()
    except SettingsError as error:
        sys.stderr.write("\n".join((*error.problems, "")))
        return Exit.CONFIG
    try:
        sentence = asyncio.run(work(settings))
    except (BackupError, SchemaNewerError, DatabaseRefusedError) as error:
        return _failed(str(error), error.exit_code)
    except OSError as error:
        return _failed(f"{error.filename or 'The disk'}: {error.strerror}.", Exit.FAILED)
    except (sqlite3.Error, SQLAlchemyError) as error:
        return _failed(f"The database failed: {where_it_broke(error)}.", Exit.FAILED)
    sys.stdout.write(sentence + "\n")
    return Exit.DONE


def _failed(sentence: str, code: Exit) -> int:
    sys.stderr.write(sentence + "\n")
    return code
