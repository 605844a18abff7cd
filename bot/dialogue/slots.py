"""Which facts belong to the kit, the place and the room, and which to one frame alone."""

from __future__ import annotations

from typing import Final

#: Slots that describe the person's kit and outlive a walk.
KIT_SLOTS: Final = frozenset(
    {
        "camera_format",
        "camera_name",
        "megapixels",
        "lenses",
        "has_tripod",
        "has_polariser",
        "nd_stops",
        "base_iso",
        "dial_halves",
    }
)

#: Slots that describe the fall or reach and outlive a walk at the same place.
PLACE_SLOTS: Final = frozenset({"fall_height_m", "fall_width_m", "walk_km", "climb_m"})

#: Slots that a leader tells for all in a group room: the fall, the place to stand, the look.
ROOM_SLOTS: Final = frozenset(
    {"fall_height_m", "fall_width_m", "distance_m", "stream", "flow", "look"}
    | {"water_speed_mps", "water_depth_m"}
)

#: Slots that are about one frame only: answered with their message, never kept.
PASSING_SLOTS: Final = frozenset(
    {"symptoms", "meter_stops", "change_stops", "blink", "histogram_at_right"}
)
