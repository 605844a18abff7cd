"""German words: who is out of shelter, at a place already, or left out of a "no"."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "whereabouts.outside": (
        r"wasser|bach|fluss|see|schlucht|draussen|zuruck|baum|wald|wiese|grat|gipfel|berg|weg|pfad"
        r"|geh\w*|lauf\w*|getroffen|eingeschlagen"
    ),
    "whereabouts.there": (
        r"ich stehe|steht|(?:wir|sie) stehen|ich bin|wir sind|ist schon|klettert|sitzt|gerade|jetzt"
    ),
    "whereabouts.somebody": (
        r"frau|mann|sohn|tochter|kind|kinder|kleine\w*|bruder|schwester|freund\w*|vater|mutter|papa"
        r"|opa|oma|gruppe|leute|ich(?= [.,]|$)|wir(?= [.,]|$)|wir (?:zwei|beide)"
    ),
    "whereabouts.only": r"nur|bloss|ausser|bis auf|nicht ich|aber",
    "whereabouts.the": r"mein\w*|unser\w*|der|die|das",
    "whereabouts.good_there": (
        r"steh\w* (?:gut|sicher|fest|stabil)|hier (?:oben|vorn\w*)|passt schon"
        r"|(?:ist|is)(?: \w+)? (?:trocken|breit|stabil)|vorsichtig"
        r"|(?:an|auf) der (?:\w+ )?(?:kante|klippe)|auf dem eis"
    ),
}
