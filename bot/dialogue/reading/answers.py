"""Which bare number answers the open question: one that is the message, or that names the thing."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.putting_right import BACK, NOT_THIS, SOURCE
from bot.dialogue.reading.role_words import FALL, NEAR

#: "1/3 of the frame", "1/2 full": a portion of something, not a time.
PORTION: Final = re.compile(
    r"^ (?:of (?!an? (?:s|stop))|(?:the|my|our|them|us|full|empty|done|day|way|hour|dozen)\b)"
)
_THE: Final = r"(?:the|my|our|this|that|an?)"
#: Phrases and words that only hedge, greet or point: "about 12", "12 or so i guess", "well, 12".
_PHRASES: Final = (
    r"at (?:most|least|a guess)|or (?:so|thereabouts|something|less|more)|give or take"
    r"|more or less|hard to (?:say|tell)|let's say|let us say|call it|in fact|not sure|thank you"
    r"|(?:i|we|i'd|i would|we'd) (?:say|guess|think|reckon|suppose|believe|estimate|imagine|bet"
    r"|put it at|measured|paced|make it)|(?:(?:my|best|rough|wild|first|an?|as a|the) )+guess"
    rf"|the answer|i'd|i would|{BACK}|{NOT_THIS}(?: (?:feet|foot|ft|met(?:er|re)s?|m|yards?))?"
)
_WORDS: Final = (
    r"about|around|roughly|approx\w*|circa|ca|maybe|perhaps|probably|possibly|presumably|nearly"
    r"|almost|just|only|like|say|some|exactly|precisely|well|ok|okay|alright|right|so|u+h*m+|u+h+"
    r"|hm+|er+m*|oh|ah|hi|hey|hello|linn|yes|yeah|yep|yup|sorry|then|again|easily|good|max\w*"
    r"|min\w*|at|is|was|it's|its|it'd|it|that's|thats|that|be|must|should|would|could|might|may"
    r"|will|guess|guessing|guessed|estimated?|please|thanks|plus|minus|looks|seems?"
)
_SHOWN: Final = (
    rf"(?:{_THE} )?{SOURCE}(?: here)? (?:says|reads|gives|shows|has|said)"
    rf"|(?:says|said|according to) (?:{_THE} )?{SOURCE}"
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
    r"|farthest|furthest|near|far|altogether|whole|standing|stand|up"
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
#: "2 waterfalls", "3 rocks", "1/4 of the way", "8 out of 10".
_NO_MEASURE: Final = re.compile(
    rf"^ (?:waterfalls|falls|(?:{NEAR})s)\b|^ (?:out )?of $|{PORTION.pattern}"
)
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
    if quantity.unit == "" and (
        _NO_MEASURE.match(draft.after(quantity))
        or _OF_SO_MANY.search(before)
        or (quantity.fraction and quantity.value >= 1)
    ):
        return False
    noun = _NOUN.search(f"{before};{after}")
    if noun and noun.group() not in slot and not _NEAR_WORD.search(f"{before};{after}"):
        return False  # "18 is the height" where the distance is asked
    return all(beside.fullmatch(part) for part in (before, after))
