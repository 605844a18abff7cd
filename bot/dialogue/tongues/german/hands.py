"""German words of who can hardly type: gloves, cold or wet fingers, one free hand."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_KLAMM: Final = r"(?:kalt\w*|nass\w*|klamm\w*|steif\w*|gefroren\w*|eisig\w*|taub\w*|schmutzig\w*)"

WORDS: Final[Mapping[str, str]] = {
    "hands.told": (
        rf"{_KLAMM} (?:hände|haende|hande|finger)"
        rf"|(?:hände|haende|hande|finger) (?:sind |ganz |so |zu )*{_KLAMM}"
        r"|(?:mit|habe?|trage?|nasse|dicke|meine?) (?:\w+ )?handschuhe?n?(?: an)?|handschuhe? an"
        r"|^(?:\w+ )?handschuhe$|(?:kann|können) (?:kaum|nicht|schlecht"
        r"|gerade nicht)(?: \w+)? (?:tippen|schreiben)|(?:kaum|schlecht) tippen|nur eine hand frei"
        r"|(?:fass|fasse) dich kurz|kurze antworten bitte"
    ),
    # Who asks for gloves.
    "hands.advice": r"soll|brauche?|mitnehmen",
}
