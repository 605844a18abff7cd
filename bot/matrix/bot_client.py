"""The library's client, made to survive a kill at any point, a soft logout and a lost answer."""

from __future__ import annotations

import asyncio
import json
from contextlib import suppress
from http import HTTPStatus
from typing import Any

from aiohttp import ClientResponse
from nio import (
    Api,
    AsyncClient,
    ErrorResponse,
    KeysUploadError,
    KeysUploadResponse,
    KeyVerificationEvent,
    LocalProtocolError,
    Response,
    SyncResponse,
    ToDeviceEvent,
)


class BotClient(AsyncClient):
    """nio's client, made to survive what nio 0.26 does not.

    It forgets its token when an error says (or seems to say) soft logout, and reads that into
    every refused sharing of a room key: here the token stays; when some request hears that the
    homeserver does not know it, `token_refused` says so. It saves one-time keys after the server
    has confirmed them, so that a kill in between leaves the server with keys that nobody has; and
    it takes a batch in by many small transactions, so that a kill can lose a key for good.
    """

    def __init__(self, *args: Any, **more: Any) -> None:
        super().__init__(*args, **more)
        self.token_refused = asyncio.Event()

    async def send(self, *args: Any, **more: Any) -> ClientResponse:
        """Send any request, nio's or ours, as nio does."""
        response: ClientResponse = await super().send(*args, **more)
        if response.status == HTTPStatus.UNAUTHORIZED:
            # What was read here can be read again.
            with suppress(ValueError, AttributeError):
                if json.loads(await response.read()).get("errcode") == "M_UNKNOWN_TOKEN":
                    self.token_refused.set()
        return response

    def _handle_decrypt_to_device(self, event: ToDeviceEvent) -> ToDeviceEvent | None:
        """Leave verification to `bot.matrix.verification`: nio's own gives up in the middle."""
        if isinstance(event, KeyVerificationEvent):
            return None
        handled: ToDeviceEvent | None = super()._handle_decrypt_to_device(event)
        return handled

    async def keys_upload(self) -> KeysUploadResponse | KeysUploadError:
        """Publish keys, saved before anybody sees them.

        When the server finds an id taken by another key (one whose secret was lost), these keys
        are taken out; the next ones have other ids.
        """
        if self.olm is None or not self.should_upload_keys:
            raise LocalProtocolError("there are no keys to upload")
        keys = self.olm.share_keys()
        self.olm.save_account()
        request = Api.keys_upload(self.access_token, keys)
        answer: KeysUploadResponse | KeysUploadError
        answer = await self._send(KeysUploadResponse, *request)
        if isinstance(answer, KeysUploadError) and _status_of(answer) == HTTPStatus.BAD_REQUEST:
            self.olm.mark_keys_as_published()
            self.olm.save_account()
        return answer

    async def receive_response(self, response: Response) -> None:
        """Take an answer in as nio does, but keep the token, and a batch's keys all or none."""
        token = self.access_token
        if isinstance(response, SyncResponse) and self.store is not None:
            await self._take_whole(response, self.store.database)
        else:
            await super().receive_response(response)
        if isinstance(response, ErrorResponse):
            self.access_token = token

    async def _take_whole(self, response: SyncResponse, database: Any) -> None:
        """One transaction; what was taken in before something broke stays, as nio goes on."""
        broken: Exception | None = None
        with database.atomic():
            try:
                await super().receive_response(response)
            except Exception as error:
                broken = error
        if broken is not None:
            raise broken


def _status_of(answer: ErrorResponse) -> int | None:
    response = answer.transport_response
    return None if response is None else int(getattr(response, "status", 0))
