"""German words that choose between going on and a new walk, and small words around a choice."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # A new walk, whatever stands open.
    "choices.new_walk": (
        r"neue[nr]? (?:tour|runde|wanderung|gang)|(?:fang\w*|beginn\w*|start\w*|noch ?(?:ein)?mal)"
        r" (?:\w+ ){0,3}?(?:ganz )?von (?:vorne?|anfang an)"
        r"|neustart|neu (?:anfangen|beginnen|starten)"
    ),
    # The same where it is offered.
    "choices.new": r"neue?|anfangen|beginnen|starten",
    "choices.go_on": (
        r"weiter(?: ?(?:mach\w*|geh\w*|führ\w*))?|fortsetz\w*|fortfahren"
        r"|(?:die|der) (?:alten?|letzten?|selben?|gleichen?)(?: tour)?|dabei bleiben"
    ),
    "choices.around": (
        "ich wir bitte ja jo jap ok okay gut also dann lieber eine einen einer die den das der mit"
        " machen mach machs möchte möcht möchten mag will wollen würde gern gerne doch einfach"
        " jetzt mal noch nochmal wieder ganz und uns lass danke nehmen nehme nehm fang fange"
        " fangen fangt an anfangen nr nummer es oder"
    ),
    # What takes back some of it, right behind.
    "choices.but": r"aber|ausser|außer|bis auf|nur|oder|allerdings|nicht",
}
