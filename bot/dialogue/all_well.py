"""Replies that say that all is well, or that a thing is none of those asked for."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.tongues import in_any

#: "No, it's fine": which option says that all is well, where one does.
_WELL: Final = {
    "blink": "nothing",
    "blink_again": "nothing",
    "screen_says": "nothing",
    "border": "yes",
}
#: An "ok" alone only follows what was said, and "yes, it's fine" speaks for either.
_IS_WELL: Final = re.compile(
    rf"(?:{in_any('all_well.lead')} )+{in_any('all_well.fine')}(?: {in_any('all_well.behind')})*"
    rf"|{in_any('all_well.well')}"
)
_LET_BE: Final = re.compile(
    rf"(?:no |nope |nah |yes |just |it is |it s |its )*{in_any('all_well.let_be')}"
)
#: What is white and neither water nor sky: an option that is not printed, since it is rare.
_NEITHER: Final = re.compile(
    r"neither\b.*|none of (?:them|both|these|the two)|"
    r"(?:(?:no|nope|nein|it s|its|it is|that s|thats|that is|this is|a is|is|es|das|only|just"
    r"|actually|a|an|the|some|wet|dry|white|pale|bright|sunlit|sunny) )*"
    r"(?:rocks?|stones?|boulders?|cliff|quartz|snow|ice|sand|gravel|church|house|building|wall|roof"
    r"|window|sign|paper|car|shirt|jacket|face|skin|person|people|leaf|leaves|branch|birch|trunk"
    r"|wood|log|flowers?|bird|lamp|sun|reflection)"
    r"(?: (?:not|no|and not|and no) (?:water|sky)(?: (?:or|nor|and) (?:water|sky))?)?"
)


def all_well(question: str, said: str) -> str | None:
    """The option of "no, it's fine", of "leave it" at a border, of "a rock" for lost white.

    Args:
        question: name of the open question.
        said: words alone, in lower case.
    """
    if question == "area":
        return "neither" if _NEITHER.fullmatch(said) else None
    left = question == "border" and _LET_BE.fullmatch(said)
    return _WELL.get(question) if left or _IS_WELL.fullmatch(said) else None
