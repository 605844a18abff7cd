"""Who may speak to the bot, exact user ids or whole servers, and who of them leads."""

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
        leaders: those of them who are named leaders.
    """

    users: frozenset[str] = frozenset()
    servers: frozenset[str] = frozenset()
    leaders: frozenset[str] = frozenset()

    @classmethod
    def of(cls, entries: Iterable[str], leaders: Iterable[str] = ()) -> Self:
        """The policy for a list of `@name:server` and `*:server`, and one of `@name:server`.

        Raises:
            ValueError: an entry is neither, so that a slip neither locks out nor lets in; or a
                leader is nobody who is allowed.
        """
        users, servers = set(), set()
        for entry in (entry.strip() for entry in entries):
            if _USER_ID.fullmatch(entry):
                users.add(entry)
            elif _WHOLE_SERVER.fullmatch(entry):
                servers.add(entry.removeprefix("*:"))
            else:
                raise ValueError(f"{entry!r} is neither @name:server nor *:server")
        policy = cls(frozenset(users), frozenset(servers), frozenset(leaders))
        for leader in sorted(policy.leaders):
            if not policy.allows(leader):
                raise ValueError(f"{leader!r} is named a leader and not allowed")
        return policy

    @property
    def allows_nobody(self) -> bool:
        """Whether there is nobody to answer at all: more likely a slip than a wish."""
        return not self.users and not self.servers

    def allows(self, user_id: str) -> bool:
        """Whether this person is answered."""
        if not _USER_ID.fullmatch(user_id):
            return False
        return user_id in self.users or user_id.partition(":")[2] in self.servers

    def leads(self, user_id: str) -> bool:
        """Whether this person is a named leader."""
        return user_id in self.leaders

    def may_bring_into_groups(self, user_id: str) -> bool:
        """Whether this person may bring the bot into a group room.

        Where leaders are named, they alone; into a direct room anybody who is allowed may.
        """
        return self.allows(user_id) and (not self.leaders or self.leads(user_id))
