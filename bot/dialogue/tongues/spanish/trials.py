"""Spanish words by which somebody only tries a change."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # How a message begins that only tries something.
    "trials.begins": (
        r"(?:(?:y|pero|ok|entonces|bueno)\W+)*(?:qu[eé] (?:pasa|pasar[ií]a|tal|ocurre)"
        r"(?: si| con| a)?|y si(?!,)|si (?:uso|pongo|abro|cierro|subo|bajo|voy|me)|c[oó]mo "
        r"(?:quedar[ií]a|ser[ií]a|saldr[ií]a|queda)|supongamos|suponiendo|imagina|recalcula"
        r"|calcula\w* (?:otra vez|de nuevo|eso)|sup[oó]n\w*|digamos)"
    ),
    # By which somebody asks whether a value would do, and by which they ask for something else.
    "trials.may": (
        r"basta|vale|sirve|puedo|podr[ií]a|queda\w*|me (?:vale|llega|sirve|apaño)|en su lugar"
    ),
    "trials.asks_for": (
        r"por ?qu[eé]|cu[aá]l(?:es)?|cu[aá]nt\w+|d[oó]nde|cu[aá]ndo|(?:puede|can) ser"
        r"|ser[aá] (?:por|el|la)"
    ),
    # Whoever asks of a place to go to.
    "trials.goes": (
        r"trep\w*|escal\w*|segur[oa]\w*|sub(?:ir|o)|baj(?:ar|o)|cruz\w*"
        r"|salt\w*|met(?:er|o)\w*|camin\w*|vade\w*|acerc\w*|detr[aá]s|asom\w*"
    ),
    "trials.what_time": (
        r"qu[eé] (?:tiempo|velocidad|exposici[oó]n)(?: (?:sale|da|necesito|queda|ser[ií]a))?"
    ),
    # How one goes on that builds on what was tried just before.
    "trials.goes_on": r"(?:y|o|m[aá]s)\W+(?:adem[aá]s )?(?:a|con|sin|desde|en|de|si)",
    # Steps away from the water, and towards it.
    "trials.unit": r"m|metros?|pies",
    "trials.back": r"(?:m[aá]s )?(?:atr[aá]s|lejos)",
    "trials.closer": r"(?:m[aá]s )?(?:cerca|adelante)",
    # Without the filter that was tried, or is on.
    "trials.without": r"sin (?:[eé]l|ese|eso|ellos|(?:el |ning[uú]n )?filtros?)",
}
