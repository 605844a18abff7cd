"""Slips of the thumb and of dictation in the words of the trade, put right."""

from __future__ import annotations

import re
from importlib.resources import files
from typing import Final

from bot.dialogue.reading.near_words import NearWords
from bot.dialogue.reading.rewriting import Rewriting

#: What dictation and thumbs make of short words, by what stands behind.
_BEFORE_NUMBERS: Final = (
    (re.compile(r"\b(?:is0|1so|lso|jso|izo|isp|iao|oso)(?= ?\d)"), "iso"),
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
    (re.compile(r"(?<=\d)( ?)cmm\b"), r"\1cm"),
    (re.compile(r"(?<=\d)( ?)kmm\b"), r"\1km"),
    (re.compile(r"(?<=\d)( ?)ftt\b"), r"\1ft"),
    (
        re.compile(r"(?<=\d)( ?(?:m|ft|cm|km))(?=(?:away|tall|high|off|back|wide|deep|from)\b)"),
        r"\1 ",
    ),
    (re.compile(r"(?<=\d)(?=iso ?\d)"), " "),
    (re.compile(r"(?<=\d)s(?=(?:iso|f) ?/?\d)"), "s "),
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
#: "Fulll", "soooo dark".
_HELD: Final = (
    (re.compile(r"\b(s|t)o{3,}\b"), lambda match: {"s": "so", "t": "too"}[match[1]]),
    (re.compile(r"\bwa{2,}y\b"), "way"),
    (re.compile(r"\bve+r+y+\b"), "very"),
    (re.compile(r"([a-z])\1{2,}"), r"\1\1"),
)


_RIGHT: Final = Rewriting((*_HELD, *_SPELT, *_BEFORE_NUMBERS))
#: Words of which a thumb left out the vowels.
_VOWELS: Final = {
    "drk": "dark", "brght": "bright", "wnd": "wind", "wtr": "water", "rck": "rock", "lns": "lens",
    "trpd": "tripod", "hght": "height", "fltr": "filter", "shttr": "shutter", "nrst": "nearest",
    "tll": "tall", "stp": "stop", "hgh": "high", "lght": "light", "blnk": "blink",
    "blnks": "blinks",
    "dstnce": "distance", "frst": "first", "clsst": "closest", "bhnd": "behind", "cldy": "cloudy",
}  # fmt: skip
_SKELETONS: Final = re.compile(rf"\b(?:{'|'.join(_VOWELS)})\b")
_DIGITS: Final = str.maketrans("lo", "10")


def _lines(name: str) -> tuple[str, ...]:
    return tuple((files(__package__) / f"{name}.txt").read_text("utf-8").split())


#: Words that decide what is read, the one that decides most first; and words of their own that are
#: one letter off from them (from lists of frequent words of the three languages).
_NEAR: Final = NearWords(_lines("mended_words"), _lines("other_words"))
_TOKEN: Final = re.compile(r"(?<![a-z'])[a-z]{4,15}(?![a-z'])")


def _mended(match: re.Match[str]) -> str:
    token = match.group()
    known = _NEAR.knows(token) or _NEAR.knows(token.removesuffix("s"))
    return token if known else _NEAR.of(token)


def mend_slips(text: str) -> str:
    """The message with slips in the trade's words put right: `apperture`, `hihg`, `ios 200`.

    Args:
        text: a message in lower case.
    """
    text = _RIGHT.of(_SKELETONS.sub(lambda match: _VOWELS[match.group()], text))
    text = _ISO_LETTERS.sub(lambda match: match.group().translate(_DIGITS), text)
    return _TOKEN.sub(_mended, text)
