"""English words of who is home again, or wants to go through frames."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_PLACE: Final = (
    r"(?:at |in |back at |back in )?(?:home|the (?:hotel|hut|hostel|lodge|cabin|camper|flat|office)"
    r"|my (?:desk|computer|room|place|sofa|couch))"
)
_FRAMES: Final = r"(?:frames?|pictures?|photos?|shots?|pics?|images?|series|results?)"

WORDS: Final[Mapping[str, str]] = {
    "at_home.home": (
        rf"(?:i'?m|i am|we'?re|we are|am|got|getting|arrived|made it|now|finally|safely|just) "
        rf"(?:\w+ ){{0,2}}?{_PLACE}(?: (?:now|again|safe\w*))*(?! to\b)"
        r"|(?:back |safe(?:ly)? )(?:at )?home"
        r"|(?:back |now |finally )?(?:on|in) (?:the|my) (?:sofa|couch|armchair|bed|kitchen"
        r"|living room)"
        r"|back (?:indoors|inside|in the warm)\b"
        r"|^(?:at )?home(?: (?:now|again|safe\w*|at last|dry))*(?= ?[,.;:!])(?!, sweet)"
        r"|^(?:at )?home(?: now| again| safe\w*)?(?=$|[,.;:! ]+(?:here|and)\b)"
    ),
    "at_home.review": (
        r"^review$"
        rf"|(?:review|critique|discuss|judge) (?:of )?(?:the |my |our |these |this "
        rf"|some )*{_FRAMES}|(?:go|look|going) (?:through|over|at) (?:the |my |our |these |this "
        rf"|all )*{_FRAMES}"
    ),
    "at_home.brings": (
        r"here (?:is|are|comes?|it is|they are|you go|'s)|here's|(?:send|sending|sharing|share"
        r"|show)\w*"
        rf" (?:you )?(?:the |my |one |it|them|a )*(?:{_FRAMES})?"
    ),
    # "I left it at home", "we are going home": said on the way, or of something else.
    "at_home.not_yet": (
        r"left|forgot\w*|going(?! (?:through|over)\b)|heading|walk\w*|driving"
        r"|(?:to|we|i|i'll) drive"
        r"|on (?:my|our|the) way|when|once|before|until|if|will|tomorrow|later"
    ),
}
