"""Requests to the homeserver that nio has no method for, or answers too coarsely."""

from __future__ import annotations

import asyncio
import io
import json
from collections.abc import Mapping
from http import HTTPStatus
from typing import Any, BinaryIO, Final
from urllib.parse import quote, urlencode

from aiohttp import ClientResponse
from nio import AsyncClient, ErrorResponse

from bot.matrix.backoff import asked_s
from bot.matrix.errors import ServerAnswerError
from bot.runtime.ports import (
    SendLaterError,
    SendRefusedError,
    SendUncertainError,
    TransportError,
    UnreachableError,
)

CLIENT_V3: Final = "/_matrix/client/v3"
CLIENT_V1: Final = "/_matrix/client/v1"
MEDIA_V3: Final = "/_matrix/media/v3"
#: Own rule: long enough for a busy homeserver, short enough to be repeated by the outbox.
REQUEST_S: Final = 60.0

JsonObject = dict[str, Any]


class ServerApi:
    """The client-server interface, one call at a time, with the bot's token.

    Args:
        client: lends its connection pool, homeserver address and access token.
    """

    def __init__(self, client: AsyncClient) -> None:
        self._client = client

    async def call(
        self,
        method: str,
        *path: str,
        body: JsonObject | bytes | None = None,
        query: Mapping[str, str] | None = None,
        base: str = CLIENT_V3,
        content_type: str = "application/json",
        within_s: float = REQUEST_S,
    ) -> JsonObject:
        """The JSON answer.

        Args:
            method: HTTP method.
            path: parts of the path below `base`; they are quoted here.
            body: JSON, or bytes that go out as they are.
            query: parameters of the address.
            base: the interface's version.
            content_type: of the body.
            within_s: time limit for the whole exchange [s].

        Raises:
            ServerAnswerError: the server answered with something else than success.
            aiohttp.ClientError, TimeoutError: no answer.
        """
        data: str | BinaryIO | None = json.dumps(body) if isinstance(body, dict) else None
        if isinstance(body, bytes):
            data = io.BytesIO(body)  # aiohttp writes a file in pieces, bytes in one go
        async with asyncio.timeout(within_s):
            response = await self.open(
                method, *path, data=data, query=query, base=base, content_type=content_type
            )
            async with response:
                if not response.ok:
                    raise await answer_error(response)
                answer = await _json_of(response)
        if answer is None:  # a proxy's page, whatever its status says
            raise ServerAnswerError(response.status, {})
        return answer

    async def open(
        self,
        method: str,
        *path: str,
        data: str | BinaryIO | None = None,
        query: Mapping[str, str] | None = None,
        base: str = CLIENT_V3,
        content_type: str = "application/json",
    ) -> ClientResponse:
        """The response with its body unread; the caller closes it and sets the time limit."""
        address = "/".join([base, *(quote(part, safe="") for part in path)])
        if query:
            address += f"?{urlencode(query)}"
        headers = {
            "Content-Type": content_type,
            "Authorization": f"Bearer {self._client.access_token}",
        }
        # nio's time limit would end with the headers; ours are set around the whole exchange.
        response: ClientResponse = await self._client.send(
            method, address, data, headers, timeout=0
        )
        return response


async def answer_error(response: ClientResponse) -> ServerAnswerError:
    """The error that a response without success stands for."""
    answer = await _json_of(response) or {}
    return ServerAnswerError(response.status, answer, asked_s(answer, response.headers))


def refusal(answer: ErrorResponse) -> ServerAnswerError:
    """The error that one of nio's answers stands for; nio itself reads no `Retry-After`."""
    body: JsonObject = {}
    if answer.status_code is not None:
        body = {"errcode": answer.status_code, "retry_after_ms": answer.retry_after_ms}
    response: object = answer.transport_response
    if not isinstance(response, ClientResponse):
        return ServerAnswerError(0, body, asked_s(body, {}))
    return ServerAnswerError(response.status, body, asked_s(body, response.headers))


async def _json_of(response: ClientResponse) -> JsonObject | None:
    """The object in the body; None when there is none, as in a page for people."""
    try:
        answer = json.loads(await response.read())
    except ValueError:
        return None
    return answer if isinstance(answer, dict) else None


def transport_error(error: ServerAnswerError) -> TransportError:
    """What the runtime has to do about an answer that is no success."""
    if error.status == HTTPStatus.TOO_MANY_REQUESTS or error.code == "M_LIMIT_EXCEEDED":
        return SendLaterError(error.retry_after_s, limited=True)
    if error.code == "M_UNKNOWN_TOKEN":
        # The process ends by it; the message waits for the next start.
        return SendLaterError(error.retry_after_s)
    if not error.is_the_homeservers and error.status != HTTPStatus.REQUEST_ENTITY_TOO_LARGE:
        # What spoke in front of the homeserver may be gone in a minute; a body that is too large
        # stays too large.
        return UnreachableError(str(error))
    if error.status >= HTTPStatus.INTERNAL_SERVER_ERROR:
        return SendUncertainError(str(error))
    return SendRefusedError(str(error))
