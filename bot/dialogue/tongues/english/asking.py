"""English words by which a message asks."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

# Words that ask, but not in "what a shot", "wie schön", "qué bonito".
_WHAT: Final = r"what(?! (?:now|an?|für)\b)|how(?! (?:lovely|nice|beautiful|cool|great|pretty))"

WORDS: Final[Mapping[str, str]] = {
    # How a question begins when it lacks its mark.
    "asking.begins": (
        r"(?:(?:and|so|but|ok|okay|hi|hey|linn|please)\W+)*"
        rf"(?:whats|(?:(?:in|at|on|from|to|with|for|by|into) )?(?:{_WHAT}|which|where)|does?"
        r"|do(?= (?:i|we|you|they)\b)|should|can(?!['’]?t\b)|could|is|are|am i|why|when|may|raw"
        r"|white balance|wb)\b"
    ),
    # How a question begins behind something told: "no tripod, can it be done".
    "asking.begins_behind": (
        rf"(?:{_WHAT}|which|where|why|when|can|could|should|shall|may|will|would"
        r"|do (?:i|we|you)|does|is (?:it|that|this|there|the|my|our)|was (?:it|that)"
        r"|are (?:there|the|they|my|our)|am i"
        r"|any (?:way|use|point|good|trouble|chance|harm|tips?)|worth|ok(?:ay)? (?:to|if)"
        r"|or what)\b"
    ),
    # What asks wherever it stands: "the pola eats how many stops", "cpl vs nd"; and at the end.
    "asking.anywhere": r"how (?:many|much|long|slow)|vs|versus|yes or no|or not|or what|possible",
    "asking.at_end": r"or",
    # Who asks what a word means.
    "asking.of_a_word": r"what (?:is|are|does|do you mean|is meant)",
    # How a question begins where no sign parts it from what is told: "22 was what it took" tells.
    "asking.within": (
        r"(?:(?:what|how|why|where|when|which)(?:'?s|(?: \w+){0,2}? (?:do|does|did|is|are|was|can"
        r"|could|should|shall|would|will|must)) (?:i|we|you|they|he|she|it|that|this|the|my|there)"
        r"|(?:can|could|should|shall|may|must|would|will|do|am|are) (?:i|we|you|they|he|she)"
        r"|(?:can|could|should|would|will|is|was) (?:it|that|this)|or what|what about|how about"
        r"|(?:why|how come)\W*$)\b"
    ),
    # The verb before who is asked about, wherever it stands; "so do I" tells.
    "asking.inverted": (
        r"(?<!so )(?<!nor )(?<!neither )(?<!as )(?:(?:can|could|should|shall|may|must|do|does|am"
        r"|will|would|is|are) (?:i|we|she|he|they)|(?:is|does|could|would|should) it)"
    ),
    # Between two things of which one is to be chosen, or two numbers.
    "asking.or": r"or",
    "asking.either": r"or|vs",
    # Where something else begins.
    "asking.and": r"but|and",
    # In front of a question that is asked at second hand: "just tell me how long".
    "asking.indirect": (
        r"(?:(?:please|just|can you|could you|now|omg|look|so|ok) )*(?:tell me|say|explain)"
        r"(?: (?:honestly|straight|again|please))?"
        r"|(?:what )?(?:i|my question) (?:asked|meant|mean|want(?:ed)? to know|need to know|wonder"
        r"|was|is)"
        r"(?: (?:you|was|is))?|the question (?:was|is)"
    ),
    # "Whether", where it begins such a question.
    "asking.whether": r"whether|if",
}
