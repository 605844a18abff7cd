"""English words of water that somebody would stand in."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "Can I", and "stand in the water" behind it.
    "standing.leave": (
        r"(?:can|may|could|should|shall|is it (?:ok|okay|safe|fine)(?: to| for)?|safe to|ok to)"
        r"(?: (?:i|we|you|one|he|she|they|people|kids|students|somebody|anybody|to|my \w+"
        r"|the (?!camera|tripod|legs|bag|pod)\w+|a child))*"
    ),
    "standing.into": (
        r" (?:stand|sit|step|walk|go|get|be)(?: \w+)? (?:in|into|through) (?:the |this |that )?"
        r"(?:water|stream|creek|river|brook|it)\b| (?:wade|ford)\b"
    ),
    # What else somebody may do in water, and how leave is asked for it in the same sentence.
    "standing.play": (
        r"paddl(?:e|ing)|swim(?:s|ming)?|bath(?:e|ing)|splash(?:ing)? (?:about|around|in)"
        r"|wad(?:e|ing)"
        r"|play(?:ing)? (?:in|by|at|near|next to) the (?:waters?|stream|creek|beck|river|brook"
        r"|pool|edge|bank|shallows)|(?:put|dip|stick|dangle|have) (?:\w+ )?(?:feet|toes) in"
        r"|(?:go(?:es)?|get|jump|hop|let (?:\w+ )?\w+) in(?:to)? (?:the |this |that )?"
        r"(?:water|stream|creek|beck|river|brook|pool|it)|cool (?:off|down) in"
    ),
    "standing.may": (
        r"can|may|could|should|shall|ok|okay|safe|fine|alright|all right|allowed|let|want(?:s)? to"
        r"|would like to|is it"
    ),
    # Things that may be put there.
    "standing.thing": (
        r"tripod|phone|camera|filter|lens|bag|leaf|part|photograph (?:them|it)|shoot (?:that|it"
        r"|them)"
    ),
    # Somebody who is in it already.
    "standing.out": (
        r"cant|cannot|help|out|under|fell|fallen|swept|drown\w*|stuck|gone|still|already"
    ),
    "standing.no_play": r"(?:no|not|wont|dont|never|stop|without) (?:\w+ )?(?:more )?",
    # Beside a depth: "knee deep, can I stand there?".
    "standing.stand": r" (?:stand|be|stay)",
    "standing.wading": r"is wading",
    # Marks of a body, by which a depth is told.
    "standing.ankle": r"ankles?",
    "standing.shin": r"(?:mid )?shins?|(?:mid )?calf|calves",
    "standing.knee": r"knees?",
    "standing.thigh": r"thighs?",
    "standing.hip": r"waist|hips?",
    "standing.chest": r"chest",
    # "40 cm deep", "2 metres per second".
    "standing.unit": r"m|cm|met\w+|ft|feet|foot|inch(?:es)?|in",
    "standing.deep": r"deep|depth|water",
    "standing.per": r"per",
    "standing.second": r"second",
    "standing.in_seconds": r"s|sec\w*",
    # A leaf that drifts shows the speed.
    "standing.leaf": r"leaf|twig|stick",
    "standing.fast": r"(?<!not )(?:fast|swift|strong|quick|rushing)",
    # The bottom.
    "standing.seen": r"(?:i )?(?:can )?see the (?:bottom|ground)|bottom (?:is )?visible|clear",
    "standing.hidden": (
        r"(?:cannot|cant|can not|not) see the (?:bottom|ground)"
        r"|bottom (?:is )?(?:hidden|not visible)|murky|not clear"
    ),
    # What makes it a danger, and what takes that away.
    "standing.above_a_drop": (
        r"above (?:a|the|that) (?:\w+ )?(?:falls?|waterfall|drop|rapids?|lip|log ?jam)"
        r"|upstream of (?:a|the) (?:falls?|waterfall|drop|rapids?)"
    ),
    "standing.brown": r"(?<!not )(?:brown|muddy)",
    "standing.rising": r"(?<!not )(?:rising)",
    "standing.alone": r"(?<!not )(?:alone|by myself|on my own)",
    "standing.child_or_frail": (
        r"child|children|kids?|son|daughter|boys?|girls?|toddler|baby|little ones?|grandma|grandpa"
        r"|unsteady|\d+ ?(?:years?|yrs?) ?olds?|\d+ ?yo"
    ),
    "standing.nothing_below": r"(?:nothing|no (?:falls?|drop|rapids?)) (?:below|downstream)",
    "standing.not_brown": r"not brown|clear",
    "standing.not_rising": r"not rising",
    "standing.not_alone": r"not alone|with (?:my|a) \w+",
    "standing.dry_clothes": r"(?:dry|spare) clothes",
}
