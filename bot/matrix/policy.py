"""Who may speak to the bot: exact user ids or whole servers; by default nobody."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final, Self

#: A user id as the Matrix specification's appendix "User Identifiers" bounds it: a sigil, a local
#: part (old ids hold almost anything but the colon), a server name.
_USER_ID: Final = re.compile(r"@[^:\s*]+:[^\s@*]+")
_WHOLE_SERVER: Final = re.compile(r"\*:[^\s@*]+")


@dataclass(frozen=True)
class Policy:
    """The people who are answered.

    Attributes:
        users: full user ids, `@name:server`.
        servers: server names all of whose people are allowed.
    """

    users: frozenset[str] = frozenset()
    servers: frozenset[str] = frozenset()

    @classmethod
    def of(cls, entries: Iterable[str]) -> Self:
        """The policy for a list of `@name:server` and `*:server`.

        Raises:
            ValueError: an entry is neither, so that a slip neither locks out nor lets in.
        """
        users, servers = set(), set()
        for entry in (entry.strip() for entry in entries):
            if _USER_ID.fullmatch(entry):
                users.add(entry)
            elif _WHOLE_SERVER.fullmatch(entry):
                servers.add(entry.removeprefix("*:"))
            else:
                raise ValueError(f"{entry!r} is neither @name:server nor *:server")
        return cls(frozenset(users), frozenset(servers))

    def allows(self, user_id: str) -> bool:
        """Whether this person is answered."""
        if not _USER_ID.fullmatch(user_id):
            return False
        return user_id in self.users or user_id.partition(":")[2] in self.servers
