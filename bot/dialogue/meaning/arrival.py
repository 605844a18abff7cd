"""Whether somebody tells where they stand, and nothing of a frame: "we are at a little fall"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.command_words import command_of
from bot.dialogue.reading.phrases import any_of, exactly, plain

_WATER: Final = (
    r"(?:(?:water)?falls?|cascades?|creeks?|streams?|rivers?|brooks?|gorges?|canyons?|pools?|linns?"
    r"|(?:wasser)?f(?:a|ä)lle?s?|bach(?:es)?|bäche|flu(?:ss|ß)|schlucht|klamm|tobel"
    r"|cascadas?|saltos?|arroyos?|ríos?|torrentes?|gargantas?|cañón)"
)
_OK: Final = (
    r"(?:(?:hi|hello|hey|ok(?:ay)?|so|well|linn|hallo|hola|now|und|y|and|then|finally|grüezi|servus"
    r"|moin|guten (?:tag|morgen)|buenas|buenos días|(?:good )?morning)\W+)*"
)
_BE: Final = r"(?:i'?m|i am|we'?re|we are|am)"
#: What may follow: the hour, and what is with one; a second sentence would tell more.
_WITH: Final = r"(?: (?:now|today|here))*(?: (?:with|near|in the) [^,.;]*)?"
_MIT: Final = r"(?: (?:jetzt|heute|hier))*(?: (?:mit|nahe|im) [^,.;]*)?"
_CON: Final = r"(?: \w+)?(?: (?:ahora|hoy|aquí))*(?: (?:con|cerca) [^,.;]*)?"
_ARRIVED: Final = exactly(
    rf"{_OK}{_BE} (?:\w+ )?(?:at|by|near|in|on|beside|below|under)\b"
    rf"(?: \w+){{0,4}}? {_WATER}{_WITH}",
    rf"{_OK}(?:(?:i|we)(?:'ve| have|'?m| am|'?re| are)? (?:just |finally )?)?"
    r"(?:stand(?:ing)? (?:at|by|near|in front of|on (?:the|a) (?:\w+ )?(?:platform|path|bridge"
    r"|viewpoint|deck|trail) (?:at|by|near|in front of|below|opposite))|reached|found|arrived at"
    r"|got to)\b"
    rf"(?: \w+){{0,4}}? {_WATER}{_WITH}",
    rf"{_OK}(?:it'?s|it is|this is|there'?s|there is) (?:just |only )?an? (?:\w+ ){{0,3}}{_WATER}"
    rf"{_WITH}",
    rf"{_OK}(?:{_BE} (?:here|there)(?: now)?|just arrived|we made it)",
    rf"{_OK}(?:ich|wir|bin|sind) (?:\w+ ){{0,2}}?(?:am|an|beim|bei|im|in|vor|unter)\b"
    rf"(?: \w+){{0,3}}? \w*{_WATER}{_MIT}",
    rf"{_OK}(?:gerade )?angekommen|{_OK}(?:ich bin|wir sind) (?:jetzt )?(?:da|hier|dort)",
    rf"{_OK}(?:ya )?(?:estoy|estamos|he llegado|hemos llegado) (?:\w+ )?"
    rf"(?:en|a|al|junto|ante|bajo|delante|frente|enfrente)\b(?: \w+){{0,3}}? {_WATER}{_CON}",
    rf"{_OK}(?:ya )?(?:estoy|estamos) (?:aquí|allí)|{_OK}acabo de llegar",
)
#: The clause of a longer message that ends a plan: "ok we are here now. It's cloudy".
_HERE: Final = exactly(
    rf"{_OK}{_BE} (?:finally |now |just )*(?:here|there|at the (?:water)?falls?)"
    r"(?: (?:now|at last|finally))*",
    rf"{_OK}(?:i|we)?(?:'ve| have)? ?(?:just |finally |now )*(?:arrived|made it|got here)"
    r"(?: (?:now|here|at last|at the (?:water)?falls?))*",
    rf"{_OK}(?:(?:ich bin|wir sind|sind|bin) (?:jetzt |nun |endlich )*(?:da|hier|dort|angekommen))"
    r"(?: (?:jetzt|nun))?",
    rf"{_OK}(?:ya )?(?:estoy|estamos) (?:ya |ahora )*(?:aquí|allí)(?: ya)?",
    rf"{_OK}(?:ya )?(?:hemos llegado|he llegado|llegamos)(?: ya)?",
)
#: Who stands there says so beside whatever else, in English.
_AT_A_FALL: Final = re.compile(
    r"\b(?:i'?m|we'?re|i am|we are|standing|here)\b[^.;?!]{0,12}\b(?:at|in front of|by|beside"
    r"|below|near) (?:an?|the|this|my|some) (?:\w+ )?(?:water ?falls?|falls?|stream|cascade"
    r"|creek)\b"
)
#: What tells of a frame, or of its fault.
_OF_A_FRAME: Final = any_of(
    r"too|lost|looks?|looking|picture|frame|photo|shot|image|came|turned|mush\w*|blur\w*|soft|white"
    r"|dark|bright|tiny in|small in|zu|bild|foto|aufnahme|verloren|wirkt|weiß|demasiado|imagen|toma"
    r"|perdid\w+|parece|home|daheim|casa"
)


_NEW: Final = exactly(
    rf"{_OK}(?:i'?ve|i have|we'?ve|i|we) never (?:done|tried|did) (?:this|it|that)(?: before)?",
    rf"{_OK}{_BE} (?:\w+ ){{0,2}}?(?:new|newbie|beginner)"
    r"(?: (?:to|at|in|with) (?:this|it|all this))?",
    rf"{_OK}(?:it'?s |this is )?my first (?:time|fall|waterfall)(?: (?:here|ever))?",
    rf"{_OK}(?:i have )?no (?:idea|clue) (?:what|how) .*|how does (?:this|it|that) (?:all )?work",
    rf"{_OK}(?:ich bin|bin|wir sind) (?:\w+ ){{0,2}}?(?:anfänger\w*|neu(?: hier| dabei)?)"
    r"|(?:ich )?(?:habe?|hab) (?:das|sowas) noch nie gemacht|wie (?:geht|funktioniert) (?:das|es)",
    rf"{_OK}(?:soy|somos) (?:principiantes?|nuev[oa]s?(?: en esto)?)"
    r"|nunca (?:lo )?he hecho(?: esto)?|es mi primera vez|cómo funciona(?: esto)?",
)
#: A greeting, and what everybody comes for: they tell of no frame.
_WISHED: Final = exactly(
    r"gr(?:ü|ue?)e?zi(?: mitenand)?|servus|moin(?: moin)?|grüß gott|good morning"
    r"|guten (?:tag|morgen)",
    r"(?:(?:i|we)(?:'d| would)? )?(?:would )?(?:like|love|want|wish|hope) to (?:photograph|shoot"
    r"|capture) (?:it|this|them)",
    r"(?:(?:ich|wir) )?(?:möchten?|will|wollen|würden? gern\w*) (?:ihn|es|sie|den|das)"
    r" (?:gern\w* )?fotografieren",
    r"(?:me|nos) gustaría fotografiarl[ao]|(?:quiero|queremos|quisiera) fotografiarl[ao]",
)
#: Clauses of a message, each of which may tell of the place, or ask what comes first.
_CLAUSE: Final = re.compile(
    r"[,.;!?]+\s*|\s+-+\s+|\s(?:and|und|y)\s(?=(?:i|we|what|how|ich|was|wie|qué|would|want"
    r"|möchten?|will|wollen|me gustaría|quiero|quisiera)\b)"
)


def is_arrival(text: str) -> bool:
    """Whether a message tells of a place alone, or that somebody is new to all this.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text, " .!,")
    clauses = [clause for clause in _CLAUSE.split(said) if clause.strip()]
    told = [clause for clause in clauses if _ARRIVED.match(clause) or _NEW.match(clause)]
    rest = [one for one in clauses if one not in told and not _WISHED.match(one)]
    others = [one for one in rest if command_of(one) not in {"now", "hello", "help"}]
    return bool(told) and not others and not _OF_A_FRAME.search(said)


def says_here(text: str) -> bool:
    """Whether a clause of a message says that somebody has arrived, whatever else it tells.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text, " .!,")
    return any(_HERE.match(clause) for clause in _CLAUSE.split(said))


def names_fall_here(english: str) -> bool:
    """Whether a message says in passing that somebody stands at a fall.

    Args:
        english: the message in English.
    """
    return _AT_A_FALL.search(english.casefold()) is not None
