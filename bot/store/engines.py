"""What runs transactions: SQLite in a thread of its own, or a server over the network."""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol, TypeVar

from sqlalchemy import Connection

Answer = TypeVar("Answer")
Transaction = Callable[[Connection], Answer]


class Engine(Protocol):
    """Runs transactions, one writer at a time, also among processes."""

    async def run(self, transaction: Transaction[Answer], *, writes: bool) -> Answer:
        """Run it; what it wrote stays when it returns, and nothing of it when it raises.

        Args:
            transaction: asks and changes; may be run again when it failed.
            writes: False for one that only asks: it sees one state and waits for nobody.
        """
        ...

    async def shred(self) -> None:
        """Take what was deleted out of the files."""
        ...

    async def empty_log(self) -> None:
        """Take older states out of the log, as far as nobody reads them; quicker than shredding."""
        ...

    async def close(self) -> None:
        """Close all connections."""
        ...
