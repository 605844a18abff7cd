"""German words: a child that is cold."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "cold_child.child": (
        r"kind(?:er|ern)?|kids|sohn|tochter|klein(?:e|en|er)|bub\w*|madchen|jungs?|enkel\w*|baby"
        r"|schuler\w*|\d+ ?jahrige\w*"
    ),
    # What stands between: no hands, and nothing that denies.
    "cold_child.is": (
        r"ist|is|sind|san|wird|werden|hat|haben|schon|so|sehr|ganz|total|richtig|langsam|jetzt|auch"
        r"|beiden?|etwas|bissl|ein bisschen|furchtbar|und|nass|mude|sagt|ihm|ihr|ihnen|es|arg"
    ),
    "cold_child.cold": (
        r"kalt|friert|frieren|frierts|durchgefroren|zittert|zittern|bibbert|bibbern|schlottert"
    ),
    "cold_child.wet": (
        r"nass\w*|durchnasst|feucht|zitter\w*|bibber\w*|schlotter\w*|wie lang\w*|sorgen?|heim|gehen"
        r"|blaue lippen|lippen"
    ),
    "cold_child.not": (
        r"nicht (?:\w+ )?(?:kalt|frier\w*)|war kalt|waren kalt|wieder warm|nimmer kalt|kalt\w*"
        r" (?:farb\w*|licht|ton|tone|wasser)|wenn|falls|fror\w*|vor (?:aufregung|freude|lachen)"
    ),
}
