"""The focal lengths of lenses that are made."""

from __future__ import annotations

from typing import Final

#: The shortest of all [mm] (common practice); below it only a phone's own lens lies.
SHORTEST_MM: Final = 4.0
#: Ends of zooms that are made (common practice): a bare pair of numbers must be such.
ZOOM_ENDS: Final = frozenset(
    {7, 8, 9, 10, 11, 12, 14, 15, 16, 17, 18, 20, 22, 24, 25, 28, 30, 32, 35, 36, 40, 42, 45, 50}
    | {52, 55, 60, 64, 66, 70, 75, 77, 80, 85, 90, 100, 105, 110, 120, 125, 135, 140, 150, 180}
    | {200, 210, 240, 250, 300, 350, 400, 450, 500, 600, 800}
)
#: Primes that are made (common practice): a bare number must be such.
PRIMES: Final = frozenset(
    {8, 9, 10, 11, 12, 14, 15, 16, 17, 18, 20, 21, 23, 24, 25, 26, 27, 28, 30, 32, 33, 35, 40, 42}
    | {45, 50, 55, 56, 58, 60, 65, 75, 80, 85, 90, 100, 105, 110, 120, 135, 150, 180, 200, 300}
    | {400, 500, 600, 800}
)
