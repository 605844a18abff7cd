"""Spanish words by which somebody has a difference of brightness checked."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Behind a claim, for a yes or a no.
    "claims.tag": r"¿?(?:no|verdad|cierto|correcto|o no|s[ií])",
    # Before it, turned round.
    "claims.asks": r"¿(?:eso |esto )?(?:no )?(?:es|son|ser[ií]an?|era|eran|queda|is|are)",
    # What would be: nobody has taken it.
    "claims.would": r"(?:eso |esto )?ser[ií]an?|(?:eso |esto )?quedar[ií]a",
    # What is wished for, not claimed.
    "claims.wishes": (
        r"puedo|puedes|pod(?:r[ií]a|emos)|debo|deber[ií]a|c[oó]mo|qu[eé]|cu[aá]l|cu[aá]ndo|haz|pon"
        r"|sube|baja|necesit\w+"
    ),
    # Words that may stand before a claim of the last settings, what points at them, and what may
    # stand behind a side alone.
    "claims.subject": """
        eso esto es son sería serían seria serian is are no y and entonces pero but ya solo
        only casi unos como queda quedaría así
    """,
    "claims.that": r"eso|esto|es|is",
    "claims.behind": r"que (?:antes|ahora)|ahora|entonces|eso|esto|now|then|before",
    # No difference.
    "claims.same": (
        r"igual (?:de|of) (?:clar[oa]|bright)|misma (?:luz|exposici[oó]n|claridad)|lo mismo que"
    ),
    "claims.than": r"que|como|like|comparado con|frente a|contra",
}
