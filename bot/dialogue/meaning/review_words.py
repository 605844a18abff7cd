"""What a message wants of a review at home: an intent, a choice, next time; in any language."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.meaning.visit_words import AFTER_TOMORROW, TOMORROW
from bot.dialogue.reading.phrases import any_of, plain
from bot.dialogue.reading.spoken_numbers import SIMPLE

#: An intent is kept no longer than this [characters] (own rule: one line).
_LONGEST_INTENT: Final = 90
_INTENT: Final = re.compile(
    r"\b(?:(?:what|all) (?:i|we) (?:really |actually )?(?:wanted|meant|hoped|tried|was trying"
    r"|was after|want)"
    r"(?: to (?:show|say|get|catch|tell|have|photograph))?(?: was| is|:|,)+"
    r"|(?:i|we) (?:really |only |just )?(?:wanted|meant|hoped|tried|was trying) to (?:show|say"
    r"|catch|tell)"
    r"|(?:the |my )(?:idea|intent|intention|point|subject|plan)(?: of it| here)? (?:was"
    r"|is)(?: to show)?"
    r"|it(?:'s| is| was) (?:all |meant to be |supposed to be )?about"
    r"|(?:i was|we were) after"
    r"|(?:was|das) ich (?:eigentlich )?(?:zeigen|festhalten) (?:wollte|möchte|will)(?:,| ist| war)*"
    r"|ich wollte (?:eigentlich |nur )?(?:zeigen|festhalten)"
    r"|(?:es ging|es geht|mir ging es|mir geht es)(?: mir)?(?: eigentlich| nur)? (?:um|darum)"
    r"|(?:die|meine) (?:idee|absicht) (?:war|ist)"
    r"|lo que (?:yo )?(?:quería|quiero|queria) (?:mostrar|enseñar|contar)(?: es| era|,)*"
    r"|(?:quería|queria|quise) (?:mostrar|enseñar|contar)"
    r"|(?:la|mi) (?:idea|intención) (?:era|es)(?: mostrar)?)[ :,]*(?P<intent>[^\W\d][^.;!?\n]*)",
    re.IGNORECASE,
)
_KEEP: Final = any_of(
    r"which (?!filter|lens|nd|iso|card|f\b)(?:\w+ ){0,4}?(?:keep|take|choose|pick|prefer|better"
    r"|best|show|print|delete|winner|wins?|go (?:with|for))",
    r"what (?:would|should|do) (?:you|i|we) (?:keep|choose|pick|print|delete)",
    r"(?:your|the) (?:pick|favou?rite|choice|verdict)",
    r"(?:welche[snr]?|was)(?: \w+){0,5}? (?:behalten|nehmen|behältst|nimmst|auswählen|aussuchen"
    r"|beste\w*)",
    r"(?:cuál|cual|cuáles|cuales|qué foto)(?: \w+){0,4}? (?:quedarías|quedarias|quedo|conserv\w+"
    r"|guard\w+"
    r"|eleg\w+|eliges|escog\w+|mejor)",
    r"con cu[aá]l(?:es)? (?:te|me|nos) \w+",
    r"(?:pick|choose) (?:one|some|for me)|help me (?:choose|pick|decide)|hilf mir (?:aus\w+"
    r"|wählen)|ayúdame a elegir",
)
_EQUAL: Final = any_of(
    r"equal(?:ly)? (?:bright\w*|exposed)|(?:the )?same brightness|brightness(?:es)? equal"
    r"|equali[sz]e\w*"
    r"|(?:compare|judge)\b.*\bfair\w*|fair(?:ly)? (?:compar\w+|comparison)|side by side"
    r"|(?:fair|richtig) vergleich\w*|wie vergleiche?|cómo (?:los |las )?compar\w+|comparar bien"
    r"|gleich hell|mismo brillo|misma luminosidad|igual de (?:clar|brillant|luminos)\w+"
)
_DROPPED: Final = any_of(
    r"(?:forget|delete|deleted|drop|remove|leave out|ignore|scrap|binned?|vergiss|lösch\w*|gelöscht"
    r"|streich\w*|weglassen|olvid\w+|borr\w+|quit\w+|elimin\w+)(?! me\b)"
)
_TAKEN: Final = any_of(
    r"(?:shot|took|taken|made|got|have|brought (?:home|back)) (?:\w+ ){0,3}?(?:frames?|pictures?"
    r"|photos?|shots?|images?|of (?:it|them))",
    r"(?:frames?|pictures?|photos?|shots?|images?) (?:from |of )?(?:today|this (?:morning"
    r"|afternoon|evening)|yesterday|earlier)",
    r"(?:bilder|fotos|aufnahmen)(?: \w+){0,4}? (?:gemacht|mitgebracht|geschossen|von heute|heute)",
    r"(?:habe|hab|hatte)(?: \w+){0,3}? (?:bilder|fotos|aufnahmen)",
    r"(?:hice|saqué|saque|tomé|tome|tengo|traje)(?: \w+){0,2}? (?:fotos|tomas|imágenes|imagenes)",
)
_NEXT_TIME: Final = any_of(
    r"next time|another time|(?:could|should) (?:i|we|it) have (?:done|been)|what went wrong"
    r"|do (?:differently|better)|nächstes mal|beim nächsten mal|anders machen"
    r"|besser machen|la próxima(?: vez)?|la proxima(?: vez)?|hacer (?:distinto|diferente|mejor)"
)
_LOG: Final = any_of(
    r"log(?: ?line| ?book)?|note (?:it|that|this) down|notiz(?:zeile)?|bitácora|nota"
)
_FOCUS: Final = re.compile(
    r"\b(?:focus(?:ed|sed|ing)?|fokus\w*|enfo\w+|foco)(?: was| is| set| war| lag| estaba)?"
    r" (?:on|at|to|auf|bei|a|en|standing) (?:about )?"
    rf"(?P<at>\d+(?:\.\d+)?|{'|'.join(SIMPLE)})\b(?P<unit> ?(?:m|met\w+|ft|feet|foot)\b)?"
    r"(?! ?(?:mm|the|rock|water))"
)
_WATERS: Final = (
    r"(?:Force|Foss|Falls?|Linn|Spout|Beck|Burn|Creek|Cascades?|Brook|Gill|Ghyll|Cataract"
    r"|\w*(?:fall|fälle|bach|klamm|schlucht))"
)
_PLACE: Final = re.compile(
    rf"\b(?P<place>(?:[A-ZÄÖÜ][\w'-]+ ){{1,3}}{_WATERS})\b"
    r"|\b(?P<place_es>(?:Salto|Cascada|Chorro|Cola)(?: d[eo]l?| las?| los)* [A-ZÁÉÍÓÚÑ]\w+)"
)
#: What opens a sentence is no part of a name.
_OPENS: Final = re.compile(r"^(?:The|It|It's|At|In|We|I|This|Das|Der|Die|Am|Beim|La|El|En) ")
_AHEAD: Final = any_of(
    AFTER_TOMORROW,
    rf"{TOMORROW}(?! war)",
    r"next (?:week\w*|month|saturday|sunday|trip)|nächste\w* (?:woche|wochenende)"
    r"|la semana que viene",
)


def intent_of(text: str) -> str | None:
    """What a message says that a picture was to show, in its own words; None where it does not.

    Args:
        text: as typed, in any of Linn's languages.
    """
    match = _INTENT.search(" ".join(text.replace("’", "'").split()))
    if match is None or "?" in text:
        return None
    said = match["intent"].strip(" ,:")
    return said if len(said) <= _LONGEST_INTENT else said[:_LONGEST_INTENT].rsplit(" ", 1)[0] + " …"


def asks_to_choose(text: str) -> bool:
    """Whether a message asks which of the frames to keep."""
    said = plain(text)
    return _KEEP.search(said) is not None and not _NEXT_TIME.search(said)


def asks_for_equal(text: str) -> bool:
    """Whether a message asks how to make frames equally bright."""
    return _EQUAL.search(plain(text)) is not None


def drops(text: str) -> bool:
    """Whether a message takes frames back that were told, or tells that they are deleted."""
    return _DROPPED.search(plain(text)) is not None


def asks_for_next_time(text: str) -> bool:
    """Whether a message asks what to do differently another time."""
    return _NEXT_TIME.search(plain(text)) is not None


def asks_for_log(text: str) -> bool:
    """Whether a message asks for a line for the log."""
    return _LOG.search(plain(text)) is not None


def tells_of_taken(text: str) -> bool:
    """Whether a message tells of frames that were taken, and of no walk to come.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text)
    return _TAKEN.search(said) is not None and not looks_ahead(text)


def looks_ahead(text: str) -> bool:
    """Whether a message speaks of a walk that is still to come."""
    return _AHEAD.search(plain(text)) is not None


def focus_told(said: str) -> tuple[float, str] | None:
    """Where the lens was focused, as it was said: the number, and "m", "ft" or no unit.

    Args:
        said: the message in English, as `plain_times` leaves it.
    """
    match = _FOCUS.search(said)
    if match is None:
        return None
    unit = (match["unit"] or "").strip()
    return float(SIMPLE.get(match["at"], match["at"])), unit and ("ft" if unit[0] == "f" else "m")


def place_named(text: str) -> str | None:
    """The name of a fall or stream that stands in a message, as typed."""
    match = _PLACE.search(text)
    if match is None:
        return None
    return _OPENS.sub("", match["place"] or match["place_es"])
