"""Words by which somebody only tries a change, in each language: how it begins, and steps to go."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final, NamedTuple

from bot.dialogue.meaning.said import Said

_METRES_PER_FOOT: Final = 0.3048  # by definition
_LENGTH: Final = r"(?P<by>\d+(?:[.,]\d+)?) ?(?P<unit>{units})"


class _Words(NamedTuple):
    """The words of one language."""

    #: How a message begins that only tries something.
    supposes: re.Pattern[str]
    #: How one goes on that builds on what was tried just before.
    goes_on: re.Pattern[str]
    #: Steps away from the water, and towards it.
    back: re.Pattern[str]
    closer: re.Pattern[str]
    #: Without the filter that was tried, or is on.
    without: re.Pattern[str]


def _words(
    *, begins: str, goes_on: str, units: str, back: str, closer: str, without: str
) -> _Words:
    length = _LENGTH.format(units=units)
    patterns = (
        rf"[\W_]*(?:{begins})(?!\w)",
        rf"[\W_]*(?:{goes_on})(?!\w)",
        rf"\b{length}\b(?: (?:{back})\b)",
        rf"\b{length}\b(?: (?:{closer})\b)",
        rf"\b(?:{without})(?!\w)",
    )
    return _Words(*(re.compile(pattern, re.IGNORECASE) for pattern in patterns))


_WORDS: Final[Mapping[str, _Words]] = {
    "en": _words(
        begins=r"(?:(?:ok(?:ay)?|so|but|hmm?|and|now)\W+)*(?:what if|what about|how about|suppose"
        r"|supposing|imagine|say|if)",
        goes_on=r"and|or|plus|then|at|with|without|from|in|if|same (?:at|with|from)",
        units=r"m|met(?:er|re)s?|ft|feet|foot",
        back=r"(?:further |farther |more )?(?:back|backwards)",
        closer=r"(?:further |farther |more )?(?:closer|nearer|forward)",
        without=r"without (?:it|that|them|one|(?:the |any )?filters?)",
    ),
    "de": _words(
        begins=r"(?:(?:und|aber|ok(?:ay)?|also|dann|hm+)\W+)*(?:was\W+(?:(?:w[aä]e?re?|ist|passiert"
        r"|geschieht|macht es)\W+)?(?:wenn|bei|falls)|wie (?:w[aä]e?re?|s[aä]e?he?) (?:es|das)"
        r"(?: aus)?|(?:mal )?angenommen|nehmen wir an)",
        goes_on=r"(?:und|oder|dann|plus)\W+(?:dann )?(?:bei|mit|ohne|aus|von|auf|in|noch|dazu"
        r"|wenn)",
        units=r"m|metern?|fu(?:ß|ss)",
        back=r"(?:weiter )?(?:zur[uü]e?ck\w*|nach hinten|weiter weg|weiter hinten|hinter\w*)",
        closer=r"(?:weiter )?(?:n[aä]e?her\w*|nach vorne?|weiter vorne?|ran\w*|heran\w*)",
        without=r"ohne (?:ihn|den|das|die|es|filter)(?= ?(?:$|[?.!,]))",
    ),
    "es": _words(
        begins=r"(?:(?:y|pero|ok|entonces|bueno)\W+)*(?:qu[eé] (?:pasa|pasar[ií]a|tal|ocurre)"
        r"(?: si| con| a)?|y si(?!,)|si (?:uso|pongo|abro|cierro|subo|bajo|voy|me)|c[oó]mo "
        r"(?:quedar[ií]a|ser[ií]a|saldr[ií]a|queda)|supongamos|suponiendo|imagina)",
        goes_on=r"(?:y|o|m[aá]s)\W+(?:adem[aá]s )?(?:a|con|sin|desde|en|de|si)",
        units=r"m|metros?|pies",
        back=r"(?:m[aá]s )?(?:atr[aá]s|lejos)",
        closer=r"(?:m[aá]s )?(?:cerca|adelante)",
        without=r"sin (?:[eé]l|ese|eso|ellos|(?:el |ning[uú]n )?filtros?)",
    ),
}


def _own(said: Said) -> tuple[_Words, str]:
    """The words of the language of a message, and the message in that language."""
    own = _WORDS.get(said.language)
    return (_WORDS["en"], said.english) if own is None else (own, said.typed)


def supposes(said: Said) -> bool:
    """Whether a message begins as one that only tries something."""
    own, text = _own(said)
    return own.supposes.match(text) is not None


def goes_on(said: Said) -> bool:
    """Whether it begins as one that builds on what was tried before."""
    own, text = _own(said)
    return own.goes_on.match(text) is not None


def is_without(said: Said) -> bool:
    """Whether it is tried without the filter that was spoken of."""
    own, text = _own(said)
    return own.without.search(text) is not None


def moved_by_m(said: Said) -> float | None:
    """How far one would step back [m], below 0 towards the water; None where no step is named."""
    own, text = _own(said)
    for pattern, sign in ((own.back, 1.0), (own.closer, -1.0)):
        found = pattern.search(text)
        if found is not None:
            feet = found["unit"].casefold().startswith(("f", "pie"))
            by_m = float(found["by"].replace(",", "."))
            return sign * by_m * (_METRES_PER_FOOT if feet else 1.0)
    return None
