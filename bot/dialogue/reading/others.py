"""What a message tells of somebody else's kit and settings, or of kit long gone: taken out."""

from __future__ import annotations

import re
from typing import Final

_KIN: Final = (
    r"wife|husband|hubby|partner|friend|mate|buddy|pal|brother|sister|bro|sis|son|daughter|dad"
    r"|father|mum|mom|mother|kid|uncle|aunt|auntie|boyfriend|girlfriend|cousin|colleague"
    r"|neighbou?r|teacher|guide|instructor|nephew|niece|grandpa|grandad|grandson|flatmate|boss"
    r"|student|companion|in-law|brother in law|sister in law"
)
_STRANGER: Final = (
    r"(?:guy|man|woman|lady|girl|lad|bloke|chap|dude|fella|fellow|person|photographer|other one"
    r"|other (?:guy|person|photographer))"
)
_PLACE: Final = (
    r"(?: (?:over )?(?:here|there))?"
    r"(?: (?:next to|beside|behind|near|with|in|on|over|from|to) [a-z ]{2,24}?)?"
)
_OTHER: Final = (
    rf"(?:(?:(?:my|our|the|his|her|a|this|that) )?(?:\w+ )?(?:{_KIN})"
    rf"|(?:the|another|that|this|some|a) (?:\w+ )?{_STRANGER}{_PLACE}|{_STRANGER} next to me"
    r"|he|she|they|someone(?: else)?|somebody(?: else)?|every(?:one|body)(?: else| here)?"
    r"|the others?|others|most people|people(?: here)?)"
)
#: Having, using and setting; where somebody else stands is no matter of kit.
_USES: Final = (
    r"shoots?|shot|shooting|uses?|used|using|owns?|runs|set|sets|prefers?|swears by|works with"
    r"|keeps?|photographs|on|at (?=f ?/?\d|1/|iso|\d+ ?mm)|on (?=f ?/?\d|1/|iso|\d+ ?mm)"
)
_CARRIES: Final = r"has|have|had|got|brought|carries|took"
_ADVERBS: Final = r"(?:always|usually|only|just|still|never|also|all|even|mostly) "
_HAS: Final = rf"(?:'s| is| are|'re)?(?: (?:{_ADVERBS})?(?:{_CARRIES}|{_USES}))+\b"
_ME: Final = (
    r"(?:i|i'm|i've|i'd|im|ive|i'll|mine|mine's|me|we|we've|we're|my (?:own|camera|kit|settings"
    r"|lens|lenses|body|gear|tripod|bag))\b"
)
#: Where one clause ends and the next may speak of somebody else.
_CLAUSE: Final = re.compile(
    r"(?P<stop>[;!?]+\s*|\.(?!\d)\s*)|,(?!\d)\s*"
    rf"|\s(?=(?:but|and|while|whereas) (?:{_ME}|{_OTHER}{_HAS}))"
)
_LEAD: Final = r"^(?:\W|\b(?:so|ok|okay|well|hi|hey|hello|but|and|while|whereas|then|also|um)\b)*"
_MINE: Final = re.compile(rf"{_LEAD}{_ME}")
_THEIRS: Final = re.compile(
    rf"{_LEAD}(?:{_OTHER}(?:{_HAS}|(?= f ?/?\d))"
    rf"|{_OTHER}'s? (?:\w+ ){{0,2}}?(?:lens|lenses|camera|body|zoom|tripod|kit|setup|phone"
    rf"|filter)s?"
    r" (?:is|are|has)\b)"
)
_ONLY_THEIRS: Final = re.compile(
    rf"{_LEAD}(?:{_OTHER}(?:'s| is| are)?(?: {_ADVERBS})? ?(?:{_USES})\b"
    r"|(?:he|she|they) (?:wants? to know|asks?|wonders?|was|were|is asking)\b"
    rf"|(?:{_STRANGER}|(?:the|another|that|this|some|a) (?:\w+ )?{_STRANGER}){_PLACE}{_HAS})"
)
_FOR_A_FRIEND: Final = re.compile(r"\basking for (?:a|my) (?:friend|mate)\b")
#: A list of settings or kit that goes on.
_GOES_ON: Final = re.compile(
    r"^\W*(?:(?:and|with|at|on|plus|no|a|an|the|his|her|their) )*"
    r"(?:f ?/?\d|iso\b|\d|nd|cpl\b|polari[sz]er|tripod|he\b|she\b|they\b)"
)
#: What comes back to the person: lent, shared or theirs together.
_SHARED: Final = re.compile(
    r"\b(?:lent|lend|lends|lending|loaned|gave|borrow\w*|shar(?:e|ed|ing)|for|with"
    r"|(?<!next )to) (?:me|us)\b"
    r"|\b(?:borrow\w*|shar(?:e|ed|ing)|we|our|us|both)\b"
)
#: Kit and settings of another day.
_LONG_AGO: Final = re.compile(
    r"\bmy (?:very )?(?:first|old|previous|last|former) (?:camera|lens|body|phone|tripod|one|zoom)"
    r" (?:had|was|did|could|took|broke)\b|\bused to (?:have|own|shoot|use|carry)\b"
    r"|\b(?:back )?in (?:spring|summer|autumn|winter|january|february|march|april|june|july|august"
    r"|september|october|november|december) (?:it|i|we)\b"
    r"|\b(?:years|ages|decades|months|weeks) ago\b|\bback (?:then|in the day)\b|\byesterday\b"
    r"|\blast (?:week|month|year|summer|autumn|winter|spring|visit)\b"
    r"|\bwhen i was (?:a|young|here last)\b"
)
#: What somebody recommends is not set.
_ADVICE: Final = re.compile(
    rf"{_LEAD}(?:{_OTHER}|(?:the |a |my |one |some )?(?:\w+ )?(?:guide ?book|videos?|article"
    rf"|forum|book|tutorial"
    r"|blog|internet|magazine|manual|course))(?:'s)? (?:\w+ )?(?:says?|said|recommend\w*"
    r"|suggest\w*|told (?:me"
    r"|us)|tells (?:me|us)|reckons|thinks|advis\w+)\b(?=.*(?:\bf ?/?\d|\biso ?\d|\b1/\d|\d ?s\b"
    r"|\d ?sec"
    r"|\d stop|\bnd ?\d))"
    r"|\b(?:read|heard|saw) (?:somewhere|online|in a book|in the guide)\b|\bthey say\b"
)
#: "My wife has the tripod" may be shared; "my brother has a 100-400" is his.
_COMMON: Final = re.compile(rf"{_HAS} (?:the|our)\b")
#: "With his 70-200".
_WITH_THEIRS: Final = re.compile(
    r"\b(?:with|on|using|through) (?:his|her|their) (?:\w+ )?(?:\d|lens|camera|tripod|nd|filter"
    r"|polari|zoom)"
)
_DIGIT: Final = re.compile(r"\d|\b(?:one|two|three|four|six|eight|ten|half)\b")


def _clauses(text: str) -> list[tuple[str, bool]]:
    """The clauses with what ends them, and whether each goes on with the sentence before."""
    found, start, goes_on = [], 0, False
    for match in _CLAUSE.finditer(text):
        found.append((text[start : match.end()], goes_on))
        start, goes_on = match.end(), match["stop"] is None
    return [*found, (text[start:], goes_on)]


def _whose(clauses: list[tuple[str, bool]]) -> list[str]:
    """For each clause whose it is: "mine", "theirs" (surely not the person's), "maybe" or ""."""
    owners: list[str] = []
    for clause, goes_on in clauses:
        owner = ""
        if _ADVICE.search(clause):
            owner = "theirs"
        elif _SHARED.search(clause):
            owner = ""
        elif _ONLY_THEIRS.search(clause) or _WITH_THEIRS.search(clause):
            owner = "theirs"
        elif _THEIRS.match(clause):
            owner = "maybe" if _COMMON.search(clause) else "theirs"
        elif _MINE.match(clause):
            owner = "mine"
        elif goes_on and owners[-1] in {"theirs", "maybe"} and _GOES_ON.match(clause):
            owner = owners[-1]
        owners.append(owner)
    return owners


def without_others(text: str) -> str:
    """The message without clauses on other people's kit, and on kit of another day.

    "My wife has the tripod" stays where the message tells nothing
    of the person's own: it may be shared.

    Args:
        text: a message in lower case.
    """
    if _FOR_A_FRIEND.search(text):
        return ""
    clauses = _clauses(text)
    owners = _whose(clauses)
    drop = {"theirs", "maybe"} if "mine" in owners else {"theirs"}
    kept = [
        clause
        for (clause, _), owner in zip(clauses, owners, strict=True)
        if owner not in drop and not (_LONG_AGO.search(clause) and _DIGIT.search(clause))
    ]
    return "".join(kept)
