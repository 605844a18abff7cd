"""English words of a question that no answer of the walk is about, and of those that one is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What a sentence with a question's mark begins with, or holds, that surely asks.
    "left_unanswered.asks": (
        r"wh(?:at|ich|ere|en|y|o)\b(?! a )|how\b|(?:do|does|did|can|could|should|shall|would|will"
        r"|must|may|is|are|was|were|am|has|have) (?:i|we|you|it|that|this|these|those|they|he|she"
        r"|there|the|a|an|my|our|your|not)\b|or\b"
    ),
    # What a clause begins with that asks, its mark left out.
    "left_unanswered.opens": (
        r"(?:do|does|did|can|could|should|shall|would|am|is|are|was|were|will|may|must|has|have)"
        r" (?:i|we|you|it|that|this|these|those|they|he|she|there|the|a|an|my|our|your)"
        r"|(?:what|which|how|why|where|when|who)(?:['’]?s| (?:do|does|did|is|are|was|can|could"
        r"|should|would|will|about|long|much|many|far|time|lens|one|glass|else|settings?|shutter))"
    ),
    # Who ends so wants a nod.
    "left_unanswered.tag": (
        r"(?:right|ok(?:ay)?|correct|agreed|yes|yeah|no|eh|huh|true|fair|deal|you know|got it"
        r"|(?:is|does|do|are|was|would|has|have|did|can|could|should)n['’]?t (?:it|that|they|i|we"
        r"|you)|is (?:it|that) (?:right|correct|ok(?:ay)?|true))"
    ),
    # Words that what is set answers; what a border, a lens, or the way there answers.
    "left_unanswered.of_settings": (
        r"settings?|shutter|aperture|iso|f ?/? ?\d[\d.]*|f-?(?:stops?|numbers?)|times?|speed|sec\w*"
        r"|long\w*|fast\w*|short\w*|slow\w*|bright\w*|dark\w*|expos\w+|white\w*|blink\w*|blown|clip\w*"
        r"|silk\w*|smooth\w*|soft\w*|blurr?\w*|focus\w*|sharp\w*|filters?|polari\w*|cpl|nds?|meter\w*"
        r"|tripod|hand\w*|noise|grain\w*|numbers?|dial|set"
        r"|what (?:now|next|then|else)|what (?:do|should|shall|must|can) (?:i|we)|now what"
        r"|what (?:do|would) you (?:suggest|recommend|propose|advise)"
        r"|(?:do|try|set|take|shoot|go|start|begin|change|use)\W*$|parts?|section|sun\w*|shad\w*"
        r"|how (?:do|did|can|could|would) (?:i|we|you|he|she|they|one) (?:do|get|make|manage)"
    ),
    # What answers it at once, or takes it back.
    "left_unanswered.yes_no": r"yes|yeah|no|nope|never ?mind|forget it",
    "left_unanswered.of_view": (
        r"lens\w*|zoom\w*|wide\w*|focal|mm|frame\w*|fit|portrait|landscape|vertical|horizontal"
        r"|edges?|borders?|branch\w*|twigs?|corners?|sides?|sky|top|lip|crop\w*|mov\w+|closer|nearer"
        r"|back|far|angle|composition|in the way"
    ),
}
