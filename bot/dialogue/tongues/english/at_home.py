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
        rf"|all |\d+ )*{_FRAMES}"
    ),
    # Where one begins to sort.
    "at_home.sort": (
        r"(?:where|how) (?:(?:do|should|shall|can|would|best|to|i|we|one|you) )+"
        r"(?:(?:begin|start)(?= ?[?.!,]|$| (?:sort|cull|weed|going through|with (?:them|these"
        r"|so many|(?:the|all) (?:frames|pictures|photos|shots))))|sort|cull|weed)"
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
        r"|(?:want|wish|like|love|can'?t wait|need) (?:\w+ ){0,2}?(?:be|get|go) (?:back )?home"
    ),
    # A part of a sentence that says so by itself: "caught the bus, home with tea now".
    "at_home.back": (
        r"(?:(?:and|so|now|then|i'?m|we'?re|am|back|safely) )*home"
        r"(?: (?:now|again|at last|safe|dry|with (?:a |my |some )?(?:cup of )?\w+))+"
    ),
    # Who only longs for it.
    "at_home.wished": r"want\w*|wish\w*|wanna|can'?t wait|would rather|soon",
    # Before the walk: nobody has left yet.
    "at_home.still": (
        r"still(?: (?:sitting|just|all|here|only|eating|having \w+|over \w+|busy))*"
        r" (?:at|in|on) (?:home|the (?:kitchen"
        r"|house|sofa|couch|hotel|hut|lodge|office)|my (?:desk|kitchen|room))"
        r"|(?:still|not even out of|not out of) (?:home|the house|the door|bed)"
        r"|haven'?t (?:even )?(?:left (?:home|the house)|set (?:off|out)|gone out)"
    ),
    # What only somebody says who stands there.
    "at_home.at_water": (
        r"(?:tripod|camera)(?:'s| is| stands)? (?:already |now )?(?:up|set(?: up)?|standing|out)\b"
        r"|(?:i'?m|we'?re|i am|we are|now|still) (?:\w+ ){0,2}?(?:at|on|by|beside|in front of) the"
        r" (?:platform|bridge|bank|boardwalk|gravel|railing|footbridge|pool|waterfall|falls?|creek"
        r"|stream|viewpoint|water(?:'s edge)?)(?: now|$|,)"
        r"|^at the (?:platform|bridge|railing|viewpoint|water|falls?|creek|pool) now"
        r"|(?:i'?m|i am|we'?re|we are|i|we|still|now) (?:still |now |just |right )*stand(?:ing)?"
        r" (?:right |here |still |there )*(?:in front|before|at|on|by|beside|here|about|some|\d)"
        r"|(?:i'?m|we'?re|i am|we are) (?:still )?(?:right )?in front of (?:it|the \w+)"
        r"|(?:haven'?t|not) moved(?= ?(?:yet|[,.;!?]|$))"
    ),
    # No frame is there to be gone through.
    "at_home.none_taken": (
        r"(?:(?:haven'?t|have not)(?: even| actually)? (?:taken|shot|made|got)"
        r" (?:any|one|a(?: single)?)"
        rf"|(?:i|we) have(?:n'?t)? (?:got )?(?:no|any))(?: {_FRAMES})?"
        r"(?= ?(?:yet|at all|so far|[,.;!?]|$))"
        rf"|no {_FRAMES} (?:yet|taken|so far)|(?:about|of) the old (?:picture|photo|frame|shot|one)"
    ),
    # What is asked for a frame to come.
    "at_home.asks_now": (
        r"(?:what|where) (?:do|should|shall) (?:i|we) (?:focus|set|start|use)"
        r"|(?:which|what) (?:lens|aperture|f-?stop|shutter|settings?|filter|time) (?:do|should"
        r"|shall) (?:i|we)|what do (?:i|we) (?:set|dial)"
    ),
    # What was, or is asked for another time.
    "at_home.of_then": (
        r"was|were|had|did"
        r"|in (?:the|this|that) (?:\w+ )?(?:one|frame|picture|photo|shot)"
        r"|(?:should|would|could) (?:(?:i|we) )?have|next time|tomorrow|last"
    ),
}
