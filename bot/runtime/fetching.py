"""Shared files fetched from the homeserver, and what is said of those that can't be."""

from __future__ import annotations

import asyncio
from dataclasses import dataclass
from typing import Final

from bot.dialogue.events import MediaRef
from bot.runtime.outcomes import Outcome
from bot.runtime.ports import (
    MediaBrokenOffError,
    MediaDamagedError,
    MediaGoneError,
    MediaTooLargeError,
    Transport,
)
from core.errors import FrameFault

#: Longest wait for a shared file [s] (own rule): the Matrix side's own limits allow 60 MB so long.
DOWNLOAD_S: Final = 360.0
#: A file that broke off after so many delays is given up (own rule): who sends his file in drips
#: does not keep the bot waiting for an hour, as a homeserver that is away does.
_BROKEN_OFF: Final = 5


@dataclass(frozen=True)
class Fetching:
    """Fetches shared files.

    Attributes:
        transport: the way to them.
        max_bytes: largest file that is fetched.
    """

    transport: Transport
    max_bytes: int

    async def fetch(self, media: MediaRef, delays: int) -> bytes | Outcome:
        """The file, or what is wrong with it.

        Args:
            media: where it lies.
            delays: how often this was put off before.

        Raises:
            SendUncertainError, SendLaterError, OSError: to be tried again.
        """
        try:
            async with asyncio.timeout(DOWNLOAD_S):
                return await self.transport.download(media, self.max_bytes)
        except MediaTooLargeError as error:
            numbers = {"limit": float(error.limit)}
            return Outcome(fault=FrameFault.TOO_MANY_BYTES, numbers=numbers)
        except MediaGoneError:
            return Outcome(fault=FrameFault.GONE)
        except MediaDamagedError:
            return Outcome(fault=FrameFault.DAMAGED)
        except MediaBrokenOffError:
            if delays < _BROKEN_OFF:
                raise
            return Outcome(fault=FrameFault.GONE)
