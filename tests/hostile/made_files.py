"""Hostile files made on the spot: bombs, lies about sizes, two kinds in one, odd metadata."""

from __future__ import annotations

import io
import itertools
import struct
import zipfile
import zlib
from collections.abc import Iterable, Iterator

import numpy as np
from PIL import Image

from core.errors import FrameFault
from tests.core.frame_files import jpeg, natural, png_header, saved
from tests.hostile.cases import REPORT, Case
from tests.hostile.good_files import good

DAMAGED = FrameFault.DAMAGED.value
NO_PICTURE = FrameFault.NOT_A_PICTURE.value
NOT_READ = FrameFault.KIND_NOT_READ.value
TOO_MANY_PIXELS = FrameFault.TOO_MANY_PIXELS.value
TOO_MUCH_MEMORY = FrameFault.TOO_MUCH_MEMORY.value
TOO_SLOW = FrameFault.TOO_SLOW.value

SHORT, LONG, RATIONAL, FLOAT, DOUBLE, ASCII = 3, 4, 5, 11, 12, 2  # TIFF 6.0 field types


def _chunk(name: bytes, body: bytes) -> bytes:
    return struct.pack(">I", len(body)) + name + body + struct.pack(">I", zlib.crc32(name + body))


def _png_with(chunk: bytes) -> bytes:
    """A good PNG with a chunk behind its header."""
    data = good("PNG")
    return data[:33] + chunk + data[33:]


def _stated(kind: str, mark: bytes, at: int, form: str, *numbers: int) -> bytes:
    """A good file with numbers written over what stands behind a mark."""
    data = bytearray(good(kind))
    struct.pack_into(form, data, data.index(mark) + at, *numbers)
    return bytes(data)


def _directory(entries: Iterable[tuple[int, int, int, int]], following: int = 0) -> bytes:
    """A TIFF directory: tag, type, count and value of each entry."""
    packed = [struct.pack("<HHII", *entry) for entry in entries]
    return struct.pack("<H", len(packed)) + b"".join(packed) + struct.pack("<I", following)


def bombs() -> Iterator[Case]:
    """Little files that would become large, or keep a reader busy."""

    def bomb(name: str, data: bytes, *allowed: str) -> Case:
        return Case("bombs", name, data, frozenset(allowed))

    zeros = zlib.compress(bytes(100_000_000), 9)
    yield bomb("PNG of 60,000 px", png_header(60_000, 60_000), TOO_MANY_PIXELS)
    text = b"note\x00\x00" + zeros
    yield bomb("zTXt", _png_with(_chunk(b"zTXt", text)), DAMAGED, REPORT)
    international = b"note\x00\x01\x00\x00\x00" + zeros
    yield bomb("iTXt", _png_with(_chunk(b"iTXt", international)), DAMAGED, REPORT)
    yield bomb("iCCP", _png_with(_chunk(b"iCCP", text)), DAMAGED, REPORT)
    many = b"".join(_chunk(b"tEXt", b"a\x00b") for _ in range(50_000))
    yield bomb("50,000 texts", _png_with(many), DAMAGED, REPORT)
    progressive = good("progressive JPEG")
    scan = progressive[progressive.rindex(b"\xff\xda") : -2]
    yield bomb("JPEG of 1000 scans", progressive[:-2] + scan * 1000 + b"\xff\xd9", DAMAGED)
    yield bomb("JPEG of fill", b"\xff\xd8" + b"\xff" * 3_000_000, DAMAGED)
    yield bomb("JPEG of restarts", good("JPEG")[:-2] + b"\xff\xd0" * 500_000 + b"\xff\xd9", REPORT)
    sof = _stated("JPEG", b"\xff\xc0", 5, ">HH", 65_500, 65_500)
    yield bomb("JPEG of 65,500 px", sof, TOO_MANY_PIXELS)
    yield bomb("nested MPO", good("JPEG") * 1000, REPORT)
    head = b"GIF89a" + struct.pack("<HHBBB", 300, 200, 0x80, 0, 0) + bytes(6)
    frame = b"," + struct.pack("<HHHHB", 0, 0, 1, 1, 0) + b"\x02\x02\x4c\x01\x00"
    yield bomb("GIF of 100,000 frames", head + frame * 100_000 + b";", NOT_READ)
    yield from _tiff_bombs()
    ispe = _stated("HEIC", b"ispe", 8, ">II", 60_000, 60_000)
    yield bomb("HEIC of 60,000 px", ispe, TOO_MANY_PIXELS, DAMAGED)
    data = bytearray(good("HEIC of tiles"))
    struct.pack_into(">BBBBHH", data, data.index(b"idat") + 4, 0, 0, 255, 255, 65_535, 65_535)
    yield bomb("HEIC of 65,536 tiles", bytes(data), TOO_MANY_PIXELS, DAMAGED)
    boxes = struct.pack(">I4s", 8, b"free") * 500_000
    yield bomb("HEIC of 500,000 boxes", good("HEIC") + boxes, DAMAGED, REPORT)


def _tiff_bombs() -> Iterator[Case]:
    def bomb(name: str, data: bytes, *allowed: str) -> Case:
        return Case("bombs", name, data, frozenset(allowed))

    start = struct.pack("<2sHI", b"II", 42, 8)
    size = [(256, LONG, 1, 300), (257, LONG, 1, 200)]
    yield bomb("TIFF in a circle", start + _directory(size, 8), DAMAGED, NOT_READ)
    chain = b"".join(_directory(size[:1], 8 + 18 * index) for index in range(1, 1_000_001))
    yield bomb("TIFF of a million directories", start + chain, DAMAGED, NOT_READ)
    entries = [(tag, LONG, 1, 0) for tag in range(65_535)]
    yield bomb("TIFF of 65,535 tags", start + _directory(entries), DAMAGED, NOT_READ)
    filling = bytes(5_000_000)
    same = [(tag, LONG, 1_200_000, 8) for tag in range(300, 3000)]
    memory = (DAMAGED, NOT_READ, TOO_MUCH_MEMORY)
    yield bomb("TIFF of tags that overlap", start + _directory(same) + filling, *memory)
    giant = [(tag, LONG, 0xFFFFFFFF, 8) for tag in (256, 257, 273, 279)]
    yield bomb("TIFF of giant counts", start + _directory(giant), DAMAGED, NOT_READ)
    big = struct.pack("<2sHHHQ", b"II", 43, 8, 0, 16) + struct.pack("<Q", 2**60)
    yield bomb("BigTIFF of 2^60 tags", big + bytes(1000), DAMAGED, NOT_READ)
    yield bomb("TIFF of 60,000 px", start + _directory([
        (256, LONG, 1, 60_000), (257, LONG, 1, 60_000), (258, SHORT, 1, 8), (259, SHORT, 1, 1),
        (262, SHORT, 1, 1), (273, LONG, 1, 8), (277, SHORT, 1, 1), (279, LONG, 1, 50),
    ]), TOO_MANY_PIXELS)  # fmt: skip


def large_bombs() -> Iterator[Case]:
    """Bombs that take seconds to go off within their limits; not for every day."""
    flat = Image.fromarray(np.zeros((10_000, 10_500), np.uint8))
    allowed = frozenset({REPORT, TOO_SLOW, TOO_MUCH_MEMORY})
    yield Case("large bombs", "PNG of 105 megapixels", saved(flat, "PNG"), allowed)
    large = np.zeros((8000, 12_000), np.uint8)
    wide = saved(Image.fromarray(large), "JPEG", progressive=True)
    scan = wide[wide.rindex(b"\xff\xda") : -2]
    data = wide[:-2] + scan * 90 + b"\xff\xd9"
    yield Case("large bombs", "JPEG of 96 megapixels, 100 scans", data, allowed | {DAMAGED})


def lies() -> Iterator[Case]:
    """Sizes that are not those of the picture."""

    def lie(name: str, data: bytes, *allowed: str) -> Case:
        return Case("false sizes", name, data, frozenset(allowed))

    for name, width, height in (("taller", 300, 800), ("lower", 300, 104), ("wider", 600, 200)):
        frame = _stated("JPEG with restarts", b"\xff\xc0", 5, ">HH", height, width)
        yield lie(f"JPEG {name}", frame, DAMAGED)
        png = good("16-bit PNG")
        header = struct.pack(">II", width, height) + png[24:29]
        # Fewer rows than there are make a picture of the upper part, as viewers show it.
        right = (REPORT,) if name == "lower" else (DAMAGED,)
        yield lie(f"PNG {name}", png[:8] + _chunk(b"IHDR", header) + png[33:], *right)
        tiff = _stated("TIFF", struct.pack("<HHI", 256, LONG, 1), 8, "<I", width)
        at = tiff.index(struct.pack("<HHI", 257, LONG, 1)) + 8
        tiff = tiff[:at] + struct.pack("<I", height) + tiff[at + 4 :]
        yield lie(f"TIFF {name}", tiff, *right)
        heif = _stated("HEIC", b"ispe", 8, ">II", width, height)
        yield lie(f"HEIC {name}", heif, DAMAGED, REPORT)
    yield lie("JPEG without height", _stated("JPEG", b"\xff\xc0", 5, ">H", 0), DAMAGED)
    yield lie("cut, with an end", good("JPEG")[:9000] + b"\xff\xd9", DAMAGED)
    yield lie("cut, with another behind", good("JPEG")[:9000] + good("JPEG"), DAMAGED)
    yield lie("cut, filled with zeros", good("JPEG")[:9000] + bytes(5000) + b"\xff\xd9", DAMAGED)
    tiles = good("HEIC of tiles")
    lost = tiles[: len(tiles) * 2 // 3] + bytes(len(tiles) - len(tiles) * 2 // 3)
    yield lie("HEIC with tiles of zeros", lost, DAMAGED)


def polyglots() -> Iterator[Case]:
    """Two kinds in one file, and kinds that look like another."""

    def two(name: str, data: bytes, *allowed: str) -> Case:
        return Case("polyglots", name, data, frozenset(allowed))

    stream = io.BytesIO()
    with zipfile.ZipFile(stream, "w") as archive:
        archive.writestr("../../etc/passwd", "x")
    packed = stream.getvalue()
    yield two("JPEG and ZIP", good("JPEG") + packed, REPORT)
    yield two("PNG and HTML", good("PNG") + b"<html><script>alert(1)</script>", REPORT)
    yield two("PNG and ZIP", _png_with(_chunk(b"ziPp", packed)), REPORT)
    yield two("GIF and JAR", good("GIF") + packed, NOT_READ)
    yield two("ZIP and JPEG", packed + good("JPEG"), NO_PICTURE)
    svg = b'<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"><image/></svg>'
    yield two("SVG", svg, NO_PICTURE)
    yield two("HTML", b"<!DOCTYPE html><img src=x>", NO_PICTURE)
    pdf = b"%PDF-1.7\n1 0 obj<</Filter/DCTDecode>>stream\n" + good("JPEG") + b"endstream"
    yield two("PDF with a JPEG in it", pdf, NO_PICTURE)
    yield two("a JPEG behind one byte", b"\x00" + good("JPEG"), NO_PICTURE)
    yield two("TIFF mark before a JPEG", b"II*\x00" + good("JPEG"), DAMAGED)
    yield two("PNG mark before a JPEG", b"\x89PNG\r\n\x1a\n" + good("JPEG"), DAMAGED)
    film = struct.pack(">I4s", 8, b"moov") + struct.pack(">I4s", 1008, b"mdat") + bytes(1000)
    for brand, other, allowed in (
        (b"isom", b"mp42", NO_PICTURE),
        (b"mp42", b"mif1", DAMAGED),
        (b"heic", b"isom", DAMAGED),
        (b"msf1", b"hevc", DAMAGED),
        (b"mif1", b"avif", NOT_READ),
        (b"crx ", b"heic", NOT_READ),
    ):
        ftyp = struct.pack(">I4s4sI4s", 20, b"ftyp", brand, 0, other)
        yield two(f"a film that says {brand.decode()}, {other.decode()}", ftyp + film, allowed)
    heic = good("HEIC")
    video = heic[:8] + b"mp42" + heic[12:]
    yield two("HEIC that says mp42 first", video, REPORT, NO_PICTURE)
    raw = struct.pack("<2sHI", b"II", 42, 8) + _directory([(50706, 1, 4, 1)])
    yield two("raw mark before a JPEG", raw + good("JPEG"), NOT_READ)


def _exif_jpeg(block: bytes) -> bytes:
    """A good JPEG with an Exif block of these bytes."""
    body = b"Exif\x00\x00" + block
    plain = jpeg(natural()[300:500, 300:600])
    return plain[:2] + b"\xff\xe1" + struct.pack(">H", 2 + len(body)) + body + plain[2:]


def odd_metadata() -> Iterator[Case]:
    """Exif blocks that circle, swell or say what can't be; the picture is good."""

    def odd(name: str, block: bytes) -> Case:
        return Case("odd metadata", name, _exif_jpeg(block), frozenset({REPORT}))

    little, big = struct.pack("<2sHI", b"II", 42, 8), struct.pack(">2sHI", b"MM", 42, 8)
    yield odd("nothing", b"")
    yield odd("cut", little[:6])
    yield odd("directory beyond", struct.pack("<2sHI", b"II", 42, 0xFFFFFFF0))
    yield odd("Exif directory is the first", little + _directory([(34665, LONG, 1, 8)]))
    yield odd("circle", little + _directory([(271, ASCII, 4, 0x414141)], 8))
    giant = [(tag, RATIONAL, 0xFFFFFFFF, 8) for tag in (271, 272, 33434, 33437)]
    yield odd("giant counts", little + _directory([*giant, (34665, LONG, 1, 8)]))
    yield odd("other byte order", big + _directory([(271, ASCII, 4, 0x414141)]))
    many = [(tag, LONG, 15_000, 8) for tag in range(5400)]
    yield odd("5400 tags that overlap", little + _directory(many))
    names = "\x00\x1b[2J\u202eredlA\u2066\u200b\r\nAlder".encode()
    text = [(271, ASCII, len(names), 26)]
    yield odd("control and bidi marks", little + _directory(text) + names)
    strange = struct.pack("<IIIIddf", 1, 0, 0, 0, float("nan"), float("inf"), float("nan"))
    values = [(33434, RATIONAL, 1, 98), (33437, RATIONAL, 1, 106), (34855, DOUBLE, 1, 114),
              (37386, DOUBLE, 1, 122), (37380, FLOAT, 1, 0x7FC00000)]  # fmt: skip
    inner = 8 + 18 + 2
    yield odd("zero denominators and NaN",
              little + _directory([(34665, LONG, 1, 26)]) + bytes(inner - 28)
              + _directory(values) + bytes(98 - 26 - 66) + strange)  # fmt: skip
    segment = b"Exif\x00\x00" + little + bytes(60_000)
    segments = (b"\xff\xe1" + struct.pack(">H", 2 + len(segment)) + segment) * 20
    plain = jpeg(natural()[300:500, 300:600])
    data = plain[:2] + segments + plain[2:]
    yield Case("odd metadata", "20 blocks", data, frozenset({REPORT}))


def tiny() -> Iterator[Case]:
    """Nothing, hardly anything, and nothing but noise."""
    yield Case("tiny", "empty", b"", frozenset({FrameFault.EMPTY.value}))
    for byte in (0x00, 0xFF, 0x89, 0x49, 0x4D, 0x3C):
        yield Case("tiny", f"byte {byte:02x}", bytes([byte]), frozenset({NO_PICTURE}))
    for name, data in (
        ("JPEG mark", b"\xff\xd8\xff"),
        ("PNG mark", b"\x89PNG\r\n\x1a\n"),
        ("TIFF mark", b"II*\x00"),
        ("HEIC mark", b"\x00\x00\x00\x18ftypheic"),
    ):
        yield Case("tiny", name, data, frozenset({DAMAGED}))
        yield Case("tiny", f"{name} and zeros", data + bytes(65_536), frozenset({DAMAGED}))
    small = jpeg(natural()[:90, :300])
    yield Case("tiny", "90 px high", small, frozenset({FrameFault.TOO_SMALL.value}))


def made() -> list[Case]:
    """All of them, but for those that take seconds."""
    return list(itertools.chain(bombs(), lies(), polyglots(), odd_metadata(), tiny()))
