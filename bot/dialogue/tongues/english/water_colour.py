"""English words: what the colour of the water is asked by."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Brown as tea is, or of mud.
    "water_colour.brown": (
        r"teas?|tea ?colou?r\w*|cola|coke|whisk(?:e)?y|beer|amber|brown\w*|peaty|rusty"
    ),
    "water_colour.asked": (
        r"mud|muddy|peat\w*|tannins?|normal|natural|safe|dangerous|bad|clean|dirty|pollut\w*"
        r"|flood\w*"
        r"|worr(?:y|ied)|fine|(?:is|are) (?:it|that|this|they) (?:ok|okay|alright|all right)"
        r"|colou?r|why|should i|should we|mean"
    ),
    "water_colour.safe": r"safe|dangerous|go in|drink",
    "water_colour.clear": (
        r"clear|see ?through|transparent|see (?:right |all )?(?:(?:to|down to) )?(?:the |all the )?"
        r"(?:stones?|bottom|ground|rocks?|pebbles|bed)"
    ),
    "water_colour.cloudy": (
        r"not (?:\w+ )?clear|unclear|cloudy|murky|opaque|silty|twigs?|branches|debris"
        r"|rising|higher|(?:cant|cannot|can not|dont|not) see"
    ),
    # Where colours are of the picture, or of something else.
    "water_colour.else": (
        r"white balance|edit\w*|raw|jpe?g|cast|screen|tint|kelvin|polari[sz]er|pola|cpl|nd|filter"
        r"|brown (?:rocks?|stones?|lea(?:f|ves)|moss|cliffs?|walls?|bark|logs?|grass|ferns?)"
        r"|lightroom|leaves look|histogram|saturat\w*|exposure|shutter|settings?"
    ),
}
