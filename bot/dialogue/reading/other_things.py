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
    rf"^ ?(?:away |off |back )?from (?:it\b|(?:the |that )?(?:\w+ )?(?:{FALL}|water|edge|river"
    r"|stream|creek)\b)"
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
        return bool(_NEXT_FALL.match(after) and _STOPPED.search(draft.text))
    if _GUESSED_POOL.search(before) and _DEEP.match(after):
        return True
    sized = _GEAR_WIDE.search(before) or _RAIL.search(before) or _POLE.search(before)
    return _is_other_stand(before, after) or (sized is not None and not _STANDS_THERE.match(after))


def is_long_thing(draft: Draft, quantity: Quantity) -> bool:
    """Whether a length is that of a bridge, a log or a path: `the footbridge, its 40 m long`."""
    named = _NO_FALL.search(draft.text[: quantity.start]) is not None
    return named and _LONG.match(draft.clause_after(quantity)) is not None


def _is_other_stand(before: str, after: str) -> bool:
    """Whether somebody or something else stands so far from the fall, or behind."""
    if not _OTHER_STAND.search(before):
        return False
    return _FROM_IT.match(after) is not None or _BEHIND_US.match(after) is not None
