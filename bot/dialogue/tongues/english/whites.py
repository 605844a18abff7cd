"""English words of what the white of the water does in a frame, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # The camera's warning.
    "whites.blinks": (
        r"blink\w*|winks|winking|flicker\w*|flash(?:es|ed|ing)|zebras?|clipp(?:ed|ing|s)?"
        r"|clips(?! on)|blown (?:highlights?|whites?)|highlight (?:alerts?|warnings?)"
    ),
    # "It won't stop blinking" denies nothing.
    "whites.on_and_on": r"(?:not|wont|doesnt|didnt|hasnt|never|wouldnt) stop\w*",
    "whites.nothing": (
        r"nothings?|nothin|none|no|not|aint|never|isnt|arent|wasnt|doesnt|dont|didnt|without|zero|stopped"
    ),
    "whites.gone": r"gone|stopped|no more|nothing|none|away",
    # "Nothing blinks except the sky".
    "whites.except": r"except|apart from|besides|other than",
    "whites.only": r"only|just|mostly|merely|nothing more than",
    # "Not only sky, the water too".
    "whites.not_only": r"(?:not|isnt|its not|is not) (?:only|just)",
    "whites.denied": r"no|not|isnt|arent|without|never|wasnt|werent",
    # The size of what blinks.
    "whites.dots": (
        r"dots?|sparks?|specks?|speckles?|pinpricks?|pinpoints?|sparkles?|pixels|points|crumbs"
        r"|(?:tiny|little|single|small) (?:spots?|bits)|few drops"
    ),
    "whites.patches": (
        r"patch\w*|blobs?|blotch\w*|splotch\w*|chunks?|lumps?|islands?|areas?|stripes?"
        r"|(?:big|bigger|large|white) (?:bits?|spots?)"
    ),
    "whites.sheet": (
        r"all of (?:it|the \w+)|all (?=blink|flash|flicker)|all over|whole|entire"
        r"|everything|everywhere|sheet|the lot|completely"
    ),
    "whites.sized": (
        r"(?:thumb|fist|hand|palm|finger|coin|egg)(?:nail)? ?(?:sized?|wide|big)"
        r"|(?:big|large|wide) as (?:my|a|your) \w+|size of (?:my|a) \w+"
    ),
    # A part of it: the rest is another thing.
    "whites.part": (
        r"top|upper|bottom|lower|left|right|half|part|side|middle|centre|center|core|lip|foot|edge|rest"
    ),
    "whites.holds": r"fine|ok|okay|good|great|clean|clear|quiet|holds?|nothing|not|nice|alright",
    # What is no more: two frames ago, or only thought of.
    "whites.past": (
        r"before|earlier|at first|last time|the first (?:one|frame)|a (?:minute|moment|while) ago"
        r"|previously"
    ),
    # Who asks where the warning is, or how it looks, tells of no frame.
    "whites.how_to_see": (
        r"how (?:do|can|could|would|should|will|am|to)(?: i| we| you)?(?: even)? (?:tell|know|see"
        r"|notice|spot|check|find|turn|switch|get)|where (?:do|can|is|are)|what (?:does|do|is|are)"
    ),
    # What was told before, and was not heard, it seems.
    "whites.said": r"(?:i |i just )?(?:said|told you)(?: that| so| it| already)?|like i said",
    "whites.if": r"if|unless|whether|suppose|should it|in case|until",
    "whites.sky": r"sky|skies",
    "whites.water": r"water|falls?|drop|foam|stream|cascade|jet|flow|curtain|creek|plunge",
    # What else has patches and dots.
    "whites.else": (
        r"lens|glass|filter|moss|mossy|lichen|snow|ice|rocks?|stones?|leaf|leaves|ferns?|grass|path"
        r"|drizzle|rain|drops on|droplets?|ghosts?|round|pale|soft|blur\w*|sensor|dust|light|path"
        r"|spray|splash\w*|wind|breeze|wet|soaked|dripping|edges|borders|corners|sides|hands?|fingers"
        r"|boulders?|branch\w*|mist|sun on|pool|forest|trees?|jacket|coat|shade|fog|sharp|focus"
    ),
    "whites.white": r"white|whites|bright|clipped|blown|burnt|paper",
    # A frame that is too bright, whatever else is said of it.
    "whites.pale": (
        r"pal(?:e|er|est)|whit(?:e|er|ish)|brighter|too bright"
        r"|washed out|bleached|faded"
    ),
    # White that is lost, told beside its size.
    "whites.lost": (
        r"(?:no|without|not any|zero|lost(?: all)?) (?:any )?(?:texture|detail|structure|strands"
        r"|lines|drawing)(?: (?:in it|there|left))?"
    ),
    # While, or where, the sun is on it; while it is not.
    "whites.in_sun": (
        r"(?:when|whenever|while|where|as soon as|once|only in|with)(?: \w+){0,2}? (?:sun|sunlight)"
        r"|sunlit|in the sun(?:light|shine)?\b(?! behind)|sun (?:is|hits|comes|was) (?:full )?on it"
    ),
    "whites.in_shade": (
        r"(?:when|whenever|while|where|once|as soon as|under|behind)(?: \w+){0,2}?"
        r" (?:clouds?|shade)|in the (?:shade|shadow)|clouds? (?:goes|comes|over|covers)"
        r"|(?:once|when) it clouds over"
    ),
    # Small words beside the size of what blinks, as a whole clause of its own.
    "whites.small": (
        r"a|an|the|it|its|is|are|was|thats|that|this|there|theres|i|im|see|get|got|have|now|still"
        r"|yes|yeah|yep|no|nope|nah|not|ok|okay|oh|hm|well|so|but|and|plus|also|too|though|just|only"
        r"|some|few|couple|one|two|three|of|in|on|at|near|by|to|around|about|maybe|roughly|said"
        r"|told|you|already|again|same|like|as|my|more|less|smaller|bigger|tiny|small|big|little"
        r"|large|fat|huge|solid|real|proper|here|where|any|anymore|mostly|mainly|really|quite|very"
        r"|kinda|sort|time|single|scattered|odd|all|main|frame|picture|screen|display|hits|lands"
        r"|nearly|almost|practically|basically|suppose|guess|think|reckon"
        r"|wait|sorry|actually|meant|mean|them|they|has|gone|turned|left|up|down|over|much|pretty"
    ),
}
