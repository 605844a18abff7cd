"""English words: parts of a reply to whether all are safe."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # How a question begins behind words without signs.
    "clauses.asking": (
        r"(?:can|could|may|should|shall|do|does|must) (?:i|we|he|she|they|you|it)|(?:what"
        r"|how|which) (?:do|does|is|are|about|if|can|should|time|shutter|lens|long|many"
        r"|much)|why (?:is|are|do|does|did)|where (?:do|does|can|should)"
    ),
    "clauses.opener": "how what which why where when and",
    "clauses.option": r"option|number|answer|choice",
    "clauses.counted": (
        r"of|more|people|persons|kids|students|others|m|ft|feet|s|hours?|minutes?|km"
        r"|miles?|am|pm|years?|in the"
    ),
    # Who is left out of good news, and how it is said without being sure.
    "clauses.exception": (
        r"except(?: for)?|apart from|but not|all but|every(?:one|body) but"
        r"|only (?!just|we|now|the|a)\w+(?: is)? \w+ing"
        r"|only one missing|not all|most of us|some of us"
    ),
    "clauses.hedge": (
        r"not sure|dont know|no idea|if|unless|hopefully|i think|i guess|should be"
        r"|probably"
    ),
    # What a part that answers by its sense has in it: of who is safe, and of where nobody is.
    "clauses.safe": (
        r"(?:all|every(?:one|body)s?|we|were|i|im|he|hes|she|shes|they|theyre|both|now|and"
        r"|warm|is|are) (?:\w+ )?(?:safe|ok|okay|fine|good|well|alright|warm|dry|home"
        r"|unhurt)|at the (?:car|hut|hotel)"
    ),
    "clauses.out_there": (
        r"no ?(?:body|one)s?|none of us|next to me|beside me|with me|behind the"
        r"|at the bottom|kitchen|at home|on the (?:bank|path|trail|bridge|deck)|stay(?:ing"
        r"|ed)?"
    ),
    # Of a picture that is looked at.
    "clauses.picture": (
        r"blurr\w*|blurry|soft|sharp|shak[ey]\w* (?:frame|picture|shot)|depth of field|laptop"
        r"|screen|i like"
    ),
}
