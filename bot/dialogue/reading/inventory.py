"""Whether a thing of the kit is denied: a "no" belongs to the thing behind it."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.phrases import any_of

#: With the slips of the thumb that were seen.
TRIPOD: Final = r"(?:tripods?|tripd|tri-?pod|triopd|tirpod|tripood|tripot)"
POLARISER: Final = (
    r"(?:(?:circular )?(?<!cross )(?<!cross-)pol[aeo]r+i[sz]\w*(?! (?:sun)?glasses)|pola|cpl"
    r"|c-?pol|circular pol\w*"
    r"|pol ?filt(?:er|re)s?|pol)"
)
ND: Final = r"(?:nd filters?|gr[ea]y filters?|nds?|neutral[ -]densit\w+(?: filters?)?)"

#: Left somewhere else, so not at hand now.
NOT_HERE: Final = (
    r"(?:left|forgot|forgotten|in the (?:car|hut|tent|van|boot|trunk)|at home|back (?:home|at|in)"
    r"|at the (?:car|hut|hotel|hostel|lodge|campsite|house)|stay(?:s|ed) (?:home|behind|in|at)"
    r"|(?:not|isn't) (?:with me|here)|no longer have|lost(?! (?:me|us|an?|about|some|half|one"
    r"|two|\d"
    r"|light)\b)|broke\w*)"
)
#: Gone to somebody else or to pieces, so not there any more.
GONE: Final = (
    r"(?:(?:lent|loaned)(?! (?:me|us|to me|to us)\b)|sold(?! (?:me|us)\b)|gave away|given away"
    r"|snapped|smashed|stolen|stole|died|count (?:that|it) out)"
)

_THING: Final = rf"(?:{TRIPOD}|{POLARISER}|{ND}|filters?|(?:cable )?releases?|remotes?|monopods?)"
#: "no", "without a", "didn't bring my", "neither": what makes the next thing missing.
_WITHOUT: Final = (
    r"(?:no|non|(?<!at )(?<!on )(?<!is )zero|not a single|neither|nor"
    r"|without(?: a| an| any| my)?|w/o(?: a| any)?"
    r"|(?:haven't|hasn't) (?:got|brought)(?: a| an| any| my)?"
    r"|(?:don't|do not|doesn't|didn't|do n't) (?:have|own|carry|bring|use|take|pack)"
    r"(?: a| an| any| my| the)?"
    r"|(?:have|has|got) not?(?: a| any| my)?"
    r"|(?:everything|anything|all),? (?:but|except|bar|apart from|besides)(?: for)?(?: a| the| my)?"
    r"|(?:only|one) thing (?:(?:i|that's|that is) )?(?:don't have|lack|miss|missing|forgot) is"
    r"(?: a| the| my)?"
    r"|never (?:have|had|own|owned|carry|bring|use|bought)(?: a| an| any| my)?"
    r"|not (?:got|have|having|own\w*|using|carrying|bringing|with)(?: a| an| any| my)?)"
)
#: "I sold my 70-200", "left the 24-70".
_MISSING_BEFORE: Final = re.compile(
    rf"\b(?:{GONE}|{NOT_HERE}|{_WITHOUT}|returned|dropped|missing|miss)(?: (?:my|the|an?"
    r"|any))?(?: \w+)? ?$"
)
_KIND: Final = (
    r"(?:(?:(?:one|any|either|none) of (?:those|these|the|them)|such an?|any|a|my|the) )?"
    r"(?:(?:real|proper|decent|single|circular|carbon|sturdy|good|fancy) )?"
)
_DENIED_BEFORE: Final = re.compile(rf"\b{_WITHOUT} {_KIND}$")
#: "no tripod or polariser", "neither tripod nor polariser", "no tripod/nd": one denial for all;
#: behind "and" or a comma alone the next thing is there.
_SHARED: Final = re.compile(
    rf"\b{_WITHOUT} {_KIND}{_THING}(?:(?:, ?|,? (?:or|nor) |/)(?:a |an |any )?{_KIND}{_THING})*"
    rf"(?:,? (?:or|nor) |/)(?:a |an |any )?{_KIND}$"
)
_COMMA_LIST: Final = re.compile(rf"^(?:, ?{_KIND}{_THING})*,? (?:or|nor) {_KIND}{_THING}\b")
_IN_COMMA_LIST: Final = re.compile(
    rf"\b{_WITHOUT} {_KIND}{_THING}(?:, ?{_KIND}{_THING})*, ?{_KIND}$"
)
#: "None of these: tripod, polariser, ND": all of the list.
_NONE_OF_THESE: Final = re.compile(
    rf"\b(?:{_WITHOUT} any|none) of (?:these|those|them)(?: things| filters?)? ?[:,-] ?"
    rf"(?:{_KIND}{_THING}(?:, ?|,? (?:and|or|nor) | ?/ ?))*{_KIND}$"
)
#: "tripod no", "polariser? nope": the answer behind its thing ends the clause there.
_DENIED_BEHIND: Final = re.compile(
    r"^\s*,\s*(?:no|nope)(?=\s*(?:$|[.;!?]))|"
    r"^\s*[:=?-]?\s*\(?(?:no|nope|none|nada|don't have(?: one)?|haven't got(?: one)?"
    r"|(?:i|we) (?:do not|don't|didn't|did not|haven't|have not)(?: (?:have|got|own|bring"
    r"|brought))?"
    r"(?: with (?:me|us)| here| today)?)\)?"
    r"(?=\s*(?:$|[,;.!?+&)]| and\b| but\b))"
)
#: "tripod yes pola yes nd no", dictated: things and answers by turns, an answer last.
_DICTATED: Final = re.compile(
    rf"(?:\b{_THING} (?:yes|yep|no|nope|none)\b ?){{2,}}+(?!{_KIND}{_THING}\b)"
)
_DICTATED_NO: Final = re.compile(r"^ (?:no|nope|none)\b")


#: A question that a thing may help with tells nothing of what there is.
_ASKS: Final = re.compile(
    r"^(?:\W|\b(?:and|so|ok|okay|hi|hey|hello|but|also)\b)*"
    r"(?:do (?:i|we|you|people|they|most)|does (?:one|anyone)|should|would|will|is|are|can"
    r"|could|does|which|what's|whats|what|when|why|how"
    r"|where)\b"
)
#: "Nd or no nd", "tripod or no tripod": both, so neither.
_OR_NO: Final = re.compile(
    r"\b(?:or|and) (?:no|without)(?: an?| the)? (?:\w+ )?$|\b(?:with|w) (?:and|or|&) (?:without"
    r"|w/o)\b"
)
_SENTENCES: Final = re.compile(r"(?<=[.!?;])\s+")
#: Whose it is or where it stands, in a question too.
_OWNED: Final = r"\b(?:my|our|on (?:a|the)|with the|have (?:a|the)|got a|no|without a?) ?(?:\w+ )?"


#: What is wished, planned or past is not here.
_UNREAL: Final = (
    r"\b(?:heart(?:'s| is)? set on|saving up for|eyeing|fancy an?|in the market for|wish|if only"
    r"|would love|i'd love an?|dreaming of|wondering (?:if|about|whether)|tempted"
    r"|should've|should have|would've|used to (?:have|own)|if (?:i|we) had|thinking of|saving for"
    r"|(?:might|may|could|planning to|about to|should (?:i|we)|want to|going to) (?:buy|get|try"
    r"|rent|hire)|next time)\b"
)
_NOT_YET: Final = r"\b(?:tomorrow|next (?:time|week|year)|one day|soon)\b"


_WISHED_BEFORE: Final = re.compile(rf"{_UNREAL}[^,;.]*$")


def is_missing(before: str) -> bool:
    """Whether the words right before a thing say that it is not at hand: "left my …".

    Args:
        before: a message as `normalise` leaves it, up to the thing.
    """
    return _MISSING_BEFORE.search(before) is not None


def is_wished(before: str) -> bool:
    """Whether the clause before a thing wishes or plans for it: "might buy a …".

    Args:
        before: a message as `normalise` leaves it, up to the thing.
    """
    return _WISHED_BEFORE.search(before) is not None


def is_unreal(before: str) -> bool:
    """Whether the words before a thing ask whether it would do, or only wish for it.

    Args:
        before: a message as `normalise` leaves it, up to the thing.
    """
    part = _SENTENCES.split(before)[-1]
    return bool(_ASKS.match(part) or re.search(_UNREAL, part))


def is_asked_about(text: str, thing: str) -> bool:
    """Whether a thing is only asked about or wished for: "do I need a tripod?".

    Args:
        text: a message as `normalise` leaves it.
        thing: the pattern of the thing's names, one of this module's.
    """
    named = [part for part in _SENTENCES.split(text) if any_of(thing).search(part)]
    if named and all(
        re.search(rf"{_UNREAL}[^,;.]*{thing}\b|{thing}\b[^,;.]*{_NOT_YET}", part) for part in named
    ):
        return True
    return bool(named) and all(
        _ASKS.match(part) and not re.search(rf"{_OWNED}{thing}\b", part) for part in named
    )


#: "What tripod? I came on a bike, haven't got one".
_NONE_OF_THEM: Final = (
    r"(?:haven't|don't|didn't|do not|did not|never)(?: \w+)? (?:got|have|own|bring|brought|packed?)"
    r" (?:one|any)\b"
)


def is_denied(text: str, thing: str) -> bool:
    """Whether a message says that a thing is missing.

    Args:
        text: a message as `normalise` leaves it.
        thing: the pattern of the thing's names, one of this module's.

    Returns:
        True when any mention of it is denied; a "no" between two things belongs to the second,
        unless the message answers behind each thing ("tripod yes pola no nd no").
    """
    asked_back = re.search(rf"\b{thing}\?[^?]{{0,40}}\b{_NONE_OF_THEM}", text) is not None
    return asked_back or any(
        _is_mention_denied(text, match.start(), match.end())
        for match in any_of(thing).finditer(text)
    )


def _is_mention_denied(text: str, start: int, end: int) -> bool:
    before, after = text[:start], text[end:]
    if _OR_NO.search(before) and text[start:end] in before:
        return False
    if any(run.start() <= start < run.end() for run in _DICTATED.finditer(text)):
        return _DICTATED_NO.search(after) is not None
    if _DENIED_BEHIND.search(after) or _DENIED_BEFORE.search(before) or _SHARED.search(before):
        return True
    if _NONE_OF_THESE.search(before):
        return True
    return bool(_IN_COMMA_LIST.search(before) and _COMMA_LIST.search(after))
