"""English words of who tells where they stand, what they came for, or that they are new to this."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_WATER: Final = "<arrival.water>"
_OK: Final = r"(?:<arrival.ok>\W+)*"
_BE: Final = r"(?:i'?m|i am|we'?re|we are|am)"
# What may follow: the hour, and what is with one; a second sentence would tell more.
_WITH: Final = r"(?: (?:now|today|here))*(?: (?:with|near|in the) [^,.;]*)?"
_I_WISH: Final = r"(?:(?:i|we)(?:'d| would)? )?(?:would )?(?:like|love|want|wish|hope|came|try)"
_TO_SHOOT: Final = (
    r"to (?:photograph|shoot|capture|(?:take|make|get) (?:\w+ ){0,3}?(?:photos?|pictures?"
    r"|shots?|pics?|frames?))"
)

WORDS: Final[Mapping[str, str]] = {
    "arrival.water": (
        r"(?:water)?falls?|cascades?|creeks?|streams?|rivers?|brooks?|gorges?|canyons?|pools?"
        r"|linns?"
    ),
    "arrival.ok": r"hi|hello|hey|ok(?:ay)?|so|well|linn|now|and|then|finally|(?:good )?morning",
    "arrival.arrived": (
        rf"{_OK}(?:{_BE} (?:\w+ )?|(?:standing |now )*(?=at |by |beside ))"
        rf"(?:at|by|near|in|on|beside|below|under)\b(?: \w+){{0,4}}?"
        rf" {_WATER}{_WITH}|{_OK}(?:(?:i|we)(?:'ve| have|'?m| am|'?re| are)? (?:just |finally )?)?"
        r"(?:stand(?:ing)? (?:at|by|near|in front of|on (?:the|a) (?:\w+ )?(?:platform|path|bridge"
        r"|viewpoint|deck|trail) (?:at|by|near|in front of|below|opposite))|reached|found"
        r"|arrived at|got to)\b"
        rf"(?: \w+){{0,4}}? {_WATER}{_WITH}|{_OK}(?:it'?s|it is|this is|there'?s"
        rf"|there is) (?:just |only )?an? (?:\w+ ){{0,3}}{_WATER}{_WITH}|{_OK}(?:{_BE} (?:here"
        rf"|there)(?: now)?|just arrived|we made it)"
    ),
    # The clause of a longer message that ends a plan: "ok we are here now. It's cloudy".
    "arrival.here": (
        rf"{_OK}{_BE} (?:finally |now |just )*(?:here|there|at the (?:water)?falls?)"
        r"(?: (?:now|at last|finally))*"
        rf"|{_OK}(?:i|we)?(?:'ve| have)? ?(?:just |finally |now )*(?:arrived|made it|got here)"
        r"(?: (?:now|here|at last|(?:at|to) the (?:water)?(?:falls?|water|spot|place)))*"
    ),
    # What tells of a frame, or of its fault.
    "arrival.of_a_frame": (
        r"too|lost|looks?|looking|picture|frame|photo|shot|image|came|turned|mush\w*|blur\w*|soft"
        r"|white|dark|bright|tiny in|small in|home"
    ),
    "arrival.new": (
        rf"{_OK}(?:i'?ve|i have|we'?ve|i|we) never (?:done|tried|did) (?:this|it|that)(?: before)?"
        rf"|{_OK}{_BE} (?:\w+ ){{0,2}}?(?:new|newbie|beginner)"
        r"(?: (?:to|at|in|with) (?:this|it|all this))?"
        rf"|{_OK}(?:it'?s |this is )?my first (?:time|fall|waterfall)(?: (?:here|ever))?"
        rf"|{_OK}(?:i have )?no (?:idea|clue) (?:what|how) .*|how does (?:this|it|that) (?:all"
        rf" )?work"
    ),
    # A greeting, and what everybody comes for: they tell of no frame.
    "arrival.wished": (
        r"good morning|(?:(?:i|we)(?:'d| would)? )?(?:would )?(?:like|love|want|wish"
        r"|hope) to (?:photograph|shoot|capture) (?:it|this|them)"
        rf"|{_I_WISH} {_TO_SHOOT}(?: (?:of|from|there|here|it|this|that|an?|the|\w*{_WATER}"
        rf"|today))*"
    ),
    # Who wants to photograph water, wherever they stand, is asked what a beginner is.
    "arrival.wished_fall": (
        rf"{_OK}{_I_WISH} {_TO_SHOOT}(?: (?:of|an?|the|this|that|some|small|little|big))*"
        rf" \w*{_WATER}"
        r"(?: (?:here|today|now))*"
    ),
    # Where a clause begins that may tell of the place, or ask what comes first.
    "arrival.and": r"and",
    "arrival.next_clause": r"i|we|what|how|would|want|like|love",
}
