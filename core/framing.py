"""From a fall's height and distance to focal length, tilt, where to stand."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from core.domain import between, positive
from core.errors import within

#: Room left free on each side, as a part of that side of the frame (own rule).
SPARE: Final = 0.05
#: Most room that can be asked for on each side (own rule).
MOST_SPARE: Final = 0.45
#: Heights and distances for which the formulas are used [m] (own rule: the highest falls on Earth
#: measure just under 1000 m).
FARTHEST_M: Final = 20_000.0


@dataclass(frozen=True)
class Framing:
    """What it takes to hold a fall from its top to the lowest thing that matters.

    Args:
        needed_deg: angle between the highest and the lowest point, seen from the camera [deg].
        longest_mm: longest focal length that holds both, nothing to spare, camera tilted so that
            both lie equally far from the middle [mm].
        focal_mm: the same with room to spare [mm].
        tilt_deg: that tilt, upwards positive [deg].
        level_mm: longest focal length that holds the top with a level camera [mm]; infinite when
            the top is not above the camera.
    """

    needed_deg: float
    longest_mm: float
    focal_mm: float
    tilt_deg: float
    level_mm: float

    def spare(self, focal_mm: float) -> float:
        """Room on each end with that tilt and this focal length, as a part of the side.

        What must be held takes focal length over `longest_mm` of the side; below 0 it is cut.

        Args:
            focal_mm: real focal length [mm], above 0.
        """
        return (1 - focal_mm / self.longest_mm) / 2


def frame_fall(
    height_m: float,
    distance_m: float,
    camera_height_m: float,
    nearest_m: float | None,
    side_mm: float,
    spare: float = SPARE,
) -> Framing:
    """Find the focal length and the tilt that hold a fall and the rocks before it.

    The angles are the arctangents of height over distance, to the top, the foot and the nearest
    thing; the tilt is the middle between the highest and the lowest of them, the focal length
    half the side over the tangent of half the angle between them.

    Args:
        height_m: top of the fall above the level on which its foot and the rocks lie [m], above 0.
        distance_m: along the ground from the camera to the fall [m], above 0.
        camera_height_m: camera above that level [m], -1000 to 1000; negative when below it.
        nearest_m: along the ground to the nearest thing that must be in the picture [m], above 0,
            not beyond the fall; None if the foot of the fall is the lowest thing.
        side_mm: upright side of the sensor [mm], above 0.
        spare: room to be left on each end, as a part of the side, 0 to 0.45.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: pinhole geometry.
    """
    positive("height_m", height_m, "m", FARTHEST_M)
    positive("distance_m", distance_m, "m", FARTHEST_M)
    between("camera_height_m", camera_height_m, "m", -1000.0, 1000.0)
    positive("side_mm", side_mm, "mm")
    _spare(spare)
    above_m = height_m - camera_height_m
    slopes = [above_m / distance_m, -camera_height_m / distance_m]
    if nearest_m is not None:
        positive("nearest_m", nearest_m, "m", distance_m)
        slopes.append(-camera_height_m / nearest_m)
    highest, lowest = math.atan(max(slopes)), math.atan(min(slopes))
    tilt, half = (highest + lowest) / 2, (highest - lowest) / 2
    longest_mm = side_mm / 2 / math.tan(half)
    return Framing(
        needed_deg=math.degrees(2 * half),
        longest_mm=longest_mm,
        focal_mm=longest_mm * (1 - 2 * spare),
        tilt_deg=math.degrees(tilt),
        level_mm=math.inf if above_m <= 0 else side_mm / 2 * distance_m / above_m,
    )


def stand_back_m(height_above_eye_m: float, focal_mm: float, side_mm: float) -> float:
    """Distance from which a level camera just holds the top [m]: height * focal / (side / 2).

    Args:
        height_above_eye_m: top of the fall above the camera [m], above 0.
        focal_mm: focal length [mm], above 0.
        side_mm: upright side of the sensor [mm], above 0.

    Raises:
        OutOfDomainError: a number is not positive and finite.

    Source: similar triangles.
    """
    positive("height_above_eye_m", height_above_eye_m, "m", FARTHEST_M)
    positive("focal_mm", focal_mm, "mm")
    positive("side_mm", side_mm, "mm")
    return height_above_eye_m * focal_mm / (side_mm / 2)


def section_focal_mm(
    section_m: float, distance_m: float, side_mm: float, spare: float = SPARE
) -> float:
    """Focal length with which a section of a fall fills a side of the frame [mm].

    Side less what is spared, times distance, over the section; the section faces the camera.

    Args:
        section_m: length of the section along that side [m], above 0.
        distance_m: from the camera to it [m], above 0.
        side_mm: side of the sensor along it [mm], above 0.
        spare: room to be left on each end, as a part of the side, 0 to 0.45.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: similar triangles.
    """
    positive("section_m", section_m, "m", FARTHEST_M)
    positive("distance_m", distance_m, "m", FARTHEST_M)
    positive("side_mm", side_mm, "mm")
    _spare(spare)
    return side_mm * (1 - 2 * spare) * distance_m / section_m


def _spare(spare: float) -> None:
    within("spare", spare, "", 0.0, MOST_SPARE)
