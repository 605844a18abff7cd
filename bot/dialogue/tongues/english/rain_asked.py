"""English words: who asks, before they set out, of a gorge after rain."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_WATER: Final = r"(?:creeks?|streams?|rivers?|brooks?|becks?|burns?|water|level|gorges?|falls?|it)"
_RISES: Final = (
    r"(?:ris(?:e|es|ing)|com(?:e|es|ing) up|go(?:es|ing)? up|swell(?:s|ing)?|peaks?|get(?:s|ting)?"
    r" higher)"
)

WORDS: Final[Mapping[str, str]] = {
    "rain_asked.rain": (
        r"rain(?:ed|s|ing|fall|y)?|pour(?:ed|ing)|downpours?|wet (?:night|week|spell)|thunderstorm"
    ),
    "rain_asked.narrow": r"gorges?|canyons?|ravines?|chasms?|slots?|gullys?|gullies|narrows",
    "rain_asked.place": r"creeks?|streams?|rivers?|brooks?|becks?|waterfalls?|falls",
    "rain_asked.safe": (
        r"safe|unsafe|dangerous|risky|too risky|risk|flood\w*|flash floods?|high water"
    ),
    "rain_asked.child": (
        r"kids?|child|children|sons?|daughters?|boys?|girls?|toddlers?|baby|little ones?|grand\w+"
        r"|nephews?|nieces?|pupils|students"
    ),
    "rain_asked.ask": (
        r"can|could|may|should|shall|is|are|will|would|do|does|how|whether|if|ok|okay|what about"
    ),
    "rain_asked.plan": (
        r"want to go|wanna go|going to|about to (?:go|leave|set)|set(?:ting)? (?:out|off)"
        r"|leav(?:e|ing)"
        r" (?:soon|in|for)|off to|head(?:ing)? (?:out|to|for)|plan(?:ning)? to|take (?:him|her"
        r"|them)"
        r"|tomorrow|this (?:morning|afternoon)|later|today"
    ),
    # Whether a creek goes on rising, of creeks in general or of theirs.
    "rain_asked.rises": (
        rf"(?:do|does|will|can|could|might|would|is|are|whether|if) (?:(?:a|an|the|such|small|our"
        rf"|this|that|these|most|mountain) )*{_WATER} (?:\w+ ){{0,4}}?{_RISES}\b.*"
        r"\b(?:after|once|when|though|although|rain\w*|stop\w*)"
        r"|(?:is|whether) the (?:worst|peak)(?: of it)? (?:\w+ )?(?:over|past|behind|through)"
        rf"|how long (?:\w+ ){{0,4}}?{_RISES}"
    ),
    # By what they know that they must turn back.
    "rain_asked.signs": (
        r"(?:how (?:do|will|would|can) (?:i|we) (?:know|tell|see|notice)|what (?:are the )?signs"
        r"|what (?:do|should) (?:i|we) (?:watch|look) (?:out )?for|when (?:do|should|must) we)"
        r" (?:\w+ ){0,5}?(?:turn (?:back|round|around)|get out|leave the (?:gorge|water|creek))"
    ),
    # "Answer me that with the flood first."
    "rain_asked.again": (
        r"(?:answer|what about|tell me|back to|i asked)(?: \w+){0,6} (?:flood(?:ing|s)?|high water"
        r"|rising water)"
    ),
    # Who is there already, and tells what is so now.
    "rain_asked.there": (
        r"(?:i am|im|we are|were) (?:\w+ )?(?:in|inside|down in|at|below) (?:the|this)"
        r" (?:gorge|canyon|ravine|creek|stream|bottom)|brown(?:er)?|muddy|louder|rising now"
        r"|(?:water|creek|stream|river|level|it) ?(?:is|has|s) (?:\w+ )?(?:rising|risen|coming up"
        r"|come up|gone up)"
    ),
    # Who cannot get away, or is down there while it pours; not what is only supposed.
    "rain_asked.trouble": (
        r"cut off|stranded|trapped|marooned|stuck(?! (?:at (?:home|work)|in traffic|with))"
        r"|(?<!if i )(?<!if we )(?<!that we )(?<!so we )(?:cant|cannot|can not|couldnt|unable to)"
        r" (?:\w+ )?(?:back|across|out|over|cross|away)"
        r"|(?:am|im|are|were|is|hes|shes|theyre|standing|sitting) (?:\w+ )?on (?:the|an?|this|our)"
        r" (?:\w+ )?(?:island|islet|rock|boulder|gravel bar)"
        r"|(?<!if the )(?<!if my )(?<!when the )(?<!when my )(?<!are the )(?<!are my )"
        r"(?:kids?|child|children|sons?|daughters?|boys?|girls?|grandson|granddaughter|husband"
        r"|wife|friends?|they|he|she)(?: \w+)?? (?:is|are|s|re)(?: (?:still|now|already|both|all|up"
        r"|down|there|alone))* (?:in|inside) (?:the|a|that|this) (?:\w+ )?(?:gorge|canyon|ravine"
        r"|chasm|gully|slot|narrows|creek|stream|river|water)"
        r"|(?:took|taken|washed|swept|carried|tore)(?: (?:away|off|out|down))? (?:our|the|my|a)"
        r" (?:\w+ )?(?:bridge|footbridge|path|trail|road|car|tent|steps|stones)"
        r"|(?:bridge|footbridge|path|trail|road) (?:is|has|s|got|was)(?: been| all)?"
        r" (?:gone|washed|swept|under ?water|flooded)"
    ),
}
