"""English words: stones that the water has come over."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "covered.stone": (
        r"(?:stepping )?stones?|rocks?|pebbles|gravel(?: bar)?|sand ?bar|boulders?|ledge"
        r"|my mark(?:er)?|the mark(?:er)?|the stick"
    ),
    "covered.under": (
        r"(?:gone |went |go |going )?under(?: ?water)?(?: (?:now|already"
        r"|again))?(?= ?(?:[,.]|$))|submerged|covered (?:by|in|with) (?:the )?water"
        r"|swallowed|flooded|(?:half|partly|nearly|almost|mostly) (?:covered|submerged|gone)"
        r"(?= ?(?:[,.]|$)| (?:now|already)\b)"
    ),
    "covered.before": (
        r"now|gone|went|already|earlier|before|any ?more|no longer|when (?:we|i) (?:got"
        r"|came|arrived)|(?:i|we) marked|were dry|was dry|used to|a (?:while|minute) ago"
    ),
}
