"""German words by which somebody asks of the bot's own numbers."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Asks where a number comes from, or doubts it.
    "own_asked.whence": (
        r"warum(?! nicht)|wieso(?! nicht)|weshalb|wie kommst du|wie kommt|woher|wovon|worauf"
        r"|kann nicht (?:sein|stimmen)|stimmt (?:nicht|das)|passt nicht|ich (?:komme|rechne|krieg)"
        r"|bist du sicher|sicher|erklär\w*"
    ),
    # Right in front of a number: "warum 20?", "wieso hast du f/13 gesagt".
    "own_asked.why": r"warum|wieso|weshalb|woher|wie kommst du auf|wie kommt man auf",
    "own_asked.between": (
        r"die|das|der|den|dein\w*|jetzt|nur|denn|hast|nimmst|sagst|gibst|du|gerade|ausgerechnet"
        r"|auf|mit|bei|kommt|kommen|sind|ist|es"
    ),
    # Between a value and the one that was not chosen.
    "own_asked.not": r"nicht|not|statt|instead of",
    # Asks for what was taken.
    "own_asked.what": (
        r"was|woher|welche\w*|wie (?:hoch|weit|schnell|nah|breit)|womit|woraus|worauf|wovon|wo"
    ),
    # What is asked about that the bot reckons from.
    "own_asked.height": r"wie hoch|höhe|hoehe|fallhöhe",
    "own_asked.distance": r"wie weit|entfernung|abstand|distanz",
    "own_asked.focal": r"brennweite|objektiv|linse",
    "own_asked.speed": r"tempo|geschwindigkeit|wie schnell",
    "own_asked.light": r"licht|helligkeit|lw",
    "own_asked.nearest": r"nächste\w*|vordergrund|stein",
    "own_asked.format": r"format|sensor|kamera",
    "own_asked.all": r"zahlen|werte|annahmen?|grundlage|womit",
    # Points at a number that was said.
    "own_asked.pointed": (
        r"dein\w*|diese\w*|deine|du (?:sagtest|hast gesagt|meintest)|you (?:have|said)"
    ),
    # Of the bot's reckoning, whatever of it: "was hast du angenommen", "womit rechnest du".
    "own_asked.reckons": (
        r"(?:hast|hattest) du[^?.]*?(?:angenommen|genommen|gerechnet|angesetzt|benutzt|verwendet"
        r"|unterstellt|zugrunde gelegt|stehen|drin)"
        r"|rechnest du|nimmst du (?:\w+ )*?an|gehst du (?:\w+ )*?aus|setzt du (?:\w+ )*?an"
        r"|(?:hast|hältst) du (?:den|diesen|die)(?= (?:wasser)?fall)|legst du zugrunde|beruht"
        r"|(?:haben|hatten) sie[^?.]*?(?:angenommen|genommen|gerechnet|angesetzt|benutzt|verwendet)"
        r"|rechnen sie|nehmen sie (?:\w+ )*?an|gehen sie (?:\w+ )*?aus|setzen sie (?:\w+ )*?an"
        r"|legen sie (?:\w+ )*?zugrunde"
        r"|(?:zahlen|werte) (?:her|kommen|stammen)|kommen (?:die|diese|deine) (?:zahlen|werte)"
    ),
}
