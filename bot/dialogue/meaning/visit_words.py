"""Own words for a visit: the day to come, the place, who goes, the car and where it stands."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.phrases import any_of, plain

_DAYS: Final = (
    ("monday", "montag", "lunes"),
    ("tuesday", "dienstag", "martes"),
    ("wednesday", "mittwoch", "miércoles", "miercoles"),
    ("thursday", "donnerstag", "jueves"),
    ("friday", "freitag", "viernes"),
    ("saturday", "samstag", "sonnabend", "sábado", "sabado"),
    ("sunday", "sonntag", "domingo"),
)
_DAY: Final = "|".join(name for names in _DAYS for name in names)
#: "Heute Morgen" and "por la mañana" are no tomorrow.
TOMORROW: Final = (
    r"(?:tomorrow|(?<!heute )(?<!guten )(?<!am )(?<!jeden )morgen"
    r"|(?<!esta )(?<!la )(?<!buena )mañana|(?<!la )(?<!esta )manana(?! de))"
)
AFTER_TOMORROW: Final = r"(?:(?:the )?day after tomorrow|übermorgen|uebermorgen|pasado mañana)"
_SOMEDAY: Final = (
    r"(?:this|next|coming|on the|am|nächste[sn]?|kommende[sn]?|dieses|este|el|próximo|proximo) "
    r"(?:weekend|week|month|wochenende|woche|monat|fin de semana|semana|mes)"
)
_TO_COME: Final = any_of(
    AFTER_TOMORROW, TOMORROW, _SOMEDAY, rf"(?:on |this |next |am |el |este )?(?:{_DAY})"
)
#: What is said of a visit to come, and not only of a day.
_VISIT: Final = any_of(
    r"(?:we|i|i'm|i'll|we'll|we're|i'd|we'd)(?: \w+){0,2} (?:go|visit|visiting|drive|driving"
    r"|hike|hiking|walk|walking|head|heading|be at|leave|start|set off|plan|planning|shoot|return)",
    r"(?:going|taking|heading|driving|off) (?:to|with|on|there|up|out|my|our|the)",
    r"plan(?:ning|s)?|prepare|forecast|trip",
    r"(?:i|we)(?:'d| would)? (?:want|like|love|hope|wish) to (?:\w+ )?(?:photograph|shoot|capture"
    r"|take|get|see|go|visit|try)",
    r"(?:setting|card|pack|bring|need)\w*\b.* for tomorrow",
    r"(?:wir|ich) (?:\w+ )?(?:gehen?|wollen?|will|fahren?|planen?|wandern?|möchten?|gehe|starten?)",
    r"geh(?:en|e|t|'s) (?:wir|ich|es)|plan(?:en|e|t|ung)?|vorhersage|ausflug|tour|fahren wir",
    r"vamos|voy|iremos|ire|quiero|queremos|salimos|planear|plan|pronóstico|pronostico|excursión",
)
#: A wish for such a day, whatever it is for; who does it already does not wish it.
_WISHED: Final = any_of(
    r"want(?:s|ed)?|wanna|will|'ll|would|going to|plan(?:s|ning)?|can|could|may|should|we climb",
    r"will|wollen|möchten?|kann|können|darf|dürfen|klettern wir",
    r"quier\w+|queremos|voy|vamos|puedo|podemos|puede",
)
_DOING: Final = any_of(r"standing|shooting|sitting|climbing|wading|from (?:the|here)")
_ANOTHER_DAY: Final = any_of(AFTER_TOMORROW, TOMORROW, _SOMEDAY)
_PAST: Final = any_of(r"yesterday|gestern|ayer|last (?:\w+day|week|time)|came back|were|was there")


def speaks_of_day_to_come(text: str) -> bool:
    """Whether a message speaks of a visit on a day to come.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text)
    if _PAST.search(said):
        return False
    return _TO_COME.search(said) is not None and _VISIT.search(said) is not None


def wishes_for_day_to_come(text: str) -> bool:
    """Whether a message wishes something for tomorrow or later, and is about nothing of now.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text)
    if _PAST.search(said) or _DOING.search(said):
        return False
    return _ANOTHER_DAY.search(said) is not None and _WISHED.search(said) is not None


def days_ahead(text: str, weekday: int) -> int | None:
    """In how many days a visit is that a message speaks of; None where it names no day.

    Args:
        text: as typed.
        weekday: of today, Monday is 0.
    """
    said = plain(text)
    if re.search(rf"\b{AFTER_TOMORROW}\b", said):
        return 2
    if re.search(rf"\b{TOMORROW}\b", said):
        return 1
    named = re.search(rf"\b(?:{_DAY})\b", said)
    if named is None:
        return None
    number = next(n for n, names in enumerate(_DAYS) if named.group() in names)
    return (number - weekday - 1) % 7 + 1


_NAME: Final = r"[A-ZÄÖÜÁÉÍÓÚÑ][\w'’-]+"
_KIND: Final = (
    r"(?: (?:water)?falls?| gorge| creek| beck| burn| force| spout| klamm| tobel| canyon)"
)
_NAMES: Final = (
    rf"(?P<name>{_NAME}(?: (?:(?:of|the|de|del|la|las|los|am|im|bei) )*{_NAME}){{0,3}}{_KIND}?)"
)
_PLACES: Final = (
    re.compile(
        r"\b(?:go|going|goes|off|taking|take|head|heading|trip|drive|driving|hike|hiking|walk|walking|visit"
        r"|visiting|plan|planning|see|shoot|photograph|day)(?: (?!with\b)[\w()]+){0,6}?"
        r" (?:out |up |over |back )?"
        rf"(?:(?:to|for|at) )?(?:the )?(?<![.!?] ){_NAMES}"
    ),
    re.compile(rf"\b(?:plan|planning|trip)\b[^.;!?:]{{0,30}}[:,-] ?(?:the )?{_NAMES}"),
    re.compile(
        r"\b(?:zu[mr]|nach|an den|an die|in die|zu den|in den|auf den|Ausflug zum|besuchen)"
        rf" (?:den |die |das )?{_NAMES}"
    ),
    re.compile(
        r"\b(?:a la|al|a los|a las|hasta|hacia|visitar|ver|en la|en el)"
        rf" (?:la |el |los |las )?{_NAMES}"
    ),
)
#: Names of no place.
_NO_PLACE: Final = re.compile(
    r"(?:I|I'm|I'd|We|And|The|Like|Linn|Wasserf[aä]lle?|F[aä]lle?|Bach|Schlucht|Auto|Parkplatz"
    r"|Wagen|Haus|Hause|Stativ|Kamera|Falls?|Waterfalls?|Cascada|Coche|Sonnenuntergang|Zeit"
    r"|Fotografieren|Wandern|Planen|Rucksack|Mochila|Bett|Schluss|Beispiel|Abend|Morgen|Mittag|Iso|ISO|ND)",
)
_MONTHS_AND_DAYS: Final = re.compile(
    rf"(?:{_DAY}|tomorrow|morgen|mañana|january|february|march|april|may|june|july|august"
    r"|september|october|november|december)\b",
    re.IGNORECASE,
)
#: Longest piece of a person's own words in a text to hand on [characters] (own rule).
_LONGEST: Final = 80


def place_in(text: str) -> str:
    """The name of the place to go to, "" where none is told.

    Args:
        text: as typed.
    """
    for pattern in _PLACES:
        for match in pattern.finditer(text):
            name = match["name"]
            if not (_NO_PLACE.fullmatch(name) or _MONTHS_AND_DAYS.match(name)):
                return name[:_LONGEST]
    return ""


_FEW_WORDS: Final = r"(?:[\w'’-]+ ){0,2}[\w'’-]+"
_KINSMAN: Final = r"(?:my|our) (?:(?:old|young|little|two|three) )?[\w'’-]+"
_PARTIES: Final = (
    rf"(?:me|I|myself) (?:and|&|\+) {_KINSMAN}(?:(?:,| and| &) {_KINSMAN})*",
    rf"{_KINSMAN}(?:(?:,| and| &) {_KINSMAN})* (?:and|&|\+) (?:me|I)\b",
    (
        rf"with (?:my|our) {_FEW_WORDS}?"
        r"(?= ?(?:[,.;!?]|$|and (?:he|she|they)|who|to\b|along|at\b|on\b))"
    ),
    (
        r"(?:two|three|four|five|\d) (?:\w+ )?(?:friends|mates|others|kids|children|students)"
        r" (?:and|&) (?:I|me)\b"
    ),
    rf"(?:taking|bringing) {_KINSMAN}",
    rf"(?:my|our) [\w'’-]+(?: {_NAME})?(?= (?:comes|is coming|will come|joins|walks) )",
    rf"with {_NAME}(?:(?:,| and| &) {_NAME})*",
    r"(?:ich|Ich) und mein(?:e|en)? [\w-]+|[Mm]ein(?:e)? [\w-]+ und ich",
    rf"mit (?:meine[mnr]|unsere[mnr]) {_FEW_WORDS}?(?= ?(?:[,.;!?]|$|und (?:er|sie)|am\b|zum\b))",
    r"(?:yo|Yo) y mi [\w-]+|[Mm]i [\w-]+ y yo",
    rf"con (?:mi|mis|nuestr[oa]s?) {_FEW_WORDS}?(?= ?(?:[,.;!?]|$|y (?:él|ella)|al?\b|en\b))",
)
_PARTY: Final = re.compile(rf"\b(?:{'|'.join(_PARTIES)})")
#: Who stays at home, or is written to.
_WAITS: Final = any_of(
    r"at home|stays?|write|text|leave (?:it|a note|word)|daheim|zu ?hause|schreiben?|bleibt"
    r"|en casa|escrib\w+|se queda"
)
#: Things that somebody carries.
_NO_PARTY: Final = any_of(
    r"camera|kamera|cámara|camara|lens|objektiv|tripod|stativ|phone|handy|móvil|kit|gear|filter"
    r"|polariser|settings|24|zoom|boots|car|auto|coche"
)


def party_in(text: str) -> str:
    """Who goes, in the person's words: `me and my father`; "" where they do not say.

    Args:
        text: as typed.
    """
    match = _PARTY.search(text)
    if match is None or _WAITS.search(plain(text)) or _NO_PARTY.search(plain(match.group())):
        return ""
    return re.sub(r"^(?:taking|bringing) ", "", match.group())[:_LONGEST]


_CARS: Final = (
    r"(?:car|van|estate|saloon|hatchback|suv|minibus|camper(?: ?van)?|truck|pick-?up"
    r"|motorhome|jeep|bike|motorbike"
    r"|auto|\w*wagen|kombi|bulli|bus(?:le)?|wohnmobil|coche|carro|furgo(?:neta)?|caravana|moto)"
)
_STANDS: Final = (
    r"(?:(?:'s| is| will be| was| gets| ist| wird| está| esta| estará| lo| la)?"
    r" ?(?:stands|standing|parked|parks|left|waits|steht|parkt|geparkt|abgestellt|aparcad[oa]|queda"
    r"|dejo|dejamos)?)"
)
_AT: Final = r"(?:at|in|on|by|near|beside|behind|am|beim|bei|auf|an|im|hinter|en|junto|detrás|al)"
#: Spanish tells the colour behind the car.
_COLOUR: Final = r"(?: (?:gris|roj[oa]|blanc[oa]|negr[oa]|azul|verde|platead[oa]|amarill[oa]))?"
_LOT: Final = r"(?:\w*parkplatz|aparcamiento|estacionamiento|parking|car ?park|trail ?head)"
_CAR: Final = re.compile(
    r"\b(?:(?:my|our|the|a|mein|unser|das|der|mi|nuestro|el|la) )?"
    rf"(?P<kind>(?:\w+ )?{_CARS}{_COLOUR})\b{_STANDS}"
    rf"(?: (?P<where>{_AT} (?!\d|half\b|quarter\b|noon\b|um\b|las\b)[^,.;!?]+)"
    rf"|(?P<lot>, {_LOT}\b[^,.;!?]*))",
    re.IGNORECASE,
)
_PARKED: Final = re.compile(
    r"\b(?:we|i|wir|ich)(?:'ll|'re|'d| will| are| werden)? (?:\w+ )?"
    r"(?:park|parken|parke|leave|stellen)"
    rf"\b(?: (?:the|our|my|das|unser|mein) {_CARS})?"
    rf"(?P<where> {_AT} (?!\d|half\b|quarter\b|um\b)[^,.;!?]+)"
    rf"|\b(?:aparcamos|aparco|dejamos el {_CARS}|dejo el {_CARS})(?P<donde> {_AT} [^,.;!?]+)",
    re.IGNORECASE,
)
#: What may follow: colour, make, plate; no clause with a verb of its own, no measure.
_FOLLOWS: Final = re.compile(
    r", (?P<more>(?!(?:we|i|it|and|start|when|what|how|sunset|wir|ich|und|wann|was|wie|salimos"
    r"|vamos|y|cuándo|qué)\b)[^,.;!?]+)"
)
_MEASURED: Final = re.compile(r"\d ?(?:km|m|mm|min|h|uhr|miles?|ft|pm|am|:\d)\b", re.IGNORECASE)
#: Kit and clothes in a car say nothing of where it stands.
_IN_CAR: Final = any_of(
    r"(?:in|im|en el) (?:the |my |our )?(?:car|van|auto|wagen|kofferraum|coche|boot|trunk)"
    r"|(?:walk|way|back|minutes?|min|zurück|weg|minuten|minutos|hasta)\b.*\b(?:to|zum|al|el)"
    r" (?:the )?(?:car|auto|coche)"
)


#: Words that say nothing of how a car looks.
_ANY_CAR: Final = re.compile(
    r"(?:(?:my|our|the|mein|das|el) )?(?:car|auto|wagen|coche|carro)", re.IGNORECASE
)


def _placed(match: re.Match[str]) -> str:
    """Where it stands, behind what it is where that says more than "car"."""
    told = match.groupdict()
    where = (told.get("where") or told.get("donde") or "").strip()
    kind = told.get("kind") or ""
    if told.get("lot"):
        return f"{kind}{told['lot']}"
    return where if not kind or _ANY_CAR.fullmatch(kind) else f"{kind} {where}"


def car_in(text: str) -> str:
    """Where the car stands and how it looks, in the person's words; "" where it is not told.

    Args:
        text: as typed.
    """
    if _IN_CAR.search(plain(text)):
        return ""
    match = _CAR.search(text) or _PARKED.search(text)
    if match is None:
        return ""
    where = _placed(match)
    more = _FOLLOWS.match(text, match.end())
    plain_more = more is not None and not _MEASURED.search(more["more"])
    told = f"{where}, {more['more'].strip()}" if more is not None and plain_more else where
    return told[:_LONGEST].strip(" ,")
