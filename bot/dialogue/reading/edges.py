"""What a message tells of the frame's edges and its anchor, asked or not."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading import edges_asked
from bot.dialogue.reading.edge_words import COVER, FRAME, THING, THINGS, TOUCHES
from bot.dialogue.reading.phrases import any_of, plain
from bot.dialogue.reading.slips import mend_slips

_ABOVE: Final = r"(?:over|above|along|across|at|all along|right over|on)"
_TOP: Final = r"(?:the )?(?:top(?: edge)?|lip|crest|fall)"
_EDGES: Final = r"(?:edges?|sides?|corners?|borders?|frame(?:'s| is)?|margins?)"
_SIDE: Final = (
    r"(?:(?:the |my )?(?:left|right|top|bottom|lower|upper)(?:[ -](?:left|right))?"
    r"(?: (?:corner|edge|side|border|hand side))?|(?:the |a |one )?(?:corner|edge|side|border))"
)
_CORNER: Final = r"(?:bottom|lower|upper|top)[ -](?:left|right)"
_CLEAN: Final = r"(?:clean|clear|tidy|free|empty|fine|good|ok|okay)"

#: "It's gone brown" tells of water, "they're gone under" of stones in it.
_NO_TURN: Final = (
    r"(?! (?:all |so |really |very |a bit )*(?:brown|murky|muddy|dark|black|white|grey|quiet|loud"
    r"|cold|cloudy|wrong|under|up|over|in|missing)\b)"
)
_GONE: Final = any_of(
    rf"(?:it|that|they)(?:'s| is| are|'re) (?:gone|out|away){_NO_TURN}(?: now)?",
    r"(?:moved|cropped|zoomed|tilted|stepped|cut)(?: \w+){0,4} (?:out|away|off|gone)",
    r"(?:cropped|zoomed|cut) (?:it|that|them)|by (?:zooming|moving|cropping|tilting)",
    r"(?:moved|stepped|turned) away from|out of (?:it|the frame|the picture|shot)(?: now)?"
    r"|(?:it's|it is|that's|they're) outside(?: the frame| of it)?",
    r"(?:took|taken|cleared|brushed|picked) (?:it|that|them) (?:away|off|out|up)",
    r"which (?:i|we) (?:took|have taken|cleared|removed)|removed|fixed|sorted",
    r"(?:zoomed|moved|stepped|cropped|went|walked) past (?:it|that|them|this)",
    rf"(?:all )?gone{_NO_TURN}(?: now)?",
)
#: Said while an edge is asked about, without naming it.
_ASKED: Final = any_of(
    rf"{COVER}s? (?:now )?(?:cover|hide|block|close|fill)\w* (?:it|that|the (?:sky|gap|hole|top))",
    r"(?:covered|hidden|closed|filled)(?: up)? now|(?:it's|is) (?:covered|hidden)",
    rf"nothing (?:bright|white|odd|there|sticks|comes|in)\b|(?:just|only|all) {COVER}",
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
            rf"{COVER}(?: \w+){{0,3}} {_ABOVE} {_TOP}",
            rf"{COVER}s?(?: all)? (?:cover|hide|fill|close|line)s? {_TOP}",
            rf"(?:top|upper)(?: edge| border)?(?: ?[:=,-]| is| has|'s)+(?: (?:a|an|all|just|only"
            rf"|the))*"
            rf" (?:\w+ )?(?:{COVER}|wall|cliff|dark|wood\w*|forest|stone)\b",
            r"sky(?:'s| is)?(?: all| now| completely)* (?:gone|cropped(?: out)?|covered|hidden"
            r"|out(?: of (?:it|the frame|shot))?)(?= ?(?:$|[.,;!]|now\b))",
            r"no (?:white )?sky(?: (?:in|at|above|over|visible|showing))?(?: \w+){0,3}",
            rf"{_TOP}(?: is|'s) (?:all )?(?:covered|{COVER}|dark)",
            r"top(?: edge|'s|s| is)*(?: all| now| too)* (?:fixed|sorted|done|clean|clear|fine|ok"
            r"|okay|good)(?=$|[ ,.;!])(?! too\b)",
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
            r"|picture|edge)",
            rf"(?:lip|crest|fall)(?:'s| is)?(?: \w+){{0,2}} {TOUCHES} {FRAME}",
            r"(?:lip|crest)(?:'s| is)?(?: \w+){0,2} (?:at|on|against|up to) (?:the )?(?:very )?"
            rf"(?:top )?(?:edge|border|top) of {FRAME}",
            r"(?:lip|crest)(?:'s| is)?(?: \w+){0,2} cut(?: off)?(?! on purpose)",
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
            rf"(?<!no )(?<!any ){THINGS}(?: \w+){{0,4}} (?:at|on|in|from|into|over) {_SIDE}",
            rf"{_SIDE} (?:has|shows|there's) an? {THING}",
            rf"{THINGS} {_CORNER}",
        ),
        "bright": any_of(
            rf"(?<!sky is )(?<!sky looks )(?<!sky's )(?<!sky is super )(?<!sky is so )"
            rf"(?<!sky is too )(?<!sky is very )(?<!sky is really )"
            rf"(?:bright|white|shiny)(?! sky| {THING})(?: (?!sky\b)\w+){{0,3}} (?:at|on|in)"
            rf" {_SIDE}",
            rf"(?:bright|white|shiny|pale) (?!sky|{THING})\w+ {_CORNER}",
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
#: What stands at one side alone tells nothing of the other.
_ONE_SIDE: Final = re.compile(
    r"\b(?:left|right|bottom|lower|upper)(?: (?:hand )?(?:side|corner|edge|border))?"
    rf"(?: is|'s| all)* {_CLEAN}"
)
_OF_TOP: Final = re.compile(r"\b(?:tops?|upper|above|sky|lip|crest)\b")
#: Leaves that move are a frame of their own, wherever they are.
_SWAYS: Final = re.compile(
    r"\b(?:moving|moves|wind\w*|blow\w*|flutter\w*|shak\w*|stir\w*|sway\w*|nodd\w*)\b"
)
#: More words than these tell of more (own rule).
_FEW: Final = 6
_SENTENCES: Final = re.compile(r"(?<=[.;!?]) +")
_CLAUSES: Final = re.compile(r"[.,;:!?] +|\b(?:and|but)\b")


def edges_told(text: str, asked: str = "") -> dict[str, str]:
    """The checks of a composition that a message answers, by their names.

    Args:
        text: as typed, in English or glossed.
        asked: the check that is asked about; what names no edge is of that one.

    Returns:
        For "top" and "sides" the option that is told; a twig that was moved out leaves the sides
        clean. What is told of blinking or softness at an edge is no composition.
    """
    found: dict[str, str] = {}
    for name, value in things_told(text, asked):
        found.setdefault(name, value)
    return found


def things_told(text: str, asked: str = "") -> tuple[tuple[str, str], ...]:
    """Everything that a message tells of the edges: two things may stand at one of them.

    Args:
        text: as typed, in English or glossed.
        asked: the check that is asked about.

    Returns:
        Pairs of a check and an option; what a check is kept as comes first.
    """
    text = mend_slips(plain(text))
    after = _EXCEPT.sub("", _SECOND_THOUGHT.sub("", text))
    if after != text and (told := things_told(after, asked)):
        return told
    said = " ".join(one for one in _SENTENCES.split(text) if not _OTHER.search(one))
    if _ALL_CLEAN.search(said):
        return tuple(SETTLED.items())
    top, sides = _first(_TOLD["top"], said), _sides(said, asked=asked in SETTLED)
    if asked == "top" and top is None:
        top = edges_asked.top(said)
    gone = _GONE.search(said) is not None
    found = [("top", value) for value in (top, *_also_lip(said, top)) if value is not None]
    found += [("sides", value) for value in sides]
    if asked in SETTLED and not found and (gone or _ASKED.search(said)):
        found = [(asked, SETTLED[asked])]
    return tuple(found)


def _also_lip(said: str, top: str | None) -> tuple[str, ...]:
    """The lip at the edge, where leaves stand above it, too."""
    lip = _TOLD["top"]["lip"].search(said) is not None
    return ("lip",) if lip and top != "lip" else ()


def _sides(said: str, *, asked: bool) -> tuple[str, ...]:
    """What is told of the sides; behind a thing that is gone, only what came after it."""
    #: "Trees on top" enter no side.
    said = _TOLD["top"]["covered"].sub(" ", said)
    said = ", ".join(one for one in _CLAUSES.split(said) if not _SWAYS.search(one))
    end = _gone_until(said)
    faults = _all(_TOLD["sides"], said[end:])
    if asked:
        faults = tuple(dict.fromkeys((*faults, *edges_asked.sides(said[end:]))))
    if end:
        return faults or ("clean",)
    clean = _TOLD["sides"]["clean"].search(_ONE_SIDE.sub(" ", said) if faults else said)
    return ("clean",) if clean else faults


def _gone_until(said: str) -> int:
    """Where the last clause ends that says that a thing at a side is gone; 0 without one."""
    end = start = 0
    for mark in (*_CLAUSES.finditer(said), None):
        stop = len(said) if mark is None else mark.start()
        clause = said[start:stop]
        named = _has_thing(said[:stop]) and not (_OF_TOP.search(clause) and not _has_thing(clause))
        if _GONE.search(clause) and named:
            end = stop
        start = stop if mark is None else mark.end()
    return end


def _has_thing(said: str) -> bool:
    """Whether a thing at a side is named, or one of the sides."""
    found = _all(_TOLD["sides"], said) or re.search(rf"\b{THING}\b", said)
    return bool(found or _AT_A_SIDE.search(said))


def _all(values: dict[str, re.Pattern[str]], said: str) -> tuple[str, ...]:
    """What is wrong at the sides, as it stands in the message."""
    matches = {value: values[value].search(said) for value in ("twig", "bright")}
    found = {value: match.start() for value, match in matches.items() if match}
    return tuple(sorted(found, key=lambda value: found[value]))


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
    thing = re.search(rf"\b{THING}\b|\bsky\b", rest)
    left = re.sub(rf"\b(?:the|a|that|and|is|now|{THING}|sky)\b|[ ,.;!]", "", _GONE.sub(" ", rest))
    told = thing is not None or (looked_at and steps > 0)
    return _GONE.search(rest) is not None and not left and told


def is_gone(text: str) -> bool:
    """Whether a message says in a few words that a thing is out of the frame now."""
    said = _STEP.sub(" ", plain(text))
    return len(said.split()) <= _FEW and _GONE.search(said) is not None and not _OTHER.search(said)


#: "I moved, now there's leaves": said after white sky was to be covered.
_COVERED: Final = re.compile(
    rf"\b(?:moved|stepped|shifted|now|lower|crouched|tilted)\b[^.;!?]{{0,30}}\b{COVER}\b"
)
_STIRS: Final = re.compile(r"\b(?:moving|wind\w*|blow\w*|flutter\w*|shak\w*|stir\w*|away from)\b")


def is_covered(text: str) -> bool:
    """Whether a message says that something green or dark stands at the edge now."""
    said = plain(text)
    quiet = not (_STIRS.search(said) or _OTHER.search(said))
    return quiet and _COVERED.search(said) is not None


def _first(values: dict[str, re.Pattern[str]], said: str) -> str | None:
    return next((value for value, pattern in values.items() if pattern.search(said)), None)
