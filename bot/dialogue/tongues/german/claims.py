"""German words by which somebody has a difference of brightness checked."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Behind a claim, for a yes or a no.
    "claims.tag": r"oder(?: nicht)?|nicht(?: wahr)?|stimmt['’]?s|stimmt das|richtig|ne|gell|ja|or",
    # Before it, turned round.
    "claims.asks": (
        r"(?:ist|sind|war|waren|w(?:ä|ae)ren?|wird|werden|would be|is|are)"
        r"(?: das| es| die| dies| the| f ?/? ?\d| 1/\d| iso ?\d| \d)"
    ),
    # What would be: nobody has taken it.
    "claims.would": r"(?:das|the|es|dies) (?:w(?:ä|ae)ren?|would be|gäbe|ergäbe)",
    # What is wished for, not claimed.
    "claims.wishes": (
        r"kann|kannst|könnt\w*|soll\w*|muss|mach\w*|geh|wie|was|warum|wieso|wann|welche\w*|brauch\w*"
    ),
    # Words that may stand before a claim of the last settings, what points at them, and what may
    # stand behind a side alone.
    "claims.subject": """
        das the die ist sind war wäre wären waere waeren would be is are doch aber und and
        also so dann nicht not ja noch nur only etwa about fast ne dies es
    """,
    "claims.that": r"das|the|dies|die",
    "claims.behind": r"als (?:vorher|zuvor|eben|jetzt)|than (?:before|now)|dann|jetzt|now|then",
    # No difference.
    "claims.same": (
        r"gleich (?:hell|bright)|genauso (?:hell|bright)|(?:die)?selbe (?:helligkeit|belichtung)"
    ),
    "claims.than": r"als|gegen(?:über)?|wie|like",
}
