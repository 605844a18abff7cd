"""What is cut off is found in each kind of file, and what only looks odd is not."""

from __future__ import annotations

import struct
import zlib
from collections.abc import Callable

import numpy as np
import pytest
import simplejpeg
from PIL import Image

from core.errors import FrameFault, UnreadableFrameError
from core.frame.decode import decode
from core.frame.heif_boxes import heif_is_whole, lacks_tiles
from core.frame.jpeg import jpeg_pixels, whole_jpeg
from core.frame.png_chunks import png_is_whole
from core.frame.tiff_strips import strips_are_there
from tests.core.frame_files import Pixels, heic, jpeg, natural, saved

END = b"\xff\xd9"


def small() -> Pixels:
    return natural()[300:500, 300:600]


def damage(data: bytes) -> None:
    """The file is refused as damaged."""
    with pytest.raises(UnreadableFrameError) as caught:
        decode(data)
    assert caught.value.fault is FrameFault.DAMAGED


# --- JPEG


@pytest.mark.parametrize("progressive", [False, True])
@pytest.mark.parametrize("rows", [0, 1])
@pytest.mark.parametrize("sixteenths", [5, 10, 15])
def test_a_jpeg_cut_off_is_damaged_even_with_an_end(
    progressive: bool, rows: int, sixteenths: int
) -> None:
    """An end mark, or another picture, behind the cut does not make up for what is missing."""
    data = jpeg(small(), progressive=progressive, restart_marker_rows=rows)
    part = data[: len(data) * sixteenths // 16]
    for behind in (b"", END, data):
        damage(part + behind)


def test_a_hole_is_damage() -> None:
    """Codes that are missing in the middle, or too many, are found."""
    data = jpeg(small())
    middle = len(data) // 2
    damage(data[:middle] + data[middle + 500 :])
    damage(data[:-2] + b"\x55" * 5000 + END)


@pytest.mark.parametrize("quality", [40, 75, 98])
@pytest.mark.parametrize("progressive", [False, True])
@pytest.mark.parametrize("zeros", [1, 2, 5, 4000])
def test_zeros_before_the_end_are_padding(quality: int, progressive: bool, zeros: int) -> None:
    """Some writers fill up with zeros before the end mark; the pixels are the same."""
    for left in range(0, 60, 7):
        data = jpeg(natural()[300:420, left : left + 120], quality, progressive=progressive)
        padded = data[:-2] + bytes(zeros) + END
        np.testing.assert_array_equal(decode(padded).pixels, decode(data).pixels)


def test_zeros_do_not_hide_a_cut() -> None:
    """A file cut off, or too long, and filled up with zeros is damaged."""
    data = jpeg(small())
    damage(data[:-2] + b"\x55" * 5000 + bytes(8) + END)
    damage(data[: len(data) // 2] + bytes(5000) + END)


def scans(data: bytes) -> list[int]:
    """Where the scans of a JPEG begin."""
    return [at for at in range(len(data)) if data[at : at + 2] == b"\xff\xda"]


def test_a_progressive_jpeg_needs_all_its_scans() -> None:
    """A progressive file that ends after some of its scans is coarse, not whole."""
    data = jpeg(small(), progressive=True)
    assert len(scans(data)) == 10
    damage(data[: scans(data)[-1]] + END)
    assert whole_jpeg(data) == data


def test_too_many_scans_are_refused_unread() -> None:
    """A thousand scans would keep a reader busy for each of them."""
    data = jpeg(small(), progressive=True)
    last = data[scans(data)[-1] : -2]
    damage(data[:-2] + last * 1000 + END)


@pytest.mark.parametrize(
    "data",
    [
        b"\xff\xd8",
        b"\xff\xd8" + END,
        b"\xff\xd8\xff\xe0\x00\x04ab\x00",
        b"\xff\xd8\xff\xc2\x00\x08\x08\x00\x01\x00\x01" + END,  # a frame header that breaks off
        b"\xff\xd8\xff\xc2\x00\x0b\x08\x00\x01\x00\x01\x01\x01\x11\x00"
        b"\xff\xda\x00\x08\x01\x02\x00\x00\x3f\x00" + END,  # a scan of another component
    ],
    ids=["bare", "nothing", "no scan", "short frame", "stray scan"],
)
def test_segments_that_make_no_picture(data: bytes) -> None:
    """Segments without a scan (ITU-T T.81 annex B), or at odds with each other, are damage."""
    with pytest.raises(UnreadableFrameError):
        whole_jpeg(data)


def test_an_odd_header_is_no_damage() -> None:
    """A JFIF version that nobody knows is warned of and changes no pixel."""
    data = jpeg(small())
    at = data.index(b"JFIF\x00") + 5
    odd = data[:at] + b"\x09" + data[at + 1 :]
    with pytest.raises(ValueError, match="unknown JFIF"):
        simplejpeg.decode_jpeg(odd, strict=True)
    np.testing.assert_array_equal(decode(odd).pixels, decode(data).pixels)


def test_no_memory_is_no_damage(monkeypatch: pytest.MonkeyPatch) -> None:
    """The reader's words for "no memory" are told apart."""

    def hungry(*_: object, **__: object) -> None:
        raise ValueError("tjDecompress2(): Memory allocation failure")

    monkeypatch.setattr(simplejpeg, "decode_jpeg", hungry)
    with pytest.raises(MemoryError):
        jpeg_pixels(jpeg(small()))


def test_a_cut_cmyk_jpeg_is_damaged() -> None:
    """Four inks are looked at for damage too."""
    data = saved(Image.fromarray(small()).convert("CMYK"), "JPEG")
    assert decode(data).pixels.shape == (200, 300, 3)
    damage(data[: len(data) // 2] + END)


# --- PNG


def chunk(name: bytes, body: bytes) -> bytes:
    return struct.pack(">I", len(body)) + name + body + struct.pack(">I", zlib.crc32(name + body))


def test_png_chunks() -> None:
    """Every needed chunk counts, each byte of it; what a reader may leave out does not."""
    data = saved(Image.fromarray(small()), "PNG")
    assert png_is_whole(data)
    assert png_is_whole(data + b"<html>")
    for length in (20, 50, len(data) // 2, len(data) - 12, len(data) - 1):
        assert not png_is_whole(data[:length])
    at = data.index(b"IDAT") + 400
    assert not png_is_whole(data[:at] + bytes([data[at] ^ 1]) + data[at + 1 :])
    broken_note = chunk(b"teSt", b"note")[:-4] + bytes(4)
    assert png_is_whole(data[:33] + broken_note + data[33:])


def png_of(rows: bytes, width: int, height: int, bits: int, colour: int, laced: int) -> bytes:
    """A PNG of rows as they are unfolded, with whatever header."""
    header = struct.pack(">IIBBBBB", width, height, bits, colour, 0, 0, laced)
    folded = zlib.compress(rows)
    body = chunk(b"IHDR", header) + chunk(b"IDAT", folded[:9]) + chunk(b"IDAT", folded[9:])
    return b"\x89PNG\r\n\x1a\n" + body + chunk(b"IEND", b"")


@pytest.mark.parametrize(
    ("width", "height", "bits", "colour", "laced", "bytes_of_rows"),
    [
        (10, 10, 8, 2, 0, 310),
        (10, 10, 16, 6, 0, 810),
        (10, 10, 1, 3, 0, 30),
        # Adam7: passes of 2×2, 1×2, 3×1, 2×3, 5×2, 5×5 and 10×5 pixels (counted by hand).
        (10, 10, 8, 0, 1, 100 + 2 + 2 + 1 + 3 + 2 + 5 + 5),
        (1, 1, 8, 0, 1, 2),
    ],
)
def test_png_rows(
    width: int, height: int, bits: int, colour: int, laced: int, bytes_of_rows: int
) -> None:
    """All rows must be there, of every pass; more are no harm."""
    for missing, whole in ((0, True), (1, False), (-50, True)):
        rows = bytes(bytes_of_rows - missing)
        assert png_is_whole(png_of(rows, width, height, bits, colour, laced)) is whole


def test_png_rows_of_another_reader() -> None:
    """An interlaced picture as a library writes it is whole."""
    for mode in ("1", "L", "P", "LA", "RGB", "RGBA"):
        assert png_is_whole(saved(Image.fromarray(small()).convert(mode), "PNG"))


def test_png_without_its_parts() -> None:
    """Without a header of the right length, or with rows that can't be unfolded, it is damaged."""
    start, end = b"\x89PNG\r\n\x1a\n", chunk(b"IEND", b"")
    assert not png_is_whole(start + end)
    assert not png_is_whole(start + chunk(b"IHDR", b"short") + end)
    header = chunk(b"IHDR", struct.pack(">IIBBBBB", 10, 10, 8, 0, 0, 0, 0))
    assert not png_is_whole(start + header + chunk(b"IDAT", b"no rows at all") + end)


# --- HEIF


def box(name: bytes, body: bytes) -> bytes:
    return struct.pack(">I", 8 + len(body)) + name + body


FTYP = box(b"ftyp", b"heic\x00\x00\x00\x00mif1")


def places(version: int, *extents: tuple[int, int], method: int = 0, base: int = 0) -> bytes:
    """A `meta` box whose `iloc` gives one item these places."""
    wide = ">I" if version == 2 else ">H"
    indexed = version in {1, 2}
    body = struct.pack(">BBBB", version, 0, 0, 0)
    body += bytes([0x44, 0x44 if indexed else 0x40])
    body += struct.pack(wide, 1) + struct.pack(wide, 7)
    body += struct.pack(">H", method) if indexed else b""
    body += struct.pack(">HIH", 0, base, len(extents))
    for start, length in extents:
        body += (struct.pack(">I", 1) if indexed else b"") + struct.pack(">II", start, length)
    return box(b"meta", bytes(4) + box(b"hdlr", b"pict") + box(b"iloc", body))


@pytest.mark.parametrize("version", [0, 1, 2])
def test_items_must_lie_within_the_file(version: int) -> None:
    """Every piece of an item ends within the file, whichever version says where."""
    mdat = box(b"mdat", bytes(1000))
    length = len(FTYP + places(version, (0, 0), (0, 0)) + mdat)

    def whole(*extents: tuple[int, int], **more: int) -> bool:
        return heif_is_whole(FTYP + places(version, *extents, **more) + mdat)

    assert whole((200, 500), (700, length - 700))
    assert not whole((200, 500), (700, length - 699))
    assert not whole((200, 500), (500, length - 700), base=201)
    if version:
        assert whole((200, 500), (700, 10_000), method=1)  # inside a box of its own


@pytest.mark.parametrize(
    ("data", "whole"),
    [
        (FTYP, True),
        (FTYP + b"\x00\x00\x00\x00mdat123", True),  # to the end
        (FTYP + struct.pack(">I4sQ", 1, b"mdat", 20) + b"1234", True),
        (FTYP + struct.pack(">I4sQ", 1, b"mdat", 21) + b"1234", False),
        (FTYP + struct.pack(">I4sQ", 1, b"mdat", 15), False),
        (FTYP + b"\x00\x00\x00\x07mdat", False),
        (FTYP + b"\x00\x00", False),
        (FTYP + box(b"meta", bytes(4) + box(b"iloc", b"\x00")), False),
        (FTYP + places(0, *[(0, 0)] * 33_000), False),
        (FTYP + box(b"free", b"") * 33_000, False),
    ],
    ids=[
        "ftyp alone", "to the end", "eight bytes", "beyond", "under its head", "under 8",
        "two bytes", "no places", "too many places", "too many boxes",
    ],
)  # fmt: skip
def test_boxes(data: bytes, whole: bool) -> None:
    """Boxes end within the file and are not endlessly many."""
    assert heif_is_whole(data) is whole


def test_a_real_heic_is_whole_to_its_last_byte() -> None:
    """A file as a library writes it is whole; one byte less is not."""
    data = heic(small())
    assert heif_is_whole(data)
    assert not heif_is_whole(data[:-1])
    damage(data[:-1])


def test_missing_tiles_are_seen() -> None:
    """The colour of codes that are all zero, over a whole square, is no part of a picture."""
    pixels = natural()[:600, :900].copy()
    assert not lacks_tiles(pixels)
    pixels[::64, ::64] = (0, 136, 0)
    assert not lacks_tiles(pixels)
    pixels[128:384, 256:512] = (0, 136, 0)
    assert lacks_tiles(pixels)


def test_a_heic_without_a_tile_is_damaged(monkeypatch: pytest.MonkeyPatch) -> None:
    """A picture of which the reader leaves a part out is not judged."""
    monkeypatch.setattr("core.frame.decode.lacks_tiles", lambda _: True)
    damage(heic(small()))


# --- TIFF


#: Ten rows of ten grey bytes.
SIZE = {256: 10, 257: 10, 258: 8, 277: 1}


@pytest.mark.parametrize(
    ("tags", "there"),
    [
        ({}, True),
        ({273: 0}, True),
        (SIZE | {273: 0}, True),
        (SIZE | {273: 0, 279: 100}, True),
        (SIZE | {273: 1, 279: 100}, False),  # beyond the end
        (SIZE | {273: 0, 279: 99}, False),  # too short
        (SIZE | {273: 0, 279: 99, 259: 5}, True),  # compressed
        (SIZE | {277: 3, 273: 0, 279: 100}, False),
        (SIZE | {258: (8, 8, 8), 277: 3, 273: 0, 279: 100}, False),
        (SIZE | {258: (1,), 273: 0, 279: 10}, True),
        (SIZE | {278: 5, 273: (0, 50), 279: (50, 50)}, True),
        (SIZE | {278: 5, 273: (0,), 279: (100,)}, False),  # the second is missing
        (SIZE | {278: 2**32 - 1, 273: 0, 279: 100}, True),  # "all rows", as writers say it
        (SIZE | {278: 0, 273: 0, 279: 100}, False),
        (SIZE | {284: 2, 277: 3, 273: (0, 0, 0), 279: (100, 100, 100)}, True),
        (SIZE | {284: 2, 277: 3, 273: (0, 0), 279: (100, 100)}, False),
        (SIZE | {322: 5, 323: 5, 324: (0, 1, 2, 3), 325: (25, 25, 25, 25)}, True),
        (SIZE | {322: 5, 323: 5, 324: (0, 1, 2), 325: (50, 25, 25)}, False),
        (SIZE | {322: 0, 324: (0,), 325: (100,)}, False),
        ({324: (8, 2**63), 325: (42, 50)}, False),
        ({273: (8,), 279: ("x",)}, True),  # the reader finds that itself
    ],
)
def test_strips(tags: dict[int, object], there: bool) -> None:
    """Strips and tiles are as many as the size needs and end within a file of 100 bytes."""
    assert strips_are_there(tags, 100) is there


def write_tiff(**more: object) -> Callable[[], bytes]:
    return lambda: saved(Image.fromarray(small()), "TIFF", **more)


@pytest.mark.parametrize(
    "written",
    [write_tiff(), write_tiff(compression="tiff_lzw"), write_tiff(compression="jpeg")],
    ids=["plain", "LZW", "JPEG"],
)
def test_a_tiff_cut_by_one_byte_is_damaged(written: Callable[[], bytes]) -> None:
    """One missing byte, of a strip or of the directory, is damage and no unknown kind."""
    damage(written()[:-1])


def test_a_strip_that_says_more_than_there_is() -> None:
    """A length that reaches beyond the file is damage."""
    data = bytearray(saved(Image.fromarray(small()), "TIFF"))
    at = data.index(struct.pack("<HHI", 279, 4, 1)) + 8  # one strip's length
    data[at : at + 4] = struct.pack("<I", len(data))
    damage(bytes(data))
