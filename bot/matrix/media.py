"""Files to and from the homeserver: bounded, encrypted and decrypted, checked by hash."""

from __future__ import annotations

import asyncio
import io
from typing import Any, Final

from aiohttp import ClientError, ClientResponse
from nio.crypto.attachments import encrypt_attachment

from bot.dialogue.events import MediaRef
from bot.matrix.attachment import MXC_URI
from bot.matrix.attachment_cipher import AttachmentCipher
from bot.matrix.errors import ServerAnswerError
from bot.matrix.server_api import CLIENT_V1, MEDIA_V3, ServerApi, answer_error, transport_error
from bot.runtime.ports import (
    MediaBrokenOffError,
    MediaGoneError,
    MediaTooLargeError,
    SendRefusedError,
    SendUncertainError,
    UnreachableError,
    UploadedMedia,
)

#: Own rule: 50 MB in this time need 3 Mbit/s.
_TRANSFER_S: Final = 150.0
#: Longest wait for the beginning of a file [s]: a homeserver may fetch it from another first.
#: Own rule.
_BEGINNING_S: Final = 60.0
#: A file that has begun may take so long [s], and a second more for so many bytes of it: whoever
#: sends it in drips holds up nobody for long, and a weak line still gets through. Own rule.
_PATIENCE_S: Final = 20.0
_LEAST_BYTES_PER_S: Final = 250_000
_CHUNK_BYTES: Final = 64 * 1024


class Media:
    """The homeserver's store of files.

    Args:
        api: the homeserver.
    """

    def __init__(self, api: ServerApi) -> None:
        self._api = api

    async def download(self, media: MediaRef, max_bytes: int) -> bytes:
        """The file, decrypted; see `Transport.download`."""
        if media.stated_bytes is not None and media.stated_bytes > max_bytes:
            raise MediaTooLargeError(max_bytes)
        address = MXC_URI.fullmatch(media.address)
        if address is None:
            raise MediaGoneError("not an address on a homeserver")
        cipher = None if media.encryption is None else AttachmentCipher(media.encryption)
        response = await self._opened(address["server"], address["media_id"])
        async with response:
            return await _received(response, max_bytes, cipher)

    async def upload(self, data: bytes, mime: str, *, encrypt: bool) -> UploadedMedia:
        """Upload the file; see `Transport.upload`. An encrypted one says nothing of its kind."""
        encryption: dict[str, Any] | None = None
        if encrypt:
            data, encryption = await asyncio.to_thread(encrypt_attachment, data)
            mime = "application/octet-stream"
        try:
            answer = await self._api.call(
                "POST", "upload", body=data, base=MEDIA_V3, content_type=mime, within_s=_TRANSFER_S
            )
        except ServerAnswerError as error:
            raise transport_error(error) from error
        except ClientError as error:
            raise UnreachableError(type(error).__name__) from error
        except TimeoutError as error:
            raise SendUncertainError(type(error).__name__) from error
        if not isinstance(answer.get("content_uri"), str):
            raise UnreachableError("an answer without an address")
        return UploadedMedia(address=str(answer["content_uri"]), encryption=encryption)

    async def _opened(self, server: str, media_id: str) -> ClientResponse:
        """The response that brings a file, its body unread; the caller closes it."""
        try:
            async with asyncio.timeout(_BEGINNING_S):
                response = await self._api.open(
                    "GET", "media", "download", server, media_id, base=CLIENT_V1
                )
                if response.ok:
                    return response
                async with response:
                    raise await _refusal(response)
        except ClientError as error:
            raise UnreachableError(type(error).__name__) from error
        except TimeoutError as error:
            raise SendUncertainError(type(error).__name__) from error


async def _received(
    response: ClientResponse, max_bytes: int, cipher: AttachmentCipher | None
) -> bytes:
    """The file that a response brings, decrypted as it comes; never more than one copy of it."""
    if (response.content_length or 0) > max_bytes:
        raise MediaTooLargeError(max_bytes)
    plain = io.BytesIO()
    loop = asyncio.get_running_loop()
    latest = loop.time() + _PATIENCE_S
    try:
        async with asyncio.timeout_at(latest) as limit:
            async for piece in response.content.iter_chunked(_CHUNK_BYTES):
                plain.write(piece if cipher is None else cipher.update(piece))
                if plain.tell() > max_bytes:
                    raise MediaTooLargeError(max_bytes)
                limit.reschedule(latest + plain.tell() / _LEAST_BYTES_PER_S)
    except (ClientError, TimeoutError) as error:
        raise MediaBrokenOffError(type(error).__name__) from error
    if cipher is not None:
        cipher.finish()
    return plain.getvalue()


async def _refusal(response: ClientResponse) -> Exception:
    """A file that is refused for good is gone; for anything else the runtime waits."""
    error = transport_error(await answer_error(response))
    return MediaGoneError(str(error)) if isinstance(error, SendRefusedError) else error
