"""German words: brown or murky water in a few plain words."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_BACH: Final = (
    r"(?:das |der |die |unser |dieser )?(?:wasser|bach|bachl|bacherl|fluss|wildbach|gumpe"
    r"|becken|ache)(?: (?:da|hier|unten|oben|vor mir|vor uns))?"
)
_IST: Final = (
    r"(?: (?:ist|is|isch|wird|wurde|kommt|kimmt|rinnt|lauft|schaut|sieht|fliesst|wirkt|farbt sich"
    r"|hat sich|aber|jetzt|nun|heute?|auf einmal|plotzlich|schon|ganz|recht|sehr|so|ziemlich|total"
    r"|voll|immer|a bissl|ein bisschen|etwas|leicht|eher|irgendwie|wieder|mehr))+"
)
_TRUB: Final = r"(?:braun\w*|trub\w*|schlammig\w*|lehmig\w*|dreckig\w*|schmutzig\w*|erdig\w*)"
_BEHIND: Final = (
    r"(?: (?:aus|daher|runter|herunter|geworden|g?worden|gefarbt|jetzt|heute?|und wild|und laut"
    r"|(?:vom|nach dem|seit dem|wegen dem|durch den) (?:\w+ )?(?:regen|gewitter|unwetter)"
    r"|(?:seit|von) (?:gestern|heute|vorhin|heut fruh)|von der nacht))*"
)

WORDS: Final[Mapping[str, str]] = {
    "murky.told": rf"(?:(?:und|jetzt|aber|oh|hm+|da|schau|du|ui) )*{_BACH}{_IST} {_TRUB}{_BEHIND}",
}
