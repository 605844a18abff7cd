"""A numbered reply that is put right: "wait no, i meant 1, leaves"."""

from __future__ import annotations

import re
from typing import Final, NamedTuple

_NUMBERS: Final = {"one": "1", "two": "2", "three": "3", "four": "4", "five": "5"}
_STOPS: Final = r"(?:no|nope|wait|ah|oh|er|erm|hang on|hold on)"
#: These alone put a reply right; behind a mere "no" stands the next one.
_SLIPPED: Final = (
    r"(?:sorry|oops|whoops|actually|correction|typo|my mistake|my bad|i mistyped|wrong number"
    r"|wrong one|wait,? no|no,? wait)"
)
_MEANT: Final = (
    r"(?:i (?:just )?)?(?:meant|mean|wanted|should be|should have been|make (?:that|it))"
    r"(?: to (?:type|say|write|send|press))?"
)
_CORRECTED: Final = re.compile(
    rf"(?:(?:{_STOPS}|{_SLIPPED})\W+)*?(?:{_MEANT}|{_SLIPPED}|{_SLIPPED}\W+{_MEANT})\W+"
    r"(?:the )?(?:number |option |answer |nr )?(?P<number>[1-5]|one|two|three|four|five)"
    r"(?:\W+(?:not|instead of|rather than) (?:[1-5]|one|two|three|four|five))?"
    r"(?P<rest>(?:\W+[a-z]+){0,4})\W*"
)
#: The words of an option in front of its number: "no i meant leaves, 1".
_WORDS_FIRST: Final = re.compile(
    rf"(?:(?:{_STOPS}|{_SLIPPED})\W+)*?{_MEANT}\W+(?:the )?(?P<words>[a-z]+(?: [a-z]+){{0,2}})"
    r" ?, ?(?P<number>[1-5])\W*"
)
#: What makes a number a length or a setting.
_MEASURES: Final = re.compile(
    r"^\W*(?:m|met\w+|ft|feet|foot|s|sec\w*|seconds?|stops?|mm|km|miles?|yards?|people|of us"
    r"|times?|hours?|minutes?|mins?|cm|degrees?|third|thirds|frames?|shots?|lens\w*)\b"
)


class Corrected(NamedTuple):
    """The number that was meant, and the words behind it."""

    number: str
    words: str


def reply_meant(text: str) -> Corrected | None:
    """The number that was meant instead of the last one; None for any other message.

    Args:
        text: as typed, or glossed in English.
    """
    said = " ".join(text.casefold().replace("’", "'").replace(",", " , ").split())
    said = said.replace(" ,", ",")
    if words := _WORDS_FIRST.fullmatch(said):
        return Corrected(words["number"], words["words"])
    found = _CORRECTED.fullmatch(said)
    if found is None or _MEASURES.match(found["rest"]):
        return None
    return Corrected(_NUMBERS.get(found["number"], found["number"]), found["rest"].strip(" ,.!"))
