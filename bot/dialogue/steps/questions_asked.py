"""Questions that people ask beside the walk, known by their words."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from bot.dialogue.context import KIT_SLOTS
from bot.dialogue.reading import read
from bot.dialogue.steps import group, trade_answers, trip_answers
from bot.dialogue.steps.trade_answers import plainly
from bot.dialogue.turn import Turn

#: What is told, not asked, in a clause that holds it.
_TELLING: Final = frozenset(
    {"symptoms", "meter_stops", "change_stops", "blink", "fall_height_m", "distance_m", "nearest_m"}
)
_SETTINGS: Final = frozenset({"f_number", "shutter_s", "iso"})

#: Where one clause ends and a question may begin.
_CLAUSE: Final = re.compile(
    r"(?<=[?!;.])\s+|\n|,\s*(?=(?:and |but |so )?"
    r"(?:whats?|which|where|how|why|when|do|does|should|can|could|is|am|may)\b)"
    r"|\s+(?=(?:but|and) (?:am|is|can|may|should|do|how|why|what|which|where)\b)"
)
#: How a question begins when it lacks its mark.
_ASKING: Final = re.compile(
    r"(?:(?:and|so|but|ok|okay|hi|hey|linn|please)\W+)*(?:whats?|which|where|how|does?|should|can"
    r"|could|is|are|why|when|may|raw|white balance|wb)\b"
)


def answer(turn: Turn, text: str) -> str | None:
    """Answer the questions of a message that are known here.

    Returns:
        What else the message says, to be read for facts; None when it asks nothing known.
    """
    clauses = _CLAUSE.split(text)
    asked = ((place, say) for place, clause in enumerate(clauses) if (say := _topic(clause)))
    first, say = next(asked, (0, None))
    if say is None:
        return None
    rest = " ".join(clauses[:first] + clauses[first + 1 :])
    told = read(rest)  # "m43, and which f-number?" asks about that camera
    kit = told.only(told.known().keys() & KIT_SLOTS)
    turn.change_person(kit=turn.context.person.kit.updated(kit))
    say(turn, text)
    if not turn.notes:
        turn.reason("why.practice")
    return rest


def _topic(clause: str) -> Callable[[Turn, str], None] | None:
    said = clause.casefold().strip()
    if "what if" in said or not is_asking(said) or _tells(clause):
        return None
    return next((say for pattern, say in _TOPICS if pattern.search(said)), None)


def is_asking(text: str) -> bool:
    """Whether a message has a question's mark or beginning."""
    said = text.casefold().strip()
    return said.endswith("?") or _ASKING.match(said) is not None


def _tells(clause: str) -> bool:
    """Whether a clause tells of a frame or of the fall, whatever it asks beside."""
    known = set(read(clause).known())
    return bool(known & _TELLING) or len(known & _SETTINGS) > 1


_TURN_BACK: Final = (
    r"turn(?:ing)?[ -]?(?:back|around|round)|head(?:ing)? back|(?:start|go|walk) back"
    r"|(?:when|what time|how late).*\b(?:leave|sunset|dark|set off|go home)\b"
    r"|sunset (?:time|rule)"
)

_Answer = Callable[[Turn, str], None]


def _focus(turn: Turn, text: str) -> None:
    """Where to focus; leaves that are soft beside sharp rock were moved by the wind."""
    if re.search(r"\b(?:leaves|ferns?|foliage|branches)\b", text.casefold()):
        trade_answers.say_leaves(turn, text)
    else:
        trade_answers.say_focus(turn, text)


def _iso(turn: Turn, text: str) -> None:
    """Which ISO; beside grain, how much of it an ISO makes."""
    if re.search(r"\b(?:grain|nois)", text.casefold()):
        trip_answers.say_grain(turn, text)
    else:
        trade_answers.say_iso(turn, text)


#: What a question around a visit is about, in front of what is asked of the picture.
_AROUND: Final[tuple[tuple[str, _Answer], ...]] = (
    (
        r"why .*\b\d+(?:/\d+)?(?: ?s\w*)? (?:and )?not\b|why not .*\b1/\d",
        trip_answers.say_why_time,
    ),
    (
        r"polari.* first or .*\bnd|\bnd\b.* first or|(?:order|sequence) of (?:the )?filters",
        plainly("asked.filter_order"),
    ),
    (
        r"which (?:of the )?(?:two )?filters? (?:goes |comes |do i put )?(?:on )?first",
        plainly("asked.filter_order"),
    ),
    (
        r"how (?:do|can|would|will) (?:i|you) (?:know|see|tell|notice).*(?:turned|polari)",
        plainly("asked.polariser_seen"),
    ),
    (
        (
            r"(?:put|join|merge|combine|mix)\w* (?:them|the (?:two|frames|leaves)|both|it)"
            r"(?: \w+){0,3} (?:together|later|at home)|how .*\b(?:blend|merge|join|mask)"
        ),
        plainly("asked.join"),
    ),
    (r"\b(?:grain|grainy|noise|noisy)\b", trip_answers.say_grain),
    (
        r"(?:get|gets|be|in|into) (?:the |in )?shade\b|sun (?:leave|go|gone|disappear)",
        plainly("asked.shade"),
    ),
    (
        (
            r"^(?:is (?:that|it|this)|that|would that be)? ?enough\b|forgot(?:ten)? anything"
            r"|what (?:else )?(?:should|do|to) (?:i |we )?(?:pack|bring|take along|carry)"
        ),
        plainly("asked.pack"),
    ),
    (
        r"\b(?:write|text|tell|leave|say)(?: to)? (?:her|him|my|someone|somebody)\b",
        trip_answers.say_tell_home,
    ),
    (
        r"(?:path|trail|track|road|bridge|way|gorge) (?:is |still |even )*(?:open|closed|shut)",
        plainly("asked.path_open"),
    ),
    (
        r"rough (?:setting|number|value|start)|for (?:my|a|the) card|onto? a card",
        trip_answers.say_card,
    ),
    (
        r"(?:tell|give) (?:the |my )?(?:others|group|students|participants|class|people)",
        group.say_all,
    ),
    (r"differently|(?:next|another) time\b|improve|do better", trip_answers.say_next_time),
    (r"\b(?:copy|copied|backup|back up)\b.*(?:card|files|pictures)", plainly("asked.copy")),
    (
        (
            r"(?:best|which|pick|keep).*\b(?:of|from) (?:the |my |all )?(?:five|\d|frames|series)"
            r"|which (?:would|do|should) (?:you|i) keep"
        ),
        plainly("asked.choose"),
    ),
)
#: What a question is about, the more special first.
_ABOUT: Final[tuple[tuple[str, _Answer], ...]] = (
    *_AROUND,
    (r"polari.*\bnd\b.*(?:together|both)|both filters", plainly("asked.both_filters")),
    (r"polari[sz]er or (?:an? )?nd|nd or (?:the |a )?polari", plainly("asked.polariser_first")),
    (r"(?:many|much|stops?|cost|lose|eat).*polari", trade_answers.say_polariser_stops),
    (r"polari.*(?:many|much|stops|cost|lose|eat|take)", trade_answers.say_polariser_stops),
    (r"(?:how|which way|turn|rotate).*polari|turn it\b", plainly("asked.polariser_turn")),
    (r"polari[sz]er|\bcpl\b", trade_answers.say_polariser),
    (r"\bnd\b|\bnd ?\d+|\bfilters?\b|neutral density|need.*\bstop\b", trade_answers.say_nd),
    (r"\braw\b|\bjpe?g\b", plainly("asked.raw")),
    (r"white balance|\bwb\b|kelvin", plainly("asked.white_balance")),
    (r"histogram", plainly("asked.histogram")),
    (r"\bmeter (?:on|off|for)|(?:where|what|how).*\bmeter\b", plainly("asked.meter")),
    (r"\bleaves\b|\bleaf\b|foliage|branches", trade_answers.say_leaves),
    (r"spray|droplets|drops|keep.*(?:dry|lens clean)", plainly("symptom.spots")),
    (r"hand ?-?held|by hand|(?:without|need|no) (?:an? |the )?tripod", trade_answers.say_by_hand),
    (r"permit|allowed|tripods? ok", plainly("asked.permit")),
    (r"\bphone\b", plainly("asked.phone")),
    (r"\biso\b", _iso),
    (r"\bfocus", _focus),
    (r"f-?stop|f ?/? ?number|aperture|\bf ?/? ?\d+", trade_answers.say_f_number),
    (r"noon|midday|full sun|sunny", plainly("asked.noon")),
    (r"(?:white|bright) sky|avoid.*sky", plainly("asked.sky")),
    (r"choose|pick (?:the|one|between)|which (?:one|frame|shot)", plainly("asked.choose")),
    (r"\bstay\b", plainly("asked.stay")),
    (_TURN_BACK, trade_answers.say_turn_back),
    (r"best (?:time|hour|weather|light|day)|^when|time of day", plainly("asked.best_time")),
    (
        r"shutter|exposure time|how (?:long|slow|fast|many sec)|(?:what|which) (?:time|speed)",
        trade_answers.say_time,
    ),
    (r"stabili[sz]|\bi?bis\b", plainly("asked.stabiliser")),
    (r"portrait|landscape|vertical|horizontal", plainly("asked.form")),
    (r"(?:which|what) (?:lens|focal)", trade_answers.say_lens),
    (r"manual|\bmode\b|automatic|set (?:it|this|that|the camera)\b", plainly("asked.mode")),
    (
        (
            r"\b(?:should|do|must) (?:i|we) (?:have to |need to |also )*"
            r"(?:bring|pack|take along|carry|wear)\b"
        ),
        plainly("asked.pack"),
    ),
)
_TOPICS: Final = tuple((re.compile(pattern), say) for pattern, say in _ABOUT)
