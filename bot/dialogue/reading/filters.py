"""Polariser and ND filters: which there are, and which is on."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.bare_densities import bare_densities
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.inventory import (
    ND,
    POLARISER,
    TRIPOD,
    is_asked_about,
    is_denied,
    is_unreal,
)
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.phrases import any_of, exactly
from bot.dialogue.reading.polariser_words import (
    ASKED_ALONE,
    ASKS_FOR_IT,
    LACKS,
    NONE_HERE,
    NONE_ON,
    OFF,
    ON,
    PUT_AWAY,
    SAID,
    WITH,
)
from bot.dialogue.reading.stops import is_filter, listed_before, nd_stops
from core.camera import density_stops, factor_stops


def _asks(text: str) -> bool:
    """Whether the polariser is only asked about; "take it off?" tells that it is on."""
    if ASKS_FOR_IT.search(text) or ASKED_ALONE.search(text):
        return True
    return is_asked_about(text, POLARISER) and not (OFF.search(text) or ON.search(text))


#: "Is the polariser worth it? It's in my bag": asked, and there.
_ALONG: Final = re.compile(
    r"\b(?:it's|its|it is|one is|one's|have it|have one|got it|got one|brought it|carry it)"
    r" (?:right |still |always )?(?:with me|in (?:the|my) (?:bag|pack|pocket|pouch|rucksack"
    r"|backpack|case))\b"
)


def read_polariser(draft: Draft) -> None:
    """Whether there is a polariser and whether it is on."""
    text = draft.text
    if SAID.search(text):
        _claim_its_stops(draft)
    if SAID.search(text) and not _asks(text):
        _read_named(draft)
    elif SAID.search(text) and _ALONG.search(text):
        draft.note("has_polariser", value=True)
        draft.note("polariser_on", value=False)


#: "Polariser's on, eaten about 1.5": what it takes fills no slot, 1.7 stops are reckoned with.
_TAKES: Final = re.compile(
    r"\b(?:eats?|eaten|takes?|took|costs?|swallow\w*|los(?:es|t|ing))\b(?: \w+)? $"
)
#: More than this no polariser takes [stops] (common practice: 1.5 to 2).
_MOST_POLARISER: Final = 3.0


def _claim_its_stops(draft: Draft) -> None:
    """Take a number of stops that the polariser is said to take."""
    for quantity in draft.free(""):
        before = draft.clause_before(quantity)
        if quantity.value <= _MOST_POLARISER and _TAKES.search(before):
            draft.claim(quantity)


_ON_OR_OFF: Final = re.compile(r"\bon or off\b|\boff or on\b|\bon or not\b")


def _read_named(draft: Draft) -> None:
    """A polariser that is named: missing, off or on."""
    text = draft.text
    denied = is_denied(text, POLARISER) and not OFF.search(text)
    lacks = LACKS.search(text) and not PUT_AWAY.search(text)
    if denied or lacks or NONE_HERE.search(text):
        draft.note("has_polariser", value=False)
        return
    if not NONE_ON.search(text):
        draft.note("has_polariser", value=True)
    set_up = draft.values.keys() & {"shutter_s", "nd_on_stops"} - {"polariser_on"}
    if draft.values.get("polariser_on") is False:
        return  # "both filters off"
    if _ON_OR_OFF.search(text):
        return
    if OFF.search(text) or PUT_AWAY.search(text):
        draft.note("polariser_on", value=False)
    elif ON.search(text) or (set_up and WITH.search(text)):
        draft.note("polariser_on", value=True)


_NO_FILTERS: Final = any_of(
    r"(?:no|without(?: any)?|zero) filters?",
    r"(?<!nd )(?<!grey )(?<!gray )(?<!density )filters?[?:]+ ?(?:none|no|nope|nothing)",
    r"(?<!pol )(?<!polarising )(?<!polarizing )(?<!nd )(?<!grey )(?<!gray )(?<!stop )filters?"
    r" (?:are |is |all )?off",
    "unfiltered",
    r"(?:took|take|taken|taking|got) (?:(?:the|all|my|both|2|two|every) )*filters? off",
    r"(?:took|taken|pulled) everything off(?= the (?:front|lens|glass)|\W*$)",
    r"(?:filters? both|both(?: filters?)?)(?: are| is|'re)? off",
    r"(?:off|removed) (?:came |went )?(?:both|all)(?: of)?(?: the| my)? filters?",
    r"nothing (?:\w+ )?(?:on|in front of) (?:the|my) (?:lens|front|glass)",
    r"(?:bare|naked) (?:lens|glass)|lens(?: is|'s)? (?:bare|naked)",
)
_OWNS_NO_FILTERS: Final = any_of(
    r"(?:zilch|nil|nothing|none|nowt|zip|nada|not much) in the way of filters?",
    r"(?:don't|do not|haven't|didn't) (?:have|own|got|bring|brought|carry)(?: any| got any)?"
    r" filters?",
    r"(?:forgot|left) (?:the |my |all )*filters?",
    r"(?<!ing )(?<!pol )(?<!nd )(?<!r )filters? (?:are |is |all |stayed )*(?:at home"
    r"|in the (?:car|hut|hotel))",
    r"(?:no|zero) filters? (?:with me|at all|in the bag|here|today|whatsoever|of any kind)",
)
_ND_NOT_NEEDED: Final = any_of(rf"{ND} (?:needed|necessary|required)")
_ND_OFF: Final = any_of(
    rf"no {ND} (?:is |are )?on",
    r"neither(?: of (?:them|the \w+))? (?:is |are )?(?:on|in front of) (?:the lens|it|yet|now)",
    r"no nds? (?:filters? )?(?:is |are |in front |fitted |on )*(?:right )?now",
    r"nds? (?:is |now )?(?:off|removed)",
    rf"(?:took|taken|pulled|unscrewed) (?:the |my )?{ND} off|{ND}(?:'s|s)?(?: is| now| came)* off",
    rf"(?:removed|unscrewed|pulled|took off|dropped|ditched|lost) (?:the |my )?{ND}(?=$|[,;.!]"
    r"| (?:again|now))",
    r"(?:took|taken|pulled|unscrewed|removed) (?:the |my )?(?:big |little |small |dark "
    r"|strong )*stopper"
    r"(?: back)?(?: off|(?=\W*$|[,;.]))",
)
_ON_BEHIND: Final = re.compile(
    rf"^(?: ?(?:of )?(?:nd|filter|stopper|gr[ea]y)| (?:and|with|plus) (?:the |my |a )?{POLARISER})*"
    r"(?:'s)? ?(?:is |are |both |now |still )*"
    r"(?:on(?! it\b)|(?:goes|went|going) on|mounted|fitted|in front|attached|screwed|stacked)\b"
)
_OFF_BEHIND: Final = re.compile(r"^(?: ?(?:nd|filter))* ?(?:is |now |comes? )?(?:off|removed)\b")
#: "Swapped the 3 for the 6 stop".
_SWAPPED_FOR: Final = re.compile(
    r"\b(?:swapped|swap|changed|switched)\b.{0,20} (?:for"
    r"|to) (?:the|a|my) ?$"
)
_OFF_BEFORE: Final = re.compile(
    r"(?<!should i )(?<!shall i )(?<!can i )(?<!could i )"
    r"\b(?:removed?|took(?: off)?|take(?: off)?|pulled(?: off)?|unscrewed|without"
    r"|forget|drop(?:ped)?|ditch(?:ed)?|skip(?:ped)?|lose|leave off) (?:the|my) ?$"
)
_WITH_BEFORE: Final = re.compile(
    r"\b(?:nd(?: filter)? (?:(?:is|now|was) )?(?:at|set (?:to|at)|diall?ed (?:to|in at)"
    r"|turned to)(?: about| roughly| around| maybe| say)?"
    r"|with|using|through|put|behind|stacked|added|add|mounted|fitted"
    r"|screwed on)(?: on)?(?: the| my| an?)? ?$"
)
#: "Stacked polariser + 3 stop nd": both are on.
_STACKED: Final = re.compile(r"\bstack(?:ed|ing)\b[^.;]*$")
_OWNS: Final = any_of("have|own|got|kit|bag|bring|brought|carry|owned|only|filters")


def _stops_of(draft: Draft, quantity: Quantity) -> float | None:
    if quantity.is_range or quantity.signed:
        return None
    if quantity.unit == "nd":
        return nd_stops(quantity)
    return quantity.value if is_filter(draft, quantity) else None


#: No ND takes more [stops] (common practice: 10 to 15); "85, 6 stop ND" begins with a lens.
_STRONGEST: Final = 20


def _strengths(draft: Draft) -> list[tuple[Quantity, float]]:
    """Filters by their strength; `3 and 6 stop nd` are two."""
    found = [(quantity, density_stops(quantity.value)) for quantity in bare_densities(draft)]
    for quantity in draft.free("nd", "stop"):
        stops = _stops_of(draft, quantity)
        if stops is None:
            if quantity.unit == "nd":
                draft.refuse(quantity)  # "nd6" may be a factor or stops
            continue
        listed = listed_before(draft, quantity)
        found += [(earlier, earlier.value) for earlier in listed if earlier.value <= _STRONGEST]
        found.append((quantity, stops))
    return found


#: "What if the nd was a 6 stop": on in the trial.
_TRIED: Final = re.compile(r"\b(?:what if|suppose)\b")


#: "I've got a full frame with a three stop and a six": in the bag.
_WITH_A: Final = re.compile(r"\bwith an? ?$")


def _is_along(draft: Draft, quantity: Quantity) -> bool:
    """Whether an ND is only named among what somebody owns, with no frame told."""
    owns = _WITH_A.search(draft.before(quantity)) and _OWNS.search(draft.text)
    return bool(owns) and "shutter_s" not in draft.values


def _is_on(draft: Draft, quantity: Quantity) -> bool:
    if _is_along(draft, quantity) and not _ON_BEHIND.search(draft.after(quantity)):
        return False
    if (
        _TRIED.search(draft.text)
        or _SWAPPED_FOR.search(draft.text[: quantity.start])
        or _STACKED.search(draft.before(quantity))
        or _ON_BEHIND.search(draft.after(quantity))
        or _WITH_BEFORE.search(draft.before(quantity))
    ):
        return True
    set_up = (
        draft.values.keys() >= {"f_number", "shutter_s"} and "camera_format" not in draft.values
    )
    return (set_up or "nd_on_stops" in draft.expecting) and not _OWNS.search(draft.text)


#: "Swapped the 6 stop for the 10": the one that came off.
_SWAPPED_OUT: Final = re.compile(r"\b(?:swapped|swap|changed|switched|traded) (?:the|my|an?) ?$")
#: "An nd8 and an nd64, no nd1000".
_DENIED_ONE: Final = re.compile(r"\b(?:no|not the|never an?)(?: big| strong)? ?$")
_EXPLAIN: Final = re.compile(r"\b(?:explain|what(?:'s| is)|tell me about)(?: (?:the|an?))? $")
_OURS: Final = re.compile(r"\b(?:my|the|our)(?: \w+)? ?$")


def _is_only_asked(draft: Draft, quantity: Quantity) -> bool:
    """`Would a 6 stop help?`: no filter that is owned or on."""
    if _EXPLAIN.search(draft.before(quantity)):
        return True
    return (
        _OURS.search(draft.before(quantity)) is None
        and not _is_on(draft, quantity)
        and is_unreal(draft.text[: quantity.start])
    )


#: "An nd8 and an nd64, both in the car".
_ND_ELSEWHERE: Final = any_of(
    rf"(?:{ND}|nd ?\d+|stops?|stoppers?|both|they'?re|all)(?: of them)?(?:'s| is| are)?(?: still|"
    rf" back)?"
    r" (?:left )?(?:in the (?:car|van|hut|hotel|boot|trunk)|at (?:home|the (?:car|hotel|hut)))"
)


def _is_none_of_them(draft: Draft, quantity: Quantity) -> bool:
    """Whether a strength is of a filter that came off for another, is asked for, or missing."""
    before = draft.before(quantity)
    missing = quantity.unit == "nd" and _DENIED_ONE.search(before)
    return bool(_SWAPPED_OUT.search(before) or missing) or _is_only_asked(draft, quantity)


def read_nd(draft: Draft) -> None:
    """ND filters that are owned, and the one that is on."""
    owned: list[float] = []
    for quantity, stops in _strengths(draft):
        if _is_none_of_them(draft, quantity):
            draft.claim(quantity)
        elif _OFF_BEHIND.search(draft.after(quantity)) or _OFF_BEFORE.search(
            draft.before(quantity)
        ):
            draft.claim(quantity)
            draft.note("nd_on_stops", 0.0)
        elif _is_on(draft, quantity):
            draft.put("nd_on_stops", stops, quantity)
        else:
            draft.claim(quantity)
            owned.append(stops)
    if owned and not _ND_ELSEWHERE.search(draft.text):
        draft.note("nd_stops", tuple(dict.fromkeys(owned)))


_TRIPOD_NAMED: Final = any_of(TRIPOD)
_KIT_SLOTS: Final = frozenset({"has_polariser", "nd_stops", "camera_format", "lenses"})


def read_no_filters(draft: Draft) -> None:
    """`no filters` is what is on; where the kit was asked, or "with me", it is what there is."""
    text = draft.text
    asked_for_kit = draft.expecting & _KIT_SLOTS or (
        (draft.values.keys() & _KIT_SLOTS or _TRIPOD_NAMED.search(text))
        and not draft.values.keys() & {"shutter_s", "f_number"}
    )
    if _OWNS_NO_FILTERS.search(text) or (asked_for_kit and _NO_FILTERS.search(text)):
        draft.note("nd_stops", ())
        draft.note("has_polariser", value=False)
    elif _NO_FILTERS.search(text):
        draft.note("nd_on_stops", 0.0)
        draft.note("polariser_on", value=False)
    elif _ND_OFF.search(text):
        draft.note("nd_on_stops", 0.0)
    elif is_denied(text, ND) and not _ND_NOT_NEEDED.search(text):
        draft.note("nd_stops", ())


_NONE_ALONE: Final = exactly(
    "none|nothing|no|no nds?|nope|nah|off|zero", "(?:no|without) filters?", "nothing (?:on|at all)"
)
#: No single filter of a list is told by its factor below this (own rule): 10 are stops.
_MOST_BARE_STOPS: Final = 10


def read_asked_nd(draft: Draft) -> None:
    """Bare strengths where the open question asks which filters there are."""
    asked = "nd_stops" in draft.expecting and "lenses" not in draft.expecting
    if not asked or "nd_stops" in draft.values:
        return
    if _NONE_ALONE.match(draft.text):
        draft.note("nd_stops", ())
        return
    plain = [q for q in draft.free("", "stop") if not (q.signed or q.is_range or q.fraction)]
    if plain and all(q.value.is_integer() and 1 <= q.value <= _MOST_BARE_STOPS for q in plain):
        draft.note("nd_stops", tuple(dict.fromkeys(q.value for q in plain)))
        for quantity in plain:
            draft.claim(quantity)


def read_asked_filter(draft: Draft) -> None:
    """A bare strength where the open question asks which filter is on."""
    if "nd_on_stops" in draft.expecting and _NONE_ALONE.match(draft.text):
        draft.note("nd_on_stops", 0.0)
    plain = [quantity for quantity in draft.free("", "stop") if not quantity.signed]
    if "nd_on_stops" in draft.expecting and len(plain) == 1 and "nd_on_stops" not in draft.values:
        number = plain[0].value
        stops = number if number <= _STRONGEST else factor_stops(number)
        draft.put("nd_on_stops", stops, plain[0])
