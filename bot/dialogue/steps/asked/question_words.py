"""What a question is about, known by its words: patterns in the order in which they count."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.steps.asked.plain_questions import PLAIN

_TURN_BACK: Final = (
    r"turn(?:ing)?[ -]?(?:back|around|round)|head(?:ing)? back|(?:start|go|walk) back"
    r"|(?:when|what time|how late).*\b(?:leave|sunset|dark|set off|go home|be (?:back|home)"
    r"|return)\b"
    r"|when (?:do|must|should|shall) (?:i|we) (?:(?:have to|need to|must) )?"
    r"(?:go|pack up|be off|get going)(?: now| again)?(?= ?(?:$|[?,.;!]))"
    r"|sunset (?:time|rule)"
)

#: What a question around a visit is about, in front of what is asked of the picture.
_AROUND: Final[tuple[tuple[str, str], ...]] = (
    (
        (
            r"(?:lift|lighten|brighten|lighter|brighter|open up|bring up|rescue|recover)\b.*"
            r"\b(?:rocks?|shadows?|stones?|dark (?:parts?|areas?|bits))\b"
            r"|\b(?:rocks?|shadows?|stones?|dark (?:parts?|areas?|bits))\b.*"
            r"\b(?:lift\w*|lighter|brighter|lighten|brighten)\b"
        ),
        "lift_rock",
    ),
    (
        (
            r"\b(?:can|could|should|may|shall|do|ok(?:ay)?|fine|allowed|bad|better|why not)\b[^?%]*"
            r"\bcrop(?:ped|ping)?\b(?! ?(?:sensor|camera|body|factor|frame))"
            r"|\bcrop(?: it| that| this)? or (?:move|step|shift|zoom|shoot)|\b(?:move|zoom|step"
            r"(?: aside)?) or crop\b"
        ),
        "crop",
    ),
    (
        (
            r"anything else (?:that )?(?:i|we) (?:should|could|can|might) (?:try|do|shoot)"
            r"|what else (?:can|could|should|shall) (?:i|we) (?:try|shoot|photograph)"
        ),
        "one_frame",
    ),
    (r"\b(?:live photo|burst)s?\b", "phone"),
    (
        (
            r"\b(?:why|what for|how come|what(?:'?s| is| does| good))\b"
            r"[^.;]{0,24}"
            r"\b(?:(?:self-?)?timer|(?:cable |remote )release|hands off)\b"
            r"(?! (?:on|mode) my\b)"
            r"|\b(?:remote|release|app) or (?:an? |the )?(?:self-?)?timer\b"
            r"|\btimer or (?:an? |the )?(?:\w+ )?(?:remote|release|app)\b"
        ),
        "timer",
    ),
    (
        r"why .*\b\d+(?:/\d+)?(?: ?s\w*)? (?:and )?not\b|why not .*\b1/\d",
        "why_time",
    ),
    (
        r"polari.* first or .*\bnd|\bnd\b.* first or|(?:order|sequence) of (?:the )?filters",
        "filter_order",
    ),
    (
        (
            r"which (?:of the )?(?:two )?filters? (?:goes |comes |do i put )?(?:on )?first"
            r"|\bwhich(?: one)?(?: of (?:them|the two|both|these))?"
            r" (?:goes|comes|should go|do (?:i|we|they) (?:put|screw|mount)) on first\b"
        ),
        "filter_order",
    ),
    (
        r"how (?:do|can|would|will) (?:i|you) (?:know|see|tell|notice).*(?:turned|polari)",
        "polariser_seen",
    ),
    (
        (
            r"(?:put|join|merge|combine|mix)\w* (?:them|the (?:two|frames|leaves)|both|it)"
            r"(?: \w+){0,3} (?:together|later|at home)|how .*\b(?:blend|merge|join|mask)"
        ),
        "join_frames",
    ),
    (r"\b(?:grain|grainy|noise|noisy)\b", "grain"),
    (
        r"(?:get|gets|be|in|into) (?:the |in )?shade\b|sun (?:leave|go|gone|disappear)",
        "shade_when",
    ),
    (
        (
            r"how long (?:does|will|is|do|would) (?:the |our |it |we )?(?:walk|hike|way|path|trail"
            r"|(?:take|need) (?:us )?to (?:walk|get|go|hike))|stay (?:till|until|to) "
            r"|how (?:many hours|much time) (?:do|can|will|have) (?:i|we)\b"
        ),
        "time_forgotten",
    ),
    (
        (
            r"what else (?:do|should|must|shall) (?:i|we) (?:have to |need to )?(?:think|take|know"
            r"|consider|do)|^(?:is (?:that|it|this)|that|would that be)? ?enough\b(?!.*\bf ?/?\d)"
            r"|forgot(?:ten)? anything"
            r"|what (?:else )?(?:should|do|to) (?:i |we )?(?:pack|bring|take along|carry)"
            r"|how many (?:dry |spare )*(?:cloths?|towels?|rags?|batteries|cards?)\b"
        ),
        "pack",
    ),
    (
        (
            r"(?<!would you )(?<!you'd )(?<!do you )(?<!should you )(?<!, i )(?<!and i )"
            r"(?<!would i )(?<!do i )(?<!should i )"
            r"\b(?:write|text|tell|leave|say)(?: to| for)? (?:her|him|my|someone|somebody|them)\b"
            r"(?! (?:\w+ )?about\b)"
            r"|what (?:do|should|shall|can|must) (?:i|we) (?:leave|write|put)\b.*\b(?:home|note)\b"
            r"|\bnote (?:home|for (?:home|my|the one))\b"
        ),
        "tell_home",
    ),
    (
        r"(?:path|trail|track|road|bridge|way|gorge) (?:is |still |even )*(?:open|closed|shut)",
        "path_open",
    ),
    (
        (
            r"rough (?:setting|number|value|start)|roughly (?:what|which) (?:setting|number|time)s?"
            r"|for (?:my|a|the) card|onto? a card"
        ),
        "rough_card",
    ),
    (
        r"(?:tell|give) (?:the |my )?(?:others|group|students|participants|class|people)",
        "mixed_group",
    ),
    (
        (
            r"\breview\b.*\b(?:pictures|photos|frames|people|students|hour|minutes|group)\b"
            r"|\bcritique\b"
            r"|\b(?:judge|criticis\w+|criticiz\w+|discuss|comment on)\b.*\b(?:each other"
            r"|one another|their (?:pictures|photos|frames))\b"
        ),
        "group_review",
    ),
    (r"\bdron(?:es?|s)?\b|\bdrohnen?\b", "drone"),
    (r"differently|(?:next|another) time\b|improve|do better", "next_time"),
    (r"\b(?:copy|copied|backup|back up)\b.*(?:card|files|pictures)", "copy_card"),
    (
        (
            r"(?:best|which|pick|keep).*\b(?:of|from) (?:the |my |all )?(?:five|\d|frames|series)"
            r"|which (?:would|do|should) (?:you|i) keep"
        ),
        "choose",
    ),
)
#: A filter whose strength is turned.
_VARIABLE: Final = (
    r"(?:\b(?:vari(?:able|o)?|adjustable|fader|turnable|rotating|stepless)[ -]?(?:nds?\b|gr[ae]y"
    r"|filter|neutral|densit)|\bvari(?:able|o)?(?= (?:and|with|or|one)|\W*$)|\bv-?nds?\b"
    r"|\bfaders?\b"
    r"|\b(?:nds?|gr[ae]y (?:one|filter)s?)\b[^?.;]{0,20}\b(?:twist|rotat|ring)\w*)"
)
_POLARISER: Final = r"\b(?:polari\w+|cpl|pola?)\b"
#: What is asked of it, in front of what is asked of any ND and of the polariser.
_OF_VARIABLE: Final[tuple[tuple[str, str], ...]] = (
    (
        rf"{_VARIABLE}.*{_POLARISER}|{_POLARISER}.*{_VARIABLE}",
        "variable_polariser",
    ),
    (
        (
            rf"{_VARIABLE}.*\b(?:cross|x)\b"
            r"|\b(?:dark|black|shadowy?) (?:cross|x)\b.*\b(?:filters?|nds?)\b"
        ),
        "variable_cross",
    ),
    (
        (
            rf"\b(?:turn|twist|rotat|dial|set|crank)\w*\b.*{_VARIABLE}"
            rf"|\bhow (?:far|much|dark|strong)\b.*{_VARIABLE}"
            rf"|{_VARIABLE}.*\b(?:turn|twist|rotat|dial|set|how far|how dark|ring|marks?)\w*\b"
            rf"|\bwhat do (?:i|we|you) do with\b.*{_VARIABLE}"
        ),
        "variable_turn",
    ),
)
#: What a question is about, the more special first.
_ABOUT: Final[tuple[tuple[str, str], ...]] = (
    *PLAIN,
    *_OF_VARIABLE,
    *_AROUND,
    (
        (
            r"^(?:and |so |ok |but )*(?:which|what)(?: one)?(?: of (?:them|these|those|the two"
            r"|my two|both))?\b[^?]*\b(?:be|go(?:es)?|stays?|put|leave|have|keep) on\b(?! first)"
            r"|^(?:and |so |ok |but )*(?:which|what)(?: of (?:my|the))? filters?\b.*"
            r"\b(?:on|use|put|take|need|fit|mount|screw|bring|pack)\b(?! first)"
        ),
        "which_filter",
    ),
    (r"polari.*\bnd\b.*(?:together|both)|both filters", "both_filters"),
    (
        (
            r"\b(?:polari[sz]er|cpl|pola?)\b[^?.;]{0,40}? or (?:do (?:i|we|they) need |is |does "
            r"|will |must )?(?:only |just |also )?(?:an? |the |my )?nd\b"
            r"|\bnd\b[^?.;]{0,40}? or (?:is |does |will |would )?(?:only |just |also )?"
            r"(?:the |a |my )?(?:polari|cpl\b|pola?\b)"
        ),
        "polariser_first",
    ),
    (r"(?:many|much|stops?|cost|lose|eat).*polari", "polariser_stops"),
    (r"polari.*(?:many|much|stops|cost|lose|eat|take)", "polariser_stops"),
    (r"(?:how|which way|turn|rotate).*polari|turn it\b", "polariser_turn"),
    (r"polari[sz]er|\bcpl\b", "polariser"),
    (
        (
            r"\bnd\b|\bnd ?\d+|\bfilters?\b|neutral density|need.*\bstop\b"
            r"|\bstop(?:per)?\b.*\b(?:any use|of use|useful|worth|leave|at home|bring|take)\b"
        ),
        "need_nd",
    ),
    (r"what (?:does|do you mean by|is) (?:an? )?raw\b|raw (?:mean|stand for)", "raw_means"),
    (r"\braw\b|\bjpe?g\b", "raw"),
    (r"why\b.*\bf ?/? ?(?:16|18|22|32)\b|\bno f ?/? ?(?:16|18|22|32)\b", "why_not_f22"),
    (r"white balance|\bwb\b|kelvin", "white_balance"),
    (r"histogram", "histogram"),
    (r"\bmeter (?:on|off|for)|(?:where|what|how).*\bmeter\b", "meter"),
    (r"\bleaves\b|\bleaf\b|foliage|branches|\bferns?\b|\bbracken\b|\bsecond frame\b", "leaves"),
    (r"spray|droplets|drops|keep.*(?:dry|lens clean)", "spray"),
    (r"hand[ -]?(?:held|hold\w*)|by hand|(?:without|need|no) (?:an? |the )?tripod", "by_hand"),
    (r"permit|allowed|tripods? ok", "permit"),
    (
        r"(?:darker|more dark|less bright)\b.*\bphone\b|\bphone\b.*(?:darker|less bright)",
        "phone_darker",
    ),
    (r"\bphone\b", "phone"),
    (r"\biso\b", "iso_or_grain"),
    (r"\bfocus", "focus_where"),
    (r"f-?stop|f ?/? ?number|aperture|\bf ?/? ?\d+", "f_number"),
    (r"noon|midday|full sun|sunny", "noon"),
    (r"(?:white|bright) sky|avoid.*sky", "sky"),
    (r"\b(?:come back|return|wait)\b.*\b(?:evening|later|afternoon|sunset)\b", "come_back"),
    (r"choose|pick (?:the|one|between)|which (?:one|frame|shot)", "choose"),
    (r"\bstay\b", "stay"),
    (_TURN_BACK, "time_forgotten"),
    (r"best (?:time|hour|weather|light|day)|^when|time of day", "best_time"),
    (
        (
            r"shutter|exposure time|how (?:long|slow|fast|many sec)|(?:what|which) (?:time|speed)"
            r"(?! (?:is it|does|will|are we|(?:do|should|must|can) (?:i|we) (?:have to |need to )?"
            r"(?:be|leave|start|go|turn|head|set off|return|get)))"
        ),
        "silky_time",
    ),
    (r"stabili[sz]|\bi?bis\b", "stabiliser"),
    (r"what (?:is|does|do you mean by|are) (?:portrait|landscape)\b", "form_means"),
    (r"portrait|landscape|vertical|horizontal", "form"),
    (r"(?:which|what) (?:lens|focal)", "lens"),
    (r"manual|\bmode\b|automatic|set (?:it|this|that|the camera)\b", "mode"),
    (
        (
            r"\b(?:should|do|must) (?:i|we) (?:have to |need to |also )*"
            r"(?:bring|pack|take along|carry|wear)\b"
        ),
        "pack",
    ),
)
_TOPIC_OF: Final = tuple((re.compile(pattern), topic) for pattern, topic in _ABOUT)


def topic_named(said: str) -> str | None:
    """The topic that a question names; None where it names none.

    Args:
        said: a clause that asks, in lower case.
    """
    return next((topic for pattern, topic in _TOPIC_OF if pattern.search(said)), None)
