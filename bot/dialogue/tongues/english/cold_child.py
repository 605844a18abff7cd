"""English words: a child that is cold."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "cold_child.child": (
        r"kids?|child|children|sons?|daughters?|boys?|girls?|toddlers?|baby|little ones?|grandkids"
        r"|\d+ ?(?:years?|yrs?) ?olds?|\d+ ?yo|pupils|students"
    ),
    # What stands between: no hands, and nothing that denies.
    "cold_child.is": (
        r"are|is|re|s|getting|gets|get|got|feels?|feeling|so|very|really|all|pretty|quite|too"
        r"|now|both"
        r"|a bit|a little|bit|kinda|also|says?|he|she|they|theyre|hes|shes|starting to be|to be"
        r"|become"
        r"|already|complain\w*|that|of being|and|soaked|wet|drenched|cold|hungry|tired"
    ),
    "cold_child.cold": (
        r"cold|freezing|frozen|chilled|chilly|shiver(?:s|ing|y)|shaking from(?: the)? cold"
    ),
    "cold_child.wet": (
        r"wet|soaked|drenched|damp|fell in|shiver\w*|how long|worry|worried|go (?:now|home|back)"
        r"|blue lips|lips|leave"
    ),
    # A picture that is cold, or the child who is warm again.
    "cold_child.not": (
        r"not (?:\w+ )?(?:cold|freezing|shivering)|(?:was|were) cold|no longer|warm again"
        r"|cold (?:tones?"
        r"|light|colou?rs?|drinks?|water|cast|look)|if|isnt|arent|warmed up|excite\w*|laughing"
    ),
}
