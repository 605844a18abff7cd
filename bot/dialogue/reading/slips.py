"""Slips of the thumb and of dictation in the words of the trade, put right."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.near_words import NearWords

#: Words that decide what a number or a picture is; a token one letter off is one of them.
_WORDS: Final = (
    *("aperture", "shutter", "histogram", "exposure", "sensitivity", "waterfall", "landscape"),
    *("portrait", "foreground", "background", "distance", "megapixels", "overcast", "polariser"),
    *("polarizer", "kilometres", "kilometers", "nearest", "closest", "furthest", "farthest"),
    *("handheld", "tripod", "filter", "filters", "second", "seconds", "metres", "meters"),
    *("height", "heights", "minutes", "camera", "lenses", "blinking", "blinks", "flashing"),
    "highlights",
    *("cloudy", "canopy", "gorge", "sunset", "sunlight", "shadows", "medium", "thirds"),
    *("automatic", "manual", "vertical", "horizontal", "texture", "frozen", "blurry", "bright"),
    *("branches", "leaves", "breeze", "circular", "neutral", "density", "stopper", "stream"),
    *("cascade", "boulder", "quarter", "eighth", "sixtieth", "thirtieth", "fifteenth", "twenty"),
    *("thirty", "twelve", "fifteen", "sixteen", "eighteen", "eleven", "hundred", "thousand"),
    *("length", "patches", "overexposed", "underexposed", "smeared", "sensor", "waterfalls"),
)
#: Words of their own that are one letter off (from a list of frequent English words).
_OTHERS: Final = frozenset(
    {"merges", "minutos"}
    | {"bight", "blanches", "blanking", "blanks", "blight", "blinding", "blinds", "blink"}
    | {"bolder", "bounder", "branched", "breaches", "breezed", "breezy", "bricht", "bringt"}
    | {"brinks", "brunches", "builder", "burry", "cadera", "calmer", "camara", "camper"}
    | {"campera", "cascaded", "closers", "closes", "closet", "cloud", "distanced", "eight"}
    | {"eighty", "eileen", "falter", "filer", "filler", "fitter", "flushing", "froze"}
    | {"george", "gored", "gorged", "gorse", "gouge", "handhold", "highlight", "hounded"}
    | {"kilometer", "kilometre", "landscaper", "leases", "leave", "leaved", "leaven", "leaver"}
    | {"lengthy", "lentes", "levees", "levels", "levers", "loaves", "manuel", "megapixel"}
    | {"merest", "meteor", "meter", "meterse", "metre", "metros", "meyers", "minuses"}
    | {"minute", "minuten", "neatest", "neural", "overcoat", "parches", "patched", "peaches"}
    | {"pitches", "polarise", "polarised", "polarize", "polarized", "quartet", "scream", "seared"}
    | {"seconde", "senior", "senor", "senora", "sensory", "shadow", "shadowy", "shatter"}
    | {"sheared", "shopper", "shuttle", "speared", "sputter", "steam", "steamy", "stepper"}
    | {"stopped", "streak", "stutter", "subset", "textured", "theirs", "third", "thirst"}
    | {"thirsty"}
)
#: Short words of which two letters change places; no other word comes out so.
_TURNED: Final = (
    *("high", "tall", "wide", "away", "feet", "lens", "stop", "stops", "three", "light", "white"),
    *("dark", "sharp", "rock", "rocks", "wind", "yards", "metre", "meter", "under", "above"),
    *("time", "focal", "about", "water", "clouds", "cloud", "shade", "trees", "front", "near"),
    *("filter", "soft", "sunny", "width", "depth", "height"),
)
_TURNED_OTHERS: Final = frozenset({"fete", "nera", "there", "tiem", "udner"})
#: What dictation and thumbs make of short words, by what stands behind.
_BEFORE_NUMBERS: Final = (
    (re.compile(r"\bios(?= ?\d| (?:one|two|four|six|eight|sixty|fifty|hundred|a hundred))"), "iso"),
    (
        re.compile(
            r"\b(?:i so|eye so|is o|i\.s\.o\.?|(?:i|eye) (?:s|ess) oh?)"
            r"(?= (?:\d|one|two|four|six|eight|a hundred))"
        ),
        "iso",
    ),
    (re.compile(r"\b(?:f|eff) (?:fore|four)\b(?! \d)"), "f 4"),
    (re.compile(r"\bf ate\b"), "f 8"),
    (
        re.compile(
            r"\b(?:eff|ef)(?= ?(?:\d|one|two|four|five|six|seven|eight|nine|ten|eleven"
            r"|thirteen|fourteen|sixteen|eighteen|twenty)\b)"
        ),
        "f",
    ),
)
#: Letters that thumbs and eyes take for digits behind "iso": "1oo", "l00".
_ISO_LETTERS: Final = re.compile(r"(?<=\biso )(?=[lo]*\d)[\dlo]{2,5}\b")
#: Number words as they are often spelt.
_SPELT: Final = (
    (re.compile(r"\bdist\.?(?= ?[:=]? ?\d| to\b)"), "distance"),
    (re.compile(r"\b(?:hgt|ht)\.?(?= ?[:=]? ?\d)"), "height"),
    (re.compile(r"\bfg(?= ?[:=]? ?\d)"), "foreground"),
    (re.compile(r"\bbg(?= ?[:=]? ?\d)"), "background"),
    (re.compile(r"@ ?(?=\d+(?:\.\d+)? ?(?:c?m|ft|feet|yds?|met(?:er|re)s)\b)"), "at "),
    (re.compile(r"\bfrm\b"), "from"),
    (  # "closer, 3 m": where somebody stands now
        re.compile(
            r"\b(closer|nearer|(?:further|farther) (?:back|away)), (?=\d+(?:\.\d+)? ?"
            r"(?:m|met(?:er|re)s?|ft|feet)\b)"
        ),
        r"\1 at ",
    ),
    (  # "1/4 f11 iso 100 with the six": a filter, behind settings
        re.compile(
            r"(\b(?:1/\d+|iso ?\d+|f ?/?\d)\b[^.;!?]{0,40}) with (the|my) (three|six|ten|3|6|10)"
            r"(?=\W*$|[,;.])"
        ),
        r"\1 with \2 \3 stop",
    ),
    (re.compile(r"(?<=\d)( ?(?:ft|feet|foot|m|met(?:er|re)s)) tal\b"), r"\1 tall"),
    (re.compile(r"(?<=\d)( ?(?:ft|feet|foot|m|met(?:er|re)s)) bck\b"), r"\1 back"),
    (re.compile(r"\brok(s?)\b"), r"rock\1"),
    (re.compile(r"\bnre?st\b"), "nearest"),
    (re.compile(r"\bdwn\b"), "down"),
    (re.compile(r"\bgeting\b"), "getting"),
    (re.compile(r"\b(?:abt|abut|bout|arnd)\b(?= \d)"), "about"),
    (re.compile(r"\b(?:apat(?:u|e)re|ap+eture|aperchure|diafragma?|diaphram)\b"), "aperture"),
    (re.compile(r"\bfourty\b"), "forty"),
    (re.compile(r"\bninty\b"), "ninety"),
    (re.compile(r"\btwelf\b"), "twelve"),
    (re.compile(r"\bforteen\b"), "fourteen"),
    (re.compile(r"\b(?:meters?s|metres?s|meteres|meeters?|metrs)\b"), "metres"),
)
_TOKEN: Final = re.compile(r"(?<![a-z'])[a-z]{3,13}(?![a-z'])")
#: Shorter words are mended by two letters in the other order alone.
_SHORTEST: Final = 5
#: "Fulll", "soooo dark".
_HELD: Final = (
    (re.compile(r"\b(s|t)o{3,}\b"), lambda match: {"s": "so", "t": "too"}[match[1]]),
    (re.compile(r"\bwa{2,}y\b"), "way"),
    (re.compile(r"\bve+r+y+\b"), "very"),
    (re.compile(r"([a-z])\1{2,}"), r"\1\1"),
)


_DIGITS: Final = str.maketrans("lo", "10")


def _turned(word: str) -> set[str]:
    """The word with each two neighbours in the other order."""
    pairs = range(len(word) - 1)
    return {word[:at] + word[at + 1] + word[at] + word[at + 2 :] for at in pairs} - {word}


_KNOWN: Final = frozenset(_WORDS) | _OTHERS | _TURNED_OTHERS | frozenset(_TURNED)
_NEAR: Final = NearWords(_WORDS)
_TURNS: Final = {turn: word for word in _TURNED for turn in _turned(word)}


def _mended(match: re.Match[str]) -> str:
    token = match.group()
    if token in _KNOWN or token.removesuffix("s") in _KNOWN:
        return token
    if token in _TURNS:
        return _TURNS[token]
    return token if len(token) < _SHORTEST else _NEAR.of(token)


def mend_slips(text: str) -> str:
    """The message with slips in the trade's words put right: `apperture`, `hihg`, `ios 200`.

    Args:
        text: a message in lower case.
    """
    for pattern, word in (*_HELD, *_SPELT, *_BEFORE_NUMBERS):
        text = pattern.sub(word, text)
    text = _ISO_LETTERS.sub(lambda match: match.group().translate(_DIGITS), text)
    return _TOKEN.sub(_mended, text)
