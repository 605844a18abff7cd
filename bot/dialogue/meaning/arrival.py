"""Whether somebody tells where they stand, and nothing of a frame: "we are at a little fall"."""

from __future__ import annotations

from typing import Final

from bot.dialogue.reading.phrases import any_of, exactly

_WATER: Final = (
    r"(?:(?:water)?falls?|cascades?|creeks?|streams?|rivers?|brooks?|gorges?|canyons?|pools?|linns?"
    r"|(?:wasser)?f(?:a|ä)lle?s?|bach(?:es)?|bäche|flu(?:ss|ß)|schlucht|klamm|tobel"
    r"|cascadas?|saltos?|arroyos?|ríos?|torrentes?|gargantas?|cañón)"
)
_OK: Final = (
    r"(?:(?:hi|hello|hey|ok(?:ay)?|so|well|linn|hallo|hola|now|und|y|and|then|finally)\W+)*"
)
_BE: Final = r"(?:i'?m|i am|we'?re|we are|am|are)"
#: What may follow: the hour, and what is with one; a second sentence would tell more.
_WITH: Final = r"(?: (?:now|today|here))*(?: (?:with|near|in the) [^,.;]*)?"
_MIT: Final = r"(?: (?:jetzt|heute|hier))*(?: (?:mit|nahe|im) [^,.;]*)?"
_CON: Final = r"(?: \w+)?(?: (?:ahora|hoy|aquí))*(?: (?:con|cerca) [^,.;]*)?"
_ARRIVED: Final = exactly(
    rf"{_OK}{_BE} (?:\w+ )?(?:at|by|near|in|on|beside|below|under)\b"
    rf"(?: \w+){{0,4}}? {_WATER}{_WITH}",
    rf"{_OK}(?:(?:i|we)(?:'ve| have)? (?:just |finally )?)?(?:standing (?:at|by|near|in front of)"
    rf"|reached|found|arrived at|got to)\b(?: \w+){{0,4}}? {_WATER}{_WITH}",
    rf"{_OK}(?:it'?s|it is|this is|there'?s|there is) (?:just |only )?an? (?:\w+ ){{0,3}}{_WATER}"
    rf"{_WITH}",
    rf"{_OK}(?:{_BE} (?:here|there)(?: now)?|just arrived|we made it)",
    rf"{_OK}(?:ich|wir|bin|sind) (?:\w+ ){{0,2}}?(?:am|an|beim|bei|im|in|vor|unter)\b"
    rf"(?: \w+){{0,3}}? \w*{_WATER}{_MIT}",
    rf"{_OK}(?:gerade )?angekommen|{_OK}(?:ich bin|wir sind) (?:jetzt )?(?:da|hier|dort)",
    rf"{_OK}(?:ya )?(?:estoy|estamos|he llegado|hemos llegado) (?:\w+ )?"
    rf"(?:en|a|al|junto|ante|bajo)\b(?: \w+){{0,3}}? {_WATER}{_CON}",
    rf"{_OK}(?:ya )?(?:estoy|estamos) (?:aquí|allí)|{_OK}acabo de llegar",
)
#: What tells of a frame, or of its fault.
_OF_A_FRAME: Final = any_of(
    r"too|lost|looks?|looking|picture|frame|photo|shot|image|came|turned|mush\w*|blur\w*|soft|white"
    r"|dark|bright|tiny in|small in|zu|bild|foto|aufnahme|verloren|wirkt|weiß|demasiado|imagen|toma"
    r"|perdid\w+|parece|home|daheim|casa"
)


def is_arrival(text: str) -> bool:
    """Whether a message tells of a place alone.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = " ".join(text.casefold().replace("’", "'").split()).strip(" .!,")
    return "?" not in said and not _OF_A_FRAME.search(said) and _ARRIVED.match(said) is not None
