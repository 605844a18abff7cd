"""Time zone of a place, offline."""

from __future__ import annotations

import tzfpy

from core.errors import within


def zone_name(latitude_deg: float, longitude_deg: float) -> str:
    """Name of the time zone at a place, for `zoneinfo.ZoneInfo`.

    Args:
        latitude_deg: north positive [deg], -90 to 90.
        longitude_deg: east positive [deg], -180 to 180.

    Returns:
        A name of the tz database. On the open sea it is a zone of whole hours
        (`Etc/GMT+2`, whose sign is turned round: two hours *behind* UTC).

    Raises:
        OutOfDomainError: a coordinate is NaN or out of range.

    Source: polygons of timezone-boundary-builder as packed in tzfpy; near a border they are
    simplified, so the answer may be the neighbour's.
    """
    within("latitude_deg", latitude_deg, "deg", -90, 90)
    within("longitude_deg", longitude_deg, "deg", -180, 180)
    return str(tzfpy.get_tz(longitude_deg, latitude_deg))
