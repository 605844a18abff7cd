"""German words of sun that comes and goes, or lies on a part, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "sun.sun": r"sonne|sonnig\w*|sonnenlicht|sonn",
    # It comes and goes.
    "sun.by_turns": (
        r"kommt und geht|kommt immer wieder|mal (?:da|weg|sonne|mit)|immer mal wieder|ab und zu"
        r"|wechsel\w*|rein und raus|sonne und (?:wolken|schatten)|zwischendurch|hin und wieder"
    ),
    # It lies on a part, or in patches.
    "sun.on_part": (
        r"(?:auf|trifft|scheint auf|liegt auf)(?: nur)? (?:der |die |den |dem |das )?(?:ober\w*"
        r"|halb\w*|halfte|teil|linke\w*|rechte\w*|unter\w*)|halb in der sonne|sonnenflecken"
        r"|sonnenflecke|lichtflecken|lichtflecke|sonnenkleckse"
        r"|fleck\w* (?:von |aus )?(?:sonne|licht|sonnenlicht)"
    ),
    # It comes through, and there are patches of it.
    "sun.comes_through": (
        r"(?:kommt|bricht|kam) (?:\w+ ){0,4}?(?:durch|raus|heraus|rein|herein)|durchkommt"
    ),
    "sun.patches": r"(?:hell\w*|weiss\w*|grell\w*|sonnig\w*) (?:fleck|kleck)\w*",
    # It is on the glass; and what is left of the water lies in shade.
    "sun.on_glass": r"glas|\w*linse|objektiv|filter",
    "sun.rest_dark": r"rest(?: (?:ist|liegt|noch|ganz|im|in|vom|fall))* (?:schatten|dunkel)",
    # What to do meanwhile.
    "sun.what_now": (
        r"was(?: (?:soll\w*|kann|mach\w*|jetzt|nun|da|denn|ich|wir))*"
        r" (?:tun|tue?|machen?|jetzt|nun)"
    ),
    # The even light is back.
    "sun.gone": (
        r"sonne (?:is|ist) (?:\w+ )?(?:weg|fort|verschwunden|hinter)|keine sonne|gleichmassig"
        r"|zugezogen|wieder (?:im )?schatten"
    ),
}
