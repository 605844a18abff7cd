"""Whether somebody tells where they stand, and nothing of a frame: "we are at a little fall"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.command_words import command_of
from bot.dialogue.reading.phrases import any_of, exactly, plain

_WATER: Final = (
    r"(?:(?:water)?falls?|cascades?|creeks?|streams?|rivers?|brooks?|gorges?|canyons?|pools?|linns?"
    r"|(?:wasser)?f(?:a|ä)lle?s?|bach(?:es)?|bäche|flu(?:ss|ß)|schlucht|klamm|tobel"
    r"|cascadas?|saltos?|arroyos?|r[íi]os?|torrentes?|gargantas?|ca[ñn][óo]n|cataratas?|chorros?"
    r"|quebradas?|barrancos?|riachuelos?)"
)
_OK: Final = (
    r"(?:(?:hi|hello|hey|ok(?:ay)?|so|well|linn|hallo|hola|now|und|y|and|then|finally|grüezi|servus"
    r"|moin|guten (?:tag|morgen|abend)|gr(?:ü|ue|u)(?:ß|ss) (?:gott|dich|euch)|griaß di"
    r"|buen[oa]s(?: (?:d[íi]as|tardes|noches))?|qué tal|oye|mira|che|(?:good )?morning)\W+)*"
)
_BE: Final = r"(?:i'?m|i am|we'?re|we are|am)"
#: What may follow: the hour, and what is with one; a second sentence would tell more.
_WITH: Final = r"(?: (?:now|today|here))*(?: (?:with|near|in the) [^,.;]*)?"
_MIT: Final = r"(?: (?:jetzt|heute|hier))*(?: (?:mit|nahe|im) [^,.;]*)?"
_CON: Final = (
    r"(?: del? (?:(?:la|los|las) )?\w+)?(?: \w+)?(?: (?:ahora|hoy|aquí))*"
    r"(?: (?:con|cerca) [^,.;]*)?"
)
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
    rf"(?: [^\W\d]+){{0,8}}? \w*{_WATER}{_MIT}",
    rf"{_OK}(?:gerade )?angekommen|{_OK}(?:ich bin|wir sind) (?:jetzt )?(?:da|hier|dort)",
    rf"{_OK}(?:ya )?(?:estoy|estamos|he llegado|hemos llegado) (?:\w+ )?"
    rf"(?:en|a|al|junto|ante|bajo|delante|frente|enfrente)\b(?: [^\W\d]+){{0,6}}? {_WATER}{_CON}",
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
_I_WISH: Final = r"(?:(?:i|we)(?:'d| would)? )?(?:would )?(?:like|love|want|wish|hope|came|try)"
_TO_SHOOT: Final = (
    r"to (?:photograph|shoot|capture|(?:take|make|get) (?:\w+ ){0,3}?(?:photos?|pictures?"
    r"|shots?|pics?|frames?))"
)
_ICH_WILL: Final = (
    r"(?:(?:ich|wir) )?(?:m(?:ö|oe|o)chten?|will|wollen"
    r"|(?:w(?:ü|ue|u)rden?|h(?:ä|ae|a)tten?) gern\w*)"
)
_FOTOGRAFIEREN: Final = (
    r"(?:fotografieren|photographieren|knipsen|ablichten"
    r"|(?:fotos?|bild(?:er)?|aufnahmen?) (?:machen|schie(?:ß|ss)en|knipsen|haben|mitnehmen))"
)
_QUIERO: Final = (
    r"(?:(?:me|nos) gustar[íi]a|quiero|queremos|quisi[ée]ra(?:mos)?|querr[íi]a"
    r"|(?:vengo|venimos|vine|vinimos) a)"
)
_FOTOGRAFIAR: Final = (
    r"(?:fotografiar(?:l[ao])?|(?:sacar|hacer|tomar|tirar)(?:le|l[ao])? (?:\w+ ){0,3}?"
    r"(?:fotos?|fotitos?|fotograf[íi]as?|im[aá]gen(?:es)?))"
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
    rf"{_I_WISH} {_TO_SHOOT}(?: (?:of|from|there|here|it|this|that|an?|the|\w*{_WATER}|today))*",
    rf"{_ICH_WILL}(?: (?!nicht)\w+){{0,6}}? {_FOTOGRAFIEREN}",
    rf"{_QUIERO} {_FOTOGRAFIAR}(?: (?:de|del?|a|al|la|el|una?|esta|este|aqu[íi]|hoy|{_WATER}))*",
)
#: Who wants to photograph water, wherever they stand, is asked what a beginner is.
_WISHED_FALL: Final = exactly(
    rf"{_OK}{_I_WISH} {_TO_SHOOT}(?: (?:of|an?|the|this|that|some|small|little|big))* \w*{_WATER}"
    r"(?: (?:here|today|now))*",
    rf"{_OK}{_ICH_WILL}(?: (?:ein\w*|den|die|das|diesen|dieses|gern\w*|mal|hier|jetzt|heute|am|beim"
    rf"|vom|von|an|klein\w*)){{0,6}} \w*{_WATER}(?: (?:hier|jetzt|heute|gern\w*|mal|ein\w*|paar"
    rf"|schöne\w*|gute\w*))* {_FOTOGRAFIEREN}",
    rf"{_OK}{_QUIERO} {_FOTOGRAFIAR}(?: (?:de|del?|a|al|la|el|una?|esta|este))* {_WATER}"
    r"(?: (?:aqu[íi]|hoy|ahora))*",
)
_TELL_OF_PLACE: Final = (_ARRIVED, _NEW, _WISHED_FALL)
#: Clauses of a message, each of which may tell of the place, or ask what comes first.
_CLAUSE: Final = re.compile(
    r"[,.;!?]+\s*|\s+-+\s+|\s(?:and|und|y)\s(?=(?:i|we|what|how|ich|was|wie|qué|would|want"
    r"|möchten?|will|wollen|hätten?|würden?|me gustaría|quiero|queremos|quisi[ée]ra(?:mos)?|vengo"
    r"|like|love)\b)"
)


def is_arrival(text: str) -> bool:
    """Whether a message tells of a place alone, or that somebody is new to all this.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text, " .!,")
    clauses = [clause for clause in _CLAUSE.split(said) if clause.strip()]
    wished = [clause for clause in clauses if _WISHED.match(clause)]
    told = [clause for clause in clauses if any(one.match(clause) for one in _TELL_OF_PLACE)]
    rest = [one for one in clauses if one not in told and one not in wished]
    others = [one for one in rest if command_of(one) not in {"now", "hello", "help"}]
    of_frame = any(_OF_A_FRAME.search(one) for one in clauses if one not in wished)
    return bool(told) and not others and not of_frame


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
