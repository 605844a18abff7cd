"""Places among which somebody chose, and places that were swapped: only the own one counts."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.spoken_numbers import WORD_NUMBER, in_figures
from bot.dialogue.reading.unit_words import FOOT, METRE, YARD

_UNIT: Final = rf"(?:{METRE}|{FOOT}|{YARD})"
_COUNT: Final = rf"(?:\d+(?:\.\d+)?|(?:{WORD_NUMBER})\b)"
_SPOT: Final = (
    r"(?:spots?|places?|positions?|points?|stands?|locations?|viewpoints?|platforms?|options?|ledges?"
    r"|rocks?|bank|side|bridge|one|deck)"
)
_SIDE: Final = r"(?:left|right|upper|lower|first|second|nearer|closer|higher|near|far)"
_LETTER: Final = r"(?:a|b|c|1|2|3|one|two|three)"
#: "Spot A is 14 m from it", "the left one: 9 m".
_OPTION: Final = re.compile(
    rf"\b(?:(?:the )?(?:(?:spot|place|position|point|stand|location|option|viewpoint|platform)"
    rf" (?P<letter>{_LETTER})|(?P<side>{_SIDE})(?: {_SPOT})?|(?P<thing>(?:bridge|bank|beach|deck"
    rf"|platform|viewpoint|boulder))))(?:'s|:)?(?: (?:is|was|would be|at|about|maybe|standing))*,?"
    rf" (?P<count>{_COUNT}) ?(?P<unit>{_UNIT})?\b"
    r"(?: (?:away|off|back|out)\b(?: from (?:it|here|the \w+))?| from (?:it|the \w+))?"
)
_CHOICE: Final = re.compile(
    r"\b(?:chose|chosen|picked|took|taken|went (?:for|with|to)|go(?:ing)? (?:for|with|to)"
    r"|settled (?:on|for)|decided (?:on|for)|stay(?:ed)? (?:at|on)|(?:i'm|im|i am|we're|we are)"
    r"(?: now| standing| sitting)? (?:at|on)|stand(?:ing)? (?:at|on)|set up (?:at|on)|choose|take)"
    rf" (?:the )?(?:{_SPOT} )?(?P<what>{_LETTER}|{_SIDE}|bridge|bank|beach|deck|platform|viewpoint"
    r"|boulder)\b"
    rf"|\b(?P<said>{_LETTER}|{_SIDE})(?: {_SPOT})? it is\b"
)
#: Words without which "upper 10 m, lower 6 m" may be two drops.
_OF_STANDING: Final = re.compile(
    rf"\b(?:{_SPOT.replace('|one', '')}|away|off|back|from it|from the)\b"
)
#: "I swapped places with my husband, he had 10 m, I had 16, so now ten".
_SWAPPED: Final = re.compile(
    r"\b(?:swapped|traded|switched|exchanged|changed) (?:places?|spots?|positions?|with \w+)\b"
    r"|\bwe (?:swapped|traded|switched)\b"
)
_NOW: Final = re.compile(
    rf"\b(?:i'm|i am|im) (?:at )?(?P<count>{_COUNT})(?: ?(?P<unit>{_UNIT})\b)? now\b"
    rf"|\bnow(?: (?:i'm|i am|im|it's|at|on|i have|i've|about|the|my))* (?P<then>{_COUNT})"
    rf"(?: ?(?P<own>{_UNIT})\b)?"
)
_BEFORE: Final = re.compile(rf"\b(?:had|at|was|were|stood)(?: at| about)* {_COUNT}(?: ?{_UNIT}\b)?")
_ANY_UNIT: Final = re.compile(rf"(?:{_COUNT}) ?(?P<unit>{_UNIT})\b")


def of_places(text: str) -> str:
    """The message with the one place where somebody stands: `spot A 14 m, spot B 22 m. I took B`.

    Of places among which nobody chose both lengths stay open: `14 m or 22 m`.

    Args:
        text: a message in lower case, its numbers still in words.
    """
    return _chosen(_swapped(text))


def _swapped(text: str) -> str:
    """The message of somebody who took another's place, with that place's length alone."""
    now, unit = _NOW.search(text), _ANY_UNIT.search(text)
    if not _SWAPPED.search(text) or now is None or unit is None:
        return text
    count = in_figures(now["count"] or now["then"])
    told = f"distance is {count} {now['unit'] or now['own'] or unit['unit']}"
    return f"{_BEFORE.sub(' ', text[: now.start()])}{told}{text[now.end() :]}"


def _chosen(text: str) -> str:
    options = list(_OPTION.finditer(text))
    names = [_name(option) for option in options]
    unit = next((option["unit"] for option in options if option["unit"]), None)
    if len(set(names)) < 2 or unit is None or not _OF_STANDING.search(text):
        return text
    choice = _CHOICE.search(_OPTION.sub("", text))
    what = (choice["what"] or choice["said"]) if choice else None
    kept = [option for option, name in zip(options, names, strict=True) if name == what]
    lengths = [f"{in_figures(one['count'])} {one['unit'] or unit}" for one in kept or options]
    if len(kept) != 1 and not all(option["letter"] for option in options):
        return text
    said = f"distance is {lengths[0]}" if len(kept) == 1 else " or ".join(lengths)
    first = options[0]
    rest = _OPTION.sub(" ", text[first.end() :])
    return f"{text[: first.start()]}{said}{rest}"


def _name(option: re.Match[str]) -> str:
    return option["letter"] or option["side"] or option["thing"]
