"""The light by its words: keys of the light table."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading import no_sun
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.light_words import LIGHTS, WINDS_WAY
from bot.dialogue.reading.needed import may_match, needed_by
from bot.dialogue.reading.normal import normalise
from bot.dialogue.reading.phrases import any_of, exactly, plain
from core.light import LIGHTS as LEVELS

#: "White balance cloudy" is a setting of colour.
_WHITE_BALANCE: Final = any_of("(?:white|whte|wite) bal\\w*", "wb", "kelvin", "preset")
#: Sun and cloud by turns are no single light.
_PARTLY: Final = any_of(
    "sunny spells|sunny intervals|sun and clouds?",
    r"sun (?:comes|coming|in) and (?:goes|going|out)|mixed light|sun patches",
    r"(?:half|partly|partially) (?:sun\w*|cloud\w*|overcast)",
)
#: "Sallow Glen Falls", "at Hollow Glen": a name tells of no light.
_NAMED: Final = re.compile(
    r"\b(?:canyon|gorge|ravine|glen|hollow|dell|dingle|woods?|forest)"
    r" (?=(?:water)?falls?\b|creek\b|linn\b|cascades?\b|force\b|brook\b|trail\b|road\b)"
    r"|\b(?!(?:the|a|an|this|that|our|in|deep|dark|narrow|wooded|shady|shaded|open|small|little"
    r"|steep|wide|tight|rocky|gloomy|dim|mossy|in|forested|leafy|lined|bare|broad|treeless|at|of) )"
    r"\w+ (?:glen|hollow|dell)\b"
)
#: A clear sky is sun only where nothing says shade.
_CLEAR_SKY: Final = any_of(r"(?:clear|blue) sk(?:y|ies)", "cloudless")
#: Where the light was asked for, one word is enough.
_ALONE: Final = (
    ("full sun", exactly("(?:full |bright |in )?sun(?: is out|'s out)?")),
    ("open shade", exactly("(?:in |the |all )*(?:shade|shadow)")),
    ("overcast", exactly("clouds?")),
)
#: Neither sun nor shade: nothing is told.
_NO_SHADE: Final = re.compile(r"\b(?:no|not|nor|neither)(?: in)?(?: the)? (?:shade|shadow)")
_SHADE: Final = any_of("shade|shadow|shady")
#: "Sunny but the fall is in the shade": the light on the water counts.
_WATER_SHADED: Final = any_of(
    r"(?:(?:water)?falls?|water|cascade|stream|creek|it|whole thing)"
    r"(?:'s| is| are| itself is| lies)"
    r"(?: (?:all|still|completely|fully|totally|now|mostly|in))*"
    r" (?:(?:in )?(?:the |full |deep |open )*(?:shade|shadow)|shaded)(?! of doubt)"
)
#: Lights of the sun itself.
_SUNLIT: Final = frozenset({"full sun", "hazy sun", "before sunset", "sunset"})
#: Light that takes the sun on the water itself.
_OF_SUN: Final = frozenset({"full sun", "snow in sun", "before sunset", "sunset"})
#: Every light that has the sun in it.
WITH_SUN: Final = _SUNLIT | _OF_SUN
_SHADED: Final = frozenset(
    {"open shade", "light canopy", "open gorge", "wooded gorge", "deep slot", "dense canopy"}
)
_NOT_NOW: Final = frozenset(
    {"no", "not", "isn't", "without", "until", "till", "wait", "waiting", "forecast"}
    | {"tomorrow", "yesterday", "later", "if", "when", "does", "will", "before"}
)


#: "Blue hour or golden hour": asked of both.
_EITHER: Final = re.compile(
    r"\b(?:hour|light|sun|shade|cloud\w*|overcast|dusk|sunset|drizzle|rain|mist|fog) or (?!so\b)"
)
#: "77 m back is in the trees": another place, where nobody stands.
_ELSEWHERE: Final = re.compile(
    r"\b(?:back|further|farther|over there|up there|down there|behind (?:me|us)|elsewhere)\b"
    r"(?: (?:there|up|it|that)(?:'s)?)?(?:'s| is| are| would be| i'd be| i am| puts me| gets me)"
    r"(?: \w+)?\s*$"
)
_CLAUSE_ENDS: Final = re.compile(r"[,.;!?:](?!\d)")
#: "Was overcast, now the sun is out": of two lights the one that is past.
_WAS: Final = re.compile(
    r"\b(?:was|were|earlier|at first|this morning|had|before|when (?:i|we) (?:came|parked|arrived"
    r"|started))\b(?:(?!\bnow\b)[^,;.])*$"
)


#: "Golden hour starts 6:50": a light that is still to come.
_COMES_BEHIND: Final = re.compile(
    r"^ ?(?:starts?|begins?|comes?|will|should|is (?:at|around|about|due|not|still|forecast)"
    r"|forecast"
    r"|at \d|around \d|from \d|tomorrow|later|in (?:an? |about |\d)|expected|due|isn't"
    r"|:? ?\d{1,2}(?:[:.h]\d\d| ?[ap]\.?m\b))"
)


_ASKED: Final = re.compile(
    r"\b(?:how long(?: is| does)?|when is|what time(?: is)?|what is|what's|is there|wait for"
    r"|get rid of|avoid|hide)\b"
)


def _is_now(before: str, after: str) -> bool:
    """Whether the words beside do not deny the light or put it into another hour."""
    clause = _CLAUSE_ENDS.split(before)[-1]
    asked = _ASKED.search(clause) is not None or _ELSEWHERE.search(clause) is not None
    return not (asked or _NOT_NOW & set(clause.split()[-2:]) or _COMES_BEHIND.match(after))


#: "EV 13ish", "nearer EV 8", "LW 10".
_LEVEL: Final = re.compile(
    r"\b(?:ev|lw)(?: (?:is|of|about|around|at|near|nearer|maybe|say|like|ca\.?|etwa|rund|unos)"
    r"|[ =:])*$"
)
#: "EV compensation", "exposure comp": a dial.
_DIAL: Final = re.compile(r"\bcomp")
#: Lights of the day by their levels, none of them of an hour.
_OF_A_LEVEL: Final = (
    *("full sun", "hazy sun", "bright cloud", "overcast", "open gorge", "light canopy"),
    *("wooded gorge", "dense canopy", "deep slot"),
)
#: Farther than this from the level of any, a number is none of a light [EV] (own rule).
_FAR: Final = 1.01


def read_level(draft: Draft) -> None:
    """The light by its level at ISO 100: `EV 13`; the name that lies nearest."""
    for quantity in draft.free(""):
        if quantity.signed or not _LEVEL.search(draft.before(quantity)):
            continue
        if _DIAL.search(draft.clause_after(quantity)):
            continue
        ev100 = quantity.value if quantity.high is None else (quantity.value + quantity.high) / 2
        nearest = min(_OF_A_LEVEL, key=lambda key: _distance(key, ev100))
        if abs(LEVELS[nearest].ev100 - ev100) <= _FAR:
            draft.claim(quantity)
            draft.note("light", nearest)


def _distance(key: str, ev100: float) -> tuple[bool, float]:
    """How far a light is from a level: first those that go by the name."""
    light = LEVELS[key]
    return not light.low <= ev100 <= light.high, abs(light.ev100 - ev100)


_LIGHTS: Final = tuple((key, pattern, needed_by(pattern)) for key, pattern in LIGHTS)


def _seen(text: str) -> list[str]:
    """The lights of now that a message names; those that are past only where none holds."""
    seen = [
        (key, text[: match.start()])
        for key, pattern, needed in _LIGHTS
        if may_match(needed, text)
        and (match := pattern.search(text))
        and _is_now(text[: match.start()], text[match.end() :])
    ]
    present = [key for key, before in seen if not _WAS.search(before)]
    return present or [key for key, _ in seen]


def _other_than_sun(text: str) -> str | None:
    """The light on water that has no sun, where other words name it."""
    return next((key for key in _seen(no_sun.unsunned(text)) if key not in _OF_SUN), None)


def only_lacks_sun(text: str) -> bool:
    """Whether all that a message says of the light is that the water has no sun.

    Args:
        text: in English.
    """
    said = normalise(text)
    return no_sun.without_sun(said) and _other_than_sun(said) is None


def read_light(draft: Draft) -> None:
    """The light by its words; sun and shade together are no single light and stay unsaid.

    A level that was told says more than words.
    """
    text = _NAMED.sub("", WINDS_WAY.sub("wind", draft.text))
    if "light" in draft.values or _WHITE_BALANCE.search(text) or _PARTLY.search(text):
        return
    if no_sun.without_sun(text):
        light = None if _NO_SHADE.search(text) else _other_than_sun(text) or "open shade"
    else:
        light = _named_light(text, asked="light" in draft.expecting)
    if light is not None:
        draft.note("light", light)


def _named_light(text: str, *, asked: bool) -> str | None:
    """The one light that words name; None where they name none, or sun and shade."""
    found = _seen(text)
    if len(found) > 1 and _EITHER.search(text):
        return None
    if not found and asked:
        found = [key for key, pattern in _ALONE if pattern.match(text)]
    if not found and _CLEAR_SKY.search(text) and not _SHADE.search(text):
        found = ["full sun"]
    if _SUNLIT & set(found) and _WATER_SHADED.search(text):
        found = [key for key in found if key in _SHADED] or ["open shade"]
    both = _SUNLIT & set(found) and _SHADED & set(found)
    return found[0] if found and not both else None


#: "Not under the canopy", "no sun on it": a light that is not there.
_NOT_THERE: Final = re.compile(r"\b(?:no|not|isn't|aren't|without|no longer)(?: \w+){0,2} ?$")


def denied(text: str) -> frozenset[str]:
    """The lights that a message says are not there, by their keys.

    Args:
        text: in English.
    """
    said = plain(text)
    return frozenset(
        key
        for key, pattern, needed in _LIGHTS
        if may_match(needed, said)
        and any(_NOT_THERE.search(said[: match.start()]) for match in pattern.finditer(said))
    )
