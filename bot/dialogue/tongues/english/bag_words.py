"""English words of what goes into the bag, and of what may stay at home."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "Can I leave the 14 at home?"
    "bag_words.leave": (
        r"(?:leave|leaving|keep) (?:\S+ ){0,5}?(?:at home|home|behind|in the (?:car|van|drawer))"
        r"|(?:can|could|should|may|shall|do) (?:i|we) (?:just |safely )?(?:leave|drop|skip|ditch"
        r"|do without|go without)|(?:stays?|staying|stay) (?:at )?(?:home|behind|in the car)"
        r"|leave it(?= ?[?.!]|$)|not (?:bring|take|carry|pack)"
    ),
    # "Do I need the 10 stop?", "is the 70-200 worth carrying?"
    "bag_words.bring": (
        r"(?:do|will|would|should|must|shall) (?:i|we) (?:really |even |also |actually )*(?:need"
        r"|bring|pack|take|carry|want)|(?:is|are) (?:\S+ ){1,6}?(?:worth (?:it|carrying|bringing"
        r"|packing|taking|the weight)|needed|necessary|any use|of (?:any )?use)"
        r"|is it worth (?:carrying|bringing|packing|taking)|is (?:the |my )?\S+ enough"
        r"|(?:any|much) use for|any point (?:in )?(?:bringing|carrying|taking)"
    ),
    "bag_words.which_filters": (
        r"(?:which|what) (?:of (?:my|the) )?filters?\b[^?.;!]*\b(?:bring|pack|take|carry|need|leave"
        r"|come|go in)"
        r"|filters?\b[^?.;!]*\bwhich (?:ones?|of (?:them|those))\b[^?.;!]*\b(?:bring|pack|take"
        r"|carry|need|leave)"
    ),
    "bag_words.list": (
        r"pack(?:ing)? list|(?:what|anything)(?: else)? (?:goes|do i put|should (?:i|we) put|to put"
        r"|belongs|should go|needs to go) (?:in|into)\b|what(?: else)? (?:do|should|must|shall) "
        r"(?:i|we) (?:pack|bring|take(?! (?:a |the )?(?:shot|picture|photo|frame))|carry)"
        r"|anything else to (?:bring|pack|take)|what(?:'s| is| goes)?(?: else)? in the bag"
    ),
    # What speaks of packing, before any visit is planned.
    "bag_words.packs": r"bring\w*|pack\w*|carry\w*|at home|in the (?:bag|car)|take along",
    "bag_words.the": r"the|my|your",
    "bag_words.stop": r"stops?|stopper",
    # What a permit may be needed for.
    "bag_words.tripod": r"tripods?",
    "bag_words.selling": r"sell\w*|sold|prints?|commercial\w*|fairs?|clients?|paid|for money",
    "bag_words.group": r"workshops?|courses?|class|students|group",
    "bag_words.drone": r"drones?",
    # Who names what they own.
    "bag_words.owns": r"i(?:['’]?ve| have| do)? (?:own|got|have|carry|only have|only own)",
}
