"""English words: a wish to end one's life."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_SOMEBODY: Final = (
    r"(?:i|he|she|they|we|who|friend|wife|husband|son|daughter|brother|sister|mate|partner|mum|dad"
    r"|somebody|someone|just|really|says?|said|always|only|d|would)"
)
#: A manner of speaking goes on: "die laughing", "die down", "dead centre".
_DIE: Final = r"die(?! (?:laughing|of|from|for|down|off|away|out|here of))|be dead(?! cent)"

WORDS: Final[Mapping[str, str]] = {
    "despair.of_life": (
        rf"{_SOMEBODY}(?: {_SOMEBODY})*"
        r" (?:want|wants|wanted|wanting|like|going)(?: to)? "
        rf"(?:{_DIE}|end (?:it all|my life|his life|her life|their li(?:fe|ves))"
        r"|kill (?:myself|himself|herself|themselves))"
        r"|(?:wanna|id like to|gonna) (?:die(?! (?:laughing|of|from|for|down|off|away|out))"
        r"|kill (?:myself|himself|herself|themselves)(?! for))"
        r"|(?:wish|rather)(?: \w+){0,3} dead|dead rather than alive"
        r"|(?:kill|killing) (?:himself|herself|themselves)"
        r"(?! (?:laughing|on|up|getting|carrying|for|over))"
        r"|(?:is|am|are|feels?|feeling|being|m|s) suicidal(?! to)|suicide|suicidal thoughts"
        r"|(?:end|ending|take|taking) (?:my|his|her|their) (?:own )?li(?:fe|ves)"
        r"|(?:do|does|did)(?:nt| not) want to (?:live|be alive)"
        r"(?! (?:in|at|here|near|with|by|on|without|like|dangerously))"
        r"|no (?:reason|point) (?:to live|in living|living)(?! (?:here|in|near|without|at))"
        r"|(?:life|living) (?:isnt|is not|aint|not) worth|better off dead|self harm"
    ),
    # Beside a leap from a height it is no game.
    "despair.beside_a_leap": (
        r"nobody (?:cares|would (?:care|miss)|will (?:care|miss))|no one (?:cares|would miss)"
        r"|end it|cant go on|cannot go on|no point(?: any ?more)?|goodbye(?: forever| everybody)?"
        r"|crying|desperate|hates? (?:his|her|my|their) life|miss (?:him|her|me)"
    ),
}
