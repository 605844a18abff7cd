"""Spanish words of replies to a question of danger, where any language may stand beside another."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "This is no joke", "nicht nur ein Test".
    "replies.no": r"ninguna|no (?:es|era|fue)",
    "replies.only_a": r"una|solo",
    "replies.joke": r"broma|chiste|prueba|falsa alarma",
    # What calms without telling anything.
    "replies.comfort": r"no te preocupes|no hay problema|sin problema",
    # Who speaks of all of them, wherever they are.
    "replies.everybody": r"todos|todas|ambos|ambas|juntos|juntas|los dos|las dos",
    # What stands before an answer without telling anything.
    "replies.lead": r"vale|bueno|pues|y",
    # What a "no" may deny in the same breath: "no, we're not", "no, it was only the light".
    "replies.with_no": r"solo|nadie",
    # What answers a question alone, or before a comma.
    "replies.bare": r"s[ií]|no",
    # Where nobody is.
    "replies.is": r"esta",
    "replies.out_there": r"abajo|dentro",
}
