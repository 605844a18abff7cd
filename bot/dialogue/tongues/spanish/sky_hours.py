"""Spanish words of a forecast by its hours: what sky, from when, until when; rain and cold."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Sun that comes and goes; these stand in front of the plain words.
    "sky_hours.partly": (
        r"(?:parcial\w*|medio|algo|poco) (?:nublado|nuboso|cubierto|soleado)"
        r"|sol (?:y|con) (?:\w+ )?nubes|nubes y claros|claros y nubes|intervalos nubosos"
        r"|nubes y sol|ratos de sol"
    ),
    "sky_hours.sun": r"soleado|(?:pleno |mucho )?sol|despejado|cielo azul|cielo claro",
    "sky_hours.overcast": (
        r"(?:todo |totalmente |completamente |muy )?(?:cubierto|gris|encapotado)"
        r"|(?:muy|totalmente|completamente) (?:nublado|nuboso)|nubes (?:densas|bajas)|se cierra"
    ),
    "sky_hours.cloud": r"(?:nubes altas|nubes|nublado|nuboso)|se nubla",
    "sky_hours.rain": (
        r"(?:(?:algo de|un poco de) )?(?:lluvias?|llueve|lloverá|llovizna\w*|chubascos?|lluvioso)"
        r"(?: (?:ligeras?|débil(?:es)?|fuertes?))?"
    ),
    "sky_hours.storm": r"(?:posibles? )?(?:tormentas?|truenos?|rayos|relámpagos?)",
    "sky_hours.and": r"y|con|pero",
    "sky_hours.then": r"luego|después|pero|más tarde",
    # Denied right before it.
    "sky_hours.no": r"no|sin|nada de|ni|nunca",
    "sky_hours.until": r"hasta|antes de",
    "sky_hours.since": r"(?:a partir de|desde|después de|tras|hacia|sobre|de)(?= )|a(?= las?\b)",
    # Hours by their names.
    "sky_hours.noon": r"(?:el |al )?mediod[ií]a",
    "sky_hours.morning": r"(?:por|en|toda) la mañana|temprano|al principio|primero",
    "sky_hours.afternoon": r"(?:por|en|toda) la tarde",
    "sky_hours.evening": r"(?:al|por el) (?:anochecer|atardecer)|última hora",
    "sky_hours.oclock": r"horas",
    # What a start, a sunset or a bus has is no hour of the sky.
    "sky_hours.other": (
        r"sal(?:go|ir|imos|ida)|empez\w+|empiezo|arranc\w+|puesta|se pone|pone|ocaso|oculta"
        r"|anochece|volver|vuelta|autobús"
        r"|puerta|lleg\w+"
    ),
    # Cold that is forecast, or packed for.
    "sky_hours.cold": r"frío|fría|fresco|helada\w*|heladas?|bajo cero|gélido",
}
