"""Messages of who teaches: a group of mixed cameras, another format, one other person's camera."""

from __future__ import annotations

import re
from typing import Final, NamedTuple

from bot.dialogue.reading.format_names import FORMATS
from bot.dialogue.reading.phrases import any_of, plain
from bot.dialogue.tongues import in_any, single_words, whole_words

_PEOPLE: Final = in_any("group.people")
_MIXED: Final = in_any("group.mixed")
_CAMERAS: Final = in_any("group.cameras")
_OF_A_GROUP: Final = any_of(
    rf"(?:{in_any('group.we')}|{_PEOPLE})\b.*"
    rf"\b(?:{_MIXED} (?:\w+ )?{_CAMERAS}|{_CAMERAS} {_MIXED})",
    rf"{_MIXED} (?:\w+ )?{_CAMERAS}\b.*\b{_PEOPLE}",
    in_any("group.asked"),
)
#: The formats by the tokens that stand for their names.
_KEYS: Final = {
    "formatfull": "full frame",
    "formatcrop": "aps-c",
    "formatsmallcrop": "aps-c 1.6",
    "formatmft": "four thirds",
    "formatinch": "1-inch",
    "formatmedium": "44x33",
}
_PHONE: Final = whole_words("group.phone")
_SHORTER: Final = whole_words("group.full_frame")
#: "Two full frame, two crop": counted among others a crop is a camera.
_CROPS: Final = re.compile(rf"(?<=\w )crops?\b(?= ?(?:[,.;]|$|{in_any('group.and')}\b))")
_FOR_IT: Final = whole_words("group.for_it")
_MINE: Final = whole_words("group.mine")
_OWN: Final = whole_words("group.own")
_SEVERAL: Final = any_of(
    rf"{_PEOPLE}|{in_any('group.of_us')}",
    rf"{in_any('group.count')} (?:\w+ )?{in_any('group.counted')}",
)
_ONLY: Final = in_any("group.only")
_SOMEONE: Final = re.compile(
    rf"^\W*(?:{in_any('group.then')} )*(?P<who>{in_any('group.who')}|[^\W\d_]{{2,12}})"
    rf"(?: ?[:=] | (?:{_ONLY} )?{in_any('group.has')}\b(?: {_ONLY})?)(?P<kit>.+)$"
)
#: What has a camera, or is one, and is nobody.
_THINGS: Final = single_words("group.things")
#: What may stand around a message.
_ENDS: Final = " .!"


#: "The phone student", "die Handyschülerin", "la alumna del móvil".
_PHONE_PERSON: Final = whole_words("group.phone_person")


#: Where the words for somebody's kit end, and something else is said or asked.
_KIT_ENDS: Final = re.compile(r"[.;?!] |, (?=(?:i|i've|what|which|how|can|should|mine)\b)")
#: "Her f-number please", "and what time for him", "what do they all set".
_THEIRS: Final = re.compile(
    r"what (?:do|does|should|shall) (?:they|she|he)(?: all)? (?:set|use|dial(?: in)?"
    r"|take)(?: for (?:\w+ )*water)?"
    r"|(?:\w+'? ){0,4}?(?:(?:her|his|their) (?:f-?(?:number|stop)|aperture|iso|time"
    r"|shutter(?: speed)?"
    r"|settings?|values?|numbers?)|(?:f-?(?:number|stop)|aperture|iso|time|settings?|values?|numbers?)"
    r" (?:for|of) (?:her|him|them))(?: please| then| now| be)*"
)


class Someone(NamedTuple):
    """Another person, the words for their kit, and what else is said."""

    who: str
    kit: str
    rest: str = ""


def is_mixed(text: str) -> bool:
    """Whether a message tells of, or asks for, a group whose cameras differ.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text, _ENDS)
    if _OF_A_GROUP.search(said):
        return True
    many = len(formats_of(text)) > 1
    return many and (_SEVERAL.search(said) is not None) and not _OWN.search(said)


def of_phones(text: str) -> bool:
    """Whether a message speaks of who photographs with a phone, and is not about who writes."""
    said = plain(text, _ENDS)
    return _PHONE_PERSON.search(said) is not None and not _MINE.search(_PHONE_PERSON.sub("", said))


def formats_of(text: str) -> tuple[str, ...]:
    """The sensor formats that a message names, in the order of their table; a phone last."""
    said = _CROPS.sub("aps-c", _SHORTER.sub("full frame", plain(text, _ENDS)))
    for pattern, token in FORMATS:
        said = pattern.sub(token, said)
    found = [key for token, key in _KEYS.items() if token in said]
    return (*found, "phone") if _PHONE.search(said) else tuple(found)


def asks_for_formats(text: str) -> bool:
    """Whether a message asks what holds on other formats: "and on APS-C?"."""
    said = plain(text, _ENDS)
    return bool(formats_of(text)) and _FOR_IT.search(said) is not None and not _MINE.search(said)


def someone(text: str) -> Someone | None:
    """Who else's kit a message tells of, by a name or a word for people; None for the rest."""
    found = _SOMEONE.match(plain(text, _ENDS))
    if found is None or found["who"] == "one":
        return None
    if " of " not in found["who"] and set(found["who"].split()) & _THINGS - {"one"}:
        return None
    kit, *rest = _KIT_ENDS.split(found["kit"].strip(), maxsplit=1)
    return Someone(found["who"], kit, "".join(rest))


def asks_for_theirs(text: str) -> bool:
    """Whether a short message asks what another person, named before, is to set."""
    return _THEIRS.fullmatch(plain(text, " .!?")) is not None
