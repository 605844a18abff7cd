"""Whether a message says in its own words that all are safe, or that they are not yet."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.spelling import sentences

_WHO: Final = (
    r"(?:all(?: of us)?|everyone|everybody|we|both(?: of us)?|the whole group|the two of us)"
)
_SAFE: Final = re.compile(
    rf"\b{_WHO}(?: (?:is|are|all|both|got|made it))* (?:\w+ )?"
    r"(?:safe|fine|ok|okay|alright|unhurt|out|back|good|accounted for|together|found|well|home"
    r"|down)\b|\ball (?:clear|good|safe|fine)\b|\bnobody is (?:hurt|missing|in danger)\b"
    r"|\b(?:i|he|she|they) (?:is|are|am|got|made it)(?: \w+)?"
    r" (?:safe|fine|ok|okay|alright|out|unhurt|back|found)\b(?! of (?:sight|reach))|\bsafe now\b|\bfound (?:him|her|them)\b"
    r"|\bback at the (?:car|cars|trailhead|hut|hotel)\b|\bfalse alarm\b"
    r"|\b(?:rescue|rescuers|rangers?|ambulance|medics|paramedics) (?:\w+ ){0,2}"
    r"(?:here|arrived|have (?:him|her|them)|with us)\b"
)
_UNSAFE: Final = re.compile(
    r"\b(?:not|no|nope|never|cannot|except|still|yet|but|almost|nearly|soon|hope|hopefully|if|when"
    r"|until|trying|waiting|missing|think|guess|maybe|probably|only)\b|\bare (?:we|they|you)\b|\bis (?:he|she|it)\b"
)
_DOUBT: Final = re.compile(r"\?")


def says_all_safe(text: str) -> bool:
    """Whether a message says that everybody is safe, without doubt or exception.

    Args:
        text: the message as typed.

    Returns:
        True only for a plain statement; anything half said keeps the emergency.
    """
    said = " . ".join(sentences(text))
    if _DOUBT.search(text) or _UNSAFE.search(said):
        return re.search(r"\bnobody is (?:hurt|missing|in danger)\b", said) is not None and not (
            _UNSAFE.search(re.sub(r"\bnobody is (?:hurt|missing|in danger)\b", " ", said))
            or _DOUBT.search(text)
        )
    return _SAFE.search(said) is not None
