"""English words of what is seen in single frames, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "told_sights.but": r"but|though|although|while|whereas",
    "told_sights.and": r"and",
    "told_sights.soft": (
        r"soft|blurred|blurry|unsharp|fuzzy|out of focus|shaken|shaky|(?:not|isn't) (?:\w+ )?sharp"
    ),
    # What makes soft things the drops on a glass.
    "told_sights.discs": r"discs?|disks?|spots?|circles?|dots?|blobs?|light",
    "told_sights.drops": (
        r"drops?|droplets?|discs?|disks?|wet (?:glass|lens)"
        r"|(?:water|spray)(?: \w+)? on (?:the|my) (?:front )?(?:glass|lens|element)"
        r"|(?:glass|lens|front element) (?:was|is|got) wet"
    ),
    # Drops of the fall itself, that a short time holds.
    "told_sights.in_air": (
        r"(?:in|through) (?:the )?(?:mid-?)?air|mid-?air|hang(?:s|ing)?|frozen|freez\w*|stand(?:s"
        r"|ing)? still|fly\w*|single"
    ),
    "told_sights.leaves": r"leaves|leaf|ferns?|foliage|branch(?:es)?|grass",
    "told_sights.moved": r"moved|moving|smear\w*|mess\w*|blur\w*|swaying",
    # "A white triangle at the top".
    "told_sights.white": r"white|bright|pale",
    "told_sights.gap": r"triangle|wedge|gap|corner|strip|hole|sliver",
    "told_sights.gap_of_sky": r"(?:triangle|gap) of (?:sky|light|white)|sky gap",
    # "Nothing blinked".
    "told_sights.nothing": r"nothing|no|none|never|not a thing",
    "told_sights.blinks": r"blink\w*|flash\w*|flicker\w*|clip\w*",
    "told_sights.holds": (
        r"(?:whites?|highlights?) (?:all )?(?:hold|held|are (?:fine|ok|good|intact))"
        r"|(?:didn't|did not|doesn't) (?:blink|flash|clip)"
    ),
    # "The threads are there".
    "told_sights.threads": r"threads?|strands?|textured?|lines|structure",
    "told_sights.seen": r"there|visible|nice|good|lovely|clear|right|beautiful",
    "told_sights.good": (
        r"lovely|beautiful|gorgeous|great|perfect|wonderful|nicer?|good|better|fine|sharp|sings?"
        r"|works|(?:love|like) (?:it|this|that|the|how)"
    ),
    "told_sights.best": (
        r"best|favou?rite|prefer\w*|nicest|(?:my|the) (?:winner|pick|keeper|one (?:for me"
        r"|i'?d? (?:keep|take|want|choose)))|i (?:really |just )?love"
    ),
    # "I like … most".
    "told_sights.like": r"like|love",
    "told_sights.most": r"best|most",
    # "Lovely evening", "good light": praise, but of no frame.
    "told_sights.of_else": r"evening|day|time|walk|place|light|weather|trip|idea|news",
    "told_sights.no": r"not|no|isn't|aren't|never|nothing|don't|doesn't|too|less|worst",
    "told_sights.metered": (
        r"(?:on the|by the|what the|the) (?:light )?meter(?:ed)?|metered|as metered"
    ),
    "told_sights.all": (
        r"all(?: of (?:them|it))?|each|every(?: one| frame| time)?|everywhere|both"
        r"|(?:in|at|of) the (?:two|three|four|five|six|\d)(?! \w)"
    ),
    "told_sights.hard": r"(?:like|as) ice|icy|frozen|crunchy|hard as \w+",
    "told_sights.clipped": (
        r"blown|burn(?:t|ed)|clipp\w+|patches|blink\w*|flash(?:ed|es|ing)"
        r"|(?:white|whites) (?:is|are|was|were) (?:lost|gone)"
    ),
    "told_sights.sparks": r"sparks?|sparkles?|dots?|points?|specks?",
    # A part with none of these only names frames, for the next part to speak of.
    "told_sights.says": (
        r"is|are|was|were|isn't|aren't|wasn't|has|have|had|hasn't|looks?|feels?|sings?|works?"
        r"|shows?|lost|came|went|got"
    ),
    # White of the water that has no shape.
    "told_sights.white_blobs": (
        r"(?<!soft )(?:white|blown)(?: out)? (?:blobs?|patch(?:es)?|areas?|bits|parts)|(?:blobs?"
        r"|patch(?:es)?|areas?) of (?:pure )?white"
    ),
}
