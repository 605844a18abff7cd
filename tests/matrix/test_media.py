"""Files come in bounded in size and time, decrypted, checked, and whatever they are called."""

from __future__ import annotations

import tracemalloc
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from nio import AsyncClient
from nio.crypto.attachments import encrypt_attachment

from bot.dialogue.events import MediaRef
from bot.matrix import media as media_module
from bot.matrix.attachment import MXC_URI, media_of
from bot.matrix.attachment_cipher import AttachmentCipher
from bot.matrix.media import Media
from bot.matrix.server_api import ServerApi
from bot.runtime.ports import (
    MediaBrokenOffError,
    MediaDamagedError,
    MediaGoneError,
    MediaTooLargeError,
)
from tests.matrix.scripted_server import Answer, ScriptedServer, file, trickle, zipped

PATH = "/media/download/example.org/leaf"
ADDRESS = "mxc://example.org/leaf"
DATA = bytes(range(256)) * 1000


@pytest.fixture
def media(signed_in: AsyncClient) -> Media:
    """The homeserver's store of files."""
    return Media(ServerApi(signed_in))


def sealed(data: bytes) -> tuple[bytes, dict[str, object]]:
    """Encrypted as another client does it, and key, iv and hash."""
    secret, how = encrypt_attachment(data)
    return secret, {"key": {"k": how["key"]["k"]}, "iv": how["iv"], "hashes": how["hashes"]}


@pytest.mark.parametrize("size", [0, 1, 15, 16, 17, 65_536, 200_000])
async def test_an_encrypted_file_comes_in_plain(
    scripted: ScriptedServer, media: Media, size: int
) -> None:
    """What another client encrypted is read, piece by piece, at any length."""
    secret, how = sealed(DATA[:size])
    scripted.say(PATH, file(secret, sized=False))
    got = await media.download(MediaRef(address=ADDRESS, encryption=how), 300_000)
    assert got == DATA[:size]


@pytest.mark.parametrize("size", [999, 1001])
async def test_another_file_than_the_one_meant_is_damaged(
    scripted: ScriptedServer, media: Media, size: int
) -> None:
    """One byte changed, missing or too many: nothing of it is given out."""
    secret, how = sealed(DATA[:1000])
    changed = bytes([secret[500] ^ 1])
    for wrong in (secret[:500] + changed + secret[501:], (secret + b"x")[:size]):
        scripted.say(PATH, file(wrong))
        with pytest.raises(MediaDamagedError):
            await media.download(MediaRef(address=ADDRESS, encryption=how), 300_000)


@pytest.mark.parametrize(
    "spoiled",
    [
        {"key": {"k": "AAAA"}},
        {"key": {"k": 7}},
        {"key": None},
        {"key": {}},
        {"iv": "AAAA"},
        {"iv": "a"},
        {"iv": "é"},
        {"hashes": {"sha256": 5}},
        {"hashes": {}},
    ],
    ids=str,
)
async def test_a_key_that_is_none_costs_no_request(
    scripted: ScriptedServer, media: Media, spoiled: dict[str, object]
) -> None:
    """Key, iv and hash are looked at before anything is fetched."""
    how = sealed(b"leaf")[1] | spoiled
    with pytest.raises(MediaDamagedError):
        await media.download(MediaRef(address=ADDRESS, encryption=how), 300_000)
    assert scripted.asked == []


@pytest.mark.parametrize(
    "answer",
    [
        file(b"x" * 5001),
        file(b"x" * 5_000_000, sized=False),
        trickle(b"x" * 5001),
        trickle(b"", stated=5001),
        zipped(b"x" * 50_000_000),
    ],
    ids=["stated", "not stated", "never ends", "states it and waits", "compressed"],
)
@pytest.mark.parametrize("stated", [None, 10, 5000])
async def test_a_size_that_lies_is_found_out(
    scripted: ScriptedServer, media: Media, answer: Answer, stated: int | None
) -> None:
    """Whatever the event or the server says, no more is taken in than the limit."""
    scripted.say(PATH, answer)
    with pytest.raises(MediaTooLargeError):
        await media.download(MediaRef(address=ADDRESS, stated_bytes=stated), 5000)


async def test_a_bomb_in_the_transport_takes_no_memory(
    scripted: ScriptedServer, media: Media
) -> None:
    """A compressed answer is given up before it has unfolded."""
    bomb = zipped(b"x" * 200_000_000)
    scripted.say(PATH, bomb)
    tracemalloc.start()
    with pytest.raises(MediaTooLargeError):
        await media.download(MediaRef(address=ADDRESS), 5000)
    _, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert peak < 260_000_000  # 200 of which the test's own bomb is made from


@pytest.mark.parametrize(
    "answer",
    [trickle(b"x" * 4000), trickle(b"x" * 4000, stated=4500), trickle(b"", stated=4500)],
    ids=["endless", "stated", "nothing"],
)
async def test_a_file_that_drips_in_is_given_up(
    scripted: ScriptedServer, media: Media, answer: Answer, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Who sends slowly holds up nobody: there is a least rate once the file has begun."""
    monkeypatch.setattr(media_module, "_PATIENCE_S", 0.2)
    scripted.say(PATH, answer)
    with pytest.raises(MediaBrokenOffError):
        await media.download(MediaRef(address=ADDRESS), 5000)


async def test_a_file_that_comes_gets_more_time(
    scripted: ScriptedServer, media: Media, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Each piece earns the time of the next: a weak line gets through, where it is no drip."""
    monkeypatch.setattr(media_module, "_PATIENCE_S", 0.5)
    monkeypatch.setattr(media_module, "_LEAST_BYTES_PER_S", 1000)
    scripted.say(PATH, trickle(b"x" * 3000, stated=3000, ends=True))
    assert len(await media.download(MediaRef(address=ADDRESS), 5000)) == 3000


@pytest.mark.parametrize("stated", [4500, None])
async def test_a_file_that_breaks_off_is_no_file(
    scripted: ScriptedServer, media: Media, stated: int | None
) -> None:
    """A connection that ends before the file does is told apart from a whole file."""
    scripted.say(PATH, trickle(b"x" * 4000, stated=stated, ends=True))
    with pytest.raises(MediaBrokenOffError):
        await media.download(MediaRef(address=ADDRESS), 5000)


GOOD = [
    "mxc://example.org/leaf",
    "mxc://example.org:8448/AbC-_9",
    "mxc://localhost/x",
    "mxc://192.0.2.7:80/x",
    "mxc://[2001:db8::7]:8448/x",
]
ODD = [
    "",
    "mxc://",
    "mxc://example.org",
    "mxc://example.org/",
    "mxc:///leaf",
    "mxc://../leaf",
    "mxc://./leaf",
    "mxc://.example.org/leaf",
    "mxc://example..org/leaf",
    "mxc://example.org/../leaf",
    "mxc://example.org/..",
    "mxc://example.org/leaf/more",
    "mxc://example.org/leaf?x=1",
    "mxc://example.org?/leaf",
    "mxc://example.org#/leaf",
    "mxc://example.org%2f..%2f/leaf",
    "mxc://user@example.org/leaf",
    "mxc://example.org\\evil/leaf",
    "mxc://example.org:/leaf",
    "mxc://example.org:999999/leaf",
    "mxc://exa mple.org/leaf",
    "mxc://example.org/le af",
    "mxc://example.org/leaf\n",
    "mxc://example.org/\u202efael",
    "mxc://[::1/leaf",
    f"mxc://{'a' * 231}/leaf",
    f"mxc://example.org/{'a' * 256}",
    "http://example.org/leaf",
    "file:///etc/passwd",
    "/etc/passwd",
    "../../etc/passwd",
]


@pytest.mark.parametrize("address", GOOD)
def test_addresses(address: str) -> None:
    """Host names and addresses, with and without a port."""
    assert MXC_URI.fullmatch(address)
    assert media_of({"msgtype": "m.image", "url": address}) is not None


@pytest.mark.parametrize("address", ODD)
async def test_odd_addresses_are_nobodys(
    scripted: ScriptedServer, media: Media, address: str
) -> None:
    """What is no address on a homeserver is neither taken from an event nor asked for."""
    assert media_of({"msgtype": "m.image", "url": address}) is None
    with pytest.raises(MediaGoneError):
        await media.download(MediaRef(address=address), 5000)
    assert scripted.asked == []


@given(st.text(max_size=40), st.text(max_size=40))
def test_no_address_climbs(server: str, media_id: str) -> None:
    """Whatever passes for an address has nothing in it that means something in a path."""
    match = MXC_URI.fullmatch(f"mxc://{server}/{media_id}")
    if match is not None:
        assert not set(match["server"] + match["media_id"]) & set("/\\?#%@ \n\x00")
        assert ".." not in match["server"]
        assert match["server"] not in {"", "."}


@given(st.binary(max_size=2000), st.lists(st.integers(0, 2000), max_size=5))
def test_pieces_of_any_length(data: bytes, cuts: list[int]) -> None:
    """However the network cuts a file, it comes out whole."""
    secret, how = sealed(data)
    cipher = AttachmentCipher(how)
    edges = [0, *sorted(min(cut, len(secret)) for cut in cuts), len(secret)]
    plain = b"".join(cipher.update(secret[start:end]) for start, end in pairwise(edges))
    cipher.finish()
    assert plain == data


@pytest.mark.parametrize(
    "name",
    [
        "../../etc/passwd",
        "/etc/passwd",
        "con",
        "a" * 100_000,
        "x\x00.jpg",
        "\u202egpj.exe",
        "~/.ssh",
    ],
    ids=lambda name: ascii(name[:12]),
)
def test_a_name_goes_nowhere(name: str) -> None:
    """What a file is called is not even kept: it can become no path."""
    content = {"msgtype": "m.file", "url": ADDRESS, "body": name, "filename": name}
    found = media_of(content)
    assert found is not None
    assert found.model_dump(exclude_none=True) == {"address": ADDRESS, "stated_type": ""}
