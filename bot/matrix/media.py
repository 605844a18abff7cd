"""Files to and from the homeserver: bounded, encrypted and decrypted, checked by hash."""

from __future__ import annotations

import asyncio
from typing import Any, Final

from aiohttp import ClientError, ClientResponse
from nio.crypto.attachments import decrypt_attachment, encrypt_attachment
from nio.exceptions import EncryptionError

from bot.dialogue.events import MediaRef
from bot.matrix.attachment import MXC_URI
from bot.matrix.errors import ServerAnswerError
from bot.matrix.server_api import CLIENT_V1, MEDIA_V3, ServerApi, answer_error, transport_error
from bot.runtime.ports import (
    MediaDamagedError,
    MediaGoneError,
    MediaTooLargeError,
    SendRefusedError,
    SendUncertainError,
    UnreachableError,
    UploadedMedia,
)

#: Own rule: 50 MB in this time need 3 Mbit/s.
_TRANSFER_S: Final = 150.0
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
        try:
            async with asyncio.timeout(_TRANSFER_S):
                data = await self._fetch(address["server"], address["media_id"], max_bytes)
        except ClientError as error:
            raise UnreachableError(type(error).__name__) from error
        except TimeoutError as error:
            raise SendUncertainError(type(error).__name__) from error
        if media.encryption is None:
            return data
        return await asyncio.to_thread(decrypted, data, media.encryption)

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

    async def _fetch(self, server: str, media_id: str, max_bytes: int) -> bytes:
        response = await self._api.open(
            "GET", "media", "download", server, media_id, base=CLIENT_V1
        )
        async with response:
            if not response.ok:
                raise await _refusal(response)
            return await _bounded(response, max_bytes)


def decrypted(data: bytes, encryption: dict[str, Any]) -> bytes:
    """The plain file.

    Raises:
        MediaDamagedError: the hash differs, or key, iv and hash are not what they should be.
    """
    try:
        plain: bytes = decrypt_attachment(
            data,
            key=encryption["key"]["k"],
            hash=encryption["hashes"]["sha256"],
            iv=encryption["iv"],
        )
    except (EncryptionError, KeyError, TypeError, ValueError) as error:
        raise MediaDamagedError(type(error).__name__) from error
    return plain


async def _bounded(response: ClientResponse, max_bytes: int) -> bytes:
    if (response.content_length or 0) > max_bytes:
        raise MediaTooLargeError(max_bytes)
    data = bytearray()
    async for chunk in response.content.iter_chunked(_CHUNK_BYTES):
        data += chunk
        if len(data) > max_bytes:
            raise MediaTooLargeError(max_bytes)
    return bytes(data)


async def _refusal(response: ClientResponse) -> Exception:
    """A file that is refused for good is gone; for anything else the runtime waits."""
    error = transport_error(await answer_error(response))
    return MediaGoneError(str(error)) if isinstance(error, SendRefusedError) else error
