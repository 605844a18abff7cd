"""Time zone of a place, offline."""

from __future__ import annotations

from typing import Final

import tzfpy

from core.errors import within

#: Zones of the open sea: whole hours from the longitude, no summer time.
_SEA_PREFIX: Final = "Etc/"


def zone_name(latitude_deg: float, longitude_deg: float) -> str:
    """Name of the time zone at a place, for `zoneinfo.ZoneInfo`.

    Args:
        latitude_deg: north positive [deg], -90 to 90.
        longitude_deg: east positive [deg], -180 to 180.

    Returns:
        A name of the tz database. On the open sea it is a zone of whole hours
        (`Etc/GMT+2`, whose sign is turned round: two hours *behind* UTC); see `is_at_sea`.

    Raises:
        OutOfDomainError: a coordinate is NaN or out of range.

    Source: polygons of timezone-boundary-builder as packed in tzfpy; near a border they are
    simplified, so the answer may be the neighbour's.
    """
    within("latitude_deg", latitude_deg, "deg", -90, 90)
    within("longitude_deg", longitude_deg, "deg", -180, 180)
    return str(tzfpy.get_tz(longitude_deg, latitude_deg))


def is_at_sea(name: str) -> bool:
    """Whether a zone is one of the open sea: then the place may be mistyped; ask."""
    return name.startswith(_SEA_PREFIX)
