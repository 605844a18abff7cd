"""German words: leave that was only asked, and what is let be."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "given_up.left": (
        r"(?:(?:dann )?bleib(?:e|en)? (?:ich|wir)(?: (?:halt|eben|lieber|dann|jetzt|mal|da))*"
        r"(?: (?:draußen|draussen|hier|unten|weg|am ufer|auf dem weg|aufm weg|an land|stehen"
        r"|wo (?:ich bin|wir sind)|hinter dem geländer))?"
        r"|(?:ich|wir) (?:bleibe?n?|lass(?:e|en)?)(?: (?:halt|eben|lieber|dann|das|es|hier|unten"
        r"|draußen|draussen|weg|am ufer|auf dem weg|aufm weg|an land|stehen|bleiben))+"
        r"|lass(?:en)? (?:ich|wir)(?:'?s)?(?: (?:halt|eben|lieber|dann|das|es|bleiben|sein))*"
        r"|dann (?:halt |eben |lieber )?nicht|lieber nicht|besser nicht|vergiss es"
        r"|(?:ich )?(?:geh|gehe|mach|mache|kletter|kletter[e]?) (?:ich )?(?:da |es )?(?:nicht|nich)"
        r"(?: (?:rein|hoch|rüber|hin|raus))?"
        r"|(?:war |das war )?(?:nur|bloß) (?:ne |eine )?frage|(?:hab )?(?:nur|bloß) gefragt"
        r"|(?:dann |also )?kein (?:plan?t?schen|baden|waten|klettern)(?: dann| heute)*"
        r"|zu (?:gefährlich|riskant))"
    ),
    "given_up.small": (
        r"(?:ok(?:ay)?|nein|nee|nö|ne|na|gut|alles klar|schon gut|klar|also|dann|und|aber|danke"
        r"|sorry|stimmt|verstehe|verstanden)"
    ),
    # Who only wishes to go there.
    "given_up.wishes": (
        r"w[üu]rde?s?t? (?:ich |er |sie |wir )?(?:so |echt |total |ja )?gern\w*|m[öo]cht\w*"
        r"|hätte lust|trau\w* mich"
        r"|überleg\w*"
    ),
}
