"""Spanish words of water that is wished soft, with its strands still to be seen."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "soft_strands.soft": r"suave|suavecit[oa]|sedos[oa]|seda|cremos[oa]|fluid[oa]|sedita",
    "soft_strands.but": r"pero|con|aunque|sin perder|todavia",
    "soft_strands.strands": r"hilos?|hilitos|hebras?|textura|lineas|estructura|vetas",
    # What is wrong with a frame, or denied.
    "soft_strands.wrong": (
        r"demasiad[oa]|muy|sin(?! perder)|no|falta\w*|perdid[oa]|ni|o|luz|foco|rocas?"
    ),
    # A frame is told of by these in front, and nothing is wished.
    "soft_strands.is": r"queda|quedo|salio|sale|esta|es|se ve",
}
