"""Zooms of compact cameras, which bear the numbers of full frame: as their glass is."""

from __future__ import annotations

from typing import Final

from bot.dialogue.facts import LensFact
from core.camera import FORMATS

#: Between these a 1-inch zoom's short end is told as full frame [mm] (own rule: compacts begin at
#: 24 to 28 of full frame, lenses for bodies of that size at 10 or 30).
_AS_FULL_FRAME_MM: Final = (20.0, 29.0)


def as_real(camera_format: object, lens: LensFact) -> LensFact:
    """A zoom of a 1-inch compact with its real focal lengths; any other lens as it was told.

    Args:
        camera_format: that was told with it.
        lens: as typed.
    """
    least, most = _AS_FULL_FRAME_MM
    zoom = lens.shortest_mm < lens.longest_mm
    if camera_format != "1-inch" or not zoom or not least <= lens.shortest_mm <= most:
        return lens
    crop = FORMATS["1-inch"].crop_factor
    ends = {"shortest_mm": lens.shortest_mm / crop, "longest_mm": lens.longest_mm / crop}
    return lens.model_copy(update=ends)
