"""The zoom that is on from now: "switching to 70-200", "back on the 10-20"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading.phrases import plain
from bot.dialogue.tongues import in_any, whole_words

#: "Switching to 70-200", "back on 10-20", "i'm on the 70-200 now": on from here.
_PUT_ON: Final = re.compile(
    rf"\b{in_any('lens_named.put_on')} (?:(?:the|my|{in_any('lens_named.the')}) )?"
    r"(?P<zoom>\d{1,3}-\d{2,3})(?![\w./-]*\d)"
    r"|(?<![\w./,-])(?P<on>\d{1,3}-\d{2,3})(?: ?mm)? (?:is |now )?(?:on|now|mounted)"
    r"(?=$|[,.;!]| now)"
)
#: A clause with one of these puts nothing on, and chooses nothing: it is denied, or only tried.
NOT: Final = whole_words("lens_named.not")
CLAUSES: Final = re.compile(r"[.;!]\s+|,\s+|\b(?:but|and)\b")


def put_on(text: str) -> str | None:
    """The zoom that a message says to be on from now, by its ends: `70-200`; None for none.

    Args:
        text: the message in English.
    """
    for clause in CLAUSES.split(plain(text)):
        found = _PUT_ON.search(clause)
        if found is not None and not NOT.search(clause) and not asks(Said(clause, clause)):
            return found[found.lastgroup or 0]
    return None
