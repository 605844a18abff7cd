"""What shall stay, small steps, automatic modes, and questions that only try a value."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Keep
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.phrases import any_of, exactly
from bot.dialogue.reading.spoken_numbers import SIMPLE

#: Names of the settings; those with an underscore stand for a number in the skeleton.
_TIME: Final = r"(?:shutter(?: speed| time)?|exposure time|time|speed|shutter_s)"
_APERTURE: Final = r"(?:aperture|f-?(?: ?number|-?stop)|f_number|depth of field|dof)"
_TARGET: Final = rf"(?:{_TIME}|{_APERTURE}|iso)"
_THE: Final = r"(?:(?:the|my|at|on|it|to|this|that|same|by|with|setting|of)\b ?)*"
_STAY: Final = (
    r"(?:keep|keeping|kept|(?<!hand )(?<!hand-)hold(?:ing)?|fix|fixed|lock|locked|leave"
    r"|leaving|stay|stick|sticking"
    r"|must stay|(?<!look the )(?<!looks the )(?<!all the )(?<!is the )(?<!are"
    r" the )(?<!about the )(?<!with the )(?<!at the )same(?! time (?:next|as|tomorrow|again|of))"
    r"|rather keep|can't change|hands off|insist on|insisting on|committed to|sold on"
    r"|not moving from|won't move from|not budging from|married to|wedded to|not giving up"
    r"|(?:don't|do not) (?:make me change|mess with|want to lose|want to give up)"
    r"|(?:not|don't|do not|won't|wouldn't|without)(?: want(?:ing)? to)?"
    r" (?:chang\w+|touch\w*|mov\w+|alter\w*|rais\w+|push\w*|bump\w*))"
)
_STAYS: Final = (
    r"(?:(?:is|are|both|has to|have to|must|needs? to|should|will|to be)\b ?)*"
    r"(?:fixed|locked|stays?|non[ -]?negotiable|set in stone"
    r"|(?:not|mustn't|can't|cannot|shouldn't|won't) (?:be )?(?:changed?|moved?|touched|raised)"
    r"|(?:and )?(?:that's|thats|that is) (?:final|that|fixed|not moving|it and final|how it stays)"
    r"|(?:is )?(?:staying|sacred|holy|nailed|untouchable|locked in|(?:not"
    r"|isn't) (?:going anywhere|moving|up for))|no matter what|whatever happens"
    r"|full stop|stay put|constant|untouched|unchanged|as (?:it|they) (?:is|are))"
)
#: "1/4 s for the look and f/16 for the depth": what each is kept for stands between.
_FOR: Final = r"(?: (?:for|because of) (?:the |my |its |some |more )?[a-z]+(?: of [a-z]+)?)?"
_TARGETS: Final = rf"{_TARGET}(?:{_FOR}(?: ?,| and| or| &| \+)+ {_THE}{_TARGET})*"
_KEEP: Final = re.compile(
    rf"\b{_STAY} {_THE}(?P<kept>{_TARGETS})"
    r"(?! (?:on|in|to) auto)(?! (?:low|down|short|long|as low|under|below)"
    r"| (?:\w+ )?(?:by hand|hand[ -]?held|steady|still|in (?:my|the) hands?))\b"
    rf"|\b(?P<fixed>{_TARGETS})(?:'s)? {_STAYS}\b"
    rf"|\b(?P<alone>{_TARGET})\b[^.;?]{{0,50}},? (?:(?:don't|do not|never) (?:touch|change"
    r"|move|alter) (?:it|that|this)|(?:leave|leaving|keep|keeping) (?:it|that) (?:there|alone|be"
    r"|that way|like that|as it is))\b"
)
#: "I want 1/4 s", "I need f/11 for the depth": a value that is wished is not given away.
_WANTED: Final = re.compile(
    r"\bi(?:'d| would)? (?:really |do )?(?:want|need|like|would like|prefer) (?:the |to have )?"
    r"(?P<wanted>shutter_s|f_number)\b(?! (?:darker|brighter|more|less)|[^.;]*\?)"
)
_IS_KEPT: Final = re.compile(
    r"\b(?P<mine>shutter_s|f_number|iso)(?: is|'s) (?:what|the one|where) i(?:'m|'d|'ll| will"
    r"| want| would| like)?"
    r" (?:\w+ ){0,2}?(?:keep\w*|stay\w*|stick\w*)\b"
)
#: "A quarter of a second looked good so I leave that".
_LEAVES_IT: Final = re.compile(
    r"\b(?P<left>shutter_s|f_number)\b[^.;?]{0,50}\b(?:leave|leaving|keep|keeping|stick with"
    r"|sticking"
    r" with|stay with|staying with) (?:it|that|this)(?: one| time| there)?(?=\W*$|[,.;])"
)
_ONLY_CHANGE: Final = re.compile(
    rf"\b(?:(?:only|just) (?:want to |can )?(?:change|touch|move|adjust)"
    rf"|(?:change|touch|move|adjust) only) {_THE}{_TARGETS}"
    rf"|\bonly {_THE}{_TARGETS} (?:may|can|should|could|is allowed to) (?:change|move)\b"
)
_ALL_BUT: Final = re.compile(
    rf"\b(?:everything|anything|all)(?: else)? (?:but|except|apart from|bar) {_THE}{_TARGETS}"
)
_NAMES: Final = (
    (Keep.TIME, any_of(_TIME)),
    (Keep.F_NUMBER, any_of(_APERTURE)),
    (Keep.ISO, any_of("iso")),
)
#: "Six little steps" are counted.
_NOT_COUNTED: Final = "".join(rf"(?<!\b{word} )" for word in SIMPLE if word != "one")
_SMALL_STEPS: Final = any_of(
    rf"{_NOT_COUNTED}(?<!some )(?<!few )(?<!\d )(?<!the )(?<!those )(?<!of )"
    r"(?:small|tiny|little|fine|baby)(?:er)? steps?(?! (?:down|up|in the|and a|of the|to the"
    r"|on the))",
    "step by step",
    r"(?:little|bit) by (?:little|bit)",
    r"(?:one|1|a) (?:click|step|third) (?:at a time|after)",
    "third by third|click by click|in thirds|one by one",
)


def read_keep(draft: Draft) -> None:
    """Settings that the person will not change, and whether steps shall be small."""
    skeleton = draft.skeleton()
    kept = " ".join(
        match["kept"] or match["fixed"] or match["alone"] for match in _KEEP.finditer(skeleton)
    )
    kept += " ".join(match["wanted"] for match in _WANTED.finditer(skeleton))
    kept += " ".join(match["mine"] for match in _IS_KEPT.finditer(skeleton))
    kept += " ".join(match["left"] for match in _LEAVES_IT.finditer(skeleton))
    keep = {slot for slot, pattern in _NAMES if pattern.search(kept)}
    kept_alone = _ALL_BUT.search(skeleton)
    if kept_alone:
        keep |= {slot for slot, pattern in _NAMES if pattern.search(kept_alone.group())}
    only = _ONLY_CHANGE.search(skeleton)
    if only:
        keep |= {slot for slot, pattern in _NAMES if not pattern.search(only.group())}
    if keep:
        draft.note("keep", frozenset(keep))
    if "dial_halves" not in draft.values and _SMALL_STEPS.search(draft.text):
        draft.note("small_steps", value=True)


_AUTOMATIC: Final = any_of(
    r"(?:on|to|in) auto(?:matic)?(?! ?(?:focus|white|wb))",
    r"auto(?:matic)? ?(?:mode|exposure|iso)",
    r"(?:full|all) auto(?:matic)?",
    r"(?:on|in) (?:p|a|av|tv|s|program) mode",
    r"(?:p|av|tv|program)[ -]mode|mode (?:p|av|tv)",
    r"(?:camera|dial|it|mode dial)(?:'s| is)? (?:(?:set|still|left) )?(?:on|to|in|at) (?:p|a|av|tv"
    r"|s)"
    r"(?=$|[,.;!]| and\b| now\b)",
    r"green (?:auto(?:matic)? )?(?:square|box|mode|rectangle|icon|setting|thing)|auto square",
    r"fully automatic|(?:scene|smart|intelligent|full) (?:auto|mode)|camera (?:picks|chooses"
    r"|decides)"
    r" (?:everything|it all|for me|itself)|everything on auto",
    r"(?:in|on) (?:av|tv)(?! (?:set|show|screen))",
    r"(?:aperture|shutter|time)[ -]priority",
    r"(?:in|on|to) (?:automatic|program)",
    r"it's (?:on )?auto(?:matic)?",
    r"(?:camera|it) (?:does|sets|decides|picks|chooses) (?:everything|it all|all of it"
    r"|all the work|the thinking)"
    r"(?: (?:itself|for me|by itself|on its own))?",
)
_AUTOMATIC_ALONE: Final = exactly("auto", "automatic", "automatically")
_MANUAL: Final = any_of(
    r"(?<!focus )(?:in|on|full|fully|everything|all) manual(?! focus)",
    r"(?:in|on|set to|set on|dial at) m(?: mode)?(?=$|[,.;!]| and\b| now\b)",
    r"manual (?:mode|exposure)|shoot(?:ing)? manual(?! focus)",
    "m[ -]mode",
)
_MANUAL_ALONE: Final = exactly("manual")


#: "It says A and S and M": what the dial bears, not where it stands.
_MODES_NAMED: Final = any_of(
    r"(?:p|a|s|m)(?:,| and|/) ?(?:p|a|s|m)(?:,| and|,? or|/) ?(?:p|a|s|m)",
    r"what(?:'s|s| is| does) (?:the )?(?:green|p|av|tv|a|s|m) (?:mode|mean|box|square|thing)",
)


def read_mode(draft: Draft) -> None:
    """Whether the camera chooses the exposure by itself."""
    text = draft.text
    if _MODES_NAMED.search(text):
        return
    if _AUTOMATIC.search(text) or _AUTOMATIC_ALONE.match(text):
        draft.note("automatic", value=True)
    elif _MANUAL.search(text) or _MANUAL_ALONE.match(text):
        draft.note("automatic", value=False)


_TRY: Final = (
    r"(?:go|went|use|used|take|took|set|try|tried|open|opened|stop|stopped|drop|dropped|push|pushed"
    r"|raise|raised|put|add|added|turn|lower|lowered|remove|switch|change|changed|zoom|step"
    r"|stepped|move|moved|stand|stood|shoot|shot)"
)
_WHAT_IF: Final = re.compile(
    r"\bwhat if\b|\bwhat (?:about|happens|would)\b|\bhow about\b|\bsuppose\b|\bwould\b.*\?"
    rf"|\bif (?:i|we)(?:'d)? {_TRY}\b|\b(?:could|can|should|shall) (?:i|we) {_TRY}\b"
    r"|^(?:and|or) (?:with|at|on|for) .*\?$"
    r"|^(?:is|will|does) (?:it|that|this|the (?:water|fall|stream))\b.*\?$"
)


#: What somebody may try on paper first.
_TRIABLE: Final = frozenset(
    {"f_number", "shutter_s", "iso", "focal_mm", "polariser_on", "nd_on_stops", "distance_m"}
    | {"nearest_m", "camera_height_m", "lenses", "change_stops", "meter_stops"}
)


def read_what_if(draft: Draft) -> None:
    """Mark a question that only tries a value; it must not move the walk."""
    if draft.values.keys() & _TRIABLE and _WHAT_IF.search(draft.text):
        draft.note("ask_what_if", value=True)
