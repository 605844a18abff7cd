"""Which failures of a database pass by themselves, so that waiting is the answer."""

from __future__ import annotations

import sqlite3
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

from sqlalchemy.exc import DBAPIError, SQLAlchemyError

from bot.exits import Exit

#: SQLite's primary result codes (its documentation, "Result and Error Codes"; from memory).
#: A full disk shows as one of the last three when it is the log or a folder that can't grow.
_SQLITE: Final[Mapping[int, str]] = {
    sqlite3.SQLITE_BUSY: "locked by another process",
    sqlite3.SQLITE_LOCKED: "locked",
    sqlite3.SQLITE_FULL: "the disk is full",
    sqlite3.SQLITE_IOERR: "the disk fails",
    sqlite3.SQLITE_CANTOPEN: "can't be opened",
    sqlite3.SQLITE_READONLY: "read-only",
}
#: The low byte of an extended result code is the primary one.
_PRIMARY: Final = 0xFF

#: By the beginning of PostgreSQL's SQLSTATE (its manual, appendix A; from memory).
_SERVER: Final[Mapping[str, str]] = {
    "08": "the connection was lost",
    "40001": "another was quicker",
    "40P01": "another was quicker",
    "53100": "the disk is full",
    "53": "out of resources",
    "55P03": "locked by another process",
    "57014": "took too long",
    "57P": "the server is stopping or starting",
    "58": "the disk fails",
}


class UnreachableError(SQLAlchemyError):
    """The database server does not answer."""


class DatabaseRefusedError(SQLAlchemyError):
    """The database server refuses the bot: a wrong password, no such database, no right to it.

    Args:
        kind: what it says, without anybody's words.
    """

    #: A server that is being set up may know the bot in a moment.
    exit_code = Exit.FAILED

    def __init__(self, kind: str) -> None:
        super().__init__(
            f"The database server refuses the bot ({kind}): see user, password and name of the "
            "database in LINN_DATABASE_URL."
        )


class StillReadError(SQLAlchemyError):
    """Somebody reads an older state of the database, which keeps its log from being emptied."""


@dataclass(frozen=True)
class Passing:
    """A failure that passes.

    Attributes:
        kind: what it is, without anybody's words.
        quick: two writers met: the next try may follow at once.
    """

    kind: str
    quick: bool = False


def passing(error: Exception) -> Passing | None:
    """What a failure is, if the same transaction may succeed later; None if it can't."""
    if isinstance(error, UnreachableError):
        return Passing("no answer")
    if isinstance(error, StillReadError):
        return Passing("locked by a reader")
    if not isinstance(error, DBAPIError):
        return None
    cause = error.orig
    if isinstance(cause, sqlite3.Error):
        # Errors that the driver raises on its own account carry no code.
        kind = _SQLITE.get(getattr(cause, "sqlite_errorcode", 0) & _PRIMARY)
        return None if kind is None else Passing(kind)
    return _server_failure(error)


def _server_failure(error: DBAPIError) -> Passing | None:
    state = str(getattr(error.orig, "sqlstate", None) or "")
    for length in (5, 3, 2):
        if state[:length] in _SERVER:
            return Passing(_SERVER[state[:length]], quick=state.startswith("40"))
    return Passing("the connection was lost") if error.connection_invalidated else None
