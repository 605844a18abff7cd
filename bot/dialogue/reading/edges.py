"""What a message tells of the frame's edges and its anchor, asked or not."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.phrases import any_of, plain
from bot.dialogue.reading.slips import mend_slips

_COVER: Final = r"(?:leaves|leaf|branches|trees?|canopy|foliage|rock|moss|ferns?|bushes|green)"
_ABOVE: Final = r"(?:over|above|along|across|at|all along|right over|on)"
_TOP: Final = r"(?:the )?(?:top(?: edge)?|lip|crest|fall)"
_EDGES: Final = r"(?:edges?|sides?|corners?|borders?|frame(?:'s| is)?|margins?)"
_SIDE: Final = (
    r"(?:(?:the |my )?(?:left|right|top|bottom|lower|upper)(?:[ -](?:left|right))?"
    r"(?: (?:corner|edge|side|border|hand side))?|(?:the |a |one )?(?:corner|edge|side|border))"
)
_CORNER: Final = r"(?:bottom|lower|upper|top)[ -](?:left|right)"
_THING: Final = r"(?:branch|twig|trunk|stick|log|fern|tree|root|bush|grass|leaf)"
_CLEAN: Final = r"(?:clean|clear|tidy|free|empty|fine|good|ok|okay)"

_GONE: Final = any_of(
    r"(?:it|that|they)(?:'s| is| are|'re) (?:gone|out|away)(?: now)?",
    r"(?:moved|cropped|zoomed|tilted|stepped|cut)(?: \w+){0,4} (?:out|away|off|gone)",
    r"(?:cropped|zoomed|cut) (?:it|that|them)|by (?:zooming|moving|cropping|tilting)",
    r"(?:moved|stepped|turned) away from|out of (?:it|the frame|the picture|shot)(?: now)?"
    r"|(?:it's|it is|that's|they're) outside(?: the frame| of it)?",
    r"(?:took|taken|cleared|brushed|picked) (?:it|that|them) (?:away|off|out|up)",
    r"which (?:i|we) (?:took|have taken|cleared|removed)|removed|fixed|sorted",
    r"(?:zoomed|moved|stepped|cropped|went|walked) past (?:it|that|them|this)",
    r"(?:all )?gone(?: now)?",
)
#: Said while an edge is asked about, without naming it.
_ASKED: Final = any_of(
    rf"{_COVER}s? (?:now )?(?:cover|hide|block|close|fill)\w* (?:it|that|the (?:sky|gap|hole|top))",
    r"(?:covered|hidden|closed|filled)(?: up)? now|(?:it's|is) (?:covered|hidden)",
    rf"nothing (?:bright|white|odd|there|sticks|comes|in)\b|(?:just|only|all) {_COVER}",
)
_AT_A_SIDE: Final = any_of(
    r"(?:left|right|lower|bottom|upper) (?:corner|side|edge|border)|(?:corner|side) (?:had|has)"
)
#: All four edges at once.
_ALL_CLEAN: Final = any_of(
    rf"(?:edges?|borders?|margins?|frame(?:'s| is)?)(?: (?:is|are|all|look|looks|both)){{0,3}}"
    rf" {_CLEAN}",
    rf"{_CLEAN} (?:all (?:a)?round|edges|borders|margins)|all (?:the )?(?:edges|borders) {_CLEAN}",
    r"nothing(?: \w+){0,3} (?:at|on|in|along) (?:the |any )?(?:edges|borders)",
)
SETTLED: Final = {"top": "covered", "sides": "clean"}
_TOLD: Final = {
    "top": {
        "covered": any_of(
            rf"{_COVER}(?: \w+){{0,3}} {_ABOVE} {_TOP}",
            rf"{_COVER}s?(?: all)? (?:cover|hide|fill|close|line)s? {_TOP}",
            rf"(?:top|upper)(?: edge| border)?(?: ?[:=,-]| is| has|'s)+(?: (?:a|an|all|just|only"
            rf"|the))*"
            rf" (?:\w+ )?(?:{_COVER}|wall|cliff|dark|wood\w*|forest|stone)\b",
            r"sky(?:'s| is)?(?: all| now| completely)* (?:gone|cropped(?: out)?|covered|hidden"
            r"|out(?: of (?:it|the frame|shot))?)(?= ?(?:$|[.,;!]|now\b))",
            r"no (?:white )?sky(?: (?:in|at|above|over|visible|showing))?(?: \w+){0,3}",
            rf"{_TOP}(?: is|'s) (?:all )?(?:covered|{_COVER}|dark)",
        ),
        "sky": any_of(
            r"(?:(?:white|bright|pale|grey|bit of|patch of|strip of) )+sky(?: \w+){0,3}"
            r" (?:at|along|above|over|in) (?:the )?(?:top|lip|trees|leaves)",
            r"(?:there's|there is|see|got|have) (?:(?:a|some|still|bit|of|strip|patch|little) )*"
            r"(?:white|bright) sky",
            r"sky(?:'s| is| looks?)?(?: \w+){0,2} (?:bright|white|blown(?: out)?"
            r"|burnt(?: out)?)(?: (?:up|out|there))* (?:at|along|above|over|in|on)"
            r" (?:the )?(?:very )?(?:top|trees|leaves|edge)",
            r"sky (?:hole|gap|peeks?|peeking|shows|showing)(?: \w+){0,4}",
        ),
        "lip": any_of(
            r"lip(?: is|'s)?(?: just| only| barely)+ (?:inside|in|within) (?:the )?(?:frame"
            r"|picture|edge)"
            r"|(?:lip|fall)(?: \w+){0,2} touch(?:es|ing) (?:the )?(?:top|edge|border)"
        ),
    },
    "sides": {
        "clean": any_of(
            rf"{_EDGES}(?: (?:is|are|all|look|looks|both|and|corners|sides)){{0,4}} {_CLEAN}",
            rf"{_CLEAN} (?:all (?:a)?round|{_EDGES}|at the {_EDGES})",
            rf"(?:nothing|no)(?: \w+){{0,3}} (?:at|on|in|along) (?:the |any )?{_EDGES}",
            rf"nothing (?:\w+s )?(?:the |my |any )?{_EDGES}",
        ),
        "twig": any_of(
            rf"{_THING}s?(?: \w+){{0,4}} (?:at|on|in|from|into|over) {_SIDE}",
            rf"{_SIDE} (?:has|shows|there's) an? {_THING}",
            rf"{_THING}s? {_CORNER}",
        ),
        "bright": any_of(
            rf"(?<!sky is )(?<!sky looks )(?<!sky's )(?<!sky is super )(?<!sky is so )"
            rf"(?<!sky is too )(?<!sky is very )(?<!sky is really )"
            rf"(?:bright|white|shiny)(?! sky)(?: (?!sky\b)\w+){{0,3}} (?:at|on|in) {_SIDE}",
            rf"(?:bright|white|shiny|pale) (?!sky)\w+ {_CORNER}",
            rf"{_SIDE} (?:is|are|looks?) (?:too |very )?(?:bright|white)",
            rf"{_SIDE}(?: has| shows| there's)? an? (?:bright|white|shiny) \w+",
        ),
    },
}
#: Behind these words stands what is so after all.
_SECOND_THOUGHT: Final = re.compile(
    r"^.*(?:[.,;!?]|\b(?:hm+|oh|no|wait)) *(?:actually|no wait|wait no|oh wait|on second thoughts?"
    r"|looking again)\b"
)
#: "Clean, apart from a branch": what is not.
_EXCEPT: Final = re.compile(
    rf"\b{_EDGES}\b[^.;]*\b{_CLEAN}[^.;\w]*(?:apart from|except(?: for)?|but for|besides|other than"
    rf"|only)\b|\b{_CLEAN}[^.;\w]*(?:apart from|except(?: for)?|but for|other than)\b"
)
#: Words of a complaint or of the camera's warning: then the place is where something went wrong.
_OTHER: Final = re.compile(
    r"\b(?:blink\w*|flash\w*|histogram|soft|blur\w*|mush\w*|smear\w*|sharp|focus|crisp"
    r"|may i|can i|should i|stand|climb|walk|step (?:in|on|over|out|up)\w*)\b|\?"
)
#: More words than these tell of more (own rule).
_FEW: Final = 6
_CLAUSES: Final = re.compile(r"(?<=[.;!?]) +")


def edges_told(text: str, asked: str = "") -> dict[str, str]:
    """The checks of a composition that a message answers, by their names.

    Args:
        text: as typed, in English or glossed.
        asked: the check that is asked about; what names no edge is of that one.

    Returns:
        For "top" and "sides" the option that is told; a twig that was moved out leaves the sides
        clean. What is told of blinking or softness at an edge is no composition.
    """
    text = mend_slips(plain(text))
    after = _EXCEPT.sub("", _SECOND_THOUGHT.sub("", text))
    if after != text and (told := edges_told(after, asked)):
        return told
    clauses = _CLAUSES.split(text)
    said = " ".join(clause for clause in clauses if not _OTHER.search(clause))
    #: "Trees on top" enter no side.
    sides = _TOLD["top"]["covered"].sub(" ", said)
    parts = {"top": said, "sides": sides}
    found = {name: value for name in _TOLD if (value := _first(_TOLD[name], parts[name]))}
    gone = _GONE.search(said) is not None
    thing = found.get("sides") in {"twig", "bright"} or re.search(rf"\b{_THING}\b", said)
    if gone and (thing or _AT_A_SIDE.search(said)):
        found["sides"] = "clean"
    if _ALL_CLEAN.search(said):
        found = SETTLED | found
    if asked in SETTLED and not found and (gone or _ASKED.search(said)):
        found = {asked: SETTLED[asked]}
    return found


#: A step aside: nothing but what was done so that a thing goes out of the frame.
_STEP: Final = re.compile(
    r"\b(?:ok(?:ay)?|so|well)?[ ,]*(?:i )?(?:moved|stepped|shifted)(?: (?:a|bit|little|half|steps?"
    r"|foot|feet|metre|meter|yard|inch|inches|few|one|two|\d+|cm|m|ft|over|aside|to|the|left|right"
    r"|back|down|lower))+(?=$|[ ,.;!])[ ,.;]*(?:and )?"
)


def is_moved_out(text: str, *, looked_at: bool) -> bool:
    """Whether a message says that a thing went out of the frame, and nothing else.

    Args:
        text: in English or glossed.
        looked_at: whether the frame's edges are; then a step tells enough, else the thing's name.
    """
    said = plain(text)
    rest, steps = _STEP.subn(" ", said)
    thing = re.search(rf"\b{_THING}\b|\bsky\b", rest)
    left = re.sub(rf"\b(?:the|a|that|and|is|now|{_THING}|sky)\b|[ ,.;!]", "", _GONE.sub(" ", rest))
    told = thing is not None or (looked_at and steps > 0)
    return _GONE.search(rest) is not None and not left and told


def is_gone(text: str) -> bool:
    """Whether a message says in a few words that a thing is out of the frame now."""
    said = _STEP.sub(" ", plain(text))
    return len(said.split()) <= _FEW and _GONE.search(said) is not None and not _OTHER.search(said)


#: "I moved, now there's leaves": said after white sky was to be covered.
_COVERED: Final = re.compile(
    rf"\b(?:moved|stepped|shifted|now|lower|crouched|tilted)\b[^.;!?]{{0,30}}\b{_COVER}\b"
)
_STIRS: Final = re.compile(r"\b(?:moving|wind\w*|blow\w*|flutter\w*|shak\w*|stir\w*|away from)\b")


def is_covered(text: str) -> bool:
    """Whether a message says that something green or dark stands at the edge now."""
    said = plain(text)
    quiet = not (_STIRS.search(said) or _OTHER.search(said))
    return quiet and _COVERED.search(said) is not None


def _first(values: dict[str, re.Pattern[str]], said: str) -> str | None:
    return next((value for value, pattern in values.items() if pattern.search(said)), None)
