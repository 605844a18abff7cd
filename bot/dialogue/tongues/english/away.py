"""English words: who is away from where nobody should stand, and who is meant."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_SAFE: Final = (
    r"(?:path|footpath|trail|track|road|street|platform|deck|bridge|footbridge|boardwalk|viewpoint"
    r"|overlook|lookout|terrace|car park|parking(?: lot| area)?|cars?|van|bus|trailhead|hut|hotel"
    r"|house|cafe|bench|towels?|blankets?|meadow|lawn|picnic (?:area|table)|visitor cent(?:re|er))"
)
_RAIL: Final = r"(?:railings?|rails?|fence|rope|barrier|handrail|sign|guard ?rail)"
_THE: Final = r"(?:the |a |an |my |our |this |that |marked |main |lower |upper |public )*"
#: Somebody else who came back; "he is gone" may mean that he fell.
_THEY: Final = (
    r"(?:he|she|they|(?:(?:my|our|the) (?:\w+ )?)?(?:friend|wife|husband|son|daughter"
    r"|brother|sister|partner|kids?|child|children|boys?|girls?|dog|others)"
    r"|both(?: of them| (?:kids|children|boys|girls))?|all (?:of them|the kids|three|four))"
)
_EDGE: Final = r"(?:edge|lip|brink|rim|ledge|drop|cliff|drop ?off)"
_WET: Final = r"(?:water|creek|stream|river|pool|brook|current)"
_OVER: Final = r"(?:it|there|the (?:falls?|waterfall|curtain|overhang|rocks?|cliff|wall))"
_ASHORE: Final = r"(?:on|at|to|onto) the (?:bank|shore|dry land)|ashore|on dry land"
_OUT: Final = (
    r"^(?:ok |yes |yeah )?(?:(?:i|we|he|she|they|all|both) )?(?:(?:am|are|is|of us|got|came|climbed"
    r"|have|has) )*(?:back )?out(?: again| now| of (?:it|there))*(?= ,|$)"
)

WORDS: Final[Mapping[str, str]] = {
    "away.reached": (
        rf"(?:on|onto|at|in|to|by) {_THE}{_SAFE}|behind {_THE}{_RAIL}|(?:to|at) {_THE}{_RAIL}"
        r"|(?:on|to) (?:this|the (?:safe|right)) side(?: of (?:the|it))?|at home|back home"
        r"|home already"
    ),
    "away.returned": (
        rf"{_THEY} (?:(?:is|are|have|has|came|come|got|both|all|now|already|safely|just) )*"
        r"(?:back(?: over| here)?|(?:here )?(?:with|next to|beside|behind) (?:me|us)|left)"
        r"(?: (?:to|with|by) (?:me|us))?"
        r"|on (?:the|a) (?:leash|lead)"
        r"|(?!(?:it|water|rain|storm|thunder|sun|light|wind|nobody|none|nothing|this|that|who|i)\b)"
        r"\w+ (?:came|climbed|got) back (?:down|out|over)(?! (?:there|the|to|into)\b)"
    ),
    "away.stepped": (
        r"(?:stepped|moved|went|walked|got|came|gone|backed) (?:well |right |all |far )*"
        r"(?:back|away|off)(?: from (?:it|there|here))?"
    ),
    "away.beside": """
        returned retreated headed moved went walked stepped climbed come down stay stays staying
        stayed keep gone got left reached safely below again both three those kid over haha hahaha
        this morning earlier today boots feet shoes far all called him he""",
    "away.with_things": (
        r"(?:with|and) (?:(?:all|the|my|our|of) )*(?:tripod|camera|gear|kit|stuff|bags?|backpack"
        r"|everything|dog|equipment)|(?:tripod|camera|gear|dog)(?: (?:is|are|and all))?"
        r" (?:too|as well|also|with (?:me|us)|packed)"
    ),
    # In Spanish "he vuelto" tells of who writes.
    "away.another": (
        r"he(?! (?:vuelto|bajado|subido|salido|ido|regresado|llegado)\b)"
        r"|she|hes|shes|my (?!self\b|tripod\b|camera\b|gear\b)\w+"
        r" (?:is|was|has|stepped|went|came|climbed|moved|got|walked|left)"
    ),
    "away.for_oneself": (
        r"(?:can|may|could|should|shall|do|if) (?:i|we)"
        r"|(?:i|we) (?:want|wanna|go|climb|stand|sit|will|would|can|could)"
    ),
    "away.who_writes": r"i|im|ive|me",
    "away.self": r"i|im|ive|me|we|weve|were|us|both|all|nobody|no",
    "away.others": (
        r"we|were|both|all|he|she|they|hes|shes|theyre|him|her|them|my \w+"
        r"|the \w+ (?:is|are|came)|nobody|no one"
    ),
    "away.no_more": (
        r"(?:not|no(?:body| one)?)(?: (?:is|am|are|one|out|over|up|there|standing))*"
        r"(?: (?:on|at|in|by|near|under|behind) (?:it|the \w+))? (?:any ?more|longer)"
        r"|^no longer"
    ),
    # What leaves one kind of place, and no other.
    "away.left_lip": rf"(?:off|away from|back from|left|down from) (?:the |that )?{_EDGE}",
    "away.left_wading": rf"(?:out of|off|away from|left) the {_WET}|{_ASHORE}|{_OUT}",
    "away.left_ice": rf"(?:off|away from|left) the ice|{_ASHORE}",
    "away.left_under": rf"(?:out from|away from|out of)(?: (?:behind|under))? {_OVER}|{_OUT}",
    "away.left_climb": (
        r"^(?:ok )?(?:(?:i|we|he|she) )?(?:(?:am|are|is|have|has|came|got|climbed) )*(?:safely )?"
        r"(?:back )?down(?: again| now| safely)+(?= ,|$)"
    ),
    "away.left_barrier": r"(?:came|climbed|got|am|are|is) back over",
}
