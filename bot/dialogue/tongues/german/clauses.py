"""German words: parts of a reply to whether all are safe."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # How a question begins behind words without signs.
    "clauses.asking": (
        r"(?:kann|darf|soll|muss|können|dürfen|sollen) (?:ich|man|er|sie|wir|es)|(?:was"
        r"|wie|wieso|warum) (?:mach|mache|stell|soll|ist|is|kann|muss|viel|lang|lange)"
        r"|welche[rsn]? (?:zeit|blende|werte|brennweite)"
    ),
    "clauses.opener": "wie was welche wieso warum wo wann und",
    "clauses.option": r"option|nummer|antwort|nr",
    "clauses.counted": (
        r"von|mehr|leute|personen|kinder|schuler|andere|meter|m|s|stunden?|minuten?|km|uhr|jahre"
    ),
    # Who is left out of good news, and how it is said without being sure.
    "clauses.exception": (
        r"ausser|bis auf|nur nicht|alle bis|nur \w+ (?:ist|springt|klettert|steht|sitzt) "
        r"|nicht alle|die meisten|eine?r? fehlt|fehlt (?:noch|uns)"
    ),
    "clauses.hedge": (
        r"weiss nicht|keine ahnung|hoffentlich|glaub(?:e)? ich|wahrscheinlich|wenn|falls"
    ),
    # What a part that answers by its sense has in it: of who is safe, and of where nobody is.
    "clauses.safe": (
        r"(?:alle?|wir|ich|bin|sind|er|sie|ist|is|beide|jetzt|wieder"
        r"|und) (?:\w+ )?(?:sicher|sicherheit|gut|ok|okay|wohlauf|warm|trocken|daheim"
        r"|zuhaus\w*|oben)|in sicherheit|alles (?:gut|ok|bestens)|am auto|im auto"
    ),
    "clauses.out_there": (
        r"niemand|keiner|neben mir|bei mir|hinterm|hinter dem|am ufer|unten|kuche|daheim"
        r"|zuhause|auf dem weg|aufm weg|bleib\w*"
    ),
    # Of a picture that is looked at.
    "clauses.picture": (
        r"unscharf\w*|verwackelt|scharfentiefe|gefallt mir|laptop|bildschirm|matschig"
    ),
}
