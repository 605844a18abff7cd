"""German words of what is seen in single frames, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "told_sights.but": r"aber|sondern|während",
    "told_sights.and": r"und",
    "told_sights.soft": r"weich\w*|unscharf\w*|nicht (?:\w+ )?sharp",
    # What makes soft things the drops on a glass.
    "told_sights.discs": r"scheiben|flecken",
    "told_sights.drops": r"tropfen",
    # Drops of the fall itself, that a short time holds.
    "told_sights.in_air": r"in der luft|schweb\w*|stehen|einzeln\w*",
    "told_sights.leaves": r"blätter|laub|farne?",
    "told_sights.moved": r"verwischt|bewegt|verwackelt",
    # "A white triangle at the top".
    "told_sights.white": r"weiss\w*|hell\w*",
    "told_sights.gap": r"dreieck\w*|ecke|streifen|loch",
    "told_sights.gap_of_sky": r"dreieck\w* of (?:sky|light|white)|himmelsloch",
    # "Nothing blinked".
    "told_sights.nothing": r"nichts",
    "told_sights.blinks": r"geblinkt|geflackert",
    "told_sights.holds": NOTHING,
    # "The threads are there".
    "told_sights.threads": r"fäden",
    "told_sights.seen": r"da|schön|sichtbar",
    "told_sights.good": r"schön|toll|perfekt|klasse",
    "told_sights.best": r"liebst\w*|lieblings\w*|besten?|schönste[nrs]?|liebe ich|ich liebe",
    # "I like … most".
    "told_sights.like": r"mag",
    "told_sights.most": r"liebsten",
    # "Lovely evening", "good light": praise, but of no frame.
    "told_sights.of_else": r"abend|tag|licht|wetter",
    "told_sights.no": r"nicht|kein\w*",
    "told_sights.metered": r"auf dem messer|belichtungsmesser",
    "told_sights.all": r"alle[nrsm]?|jede[nrsm]?|beide[nrsm]?|überall",
    "told_sights.hard": r"eingefroren|gefroren|\w+hart|zu hart|hart wie \w+",
    "told_sights.clipped": r"ausgefressen|ausgebrannt|geblinkt",
    "told_sights.sparks": r"funken|punkte?",
    # A part with none of these only names frames, for the next part to speak of.
    "told_sights.says": r"ist|sind|war|waren|hat|haben|wirk\w*|zeig\w*",
    # White of the water that has no shape.
    "told_sights.white_blobs": (
        r"(?:weiß|weiss)\w* (?:flecken?|kleckse?|stellen?|blobs|patches|areas)|white (?:patches"
        r"|blobs|areas)"
    ),
}
