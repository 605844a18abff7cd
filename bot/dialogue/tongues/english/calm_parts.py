"""English words: parts of a message that sound of the danger that they deny."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_IT: Final = (
    r"(?:(?:the |this |that |a )?(?:water|stream|creek|river|beck|brook|level|it)s? (?:level )?)"
)
_WATER: Final = (
    r"(?:(?:the |this |that )?(?:water|stream|creek|river|beck|brook|level)s? (?:level )?)"
)
_NOT: Final = r"(?:is not|isnt|aint|not|has not|hasnt|does not|doesnt|did not|didnt|never)"
_ADVERB: Final = r"(?:(?:really|even|at all|actually|been|any) )*"
_RISING: Final = r"(?:rising|risen|swelling)"
# Said of the water alone: who fell in and is "not coming up" is in it.
_UP: Final = (
    r"(?:rising|risen|rise|getting (?:any )?higher|higher|gone up|going up|come up|coming up)"
)
_THAN: Final = r"(?: (?:at all|here|one bit|a bit|either|than (?:before|earlier)|lol|haha))*"
_RAIL: Final = r"(?:(?:rail|railing|edge|fence|barrier|water|lip|rope|side|drop))"

WORDS: Final[Mapping[str, str]] = {
    # At the end of a message, where it changes nothing.
    "calm_parts.last": r"though|tho|however|actually",
    "calm_parts.joined": r"and|n|but|so|also|because|cuz|plus",
    "calm_parts.lead": r"and|n|but|so|also|no|nope|nah|oh|well|plus|what|ok|then|1|2",
    # "It ain't rising", which a word like "yet" or "any more" would take back.
    "calm_parts.not_rising": (
        rf"{_IT}?{_NOT} {_ADVERB}{_RISING}{_THAN}|{_WATER}{_NOT} {_ADVERB}{_UP}{_THAN}"
    ),
    # Somebody was held back in time: no back was pulled.
    "calm_parts.pulled_back": (
        r"(?:i|we|my (?:wife|husband|partner|mum|mom|dad|friend))(?: have| ve| just|ve)*"
        r" (?:pulled|called|dragged|hauled|took|got|brought|lifted|grabbed)"
        r" (?:her|him|them|(?:my|the|our) (?:\w+ )?(?:kids?|child|children|son|daughter|dog|boys?"
        rf"|girls?|friend|wife|husband))(?: right| straight)* (?:back|down|away)"
        rf"(?: (?:from|off|behind) (?:the |that )?{_RAIL}| right away| at once| now| again)*"
    ),
    # What tells that nothing is the matter, where danger only is likely by other words.
    "calm_parts.idle": (
        r"(?:(?:the|my|our|both|all) )*(?!(?:i|blood|water)\b)\w+(?:s|re)?"
        r"(?: (?:is|are|s|already|getting|get|gets|so|now|a bit|really|starting to get|be))*"
        r"(?: (?:moaning|whining|complaining|nagging|grumbling))?(?: (?:already|that))*"
        r"(?: (?:he|she|they)(?:s|re| is| are)?)?(?: (?:so|already|really))*"
        r" (?:hungry|bored|thirsty|peckish|starving|needs? (?:a|the|to) (?:pee|loo|toilet|snack"
        r"|wee))"
        r"(?: (?:already|now|again|lol|haha|too))*"
    ),
    # A thing that is put under the camera: nobody stands under anything.
    "calm_parts.put_under": (
        r"(?:(?:can|could|should|may) i )?(?:put|stuff|shove|use|lay|push) (?:my|a|the|some)"
        r" (?:\w+ )?(?:hoodie|jacket|coat|bag|backpack|rucksack|sweater|jumper|scarf|bean ?bag"
        r"|towel"
        r"|gloves?|cloth|hat|shirt|book|wallet|fleece|stones?|stick)"
        r" (?:under|beneath|below|on top of|over|around|behind|on) (?:it|the (?:phone|camera"
        r"|lens|tripod))"
    ),
}
