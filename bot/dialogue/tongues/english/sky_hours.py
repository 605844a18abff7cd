"""English words of a forecast by its hours: what sky, from when, until when; rain and cold."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Sun that comes and goes; these stand in front of the plain words.
    "sky_hours.partly": (
        r"(?:partly|partially|half|mostly) (?:cloudy|sunny|clear)|sun\w* (?:and|with|or) (?:\w+ )?"
        r"clouds?|clouds? and sun|(?:sunny|bright|clear) (?:spells|intervals|breaks)"
        r"|broken clouds?|a few clouds|some sun|hazy sun\w*|mix(?:ed)? of sun\w*"
    ),
    "sky_hours.sun": (
        r"sunny|sunshine|(?:full |bright |blazing )?sun|clear(?: sk(?:y|ies))?|blue sky"
    ),
    "sky_hours.overcast": (
        r"(?:full(?:y)? |solid(?:ly)? |total(?:ly)? |all |completely )?(?:overcast|gr[ea]y"
        r"|socked in)"
        r"|(?:full|solid|heavy|thick|dark|low) clouds?|(?:clouds?|it) clos(?:es?|ing) in"
    ),
    "sky_hours.cloud": (
        r"(?:bright|high|thin|light|white) (?:clouds?|overcast)|cloud(?:s|y|ier|ing)?(?: over)?"
    ),
    "sky_hours.rain": (
        r"(?:(?:some|light|heavy|slight|steady|a bit of|chance of) )*"
        r"(?:rain(?:s|ing|y)?|drizzl\w+|showers?|showery|sprinkles?)|wet weather"
    ),
    "sky_hours.storm": (
        r"(?:some |a |chance of |possible )*(?:thunder\w*|lightning|storms?)(?: showers?)?"
    ),
    "sky_hours.and": r"and|with|but",
    "sky_hours.then": r"then|and then|but",
    # Denied right before it.
    "sky_hours.no": r"no|not|without|never|isn't|won't be|dry,? no",
    "sky_hours.until": r"'?till?|until|up to|before|through(?: to)?",
    "sky_hours.since": r"from|after|by|starting(?: at)?|at|around|about|since|past",
    # Hours by their names.
    "sky_hours.noon": r"noon(?:ish)?|mid-?day|lunch(?: ?time)?",
    "sky_hours.morning": (
        r"(?:in |all |during )?(?:the |early )?morning|early(?: on)?|at first|first thing"
    ),
    "sky_hours.afternoon": r"(?:in |all |during )?(?:the |early )?afternoon",
    "sky_hours.evening": r"(?:in |toward(?:s)? )?(?:the )?evening|late afternoon",
    "sky_hours.oclock": r"o'? ?clock|hours",
    # What a start, a sunset or a bus has is no hour of the sky.
    "sky_hours.other": (
        r"start\w*|leav\w+|leave|set(?:ting)? (?:off|out)|head(?:ing)? \w+|sun ?set\w*|sundown|turn"
        r"|back|bus|gate|sets?|goes down|arriv\w+|walking"
    ),
    # Cold that is forecast, or packed for.
    "sky_hours.cold": (
        r"cold|chilly|freezing|frost\w*|near freezing|(?:as in )?cold|bitter|nippy|below zero"
        r"|(?:low|mid|upper|high|in the|around the) (?:20|30|40)'?s|(?:twent|thirt|fort)ies"
    ),
}
