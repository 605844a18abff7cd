"""Which bare number answers the open question: one that is the message, or that names the thing."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.putting_right import BACK, NOT_THIS, SOURCE
from bot.dialogue.reading.role_words import FALL, NEAR
from bot.dialogue.reading.unit_words import STANDING
from bot.dialogue.tongues.english.people import KIN, STRANGER

#: "1/3 of the frame", "1/2 full": a portion of something, not a time.
PORTION: Final = re.compile(
    r"^ (?:of (?!an? (?:s|stop))|(?:the|my|our|them|us|full|empty|done|day|way|hour|dozen)\b)"
)
_THE: Final = r"(?:the|my|our|this|that|an?)"
#: Phrases and words that only hedge, greet or point: "about 12", "12 or so i guess", "well, 12".
_PHRASES: Final = (
    r"(?:a )?(?:bit|little|touch|tad|hair)(?: (?:over|under|more|less|above|below))?(?: than)?"
    r"|(?:just|well|way|slightly|not) (?:over|under|above|below|quite)|(?:no |not )?(?:more|less"
    r"|fewer) than|(?:over|under|close to|up to)(?= $)|supposed to be|said to be|by eye"
    r"|(?:i was|we were|i've been|i got) told|told (?:me|us)|at (?:most|least|a guess)"
    r"|give or take|more or less|or (?:so|thereabouts|something|less|more)|hard to (?:say|tell)"
    r"|(?:(?:as|like) )?(?:i|we)(?: already| just)? (?:said|told you)(?: already)?"
    r"|(?:i |we )?(?:don't|dont|do not) (?:really )?know|no idea"
    r"|let's say|let us say|call it|in fact|not sure|thank you|(?:i|we|i'd|i would|we'd) (?:say"
    r"|guess|think|reckon|suppose|believe|estimate|imagine|bet|put it at|make it)"
    r"|(?:(?:my|best|rough|wild|first|an?|as a|the) )+guess|the answer|i'd|i would"
    rf"|{BACK}|{NOT_THIS}(?: {STANDING})?"
)
_WORDS: Final = (
    r"(?!(?:family|july|early|daily|reply|fly)\b)\w+ly|quite|app|about|around|approx\w*|circa|ca"
    r"|maybe"
    r"|perhaps|almost|just|like|say|says|some|well|ok|okay|alright|right|so|u+h*m+|u+h+|hm+|er+m*"
    r"|oh"
    r"|ah|hi|hey|hello|linn|yes|yeah|yep|yup|sorry|then|again|good|max\w*|min\w*|at|is|was|it's|its"
    r"|it'd|it|that's|thats|that|be|must|should|would|could|might|may|will|guess|guessing|guessed"
    r"|estimated?|measured|paced|counted|please|thanks|plus|minus|looks|seems?|i|we"
)
_SHOWN: Final = (
    rf"(?:{_THE} )?{SOURCE}(?: here)? (?:says|reads|gives|shows|has|said)"
    rf"|(?:says|said|according to) (?:{_THE} )?{SOURCE}"
    rf"|(?:{_THE} )?(?:{KIN}|{STRANGER}|he|she|they|people|some(?:one|body)|everyone)"
    rf" (?:says?|said|reckons?|thinks?|guess(?:es|ed)|told (?:me|us))"
    rf"|(?:with|by|on) {_THE} {SOURCE}"
)
_MATTER: Final = (
    rf"(?:{FALL}|{NEAR}|water|stream|thing|bit|one|camera|tripod|lens|ground|wall|background|lip"
    r"|top|bottom|base|foot|edge|pool|total)"
)
#: What stands beside a length of the place, of the way out, and beside a setting.
_PLACE: Final = (
    rf"(?:(?:from|to|of|for|with|between|over|above|up to|in|and) )?(?:{_THE} )?{_MATTER}"
    rf"|(?:(?:from|to|with|between|in front of) )?(?:me|us|here)|i'm (?:standing|at)|in front"
    rf"|{_SHOWN}|{_THE}|and|tall|high|height|wide|width|deep|depth|away|off|back|behind|distan\w+"
    r"|farthest|furthest|near|far|altogether|whole|standing|stand|up|all(?: of it)?|everything"
    r"|everything's|the lot"
)
_WAY: Final = (
    rf"one way|each way|round trip|(?:back |down |up )?to (?:{_THE} )?(?:car|road|parking|trailhead"
    rf"|hut)|{_SHOWN}|{_THE}|walk\w*|hike|hiking|way|path|trail|back|out|down|up|climb\w*|ascent"
    r"|gain|return|of|and|with"
)
#: "Now" stands before its number: "it is 12 now" is the time of day.
_SETTING: Final = (
    r"(?:went|go|gone|going|set|zoomed|down|up|opened|stopped|closed|changed|it|aperture|shutter"
    rf"|iso) to|stopped down|opened up|(?:i'm|im|we're) at|{_THE}|aperture|shutter|speed|exposures?"
    r"|time|iso|settings?|shot|shoot|shooting|used|use|using|took|tried|try|chose|chosen|picked"
    r"|with|and|on|camera|now(?=\W)|still|dial\w*|lens|zoom\w*|focal|length|prime|wide|long|end"
    r"|tele|f|i|have|had|kept|keep|manual|base|native|lowest|value|set"
)
#: What stands beside the time of sunset: "it's gone by 19:40 tonight", "dark at 20:10".
_SUN: Final = (
    r"sun\w*|set|sets|setting|down|gone|goes|dark\w*|dusk|light|by|around|before|until|today"
    rf"|tonight|(?:this|in the) evening|pm|here|{_SHOWN}|{_THE}"
)
_NOUN: Final = re.compile(r"\b(?:height|width|depth|distance)\b")
_NEAR_WORD: Final = re.compile(rf"\b(?:{NEAR})\b")
_WAY_SLOTS: Final = frozenset({"walk_km", "climb_m"})
_SETTING_SLOTS: Final = frozenset({"focal_mm", "f_number", "shutter_s", "iso", "base_iso"})
#: The dial or ring that a clause names: "my lens is 26" tells no time.
_DIALS: Final[Mapping[str, re.Pattern[str]]] = {
    "focal_mm": re.compile(r"\b(?:lens|zoom\w*|focal|prime|wide|tele)\b"),
    "f_number": re.compile(r"\b(?:aperture|f)\b"),
    "shutter_s": re.compile(r"\b(?:shutter|speed|exposures?|time)\b"),
    "iso": re.compile(r"\biso\b"),
}
#: "2 waterfalls", "3 rocks", "1/4 of the way", "8 out of 10".
_NO_MEASURE: Final = re.compile(
    rf"^ (?:waterfalls|falls|(?:{NEAR})s)\b|^ (?:out )?of $|{PORTION.pattern}"
)
#: "I take the 42".
_NAMED: Final = re.compile(r"\bthe $")
_OF_SO_MANY: Final = re.compile(r"\bof $")


def _only(*wordings: str) -> re.Pattern[str]:
    """Nothing but these; each is taken as it is found first, so that long texts stay quick."""
    return re.compile(rf"(?>[^\w']|\b(?:{'|'.join(wordings)})(?![\w']))*+")


_BESIDE_PLACE: Final = _only(_PHRASES, _PLACE, _WORDS)
_BESIDE_WAY: Final = _only(_PHRASES, _WAY, _WORDS)
_BESIDE_SETTING: Final = _only(_PHRASES, _SETTING, _WORDS)
_BESIDE_SUNSET: Final = _only(_PHRASES, _SUN, _WORDS)
_SUNRISE: Final = re.compile(r"\bsun ?(?:rise|up)|\bit(?:'s| is) $")


def tells_sunset(before: str, after: str) -> bool:
    """Whether the words of a clause beside a time of day leave it to be that of sunset.

    Args:
        before: the clause up to the time, as `normalise` leaves it.
        after: the rest of the clause.
    """
    return (
        _BESIDE_SUNSET.fullmatch(before) is not None
        and _BESIDE_SUNSET.fullmatch(after) is not None
        and not (_SUNRISE.search(before) and "sunset" not in before)
    )


def answers(draft: Draft, quantity: Quantity, slot: str) -> bool:
    """Whether a number may be what the question asks for: its clause speaks of nothing else.

    Args:
        draft: the message.
        quantity: one of its numbers; nothing else tells what it measures.
        slot: what the question asks for.

    Returns:
        False for "my son is 12", "page 24" and "bus at 5": a wrongly read number is worse than
        an unread one.
    """
    beside = _BESIDE_PLACE
    if slot in _SETTING_SLOTS:
        beside = _BESIDE_SETTING
    elif slot in _WAY_SLOTS:
        beside = _BESIDE_WAY
    before, after = draft.clause_before(quantity), draft.clause_after(quantity)
    if quantity.unit == "" and (_is_counted(draft, quantity) or _goes_on(draft, quantity, slot)):
        return False
    clause = f"{before};{after}"
    if _names_another_dial(clause, slot):
        return False
    noun = _NOUN.search(clause)
    if noun and noun.group() not in slot and not _NEAR_WORD.search(clause):
        return False  # "18 is the height" where the distance is asked
    return all(beside.fullmatch(part) for part in (before, after))


def _names_another_dial(clause: str, slot: str) -> bool:
    """Whether a clause names a dial, and not the one that is asked for."""
    named = {dial for dial, words in _DIALS.items() if words.search(clause)}
    return slot in _DIALS and bool(named) and slot not in named


def _is_counted(draft: Draft, quantity: Quantity) -> bool:
    """Whether a bare number names or counts something, or is one of so many."""
    before = draft.clause_before(quantity)
    return bool(
        _NAMED.search(before)
        or _OF_SO_MANY.search(before)
        or _NO_MEASURE.match(draft.after(quantity))
        or (quantity.fraction and quantity.value >= 1)
    )


def _goes_on(draft: Draft, quantity: Quantity, slot: str) -> bool:
    """Whether a number goes on from one that answers nothing: "the kids are 4 and 7"."""
    earlier = draft.neighbour(quantity, -1)
    joined = draft.before(quantity).strip() in {"and", "or", "&", ","}
    return (
        earlier is not None
        and joined
        and earlier in draft.free("")
        and not answers(draft, earlier, slot)
    )
