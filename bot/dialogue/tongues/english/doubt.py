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
    # "No, nobody is out there", asked whether anybody is where nobody should be.
    "doubt.nobody_there": (
        r"(?:(?:no+(?:pe)?|nah)\W+)?(?:nobody|no ?one|none of us)(?:'?s| is| are)?"
        r" (?:out there|there|in it|in the water|on it)"
        r"|(?:no+(?:pe)?|nah)\W+(?:every(?:one|body)|all of (?:us|them)|(?:we|they)(?: all| both)?"
        r"|all|both)(?:'?s|'?re| is| are)?(?: all| both| back| now)*"
        r" (?:(?:on|at|behind) the (?:bank|path|shore|trail|viewpoint|railing|rail|towels?|car"
        r"|grass)|ashore|(?:back )?(?:here )?with (?:me|us))"
    ),
    # "Still on the bank", of oneself.
    "doubt.on_the_bank": (
        r"(?:(?:no+(?:pe)?|nah)\W+)?(?:i'?m|i am|we'?re|we are)(?: still| all)? (?:on|at) the"
        r" (?:bank|path|shore|trail|viewpoint|railing)"
    ),
    # Who is left out of it, behind it.
    "doubt.left_out": r"but|only|still|yet|just not|(?:up|out|over) there|not \w+",
}
