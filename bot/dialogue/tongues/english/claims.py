"""English words by which somebody has a difference of brightness checked."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Behind a claim, for a yes or a no.
    "claims.tag": (
        r"(?:isn|wasn|doesn|wouldn|aren|won)['’]?t (?:it|that|they)|right|correct|no|yes|yeah|yep"
        r"|am i right|is (?:it|that)(?: right| correct)?|true|eh|huh|innit|or (?:not|what)"
    ),
    # Before it, turned round.
    "claims.asks": (
        r"(?:isn['’]?t|is|are|aren['’]?t|was|wasn['’]?t|would|wouldn['’]?t|will|won['’]?t|does"
        r"|doesn['’]?t)(?: not)? (?:that|this|it|those|these|f ?/? ?\d|1/\d|iso ?\d|\d)"
    ),
    # What would be: nobody has taken it.
    "claims.would": (
        r"(?:that|this|it|which)(?:['’]?d| would|['’]?ll| will) (?:be|make|give)"
        r"|that makes (?:it|that)|makes that"
    ),
    # What is wished for, not claimed.
    "claims.wishes": (
        r"can|could|should|shall|may|must|how|what|why|when|where|which|make it|go|need|let"
        r"|do (?:i|we|you)"
    ),
    # Words that may stand before a claim of the last settings, what points at them, and what may
    # stand behind a side alone.
    "claims.subject": """
        so but and that s d ll t isn wasn wouldn aren this it its which is are was be would
        will not no then now only just about still another the those these ok hm hmm wait
        well makes make gives roughly like almost nearly
    """,
    "claims.that": r"that|this|those|these",
    "claims.behind": (
        r"than (?:before|that|now|the last(?: one)?|yours)|then|now|though|instead|again"
    ),
    # No difference.
    "claims.same": (
        r"(?:the )?same (?:brightness|exposure)|(?:the )?same as|as bright(?: as)?|equally bright"
        r"|equivalent"
    ),
    "claims.than": r"than|compared (?:to|with)|against|as bright as|same as|equal to",
}
