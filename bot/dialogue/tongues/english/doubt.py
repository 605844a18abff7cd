"""English words that begin a "no" to whether anybody is in danger."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "Nope, it is the photo that is bad": the rest is read for danger by itself. "No idea where he
    # is" is none, and of somebody else it takes a word that says how they are.
    "doubt.no": (
        r"(?:1\W+)?(?:(?:no+(?:pe|oo+)?|nah|not at all)(?=\W*$|\s*[,.!;:]|\s+(?:all|it|its"
        r"|it's|just|only|we|were|we're|i|im|i'm|thanks|worries|problem|danger)\b"
        r"|\s+(?:she|he|they|every(?:one|body))(?:'?s|'?re| is| are) (?:fine|ok|okay|good"
        r"|safe|alright|all right|with (?:me|us)))|(?:nobody|no ?one|none of us)(?:'s| is"
        r"| are)? (?:hurt|in (?:any )?(?:danger|trouble)|lost|injured|missing)|all (?:good"
        r"|fine|well)|we(?:'re| are) (?:all )?fine)"
    ),
}
