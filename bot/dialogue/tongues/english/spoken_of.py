"""English words: where nobody may stand, the note left at home, and that nobody is hurt."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_BE: Final = (
    r"(?:stand|standing|go|walk|set(?: it| the \w+| my \w+)? ?up|put|sit|step|climb|be|wade|shoot"
    r"|photograph|enter|stay|place|tread)"
)
_ONE: Final = r"(?:i|we|you|one|people|anyone|anybody|a person)"
_OUGHT: Final = r"(?:can|may|must|should|shall|could|do|am|are|is|would)"
_OUGHT_NOT: Final = (
    r"(?:cant|cannot|mustnt|shouldnt|may not|must not|should not|can not|am not|are not|arent)"
)
_ALLOWED: Final = r"(?: (?:be|allowed|permitted|supposed|safe|ok|okay|to|ever|even))*"
_WHERE: Final = (
    r"(?:where(?: else| exactly)?|(?:what|which) (?:places?|spots?|rocks?|parts?|areas?)"
    r"|is there (?:any ?where|any place|a place|some ?where|any spot)(?: that| where)?"
    r"|are there (?:any )?(?:places?|spots?)(?: that| where)?)"
)
_ITS_PLACE: Final = (
    r"(?: (?:my|the|a) (?:tripod|camera|bag|kit))?"
    r"(?: (?:at|near|by|on|in|with|around|beside|below|above|under|behind)"
    r"(?: (?:the|a|an|my|our|this|that))? \w+){0,2}"
)
_BARRED: Final = r"(?:too dangerous|dangerous|forbidden|prohibited|unsafe|off limits)"
_IF: Final = (
    r"(?:(?:if|in case|when|unless|once|should) (?:i|we|im|were|ive|weve|you|she|he|they)"
    r"(?: (?!and\b|but\b)[^ ,.]+){0,3}? (?:not|havent|hasnt|arent|isnt|dont|doesnt|late|later"
    r"|overdue|back|home|down|nothing)(?: (?!and\b|but\b|call|ring)[^ ,.]+){0,8}?)"
)
_CALLS: Final = (
    r"(?:(?:then |please |to |you |she |he |they |should |must |will |can |my \w+ |the \w+ )*"
    r"(?:calls?|calling|rings?|alerts?|phones?|notify|notifies|tells?|contacts?|informs?)\b"
    r"(?: (?:the|my|our|mountain|a|local|park|emergency|for|\d+))*(?: [^ ,.]+)?)"
)
_TOLD: Final = (
    r"(?:(?:i|we|ive|weve) (?:(?:have|already|just|also|always) )*(?:told|tell|texted|text|wrote"
    r"|left|leave|sent|send|messaged|informed|write)\b"
    r"|(?:wife|husband|sister|brother|mum|mom|mother|dad|father|friend|partner|son|daughter"
    r"|hotel|hut|ranger|somebody|someone|she|he|they) (?:already )?knows?"
    r"|(?:a |the |my )?(?:note|letter|message|text|slip)\b)"
)
_EDGE: Final = r"(?:lip|edge|brink|crest|rim|top)"

WORDS: Final[Mapping[str, str]] = {
    # Who is late, who calls whom; and that somebody knows where they are.
    "spoken_of.note_home": (
        rf"{_IF}(?: ,)?(?: then)? {_CALLS}|{_CALLS} {_IF}(?= [.,]|$)|{_TOLD}(?: (?!not\b|no\b"
        rf"|nobody\b|none\b|idea\b|clue\b|\w+nt\b)[^ .]+){{0,8}}?(?: \.)? where (?:exactly )?(?:i"
        rf" am|im|we"
        r" are|were|i go|we go|ill be|well be|i will be|we will be|i parked|we parked)(?: going)?"
        r"|(?:when|whom|who|which number) (?:they |she |he |you )?(?:is |are |should )?(?:to )?"
        r"(?:call|calls|ring|alert)(?: for help| the \w+| if .{0,40})?(?= [.,]|$)"
    ),
    "spoken_of.where_not": (
        rf"{_WHERE} {_OUGHT} (?:{_ONE} )?(?:not|never){_ALLOWED} {_BE}\b{_ITS_PLACE}"
        rf"|{_WHERE} (?:{_ONE} )?{_OUGHT_NOT}(?: {_ONE})?{_ALLOWED} {_BE}\b{_ITS_PLACE}"
        rf"|{_WHERE} {_OUGHT} (?:nobody|no one|noone) {_BE}\b{_ITS_PLACE}|{_WHERE} (?:is|are"
        rf"|would be|its)(?: it)? (?:{_BARRED}|not (?:allowed|safe|ok|permitted))(?: to)?(?:"
        rf" {_BE}\b)?{_ITS_PLACE}|{_WHERE} (?:is|are) (?:standing|going|walking|climbing"
        rf"|wading) (?:{_BARRED}|not \w+){_ITS_PLACE}|{_WHERE} (?:{_OUGHT} )?{_ONE} (?:better"
        rf" )?(?:to )?(?:avoid|stay (?:off|away from|out of)|keep (?:off|away from"
        rf"|out of)){_ITS_PLACE}|(?:{_OUGHT_NOT}|not)(?: allowed)?(?: to)? {_BE} where(?:"
        rf" exactly)?(?= [.,]|$)"
    ),
    # Most denials are the guards' matter; these are the plainest.
    "spoken_of.nobody": (
        r"(?:nobody|no one|noone)(?: of us)? (?:is|was|got)(?: (?:ever|even|really))*"
        r" (?:hurt|injured|missing|lost|in danger|out there|in the (?:water|river|creek)"
        r"|(?:near|at|on) (?:the|an) (?:edge|lip|water))"
    ),
    # They focus or meter on the lip.
    "spoken_of.picture": (
        rf"(?:(?:spot ?)?(?:focus|meter|expose)(?:s|d|ed|ing)?)(?: \w+)? (?:on|at|for|off)"
        rf" (?:the |that )?{_EDGE}(?: of the \w+)?"
    ),
    # A message holds one of these where any of that can be found.
    "spoken_of.gate": (
        r"where|what|which|there|if|unless|when|whom|who|should|in case|once|nobody|no one|noone"
        r"|\w*(?:focus|meter|expos)\w*"
    ),
}
