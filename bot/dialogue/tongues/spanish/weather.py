"""Spanish words of ice and of storms that are told in passing, or denied."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Ice where people walk; a frozen look and a frozen screen are none.
    "weather.ice": (
        r"(?:hay|con|de) hielo|hielo (?:en|por|sobre)|helad[oa]s? (?:la|el|las|los)|carámbanos?"
        r"|carambanos?|bajo cero"
    ),
    # "No ice", "no thunder".
    "weather.no": r"sin",
    # Before a storm alone.
    "weather.nor": r"ni",
    "weather.of_ice": r"hielo",
    "weather.minus": r"[Mm]enos",
    "weather.degrees": r"grados",
    "weather.of_storm": r"tormenta|trueno",
}
