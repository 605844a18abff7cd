"""English words of scenes and frames that are somebody else's, told to ask about them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Who is taught, and what comes of it.
    "of_others.learner": (
        r"students?|pupils?|participants?|beginners?|learners?|attendees?|trainees?|newbies?"
        r"|one of (?:mine|them|my \w+|the (?:students|others|group))|class|course|workshop"
    ),
    # One of them, as the one whose scene is told.
    "of_others.one": (
        r"(?:(?:an?|the|one|another|this|that|my|our|some|each) (?:\w+ )?)?(?:students?|pupils?"
        r"|participants?|beginners?|learners?|attendees?|trainees?|newbies?)"
        r"|one of (?:mine|them|my \w+|the (?:students|others|group))"
    ),
    "of_others.alone": (
        r"(?:an?|the|one|another|this|that|my|our|some|each) (?:\w+ )?(?:student|pupil|participant"
        r"|beginner|learner|attendee|trainee|newbie)"
        r"|one of (?:mine|them|my \w+|the (?:students|others|group))"
    ),
    "of_others.they": r"she|he|they",
    "of_others.their": r"her|his|their",
    # A further case behind the last one.
    "of_others.next": (
        r"(?:and |now |ok |then )*(?:another|the next|next|one more|a second|second"
        r"|here'?s another)"
        r"(?: one| frame| shot| picture| photo| case| example)?"
    ),
    # Asks for the cause of what went wrong.
    "of_others.cause": (
        r"what(?:'s| has| is| was)? (?:went |gone )?wrong|why|causes?|what happened|reason"
        r"|diagnos\w+"
        r"|is (?:that|it|this) (?:over|under|too|blown|clipped|shake|focus|diffraction)"
        r"|(?:over|under)[ -]?expos\w*|how (?:would|do|does|can) \w+ tell|what do (?:i|we) tell"
    ),
    # "Blown or too long": each of two causes of white without lines.
    "of_others.blown": r"blown|clipped|over[ -]?expos\w*|burn(?:t|ed)(?: out)?|too bright",
    "of_others.long": r"too long|too slow|time too long|long a time|motion|blur(?:red)?",
}
