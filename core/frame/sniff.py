"""What kind of file the bytes are, by their content and never by a name."""

from __future__ import annotations

import io
import warnings
from typing import Final

from PIL.TiffImagePlugin import ImageFileDirectory_v2

from core.errors import FrameFault, UnreadableFrameError

#: The kind of all cameras' raw files.
RAW: Final = "raw"

#: First bytes of the kinds that are read. Sources: ITU-T T.81 (JPEG), W3C PNG 3rd ed. section 5.2,
#: TIFF 6.0 section 2 (43 instead of 42: BigTIFF); from memory.
_READ: Final = (
    (b"\xff\xd8\xff", "JPEG"),
    (b"\x89PNG\r\n\x1a\n", "PNG"),
    (b"II*\x00", "TIFF"),
    (b"MM\x00*", "TIFF"),
    (b"II+\x00", "TIFF"),
    (b"MM\x00+", "TIFF"),
)

#: First bytes of raw files that are no TIFF; the marks that their makers chose, from memory.
_RAW_STARTS: Final = (
    b"IIRO",
    b"IIRS",
    b"MMOR",
    b"IIU\x00",
    b"FUJIFILMCCD-RAW",
    b"II\x1a\x00\x00\x00HEAPCCDR",
    b"FOVb",
    b"\x00MRM",
)

#: First bytes of pictures that are known and not read: GIF, BMP, Photoshop, OpenEXR,
#: JPEG 2000 (file and codestream), JPEG XL (container and codestream), DirectDraw, SGI, BLP.
_OTHER_PICTURES: Final = (
    b"GIF87a",
    b"GIF89a",
    b"BM",
    b"8BPS",
    b"\x76\x2f\x31\x01",
    b"\x00\x00\x00\x0cjP  ",
    b"\xff\x4f\xff\x51",
    b"\x00\x00\x00\x0cJXL ",
    b"\xff\x0a",
    b"DDS ",
    b"\x01\xda",
    b"BLP1",
    b"BLP2",
)

#: Brands of ISO base media files (ISO/IEC 23008-12 annex B and the image registry; from memory).
_HEIF_BRANDS: Final = frozenset({b"heic", b"heix", b"heim", b"heis", b"hevc", b"hevx"})
_HEIF_STRUCTURE_BRANDS: Final = frozenset({b"mif1", b"mif2", b"msf1"})
_AVIF_BRANDS: Final = frozenset({b"avif", b"avis"})
_RAW_BRAND: Final = b"crx "

# TIFF tags (TIFF 6.0; TIFF/EP and the DNG specification for the last three), from memory.
_NEW_SUBFILE_TYPE: Final = 254
_IMAGE_WIDTH: Final = 256
_COMPRESSION: Final = 259
_PHOTOMETRIC: Final = 262
_SUB_IFDS: Final = 330
_DNG_VERSION: Final = 50706
#: A mosaic of colour filters, and its interpolated form.
_RAW_PHOTOMETRIC: Final = frozenset({32803, 34892})
#: Compressions that only cameras write into raw files (four makers), from memory.
_RAW_COMPRESSION: Final = frozenset({32767, 34713, 65000, 65535})


def file_kind(data: bytes) -> str:
    """Kind of a file that can be read: "JPEG", "PNG", "TIFF", "HEIC" or "raw".

    Raises:
        UnreadableFrameError: EMPTY, NOT_A_PICTURE, or KIND_NOT_READ (`raw` 0) for another known
            kind of picture.
    """
    if not data:
        raise UnreadableFrameError(FrameFault.EMPTY)
    for start, kind in _READ:
        if data.startswith(start):
            return RAW if kind == "TIFF" and _is_raw_tiff(data) else kind
    if data[4:8] == b"ftyp":
        return _base_media_kind(data)
    if data.startswith(_RAW_STARTS):
        return RAW
    if data.startswith(_OTHER_PICTURES) or (data[:4] == b"RIFF" and data[8:12] == b"WEBP"):
        raise UnreadableFrameError(FrameFault.KIND_NOT_READ, raw=0)
    raise UnreadableFrameError(FrameFault.NOT_A_PICTURE)


def has_readable_directory(data: bytes) -> bool:
    """Whether a TIFF's first directory can be read without complaint and states a width.

    Tells a whole file of an unusual kind from a damaged one when its pixels cannot be read.
    """
    return _IMAGE_WIDTH in _first_directory(data, strict=True)


def _base_media_kind(data: bytes) -> str:
    """Kind of an ISO base media file, from the brands in its first box."""
    length = min(int.from_bytes(data[:4], "big"), 512)  # a real brand list is far shorter
    brands = [data[8:12], *(data[at : at + 4] for at in range(16, length, 4))]
    if brands[0] == _RAW_BRAND:
        return RAW
    if _AVIF_BRANDS.intersection(brands):
        raise UnreadableFrameError(FrameFault.KIND_NOT_READ, raw=0)
    if (_HEIF_BRANDS | _HEIF_STRUCTURE_BRANDS).intersection(brands):
        return "HEIC"
    raise UnreadableFrameError(FrameFault.NOT_A_PICTURE)  # a video, most often


def _is_raw_tiff(data: bytes) -> bool:
    """Whether a TIFF is a camera's raw file, whose first picture may be a small preview."""
    if data[8:10] == b"CR":
        return True
    tags = _first_directory(data)
    return (
        _DNG_VERSION in tags
        or tags.get(_PHOTOMETRIC) in _RAW_PHOTOMETRIC
        or tags.get(_COMPRESSION) in _RAW_COMPRESSION
        # The small copy first and the picture in a directory below: raw files, not exports.
        or (tags.get(_NEW_SUBFILE_TYPE) == 1 and _SUB_IFDS in tags)
    )


def _first_directory(data: bytes, *, strict: bool = False) -> dict[int, object]:
    """Tags of a TIFF's first directory; none when it cannot be read (strict: in part)."""
    wanted = (
        _NEW_SUBFILE_TYPE,
        _IMAGE_WIDTH,
        _COMPRESSION,
        _PHOTOMETRIC,
        _SUB_IFDS,
        _DNG_VERSION,
    )
    try:
        big = data[2:4] in (b"+\x00", b"\x00+")
        directory = ImageFileDirectory_v2(data[:16] if big else data[:8])
        stream = io.BytesIO(data)
        stream.seek(directory.next)
        with warnings.catch_warnings():
            warnings.simplefilter("error" if strict else "ignore")  # its word for "cut off"
            directory.load(stream)
        return {tag: directory[tag] for tag in wanted if tag in directory}
    except Exception:  # a hostile directory breaks the reader in many ways; it is damaged then
        return {}
