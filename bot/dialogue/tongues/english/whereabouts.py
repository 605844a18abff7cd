"""English words: who is out of shelter, at a place already, or left out of a "no"."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Who left a shelter, and what was struck: a house, a car and the like alone are one.
    "whereabouts.outside": (
        r"water|falls?|creek|stream|river|lake|gorge|canyon|out|outside|back|tripod|trees?|pine|oak"
        r"|forest|woods?|ridge|summit|peak|path|trail|meadow|field|walk\w*|hik\w*|climb\w*|left|hit"
        r"|struck|(?:on|under|at|near|by|beside) (?:the|an?|that|this) (?!(?:\w+ )?(?:car|van|bus"
        r"|hut|house|shelter|cafe|hotel|porch|roof|table|window|radio)\b)\w+"
    ),
    # Who is at the place already, whatever is planned.
    "whereabouts.there": (
        r"now|already|where i am|(?:im|i am|were|we are|hes|shes|theyre|they are|\w+ is)"
        r" (?:(?:here|already|up|just|still) )*(?:on|at|here|there|standing|under|behind|above"
        r"|below|climbing|playing|sitting|wading)"
        r"|(?:my|our|he|she|they) (?:\w+ )?(?:stands?|climbs|sits)"
    ),
    # Whom a "no" leaves out: "only my wife", "not me, my son".
    "whereabouts.somebody": r"(?:the )?(?:two|three|both) of us",
    "whereabouts.only": r"only|just|except|apart from|but|not me",
    "whereabouts.the": r"the|my|our|me and|tripod and|for",
    # What is said of a place by who is at it: it is dry, and they hold on.
    "whereabouts.good_there": (
        r"hold(?:ing)? (?:on|tight)|grips?|gripping|(?:being |am |im )careful|(?:good|fine|safe|ok"
        r"|okay|dry|stable|wide|flat|solid)(?: up| out| down)? here|(?:its|it is)(?: \w+)? (?:dry"
        r"|safe|wide|flat|stable|solid)|(?<!stay )(?:up|out) here|(?:still|right|sit\w*|stand\w*"
        r"|back|am|im|are|foot|feet)(?: \w+){0,2} (?:on|at|over|by|near) (?:it"
        r"|the (?:very )?(?:edge|lip|brink|ledge|rim|drop|ice))|(?:foot|feet|legs)(?: \w+)? over"
        r"|on the (?:edge|lip|brink|ledge|ice)"
    ),
}
