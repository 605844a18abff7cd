"""German words of white that may be lost in a frame: what is asked of it, how wide it is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "white_asked.white": (
        r"weiß\w*|weiss\w*|fleck\w*|ausgefressen\w*|ausgebrannt\w*|lichter|überbelichtet\w*"
    ),
    # What is asked of it: may it be kept, does it come back.
    "white_asked.fate": (
        r"(?:kann|könnte) (?:ich|man|raw|das|es)\b[^.;!?]{0,40}?\b(?:nehmen|retten"
        r"|benutzen|verwenden|behalten|zurückholen|gebrauchen)|(?:oder|,) (?:ist es |ist das )?"
        r"(?:hin|verloren|tonne|löschen|weg|müll|futsch)|noch (?:brauchbar|zu retten|verwendbar)"
        r"|(?:brauchbar|verloren|hin|futsch|rettbar|weg)(?= ?\?)"
        r"|soll (?:ich|man) (?:\S+ ){0,4}?(?:behalten|löschen|wegwerfen|nehmen)"
    ),
    # Asked only with its mark: "is it gone?".
    "white_asked.fate_marked": (
        r"(?:ist|sind)\b[^.;!?]{0,40}?\b(?:weg|verloren|hin|futsch|brauchbar|zu retten|noch gut"
        r"|rettbar)"
    ),
    # Sparkle, which does no harm.
    "white_asked.dots": (
        r"(?:einzelne|verstreute|winzige|ein paar|kleine) (?:punkte|pixel|glanzpunkte|funken)"
        r"|nur punkte|glitzern|pünktchen"
    ),
    "white_asked.all_channels": (
        r"(?:alle[nr]?|jedem|jeder)(?: drei| 3)? (?:kanäle\w*|kanal|kurven?|histogramme?n?|farben)"
    ),
    "white_asked.one_channel": (
        r"(?:nur|bloß|ein(?:em|er)?)(?: \w+)? (?:kanal|kurve|histogramm|farbe)"
        r"|nur (?:im |in )?(?:rot|grün|blau)"
    ),
    # Things that a patch on a screen is as wide as.
    "white_asked.pinhead": r"stecknadelkopf\w*|streichholzkopf\w*|reiskorn",
    "white_asked.pea": r"erbsen?|linsengroß|bleistift",
    "white_asked.fingernail": r"fingernagel\w*|daumennagel\w*|knopf",
    "white_asked.finger": r"finger(?!nagel)\w*",
    "white_asked.thumb": r"daumen(?!nagel)\w*|münzen?|briefmarken?",
    "white_asked.fist": r"faust\w*|hand\w*",
    "white_asked.screen": r"bildschirm|monitor|schirm|laptop|display",
    "white_asked.rear_screen": r"kameradisplay|kameramonitor|rückseite der kamera",
    "white_asked.inch": r"zoll",
}
