"""Pictures both ways on a real homeserver, in plain and in encrypted rooms."""

from __future__ import annotations

import asyncio
import hashlib
import io

import pytest
from PIL import Image

from bot.dialogue.events import FrameReceived, MediaRef
from bot.matrix.client import MatrixClient
from bot.matrix.policy import Policy
from bot.matrix.server_api import ServerApi
from bot.pictures.thumbnail import size_of, thumbnail
from bot.runtime.ports import (
    MediaDamagedError,
    MediaGoneError,
    MediaTooLargeError,
    Outgoing,
    UploadedPicture,
)
from tests.server.echo import EchoRuntime, running_bot
from tests.server.homeserver import Town
from tests.server.person import Person
from tests.server.whole import whole_bot

pytestmark = pytest.mark.server

both_kinds = pytest.mark.parametrize("encrypted", [False, True], ids=["plain", "encrypted"])


def _png(width: int, height: int) -> bytes:
    """A picture that does not compress to nothing."""
    noise = Image.effect_noise((width, height), 60).convert("RGB")
    file = io.BytesIO()
    noise.save(file, "PNG")
    return file.getvalue()


async def _uploaded(client: MatrixClient, room_id: str, picture: bytes) -> UploadedPicture:
    width, height, mime = size_of(picture)
    small = thumbnail(picture)
    return UploadedPicture(
        media=await client.transport.upload(picture, mime, room_id),
        mime=mime,
        width=width,
        height=height,
        size=len(picture),
        file_name="marked.png",
        alt="The fall with one area outlined",
        thumbnail=await client.transport.upload(small.data, small.mime, room_id),
        thumbnail_mime=small.mime,
        thumbnail_width=small.width,
        thumbnail_height=small.height,
        thumbnail_size=len(small.data),
    )


@both_kinds
@pytest.mark.parametrize("msgtype", ["m.image", "m.file"])
async def test_a_shared_picture_arrives_whole(town: Town, encrypted: bool, msgtype: str) -> None:
    """The bytes that a person shares are the bytes that the bot fetches; the limit holds."""
    bot, runtime, picture = town.account("bot"), EchoRuntime(), _png(320, 200)
    async with Person(town.account("ada")) as ada, running_bot(bot, runtime, ada.user_id) as client:
        room_id = await ada.direct_room(bot.user_id, encrypted=encrypted)
        await ada.meets(room_id, bot.user_id)
        await ada.share_picture(room_id, picture, "image/png", "1/4 s, f/11", msgtype)
        (event,) = await runtime.takes(1)
        assert isinstance(event, FrameReceived)
        data = await client.transport.download(event.media, len(picture))
        with pytest.raises(MediaTooLargeError):
            await client.transport.download(event.media, len(picture) - 1)
        unstated = event.media.model_copy(update={"stated_bytes": 10})
        with pytest.raises(MediaTooLargeError):
            await client.transport.download(unstated, len(picture) - 1)
    assert hashlib.sha256(data).digest() == hashlib.sha256(picture).digest()
    assert event.caption == "1/4 s, f/11"
    assert event.media.stated_type == "image/png"
    assert (event.media.encryption is not None) == encrypted


@both_kinds
async def test_a_picture_of_the_bot_arrives_with_its_thumbnail(town: Town, encrypted: bool) -> None:
    """Picture and thumbnail can be fetched (and decrypted); their sizes are true."""
    bot, runtime, picture = town.account("bot"), EchoRuntime(), _png(600, 1000)
    async with Person(town.account("ada")) as ada, running_bot(bot, runtime, ada.user_id) as client:
        room_id = await ada.direct_room(bot.user_id, encrypted=encrypted)
        await ada.meets(room_id, bot.user_id)
        await ada.say(room_id, "hello")
        await ada.hears(room_id, "echo: hello")
        uploaded = await _uploaded(client, room_id, picture)
        outgoing = Outgoing("row-picture", room_id, "Pull back by 2/3 stop.", picture=uploaded)
        first = await client.transport.send(outgoing)
        again = await client.transport.send(outgoing)
        content = await ada.hears(room_id, "Pull back by 2/3 stop.")
        info = content["info"]
        data = await ada.fetch(content.get("url"), content.get("file"))
        small = await ada.fetch(info.get("thumbnail_url"), info.get("thumbnail_file"))
    assert first == again
    assert data == picture
    assert (content["msgtype"], content["filename"]) == ("m.image", "marked.png")
    assert ("file" in content, "url" in content) == (encrypted, not encrypted)
    assert (info["w"], info["h"], info["size"]) == (600, 1000, len(picture))
    with Image.open(io.BytesIO(small)) as image:
        shown = info["thumbnail_info"]
        assert image.size == (shown["w"], shown["h"])
        assert (len(small), shown["mimetype"]) == (shown["size"], "image/png")


async def test_what_is_gone_or_damaged_is_told_apart(town: Town) -> None:
    """No such file, no address at all, and a hash that does not fit are errors of their own."""
    bot, runtime = town.account("bot"), EchoRuntime()
    async with Person(town.account("ada")) as ada, running_bot(bot, runtime, ada.user_id) as client:
        room_id = await ada.direct_room(bot.user_id, encrypted=True)
        await ada.meets(room_id, bot.user_id)
        await ada.share_picture(room_id, _png(20, 20), "image/png")
        (event,) = await runtime.takes(1)
        assert isinstance(event, FrameReceived)
        assert event.media.encryption is not None
        wrong_hash = {**event.media.encryption, "hashes": {"sha256": "A" * 43}}
        damaged = event.media.model_copy(update={"encryption": wrong_hash})
        with pytest.raises(MediaDamagedError):
            await client.transport.download(damaged, 10_000)
        for address in ("mxc://localhost/nothingthere", "https://localhost/x", ""):
            with pytest.raises(MediaGoneError):
                await client.transport.download(MediaRef(address=address), 10_000)


async def test_a_withdrawn_picture_takes_its_traces_with_it(town: Town) -> None:
    """What the bot showed of it is redacted in the room, and its file goes from the folder."""
    bot = town.account("bot")
    async with Person(town.account("ada")) as ada:
        policy = Policy.of([ada.user_id])
        async with whole_bot(bot, policy) as linn:
            room_id = await ada.direct_room(bot.user_id, encrypted=True)
            await ada.meets(room_id, bot.user_id)
            frame_id = await ada.share_picture(room_id, _png(8, 8), "image/png")
            await ada.hears(room_id, "checked: not_a_picture")
            await linn.runtime.drain()
            folder = bot.data_dir / "pictures"
            assert len(list(folder.iterdir())) == 1
            shown = next(
                event.event_id for _, event in ada.heard if "file" in event.source["content"]
            )
            await ada.client.room_redact(room_id, frame_id)
            async with asyncio.timeout(20):
                while any(folder.iterdir()):  # noqa: ASYNC110  a folder rings no bell
                    await asyncio.sleep(0.05)
            await linn.runtime.drain()
            left = await ServerApi(ada.client).call("GET", "rooms", room_id, "event", shown)
    assert left["content"] == {}
