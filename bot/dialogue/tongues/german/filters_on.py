"""German words for a filter that is before the lens now, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "filters_on.both": r"beiden?(?: filtern?)?|(?:die |den )?zwei(?: filtern?)?",
    "filters_on.polariser": r"pol(?:a|filter|arisationsfilter|arisator)?|cpl",
    "filters_on.nd": (
        r"nd(?: ?filter)?|graufilter|grauer filter"
        r"|(?:dunkle\w*|schwarze\w*|aufsteck|clip) ?(?:filter|ding|glas)"
    ),
    "filters_on.filter": r"filter",
    "filters_on.it": r"er|der|es|das|is|ist",
    "filters_on.anything": NOTHING,
    "filters_on.is_on": (
        r"(?:ist |is |sind |jetzt |jetz |schon |nun |wieder |beide )*(?:drauf|dran|davor|montiert"
        r"|drauf ?geschraubt|aufgeschraubt|angeschraubt|aufgesteckt|drangeclipst|vorne drauf)"
        r"(?: und gedreht)?"
    ),
    "filters_on.put": r"schraub\w*|steck\w*|mach\w*|setz\w*|tu\w*|clips\w*|hab\w*",
    "filters_on.fitted": r"montiert|aufgesetzt",
    "filters_on.on": (
        r"(?:jetzt |jetz |wieder )*(?:drauf|dran|davor|an|auf|drauf ?ge\w+|an ?ge\w+|auf ?ge\w+"
        r"|dran ?ge\w+)(?: jetzt)?"
    ),
    "filters_on.all_along": (
        r"seit\w*|schon|(?:die )?ganze zeit|von anfang|doppelt|laengst|langst"
    ),
    "filters_on.with": r"mit|und mit",
    "filters_on.small": (
        r"ich|i|hab|habe|jetzt|jetz|nun|ok|okay|so|also|ja|gut|schon|den|der|die|dem|das|meinen|mein"
        r"|meinem|einen|einem|diesmal|wieder|und|aber|mal|grad|gerade"
    ),
}
