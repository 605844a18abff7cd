"""Who walks along: how many, and who of them sets the pace."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.phrases import any_of, exactly
from bot.dialogue.reading.spoken_numbers import SIMPLE
from bot.dialogue.tongues import in_any
from bot.dialogue.tongues.english.people import KIN

_COUNTED: Final = {word: number for word, number in SIMPLE.items() if 1 <= number <= 20} | {
    "a couple of": 2, "couple of": 2, "a few": 3, "both": 2, "a dozen": 12,
}  # fmt: skip
_NUMBER: Final = rf"(?:{'|'.join(sorted(_COUNTED, key=len, reverse=True))}|\d{{1,2}})"
_CHILD: Final = (
    r"(?:(?:school ?|grand)?(?:kids?|child(?:ren)?)|toddlers?|bab(?:y|ies)|little ones?)"
)
_LED: Final = (
    r"(?:students|pupils|participants|beginners|guests|clients|trainees|workshop (?:people|guests))"
)
_FOLK: Final = rf"(?:people|persons|adults|grown-?ups|hikers|walkers|friends|mates|{_CHILD}|{_LED})"
#: "There's two of us", "we are four", "a group of 6": the one who writes is among them.
_OF_US: Final = re.compile(
    rf"\b(?P<a>{_NUMBER}) of us\b"
    rf"|\b(?:group|party|team|bunch|family|class|crew|workshop|course) of"
    rf" (?P<b>{_NUMBER})\b(?! ?(?:\d|m\b|km\b))"
    rf"|\bwe(?:'re| are|'ll be| will be) (?:a group of |only |just |about )?(?P<c>{_NUMBER})"
    r"(?= ?(?:[,.;!]|$|people|persons|adults|in all|altogether|in total|and\b))"
)
#: "Four people": those who walk only where the message is of us, or says nothing else.
_PEOPLE: Final = re.compile(rf"\b(?P<n>{_NUMBER}) (?:people|persons|adults|hikers|walkers)\b")
_OURS: Final = re.compile(r"\b(?:we|us|our|i|i'm|with|along)\b")
#: Those who come along with the one who writes, who comes on top.
_LED_BY_ME: Final = re.compile(rf"\b(?P<n>{_NUMBER}) (?:\w+ )?{_LED}\b")
_BESIDE_ME: Final = re.compile(
    rf"\b(?:with|and|we have|we've(?: got)?|i have|i've(?: got)?|plus|bring(?:ing)?|take|taking) "
    rf"(?:my |our |the )?(?P<n>{_NUMBER}) (?:\w+ )?(?:{_FOLK})\b"
)
#: "Two friends and I", "I go with three others": so many beside the one who writes.
_WITH_ME: Final = re.compile(
    rf"\b(?:me|myself|i) and (?:my )?({_NUMBER}) (?:\w+ )?(?:{_FOLK}|others)\b"
    rf"|\b({_NUMBER}) (?:\w+ )?(?:{_FOLK}|others) and (?:me|myself|i)\b"
    rf"|\b(?:i|i'm|i'll|i'd)\b[^.;!?]*\bwith (?:my )?({_NUMBER}) (?:\w+ )?(?:{_FOLK}|others)\b"
)
_OUR: Final = rf"(?:my|our|a|the) (?:\w+ )?(?:{KIN})"
#: "Me and my father", "my wife and I", "with my sister".
_PAIR: Final = any_of(
    rf"(?:me|myself|i) (?:and|plus|\+|&) {_OUR}(?!'s)",
    rf"{_OUR} (?:and|plus|\+|&) (?:me|myself|i)",
    rf"(?:i|we)(?:'m|'re| am| are|'ll| will)? (?:\w+ )?(?:go|going|walk|walking|hike|hiking|come"
    rf"|coming) (?:\w+ )?with {_OUR}",
    rf"{_OUR}(?: [^\W\d_]+)? (?:comes?|is coming|walks?|is|will come|joins?)(?: \w+)?"
    r" (?:along|with (?:me|us))",
)
_ALONE: Final = any_of(
    r"(?:i'm|im|going|walking|hiking|go|walk|hike|be) (?:alone|solo|by myself|on my own)"
)
_ONLY_ME: Final = exactly("alone", "solo", "just me", "(?:all )?(?:on my own|by myself)")
_NAMED_BEHIND: Final = rf",(?= ?(?:and |plus |with )?(?:my|our|the|an?|{'|'.join(_COUNTED)}|\d)\b)"
#: "For the first time, just me": told in a breath of its own, and nobody named behind it.
_ME_ALONE: Final = re.compile(
    r"(?:^|[,.;:!?()-] ?|\b(?:it's|its|it is|be|and|but|so) )(?:(?:all|only|just|so|and|but) )*"
    r"(?:just me|only me|me alone|alone|solo|(?:all )?(?:on my own|by myself))"
    r"(?: (?:this time|today|tomorrow|again|though|then|here|there))*"
    rf"(?= ?(?:$|[.;:!?()-]|(?!{_NAMED_BEHIND}),))"
)

_ALIKE: Final = any_of(
    r"not (?:a )?mixed|all (?:of us |are |about |pretty |equally |quite |the same )*(?:equally fit"
    r"|(?:about )?as fit|fit|same (?:pace|fitness|level)|fast)",
    r"everyone(?:'s| is) (?:\w+ )?(?:fit|fast)",
    r"(?:nobody|no one|none of us)(?:'s| is) (?:\w+ )?slow",
    r"(?:father|mother|he|she|kids|grandma|grandpa)(?:'s| is| are)?(?: not|n't) coming"
    r"|(?:knee|ankle|hip)(?:'s| is)? (?:fine|ok(?:ay)?|good) (?:again|now)",
)
_WHO: Final = (
    rf"(?:i|he|she|they|we|you|one(?: of (?:us|them))?|someone|somebody|some|people|{_LED}"
    rf"|(?:{KIN})s?|{_CHILD}|of us|of them|walkers|everybody|who)"
)
_BE: Final = r"(?:'s|'m|'re| is| are| am| was| gets?| walks?| goes| go| moves?| will be| be)"
_HOW: Final = r"(?: (?:a|bit|very|quite|rather|really|too|also|pretty|so|more|the|\d+ and|and))*"
#: "He's slow", "slow walkers", "slow on wet rock"; water and shutters are slow as well.
_SLOW: Final = any_of(
    rf"{_WHO}{_BE}{_HOW} (?:slow(?:er|ly|est)?|unfit|unsteady|not (?:so |very |that )?(?:fit|fast"
    r"|quick|steady|sure-?footed))\b(?! (?:shutter|time|water|exposure|down|with|at|to))",
    r"one slow\b|\d+,? (?:and|but) (?:\w+ )?slow(?:er)?",
    r"slow(?:er|est)? (?:walkers?|hikers?|group|people|ones?|folks?|on (?:wet|slippery|her|his|my"
    r"|their|the (?:wet|rock|path|way))|when it|uphill|downhill|on foot)",
    r"walk(?:s|ing)? (?:\w+ )?slow(?:er|ly)?|need(?:s|ing)? (?:\w+ )?(?:breaks|rests)",
    r"(?:out of|not in|in bad|in poor) (?:good )?shape|not (?:so|very|that) (?:fit|steady)|unfit",
    r"(?<!lens is )(?<!zoom is )(?<!lens isn't )not (?:exactly |quite |really )?the"
    r" (?:fastest|fittest|quickest|youngest|strongest)\b(?! (?:shutter|lens|water|zoom|light))",
    r"takes (?:his|her|their) time|short of breath|out of breath|heavily pregnant|pregnant|asthma",
)
_STUDENTS: Final = any_of(
    rf"(?:workshop|course|class) of {_NUMBER}",
    rf"(?:{_NUMBER}|(?:with|and|bring(?:ing)?|tak(?:e|ing)|have|got)(?: (?:my|our|the|some))?)"
    rf" (?:\w+ )?{_LED}",
)
#: "Half my students stop down by habit": spoken of, not walking along.
_MY_STUDENTS: Final = any_of(rf"(?:my|our|the) (?:\w+ )?{_LED}")
_JOINT: Final = r"(?:knees?|ankles?|hips?|foot|feet|leg|legs|back|heart)"
_LAME: Final = any_of(
    r"(?:bad|sore|dodgy|weak|stiff|hurt|injured|new|artificial|twisted|gammy) (?:knees?|ankles?"
    r"|hips?)",
    r"(?:bad|sore|injured|weak) (?:foot|feet|leg|legs|back|heart)"
    r"(?! ?(?:focus|light|ground|screen))",
    r"(?:(?:my|his|her|one|their|the) (?:\w+ )?(?:knees?|ankles?|hips?)"
    r"|(?:my|his|her) (?:foot|legs?))"
    r"(?:'s| is| are)? (?:\w+ )?(?:bad|sore|dodgy|weak|stiff|play(?:s|ing) up|hurts?|hurting|aches?"
    r"|aching|not (?:so |very |that )?(?:good|great|well)|gives? (?:\w+ )?trouble|giving)",
    rf"(?:trouble|problems?|pain) (?:with|in) (?:my|his|her|the) {_JOINT}",
    rf"(?:had|having|got|getting) (?:my|his|her|their|a|the) (?:\w+ )?{_JOINT}"
    r" (?:done|replaced|fixed|repaired|operated(?: on)?)",
    r"(?:knee|hip|ankle|back|heart) (?:surgery|operation|replacement|op)"
    r"|(?:knees?|hips?|ankles?) (?:was|were|got|has been) (?:\w+ )?(?:operated|replaced|done)",
    r"limp(?:s|ing)?|on crutches|with a (?:cane|walking stick)|hobbl\w+",
)
#: Years from which a walker is taken to be slow on wet ground (own rule).
_OLD_YEARS: Final = 65
#: Years below which one is a child.
_CHILD_YEARS: Final = 13
_AGE: Final = re.compile(
    rf"\b(?:he|she|who|i|they|{KIN}|{_CHILD})(?:'s|'m|'re| is| are| am| turned| turns)?"
    r"(?: (?!(?:at|on|in|by|from|to|with|for|iso)\b)\w+)?"
    r" (?P<years>[1-9]\d?)(?= ?(?:[,;!)]|\.(?!\d)|$|and\b|but\b|so\b|now\b))"
    r"|\b(?:aged?|(?:he|she|who|i|they)(?:'s|'m| is| am| are)) (?P<aged>[1-9]\d?)\b"
    r"(?! ?(?:km|m|min|ft|feet|f|mm|met\w+|yards?|steps?|s|sec\w*|%|inch\w*)\b)"
    r"|\b(?P<old>[1-9]\d?)[- ]?(?:years?[- ]?old|yo\b|y/o|years of age)"
)
#: Years count where somebody comes along, or was spoken of: "my son is 12" is only talk.
_ALONG: Final = any_of(
    r"along|with (?:us|me|my|our)|comes?|coming|of us|and (?:me|i)|(?:me|i) and|walks?|goes|joins?"
    r"|slow\w*"
    r"|he's|she's|he is|she is"
)
_OLDER: Final = any_of(
    r"(?:my|our|the|with|and) (?:\w+ )?(?:grand(?:parents?|mother|father|ma|pa|dad)|granny|nan|gran"
    r"|nana|pensioners?|seniors?)",
    r"elderly|old (?:man|woman|lady|people|folks?|father|mother|couple|parents)|older (?:people|one"
    r"|ones|couple)|pensioners?|seniors",
)
_CHILDREN: Final = any_of(
    rf"(?:with|and|bring|bringing|take|taking|have|got|'ve|plus) (?:my |our |the )?(?:\w+ )?"
    rf"{_CHILD}",
    rf"{_CHILD} (?:\w+ )?(?:along|with us|with me|too|coming)",
)
#: Children are spoken of, too, who do not come: "my kids love this picture".
_OUR_CHILDREN: Final = any_of(rf"(?:our|my|{_NUMBER}) (?:\w+ )?{_CHILD}")
_NO_CHILDREN: Final = any_of(
    rf"(?:no|without)(?: the| my| our| any)? {_CHILD}",
    rf"{_CHILD} (?:\w+ )?(?:at home|stay|stays|staying)",
)
#: In this order: who says more of the pace stands first.
_SLOW_CHILD: Final = any_of(rf"{_CHILD}(?:'s|'re| is| are| get| walk)?{_HOW} slow(?:er|ly|ing)?")
_PACES: Final = (("child", _SLOW_CHILD), ("lame", _LAME), ("students", _STUDENTS), ("slow", _SLOW))


def people_in(text: str) -> int | None:
    """How many walk, the one who writes among them; None where it is not told.

    Args:
        text: a message in English, as `normal.normalise` leaves it.
    """
    if _ALONE.search(text) or _ONLY_ME.match(text) or _ME_ALONE.search(text):
        return 1
    told = _OF_US.search(text)
    if told is not None:
        return _number(next(said for said in told.groups() if said))
    counted = _PEOPLE.search(text)
    if counted is not None and (_OURS.search(text) or _ONLY_PARTY.fullmatch(text.strip())):
        return _number(counted["n"])
    led = _LED_BY_ME.search(text)
    if led is not None:
        return _number(led["n"]) + 1
    if _PAIR.search(text) is not None:
        more = _BESIDE_ME.search(text)
        return 2 + (_number(more["n"]) if more is not None else 0)
    mine = _WITH_ME.search(text)
    return None if mine is None else 1 + _number(next(said for said in mine.groups() if said))


def _number(said: str) -> int:
    return int(said) if said.isdigit() else _COUNTED[said]


def slowest_in(text: str) -> str | None:
    """Why somebody who walks along is slow: a child, years, a joint, or just so; None for nobody.

    Args:
        text: a message in English, as `normal.normalise` leaves it.
    """
    if _ALIKE.search(text):
        return None
    along = _ALONG.search(text) is not None
    comes = along or _ONLY_PARTY.fullmatch(text.strip()) is not None
    told = (match["years"] or match["aged"] or match["old"] for match in _AGE.finditer(text))
    ages = [int(years) for years in told if along]
    if _has_child(text, ages, comes=comes):
        return "child"
    if comes and (any(years >= _OLD_YEARS for years in ages) or _OLDER.search(text)):
        return "old"
    if comes and _MY_STUDENTS.search(text):
        return "students"
    return next((name for name, pattern in _PACES if pattern.search(text)), None)


def _has_child(text: str, ages: list[int], *, comes: bool) -> bool:
    """Whether a child walks along: by its years, or as one of those who come."""
    if any(0 < years < _CHILD_YEARS for years in ages):
        return True
    told = _CHILDREN.search(text) or (comes and _OUR_CHILDREN.search(text))
    return bool(told) and not _NO_CHILDREN.search(text)


def all_alike(text: str) -> bool:
    """Whether a message says that nobody is slow, or that who is does not come."""
    return _ALIKE.search(text) is not None


#: Words of which a message consists that tells who walks, and nothing else.
_ONLY_PARTY: Final = re.compile(
    rf"(?:(?:{in_any('party.plain')}|{KIN}|{_CHILD}|{_LED}|{_NUMBER}|\d+(?::\d\d)?|am|pm)s?"
    r"(?!\w)[\s,.;!-]*)+"
)


def is_only_party(text: str) -> bool:
    """Whether a message says who walks along, and nothing that could have happened to them.

    Args:
        text: a message in English, as `normal.normalise` leaves it.
    """
    told = people_in(text) is not None or slowest_in(text) is not None
    return told and _ONLY_PARTY.fullmatch(text.strip()) is not None
