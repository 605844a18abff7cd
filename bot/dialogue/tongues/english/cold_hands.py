"""English words: cold hands and feet, and what may stand beside them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

# Cold that hurts but does its work. Numb hands count only where the person says that they are fine.
_COLD: Final = r"(?:freezing|cold|icy|frozen|like ice|ice cold|freezing cold|getting cold)"
_SO: Final = (
    r"(?:(?:are|r|is|feel|get|got|getting|so|very|really|all|too|a bit|bit|pretty|quite) )*"
)
_HANDS: Final = r"(?:hands?|fingers?|thumbs?|feet|toes)"

WORDS: Final[Mapping[str, str]] = {
    "cold_hands.told": (
        rf"{_HANDS} {_SO}{_COLD}|(?:freezing|cold|icy) {_HANDS}"
        # Fingers alone: whole hands or feet without feeling have cooled through.
        rf"|(?:fingers?|finger ?tips|thumbs?) {_SO}numb"
        r"(?: (?:already|now|by now|from (?:the )?cold))*"
        r"|numb (?:fingers?|finger ?tips|thumbs?)"
        r"|what (?:can|do|should) (?:i|we) do (?:about|against) the cold"
        r"|how (?:do|can|should) (?:i|we) (?:keep|stay) warm"
    ),
    # Shaking that is asked about beside the picture: who can't stop says so.
    "cold_hands.shaking": (
        r"(?:i am|im|we are|were|my hands are|hands are) (?:(?:a bit|a little|bit|kinda|still) )?"
        r"(?:shaking|shivering|trembling) (?:from|with|because of) (?:the )?cold"
    ),
    # Cold as such, without a word for how much: shivering, numb and very cold people say more.
    "cold_hands.cold_alone": (
        r"(?:i am|im|we are|were|i feel|we feel) (?:a (?:bit|little) |slightly |getting )?cold"
    ),
    "cold_hands.numb": rf"{_HANDS} {_SO}numb|numb {_HANDS}",
    "cold_hands.but": r"but",
    "cold_hands.they_are": r"i|im|am|we|are|were|they|otherwise|still|all",
    "cold_hands.fine": r"ok|okay|fine|good|alright|moving|working|work|move",
    "cold_hands.beside": (
        r"(?:(?:warm|wet|dry|thin|thick|new|spare) )*(?:gloves?|mittens?|socks?)(?: (?:are|were"
        r"|got|now|all|too))*(?: (?:wet|damp|thin|dry|on|off))?|what (?:can|do|should) (?:i"
        r"|we) do (?:about|against)|(?:can )?hardly type|(?:i |we )?(?:cant|cannot|can hardly"
        r"|can barely) (?:turn|press|use|work) (?:the |my )?(?:ring|dial|button|shutter|filter"
        r"|phone|camera|screen|wheel|focus ring)s?|my|mine|our|the|a|i|im|am|we|have|got|it|its"
        r"|are|is|feel|so|all|and|but|with|for|today|just|lol|brr+|ok|okay|fine|good|great|happy"
        r"|ready|please|pls|can|use|you|short|answers?|(?:big|bigger|few|fewer) steps|voice|phone"
        r"|anything else|next step|f\d*"
        r"|iso|s|degrees?|celsius"
    ),
    # The picture that goes on, the light that goes, and what is worse than cold hands.
    "cold_hands.picture": (
        r"whats next|what (?:now|next)|next step"
        r"|iso|shutter|aperture|f ?\d+|1 \d+|exposures?|time|hand ?held|tripod|lens|filters?"
        r"|settings?|focus\w*|frames?|pictures?|photos?|noise|grain|\d+ ?(?:m|mm|ft)"
    ),
    "cold_hands.dusk": (
        r"(?:its|it is|and its)? ?(?:slowly )?getting (?:slowly )?dark(?:er)?(?: now)?"
        r"|the light is (?:going|fading)|the light goes"
    ),
    "cold_hands.worse": (
        r"(?<!\d )stop(?! filter)|confus\w*|sleepy|asleep|tired|drows\w*|slur\w*|stumbl\w*|white"
        r"|blue|hard"
        r"|frostbit\w*|faint|dizzy|walk|purple|waxy|blister\w*"
    ),
    # Before it, behind good news: "all good, only cold fingers".
    "cold_hands.just": r"just|only|but|with|my|some",
}
