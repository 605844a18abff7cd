"""Which length a number is: the words before and behind it say."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.role_behind import behind
from bot.dialogue.reading.role_beside import (
    is_fall_from,
    measured,
    of_neighbours,
    opened,
    stands_tight,
)
from bot.dialogue.reading.role_listed import listed_fall
from bot.dialogue.reading.role_said import said_role
from bot.dialogue.reading.role_words import (
    BEHIND,
    FALL,
    KNOWN_THING,
    MYSELF,
    NAMES,
    NEAR,
    NEAR_BEHIND,
    NOUN,
    ONLY_FILLER,
    PLACED_AT,
    SUBJECT,
    TIGHT,
    WALKING,
)

#: Of these, a number without a unit says too little ("section 12", "trail 7").
_NEVER_BARE: Final = frozenset({"section", "walk", "depth", "climb"})
_SLOTS: Final = {
    "camera": "camera_height_m",
    "far": "farthest_m",
    "near": "nearest_m",
    "distance": "distance_m",
    "width": "fall_width_m",
    "depth": "water_depth_m",
    "climb": "climb_m",
    "walk": "walk_km",
    "section": "section_height_m",
    "height": "fall_height_m",
}


#: "Camera height 1.5 m": of the camera, not of the fall.
_UPRIGHT: Final = frozenset({"height", "tall", "high"})
_FALL_WORD: Final = re.compile(FALL)
#: "Depth at the chute", "the distance to the fall": the fall is not what is measured.
_AS_OBJECT: Final = re.compile(
    r"\b(?:(?P<way>to|from|till|until)|at|of|in|below|above|near|by|over|behind|before|under|on"
    r"|for)"
    r"(?: (?:the|this|that|our))?(?: (?:whole|big|main|actual|upper|lower|first))? ?$"
)


#: "Water touches my lens at 10 cm" sets up no camera.
_LENS_OPENS: Final = re.compile(r"^\W*(?:(?:with|and|so|the|my|front|of)\b ?)*lens\b")


def _is_beside(found: str | None, match: re.Match[str]) -> bool:
    """Whether a word only tells more of what was named: `camera height`, `behind it a rock`."""
    if found == "camera":
        return match.group() in _UPRIGHT
    return found == "far" and match.lastgroup == "near" and not _FRONT.match(match.group())


_FRONT: Final = re.compile(r"nearest|closest|near|foreground|front|in front|nothing|at my")


def _subject(words: str, *, tight: bool) -> str | None:
    """What the words speak of last; `tight`: only when it stands right before the number."""
    found, end = None, 0
    words = PLACED_AT.sub(r"\1", words)
    for match in SUBJECT.finditer(words):
        kind, end = match.lastgroup, match.end()
        placed = _FALL_WORD.fullmatch(match.group()) and _AS_OBJECT.search(words[: match.start()])
        if not placed:
            found = found if _is_beside(found, match) else kind
        elif placed["way"] and found in {None, "height", "camera"}:
            found = "distance"
    if found is None or (tight and not TIGHT.fullmatch(words[end:])):
        return None
    if found == "lens":
        return None if tight or not _LENS_OPENS.match(words) else "camera"
    return found.removesuffix("_end")


def _ends(draft: Draft, quantity: Quantity) -> bool:
    """Whether the clause ends before the next number, so that its words are this one's."""
    return draft.neighbour(quantity, 1) is None or draft.clause_after(quantity) != draft.after(
        quantity
    )


#: So many words back a thing is still the one that is placed (own rule).
_JUST_BEFORE: Final = 4


_OUTERMOST: Final = re.compile(
    r"\b(?:(?P<far>farthest|furthest|most distant|last thing)|nearest|closest|first thing)\b"
)


def _named_just_before(draft: Draft, quantity: Quantity) -> str | None:
    """`Behind it the pines, 120 yards off`: what the clause before ends with is so far away."""
    before = draft.before(quantity)
    clause, rest = draft.last_clauses(quantity)
    if rest.strip(" ,") and not ONLY_FILLER.fullmatch(rest):
        return None
    if before and (end := _OUTERMOST.search(clause)):
        return "far" if end["far"] else "near"
    last = " ".join(clause.split()[-_JUST_BEFORE:])
    kind = _subject(last, tight=False) if before else None
    return kind if kind in {"near", "far"} else None


def stands_alone(draft: Draft, quantity: Quantity) -> bool:
    """Whether no word of its clause says what a number is."""
    words = (draft.clause_before(quantity), draft.clause_after(quantity))
    return all(TIGHT.fullmatch(part) or ONLY_FILLER.fullmatch(part) for part in words)


def counts(draft: Draft, quantity: Quantity) -> bool:
    """Whether a bare number has a noun of its own: "3 steps", "2 students"."""
    after = draft.clause_after(quantity)
    return bool(NOUN.match(after)) and not ONLY_FILLER.fullmatch(after)


#: "Near 0.9 far 22", "10 not 15": the word belongs to the next number.
_NEXT_LABEL: Final = re.compile(
    r" (?:and )?(?:not|never|instead of|rather than) |"
    r"[ ,]+(?:and )?(?:the )?(?:near(?:est)?|far(?:thest)?|furthest|closest|height|distance|width"
    r"|depth|background|foreground|wall|rock)(?: is| at|[:=])* ?"
)


def _is_vague(subject: str | None, words: str, after: str, match: re.Match[str] | None) -> bool:
    """Whether a bare number may count or name something else: "i'm 64", "the falls 10 behind"."""
    if match is not None:
        return False
    return not (ONLY_FILLER.fullmatch(after) or _NEXT_LABEL.fullmatch(after)) or (
        subject == "distance" and not _PLACES.search(words)
    )


_PLACES: Final = re.compile(
    r"\b(?:distance|at)\b"
    r"|\b(?:i'm|im|i am|we're|we are|stood|standing|sat|sitting)\b.*\b(?:back|away|off|out)\b"
)


_ENDS_WITH_FALL: Final = re.compile(r"(?:falls?|drop)[ ,.]*$")


def _kind_behind(
    draft: Draft, quantity: Quantity, match: re.Match[str], subject: str | None
) -> str | None:
    """What the words behind a number make of it, given the subject before it."""
    walking = WALKING.search(draft.text) is not None
    kind = behind(match, subject, draft.clause_before(quantity), walking=walking)
    from_me = match["object"] and MYSELF.match(match["thing"])
    if (match["distance"] or from_me) and subject is None and quantity.unit != "":
        return _named_just_before(draft, quantity) or kind
    return kind


#: "Rock, 1 m."
_ONLY_NEAR: Final = re.compile(rf"\W*(?:(?:the|my|an?|first|front|next) )?(?:{NEAR})\W*")


def _kind_alone(draft: Draft, quantity: Quantity, subject: str | None) -> str | None:
    """The subject of a number with no word behind it; that of the clause before, if it has none."""
    if subject is not None or quantity.unit == "":
        return subject
    if _ends(draft, quantity) and NEAR_BEHIND.search(draft.clause_after(quantity)):
        return "near"
    if quantity.unit not in {"km", "mi"} and stands_tight(draft.clause_before(quantity)):
        if draft.before(quantity).strip() and _ONLY_NEAR.fullmatch(draft.last_clauses(quantity)[0]):
            return "near"
        return measured(draft.before(quantity)) or opened(draft.before(quantity))
    return None


def _word_behind(
    after: str, subject: str | None, *, bare: bool, follows: bool
) -> re.Match[str] | None:
    """The word behind a number that is its own, not that of the next number, if one follows."""
    match = BEHIND.search(after)
    if match is None or (subject and match.group().strip() == "distance"):
        return None  # "height 15 m distance 20 m": the word belongs to the next number
    falls = not match["object"] and _ENDS_WITH_FALL.search(match.group()) is not None
    others = subject not in {None, "height"} and not after[match.end() :].strip(" ,.")
    counted = bare and not match.group().lstrip().startswith("of ")
    return None if falls and (counted or (others and follows)) else match


#: From here on a bare number "of climbing" is a height gained, not how often [any unit].
_LEAST_CLIMB: Final = 20


def _is_told_climb(quantity: Quantity, after: str) -> bool:
    """Whether a bare number is a climb by the words behind it: `5 km out with 250 of climbing`."""
    return quantity.value >= _LEAST_CLIMB and _OF_CLIMB.match(after) is not None


_OF_CLIMB: Final = re.compile(r"^ (?:of )(?:climb(?:ing)?|ascent|(?:height )?gain|up(?:hill)?)\b")


_AT: Final = re.compile(r"\b(?:i'm|im|i am|we're|we are) (?:on|at) $")


def _may_be_focal(draft: Draft, words: str) -> bool:
    """Whether "i'm at 32" may tell a focal length as well, since no other number stands beside."""
    return _AT.search(words) is not None and len(draft.quantities) == 1


#: "I am at a 14 m fall": the number belongs to its name.
_A: Final = re.compile(
    r"(?:^|\b(?:at|by|near|below|under|facing|opposite|it's|its|it is|this is|there's|there is"
    r"|here's|(?:to|for|towards?|of|see|visit\w*|shoot\w*|photograph\w*|found|got)"
    r"(?= (?:an?|the|this|that|our) )) )(?:(?:an?|the|this|that|our) )?"
    r"(?:pretty |lovely |nice |single )?$"
)
_FALL_BEHIND: Final = re.compile(
    rf"^[ -](?:single |sheer |high |tall |big |small |little |pretty )?(?:{FALL})\b"
    r"(?! (?:away|off|back|from|line|zone)\b)"
)


def names_the_fall(draft: Draft, quantity: Quantity) -> bool:
    """Whether a length with its unit stands before the name of the fall, as what it is called."""
    named = _A.search(draft.before(quantity)) and _FALL_BEHIND.match(draft.after(quantity))
    return quantity.unit in {"m", "ft", "yd"} and named is not None


def role(draft: Draft, quantity: Quantity) -> str | None:
    """The slot of a length by the words around it; None when they do not say."""
    bare = quantity.unit == ""
    words = draft.clause_before(quantity)
    named = bare and (NAMES.search(words) or " iso" in f" {words}")
    focal = bare and _may_be_focal(draft, words)
    if named or focal or draft.before(quantity).strip() in {"by", "x"}:
        return None  # "12 m by 6 m": which is which?
    if names_the_fall(draft, quantity):
        return "fall_height_m"
    if is_fall_from(draft, quantity) or listed_fall(draft, quantity):
        return "distance_m"
    return said_role(draft, quantity) or _by_its_words(draft, quantity)


def _by_its_words(draft: Draft, quantity: Quantity) -> str | None:
    """The slot of a length by the words of its clause."""
    bare = quantity.unit == ""
    words, after = draft.clause_before(quantity), draft.clause_after(quantity)
    subject = _subject(words, tight=bare)
    follows = draft.neighbour(quantity, 1) is not None
    match = _word_behind(after, subject, bare=bare, follows=follows)
    if match and bare and match["object"] and not KNOWN_THING.match(match["thing"]):
        return None  # "page 12 from the book"
    if match:
        kind = _kind_behind(draft, quantity, match, subject)
    else:
        kind = _kind_alone(draft, quantity, subject)
    if bare and (kind in _NEVER_BARE or _is_vague(subject, words, after, match)):
        return "climb_m" if kind == "climb" and _is_told_climb(quantity, after) else None
    kind = kind or of_neighbours(draft, quantity, words.strip())
    return _SLOTS[kind] if kind else None
