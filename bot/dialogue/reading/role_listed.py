"""A fall told in one list with a near thing is so far away: `fern 0.9 / fall 22 / far trees 70`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.role_words import FALL, FAR, NEAR
from bot.dialogue.reading.unit_words import METRES

_LINK: Final = r"(?:(?: ?[=:-]| is| are| at| about| maybe| roughly| some| ca\.?)+)? ?"
_ARTICLE: Final = r"(?:(?:the|my|a|an|our|first|nearest|closest|front|next|mossy|big|small|and) )*"
_FALL_ALONE: Final = re.compile(
    rf"[^a-z]*{_ARTICLE}(?:{FALL}|water|main(?: subject)?|subject){_LINK}"
)
_NEAR_ALONE: Final = re.compile(rf"(?:.*[.:;?!,])? ?{_ARTICLE}(?:\w+ )?(?:{NEAR}){_LINK}")
_FAR_ALONE: Final = re.compile(
    rf"[^a-z]*{_ARTICLE}(?:\w+ ){{0,3}}?(?:{FAR}|\w+ (?:at|in) the (?:back|rear))(?: \w+)?{_LINK}"
)
#: A lone wall may be the one that the water falls down.
_LONE_WALL: Final = re.compile(rf"[^a-z]*(?:the )?wall{_LINK}")
#: Depth is what is asked of.
_OF_DEPTH: Final = re.compile(
    r"\b(?:focus\w*|sharp\w*|depth of field|dof|hyperfocal|in focus|depth)\b"
)
_SIZE: Final = re.compile(r"^ ?-?(?:tall|high|wide|deep|long|in height|drop|from)\b")


def listed_fall(draft: Draft, quantity: Quantity) -> bool:
    """Whether a fall's number is its distance, since it stands among things told by theirs.

    Args:
        draft: the message.
        quantity: the number that stands behind the fall.
    """
    near, far = draft.neighbour(quantity, -1), draft.neighbour(quantity, 1)
    if near is None or not _FALL_ALONE.fullmatch(draft.before(quantity)):
        return False
    if not _NEAR_ALONE.fullmatch(draft.before(near)) or _SIZE.match(draft.after(quantity)):
        return False
    if not _metres(near) < _metres(quantity):
        return False
    return _OF_DEPTH.search(draft.text) is not None or (
        far is not None and _is_beyond(draft, quantity, far)
    )


def _is_beyond(draft: Draft, quantity: Quantity, far: Quantity) -> bool:
    """Whether the list goes on with a thing that is further away."""
    words = draft.before(far)
    named = _FAR_ALONE.fullmatch(words) and not _LONE_WALL.fullmatch(words)
    return bool(named) and _metres(quantity) < _metres(far) and not _SIZE.match(draft.after(far))


def _metres(quantity: Quantity) -> float:
    """Bare numbers of one list are in one unit."""
    return quantity.value * METRES.get(quantity.unit, 1.0)
