"""English words: parts of a reply that tell that somebody is near, or was no person."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

# Anybody, by a pronoun, as kin, or by a name.
_WHO: Final = (
    r"(?!(?:no|nobody|noone|none|not|who|it|its|that|this|there|i|im|hand|arm|leg|blood|pain"
    r"|stay)\b)"
    r"(?:(?:both|all|my|the|our|other) )*(?:\d+ year old |little |young )?\w+"
)
_IS: Final = (
    r"(?: (?:is|are|was|were|still|both|all|right|close|just|now|safe|safely|back|here|am))*"
)
_ME: Final = (
    r"(?:me|us|my side|mum|mom|dad|mummy|mommy|daddy|(?:my|her|his) (?:wife|husband|dad|mum|mom))"
)
_BY: Final = r"(?:with|next to|beside|by|close to|behind)"
_HAND: Final = r"(?:hands?|sleeves?|arms?|jacket|coat|finger|backpack|rucksack)"
_HERE: Final = (
    r"(?: (?:now|again|here|all the time|the whole time|all along|safe|safely|dry|too|both"
    r"|on the (?:path|platform|bank|deck|bridge|trail|lead|leash)|and safe|and dry|and fine))*"
)
# What may stand in such a wish: nobody, and no place to go to.
_ELSE: Final = (
    r"(?!(?:i|he|she|they|him|her|them|in|into|across|there|over|edge|lip|rocks?|stones?|side"
    r"|dropped"
    r"|lost|bag|tripod|from|back|climb|wade|cross)\b)\w+"
)

WORDS: Final[Mapping[str, str]] = {
    "with_me.lead": r"and|n|but|so|also|no|nope|yes|yeah|ok|oh|now|well|1|2|lol|haha|phew",
    "with_me.told": (
        rf"{_WHO}(?:s|re)?{_IS}(?: (?:stay(?:ed|s|ing)?|standing|sitting|kept|walking))?{_IS}"
        rf" {_BY} {_ME}{_HERE}"
        rf"|{_WHO}(?:s|re)?{_IS} (?:hold(?:s|ing)?|got|has|have)(?: on to| onto)?"
        rf" (?:my|our|his|her|their) {_HAND}"
        rf"{_HERE}"
        r"|(?:i|we)(?:m|re|ve)?(?: (?:am|are|have|just|got))*"
        r" (?:hold(?:ing)?|have|got|grabbed|took|carrying)"
        r" (?:(?:her|him|them|both|(?:my|the|our) (?:\w+ )?\w+)"
        rf" (?:by|at) the {_HAND}|(?:her|his|their|both their) {_HAND}){_HERE}"
    ),
    # A dog that shakes itself, and that it was one.
    "with_me.animal": (
        r"(?:it|its|that|thats)(?: (?:is|was|just|only))* (?:the|my|our|a) (?:dog|puppy)"
        r"(?:(?: ,)? (?:and )?not (?:a|the|my|any) (?:child|kid|person|human|people|boy|girl))?"
        r"|(?:the dog |he |she |it )?(?:is |s )?shaking (?:it|the water|himself|herself"
        r"|itself)(?: off)?"
        r"(?: all over (?:us|me|everyone|everybody|the \w+))?"
        r"|(?:the |our |my )?dog (?:smells|stinks|is wet|is muddy|is happy)"
        r"|(?:the dog |he |she |it )?(?:is |s )?shaking all over (?:us|me|everyone|everybody)"
    ),
    # Who writes wishes something: who is not well wishes for something else.
    "with_me.wish": (
        r"(?:i |we )?(?:just |only |really )*(?:want(?:ed)?|wanna|would like|d like|trying|tryna"
        r"|need)"
        r"(?: (?:2|to|a|the|my))+"
        rf"(?: {_ELSE})*? (?:close|closer|photo|picture|pic|shot|settings?|zoom"
        r"|camera|phone|lens|water(?:fall)? (?:look|soft|smooth|silky)\w*|long exposure|silky|iso"
        rf"|shutter|frame)(?: {_ELSE})*"
    ),
    # Who they are, one after the other, who writes among them.
    "with_me.named": (
        r"(?:my |the )?\w+ and (?:me|i)|(?:just )?me(?: \w+){0,2} and (?:my |the )?\w+"
    ),
    # Somebody rests where nothing happens.
    "with_me.rests": (
        rf"{_WHO}(?:s|re)?{_IS} (?:(?:sulking|sitting|chilling|resting|drying|relaxing|reading"
        r"|eating|snacking|drinking|laughing|sunbathing) (?:off )?)*(?:on|in|at|by)"
        r" (?:(?:the|a|his|her|their|our|my) )*"
        r"(?:towels?|blankets?|bank|shore|grass|bench|meadow|cars?|sun|picnic \w+)"
        r"(?: (?:now|again|(?:w|with|next to|beside) \w+))*"
    ),
    "with_me.calm": (
        r"(?:we|i)(?:re|m)?(?: (?:are|am|all|both|just|totally|so))* (?:chill(?:ing)?|relaxed|calm)"
        r"|were (?:all )?chill(?:ing)?|relax|chill|calm down|no worries"
    ),
}
