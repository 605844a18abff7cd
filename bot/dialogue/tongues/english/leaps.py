"""English words: who wishes to jump, dive or slide into the water from a height."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_JUMP: Final = (
    r"(?:jump(?:ing)?|div(?:e|ing)|leap(?:ing)?|slid(?:e|ing)|cannonball\w*|belly ?flop\w*"
    r"|backflip\w*|somersault\w*|do(?:ing)? (?:a|some) (?:flips?|bombs?|jumps?|dives?|header))"
)
_HEIGHT: Final = (
    r"(?:tops?|rocks?|ledges?|cliffs?|bridge|footbridge|falls?|waterfalls?|cascade|lip|boulders?"
    r"|slabs?|step|drop|brink|up there|there|it|that)"
)
_POOL: Final = r"(?:pool|plunge ?pool|water|creek|river|basin|hole|swimming hole|stream)"

WORDS: Final[Mapping[str, str]] = {
    "leaps.wish": (
        r"wanna|wants? to|wanting to|would like to|d like to|like to|gonna|going to|about to"
        r"|plan(?:s|ning)? to|plan(?:s|ning)? on|thinking (?:of|about)|fancy|ok to|okay to|safe to"
        r"|allowed to|fine to|can|could|may|might|should|shall|lets|let us|let (?:him|her|them|my)"
        r"|dar(?:e|es|ing)|keen to|tempted to|up for|ok if|okay if|fine if|what about|how about"
        r"|is|are|am|theyre|hes|shes|im|keep|keeps|start|starts|trying to|hoping to|good for"
        r"|deep enough (?:to|for)"
    ),
    "leaps.leap": (
        rf"{_JUMP}(?: (?:in|down|out|straight|right|head ?first|feet first))*"
        rf" (?:(?:from|off|over)(?: of)?(?: (?:up|on))?(?: (?:the|that|this|a|those|these))?"
        rf"(?: (?!frame|picture)\w+)?? {_HEIGHT}"
        rf"|down (?:the|that|this|those) (?:\w+ )??{_HEIGHT}"
        rf"|(?:in|into|in to) (?:the|that|this|a) (?:\w+ )?{_POOL})(?! (?:to|of the) )"
        r"|(?:cliff ?|rock ?|bridge ?)(?:jump(?:ing)?|div(?:e|ing))|tombston(?:e|ing)"
    ),
    "leaps.noun": (
        rf"(?:jumps?|dives?|leap|backflip|header|cannonball)(?: in)? (?:from|off)(?: of)?"
        rf" (?:the|that|this|a) (?:\w+ )??{_HEIGHT}"
    ),
    "leaps.denied": (
        r"dont|doesnt|wont|not|never|nobody|noone|no one|none|cant|cannot|shouldnt|mustnt|without"
        r"|arent|isnt|less"
    ),
    # After somebody who is in the water: that is no game.
    "leaps.after": r"after (?:him|her|them|me|it|the|my|our)|to (?:get|save|help|rescue|reach)",
    "leaps.else": (
        r"(?:water|spray|foam)(?: is| just)* (?:leaping|jumping|diving|sliding)"
        r"|exposure|histogram|settings?"
    ),
    # What may stand before it, from the start of a clause on: no person.
    "leaps.before_wild": (
        r"and|but|so|also|oh|ok|yes|no|now|there|here|is|are|when|if|while|that|look|a|an"
        r"|the|some|this|those|these|two|three|many|few|little|big|small|brown|wild|lots"
        r"|of|lot"
    ),
    "leaps.caught": (
        r"(?:can|could|should|do|did|how do|how can|how) i (?:catch|freeze|shoot"
        r"|photograph|get|take)"
    ),
    # What leaps by nature: an animal, a leaf or light, named right before its leap.
    "leaps.wild": (
        r"(?:fish\w*|trouts?|salmons?|birds?|dippers?|kingfishers?|ducks?|ducklings?|herons?"
        r"|otters?|frogs?|toads?|wagtails?|squirrels?|minks?|beavers?|insects?|dragonfl(?:y|ies)"
        r"|swallows?|lea(?:f|ves)|twigs?|light|sun(?:light|beams?)?|reflections?|shadows?)"
        r"(?: (?:is|are|was|were|s|that|which|just|always|also|keeps?|start(?:s|ed)?|kept|can|will"
        r"|would|might|may|could|wants? to|going to|about to|gonna|to|now|still|sometimes"
        r"|here|there"
        r"|again|trying to))*"
    ),
    # What parts two clauses without a sign.
    "leaps.joint": r"and also|also|btw|but|oh and",
}
