"""What a file says of its taking, with odd values taken out."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Mapping
from contextlib import suppress
from dataclasses import replace
from datetime import date, time
from typing import Final

from PIL import Image

from core.frame.phones import is_phone
from core.frame.report import CameraSettings, FrameMetadata

#: Tag number to value, of the first directory and the Exif directory together.
ExifTags = Mapping[int, object]

# Exif tag numbers. Source: CIPA DC-008 (Exif 2.32), from memory, as Pillow lists them.
_EXIF_DIRECTORY: Final = 34665
_MAKER: Final = 271
_MODEL: Final = 272
_ORIENTATION: Final = 274
_EXPOSURE_TIME: Final = 33434
_F_NUMBER: Final = 33437
_SENSITIVITY: Final = 34855
#: Where the sensitivity goes when it does not fit into the two bytes of `_SENSITIVITY`:
#: recommended exposure index, standard output sensitivity, ISO speed.
_LONG_SENSITIVITIES: Final = (34866, 34865, 34867)
_TAKEN: Final = 36867
_DIGITISED: Final = 36868
#: Offsets from UTC of the two stamps above, since Exif 2.31.
_TAKEN_OFFSET: Final = 36881
_DIGITISED_OFFSET: Final = 36882
_TIME_VALUE: Final = 37377
_APERTURE_VALUE: Final = 37378
_BIAS: Final = 37380
_FOCAL: Final = 37386
_WIDTH: Final = 40962
_HEIGHT: Final = 40963
_FOCAL_FULL_FRAME: Final = 41989
_LENS_MODEL: Final = 42036

#: All that is read; the rest of a block, which a stranger may have made endless, is not decoded.
_READ: Final = (
    _MAKER, _MODEL, _EXPOSURE_TIME, _F_NUMBER, _SENSITIVITY, *_LONG_SENSITIVITIES, _TAKEN,
    _TAKEN_OFFSET, _DIGITISED_OFFSET,
    _DIGITISED, _TIME_VALUE, _APERTURE_VALUE, _BIAS, _FOCAL, _WIDTH, _HEIGHT, _FOCAL_FULL_FRAME,
    _LENS_MODEL, _ORIENTATION,
)  # fmt: skip

#: Largest value of a two-byte tag, which then means "see the other tags" (Exif 2.3).
_SENSITIVITY_OVERFLOW: Final = 65535

# What a camera can have meant; anything outside is taken out. Own rule, wide on purpose.
_TIMES_S: Final = (1e-6, 86_400.0)
_F_NUMBERS: Final = (0.5, 128.0)
_SENSITIVITIES: Final = (1.0, 10_000_000.0)
_FOCALS_MM: Final = (0.5, 5000.0)
_BIASES: Final = (-10.0, 10.0)
_YEARS: Final = (1990, 2100)
_SIDES_PX: Final = (100.0, 100_000.0)
#: Zones of the earth [min east of UTC]: from UTC-12 to UTC+14 (tz database).
_ZONES_MIN: Final = (-12 * 60, 14 * 60)

#: Longest text that is kept of a maker's or a model's name. Own rule.
_LONGEST_TEXT: Final = 64

#: How makers stamp a time; some put other marks between the digits (seen in real files).
_STAMP: Final = re.compile(r"\s*(\d{4})\D(\d\d)\D(\d\d)[ T](\d\d)\D(\d\d)\D(\d\d)")
_OFFSET: Final = re.compile(r"\s*([+-])(\d\d):([0-5]\d)\s*\0?")


def exif_tags(load: Callable[[], Image.Exif]) -> ExifTags:
    """Tags of the first directory and, above them, of the Exif directory.

    Args:
        load: reads the block; whatever it raises means that there is none.

    Returns:
        What could be read of the tags that are used; one that cannot be decoded is left out.
    """
    tags: dict[int, object] = {}
    try:
        exif = load()
        tags.update(_entries(exif))
        tags.update(_entries(exif.get_ifd(_EXIF_DIRECTORY)))
    except Exception:  # real and hostile files break Exif readers in many ways
        return tags
    return tags


def _entries(directory: Mapping[int, object]) -> dict[int, object]:
    entries: dict[int, object] = {}
    for tag in _READ:
        with suppress(Exception):  # one broken tag does not take the others with it
            entries[tag] = directory[tag]
    return entries


def read_metadata(tags: ExifTags) -> FrameMetadata:
    """Settings, camera and time of a frame.

    A value that no camera can have meant (0/0, f/0.2, a sensitivity of 0, a date of zeros) is
    None. A time or an f-number that is missing is taken from its APEX form, and a sensitivity
    that did not fit its tag from the tags beside it.
    """
    settings = CameraSettings(
        shutter_s=_shutter_s(tags),
        f_number=_f_number(tags),
        iso=_iso(tags),
        focal_mm=_number(tags.get(_FOCAL), _FOCALS_MM),
    )
    focal_full_frame_mm = _number(tags.get(_FOCAL_FULL_FRAME), _FOCALS_MM)
    maker, model, lens = (_text(tags.get(tag)) for tag in (_MAKER, _MODEL, _LENS_MODEL))
    taken_at, digitised_at = _stamp(tags.get(_TAKEN)), _stamp(tags.get(_DIGITISED))
    return FrameMetadata(
        settings=settings,
        focal_full_frame_mm=focal_full_frame_mm,
        bias_stops=_number(tags.get(_BIAS), _BIASES),
        maker=maker,
        model=model,
        from_phone=is_phone(maker or "", model or "", lens or "", settings, focal_full_frame_mm),
        taken_at=taken_at or digitised_at,
        taken_offset_min=_offset_min(tags.get(_TAKEN_OFFSET if taken_at else _DIGITISED_OFFSET)),
        present=settings != CameraSettings() or maker is not None or model is not None,
    )


def completed(
    metadata: FrameMetadata,
    *,
    shutter_s: float,
    f_number: float,
    iso: float,
    focal_mm: float,
    taken_at: str | None,
) -> FrameMetadata:
    """Metadata with what another reader found in the places that are empty.

    Args:
        metadata: from the tags.
        shutter_s: exposure time [s]; anything odd counts as not said, as with the next three.
        f_number: working aperture.
        iso: sensitivity; without one the other values are a reader's own defaults.
        focal_mm: focal length [mm].
        taken_at: local time, ISO 8601.
    """
    if _number(iso, _SENSITIVITIES) is None:
        return metadata
    said = metadata.settings
    settings = CameraSettings(
        shutter_s=said.shutter_s or _number(shutter_s, _TIMES_S),
        f_number=said.f_number or _number(f_number, _F_NUMBERS),
        iso=said.iso or iso,
        focal_mm=said.focal_mm or _number(focal_mm, _FOCALS_MM),
    )
    return replace(
        metadata, settings=settings, taken_at=metadata.taken_at or taken_at, present=True
    )


def stated_size(tags: ExifTags) -> tuple[int, int] | None:
    """Width and height that the camera stamped, as stored [px]; None if missing or odd."""
    width, height = _number(tags.get(_WIDTH), _SIDES_PX), _number(tags.get(_HEIGHT), _SIDES_PX)
    return None if width is None or height is None else (int(width), int(height))


def _shutter_s(tags: ExifTags) -> float | None:
    """Exposure time [s]; APEX: 2 to the power of -Tv (CIPA DC-008, annex C)."""
    stated = _number(tags.get(_EXPOSURE_TIME), _TIMES_S)
    apex = _number(tags.get(_TIME_VALUE), (-17.0, 20.0))
    if apex == 0 and _EXPOSURE_TIME in tags:  # a field of zeros beside a time of zero, not 1 s
        apex = None
    return stated if stated is not None or apex is None else 2.0**-apex


def _f_number(tags: ExifTags) -> float | None:
    """f-number; APEX: 2 to the power of Av / 2 (CIPA DC-008, annex C)."""
    stated = _number(tags.get(_F_NUMBER), _F_NUMBERS)
    # An Av of 0 is what cameras write for "no lens with contacts", not f/1. Own rule.
    apex = _number(tags.get(_APERTURE_VALUE), (0.1, 14.0))
    return stated if stated is not None or apex is None else 2.0 ** (apex / 2)


def _iso(tags: ExifTags) -> float | None:
    stated = _number(tags.get(_SENSITIVITY), _SENSITIVITIES)
    if stated is not None and stated < _SENSITIVITY_OVERFLOW:
        return stated
    longer = (_number(tags.get(tag), _SENSITIVITIES) for tag in _LONG_SENSITIVITIES)
    return next((value for value in longer if value is not None), None)


def _number(value: object, limits: tuple[float, float]) -> float | None:
    """A value as a number within limits; the first one where a file holds several."""
    if isinstance(value, tuple) and value:
        value = value[0]
    try:
        number = float(value)  # type: ignore[arg-type]  # whatever the file holds
    except (TypeError, ValueError, ArithmeticError):
        return None
    low, high = limits
    return number if math.isfinite(number) and low <= number <= high else None


def _text(value: object) -> str | None:
    """A name without control characters and spare blanks; None when nothing is left."""
    if isinstance(value, bytes):
        value = value.decode("utf-8", "replace")
    if not isinstance(value, str):
        return None
    printable = "".join(letter if letter.isprintable() else " " for letter in value)
    return " ".join(printable.split())[:_LONGEST_TEXT] or None


def _stamp(value: object) -> str | None:
    """A time stamp as ISO 8601 without a zone; None for zeros, blanks and impossible days."""
    match = _STAMP.match(value) if isinstance(value, str) else None
    if match is None:
        return None
    year, month, day, hour, minute, second = (int(part) for part in match.groups())
    if not _YEARS[0] <= year <= _YEARS[1]:
        return None
    try:
        return f"{date(year, month, day).isoformat()}T{time(hour, minute, second).isoformat()}"
    except ValueError:
        return None


def _offset_min(value: object) -> int | None:
    """An offset from UTC as `+05:30` [min]; None for blanks and for zones that nobody keeps."""
    match = _OFFSET.fullmatch(value) if isinstance(value, str) else None
    if match is None:
        return None
    sign, hours, minutes = match.groups()
    offset_min = (int(hours) * 60 + int(minutes)) * (1 if sign == "+" else -1)
    return offset_min if _ZONES_MIN[0] <= offset_min <= _ZONES_MIN[1] else None
