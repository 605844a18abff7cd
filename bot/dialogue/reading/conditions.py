"""Wind in the leaves, who walks along, and when the sun sets."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.phrases import any_of, exactly

_LEAVES: Final = r"(?:leaves|leaf|foliage|ferns?|branches|twigs|trees|grass|bushes)"
_CALM: Final = any_of(
    r"no (?:wind|breeze)",
    "windless|dead calm",
    r"(?:wind|breeze)(?:'s| is| has)? (?:gone|stopped|dropped|died)",
    r"(?:it's|all|is|totally) calm",
    rf"{_LEAVES} (?:are )?(?:still|not moving|don't move|aren't moving|hang still)",
    r"(?:nothing|no leaf|not a leaf) (?:moves|moving)",
)
_CALM_ALONE: Final = exactly("calm")
_WINDY: Final = any_of(
    "windy|breezy",
    r"gust\w*",
    r"(?:strong|bit of|some|light|much) (?:wind|breeze)",
    r"wind (?:is|from|moves|picks|blows|keeps (?:mov|blow|shak)\w+|shakes)",
    r"(?<!out of )(?<!out )(?:from|in|by) the wind",
    rf"{_LEAVES} (?:\w+ )?(?:moving|move|moves|moved|in the wind|shak\w+|wav\w+|flutter\w*|danc\w+"
    r"|sway\w*|trembl\w*)",
)


def read_wind(draft: Draft) -> None:
    """Whether leaves move."""
    if _CALM.search(draft.text) or _CALM_ALONE.match(draft.text):
        draft.note("wind", value=False)
    elif _WINDY.search(draft.text):
        draft.note("wind", value=True)


_MIXED: Final = any_of(
    r"mixed (?:group|fitness|bunch|party|abilities|ability|levels)",
    r"(?:group|party|we|us)\b.{0,40}\bmixed",
    r"slow (?:walkers|group|people)",
    r"(?:of us|people|walkers|some) (?:are |is )?slow",
    r"with (?:kids|children)",
)
_ALONE: Final = any_of(r"(?:i'm|im|going|walking|hiking) (?:alone|solo|by myself)")
_ONLY_ME: Final = exactly("alone", "solo", "just me")


def read_group(draft: Draft) -> None:
    """Whether the group's fitness is mixed."""
    if _MIXED.search(draft.text):
        draft.note("group_mixed", value=True)
    elif _ALONE.search(draft.text) or _ONLY_ME.match(draft.text):
        draft.note("group_mixed", value=False)


_CLOCK: Final = r"(?P<hour>\d{1,2})[:.h]?(?P<minute>\d\d)? ?(?P<half>[ap]\.?m\b)?"
_SUNSET: Final = re.compile(
    r"\b(?:sunset(?: time)?|sundown"
    r"|sun(?:'s| is| will)? (?:goes down|going down|go down|sets?|down|setting))\b"
    rf"(?: (?:is|today|tonight|at|around|about|will be|'s))*[ :=]*{_CLOCK}"
)
_CLOCK_SUNSET: Final = re.compile(
    r"\b(?P<hour>\d{1,2})[:.](?P<minute>\d\d) ?(?P<half>[ap]\.?m\b)? (?:is |for )?"
    r"(?:sunset|sundown)\b"
)


def _clock(match: re.Match[str]) -> str | None:
    """A time of day in 24 hours; a bare hour is none, and 25:00 neither."""
    if not (match["minute"] or match["half"]):
        return None
    hour, minute = int(match["hour"]), int(match["minute"] or 0)
    if match["half"] and match["half"].startswith("p") and hour < 12:
        hour += 12
    return f"{hour:02d}:{minute:02d}" if hour < 24 and minute < 60 else None


def read_sunset(draft: Draft) -> None:
    """The time of sunset as typed, in 24 hours; `7:05 pm` is 19:05."""
    match = _SUNSET.search(draft.text) or _CLOCK_SUNSET.search(draft.text)
    clock = _clock(match) if match else None
    if match is None or clock is None:
        return
    draft.note("sunset", clock)
    for quantity in draft.free():
        if match.start() <= quantity.start < match.end():
            draft.claim(quantity)
