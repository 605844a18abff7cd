"""Lengths that are none of this place: of a drive, a way behind us, a person, another thing."""

from __future__ import annotations

import math
import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.other_things import is_beside, is_of_other_thing
from bot.dialogue.reading.role_words import ELSEWHERE, FALL, OTHER_TALL, TALL_NAMED, TALL_OTHER
from bot.dialogue.reading.roles import role
from bot.dialogue.reading.unit_words import METRES
from bot.dialogue.tongues.english.people import KIN

_DRIVE: Final = re.compile(
    r"\b(?:drive|drove|driving|car ride|flight|by (?:car|bus|train|bike)"
    r"|(?<!to the )(?<!to our )(?<!to my )(?:train|bus))\b"
)
#: What was driven is told in one sentence; a way on foot behind it is walked.
_SENTENCE: Final = re.compile(r"[.;!?](?=\s|$)")
_ON_FOOT: Final = re.compile(
    r"\b(?:walk\w*|hik\w+|trail|path|approach|on foot|way in|(?:each|one) way)\b"
)
#: "Walked 2 km already" is behind us, the way back may be another.
_WALKED: Final = re.compile(r"\b(?:walked|hiked|ran|run|did|done|covered|came)\b")
#: "Still 3 km to go": what is left of the way in.
_STILL: Final = re.compile(r"\b(?:still|another|faltan|quedan)(?: about| maybe| some)? ?$")
_TO_GO: Final = re.compile(r"^ ?(?:more )?(?:to go|left|remaining|ahead|more)\b")
_HOMEWARDS: Final = re.compile(r"\b(?:walk|back|out|car|road|parking|trail ?head)\b")
_ALREADY: Final = re.compile(r"\b(?:already|to go|so far|today|behind us|this morning)\b")
_SOMEBODY: Final = re.compile(
    rf"\b(?:i'm|im|i am|he's|she's|(?:he|she|{KIN})(?: is|'s))(?: about| only)? ?$"
)
_TALL: Final = re.compile(r"^ ?(?:tall|high)\b")
#: "I'm 6'1": feet and inches as people tell their own height [m] (own rule).
_OWN_HEIGHT_M: Final = (1.3, 2.15)
_OWN_FORM: Final = re.compile(r"\d ?(?:'|ft|foot|feet) ?\d|^1[4-9]\d ?cm|^1[.,][5-9]\d? ?m")
_PLACED_BEHIND: Final = re.compile(r"^ ?(?:away|from|back|off|to|above|in front)\b")
_PART_BEFORE: Final = re.compile(
    r"\b(?:each|every|elevation|altitude"
    r"|(?:upper|lower|first|second|third|other|bigger|smaller|top|bottom)"
    r" (?:one|drop|step|tier|part|half))(?: is| of| about)? ?$"
)
_PART_BEHIND: Final = re.compile(
    r"^ ?(?:(?:further|farther|closer|nearer|lower|higher)(?! than)"
    r"|each(?! way)|apiece|down(?! to the (?:water|pool|river|foot))"
    r"|(?:further |farther )?(?:down|up)(?:stream| the (?:trail|path|road|river))"
    r"|above (?:the )?sea(?: level)?|a?m?sl|altitude|elevation\b(?! gain))\b"
)
#: "The fall is 3 miles up the trail".
_UP_A_TRAIL: Final = re.compile(r"^ ?(?:further |farther )?(?:down|up) the (?:trail|path)\b")
_ANOTHER: Final = re.compile(r"\b(?:another|other|next|second|third|also|more|bigger|smaller)\b")
#: "Moved 3 m back", "shifted the tripod a foot over": how far somebody went, not where from.
_MOVED: Final = re.compile(
    r"\b(?:went|moved?|stepped|walked|go|step|shuffled|backed|climbed|crept|shifted|slid|nudged)"
    r"(?: (?:the|my|our) (?:tripod|camera|phone|legs|lens|rig|setup|whole thing)| it| everything)?"
    r"(?: up| back| down| over)?"
    r"(?: about| another| maybe| some)? ?$"
)
_BY_SO_MUCH: Final = re.compile(
    r"^ ?(?:to (?:the|my|one) (?:left|right|side)|over\b|sideways|left\b|right\b"
    r"|back\b|closer|nearer|forwards?|further|farther|up\b|down\b|in\b)"
)
#: A step aside for the sake of an edge is no longer than this [m] (own rule).
_NUDGE_M: Final = 1.0
_ASIDE: Final = re.compile(
    r"^ ?(?:to (?:the|my|one) (?:left|right|side)|over\b|sideways|left\b|right\b)"
)
#: "35 tilted a touch covers 22 m of height", "22 was what the lens took in": of a lens, which no
#: wish for a part of the fall is.
_COVERS: Final = re.compile(
    r"\b(?:covers|covered|takes in|took in)"
    r"(?: (?:me|us|about|only|just|roughly|around|some|maybe))* ?$"
)
_WISHED: Final = re.compile(r"\b(?:want|wanted|should|shall|would|like|wish|need)\b")
_WHAT_IT_COVERS: Final = re.compile(
    r"^ ?(?:is |was |being )?(?:just |only )?what (?:(?:the|my|a|that|it|this) ?)?(?:\w+ )?"
    r"(?:covers|covered|takes in|took in|takes|took|shows|showed|holds|held|sees|saw)\b"
)
_FOCUSED: Final = re.compile(r"\b(?:focus\w*|hyperfocal|autofocus)\b")
_ELSEWHERE: Final = re.compile(
    rf"\b{ELSEWHERE}(?: is|'s| are| lies| was)?(?: about| only| just| maybe| some)* ?$"
)
_LIES: Final = re.compile(r"^ ?(?:away|off|back|from here|down|up|further|behind)\b")
_OTHER_WIDTH: Final = re.compile(
    r"(?<!\w)(?![^,;.]*\b(?:spread|fan|pour|spill)\w*)"
    r"\b(?:path|trail|bridge|pool|gorge|canyon|ledge|gap|road|platform|valley|track|ravine"
    r"|boulder)\b"
    r"[^,;.]{0,16}$"
)
_WIDE_OTHER: Final = re.compile(
    r"^ ?-?wide (?:\w+ )?(?:pool|path|trail|bridge|ledge|gap|gorge|road|platform|valley|track"
    r"|boulder|rock|crack|pond|lake)\b"
)
_PRINTED: Final = re.compile(
    r"\b(?:print\w*|calendar|poster|canvas|lobby|frame it|on the wall|enlarge\w*)\b"
)
_WIDE: Final = re.compile(
    r"^ ?(?:wide|across(?! (?:the|an?|this|from|to)\b)|in width|long|in diameter)\b"
)
#: "The snow is 20 cm deep": nothing that anybody would wade through.
_OTHER_DEPTH: Final = re.compile(
    r"\b(?:snow|schnee|nieve|mud|sand|ice|silt|litter|hole|cave)\b[^,;.]{0,16}$"
)
_DEEP: Final = re.compile(r"^ ?(?:deep|of (?:snow|mud|sand|ice))\b")


def is_somebodys_height(draft: Draft, quantity: Quantity) -> bool:
    """Whether a bare number tells how tall somebody is: `he's about 6 tall`."""
    somebody = _SOMEBODY.search(draft.clause_before(quantity))
    return somebody is not None and _TALL.match(draft.after(quantity)) is not None


def _is_nudge(quantity: Quantity, before: str, after: str) -> bool:
    """Whether the tripod went aside by so little that the fall is as far away as it was."""
    metres = quantity.value * METRES.get(quantity.unit, math.inf)
    return metres <= _NUDGE_M and bool(_MOVED.search(before) and _ASIDE.match(after))


def is_covered(draft: Draft, quantity: Quantity) -> bool:
    """Whether a length is what a lens was said to take in: neither the fall nor a wished part."""
    before, after = draft.clause_before(quantity), draft.clause_after(quantity)
    covers = _COVERS.search(before) and not _WISHED.search(before)
    return bool(covers or _WHAT_IT_COVERS.match(after))


def _is_no_way_out(draft: Draft, quantity: Quantity) -> bool:
    """Whether kilometres are driven, behind us, or left of the way in."""
    before, after = draft.clause_before(quantity), draft.clause_after(quantity)
    still = (_STILL.search(before) or _TO_GO.match(after)) and not _HOMEWARDS.search(after)
    return bool(
        _is_driven(draft, quantity)
        or (_WALKED.search(before) and _ALREADY.search(draft.text))
        or (still and "walk_km" not in draft.expecting)
    )


def _is_driven(draft: Draft, quantity: Quantity) -> bool:
    """Whether kilometres are those of a drive: `40 miles to drive`, not the trail behind it."""
    before, after = _SENTENCE.split(draft.before(quantity))[-1], draft.clause_after(quantity)
    drive = _DRIVE.search(before)
    on_foot = drive is not None and _ON_FOOT.search(before[drive.end() :] + after) is not None
    return not on_foot and _DRIVE.search(before + after) is not None


#: "Then nothing until some boulders at 10 m": what comes behind the nearest, and is not the water.
_NEXT_THING: Final = re.compile(
    r"\b(?:nothing|none|empty|clear|free)(?: (?:else|more|really|much|there|at all|near))*"
    rf" (?:until|till|til|before|up to|to)\b(?![^.;]*\b(?:{FALL}|water|stream|river|creek)\b)"
    r"[^.;,]*$"
)


def _is_behind_the_nearest(draft: Draft, quantity: Quantity) -> bool:
    """Whether a length is of what comes next behind one that was told."""
    earlier = draft.neighbour(quantity, -1)
    told = earlier is not None and earlier.unit in METRES
    return told and _NEXT_THING.search(draft.before(quantity)) is not None


def is_elsewhere(draft: Draft, quantity: Quantity) -> bool:
    """Whether a length is none of this place: a drive, a way behind us, somebody's own height."""
    before, after = draft.clause_before(quantity), draft.clause_after(quantity)
    if is_of_other_thing(draft, quantity) or _is_behind_the_nearest(draft, quantity):
        return True
    if is_covered(draft, quantity) or _is_nudge(quantity, before, after):
        return True
    if quantity.unit in {"km", "mi"}:
        return _is_no_way_out(draft, quantity)
    if not _SOMEBODY.search(before):
        return False
    metres = quantity.value * METRES.get(quantity.unit, 0.0)
    if metres <= _OWN_HEIGHT_M[1] and _TALL.match(after):
        return True
    return (
        _OWN_HEIGHT_M[0] <= metres <= _OWN_HEIGHT_M[1]
        and _OWN_FORM.search(quantity.text) is not None
        and not _PLACED_BEHIND.match(after)
    )


_HIGH_AND: Final = re.compile(r" ?(?:tall|high|wide|long)(?:,| and|,? by| x)+ ?")
_TALL_FALL: Final = re.compile(rf"^ ?-?(?:tall|high) (?:{FALL})\b")


def _is_other_sized(draft: Draft, quantity: Quantity) -> bool:
    """Whether a size is another thing's: `big boulder, 2 m tall`, `and 3 m wide`."""
    after, earlier = draft.clause_after(quantity), draft.neighbour(quantity, -1)
    tall = _TALL.match(after) is not None and _TALL_FALL.match(after) is None
    if tall and TALL_NAMED.search(draft.before(quantity)):
        return True
    goes_on = _HIGH_AND.fullmatch(draft.before(quantity)) and (tall or _WIDE.match(after))
    return bool(goes_on) and earlier is not None and is_other(draft, earlier)


def _is_elsewhere_off(before: str) -> bool:
    return _ELSEWHERE.search(before) is not None


_HOME: Final = re.compile(r"\b(?:cars?|car ?park|parking|trail ?head|road|ute|van)\b")


def _is_way(quantity: Quantity, before: str) -> bool:
    """Whether kilometres lead to where the way ends: `the car's 2 km off`."""
    return quantity.unit in {"km", "mi"} and _HOME.search(before) is not None


def _is_way_up(draft: Draft, quantity: Quantity) -> bool:
    """Whether kilometres go up a trail to the water itself, and not to another one there."""
    far = quantity.unit in {"km", "mi"} and _UP_A_TRAIL.match(draft.clause_after(quantity))
    return bool(far) and not _ANOTHER.search(draft.before(quantity))


def is_other(draft: Draft, quantity: Quantity) -> bool:
    """Whether a length is of another place or of a part: `800 m downstream`, `each 4 m`."""
    before, after = draft.clause_before(quantity), draft.clause_after(quantity)
    wide = quantity.unit not in {"km", "mi"} and _WIDE.match(after)
    return bool(
        (wide and _PRINTED.search(draft.text))
        or is_beside(draft, quantity)
        or _PART_BEFORE.search(before)
        or (_PART_BEHIND.match(after) and not _is_way_up(draft, quantity))
        or (_MOVED.search(before) and _BY_SO_MUCH.match(after))
        or (_FOCUSED.search(before) and role(draft, quantity) not in {"nearest_m", "farthest_m"})
        or (_is_elsewhere_off(before) and _LIES.match(after) and not _is_way(quantity, before))
        or (_OTHER_WIDTH.search(before) and wide)
        or _WIDE_OTHER.match(after)
        or _is_other_sized(draft, quantity)
        or (_TALL.match(after) and (OTHER_TALL.match(before) or TALL_OTHER.match(after)))
        or (_OTHER_DEPTH.search(before) and _DEEP.match(after))
    )
