"""Frames as files: JPEG with the metadata that a camera writes."""

from __future__ import annotations

import io
from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray
from PIL import ExifTags, Image
from PIL.TiffImagePlugin import IFDRational

#: Quarter turns (counter-clockwise) that turn an upright picture into the stored one, for each
#: value of the orientation tag that is a plain turn (Exif 2.32, 4.6.4 A, from memory).
STORED_TURNS = {1: 0, 3: 2, 6: 1, 8: 3}


@dataclass(frozen=True)
class Stamp:
    """What the camera writes into the file; values as marked on its dials.

    Args:
        maker, model: invented.
        shutter: exposure time as a fraction (1, 4) [s].
        f_number, iso, focal_mm: as marked.
        focal_full_frame_mm: focal length as on 36 x 24 mm.
        bias_stops: exposure bias dialled in.
        taken_at: "YYYY:MM:DD HH:MM:SS", local; "" for a clock that was never set, so that a
            rendered frame is as new next year as today.
        orientation: 1, 3, 6 or 8; the pixels are stored turned to match.
        owner, serial, position: what must never leave again: a name, a body's number, and
            (latitude, longitude) in whole degrees.
    """

    maker: str = "Corvane"
    model: str = "Corvane F1"
    shutter: tuple[int, int] = (1, 4)
    f_number: float = 11.0
    iso: int = 100
    focal_mm: float = 27.0
    focal_full_frame_mm: int = 27
    bias_stops: float = 0.0
    taken_at: str = ""
    orientation: int = 1
    owner: str | None = None
    serial: str | None = None
    position: tuple[int, int] | None = None


#: The phone that takes pictures of rear screens: a small sensor tells it.
PHONE = Stamp(
    maker="Telmark",
    model="Telmark 9",
    shutter=(1, 60),
    f_number=1.8,
    iso=125,
    focal_mm=5.0,
    focal_full_frame_mm=26,
)


def jpeg(pixels: NDArray[np.uint8], stamp: Stamp | None = None, quality: int = 92) -> bytes:
    """The frame as a JPEG; without a stamp it carries no metadata, as a chat's copy.

    Args:
        pixels: shape (H, W, 3), uint8, RGB, upright.
        stamp: what the camera writes.
        quality: 1 to 95.
    """
    turns = STORED_TURNS[stamp.orientation] if stamp else 0
    image = Image.fromarray(np.ascontiguousarray(np.rot90(pixels, turns)))
    file = io.BytesIO()
    if stamp is None:
        image.save(file, "JPEG", quality=quality)
    else:
        image.save(file, "JPEG", quality=quality, exif=_exif(stamp))
    return file.getvalue()


def _exif(stamp: Stamp) -> Image.Exif:
    exif = Image.Exif()
    exif[ExifTags.Base.Make] = stamp.maker
    exif[ExifTags.Base.Model] = stamp.model
    exif[ExifTags.Base.Orientation] = stamp.orientation
    details = exif.get_ifd(ExifTags.IFD.Exif)
    details[ExifTags.Base.ExposureTime] = IFDRational(*stamp.shutter)
    details[ExifTags.Base.FNumber] = IFDRational(round(stamp.f_number * 10), 10)
    details[ExifTags.Base.ISOSpeedRatings] = stamp.iso
    if stamp.taken_at:
        exif[ExifTags.Base.DateTime] = stamp.taken_at
        details[ExifTags.Base.DateTimeOriginal] = stamp.taken_at
    details[ExifTags.Base.ExposureBiasValue] = IFDRational(round(stamp.bias_stops * 6), 6)
    details[ExifTags.Base.FocalLength] = IFDRational(round(stamp.focal_mm * 10), 10)
    details[ExifTags.Base.FocalLengthIn35mmFilm] = stamp.focal_full_frame_mm
    if stamp.owner:
        details[ExifTags.Base.CameraOwnerName] = stamp.owner
        exif[ExifTags.Base.Artist] = stamp.owner
    if stamp.serial:
        details[ExifTags.Base.BodySerialNumber] = stamp.serial
    if stamp.position:
        exif.get_ifd(ExifTags.IFD.GPSInfo).update(_position(*stamp.position))
    return exif


def _position(latitude: int, longitude: int) -> dict[int, object]:
    def degrees(angle: int) -> tuple[IFDRational, IFDRational, IFDRational]:
        return IFDRational(abs(angle)), IFDRational(0), IFDRational(0)

    return {
        ExifTags.GPS.GPSLatitudeRef: "N" if latitude >= 0 else "S",
        ExifTags.GPS.GPSLatitude: degrees(latitude),
        ExifTags.GPS.GPSLongitudeRef: "E" if longitude >= 0 else "W",
        ExifTags.GPS.GPSLongitude: degrees(longitude),
    }


def reduced(frame: NDArray[np.uint8], long_side: int) -> NDArray[np.uint8]:
    """A smaller copy, as a chat makes it."""
    scale = long_side / max(frame.shape[:2])
    size = (round(frame.shape[1] * scale), round(frame.shape[0] * scale))
    return np.asarray(cv2.resize(frame, size, interpolation=cv2.INTER_AREA), dtype=np.uint8)
