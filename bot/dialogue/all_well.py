"""Replies that say that all is well, or that a thing is none of those asked for."""

from __future__ import annotations

import re
from typing import Final

#: "No, it's fine": which option says that all is well, where one does.
_WELL: Final = {
    "blink": "nothing",
    "blink_again": "nothing",
    "screen_says": "nothing",
    "border": "yes",
}
#: An "ok" alone only follows what was said, and "yes, it's fine" speaks for either. German and
#: Spanish words stand as the gloss leaves them.
_IS_WELL: Final = re.compile(
    r"(?:(?:no|nope|nah|nein|well|oh|but|i think|to me|all of|everything|all|that|this|it|they"
    r"|there|is|are|s|re|its|thats|looks?|seems?|quite|just|really|perfectly|totally|still|now|das"
    r"|es|sieht|alles|todo|se ve) )+"
    r"(?:fine|ok|okay|good|alright|all right|perfect|passt|gut|prima|in ordnung|bien|perfecto)"
    r"(?: (?:now|here|there|as it is|like that|like this|that way|to me|for me|by me|with me"
    r"|i think|thanks|thank you|so|schon|from|asi))*|passt (?:so|schon)|vale asi"
)
_LET_BE: Final = re.compile(
    r"(?:no |nope |nah |yes |just |it is |it s |its )*(?:leave (?:it|that)(?: in| there)?|let it be"
    r"|(?:i )?(?:don t|do not) mind(?: it| that)?|(?:it |that )?(?:doesn t|does not) "
    r"(?:bother me|disturb|matter)|(?:it )?belongs(?: there)?|part of (?:it|the picture|the place)"
    r"|lass (?:es|das|it)(?: so| drin)?|stört (?:mich )?not|gehört dazu|macht nothing"
    r"|dejalo(?: asi)?|(?:no )?(?:me )?(?:molesta|importa)|forma parte)"
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
