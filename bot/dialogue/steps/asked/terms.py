"""Words of the trade that somebody asks the meaning of: which one a question wants explained."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.inventory import ND, POLARISER

#: How the meaning of a word is asked; behind "the" stands the person's own: "what's the ISO".
_ASKS: Final = re.compile(
    r"(?:(?:and|so|but|ok|okay|sorry|hi|hey|linn|erm?|wait|hmm|please|can you|could you)\W+)*"
    r"(?:what(?: precisely| exactly| actually)?(?:'s|s| is| are| was| does| do you mean (?:by|with)"
    r"| do you call| is meant (?:by|with)| means?)|what the (?:hell|heck) (?:is|are)"
    r"|explain(?: to me)?|define|meaning of"
    r"|(?:i )?(?:don't|dont|do not) (?:know|get|understand) what(?: is|'s)?"
    r"|(?:i have )?no idea what(?: is|'s)?|(?:i(?:'ve)? )?never heard of|tell me what)"
    r"(?: (?:precisely|exactly|actually|even|really|meant by|is|are))*"
    r"(?: (?P<the>the|my|your))?(?: (?:an?|this|that|these|those|so-called|word))*"
    r" ['\"‘“]?(?P<word>[a-z0-9/ -]+?)['\"’”]?"
    r"(?: (?:is|are|means?|do|does|stands? for|for|(?:for |to )(?:me|us|it)|good for|used for"
    r"|even|exactly|please|then|again"
    r"|anyway|here|in photography|on (?:a|my) (?:phone|camera)|thing|stuff))*\W*",
)
#: Terms by their words; the first that fits counts.
_TERMS: Final[tuple[tuple[str, str], ...]] = (
    ("nd", rf"(?:{ND})(?: ?\d+)?|nd ?\d+|nd filters?|\w+[ -]stop (?:filter|nd)"),
    ("polariser", POLARISER + r"(?: filters?)?|pola|polari[sz]ation filter"),
    ("diffraction", r"diffraction"),
    ("iso", r"isos?"),
    ("f_number", r"f[ -]?(?:number|stop)s?|apertures?|f ?/ ?\d+(?:\.\d+)?|f"),
    ("stop", r"(?:\d+ |one |two |three )?stops?(?: of light)?"),
    ("histogram", r"histograms?"),
    ("blink", r"blink(?:ing|s|ies)?|highlight (?:warning|alert)s?|blinking water"),
    ("bracket", r"bracket(?:ing|ed|s)?|exposure bracketing"),
    ("long_exposure", r"long[ -]?exposures?(?: mode| photo)?"),
    ("stack", r"(?:focus )?stack(?:ing|s)?|focus stack(?:ing|s)?"),
    ("depth", r"depth of field|dof"),
    ("shutter", r"shutter(?: ?speeds?| times?)?|exposure time"),
    ("format", r"(?:sensor )?formats?|full[ -]?frame|aps[ -]?c|crop sensor|sensor size"),
    ("focal", r"focal lengths?|millimet(?:er|re)s|mm"),
    ("look", r"(?:the )?(?:textured|silky|crisp|misty|frozen)(?: (?:water|look))?|(?:the )?looks?"),
    ("clipped", r"clipp(?:ed|ing)|blown(?:[ -]out)?(?: (?:highlights?|whites?))?|lost texture"),
    ("burst", r"bursts?(?: mode)?"),
    ("hyperfocal", r"hyperfocal(?: distance)?"),
    ("ladder", r"(?:shutter )?ladder"),
)
_WORDS: Final = tuple((name, re.compile(pattern)) for name, pattern in _TERMS)
#: Behind "the" these are asked for their number.
_OF_NUMBERS: Final = frozenset({"iso", "f_number", "shutter", "format", "focal"})

#: Every term that is explained.
NAMES: Final = tuple(name for name, _ in _TERMS)


def asked(said: str) -> str | None:
    """The topic of the term that a question wants explained; None for other questions.

    Args:
        said: a clause in lower case, in English.
    """
    found = _ASKS.fullmatch(said)
    if found is None:
        return None
    word = found["word"].strip()
    name = next((name for name, pattern in _WORDS if pattern.fullmatch(word)), None)
    own = found["the"] is not None and name in _OF_NUMBERS
    return None if name is None or own else f"term.{name}"
