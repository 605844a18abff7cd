"""Tripod or hand, and the steps in which the camera's dials click."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.inventory import GONE, NOT_HERE, TRIPOD, is_asked_about, is_denied
from bot.dialogue.reading.phrases import any_of

_SAID: Final = any_of(TRIPOD)
#: "Forgot the tripod plate": a part, not the tripod.
_PART: Final = r"(?! ?(?:plate|head|bag|shoe|foot|screw|mount|collar))"
_ELSEWHERE: Final = any_of(
    rf"{TRIPOD}\b[^,;.]{{0,12}}\b{NOT_HERE}",
    rf"(?:left|forgot|forgotten)\b(?! (?:her|his|their)\b)[^,;.]{{0,12}}\b{TRIPOD}\b{_PART}",
    r"(?:the|my) (?:legs|sticks) (?:are|stayed|were left|is) (?:in|at|back|with|behind)",
    r"(?:left|forgot) (?:the|my) (?:legs|sticks)",
    rf"no {TRIPOD},? (?:i )?(?:left|forgot) it",
)
_STANDS_ON_IT: Final = any_of(
    r"(?<!landed )(?<!perched )(?<!sits )(?<!sat )(?:on|over|onto|upon|atop) (?:a|the|my"
    rf"|our) (?:\w+ ){{0,2}}{TRIPOD}"
    rf"(?! (?:plates?|head|legs?|feet|foot|collar|bag|screws?))|(?<!not )on {TRIPOD}",
    rf"{TRIPOD} (?:is |now )?(?:up|set up|out(?=$|[,.;])|at|level|stands)",
    rf"{TRIPOD}(?:'s)? (?:is |now |legs |are |all |right |here )*"
    r"(?:(?:up|set)(?! (?:of|to|at)\b)|standing|under|beneath|below|splayed|spread"
    r"|squashed|flat|planted)",
    rf"{TRIPOD}\b[^.;]{{0,36}}\b(?:under|beneath) (?:it|the camera|my camera|me)",
    r"camera(?:'s| is)? (?:\w+ )?on (?:it|sticks|legs|the sticks)|on (?:the |my )?(?:sticks|legs)",
    r"(?:stands|stood|set|put|sits|sitting|standing)(?: (?:it|up|the camera))* on (?:three|3) legs",
    rf"(?:using|shooting (?:off|from)|with the camera on) (?:a|the|my) {TRIPOD}"
    rf"|{TRIPOD}[ -]mounted",
    rf"(?:set|put|stuck|mounted) (?:it|the camera|my camera|everything) (?:up )?on (?:a|the"
    rf"|my) {TRIPOD}",
)
#: "My daughter left hers in the hut, mine's right here under the camera".
_MINE_STANDS: Final = any_of(
    r"mine(?:'s| is)? [^.;]{0,16}\b(?:under|beneath|below|here|set up|up)\b(?: (?:it|the camera"
    r"|my camera|me))?"
)
#: Owned no more, or not to be used: unlike one that waits in the car.
_LOST: Final = any_of(
    rf"{TRIPOD}(?: is|'s)? (?:no use|useless|bust|broken|unusable)",
    rf"used to (?:have|own) (?:an? |my )?{TRIPOD}\b[^.;]{{0,30}}\b(?:broke|broken|{GONE})",
    rf"{TRIPOD}(?: just| leg)* (?:broke|has broken|fell apart)",
    rf"{TRIPOD}\b[^,;.]{{0,20}}\b{GONE}",
    rf"(?:forgot|forgotten|lost|left|broke|missing)[^,;.]{{0,8}} (?:plate|head|clamp|screw) (?:for"
    rf"|of|from)"
    rf" (?:the|my) {TRIPOD}",
    rf"(?<!not )(?<!n't ){GONE}\b[^,;.]{{0,12}}\b{TRIPOD}",
)
#: "A rock as a tripod", "tripods are not allowed".
_NO_TRIPOD: Final = any_of(
    rf"my {TRIPOD}(?:'s| is) (?:an?|my|the) (?!carbon|travel|cheap|old|small|mini|little)\w+",
    rf"(?:as|like) (?:an? |my )?(?:\w+ )?{TRIPOD}",
    rf"{TRIPOD}s? (?:are |is )?(?:\w+ )?(?:allowed|forbidden|banned|welcome|prohibited|verboten)",
    rf"{TRIPOD}s? (?:are |is )?(?:a |an |the )?(?:no[ -]?go|not on|out of the question)",
    r"(?:\d+|two|three|four|five|six|seven|eight|nine|ten|a dozen|lots of|loads of|many|several"
    r"|dozens of|other(?: people's)?|their|students use the) (?:tripods|tri-?pods)",
)
_UNDECIDED: Final = re.compile(rf"\b{TRIPOD} or (?:hand|not|by hand|no)|\bhand[ -]?held or\b")
_TODAY: Final = any_of(
    rf"{TRIPOD}\b[^,;.]{{0,20}}(?:today|here|with me|this time|now)",
    rf"(?:today|here|this time|now)\b[^;.]{{0,20}}\b{TRIPOD}",
)
#: "So not handheld".
_NOT_HELD: Final = any_of(
    r"(?:not|no longer|isn't|aren't|never|n't|without) (?:\w+ )?hand[ -]?(?:held|holding)",
    r"(?:not|no longer|isn't|aren't|'m not|am not) (?:even )?holding (?:it|the (?:camera|cam"
    r"|phone))",
)
_HAND_HELD: Final = any_of(
    r"(?:shoot\w*|make|made|do|doing|take|took|taking|work\w*|photograph\w*|all|only|just|held)"
    r" (?:it |this |them )?(?:from|in|with|out of) (?:the |my |both )*hands?",
    r"hold(?:ing)? (?:it|the (?:camera|cam|phone)|my (?:camera|cam|phone)) (?:\w+ )?(?:in|with)"
    r" (?:my |both |the )*hands?",
    "hand[ -]?held",
    r"hand[ -]?hold(?:ing)?",
    "by hand",
    "from the hand|free-?hand(?:ed)?|off (?:my|the) hand",
    r"(?:hold\w*|held) (?:it|the camera|my camera|this) (?:\w+ )?in (?:my|the|both) hands?",
    r"(?:i'm|im|just|am) holding (?:it|the camera|my camera)",
)


_SHAKY_HANDS: Final = any_of(
    r"hands?(?: are| is|'re)? (?:\w+ )?(?:shak\w+|trembl\w+|wobbl\w+|unsteady)",
    r"(?:shak\w+|trembl\w+|unsteady) hands?",
)


_ON_STICKS: Final = any_of(
    r"on (?:the |my |three |3 )?(?:sticks|legs)",
    r"(?:got|have|brought) (?:the |my )?sticks(?: with me)?",
)


_NO_STICKS: Final = any_of(
    r"no (?:sticks|legs|stand)(?=\W*$|[,;.!]| (?:today|with me|here|this time|along|on this)\b)"
)


def read_support(draft: Draft) -> None:
    """Whether there is a tripod, and whether this frame is without support.

    "No tripod" is a fact of the kit; "in the car", "forgot", "today" are facts of this walk.
    """
    text = _NO_TRIPOD.sub("", draft.text)
    text = _NO_STICKS.sub("no tripod", text)
    if _UNDECIDED.search(text):
        return
    if _SAID.search(text) or _ELSEWHERE.search(text) or _ON_STICKS.search(text):
        _read_tripod(draft, text)
    lacks = draft.values.get("has_tripod") is False
    if _NOT_HELD.search(text):
        draft.note("hand_held", value=False)
    elif _HAND_HELD.search(text) or (lacks and _SHAKY_HANDS.search(text)):
        draft.note("hand_held", value=True)


def _read_tripod(draft: Draft, text: str) -> None:
    """A tripod that is named: gone, elsewhere, missing, or here and stood on."""
    if _MINE_STANDS.search(text):
        draft.note("has_tripod", value=True)
        draft.note("hand_held", value=False)
    elif _LOST.search(text):
        draft.note("has_tripod", value=False)
    elif _ELSEWHERE.search(text):
        draft.note("has_tripod", value=True)
        draft.note("hand_held", value=True)
    elif is_denied(text, TRIPOD):
        draft.note("has_tripod", value=False)
        if _TODAY.search(text):
            draft.note("hand_held", value=True)
    elif not is_asked_about(text, TRIPOD):
        draft.note("has_tripod", value=True)
        if _STANDS_ON_IT.search(text):
            draft.note("hand_held", value=False)


_DIAL: Final = r"(?:clicks?|dials?|increments?|wheels?)"
_HALVES: Final = any_of(
    r"(?:^|(?<=[,;] )|(?<=and )|(?<=in )|(?<=only ))(?:1/2|half)[ -]?stops(?= ?(?:$|[,.;]|and\b))",
    rf"(?:{_DIAL}|steps?)\b[^,;.]{{0,20}}\b(?:1/2|half|halves)",
    rf"(?:1/2|half)[ -]?stops? (?:{_DIAL}|steps?|camera|only)",
)
_THIRDS: Final = any_of(
    r"(?:^|(?<=[,;] )|(?<=and )|(?<=in ))(?:1/3|third)[ -]?stops(?= ?(?:$|[,.;]|and\b))",
    rf"{_DIAL}\b[^,;.]{{0,20}}\b(?:1/3|thirds?)",
    rf"(?:1/3|third)s?[ -]?stops? (?:{_DIAL}|steps?|camera)",
)


def read_dial(draft: Draft) -> None:
    """Whether the dials click in halves or in thirds; the fraction is no measure then."""
    halves = _HALVES.search(draft.text)
    match = halves or _THIRDS.search(draft.text)
    if match is None:
        return
    draft.note("dial_halves", value=halves is not None)
    for quantity in draft.free("stop", "click", ""):
        inside = match.start() <= quantity.start < match.end()
        if quantity.unit == "click" or (quantity.fraction and (inside or quantity.unit == "stop")):
            draft.claim(quantity)
