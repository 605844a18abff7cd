"""What a message tells of somebody else's kit and settings, or of kit long gone: taken out."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.inventory import ND, POLARISER, TRIPOD
from bot.dialogue.tongues.english.people import ADVISER, HOUSE, KIN, STRANGER

_PLACE: Final = (
    r"(?: (?:over )?(?:here|there))?"
    r"(?: (?:next to|beside|behind|near|with|in|on|over|from|to) [a-z ]{2,24}?)?"
)
_OTHER: Final = (
    rf"(?:(?:(?:my|our|the|his|her|a|this|that) )?(?:\w+ )?(?:{KIN})s?"
    rf"|(?:the|a|our|this|that|my|one) (?:\w+ )?{HOUSE}"
    rf"|{HOUSE} (?:{STRANGER}|people|staff|folks?)"
    rf"|(?:the|another|that|this|some|a) (?:\w+ )?{STRANGER}{_PLACE}|{STRANGER} next to me"
    r"|he|she|they|some(?:one|body)(?: else)?(?: here)?|every(?:one|body)(?: else| here)?"
    r"|the others?|others|most people|people(?: here)?)"
)
#: Having, using and setting; where somebody else stands is no matter of kit.
_USES: Final = (
    r"shoots?|shot|shooting|uses?|used|using|owns?|runs|set|sets|prefers?|sw(?:ears|ore) by"
    r"|works with|keeps?|photographs|on|at (?=f ?/?\d|1/|iso|\d+ ?mm)|on (?=f ?/?\d|1/|iso|\d+ ?mm)"
)
_CARRIES: Final = (
    r"has|have|had|got|brought|carries|took|bought|rents?(?: out)?|hires?(?: out)?|lends?(?: out)?"
    r"|sells?|offers?|stocks?|provides?"
)
_ADVERBS: Final = r"(?:always|usually|only|just|still|never|also|all|even|mostly) "
_HAS: Final = rf"(?:'s| is| are|'re)?(?: (?:{_ADVERBS})?(?:{_CARRIES}|{_USES}))+\b"
_ME: Final = (
    r"(?:i|i'm|i've|i'd|im|ive|i'll|mine|mine's|me|we|we've|we're|my (?:own|cam|camera|kit|settings"
    r"|lens|lenses|body|gear|tripod|bag|dials?|meter))\b"
)
_FIRST: Final = r"i|i'm|i've|im|ive|me|my|mine|we|we've|our|us"
#: Where one clause ends and the next may speak of somebody else.
_CLAUSE: Final = re.compile(
    r"(?P<stop>[;!?]+\s*|\.(?!\d)\s*)|,(?!\d)\s*"
    rf"|\s(?=(?:but|and|while|whereas) (?:{_ME}|{_OTHER}{_HAS}))"
)
_LEAD: Final = r"^(?:\W|\b(?:so|ok|okay|well|hi|hey|hello|but|and|while|whereas|then|also|um)\b)*"
_MINE: Final = re.compile(rf"{_LEAD}{_ME}")
_THEIRS: Final = re.compile(
    rf"{_LEAD}(?:{_OTHER}(?:{_HAS}|(?= f ?/?\d))"
    rf"|{_OTHER}'s? (?:\w+ ){{0,2}}?(?:lens|lenses|camera|body|zoom|kit|setup|phone"
    rf"|filters?|{TRIPOD}|{POLARISER}|{ND})s?"
    r" (?:is|are|has|does|did|can|takes|took|shoots|shot|goes|says|shows)\b)"
)
_ONLY_THEIRS: Final = re.compile(
    rf"{_LEAD}(?:{_OTHER}(?:'s| is| are)?(?: {_ADVERBS})? ?(?:{_USES})\b"
    r"|(?:he|she|they) (?:wants? to know|asks?|wonders?|was|were|is asking)\b"
    rf"|(?:{STRANGER}|(?:the|another|that|this|some|a) (?:\w+ )?{STRANGER}){_PLACE}{_HAS})"
)
_FOR_A_FRIEND: Final = re.compile(r"\basking for (?:a|my) (?:friend|mate)\b")
#: A list of settings or kit that goes on.
_GOES_ON: Final = re.compile(
    r"^\W*(?:(?:and|with|at|on|plus|no|a|an|the|his|her|their) )*"
    r"(?:f ?/?\d|iso\b|\d|nd|cpl\b|polari[sz]er|tripod|he\b|she\b|they\b)"
)
#: What comes back to the person: lent, shared or theirs together.
_SHARED: Final = re.compile(
    r"\b(?:lent|lend|lends|lending|loaned|gave|sold|rented|hired|bought|brought|borrow\w*"
    r"|shar(?:e|ed|ing)|for|with|(?<!next )to) (?:me|us)\b|\bi (?:can|may|could) (?:use|have)\b"
    r"|\b(?:borrow\w*|shar(?:e|ed|ing)|we|our|us|both)\b"
)
#: "Our guide", "the family next to us": whose kit it is, not for whom.
_SUBJECT: Final = re.compile(rf"{_LEAD}{_OTHER}(?={_HAS})")
#: Kit and settings of another day.
_LONG_AGO: Final = re.compile(
    r"\bmy (?:very )?(?:first|old|previous|last|former) (?:camera|lens|body|phone|tripod|one|zoom)"
    r" (?:had|was|did|could|took|broke)\b|\bused to (?:have|own|shoot|use|carry)\b"
    r"|\b(?:back )?in (?:spring|summer|autumn|winter|january|february|march|april|june|july|august"
    r"|september|october|november|december) (?:it|i|we)\b"
    r"|\b(?:years|ages|decades|months|weeks) ago\b|\bback (?:then|in the day)\b|\byesterday\b"
    r"|\blast (?:week|month|year|summer|autumn|winter|spring|visit)\b"
    r"|\blast time (?:i|we) (?:was|were|came|went|visited)\b"
    r"|\bwhen i was (?:a|young|here last)\b"
)
#: Another day, another place: "next month the club goes to a fall that's 120 m".
_SOME_DAY: Final = re.compile(
    r"\bnext (?:week\w*|month|year|summer|autumn|fall(?= we)|winter|spring|holiday|trip|visit)\b"
    r"|\btomorrow\b[^;.]*\b(?:another|other|different|bigger|next)\b"
)
_PACKING: Final = re.compile(r"\b(?:pack\w*|bring\w*|kit|bag|lens\w*|gear|tak(?:e|ing)|sunset)\b")
_LED_BY_NUMBER: Final = re.compile(r"(?:(?:it's|about|maybe|some|of) )*\d(?!.*\b(?:now|today)\b)")
#: "Ansel used f/64, right?": a name asks of somebody else.
_NAMED_ONE: Final = re.compile(
    rf"{_LEAD}(?:did |does |do )?(?!(?:{_FIRST}|you|who|what|which|when|where|why|how|the|an?|this"
    r"|camera|phone|auto|frame|shot|picture|photo|test|one|lens|mine|each|every|both"
    r"|that|these|those|my|our|it|is|are|just|now|today|always|finally|again|first|last)\b)"
    r"[a-z]{2,}(?: [a-z]{2,})? (?:used?|always used|shot|shoots?)\b(?: \w+){0,3}? ?"
    rf"(?:f ?/? ?\d|iso|1/|\d)(?!.*\b(?:{_FIRST})\b)[^?]*\?"
)
#: What somebody recommends is not set.
_ADVICE: Final = re.compile(
    rf"{_LEAD}(?:{_OTHER}|(?:the |a |my |one |some )?(?:\w+ )?{ADVISER})(?:'s)? (?:\w+ )?"
    r"(?:says?|said|recommend\w*|suggest\w*|told (?:me|us)|tells (?:me|us)|reckons|thinks"
    r"|advis\w+)\b(?=.*(?:\bf ?/?\d|\biso ?\d|\b1/\d|\d ?s\b|\d ?sec|\d ?mm|\d[ -]?stop|\bnd ?\d"
    r"|\btripod|\bpolari))"
    r"|\bi(?:'ve)? (?:read|heard|learn(?:ed|t)) (?:that )?(?:f ?/? ?\d|iso|1/)[^,;.]*"
    r" (?:is|are|gives|was)\b"
    r"|\b(?:read|heard|saw) (?:somewhere|online|in a book|in the guide)\b|\bthey say\b"
)
#: "You can rent tripods there", "a man with a 400 mm": neither is here for the person.
_TO_HIRE: Final = re.compile(
    r"\b(?:you|one|people|we|i) (?:can|could|may|might)(?: also| always)? (?:rent|hire|buy"
    r"|get(?! (?:within|closer|nearer|near|to|up|down|as)\b))\b"
    r"|\b(?:for|to) (?:rent|hire)\b"
)
_WITH_KIT: Final = re.compile(
    rf"{_LEAD}(?:there(?:'s|s| is| are) |(?:i )?(?:saw|see|met) )?(?:an?|the|some|another|other|two"
    rf"|three|\d+|lots of|many|several|(?:my|our)(?= (?:{KIN})))(?: \w+)? (?:{STRANGER}|{KIN})s?"
    rf"{_PLACE} with (?:an? |his |her |their |the )?(?:\w+ )?(?:\d|{TRIPOD}|{POLARISER}|{ND}|lens)"
)
#: "My mate has a tripod, i don't".
_I_HAVE_NONE: Final = re.compile(
    rf"{_LEAD}(?:i|i've|we|me)(?: (?:myself|personally))? ?(?:(?:don't|do not|haven't|didn't|got"
    r"|have|'ve)(?: (?:have|own|got|bring))?(?: (?:one|any|none|no))?|not)\W*$"
)
_THINGS: Final = (("tripod", TRIPOD), ("polariser", POLARISER), ("nd", ND))
#: "My wife has the tripod" may be shared; "my brother has a 100-400" is his.
_COMMON: Final = re.compile(rf"{_HAS} (?:the|our)\b")
#: "With his 70-200".
_WITH_THEIRS: Final = re.compile(
    r"\b(?:with|on|using|through) (?:his|her|their) (?:\w+ )?(?:\d|lens|camera|tripod|nd|filter"
    r"|polari|zoom)"
)
#: "His tripod's standing there", "her camera is on 1/4".
_HERS: Final = re.compile(
    rf"{_LEAD}(?:his|her|their) (?:\w+ )?(?:{TRIPOD}|camera|phone|lens|filter|{POLARISER})(?:'s"
    r"| is| has| was)\b"
)
_DIGIT: Final = re.compile(r"\d|\b(?:one|two|three|four|six|eight|ten|half)\b")


#: Without one of these a message tells of nobody else and of no other day.
_MAY_TELL_OF_OTHERS: Final = re.compile(
    rf"\b(?:(?:{KIN}|{STRANGER}|{HOUSE}|{ADVISER})s?|he|she|they|some(?:one|body)|every(?:one|body)"
    r"|others?|people|his|her|their|rent|hire|buy|get|ago|yesterday|then|back|last|first|old"
    r"|previous"
    r"|former|used to|when i was|read|heard|saw|next|tomorrow|used|shot|shoots"
    r"|in [a-z]+ (?:it|i|we))\b"
)


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
        if (
            _NAMED_ONE.search(clause)
            or _ADVICE.search(clause)
            or _TO_HIRE.search(clause)
            or _WITH_KIT.search(clause)
        ):
            owner = "theirs"
        elif _SHARED.search(_SUBJECT.sub("", clause)):
            owner = ""
        elif _ONLY_THEIRS.search(clause) or _WITH_THEIRS.search(clause) or _HERS.match(clause):
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
    if not _MAY_TELL_OF_OTHERS.search(text):
        return text
    if _FOR_A_FRIEND.search(text):
        return ""
    clauses = _clauses(text)
    owners = _whose(clauses)
    drop = {"theirs", "maybe"} if "mine" in owners else {"theirs"}
    kept = [
        clause
        for (clause, _), owner, away in zip(clauses, owners, _away(clauses), strict=True)
        if owner not in drop and not away
    ]
    return "".join([*_lacking(clauses, owners), *kept])


def _away(clauses: list[tuple[str, bool]]) -> list[bool]:
    """For each clause whether it tells numbers of a day long gone, or of one to come."""
    found: list[bool] = []
    some_day = False
    for clause, goes_on in clauses:
        follows = some_day and goes_on and _LED_BY_NUMBER.match(clause) is not None
        some_day = follows or bool(_SOME_DAY.search(clause) and not _PACKING.search(clause))
        told = _DIGIT.search(clause) is not None
        found.append(told and (some_day or _LONG_AGO.search(clause) is not None))
    return found


def _lacking(clauses: list[tuple[str, bool]], owners: list[str]) -> list[str]:
    """What somebody else has and the person says to have none of."""
    return [
        f"no {name}; "
        for (theirs, _), owner, (mine, _) in zip(clauses, owners, clauses[1:], strict=False)
        if owner in {"theirs", "maybe"} and _I_HAVE_NONE.match(mine)
        for name, pattern in _THINGS
        if re.search(rf"\b{pattern}\b", theirs)
    ]
