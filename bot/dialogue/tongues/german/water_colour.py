"""German words: what the colour of the water is asked by."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Brown as tea is, or of mud.
    "water_colour.brown": (
        r"tee|teefarb\w*|teebraun\w*|cola|colafarb\w*|whisky\w*|bier\w*|bernstein\w*|braun\w*"
        r"|braunlich\w*|moorig\w*"
    ),
    "water_colour.asked": (
        r"schlamm|schlammig|moor|torf|gerbstoffe?|normal|naturlich|sicher|gefahrlich|schlimm|sauber"
        r"|dreckig|verschmutzt|hochwasser|sorgen?|farbe|warum|wieso|heisst|bedeutet"
    ),
    "water_colour.safe": r"sicher|gefahrlich|ungefahrlich|rein|trinken",
    "water_colour.clear": (
        r"klar\w*|durchsichtig\w*|seh\w* (?:man )?(?:die |den |bis (?:zum|auf den) )?(?:steine?"
        r"|grund|boden)|sieht (?:man )?(?:die |den |bis (?:zum|auf den) )?(?:steine?|grund|boden)"
    ),
    "water_colour.cloudy": (
        r"nicht (?:\w+ )?klar|trub\w*|undurchsichtig\w*|zweige?|aste|steigt|hoher"
        r"|nicht (?:\w+ )?(?:grund|boden|steine)|(?:keinen|kein) grund"
    ),
    "water_colour.else": (
        r"fotos?|weissabgleich|bearbeit\w*|raw|jpe?g|farbstich|display|polfilter|pol|nd|filter|histogramm"
        r"|braune\w? (?:fels\w*|stein\w*|blatt\w*|laub|moos|wand)|sattigung|belichtung|zeit"
        r"|einstellung\w*|kelvin"
    ),
}
