"""Which length a number is: the words before and behind it say."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import METRES_A_SECOND, Quantity

NEAR: Final = (
    r"nearest|closest|near thing|foreground|front|rocks?|boulders?|stones?|pebbles?|logs?|ferns?"
    r"|moss|bush(?:es)?|flowers?|plants?|roots?|stumps?|slabs?|ledge|branch|driftwood|anchor"
    r"|trunks?|snag|fallen tree|railing|reeds"
)
FAR: Final = (
    r"(?:back|far|rear|rock|canyon|gorge) (?:wall|side|bank)s?|farthest|furthest"
    r"|(?:walls?|trees|cliffs?|forest|hills?|rocks?) (?:behind|at the back|beyond)|background"
    r"|far (?:trees|rocks?)|horizon"
)
#: "Near 1.2 m, far 18 m": the two ends of the depth, each right before its number.
_END: Final = r"(?: (?:end|point|limit|thing))?(?=(?:\W|\b(?:is|at|about)\b)*$)"
FALL: Final = r"(?:water)?falls?|drop|plunge|cascade|chute|curtain"
_FILLER: Final = (
    r"(?:\W*(?:or so|ish|maybe|max|about|roughly|approx|approximately|now|i guess|i think)\b)*\W*"
)

_ONLY_FILLER: Final = re.compile(_FILLER)

_NOUN: Final = re.compile(
    r"^ (?!(?:to|for|from|away|but|not|maybe|perhaps|probably|please|give|the|nearest|closest"
    r"|foreground|front)\b)(?:of\b|[a-z]{3,})"
)
#: What a clause before a number speaks of; the last one named counts.
_SUBJECT: Final = re.compile(
    rf"\b(?:(?P<camera>camera|tripod|lens(?= (?:is )?(?:above|over)\b))|(?P<far>{FAR})"
    rf"|(?P<near>{NEAR}|nothing (?:is )?(?:nearer|closer) than)"
    rf"|(?P<distance>distance(?: (?:to|from|of) (?:the )?(?:{FALL}|water|foot|base))?"
    r"|i'm|im|i am|we're|we are|standing|stand|me|away"
    r"|(?<!nothing )(?<!nothing is )(?:closer(?: than)?|nearer than)"
    r"|(?:stepped|step|moved|move|go|went|gone|walked|walk|backed)(?: back| up)? to"
    r"|(?:falls?|waterfall|water|stream|creek|brook|river|cascade) (?:is )?at)"
    r"|(?P<width>width|wide)|(?P<depth>depth|deep)|(?P<climb>climb\w*|ascent|gain|elevation change)"
    r"|(?P<walk>walk\w*|hike|hiking|trail|approach)|(?P<section>show|section|part|piece|slice)"
    rf"|(?P<height>height|tall|high|drops|the (?:whole )?thing is|{FALL}))\b"
    rf"|\b(?<!how )(?<!so )(?<!too )(?P<far_end>far{_END})|\b(?<!too )(?P<near_end>near{_END})"
)

_THE: Final = r"(?:the |my |our |a |that |this )?"
#: What stands right behind a number.
_BEHIND: Final = re.compile(
    rf"^{_FILLER}(?:"
    rf"(?P<camera>(?:off|above|over) {_THE}"
    r"(?:ground|water|floor|stream|creek|bed|rocks?|stones?|pool))"
    r"|(?P<section>of (?:it|that|the (?:fall|falls|water|drop|waterfall|cascade)))"
    r"|(?P<climb>(?:of )?(?:climb\w*|ascent|gain|elevation|vertical|uphill))"
    r"|(?P<walk>(?:of )?(?:walk|hike|hiking|trail|path|track)\b|one way|each way|round trip|in from"
    rf"|from {_THE}(?:car|road|trailhead|parking|lot))"
    r"|(?P<whole>(?:from )?top to (?:bottom|base|foot|pool))"
    r"|(?P<between>between (?:me|us|the camera|where i stand))"
    r"|(?P<object>(?:away from|back from|off from|from|to|before|in front of|short of)"
    rf" {_THE}(?P<thing>[a-z' ]{{1,30}}))"
    rf"|(?P<height>tall|high|in height|of height|in total|altogether|(?:{FALL}))"
    r"|(?P<width>wide|across|in width)|(?P<depth>deep|of water)"
    r"|(?P<distance>away|off|back|out|distant|distance)"
    r"|(?P<beyond>behind)"
    r"|(?P<near>in front)"
    r"|(?P<up>up)"
    r")\b"
)
_NEAR_BEHIND: Final = re.compile(rf"^\W*(?:to |for )?{_THE}(?:{NEAR})(?: \w+)?\W*$")
_WATER_THING: Final = re.compile(rf"(?:{FALL}|water|foot|base)\b")
_NEAR_THING: Final = re.compile(rf"\b(?:{NEAR})\b")
_FAR_THING: Final = re.compile(rf"\b(?:{FAR})\b")
_GROUND: Final = re.compile(r"(?:ground|floor|water|stream|rocks?|bed|path)\b")
_MYSELF: Final = re.compile(r"(?:me|us|camera|lens|front|knees?|feet|boots|toes|tripod|glass)\b")
#: Words that say what is measured, also for a number in the next clause.
_MEASURED: Final = re.compile(
    r"\b(?:(?P<height>tall|high|height)|(?P<distance>distance|far away|away"
    r"|(?:moved|stepped|went|got|gone|backed|walked) (?:\w+ )?"
    r"(?:closer|nearer|back|away|off|in|out|farther|further|up to it))"
    r"|(?P<far>farthest|furthest|background)|(?P<near>nearest|closest|foreground"
    rf"|(?:{NEAR})(?: (?:is|right|just|directly|standing|sits))* in front(?: of (?:me|us"
    rf"|the camera))?)"
    r"|(?P<camera>(?:tripod|camera)(?: (?:is|set|quite|very|really))* (?:low|high))"
    r"|(?P<width>width|wide))\b"
)
_WALKING: Final = re.compile(r"\b(?:walk\w*|hik\w+|trail|approach|km|miles?|climb\w*)\b")
#: A bare number belongs to the word before it only when nothing but these stands between.
_TIGHT: Final = re.compile(
    r"(?:\W|\b(?:is|at|are|about|maybe|around|roughly|say|approx|of|some|be|there|was|only|it|it's"
    r"|its|i|i'd|guess|think|probably|ca|circa|just|like|call)\b)*$"
)

#: Of these, a number without a unit says too little ("section 12", "trail 7").
_NEVER_BARE: Final = frozenset({"section", "walk", "depth", "climb"})
_SLOTS: Final = {
    "camera": "camera_height_m",
    "far": "farthest_m",
    "near": "nearest_m",
    "distance": "distance_m",
    "width": "fall_width_m",
    "depth": "water_depth_m",
    "climb": "climb_m",
    "walk": "walk_km",
    "section": "section_height_m",
    "height": "fall_height_m",
}


def _subject(words: str, *, tight: bool) -> str | None:
    """What the words speak of last; `tight`: only when it stands right before the number."""
    found = None
    for match in _SUBJECT.finditer(words):
        found = match
    if found is None or (tight and not _TIGHT.fullmatch(words[found.end() :])):
        return None
    return (found.lastgroup or "").removesuffix("_end")


def _of_object(thing: str, subject: str | None, words: str) -> str | None:
    """`12 m from the fall`, `2 m to the first rock`, `a crate 3 ft from the camera`."""
    if subject in {"near", "far"} or (subject == "camera" and _GROUND.match(thing)):
        return subject
    if subject is None and _MYSELF.match(thing) and not _TIGHT.fullmatch(words):
        return None  # some thing that is not known: the fall, or something in the foreground?
    if _WATER_THING.match(thing):
        return "distance"
    if _FAR_THING.search(thing):
        return "far"
    return "near" if _NEAR_THING.search(thing) else "distance"


_OTHER_NAMES: Final = {"whole": "height", "between": "distance"}


def _behind(match: re.Match[str], subject: str | None, words: str, *, walking: bool) -> str | None:
    kind = match.lastgroup
    if match["object"]:
        return _of_object(match["thing"], subject, words)
    if kind == "beyond":
        return None  # so far behind something else: no distance from the camera
    if kind == "distance" and subject in {"near", "far"}:
        return subject
    if kind == "up":
        return "camera" if subject == "camera" else "climb" if walking else None
    if kind == "camera" and subject not in {"camera", None}:
        return subject
    return _OTHER_NAMES.get(kind or "", kind)


def _ends(draft: Draft, quantity: Quantity) -> bool:
    """Whether the clause ends before the next number, so that its words are this one's."""
    return draft.neighbour(quantity, 1) is None or draft.clause_after(quantity) != draft.after(
        quantity
    )


def _measured(words: str) -> str | None:
    """`as tall as a house, 8 m or so`: the clause before says what is measured."""
    found = None
    for match in _MEASURED.finditer(words):
        found = match.lastgroup
    return found


#: "The fall I took from the map, 16 m": what a sentence opens with; a place is none.
_OPENED: Final = re.compile(rf"(?:^|[.;!?] ?)(?:the |this |our )?(?:{FALL})\b(?P<rest>[^.;!?]*)$")
_PLACED: Final = re.compile(
    r"\b(?:far|near|nearer|away|back|off|distance|close|closer|wide|width|rock|stone|camera|at"
    r"|speed"
    r"|shutter|aperture|lens|zoom|zoomed|deep|walk|hike|path|trail|left|right|behind)\b"
)


def _opened(words: str) -> str | None:
    """The fall's height where a sentence opens with the fall and places nothing."""
    match = _OPENED.search(words)
    return "height" if match and not _PLACED.search(match["rest"]) else None


def stands_alone(draft: Draft, quantity: Quantity) -> bool:
    """Whether no word of its clause says what a number is."""
    words = (draft.clause_before(quantity), draft.clause_after(quantity))
    return all(_TIGHT.fullmatch(part) or _ONLY_FILLER.fullmatch(part) for part in words)


def counts(draft: Draft, quantity: Quantity) -> bool:
    """Whether a bare number has a noun of its own: "3 steps", "2 students"."""
    after = draft.clause_after(quantity)
    return bool(_NOUN.match(after)) and not _ONLY_FILLER.fullmatch(after)


def _is_vague(subject: str | None, words: str, after: str, match: re.Match[str] | None) -> bool:
    """Whether a bare number may count or name something else: "i'm 64", "the falls 10 behind"."""
    if match is not None:
        return False
    return not _ONLY_FILLER.fullmatch(after) or (
        subject == "distance" and "distance" not in words and " at" not in words
    )


#: "What if I shot it from 30 m": where the camera would stand.
_SHOT_FROM: Final = re.compile(
    r"\b(?:shoot|shot|shooting|take|took|taken|stand|stood|work|photograph\w*)(?: \w+){0,2} from ?$"
)


def _of_neighbours(draft: Draft, quantity: Quantity, words: str) -> str | None:
    """`a stream of 1.5 m/s at 3 m`: the speed's water is so far away; `4 km walk, up 250 m`."""
    earlier = draft.neighbour(quantity, -1)
    if _SHOT_FROM.search(words):
        return "distance"
    if words == "at" and earlier is not None and earlier.unit in METRES_A_SECOND:
        return "distance"
    return "climb" if words.endswith("up") and _WALKING.search(draft.text) else None


def role(draft: Draft, quantity: Quantity) -> str | None:
    """The slot of a length by the words around it; None when they do not say."""
    bare = quantity.unit == ""
    words = draft.clause_before(quantity)
    if bare and words.endswith("the "):
        return None  # "the bus is the 42"
    subject = _subject(words, tight=bare)
    after = draft.clause_after(quantity)
    match = _BEHIND.search(after)
    kind = subject
    if match and subject and match.group().split()[-1] == "distance":
        match = None  # "height 15 m distance 20 m": the word belongs to the next number
    if match and not (bare and match.group().strip(" ,.").endswith(("fall", "falls", "drop"))):
        walking = _WALKING.search(draft.text) is not None
        kind = _behind(match, subject, words, walking=walking)
        if kind is None and not (match["beyond"] or match["up"]):
            kind = subject
    elif subject is None and _ends(draft, quantity) and _NEAR_BEHIND.search(after) and not bare:
        kind = "near"
    elif kind is None and quantity.unit not in {"", "km", "mi"} and _TIGHT.fullmatch(words):
        kind = _measured(draft.before(quantity)) or _opened(draft.before(quantity))
    if bare and (kind in _NEVER_BARE or _is_vague(subject, words, after, match)):
        return None
    kind = kind or _of_neighbours(draft, quantity, words.strip())
    return _SLOTS[kind] if kind else None
