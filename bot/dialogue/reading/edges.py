"""What a message tells of the frame's edges and its anchor, asked or not."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.phrases import any_of

_COVER: Final = r"(?:leaves|leaf|branches|trees?|canopy|foliage|rock|moss|ferns?|bushes|green)"
_ABOVE: Final = r"(?:over|above|along|across|at|all along|right over|on)"
_TOP: Final = r"(?:the )?(?:top(?: edge)?|lip|crest|fall)"
_EDGES: Final = r"(?:edges?|sides?|corners?|borders?|frame(?:'s| is)?|margins?)"
_SIDE: Final = (
    r"(?:(?:the |my )?(?:left|right|top|bottom|lower|upper)(?:[ -](?:left|right))?"
    r"(?: (?:corner|edge|side|border|hand side))?|(?:the |a |one )?(?:corner|edge|side|border))"
)
_THING: Final = r"(?:branch|twig|trunk|stick|log|fern|tree|root|bush|grass|leaf)"
_CLEAN: Final = r"(?:clean|clear|tidy|free|empty|fine|good|ok|okay)"

_GONE: Final = any_of(
    r"(?:it|that|they)(?:'s| is| are|'re) (?:gone|out|away)(?: now)?",
    r"(?:moved|cropped|zoomed|tilted|stepped|cut)(?: \w+){0,4} (?:out|away|off|gone)",
    r"(?:cropped|zoomed|cut) (?:it|that|them)|by (?:zooming|moving|cropping|tilting)",
)
_TOLD: Final = {
    "top": {
        "covered": any_of(
            rf"{_COVER}(?: \w+){{0,3}} {_ABOVE} {_TOP}",
            r"no (?:white )?sky(?: (?:in|at|above|over|visible|showing))?(?: \w+){0,3}",
            rf"{_TOP}(?: is|'s) (?:all )?(?:covered|{_COVER}|dark)",
        ),
        "sky": any_of(
            r"(?:(?:white|bright|pale|grey|bit of|patch of|strip of) )+sky(?: \w+){0,3}"
            r" (?:at|along|above|over|in) (?:the )?(?:top|lip|trees|leaves)",
            r"sky (?:hole|gap|peeks?|peeking|shows|showing)(?: \w+){0,4}",
        ),
        "lip": any_of(r"(?:lip|fall)(?: \w+){0,2} touch(?:es|ing) (?:the )?(?:top|edge|border)"),
    },
    "sides": {
        "clean": any_of(
            rf"{_EDGES}(?: (?:is|are|all|look|looks|both|and|corners|sides)){{0,4}} {_CLEAN}",
            rf"{_CLEAN} (?:all (?:a)?round|{_EDGES}|at the {_EDGES})",
            rf"(?:nothing|no)(?: \w+){{0,3}} (?:at|on|in|along) (?:the |any )?{_EDGES}",
        ),
        "twig": any_of(
            rf"{_THING}s?(?: \w+){{0,4}} (?:at|on|in|from|into|over) {_SIDE}",
            rf"{_SIDE} (?:has|shows|there's) an? {_THING}",
        ),
        "bright": any_of(
            rf"(?:bright|white|shiny)(?: \w+){{0,3}} (?:at|on|in) {_SIDE}",
            rf"{_SIDE} (?:is|are|looks?) (?:too |very )?(?:bright|white)",
        ),
    },
}
#: Words of a complaint or of the camera's warning: then the place is where something went wrong.
_OTHER: Final = re.compile(
    r"\b(?:blink\w*|flash\w*|histogram|soft|blur\w*|mush\w*|smear\w*|sharp|focus|crisp"
    r"|may i|can i|should i|stand|climb|walk|step)\b|\?"
)


def edges_told(text: str) -> dict[str, str]:
    """The checks of a composition that a message answers, by their names.

    Args:
        text: as typed, in English or glossed.

    Returns:
        For "top" and "sides" the option that is told; a twig that was moved out leaves the sides
        clean. What is told of blinking or softness at an edge is no composition.
    """
    said = " ".join(text.casefold().replace("’", "'").split())
    if _OTHER.search(said):
        return {}
    found = {name: value for name, values in _TOLD.items() if (value := _first(values, said))}
    if found.get("sides") in {"twig", "bright"} and _GONE.search(said):
        found["sides"] = "clean"
    return found


def _first(values: dict[str, re.Pattern[str]], said: str) -> str | None:
    return next((value for value, pattern in values.items() if pattern.search(said)), None)
