"""Bytes to pixels and metadata, inside limits: the only place that knows file formats."""

from __future__ import annotations

import io
import warnings
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
import pillow_heif
import rawpy
from numpy.typing import NDArray
from PIL import Image
from PIL.ImageFile import ImageFile
from PIL.JpegImagePlugin import JpegImageFile
from PIL.PngImagePlugin import PngImageFile
from PIL.TiffImagePlugin import TiffImageFile

from core.errors import FrameFault, UnreadableFrameError
from core.frame.findings import RawExposure
from core.frame.heif_boxes import heif_is_whole, lacks_tiles
from core.frame.jpeg import NotJudgedError, check_foot, jpeg_pixels, standard_quality, whole_jpeg
from core.frame.limits import (
    MAX_BYTES,
    MAX_PIXELS,
    MAX_PIXELS_UNSCALED,
    PREVIEW_PIXELS,
    check_sides,
    check_size,
    halvings_for,
)
from core.frame.metadata import ExifTags, completed, exif_tags, read_metadata, stated_size
from core.frame.pixels import (
    READABLE_MODES,
    SIXTEEN_BIT_MODES,
    picture_pixels,
    shrunk,
    upright,
    visible,
)
from core.frame.png_chunks import png_is_whole
from core.frame.raw import read_raw, render
from core.frame.raw_exposure import clipped_share, raw_exposure
from core.frame.report import FrameMetadata
from core.frame.sniff import RAW, file_kind, has_readable_directory
from core.frame.tiff_strips import in_wide_planes, strips_are_there

#: Longest Exif block [bytes]: in a JPEG a camera has 64 kB for it; four times as much for other
#: kinds of files. Own rule.
_LONGEST_EXIF: Final = 256 * 1024

#: Exif tag number (CIPA DC-008).
_ORIENTATION: Final = 274


@dataclass(frozen=True)
class RawDecoded:
    """What only a raw file knows.

    `clipped_share` counts saturated photosites over all, 0 to 1; `width` and `height` are those
    of the upright frame [px].
    """

    exposure: RawExposure
    clipped_share: float
    width: int
    height: int


@dataclass(frozen=True)
class DecodedFrame:
    """An upright picture and what its file says.

    `pixels` has shape (H, W, 3), red, green, blue, in the file's own codes, 0 to 255.
    `jpeg_quality` is the quality, 1 to 100, whose standard tables are as coarse as this
    file's; None outside JPEG. `reduced` says that there are fewer pixels than the camera
    took: the file states a larger size, or it was decoded at a smaller scale. A raw file's
    `pixels` are a rendering of about half its size (255: saturated), and `raw` says what its
    photosites do.
    """

    pixels: NDArray[np.uint8]
    file_kind: str
    metadata: FrameMetadata
    jpeg_quality: int | None
    reduced: bool = False
    raw: RawDecoded | None = None


@dataclass(frozen=True)
class _Opened:
    """A decoded picture before it is put upright."""

    pixels: NDArray[np.uint8]
    orientation: object
    tags: ExifTags
    jpeg_quality: int | None = None
    scaled: bool = False


def decode(
    data: bytes, *, max_pixels: int = MAX_PIXELS, max_bytes: int = MAX_BYTES
) -> DecodedFrame:
    """Decode a shared file, whatever it is called.

    A JPEG of more than `FULL_SCALE_PIXELS` is decoded at half or a quarter of its scale, a HEIC
    of that size is averaged down after decoding. Not for threads that run at the same time: the
    warnings of the readers are silenced meanwhile.

    Args:
        data: the whole file.
        max_pixels: largest picture that is decoded, width times height.
        max_bytes: largest file.

    Raises:
        UnreadableFrameError: EMPTY, NOT_A_PICTURE, KIND_NOT_READ (`raw` 1 for a camera's raw file
            that the decoder does not know, else 0; `stored` 1 for a TIFF or PNG that keeps its
            pixels in an unusual way), DAMAGED,
            TOO_MANY_BYTES (`bytes`, `limit`), TOO_MANY_PIXELS (`pixels`, `limit`),
            TOO_SMALL (`width`, `height`, `limit`) or TOO_MUCH_MEMORY.
    """
    if len(data) > max_bytes:
        raise UnreadableFrameError(FrameFault.TOO_MANY_BYTES, bytes=len(data), limit=max_bytes)
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            kind = file_kind(data)
            if kind == RAW:
                return _read_raw(data, max_pixels)
            opened = _READERS[kind](data, max_pixels)
    except UnreadableFrameError:
        raise
    except Exception as error:  # a hostile file breaks a reader in many ways
        fault = FrameFault.TOO_MUCH_MEMORY if _out_of_memory(error) else FrameFault.DAMAGED
        raise UnreadableFrameError(fault) from error
    return _finished(kind, opened)


def _out_of_memory(error: Exception) -> bool:
    """Whether a reader found no memory, in the ways in which each of them says it."""
    if isinstance(error, cv2.error):
        return error.code == cv2.Error.StsNoMem
    # libheif has words only.
    heif = isinstance(error, RuntimeError) and str(error).startswith("Memory allocation error")
    return heif or isinstance(error, MemoryError | rawpy.LibRawUnsufficientMemoryError)


def _finished(kind: str, opened: _Opened) -> DecodedFrame:
    pixels = upright(opened.pixels, opened.orientation)
    stated = stated_size(opened.tags)
    smaller = stated is not None and max(pixels.shape) < 0.9 * max(stated)  # own rule, as for crops
    return DecodedFrame(
        pixels=pixels,
        file_kind=kind,
        metadata=read_metadata(opened.tags),
        jpeg_quality=opened.jpeg_quality,
        reduced=opened.scaled or smaller,
    )


def _read_jpeg(data: bytes, max_pixels: int, at_most: int | None = None) -> _Opened:
    whole = whole_jpeg(data)  # first: it is quick where the next steps from byte to byte
    image = JpegImageFile(io.BytesIO(whole))
    check_size(image.size, max_pixels)
    quality = standard_quality(image.quantization)
    halvings = halvings_for(image.size, at_most)
    at_least = (-(-image.width >> halvings), -(-image.height >> halvings)) if halvings else (0, 0)
    if image.mode == "CMYK":  # the strict reader looks for damage alone, at its smallest scale
        jpeg_pixels(whole, cmyk=True, at_least=(1, 1))
        pixels = _pillow_pixels(image, at_least)
    else:
        try:
            pixels = jpeg_pixels(whole, at_least=at_least)
        except NotJudgedError:
            pixels = _pillow_pixels(image, at_least)
            check_foot(pixels)
    tags = _tags(image)
    return _Opened(pixels, tags.get(_ORIENTATION), tags, quality, scaled=halvings > 0)


def _pillow_pixels(image: JpegImageFile, at_least: tuple[int, int]) -> NDArray[np.uint8]:
    if any(at_least):
        image.draft(image.mode, at_least)
    image.load()
    return picture_pixels(image)


def _read_png(data: bytes, max_pixels: int) -> _Opened:
    image = PngImageFile(io.BytesIO(data))
    check_size(image.size, min(max_pixels, MAX_PIXELS_UNSCALED))
    if not png_is_whole(data):
        raise UnreadableFrameError(FrameFault.DAMAGED)
    return _read_loaded(image)


def _read_tiff(data: bytes, max_pixels: int) -> _Opened:
    try:
        image = TiffImageFile(io.BytesIO(data))
    except SyntaxError as error:  # how the reader says "not for me"
        if has_readable_directory(data):
            raise UnreadableFrameError(FrameFault.KIND_NOT_READ, raw=0, stored=1) from error
        raise
    check_size(image.size, min(max_pixels, MAX_PIXELS_UNSCALED))
    if not strips_are_there(image.tag_v2, len(data)):
        raise UnreadableFrameError(FrameFault.DAMAGED)
    if in_wide_planes(image.tag_v2):
        raise UnreadableFrameError(FrameFault.KIND_NOT_READ, raw=0, stored=1)
    return _read_loaded(image)


def _read_loaded(image: ImageFile) -> _Opened:
    if image.mode not in READABLE_MODES | SIXTEEN_BIT_MODES:
        raise UnreadableFrameError(FrameFault.KIND_NOT_READ, raw=0, stored=1)
    image.load()
    tags = _tags(image)
    # Asked after loading: the TIFF reader has then turned the picture and dropped the tag.
    return _Opened(picture_pixels(image), tags.get(_ORIENTATION), tags)


def _read_heic(data: bytes, max_pixels: int) -> _Opened:
    heif = pillow_heif.open_heif(data, convert_hdr_to_8bit=True)
    check_size(heif.size, max_pixels)
    if not heif_is_whole(data):
        raise UnreadableFrameError(FrameFault.DAMAGED)
    halvings = halvings_for(heif.size)
    pixels = np.asarray(heif)[:, : heif.size[0]]
    if pixels.ndim == 2:  # a grey picture
        pixels = np.repeat(pixels[..., np.newaxis], 3, axis=2)
    if pixels.shape[2] == 4:
        pixels = visible(pixels)
    if lacks_tiles(pixels):
        raise UnreadableFrameError(FrameFault.DAMAGED)
    block = heif.info.get("exif") or b""

    def load_exif() -> Image.Exif:
        exif = Image.Exif()
        exif.load(block)
        return exif

    # The reader has turned the picture by its container; the Exif orientation is a leftover.
    tags = exif_tags(load_exif) if len(block) <= _LONGEST_EXIF else {}
    return _Opened(shrunk(pixels, halvings), 1, tags, scaled=halvings > 0)


def _read_raw(data: bytes, max_pixels: int) -> DecodedFrame:
    frame = read_raw(data, max_pixels)
    check_sides((frame.width, frame.height))
    preview, preview_tags = _preview(frame.preview)
    pixels = upright(render(frame), frame.orientation)
    turned = (pixels.shape[0] > pixels.shape[1]) != (frame.height > frame.width)
    width, height = (frame.height, frame.width) if turned else (frame.width, frame.height)
    metadata = read_metadata(preview_tags | dict(exif_tags(lambda: _directory_exif(data))))
    return DecodedFrame(
        pixels=pixels,
        file_kind=RAW,
        metadata=completed(metadata, **frame.settings._asdict(), taken_at=frame.taken_at),
        jpeg_quality=None,
        raw=RawDecoded(
            raw_exposure(frame, preview), clipped_share(frame), width=width, height=height
        ),
    )


def _preview(data: bytes | None) -> tuple[NDArray[np.uint8] | None, dict[int, object]]:
    """The embedded picture as stored, and its tags; none where it is no sound JPEG."""
    if data is None:
        return None, {}
    try:
        opened = _read_jpeg(data, MAX_PIXELS, PREVIEW_PIXELS)
    except Exception:  # it is only an addition: what is wrong with it harms nothing
        return None, {}
    return opened.pixels, dict(opened.tags)


def _directory_exif(data: bytes) -> Image.Exif:
    """Tags of a raw file that is built of TIFF's directories, whatever number it begins with."""
    exif = Image.Exif()
    mark = {b"II": b"II*\x00", b"MM": b"MM\x00*"}[data[:2]]
    exif.load(data if data.startswith(mark) else mark + data[4:])
    return exif


def _tags(image: Image.Image) -> ExifTags:
    """Tags of a picture's Exif block; none from a block that no camera can have written."""
    size = len(image.info.get("exif") or b"")
    return {} if size > _LONGEST_EXIF else exif_tags(image.getexif)


_READERS: Final[Mapping[str, Callable[[bytes, int], _Opened]]] = {
    "JPEG": _read_jpeg,
    "PNG": _read_png,
    "TIFF": _read_tiff,
    "HEIC": _read_heic,
}
