"""Whether a reply in free words says that all are safe, or that somebody is still out there."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.spelling import sentences

_GOOD: Final = r"(?:safe|fine|ok|okay|alright|unhurt|out|back|found|well|down|together)"
_SAFE: Final = re.compile(
    r"\b(?:all(?: of us)?|everyone|everybody|we|both(?: of us)?|the whole group|the two "
    r"of us|i|he"
    rf"|she|they)(?: (?:is|are|am|all|both|got|made it))* (?:\w+ )?{_GOOD}\b(?! of "
    r"(?:sight|reach))"
    r"|\ball (?:clear|good|safe|fine|accounted for)\b|\bsafe now\b|\bfound (?:him|her"
    r"|them)\b"
    r"|\bback at the (?:car|cars|trailhead|hut|hotel)\b|\bfalse alarm\b"
    r"|\b(?:rescue|rescuers|rangers?|ambulance|medics|paramedics) (?:\w+ ){0,2}"
    r"(?:here|arrived|have (?:him|her|them)|with us)\b"
    r"|\bnobody is (?:hurt|missing|in danger)\b"
)
#: Doubt, exception or a wish: anything of it keeps the emergency.
_UNSURE: Final = re.compile(
    r"\b(?:not|no|nope|never|cannot|except|still|yet|but|almost|nearly|soon|hope"
    r"|hopefully|if|when"
    r"|until|trying|waiting|missing|think|guess|maybe|probably|only|help)\b|\?"
    r"|\b(?:are (?:we|they|you)|is (?:he|she|it))\b"
)
_NOBODY_HURT: Final = re.compile(r"\bnobody is (?:hurt|missing|in danger)\b")
_YES: Final = re.compile(r"(?:yes|yeah|yep|yup|ja|ok|okay|sure)\b")
_NO: Final = re.compile(r"(?:no|nope|not|nah|negative|still)\b")
_SOMEBODY: Final = re.compile(
    r"(?:yes|yeah|yep|yup|me|i am|we are|one|two|three|somebody|someone|my|he is|she is|they are)\b"
)
_LEAD: Final = r"(?:(?:ok|okay|alright|fine|then|so|well|and|no worries)\b[ ,]*)*"
_SAFE_PLACE: Final = (
    r"(?:on the (?:path|trail|platform|deck|bridge|boardwalk)"
    r"|behind (?:it|the (?:rail|railing|fence|rope|barrier)))"
)
_NOBODY: Final = re.compile(
    r"(?:no(?! problem| worries| way| thanks)|nope|nobody(?! but| except| cares| else)|none|nah"
    r"|all back|we are back|i am back|not(?! yet| really| now| sure))\b"
    rf"|{_LEAD}(?:i|we)(?: am| are| will| shall)? (?:stay\w*|remain|keep\w*|stand\w*|sit\w*)"
    rf"(?: \w+)? (?:here|back|up here|down here|{_SAFE_PLACE})\b"
    rf"|{_LEAD}(?:i am|we are) {_SAFE_PLACE}\b"
)


def all_safe(text: str) -> bool | None:
    """What a reply to "are all safe?" says.

    Args:
        text: the message as typed.

    Returns:
        True only for a plain statement without doubt or exception, False for a "no", None where
        it is neither.
    """
    said = " , ".join(sentences(text))
    unsure = "?" in text or _UNSURE.search(_NOBODY_HURT.sub(" ", said))
    if not unsure and (_SAFE.search(said) or _YES.fullmatch(said)):
        return True
    return False if _NO.match(said) else None


def anyone_out_there(text: str) -> bool | None:
    """What a reply to "is anyone out there now?" says.

    Args:
        text: the message as typed.

    Returns:
        True when somebody is, False when nobody is, None where it says neither.
    """
    said = " , ".join(sentences(text))
    if _NOBODY.match(said):
        return False
    return True if _SOMEBODY.match(said) else None
