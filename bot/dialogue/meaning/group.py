"""Messages of who teaches: a group of mixed cameras, another format, one other person's camera."""

from __future__ import annotations

import re
from typing import Final, NamedTuple

from bot.dialogue.reading.format_names import FORMATS
from bot.dialogue.reading.phrases import any_of, plain
from bot.dialogue.tongues.english.people import KIN, STRANGER


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


_COUNT: Final = (
    r"(?:\d{1,2}|two|three|four|five|six|seven|eight|nine|ten|twelve|zwei|drei|vier|fünf|sechs"
    r"|sieben|acht|neun|zehn|zwölf|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|doce|some|several|many)"
)
_PEOPLE: Final = (
    r"(?:students?|pupils?|participants?|people|persons|beginners|guests|learners|members|others"
    r"|group|class|workshop|course|everybody|everyone|schüler\w*|teilnehmer\w*|gruppe|leute|kurs|alle"
    r"|anfänger\w*|alumn[oa]s?|participantes?|grupo|clase|taller|todos|todas|personas)"
)
_CAMERAS: Final = (
    r"(?:cameras?|formats?|sensors?|kit|gear|bodies|kameras?|formate?n?|sensoren|cámaras?"
    r"|formatos?)"
)
_MIXED: Final = (
    r"(?:mixed|different|various|other|all kinds of|all sorts of|verschiedene?n?|gemischte?n?"
    r"|andere?n?|unterschiedliche?n?|distint[ao]s?|diferentes?|vari[ao]s|mezclad[ao]s?)"
)
_WE: Final = rf"(?:{_COUNT} of us|we(?: are|'re) {_COUNT}|wir sind (?:zu )?{_COUNT}|somos {_COUNT})"
_NUMBERS: Final = r"(?:line|settings?|numbers?|values?)"
_DER: Final = rf"(?:alle|die (?:\w+ )?{_PEOPLE})"
_LOS: Final = rf"(?:todos|todas|(?:el|mi|mis|los|las) {_PEOPLE})"
_OF_A_GROUP: Final = any_of(
    rf"(?:{_WE}|{_PEOPLE})\b.*\b(?:{_MIXED} (?:\w+ )?{_CAMERAS}|{_CAMERAS} {_MIXED})",
    rf"{_MIXED} (?:\w+ )?{_CAMERAS}\b.*\b{_PEOPLE}",
    rf"(?:one|a|which|what|same|give me|need|have) (?:\w+ ){{0,3}}{_NUMBERS}\b.*\bfor (?:all|us all"
    rf"|all of (?:us|them)|(?:the |my )?(?:whole )?{_PEOPLE})",
    r"(?:one|a|give me a) line (?:that )?(?:i can|to) (?:read|call|say|shout|give)",
    rf"(?:what|which) (?:\w+ )?(?:do|should|shall|can|must) i (?:tell|give|say to|set for) "
    rf"(?:all )?(?:the |my |our |these )?(?:{_COUNT} )?(?:\w+ )?{_PEOPLE}",
    rf"was (?:sage?|soll|gebe?|kann) ich (?:\w+ ){{0,2}}(?:allen|(?:den|meinen) (?:\w+ )?{_PEOPLE}"
    r"|der gruppe)",
    rf"(?:werte|einstellungen|zahlen|eine zeile) für {_DER}",
    rf"qué (?:les )?(?:digo|doy) a (?:mis |los |las |todos|todo )?(?:{_COUNT} )?{_PEOPLE}?",
    rf"(?:ajustes|valores|una línea) para {_LOS}",
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
_PHONE: Final = re.compile(r"\b(?:(?:smart|i)?phones?|mobiles?|handys?|móvil(?:es)?|teléfonos?)\b")
_SHORTER: Final = re.compile(r"\bfull ?frames?\b|\bvollformat\w*|\bformato completo\b")
#: "Two full frame, two crop": counted among others a crop is a camera.
_CROPS: Final = re.compile(r"(?<=\w )crops?\b(?= ?(?:[,.;]|$|and\b|und\b|y\b))")
_FOR_IT: Final = any_of(
    r"(?:translate|convert|what about|how about|what (?:does|is|would|do) (?:that|this|it|those)"
    r"(?: mean| be)?|and|same|settings?|numbers?|line|equivalent) (?:\w+ ){0,2}?"
    r"(?:for|on|with|to|at|in)",
    r"^(?:and |ok |so )*(?:for|on|with|at)",
    r"^(?:und |ok )*(?:für|auf|bei|mit)|(?:übersetz\w*|umrechnen|was heißt das|werte|einstellungen)"
    r" (?:\w+ ){0,2}?(?:für|auf|bei|an)",
    r"^(?:y |ok )*(?:para|en|con)|(?:traduc\w*|convert\w*|qué significa|ajustes|valores)"
    r" (?:\w+ ){0,2}?(?:para|en|con|a)",
)
_MINE: Final = any_of(r"i|i'm|i've|my|mine|me|ich|mein\w*|mir|yo|mi|mis|tengo|uso|llevo")
_OWN: Final = any_of(
    "i (?:have|own|use|shoot|bring|brought)|ich (?:habe?|nutze)|tengo|uso",
)
_SEVERAL: Final = any_of(
    rf"{_PEOPLE}|of us|von uns|de nosotros",
    rf"{_COUNT} (?:\w+ )?(?:frames?|aps-?c|m43|mft|phones?|handys|móviles)",
)
_VERB: Final = (
    r"(?:'s got|has|shoots|uses|owns|brought|is on|is with|is using|works with|has got|hat|nutzt"
    r"|benutzt|nimmt|fotografiert|knipst|tiene|usa|lleva|trabaja)"
)
_NUMBERED: Final = (
    r"(?:student|participant|person|pupil|number|nr|schüler(?:in)?|teilnehmer(?:in)?|alumn[oa])"
)
_WHO: Final = (
    rf"(?:{_NUMBERED} ?\d{{1,2}}"
    r"|(?:another )?one of (?:mine|them|the others)"
    rf"|(?:the|one|a|another|my|our) (?:of my (?:\w+ )?)?(?:\w+ )?(?:{KIN}|{STRANGER}|participant"
    r"|beginner)s?(?: \d{1,2})?"
    r"|(?:der|die|ein|eine|mein|meine|el|la|un|una|mi) (?:\w+ )?(?:schüler(?:in)?|teilnehmer(?:in)?"
    r"|freund(?:in)?|alumn[oa]|amig[oa]|chic[oa])(?: \d{1,2})?"
    r"|he|she|er|sie|él|ella|[^\W\d_]{2,12})"
)
_ONLY: Final = r"(?:only|just|nur|solo|sólo)"
_SOMEONE: Final = re.compile(
    rf"^\W*(?:(?:and|und|y|ok|so|then|but) )*(?P<who>{_WHO})"
    rf"(?: ?[:=] | (?:{_ONLY} )?{_VERB}\b(?: {_ONLY})?)(?P<kit>.+)$"
)
#: What has a camera, or is one, and is nobody.
_THINGS: Final = _words(
    "it that this mine camera body lens kit bag gear sensor zoom phone tripod filter "
    "polariser water fall falls frame one which who what there here now settings light canon "
    "nikon sony fuji fujifilm panasonic olympus pentax leica sigma tamron everything nothing "
    "something and ok yes no nobody everybody correction update edit note setup iso time "
    "format shutter aperture focus height distance rock stream place und das es dies kamera "
    "objektiv was wer ausrüstung licht bild alles nichts esto eso equipo cámara objetivo luz "
    "agua todo nada"
)
#: What may stand around a message.
_ENDS: Final = " .!"


#: "The phone student", "die Handyschülerin", "la alumna del móvil".
_PHONE_PERSON: Final = any_of(
    rf"(?:the|our|one|a|my) (?:mobile |smart)?phone (?:{_NUMBERED}|user|person|one|girl|boy|lady"
    r"|guy|people|folks|lot)s?",
    r"(?:die|der|den|dem|meine?[nr]?|eine?) handy-?(?:schüler|nutzer|teilnehmer|leute|knipser)\w*",
    r"(?:la|el|las|los|una?|mi|mis) (?:alumn[oa]s?|chic[oa]s?|personas?|participantes?)"
    r" (?:del|de los|con(?: el)?) (?:móvil(?:es)?|teléfonos?|movil(?:es)?)",
)


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
