"""English words of not knowing, and of people who are well, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "not_known.said": (
        r"no (?:idea|clue)|not (?:sure|certain)|unsure|(?:do not|dont|didnt) (?:know|understand"
        r"|get)"
        r"|dunno|idk|cant (?:tell|say)|cannot (?:tell|say)|cant (?:see|find|make) (?:if|whether"
        r"|where|how)"
        r"|how (?:would|should|do|can) i (?:know|tell)|beats me|havent a clue|hard to (?:tell|say)"
        r"|never heard of"
    ),
    # No answer to what the water does.
    "not_known.people_well": (
        r"(?:(?:we|i|everyone|everybody|all of us|both of us|the kids|kids)"
        r"(?: (?:are|am|re|m|is|s))?|were|im|everyones|everybodys)"
        r"(?: (?:all|both|still|really|totally|just|absolutely|perfectly))*"
        r" (?:fine|ok|okay|safe|well|good|alright|all right|unhurt|chill)"
        r"|(?:nobody|noone|no one)(?: is|s)? (?:hurt|injured|in danger|lost)|nobodys (?:hurt"
        r"|injured)"
    ),
    # "I don't know what depth of field is": a word is asked for.
    "not_known.a_term": (
        r"what (?:an? |the )?[^.,]{2,30} (?:is|are|means?|does|stands for)|what (?:is|are"
        r"|does) [^.,]{2,30}"
    ),
}
