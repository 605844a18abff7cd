"""English words: a "no" that leaves things there, comes later, or refuses."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "left_open.things": r"tripod|camera|gear|kit|bag|backpack|remote|dog",
    "left_open.still": r"still|there|left|leave|leaving|forgot|behind|get it|fetch",
    "left_open.from_there": (
        r"from (?:up |out |down |over )?there|(?:stay|stand|go|be|sit|climb|use"
        r"|shoot) (?:\w+ )?there"
    ),
    "left_open.later": (
        r"later|soon|in (?:a|\d+|one|two|five|ten) (?:\w+ )?(?:minutes?|mins?|moment|sec\w*)"
        r"|(?:will|ill|well|going to|gonna|about to) (?:go|be|climb|stand|step|walk) (?:back )?"
        r"(?:out )?there"
        r"|(?:goes|going|went|runs|ran|gone) back(?: down| in| up)? (?:for|to get) \w+"
        r"|(?:getting|gets|fetching|fetches) (?:it|the \w+)"
    ),
    # Down from there, but where to: the path, or a ledge.
    "left_open.climbed": r"(?:climbed|climbing|scrambled) (?:\w+ )?(?:down|off|back)(?= [.,]|$)",
    "left_open.no": r"no|nope",
    "left_open.yes": r"yes|yeah|yep",
    "left_open.refusal": r"no|nope|nah|none",
    # What stands behind it, up to the end.
    "left_open.refused": (
        r"thanks?(?: you)?|way|chance|need"
        r"|(?:its|thats|it is|that is) (?:is )?(?:fine|ok|okay)"
        r"|of your (?:business|concern)|i know\b.*|i wont (?:move|leave|come)\b.*"
        r"|im not (?:moving|leaving|coming)\b.*"
        r"|(?:he|she|they) (?:wont|dont|doesnt|arent|isnt) (?:listen|com|stop|leav|mov|budg)\w*\b.*"
        r"|(?:im|i am|were|we are) (?:sitting|standing)"
    ),
    "left_open.here": r"here",
    # A setting that is asked for behind an answer: "back on the path, which shutter?"
    "left_open.and": r"so|and|now",
    "left_open.which": r"what|which|how",
    "left_open.setting": r"settings?|shutter|time|aperture|f-?number|lens|filter|long|exposure",
    # A thing that was left, where nobody says that they fetch it.
    "left_open.abandoned": r"(?:left|had to leave|forgot|lost)(?: \w+){0,3}?(?: behind| there)?",
    # Somebody who is there, by a name that nobody knows.
    "left_open.is_there": (
        r"^(?:and |but |only |just )*(?!(?:nobody|noone|none|one|it|that|this|sun|sky|light|foam"
        r"|who)s?\b)\w+ ?(?:is|s|are|stands?|sits?) (?:still |now )?(?:on the (?:top|lip|edge"
        r"|ledge|brink|rocks?)|(?:up|out|over) there)"
    ),
}
