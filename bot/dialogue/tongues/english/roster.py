"""English words of who leads and asks how far the others are."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_ALL: Final = (
    r"(?:every(?:body|one)|they(?: all)?|all of them|my students"
    r"|the (?:others|students|rest|group))"
)

WORDS: Final[Mapping[str, str]] = {
    "roster.friend": r"my friend",
    "roster.before": r"(?:ok|so|and|tell me|show me|linn|please|now)[ ,]+",
    "roster.after": r" (?:now|please|right now|at the moment|so far|in the walk|doing)",
    "roster.asked": (
        rf"who(?:'s| is| are)? (?:still )?(?:stuck|waiting|waits|behind|where|done|finished)"
        rf"|who(?:'s| is| are)? (?:not|still not) (?:started|begun|done|finished)"
        rf"|who needs (?:help|me|a hand)(?: most)?|who (?:has not|hasn't|has no|haven't"
        rf"|still has no|is yet to) (?:yet )?(?:started|begun|(?:(?:kept|keep|shared|sent|taken"
        rf"|got) )?(?:a|any|one)? ?(?:frame|picture|photo)s?)(?: yet)?|(?:where|how far) (?:is|are"
        rf"|along (?:is|are)) {_ALL}|where {_ALL} (?:is|are)|how (?:is|are) {_ALL}|(?:the )?roster"
        rf"|group status|status of the group|who is at (?:which|what) step"
        rf"|overview(?: of the group)?"
    ),
}
