"""What has to succeed before anything else goes on: tried again, with pauses, until it does."""

from __future__ import annotations

import asyncio
from collections.abc import Awaitable, Callable
from typing import NoReturn, TypeVar

from aiohttp import ClientError

from bot.faults import where_it_broke
from bot.matrix.backoff import Backoff
from bot.matrix.errors import ServerAnswerError, UnknownTokenError
from bot.trouble import Trouble

T = TypeVar("T")


async def until_done(act: Callable[[], Awaitable[T]], trouble: Trouble) -> T:
    """The result of `act()`, repeated until it succeeds; what it did not do, it does again.

    Args:
        act: what is to be done.
        trouble: tells the log.

    Raises:
        UnknownTokenError: the homeserver does not know the token any more.
    """
    backoff = Backoff()
    while True:
        try:
            result = await act()
        except Exception as error:
            stop_without_token(error)
            trouble.met(kind_of(error))
            asked_s = error.asked_s if isinstance(error, ServerAnswerError) else None
            await asyncio.sleep(backoff.next_s(asked_s))
        else:
            trouble.over()
            return result


def kind_of(error: Exception) -> str:
    """What the log says of an error: the server's answer, else its type, else where it broke."""
    if isinstance(error, ServerAnswerError):
        return str(error)
    if isinstance(error, ClientError | TimeoutError):
        return type(error).__name__
    return where_it_broke(error)


def stop_without_token(error: Exception) -> None:
    """Nothing, for all errors but one.

    Raises:
        UnknownTokenError: the error says that the token is not known any more.
    """
    if isinstance(error, ServerAnswerError) and error.code == "M_UNKNOWN_TOKEN":
        raise_unknown_token()


def raise_unknown_token() -> NoReturn:
    """End the process with the exit code that says why.

    Raises:
        UnknownTokenError: always.
    """
    raise UnknownTokenError(
        "The homeserver does not know the bot's token any more. `linn keys new-device` lets the "
        "bot come back as a new device, signed by the same identity."
    )
