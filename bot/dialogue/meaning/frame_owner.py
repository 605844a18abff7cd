"""Whose a frame is, by the words with it: somebody else's, or out of a book or the web."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.people import KIN
from bot.dialogue.reading.phrases import any_of, plain

_FRAME: Final = (
    r"(?:frame|shot|picture|photo|photograph|pic|image|one|version|attempt|try|exposure)s?"
)
_FREUND: Final = (
    r"(?:freund\w*|kolleg\w*|frau|mann|bruder|schwester|kumpel|sohn|tochter|vater|mutter|lehrer\w*"
    r"|schüler\w*|teilnehmer\w*|begleit\w*|nachbar\w*|jemand\w*(?: ander\w+)?|and(?:e)?re[mnrs]?)"
)
_AMIGO: Final = (
    r"(?:amig[oa]|compañer[oa]|mujer|marido|herman[oa]|hij[oa]|padre|madre|profesora?|alumn[oa]"
    r"|guía|otr[oa](?: persona)?|alguien)"
)
_BILD: Final = r"(?:bild|foto|aufnahme|versuch)\w*"
_THEIRS: Final = any_of(
    rf"(?:from|by|of) (?:my |a |the |our |one of (?:my|the) )?(?:\w+ )?(?:{KIN})s?(?:'s)?"
    r"(?! and me)",
    rf"(?:{KIN})(?:'s|s'|s)? (?:\w+ )?{_FRAME}|(?:{KIN}) (?:took|shot|made) (?:it|this|that|one)",
    rf"(?:someone|somebody|anyone) else(?:'s)?(?: {_FRAME})?|(?:his|her|their|hers|theirs) {_FRAME}"
    r"|(?:he|she|they) (?:took|shot|made) (?:it|this|that|one)",
    rf"(?!(?:it|that|here|today|yesterday|let|this|what|there|where|who|how|he|she|morning"
    rf"|evening|minute|year|week)'s)[a-z]{{2,}}'s {_FRAME}",
    rf"(?:not|isn'?t|wasn'?t|none of) (?:mine|my (?:own )?{_FRAME}|from me|taken by me)",
    r"(?:from|off|on|in) (?:the |a |some )?(?:internet|web|net|guide ?book|book|magazine|forum"
    r"|postcard|calendar|brochure)",
    rf"von (?:mein\w+|dein\w+|ein\w+|der|dem|unser\w+)? ?{_FREUND}|(?:sein|ihr)e? {_BILD}",
    rf"(?:nicht|ist nicht|war nicht) (?:von mir|mein(?:e[snr]?|s)?(?: {_BILD})?)(?!\w)"
    rf"|kein\w* {_BILD} von mir",
    r"aus (?:dem|einem|der) (?:netz|internet|buch|reiseführer|kalender|zeitschrift)",
    rf"(?:de|por) (?:mi|un|una|otro|otra|el|la)? ?{_AMIGO}|no (?:es|era) (?:mí[oa]|mi[oa]|mi foto)"
    r"|(?:de|del) (?:internet|libro|la web|una guía)",
)
_OF_A_FRAME: Final = any_of(
    rf"{_FRAME}|mine|took|{_BILD}|von mir|foto|imagen|mí[oa]|internet|web|book|netz|buch|libro"
)
#: Kit that is lent is used all the same.
_LENT: Final = re.compile(
    r"\b(?:borrow\w*|lent|geliehen\w*|prestad\w*|lens|camera|tripod|filter|phone|nd|polari\w*|objektiv"
    r"|kamera|stativ|cámara|trípode|objetivo) (?:\w+ )?(?:from|of|by|von|de)\b[^,.;]*"
)
_OF_THE_LAST: Final = re.compile(
    r"\W*(?:sorry|oh|oops|no|wait|btw|by the way|um|ah)?\W*(?:that|this|it|the last|not mine"
    r"|wasn'?t|das|dies\w*|es war|nicht|esa|eso|esta|ese|no es|no era)\b"
)


def is_theirs(text: str) -> bool:
    """Whether words with a frame say that somebody else took it.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _THEIRS.search(_LENT.sub("", plain(text))) is not None


def tells_whose(text: str) -> bool:
    """Whether a message of its own says of a frame that it is somebody else's."""
    said = plain(text)
    if "?" in said or re.search(r"\d", said):
        return False
    return is_theirs(said) and _OF_A_FRAME.search(said) is not None


def is_of_the_last(text: str) -> bool:
    """Whether such a message speaks of the frame before it, not of one to come."""
    return _OF_THE_LAST.match(plain(text)) is not None and "here" not in text.casefold()
