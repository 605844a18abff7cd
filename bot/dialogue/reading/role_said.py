"""Which length a number is by a whole turn of speech: `the veil hangs at 11`, `lens at 2 ft 8`."""

from __future__ import annotations

import re
from typing import Final, NamedTuple

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.role_words import FALL, FAR, NEAR
from bot.dialogue.reading.unit_words import LENGTH, METRES

_HEDGES: Final = (
    r"(?:(?:about|around|roughly|maybe|some|say|so|that's|that is|which is|i'd say|i guess|i think"
    r"|call it|make it|let's say|or|probably|just|only|at|is|it's|its|good|nearly|almost|like"
    r"|perhaps|well)[ ,:]+)*$"
)
_WATER: Final = rf"(?:(?:{FALL}|veil|horsetail|ribbon|water|foot|base|edge)(?: itself)?)"
_GLASS: Final = r"(?:lens|glass|front element|sensor)"
_CAMERA: Final = rf"(?:camera|cam|tripod|{_GLASS})"
_PLACE: Final = (
    r"(?:bank|shore|side|bridge|footbridge|viewpoint|platform|path|trail|beach|lookout|overlook|deck"
    r"|boardwalk|balcony|jetty|meadow|road|steps|stairs|landing|terrace|walkway|railing|rail)"
)
_SHOOTS: Final = r"(?:shoot\w*|shot|photograph\w*|framing it|taking it|take it|set up|setting up)"
_WHOLE: Final = rf"(?:(?:whole|entire|full) (?:thing|lot|{FALL})|all of it)"
#: Behind a number: its clause ends there.
_ENDS: Final = (
    r"(?: ?\)| or so| roughly| i guess| i think)*\s*(?:$|[.;,!?]|(?:and|but|because|now)\b)"
)


class _Turn(NamedTuple):
    """What stands before a number, up to it, and behind it; `bare`: it may lack its unit."""

    slot: str
    before: re.Pattern[str]
    behind: re.Pattern[str]
    bare: bool


def _turn(slot: str, before: str, behind: str = _ENDS, *, bare: bool = False) -> _Turn:
    return _Turn(slot, re.compile(before), re.compile(rf"^ ?{behind}"), bare)


_TURNS: Final = (
    #: "I'd guess the drop at 11 m", "we passed a big fall, this one has 9 m".
    _turn(
        "fall_height_m",
        rf"\b(?:guess|estimate|put|reckon|judge|size|take) (?:the |this |that )?(?:{FALL})"
        rf" (?:up )?(?:at|for|to be) {_HEDGES}"
        rf"|\b(?:{FALL}|one)\b.*\b(?:this one|ours|today's)(?:'s| is| has| measures) {_HEDGES}",
    ),
    #: "A sixty-foot monster", "H=12m D=20m".
    _turn("fall_height_m", "$|", r"-?(?:monster|giant|beast|whopper)\b"),
    _turn("fall_height_m", r"(?:^|[,;/ ])h ?[=:] ?$", "", bare=True),
    _turn("distance_m", r"(?:^|[,;/ ])d ?[=:] ?$", "", bare=True),
    #: "Tripod fully down, 28 cm to the lens", "I hold it overhead, 2.2 m".
    _turn(
        "camera_height_m",
        r"\b(?:tripod|legs)(?:'s| is| fully| all the way| flat| right| down| up| out| splayed)+"
        rf"[,:] {_HEDGES}",
        rf"to the {_CAMERA}\b",
    ),
    _turn("camera_height_m", rf"\b(?:overhead|(?:over|above) my head)[,:]* {_HEDGES}"),
    #: "So the lens is at 2 ft 8", "lens ends up at 1.1 m".
    _turn(
        "camera_height_m",
        rf"(?:^|[,;.(] ?|\b(?:so|and|but|then|now|with|that) )(?:(?:the|my|front) )*{_GLASS}"
        r"(?:'s| is| sits| ends up| comes out| stands| hovers| then| now| up| right)* at "
        rf"{_HEDGES}",
    ),
    #: "The front glass is 30 cm above the boards".
    _turn(
        "camera_height_m",
        rf"\b{_GLASS}(?:'s| is| sits| hovers| hangs| ends up| now)* {_HEDGES}",
        r"(?:above|over) (?:the |my )?\w+",
    ),
    #: "1.25 at the lens", where the tripod was spoken of.
    _turn(
        "camera_height_m",
        rf"\b(?:{_CAMERA}|height|higher|lower)\b.*",
        rf"at (?:the |my )?{_CAMERA}\b",
        bare=True,
    ),
    #: "I splayed the legs, so 25 cm", "centre column up, that's 1.75 m".
    _turn(
        "camera_height_m",
        rf"\b(?:legs|column|splay\w*)\b[^.;\d]{{0,25}}[,:] ?{_HEDGES}",
    ),
    #: "A bus length off the drop, call it 12 m", "three canoes from the water, so 15 m".
    _turn(
        "distance_m",
        r"\b(?:off|from|away from|back from|short of) (?:the |this |that )?"
        rf"{_WATER}[,;:(]+ ?{_HEDGES}",
    ),
    #: "I shoot from the bridge, 21 m", "we're on the opposite bank, 25 m".
    _turn(
        "distance_m",
        rf"\b{_SHOOTS}(?: \w+){{0,3}}? (?:from|off) (?:the |a |an |this )?(?:\w+ )?{_PLACE}[,:(]+ ?"
        rf"{_HEDGES}"
        r"|\b(?:from|on) (?:the |this )?(?:opposite|other|far) (?:bank|shore|side)(?: is)?[,:(]+ ?"
        rf"{_HEDGES}",
    ),
    #: "The rope stops us at 25 m so 25 m it is".
    _turn(
        "distance_m",
        r"\b(?:rope|sign|fence|barrier|rail\w*|tape|ranger|rule|closer|keep|stay)\b.*"
        r"\bso (?:it's )?$",
        r"it is\b",
    ),
    #: "I can get within 6 m", "no foreground, first thing is the fall, 20 m".
    _turn(
        "distance_m",
        rf"\b(?:get|got|come|came|go|stand|stay|be|am|i'm) (?:to )?within {_HEDGES}",
        rf"(?:of (?:it|the (?:{FALL}|water))\b|{_ENDS})",
    ),
    _turn("distance_m", rf"\bfirst thing(?: \w+){{0,3}} is the (?:{FALL})[, ]+{_HEDGES}"),
    #: "The whole thing from 35 m".
    _turn("distance_m", rf"\b{_WHOLE}(?: in(?: frame)?)?,? from {_HEDGES}"),
    #: "Another 110 across the gorge to the fall itself".
    _turn(
        "distance_m",
        rf"\b(?:another|still) {_HEDGES}",
        r"(?:more |further )?(?:(?:straight )?(?:across|over|through)(?: the| a)?(?: \w+)?|on)?"
        rf" ?to (?:the |our )?(?:\w+ )?(?:{FALL})\b",
        bare=True,
    ),
    #: "33 m straight across to the curtain", "the fall is in between, 14 m".
    _turn(
        "distance_m",
        "$|",
        rf"(?:straight |right |just )*(?:across|over) to (?:the )?(?:{FALL})\b",
    ),
    _turn(
        "distance_m",
        rf"\b{_WATER}[^.;\d]{{0,12}}\b(?:between(?: them| both| the two)?|halfway|in the middle)"
        rf"[, ]+{_HEDGES}",
    ),
    #: "The veil hangs at eleven".
    _turn("distance_m", rf"\b{_WATER} (?:hangs|sits|lies) (?:back )?at {_HEDGES}", bare=True),
    #: "Nothing farther than thirty", "farthest tree sixty".
    _turn(
        "farthest_m",
        r"\bnothing(?:'s| is)?(?: any)? (?:farther|further|beyond|past|more distant)"
        rf"(?: away| off| out| back)?(?: than)? {_HEDGES}",
        r"(?!(?:to|from|of) (?:the |it))",
        bare=True,
    ),
    _turn("farthest_m", rf"\b(?:farthest|furthest|most distant) \w+ {_HEDGES}", bare=True),
    _turn("farthest_m", rf"\blast thing [^.;\d]{{1,40}}[, ]{_HEDGES}"),
    #: "The cliff ends at 45 m", "the back wall (25 m)", "the fern (70 cm)".
    _turn(
        "farthest_m",
        rf"\b(?:cliffs?|ridge|pines|hills?|skyline|{FAR}) (?:ends|stops|begins|starts) at "
        rf"{_HEDGES}",
    ),
    _turn("farthest_m", rf"\b(?:{FAR}) \((?:at )?{_HEDGES}", r"\)"),
    _turn("nearest_m", rf"\b(?:{NEAR}) \((?:at )?{_HEDGES}", r"\)"),
    #: "The upper step is 8 m, the lower 5 m, total 13 m".
    _turn(
        "fall_height_m",
        r"\b(?:step|tier|drop|upper|lower)\b.*\b(?:total|altogether|in all|all told|together)[ :]*"
        rf"{_HEDGES}",
    ),
    #: "Trunk 30 cm thick at 2 m", "close: 0.5 m".
    _turn("nearest_m", rf"\b(?:{NEAR})\b[^.;,]{{0,24}} (?:thick|big|round|long),? at {_HEDGES}"),
    _turn("nearest_m", rf"\bclose ?[:=] ?{_HEDGES}"),
    #: "The last rock I care about is 40 m off".
    _turn(
        "farthest_m",
        rf"\blast (?:rock|tree|boulder|stone|bit)\b[^.;\d]{{0,25}} is {_HEDGES}",
        r"(?:off|away|out)\b",
    ),
    #: "80 cm, the fern".
    _turn("nearest_m", "$|", rf", (?:the|that|my) (?:{NEAR})\W*$"),
    _turn("nearest_m", rf"\b(?:nearest|closest|first) (?:{NEAR}) {_HEDGES}", bare=True),
    #: "A tad under, 1.9 m, is the rock".
    _turn("nearest_m", "$|", rf",? (?:is|to|for) (?:the |my |an? )?(?:{NEAR})\b"),
)
#: "Sharp till the cliff, 24 m": how far the picture goes.
_SHARP_TO: Final = re.compile(
    r"\b(?:sharp\w*|focus\w*|crisp|depth|right|all the way|clear)\b[^.;\d]{0,30}?"
    r"\b(?:till|til|until|to|up to|as far as) (?:the |that |my )?(?P<thing>[a-z' ]{3,30}?)[, ]+"
    rf"{_HEDGES}"
)
_SHARP_WHAT: Final = re.compile(
    rf"\b(?:(?P<farthest_m>{FAR}|wall|cliffs?|ridge|trees?|pines|hills?|skyline|mountains?)"
    rf"|(?P<nearest_m>{NEAR})|(?P<distance_m>{FALL}|water))\b"
)
#: "The drop stands at 40": so far away where other things are placed, else so tall.
_STANDS: Final = re.compile(rf"\b{_WATER} stands at {_HEDGES}")
_PLACED: Final = re.compile(rf"\b(?:{FAR}|{NEAR})\b[^.;]{{0,30}}\d|\d[^.;,]{{0,12}} behind\b")
#: "Spray at 10 m, so I backed off to 18".
_BACKED: Final = re.compile(
    r"\b(?:backed|stepped|moved|walked|pulled|crept|edged|shuffled)(?: \w+)?"
    rf" (?:off|back|away|out|in|up|closer|nearer) to {_HEDGES}"
    rf"|[,;] (?:and )?(?:us|me|i|we) at {_HEDGES}"
)
_SOON: Final = re.compile(rf"^ ?{_ENDS}")
_TALL: Final = re.compile(r"^ ?-?(?:tall|high|wide|deep|long|up|below|down|apart|thick)\b")
#: "Gone from 1.3 m to 40 cm".
_CHANGED: Final = re.compile(
    rf"\b(?P<go>[\w' ]{{0,40}})\bfrom (?:about )?\d[\d.]* ?(?:{LENGTH}|in|\"|'),? "
    r"(?:\w+ )?to (?:about )?$"
)
_LEVELS: Final = re.compile(
    rf"\b(?:{_CAMERA}|legs|column|lower\w*|rais\w+|higher|squat\w*|crouch\w*|kneel\w*|down|up)\b"
)
_WENT: Final = re.compile(r"\b(?:went|gone|moved|walked|come|came|stepped|crept|backed)\b")
#: "Height 18 m, sorry, that's the distance".
_NAMED: Final = {"distance": "distance_m", "height": "fall_height_m", "width": "fall_width_m"}
_RENAMED: Final = re.compile(
    r"^(?: (?:high|tall|away|back|off|wide))?[,.;-]* ?(?:(?:sorry|oops|no|wait|er|ah|oh)[,.]? )+"
    r"(?:that's|that is|that was|it's|it is|i mean|i meant) (?:the )?"
    r"(?P<name>distance|height|width)\b"
)
#: No tripod of anybody stands higher [m] (own rule).
_HIGHEST_M: Final = 3.0


def said_role(draft: Draft, quantity: Quantity) -> str | None:
    """The slot of a length that a turn of speech places; None where none does.

    Args:
        draft: the message.
        quantity: a length, or a number without a unit.
    """
    head, tail = draft.text[: quantity.start], draft.text[quantity.end :]
    if renamed := _RENAMED.match(tail):
        return _NAMED[renamed["name"]]
    if _TALL.match(tail) or quantity.unit in {"km", "mi"}:
        return None
    bare = quantity.unit == ""
    slot = _turned(head, tail, bare=bare) or _stands(draft, head, tail)
    return slot if slot or bare else _sharp_to(head, tail) or _changed(head, quantity)


def _turned(head: str, tail: str, *, bare: bool) -> str | None:
    """The slot of the first turn of speech that stands around a number."""
    found = (
        turn.slot
        for turn in _TURNS
        if (turn.bare or not bare) and turn.behind.match(tail) and turn.before.search(head)
    )
    return next(found, None)


def _stands(draft: Draft, head: str, tail: str) -> str | None:
    """Where the person or the fall stands, told beside other lengths."""
    if not _SOON.match(tail):
        return None
    backed = _BACKED.search(head) and _has_lengths(draft)
    beside = _STANDS.search(head) and _PLACED.search(draft.text)
    return "distance_m" if backed or beside else None


def _has_lengths(draft: Draft) -> bool:
    """Whether a length with its unit stands in the message, and no focal length."""
    units = {quantity.unit for quantity in draft.quantities}
    return "mm" not in units and not units.isdisjoint(METRES)


def _sharp_to(head: str, tail: str) -> str | None:
    """What the picture is to be sharp as far as."""
    said = _SHARP_TO.search(head) if _SOON.match(tail) else None
    what = _SHARP_WHAT.search(said["thing"]) if said else None
    return what.lastgroup if what else None


def _changed(head: str, quantity: Quantity) -> str | None:
    """`Gone from 1.3 m to 40 cm`: the camera where heights are spoken of, else the stand."""
    said = _CHANGED.search(head)
    if said is None:
        return None
    if _LEVELS.search(head):
        metres = quantity.value * METRES.get(quantity.unit, 1.0)
        return "camera_height_m" if metres <= _HIGHEST_M else None
    return "distance_m" if _WENT.search(said["go"]) else None
