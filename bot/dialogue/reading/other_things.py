"""Lengths of things beside the fall: tents, umbrellas, poles, bridges, and who waits where."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.role_words import ELSEWHERE, FALL, NEAR
from bot.dialogue.tongues.english.people import KIN, STRANGER

_HEDGES: Final = r"(?: about| only| just| maybe| some| still| already| at| a good| roughly)*"
_IS: Final = (
    r"(?:'s| is|s| are| was| were| stands?| sits?| lies?| plays?| waits?| pitched| parked| set| up"
    r"| standing| sitting| there| here)*"
)
_PEOPLE: Final = rf"(?:{KIN}|{STRANGER}|kids?|children|boys?|girls?|friends?|people|others|dogs?)"
#: "My tent is 40 m from the fall", "she's still 300 m behind".
_OTHER_STAND: Final = re.compile(
    rf"\b(?:(?:{ELSEWHERE}|{_PEOPLE})|she|he|they|she's|he's|they're){_IS}{_HEDGES} ?$"
)
_FROM_IT: Final = re.compile(
    rf"^ ?(?:away |off |back )?from (?:it\b|(?:the |that |an? |our )?(?:\w+ )?(?:{FALL}|water|edge"
    r"|river|stream|creek)\b)"
)
_BEHIND_US: Final = re.compile(r"^ ?(?:behind|back|ahead|down the|up the)\b")
_GEAR: Final = (
    r"(?:umbrella|tarp|poncho|tent|towel|blanket|rucksack|backpack|reflector|groundsheet|bag"
    r"|jacket)"
)
_GEAR_WIDE: Final = re.compile(rf"\b{_GEAR}{_IS}{_HEDGES} ?$")
_POLE: Final = re.compile(
    r"^\W*(?:(?:the|my|an?|our|got|have|just|only|and|but|so|i've|i) )*(?:monopod|selfie stick"
    r"|walking stick|hiking pole|trekking pole|pole|rope|leash|hose|cable|strap|ladder)"
    rf"(?:'s| is|:)?{_HEDGES} ?$"
)
#: "The filter pouch is 20 cm wide": no water.
_OTHER_WIDE: Final = re.compile(
    r"^\W*(?:(?:and|but|so|then) )*(?:the|an?|that|this|my|our|his|her) (?![^,;.]*\b(?:"
    rf"{FALL}|water\w*|stream|creek|brook|river|burn|beck|veil|thing|one|whole|flow|lip|top|crest"
    r"|section|part|bit|step|tier|ledge|slide|spread|fan|base|foot|height|view|frame|it|main"
    r"|first|second|upper|lower|middle|left|right|jet|sheet|ribbon|arm|branch|channel)\b)"
    rf"(?:[\w'-]+ ){{1,3}}?(?:is|'s|was|are){_HEDGES} ?$"
)
_WIDE: Final = re.compile(r"^ ?(?:wide|across|in width|in diameter)\b(?! (?:the|an?|this|to)\b)")
#: "Signpost: waterfall 250 m", "the arrow says falls 400 m": a way.
_POST: Final = r"(?:sign ?post|finger ?post|arrow|way ?mark\w*|trail marker)s?"
_POSTED: Final = re.compile(rf"\b{_POST}\b[^.;\d]{{0,30}}$")
_ON_POST: Final = re.compile(rf"^ ?(?:on|by|says|from) (?:the |an? )?(?:\w+ )?{_POST}\b")
#: "The safety line is 10 m back from the edge".
_FENCE_OFF: Final = re.compile(
    r"\b(?:line|rope|fence|rail|railing|barrier|tape|chain|kerb|curb)"
    rf"(?:'s| is| hangs| runs| stands){_HEDGES} ?$"
)
#: "We hiked past a 40 m fall", "saw the big 60 m one": another place.
_SEEN: Final = re.compile(
    r"\b(?:past|saw|seen|visited|passed|been to|unlike|skipped|(?:came|come|back) from)"
    r"(?: (?!my\b|from\b|with\b|at\b)\w+){0,3} $"
)
_A_FALL: Final = re.compile(rf"^ ?-?(?:tall |high )?(?:{FALL}|one)\b")
#: "The bridge hangs 8 m over the gorge", "the 20 m mark", "30 cm thick", "wade 5 m to the rock".
_HANGS: Final = re.compile(
    r"\b(?:bridge|platform|deck|walkway|viewpoint|lookout|balcony)\b[^,;.\d]*"
    rf" (?:hangs|is|stands|sits|juts|swings){_HEDGES} ?$"
)
_OVER_IT: Final = re.compile(
    r"^ ?(?:over|above) (?:the|a) (?:gorge|canyon|ravine|valley|abyss|river)\b"
)
_NO_STAND: Final = re.compile(r"^ ?-?(?:mark|marker|sign|post|board|thick)\b")
_WADES: Final = re.compile(
    rf"\b(?:wad(?:e|ed|ing)|scrambl\w+|crawl\w*|hop\w*|swim|swam|jump\w*){_HEDGES} ?$"
)
_SPRAY: Final = re.compile(r"\b(?:spray|mist|splash\w*|drizzle)\b[^,;.\d]{0,25}$")
#: "Mountains 4 km behind", "I live 20 m from a fall", "the gap is 2 m", "the path ends 50 m on".
_LAND_OFF: Final = re.compile(
    r"\b(?:mountains?|hills?|ridge|peaks?|skyline|summits?|glacier|horizon)(?: is| are)?"
    rf"{_HEDGES} ?$"
)
_FAR_OFF: Final = re.compile(r"^ ?(?:behind|beyond|away|off|back)\b")
_LIVES: Final = re.compile(
    r"\b(?:live[sd]?|grew up|sleep|slept|parked|camp(?:ed|ing)?|work(?:ed)?)\b[^,;.\d]{0,20}$"
)
_GAP: Final = re.compile(
    r"\b(?:gap|crack|passage|slot|opening) (?:\w+ ){0,3}?(?:is|'s|measures)(?: \w+)? ?$"
)
_ENDS: Final = re.compile(
    r"\b(?:zip ?line|path|trail|road|track|queue|fence|wood|forest)"
    rf" (?:ends|starts|begins|stops){_HEDGES} ?$"
)
_FROM_HERE: Final = re.compile(r"^ ?(?:from (?:here|me|us)|away|off|back|on|further)\b")
#: "The cable car climbs 400 m".
_CARRIED: Final = re.compile(
    r"\b(?:cable car|gondola|chair ?lift|ski lift|lift|funicular|cog railway)\b[^,;.\d]{0,25}$"
)
#: "They rebuilt the rail to 1.1 m".
_RAIL: Final = re.compile(
    r"\b(?:rail|railing|fence|barrier|parapet)(?: (?:to|is|was|reaches|comes to|goes to))+"
    rf"{_HEDGES} ?$"
)
_STANDS_THERE: Final = re.compile(r"^ ?(?:away|off|from|behind|back|in front|to)\b")
#: "The footbridge, its 40 m long", "a log 12 ft long".
_LONG: Final = re.compile(r"^ ?-?long\b")
_NO_FALL: Final = re.compile(
    r"\b(?:bridge|footbridge|path|trail|rope|rail|railing|tunnel|stairs?|steps|ladder|boat|bus|car"
    rf"|pool|lake|jetty|boardwalk|queue|{NEAR}|{_GEAR})\b[^.;]{{0,30}}$"
)
#: "The pool must be 3 m deep": a guess at water that nobody stands in.
_GUESSED_POOL: Final = re.compile(
    r"\b(?:pool|basin|pond|lake|hole|tarn)(?:'s| is)?(?: (?:must|might|could|may|will|should)"
    r"(?: well)? be| probably| surely| looks| easily| i bet| i guess| i think| supposedly)"
    r"[a-z' ]{0,20}$"
)
_DEEP: Final = re.compile(r"^ ?deep\b")
_NEXT_FALL: Final = re.compile(
    rf"^ ?to (?:the )?(?P<which>upper|lower|next|other|second|main|top|bottom) (?:{FALL}|one)\b"
)
_STOPPED: Final = re.compile(
    r"\b(?:stop|stopped|stay|stayed|stand|are|am|i'm|we're|only go|went)\b[^.;,\d]{0,12}"
    r" (?:at|to) the (?:upper|lower|first|other|second|main|small\w*|big\w*|top|bottom)\b"
)


def is_of_other_thing(draft: Draft, quantity: Quantity) -> bool:
    """Whether a length is surely of a thing or of somebody beside the fall.

    Args:
        draft: the message.
        quantity: a length with its unit.
    """
    before, after = draft.clause_before(quantity), draft.clause_after(quantity)
    if quantity.unit in {"km", "mi"}:
        next_one = _NEXT_FALL.match(after) and _STOPPED.search(draft.text)
        return bool(next_one or (_LAND_OFF.search(before) and _FAR_OFF.match(after)))
    if _GUESSED_POOL.search(before) and _DEEP.match(after):
        return True
    if _LIVES.search(before) and _FROM_IT.match(after):
        return True
    if _CARRIED.search(before) or (_SEEN.search(before) and _A_FALL.match(after)):
        return True
    sized = _GEAR_WIDE.search(before) or _RAIL.search(before) or _POLE.search(before)
    return _is_other_stand(before, after) or (sized is not None and not _STANDS_THERE.match(after))


def is_beside(draft: Draft, quantity: Quantity) -> bool:
    """Whether a length is of a thing that tells nothing, yet may have been meant to.

    A bridge so long, a pouch so wide, a rope so far from the edge, a waterfall on a signpost.
    """
    before, after = draft.clause_before(quantity), draft.clause_after(quantity)
    head = draft.text[: quantity.start]
    return bool(
        (_LONG.match(after) and _NO_FALL.search(head))
        or (_WIDE.match(after) and _OTHER_WIDE.search(before))
        or (_FROM_IT.match(after) and _FENCE_OFF.search(before))
        or (_OVER_IT.match(after) and _HANGS.search(before))
        or (_ENDS.search(before) and _FROM_HERE.match(after))
        or (_GAP.search(before) and not _STANDS_THERE.match(after))
        or _WADES.search(before)
        or _SPRAY.search(before)
        or _NO_STAND.match(after)
        or _POSTED.search(head)
        or _ON_POST.match(after)
    )


def _is_other_stand(before: str, after: str) -> bool:
    """Whether somebody or something else stands so far from the fall, or behind."""
    if not _OTHER_STAND.search(before):
        return False
    return _FROM_IT.match(after) is not None or _BEHIND_US.match(after) is not None
