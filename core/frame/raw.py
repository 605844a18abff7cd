"""Raw files: the photosites by colour, what they say of the exposure, and a rendering of them."""

from __future__ import annotations

import io
from collections.abc import Mapping
from dataclasses import dataclass
from functools import reduce
from typing import Final, NamedTuple

import cv2
import numpy as np
import rawpy
from numpy.typing import NDArray

from core.errors import FrameFault, UnreadableFrameError
from core.frame.photosites import COLOURS, ROWS_RENDERED, Counted, Plane, Planes, count, strips
from core.frame.raw_extents import raw_is_whole
from core.frame.raw_saturation import Saturation, find_saturation
from core.frame.srgb import curved_of

_LETTERS: Final = {"R": "red", "G": "green", "B": "blue"}

#: LibRaw's turns to the orientations of Exif (180 degrees, left, right). Source: LibRaw's
#: documentation of `sizes.flip`, from memory.
_ORIENTATIONS: Final = {3: 3, 5: 8, 6: 6}

#: Part of the last rows that has one value, from which on it was never read: a decoder leaves
#: zeros, or what was in its memory, for what a file lacks. Own rule.
_BLANK_ROWS: Final = 1 / 64
#: Code of a rendering for what is not saturated at most: clearly less, in what is averaged too.
_BRIGHTEST_CODE: Final = 246
#: Code of a rendering for what is saturated.
SATURATED_CODE: Final = 255
#: A white balance beyond this is nonsense. Own rule, wide on purpose.
_HIGHEST_GAIN: Final = 8.0
#: Largest mosaic pattern [photosites a side]: 6 by 6 is the largest that is sold (from memory).
_LARGEST_PATTERN: Final = 8


class RawSettings(NamedTuple):
    """Exposure time [s], f-number, sensitivity and focal length [mm]; 0: not said."""

    shutter_s: float
    f_number: float
    iso: float
    focal_mm: float


@dataclass(frozen=True)
class RawFrame:
    """An unpacked raw file.

    Attributes:
        planes: photosites of each colour, all of one shape, as stored (not turned); they lie in
            the decoder's memory, which goes with the last of them.
        counted: what one look at all of them gave.
        saturation: of each colour.
        gains: white balance of the camera by colour, the lowest 1.
        orientation: as in Exif, 1 to 8.
        width, height: of the visible photosites as stored [px].
        preview: the embedded JPEG, None without one.
        settings: as LibRaw reads them; 0 where the file does not say.
        taken_at: local time, ISO 8601; None where LibRaw reads none.
    """

    planes: Planes
    counted: Counted
    saturation: Mapping[str, Saturation]
    gains: Mapping[str, float]
    orientation: int
    width: int
    height: int
    preview: bytes | None
    settings: RawSettings
    taken_at: str | None


def read_raw(data: bytes, max_pixels: int) -> RawFrame:
    """Unpack a raw file.

    Only for a process that has decoded no other raw file: what a decoder does not fill may hold
    another picture.

    Args:
        data: the whole file.
        max_pixels: largest picture, width times height.

    Raises:
        UnreadableFrameError: DAMAGED, KIND_NOT_READ (`raw` 1) or TOO_MANY_PIXELS.
    """
    if not raw_is_whole(data):
        raise UnreadableFrameError(FrameFault.DAMAGED)
    try:
        raw = rawpy.RawPy()
        raw.open_buffer(io.BytesIO(data))
        pixels = raw.sizes.raw_width * raw.sizes.raw_height
        if pixels > max_pixels:
            raise UnreadableFrameError(FrameFault.TOO_MANY_PIXELS, pixels=pixels, limit=max_pixels)
        raw.unpack()
        return _frame(raw)
    except rawpy.LibRawFileUnsupportedError as error:
        raise UnreadableFrameError(FrameFault.KIND_NOT_READ, raw=1) from error


def _frame(raw: rawpy.RawPy) -> RawFrame:
    planes = _planes(raw)
    for plane in (plane for same in planes.values() for plane in same):
        _check_foot(plane.sites)
    counted = count(planes)
    _check_middle(planes, counted)
    blacks = {colour: same[0].black for colour, same in planes.items()}
    return RawFrame(
        planes=planes,
        counted=counted,
        saturation=find_saturation(counted.counts, blacks, float(raw.white_level)),
        gains=_gains(raw.camera_whitebalance),
        orientation=_ORIENTATIONS.get(raw.sizes.flip, 1),
        width=raw.sizes.width,
        height=raw.sizes.height,
        preview=_preview(raw),
        settings=_settings(raw),
        taken_at=_taken_at(raw),
    )


def _planes(raw: rawpy.RawPy) -> dict[str, tuple[Plane, ...]]:
    """The photosites by colour; LibRaw's memory stays as long as one of them does."""
    image = raw.raw_image_visible
    blacks = [float(black) for black in raw.black_level_per_channel]
    if image.ndim == 3:  # interpolated already, or three layers of photosites
        return {
            colour: (Plane(image, index, blacks[index]),) for index, colour in enumerate(COLOURS)
        }
    if raw.num_colors == 1:
        grey = (Plane(image[..., np.newaxis], 0, blacks[0]),)
        return dict.fromkeys(COLOURS, grey)
    pattern = raw.raw_pattern
    names = [_LETTERS.get(letter) for letter in raw.color_desc.decode("ascii", "replace")]
    if pattern is None or max(pattern.shape) > _LARGEST_PATTERN or None in names:
        raise UnreadableFrameError(FrameFault.KIND_NOT_READ, raw=1)
    return _by_colour(image, pattern, [str(name) for name in names], blacks)


def _by_colour(
    image: NDArray[np.uint16],
    pattern: NDArray[np.uint8],
    names: list[str],
    blacks: list[float],
) -> dict[str, tuple[Plane, ...]]:
    """One plane for each place of the pattern, under the colour that lies there."""
    down, across = pattern.shape
    height, width = image.shape[0] // down, image.shape[1] // across
    planes: dict[str, list[Plane]] = {colour: [] for colour in COLOURS}
    for row, places in enumerate(pattern.tolist()):
        line = image[row : height * down : down, : width * across].reshape(height, width, across)
        for column, index in enumerate(places):
            planes[names[index]].append(Plane(line, column, blacks[index]))
    return {colour: tuple(same) for colour, same in planes.items()}


def _check_foot(sites: NDArray[np.uint16]) -> None:
    """Refuse photosites of which the last rows were never read, or none at all."""
    foot = sites[-max(2, int(_BLANK_ROWS * len(sites))) :]
    if sites.size == 0 or not foot.any():
        raise UnreadableFrameError(FrameFault.DAMAGED)


def _check_middle(planes: Planes, counted: Counted) -> None:
    """Refuse photosites of which rows within were never read: not one of them has a code.

    Only what holds so many codes of zero is looked through.
    """
    for colour, same in planes.items():
        rows = max(2, int(_BLANK_ROWS * len(same[0].sites)))
        for plane in same if counted.counts[colour][0] >= rows * same[0].sites.shape[1] else ():
            if np.count_nonzero(~plane.sites.any(axis=1)) >= rows:
                raise UnreadableFrameError(FrameFault.DAMAGED)


def _gains(multipliers: list[float]) -> dict[str, float]:
    """White balance by colour, the lowest 1; all 1 where the file has none or nonsense."""
    named = dict(zip(COLOURS, (float(value) for value in multipliers[:3]), strict=True))
    lowest = min(named.values())
    if lowest <= 0 or max(named.values()) > _HIGHEST_GAIN * lowest:
        return dict.fromkeys(COLOURS, 1.0)
    return {colour: value / lowest for colour, value in named.items()}


def _preview(raw: rawpy.RawPy) -> bytes | None:
    try:
        found = raw.extract_thumb()
    except rawpy.LibRawError:
        return None
    return bytes(found.data) if found.format == rawpy.ThumbFormat.JPEG else None


def _settings(raw: rawpy.RawPy) -> RawSettings:
    other = raw.other
    return RawSettings(
        float(other.shutter_speed),
        float(other.aperture),
        float(other.iso_speed),
        float(other.focal_length),
    )


def _taken_at(raw: rawpy.RawPy) -> str | None:
    """LibRaw says 1970 where it found nothing."""
    stamp = raw.other.timestamp
    return None if stamp is None or stamp.year <= 1970 else str(stamp.isoformat())


def _brightest(
    several: list[NDArray[np.uint16]], blacks: list[float]
) -> dict[float, NDArray[np.uint16]]:
    """The largest code of each place, for each black level; the first plane's memory is used."""
    largest: dict[float, NDArray[np.uint16]] = {}
    for sites, black in zip(several, blacks, strict=True):
        if black in largest:
            cv2.max(largest[black], sites, dst=largest[black])
        else:
            largest[black] = sites
    return largest


def render(frame: RawFrame) -> NDArray[np.uint8]:
    """A picture with one pixel for each place of the pattern, as stored (not turned).

    The camera's white balance and the sRGB curve (IEC 61966-2-1), no other treatment; a channel
    is 255 exactly where one of its photosites is saturated.

    Returns:
        Red, green, blue, shape (h, w, 3).
    """
    tables = {
        (colour, plane.black): _codes(frame.saturation[colour], plane.black, frame.gains[colour])
        for colour, same in frame.planes.items()
        for plane in same
    }
    pixels = np.empty((*frame.planes[COLOURS[0]][0].sites.shape, len(COLOURS)), np.uint8)
    for top, strip in strips(frame.planes, ROWS_RENDERED):
        channels = []
        for colour in COLOURS:
            blacks = [plane.black for plane in frame.planes[colour]]
            brightest = _brightest(strip[colour], blacks)
            channels.append(
                reduce(cv2.max, [cv2.LUT(brightest[b], tables[colour, b]) for b in brightest])
            )
        cv2.merge(channels, pixels[top : top + len(channels[0])])
    return pixels


def _codes(saturation: Saturation, black: float, gain: float) -> NDArray[np.uint8]:
    """Code of each value of a photosite, shape (65536,)."""
    values = np.arange(65536, dtype=np.float64)
    light = np.clip((values - black) / (saturation.code - black) * gain, 0, 1)
    codes = np.rint(curved_of(light) * _BRIGHTEST_CODE).astype(np.uint8)
    return np.where(values >= saturation.clipped_from, SATURATED_CODE, codes).astype(np.uint8)
