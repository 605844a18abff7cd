"""One shared frame, from its bytes to everything that was measured on it."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.borders import find_borders
from core.frame.cast import measure_cast
from core.frame.clipping import find_clipping
from core.frame.contrast import contrast_of
from core.frame.decode import DecodedFrame, decode
from core.frame.findings import WaterArea
from core.frame.histogram import brightest_channel
from core.frame.limits import MAX_BYTES, MAX_PIXELS
from core.frame.mats import is_several, picture_inside
from core.frame.raw import SATURATED_CODE
from core.frame.report import ClippedArea, Clipping, FrameReport, SizeNote
from core.frame.room import room_and_advice
from core.frame.screenshots import is_screenshot
from core.frame.sharpness import measure_sharpness
from core.frame.texture import look_of_picture
from core.frame.water_area import propose_water
from core.frame.working import WorkingCopy, working_copy

#: Part of the camera's long or short side that a full-size frame has at least: a crop to another
#: shape keeps one of the two, straightening costs a little. Own rule.
_FULL_PART: Final = 0.9
#: Without a camera to compare with, a frame without metadata and no larger than this is a copy
#: that a chat client made [px]. Own rule.
_CHAT_COPY_PX: Final = 2048


def check_frame(
    data: bytes,
    camera_pixels: tuple[int, int] | None = None,
    *,
    max_pixels: int = MAX_PIXELS,
    max_bytes: int = MAX_BYTES,
    water_cells: tuple[str, ...] | None = None,
    axis_deg: float | None = None,
) -> tuple[FrameReport, NDArray[np.uint8]]:
    """Measure a shared file.

    Args:
        data: the whole file.
        camera_pixels: sides of the camera's frames [px], in any order, when known.
        max_pixels: largest picture that is decoded, width times height.
        max_bytes: largest file.
        water_cells: where the person says the water is, A1 to D4; None: it is looked for.
        axis_deg: axis of its flow as the person says it, from the horizontal, anticlockwise.

    Returns:
        The report, and the upright pixels for drawing, shape (H, W, 3), red, green, blue; of a
        raw file a smaller rendering.

    Raises:
        UnreadableFrameError: the file is no picture that can be measured.
        UnknownCellError: the grid has no such cell.
    """
    decoded = decode(data, max_pixels=max_pixels, max_bytes=max_bytes)
    frame = _without_mat(decoded)
    note = _size_note(frame, camera_pixels)
    brightest = brightest_channel(frame.pixels)
    clipping = _clipping(frame, note, brightest, water_cells)
    raw = frame.raw
    exposure = raw.exposure if raw else None
    room_stops, advice = room_and_advice(clipping, brightest, exposure)
    height, width = (raw.height, raw.width) if raw else frame.pixels.shape[:2]
    work = working_copy(frame.pixels)
    water = _water(work, water_cells, axis_deg)
    sharpness = measure_sharpness(work, frame.pixels, water)
    report = FrameReport(
        file_kind=frame.file_kind,
        width=width,
        height=height,
        metadata=frame.metadata,
        size_note=note,
        clipping=clipping,
        room_stops=room_stops,
        advice=advice,
        borders=find_borders(work, water),
        sharpness=sharpness,
        cast=measure_cast(work, water, clipping),
        water=water,
        look=look_of_picture(work, water, sharpness, clipping),
        contrast=contrast_of(work, clipping, water),
        raw=exposure,
        of_screen=is_screenshot(_whole(decoded, frame, work), frame.metadata),
        several_in_one=is_several(work.pixels),
        mat_left_out=frame is not decoded,
    )
    return report, frame.pixels


def _without_mat(frame: DecodedFrame) -> DecodedFrame:
    """The picture alone, where an even mat or bars lie around it."""
    window = None if frame.raw else picture_inside(frame.pixels)
    if window is None:
        return frame
    return replace(frame, pixels=np.ascontiguousarray(frame.pixels[window]))


def _whole(decoded: DecodedFrame, frame: DecodedFrame, work: WorkingCopy) -> WorkingCopy:
    """The working copy of a picture with what lies around it: pages have margins too."""
    return work if frame is decoded else working_copy(decoded.pixels)


def _clipping(
    frame: DecodedFrame,
    note: SizeNote,
    brightest: NDArray[np.uint8],
    water_cells: tuple[str, ...] | None,
) -> Clipping:
    """What clips, by the picture; of a raw file how much of it does, by its photosites."""
    clipping = find_clipping(
        frame.pixels,
        resized=note is SizeNote.RESIZED,
        jpeg_quality=frame.jpeg_quality,
        brightest=brightest,
        level=SATURATED_CODE if frame.raw else None,
        water_cells=water_cells,
    )
    if frame.raw is None:
        return clipping
    by_channel = dict(frame.raw.exposure.clipped)
    areas = _as_counted(clipping.areas, sum(by_channel.values()))
    return replace(clipping, share=frame.raw.clipped_share, by_channel=by_channel, areas=areas)


def _as_counted(areas: tuple[ClippedArea, ...], most: float) -> tuple[ClippedArea, ...]:
    """The areas of a raw file with shares that are no more than its photosites hold in all.

    One saturated photosite makes the whole place of its pattern white in the picture: a fourth of
    it on most sensors, a 36th on some.
    """
    total = sum(area.share for area in areas)
    if total <= most:
        return areas
    return tuple(replace(area, share=area.share * most / total) for area in areas)


def _water(
    work: WorkingCopy, cells: tuple[str, ...] | None, axis_deg: float | None
) -> WaterArea | None:
    """Where the person says that the water is, else where it seems to be."""
    if cells:
        return WaterArea(cells, axis_deg, by_person=True)
    found = propose_water(work)
    return found if found is None or axis_deg is None else replace(found, axis_deg=axis_deg)


def _size_note(frame: DecodedFrame, camera_pixels: tuple[int, int] | None) -> SizeNote:
    if frame.raw is not None:
        return SizeNote.FULL
    if frame.reduced:
        return SizeNote.RESIZED
    short, long = sorted(frame.pixels.shape[:2])
    if camera_pixels is None:
        copied = long <= _CHAT_COPY_PX and not frame.metadata.present
        return SizeNote.RESIZED if copied else SizeNote.FULL
    camera_short, camera_long = sorted(camera_pixels)
    full = long >= _FULL_PART * camera_long or short >= _FULL_PART * camera_short
    return SizeNote.FULL if full else SizeNote.RESIZED
