"""Sun that is not there: "no sun on it", "the sun isn't on it yet", "clear, but none on it"."""

from __future__ import annotations

import re
from typing import Final

_SUN: Final = (
    r"(?:sun(?!-)|suns|sunlight|sunshine|sunny|sunlit)\b"
    r"(?! ?(?:glasses|screen|cream|hat|hood|cap|set|rise|star|flare)s?\b)"
)
_NO: Final = (
    r"(?:no|not|without|never|isn't|isnt|aren't|ain't|aint|hasn't|nor|zero|nowhere|hardly any"
    r"|barely any|scarcely any)"
)
#: What may stand between: "not in the full sun", "no have sun" (glossed).
_BETWEEN: Final = (
    r"(?: (?:yet|still|in|any|an?|the|direct|full|bright|real|really|proper|single|ray|bit|of|have"
    r"|got|get|getting|hit|there|here|it's|its|is|at all|much|all))*"
)
#: It stays: "the sun won't go away", "isn't behind a cloud", "not too strong", "is never off it".
_STAYS: Final = (
    r"(?! (?:\w+ )?(?:g[oe](?:ing|es|ne)?|gone|left|leav\w*|mov\w*|away|off|behind|set(?:ting)?"
    r"|down|under|up(?! to)|ris\w*|hid\w*|cover\w*|block\w*|disappear\w*|too|so|that|very|low"
    r"|high|strong|harsh"
    r"|bad|weak|a problem|only|help\w*|bother\w*|matter\w*|care)\b)"
)
_HAS: Final = r"(?:'s| is| has| does| will| can| still| yet| just| light| itself)*"
_OUT: Final = (
    rf"\bsun(?:s|light|shine)?{_HAS} (?:not|isn't|isnt|hasn't|hasnt|doesn't|doesnt|does not|won't"
    rf"|can't|cannot|never|nowhere|no)\b{_STAYS}"
    rf"|\bsun(?:s|light|shine)?{_HAS} (?:yet to|a long way (?:off|from)|far from)\b"
)
#: "Clear sky above but none on the fall": said of the sun by what is named before.
_SKY: Final = rf"(?:\b{_SUN}|(?:clear|blue|klarer) sk(?:y|ies)|\bclear\b|cloudless)"
_NONE: Final = (
    rf"{_SKY}[^;?]*\b(?:none|nothing|no light|not(?: any)?(?= (?:yet )?(?:on|at|in)))"
    r"(?: (?:of (?:it|that)|yet|is|falls?|lands?|shines?|comes?|gets?|here|there|down))*"
    r" (?:(?:on|in|at|to|hits?|hitting|reach\w*|into|onto) (?:the |my |our )?"
    r"(?:it|water\w*|falls?|stream|cascade|rocks?|pool|frame|main|whole|gorge|drop)\b|here\b"
    r"|there\b"
    r"|down here\b)"
    rf"|{_SKY}[^;?]*\b(?:gets|getting|has|sees) (?:none|nothing|no light)\b"
)
#: "The water is not in the sun" is found by the first; what only asks or waits tells nothing.
_NOT_TOLD: Final = (
    r"\b(?:if|when|once|unless|until|till|wish|what if|as long as|hope(?:fully)?|nobody (?:said"
    r"|told)"
    r"|(?:never|not) (?:said|asked)|was|were|had|earlier|at first|this morning|before|yesterday)\b"
    r"[^,.;!?]*$"
)
_SAID: Final = re.compile(rf"\b{_NO}{_BETWEEN} {_SUN}{_STAYS}|{_OUT}|{_NONE}")
_UNTOLD: Final = re.compile(_NOT_TOLD)
_ASKED: Final = re.compile(r"[^.;!]*\?")


def without_sun(text: str) -> bool:
    """Whether a message says that there is no sun on the water now.

    Args:
        text: as `normalise` leaves it, in English.
    """
    told = _ASKED.sub("", text)
    return any(_UNTOLD.search(told[: one.start()]) is None for one in _SAID.finditer(told))


def unsunned(text: str) -> str:
    """The message without the words of the sun that is not there."""
    return _SAID.sub(lambda one: " " * len(one.group()), text)
