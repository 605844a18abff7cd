"""What the camera's warning and its histogram show after a test frame."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Blink
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.not_known import says_not_known
from bot.dialogue.reading.phrases import any_of, exactly

#: The warning by the trade's words; "warning" alone may be a sign at the path.
_BLINK: Final = (
    r"(?:zebra (?:stripes|pattern|lines)|clip warnings?|(?<!a )blink\b|blink\w+|wink(?:s|ing)"
    r"|puls(?:es|ing)|flicker\w*|flash(?:es|ing)|zebras?"
    r"|clipp\w*(?! (?:on|to))"
    r"|(?:\w\w+s|they|not|n't|does|do|still|will|all|to|water|white|foam|fall|bits) flash(?! flood"
    r"| ?light| card| is| on(?! (?:the|some|those|wet|my) )| off"
    r"| allowed| gun| unit| photo\w*| of| mode| sync| fires?| fired| drive| or| ready)"
    r"|(?:highlights?|whites?|foam|water|falls?|it|it's|sky) (?:\w+ )?(?:blown(?! out)|clips?)"
    r"|(?:part|bit|half|top|lip|middle|bottom|edge) clips"
    r"|blown[ -](?:highlights?|whites?)|(?:lights?|lit) up(?! the)"
    r"|highlight (?:alerts?|alarms?|indicators?)|overexposure (?:alerts?|warnings?)"
    r"|(?:going|goes|go|gone|went) off(?= in the (?:highlights?|whites?|water|foam))"
    r"|highlight warnings?|warnings? (?:off|gone|shows?|light)|(?<=no )warnings?)"
)
_BLINKS: Final = any_of(_BLINK)
_HISTOGRAM: Final = any_of(
    "histograms?", "histos?", "hist", "graphs?", r"(?<!s )(?<!s-)curve(?! of| in)"
)
#: Warning and histogram are told apart by these.
_PARTS: Final = re.compile(r"\bbut\b|\band (?=the hist)|;|\. |, (?=(?:the |my )?hist)")
_AND_BLINKS: Final = re.compile(rf"(?:\band|,) (?=[^,;.]*\b{_BLINK})")
_NOTHING: Final = any_of(
    r"(?:nothing(?:'?s)?|none|no|not|isn't|aren't|doesn't|don't|stopped|without|never|zero)"
    rf"\b[^,;.]{{0,22}}\b{_BLINK}",
    r"(?:can't|cannot|can not|couldn't|didn't|haven't|hasn't|don't|do not)(?: really| actually)?"
    r" (?:see|seen|find|found|spot|spotted|notice|noticed|make out)"
    rf"(?! (?:where|if|whether|what|how|which))\b[^,;.]{{0,16}}\b{_BLINK}",
    rf"{_BLINK}:? (?:is |are |all |now |has )*(?:gone|off|stopped|none|nothing|nil|away)",
    r"(?:no|zero) (?:warnings?|blinkies|zebras?)",
    rf"{_BLINK}\?+ ?(?:no|nope|nah|none|nothing|nil|zero|not (?:a|one|any)\b|don't see|can't see)",
    r"no highlights? (?:are |is )?(?:lost|gone|blown|clipped|burnt)",
    r"warnings?(?:'s)? (?:is |are |has |have |now |all )*(?:off|gone|stopped)",
)
#: "No, I can't see white spots": the warning, by how it looks.
_UNSEEN: Final = any_of(
    r"(?:can't|cannot|can not|don't|do not|didn't|couldn't|not|no|zero|without|nothing)"
    r"(?: (?:really|actually|see|find|spot|notice|have|get|any|a|the|one|longer|more))*"
    r" (?:(?:white|bright|burnt|overexposed|blown)(?: out)? (?:spots?|dots?|patch(?:es)?|blobs?"
    r"|specks?|bits|areas?|parts?|zones?)|warnings?|alerts?)(?! of sky)",
    r"no over ?exposure(?! comp)|(?:nothing|none of it|no part)(?:'s| is| looks| has)?"
    r" (?:over ?exposed|burnt|burned|blown|clipped|clipping)",
    r"(?<!do )(?<!do the )(?<!does the )(?<!if )(?<!if the )(?<!whether the )"
    r"whites? (?:(?:all|still|now|even) )*(?:holds?|keeps?|kept|held|shows?|intact|are intact)"
    r"(?: (?:its|their|all|some|the|good))* (?:streaks?|textures?|lines|structure|detail|up\b)"
    r"(?! (?:only|just|but|except)\b)"
    r"|whites? (?:are |is |look |still )*intact",
)
_DOT: Final = (
    r"(?:dots?|specks?|sparkles?|points?|pixels?|pinpricks?|spots?|glints?|tiny bits?|speckles?"
    r"|pinpoints?|crumbs?|grains?|sparks?|flecks?|freckles?|sprinkl\w*|pin pricks?|few drops)"
)
_SMALL: Final = r"(?:scattered|tiny|single|small|little|isolated)"
#: The size of what blinks; the first that is named counts.
_KINDS: Final = (
    (Blink.SKY, any_of(r"(?<!not the )(?<!not )sky", r"gap (?:at|in) the top", "skylight")),
    (Blink.DOTS, any_of(_DOT)),
    (
        Blink.PATCHES,
        any_of(
            r"patch\w*|blobs?|parts?|areas?|bits of|some of|most of|half|chunks?|zones?"
            r"|blotch\w*|splotch\w*",
            r"strips?|stripes?|sections?|lumps?|islands?|(?:only |just )?the (?:middle|core"
            r"|centre|center)",
        ),
    ),
    (
        Blink.SHEET,
        any_of(
            "whole|entire|everything|everywhere",
            r"all(?: of| the| blink\w*| flash\w*|$)",
            r"complete\w*|every (?:inch|bit|part|drop|square)|all over|nearly all|sheet"
            r"|from top to toe",
            r"(?:top|lip) to (?:bottom|pool|toe)|edge to edge|the lot",
        ),
    ),
)
#: What may stand behind a size alone.
_REST: Final = (
    r"(?: (?:only|mostly|mainly|really|again|now|here and there"
    r"|in the (?:water|white|middle|fall)))*"
)
#: Answers that are sizes alone.
_BARE: Final = (
    (
        Blink.NOTHING,
        exactly(
            "no|nope|nah|clean|all clear|not any ?more|not a thing",
            r"(?:none|nothing|no)(?: at all| that i (?:can )?see| i can see"
            r"| as far as i (?:can )?see)?"
            "(?: anywhere| now)?",
        ),
    ),
    (
        Blink.DOTS,
        exactly(
            rf"(?:just |only )?(?:the )?(?:tiny|little|small) (?:ones|bits|spots)|(?:only "
            rf"|just |a few |few |some |a couple of |mostly |2 |{_SMALL} )*{_DOT}{_REST}"
        ),
    ),
    (
        Blink.PATCHES,
        exactly(
            r"(?:in the water,? )?(?:some |a |a few |few |a couple of |big |bigger |small "
            r"|several |only |just |mostly |2 )*"
            rf"(?:patch|patches|patchy|areas?|blobs?|blotches|(?<=big )(?:bits|ones|spots)"
            rf"|(?<=bigger )(?:bits|ones)){_REST}"
        ),
    ),
    (
        Blink.SHEET,
        exactly(
            rf"everything{_REST}",
            r"(?:pretty much |nearly |almost |just )?all(?: of (?:it|the water))?",
            rf"(?:nearly |almost |pretty much )?(?:the )?(?:whole|entire) \w+{_REST}",
            "(?:pretty much )?the lot|a (?:whole )?sheet|every bit",
        ),
    ),
    (
        Blink.SKY,
        exactly(
            rf"(?:only |just |mostly )*(?:at the top(?: of the frame)?,? )?(?:the |a bit of "
            rf"|some )*sky{_REST}"
        ),
    ),
)


_ONLY_DOTS: Final = exactly(
    rf"(?:now |still |it's |its |there are |only |just |(?:a )?few |some |the odd |{_SMALL} )*"
    rf"{_DOT}"
    r"(?: only| now| here and there)*"
)
_CLAUSES: Final = re.compile(r"\W*[,;.]\s+")


def _bare(draft: Draft) -> Blink | None:
    """A size alone, where it was asked for; "just dots" speaks for itself."""
    kind = next((kind for kind, pattern in _BARE if pattern.match(draft.text)), None)
    if kind is not None and "blink" in draft.expecting:
        return kind
    clauses = _CLAUSES.split(draft.text)
    if "blink" in draft.expecting and not _BLINKS.search(draft.text):
        first = (kind for kind, pattern in _BARE if pattern.match(clauses[0]))
        return next(first, None)
    return Blink.DOTS if any(_ONLY_DOTS.match(clause) for clause in clauses) else None


#: "Three dots and one patch": the larger decides.
_ALSO_PATCHES: Final = re.compile(
    r"(?:\band|\bplus|,) (?:(?!no\b|not\b)\w+ ){0,2}(?:patch\w*|blobs?)\b"
)


#: "Nothing blinks but the sky".
_NOTHING_BUT: Final = re.compile(
    rf"\b(?:nothing|no)\b(?= ?[^,;.]{{0,20}}{_BLINK})[^,;.]{{0,30}}?\b"
    r"(?:but|except|apart from|besides|other than|only|just)"
    r" (?=(?:for |the |a |an |some |few |odd )*(?:\w+ )?"
    rf"(?:sky|{_DOT}))"
)


_ZEBRA: Final = any_of(r"zebra (?:stripes|pattern|lines)")


#: Who asks where the warning is switched on, or what it means, tells of no frame.
_OF_THE_WARNING: Final = any_of(
    r"(?:how|where) (?:do|can|could|would|should|must|to|is|are)\b[^;]*?"
    r"\b(?:switch|turn|find|enable|activate)\b",
    r"what (?:does|do|is)\b[^;]*?\b(?:blink\w*|warning)\b(?: \w+)? (?:mean|for)",
    r"how (?:do|can|could|would|should|will|am|to)\b[^;,.?]*?\b(?:tell|know|see|notice|spot)\b"
    rf"[^;,.?]*?\b{_BLINK}",
    rf"\b(?:which|what) {_BLINK}",
    rf"\bdoes (?:every|any|each|a|your|my) \w+ {_BLINK}",
    r"\bis there (?:a|any|some)\b[^;,.?]*?\b(?:button|setting|switch|menu|option)\b"
    rf"[^;,.?]*?{_BLINK}",
)


#: A bit of foam beside the fall is no more than sparkle (own rule: the fall is what is looked at).
_BESIDE_THE_FALL: Final = any_of(
    r"(?:one|an?|only|just|some)(?: (?:a|very|really|tiny|little|small|wee))*"
    r" (?:bit|spot|part|patch|piece|section|corner)\b[^.;]{0,30}?"
    r"\b(?:foam|froth|edge|pool|bottom)\b"
    rf"[^.;]{{0,30}}?{_BLINK}[^.;]{{0,12}}?\b(?:not|no|nothing) (?:in |on )?(?:the )?(?:main )?"
    r"(?:falls?|water|waterfall|drop|column)"
)


def _known(part: str) -> str:
    """What is told of a frame beside clauses that say not to know: "no idea about blinking"."""
    if not says_not_known(part):
        return part
    return ", ".join(one for one in _CLAUSES.split(part) if not says_not_known(one))


def read_blink(draft: Draft) -> None:
    """What the camera's warning shows; a warning without a size is taken as patches."""
    bare = _bare(draft)
    said = _NOTHING_BUT.sub("only blinks ", draft.text)
    parts = _PARTS.split(said)
    if _HISTOGRAM.search(said):
        parts = [piece for part in parts for piece in _AND_BLINKS.split(part)]
    other = (_HISTOGRAM, _OF_THE_WARNING)
    parts = [part for part in parts if not any(words.search(part) for words in other)]
    text = "; ".join(known for part in parts if (known := _known(part)))
    text = _ZEBRA.sub("zebras", text)
    if bare:
        draft.note("blink", bare)
    elif _BESIDE_THE_FALL.search(draft.text):
        draft.note("blink", Blink.DOTS)
    elif _UNSEEN.search(text):
        draft.note("blink", Blink.NOTHING)
    elif _BLINKS.search(text):
        kinds = (kind for kind, pattern in _KINDS if pattern.search(text))
        if _ALSO_PATCHES.search(text):
            kinds = (kind for kind in kinds if kind is not Blink.DOTS)
        draft.note("blink", Blink.NOTHING if _NOTHING.search(text) else next(kinds, Blink.PATCHES))


_RIGHT: Final = any_of(r"right(?:[ -]?hand)?(?: (?:edge|side|border|end|wall))?")
_NOT_RIGHT: Final = any_of(
    "doesn't|does not|not|isn't|no longer|stops?|short|before|well|gap|room|space|air|away|free"
    "|clear"
    "|far from|left of|empty|nothing|unused"
)


def read_histogram(draft: Draft) -> None:
    """Whether the histogram reaches its right-hand edge."""
    for part in _PARTS.split(draft.text):
        if _HISTOGRAM.search(part) and _RIGHT.search(part):
            draft.note("histogram_at_right", value=_NOT_RIGHT.search(part) is None)
