"""What a message is beside facts and questions: a goodbye, a pause, good news, assent."""

from __future__ import annotations

import re
from enum import Enum
from functools import lru_cache
from typing import Final

from bot.dialogue.reading.phrases import any_of, exactly


class Aside(Enum):
    """The kinds, in the order in which they are looked for."""

    BYE = "bye"
    WAIT = "wait"
    THANKS = "thanks"
    PRAISE = "praise"
    ASSENT = "assent"


_WE_ARE: Final = r"(?:i'?m|i am|we're|we are|that'?s me|that is me|us)"
_CAR: Final = r"(?:car|van|bus|hotel|hut|camp|tent|parking|car ?park|trailhead|hostel|lodge|truck)"
_DAY: Final = r"(?:for (?:today|the day|tonight|now)|here|then|with it)"
_BYE: Final = any_of(
    r"(?:good ?)?bye(?:[ -]?bye)?|farewell|cheerio|ciao|good ?night|night night|take care|so long",
    r"see (?:you|ya)(?: later| tomorrow| soon| then)?|(?:un)?till? (?:tomorrow|next time)",
    r"have a (?:good|nice|lovely) (?:day|evening|night|one)",
    rf"{_WE_ARE} (?:all )?(?:done|finished|through) {_DAY}|(?:done|enough) for (?:today|the day)",
    r"call(?:ed|ing)? it (?:a day|quits)|off to bed|(?:going|time) (?:to|for) bed",
    rf"(?:back|off|down|over) to (?:the|my|our) {_CAR}(?! to\b)",
    r"(?:heading|going|driving|walking|off|on (?:my|our) way) (?:back )?home",
    rf"{_WE_ARE} (?:leaving|off now|packing up|heading (?:out|back|home|down)|going now)",
    rf"{_WE_ARE} on (?:my|our) way (?:home|back|down|out)",
    r"(?:packing|all packed) (?:it )?(?:all )?(?:up|in)(?: now)?",
    r"(?:gotta|got to|have to|must|time to|better) (?:go|leave|run|head (?:back|home|out))"
    r"(?: now| home|$)",
    r"(?:that'?s|that is|this is) (?:all|it|everything)(?: (?:for (?:today|now|tonight)|from me"
    r"|then)|\W|$)",
    r"tsch(?:ü|ue)ss?i?|(?<=[ ,])servus(?=\W*$)|auf wiedersehen|gute nacht|feierabend",
    r"bis (?:morgen|bald|dann)",
    r"sch(?:ö|oe)nen (?:tag|abend)|(?:geh|fahr|mach)\w* (?:jetzt |nun |dann )*(?:heim|nach hause"
    r"|schluss)|zur(?:ü|ue)ck zum (?:auto|parkplatz|wagen|bus)|das war'?s(?: f(?:ü|ue)r heute)?",
    r"adi[oó]s|hasta (?:luego|mañana|pronto|la próxima)|nos vemos|buenas noches",
    r"me voy(?! a\b)|nos vamos(?! a\b)|eso es todo|(?:vuelvo|de vuelta) al (?:coche|carro)"
    r"|a dormir",
)
_WE_WILL: Final = r"(?:i'?ll|i will|we'll|we will|i'?m|i am|we're|we are|let'?s)"
_MEAL: Final = (
    r"(?:sandwich|lunch|snack|tea|coffee|break|bite|picnic|breakfast|drink|brew|rest|beer|nap"
    r"|breather|soup)"
)
_WAIT: Final = any_of(
    rf"{_WE_WILL}(?: (?:just|going to|gonna|then|still|here))* wait(?:ing)?",
    r"^wait(?:ing)? (?:for|till|until)\b",
    r"(?:one|just a|give me a|gimme a|wait a|a) (?:sec|second|moment|minute|min|mo|tick)$",
    r"(?:be )?right back|brb|back in (?:a|an|\d+|five|ten|twenty|half)",
    rf"(?:have|having|eat|eating|grab|take|taking|make|drink) (?:a |an |my |some |our |the )?"
    rf"(?:quick |short |little )?{_MEAL}",
    r"(?:sit|rest)(?:ting|ing)?(?: down| here)?(?: for)? a (?:bit|while)",
    r"(?:ich warte|wir warten|moment mal|einen moment|warte kurz|bin gleich (?:wieder )?da)",
    r"mach\w* (?:mal |jetzt |erst )?(?:eine |kurz )?(?:pause|brotzeit)",
    r"(?:espero|esperamos|un momento|ahora vuelvo|vuelvo enseguida|voy a (?:comer|esperar))",
)
_GOOD: Final = (
    r"(?:good|great|lovely|nice|beautiful|perfect|wonderful|gorgeous|amazing|fine|spot on|super"
    r"|brilliant|stunning|fantastic|awesome|smooth enough|just right|much nicer)"
)
_FINE_WATER: Final = r"(?:threads?|lines?|strands?|texture|structure|veins|ribbons)"
_PRAISE: Final = any_of(
    r"(?:better|nicer)(?: now| already)?(?! than| on| if| to)",
    rf"looks? (?:\w+ ){{0,2}}{_GOOD}|looking {_GOOD}",
    rf"(?:that|it|this|water|picture|shot|frame|one)(?:'s| is| was| came out)? (?:\w+ ){{0,2}}"
    rf"{_GOOD}(?= now|\W|$)",
    r"lovely|gorgeous|beautiful|wonderful|brilliant|perfect|wow|stunning|fantastic|bingo|yay|hurray"
    r"|hooray|nailed it|spot on|woohoo|excellent|superb",
    r"(?:that |it |this )?(?:worked|works|did it|did the trick|helped)(?: well| now)?(?=\W|$)",
    r"i (?:really |do )?(?:love|like) (?:it|this|that|how|the (?:water|look|way))",
    rf"(?:can|could) (?:now |really )?(?:see|make out) (?:the |some |single )*{_FINE_WATER}",
    rf"(?:has|have|having|are|shows?|got|get) (?:now |the |some |real |fine |its )*{_FINE_WATER}"
    r"(?: now| in it| at last)",
    rf"{_FINE_WATER} (?:are |is |really )*(?:there|visible|back)(?: now)?",
    r"cleared up|(?:all |it's |is )clear(?: again| now)|dry again",
    r"(?:happy|pleased|satisfied) with (?:it|that|this)|just what i (?:wanted|was after)",
    r"(?:doesn't|does not|don't|no longer|stopped) (?:shin|glar|glint)\w*(?: any ?more)?",
    r"(?:viel |schon |jetzt )*besser|sieht (?:\w+ ){0,2}(?:gut|toll|super|klasse|schön|prima) aus",
    r"perfekt|wunderbar|wunderschön|herrlich|klasse|prima|gefällt mir|(?:hat )?geklappt|klappt",
    r"mejor(?: ahora)?|(?:queda|se ve|salió) (?:muy )?(?:bien|genial)|perfecto|genial|precios[oa]"
    r"|estupend[oa]|me gusta|ha funcionado",
)
#: What takes praise back, or wants something else beside it.
_NOT_GOOD: Final = any_of(
    r"not|isn't|aren't|wasn't|doesn't look|don't (?:like|look)|no|nothing|never|nicht|kein\w*",
    r"but|too|still|worse|except|however|only|although|though|would|could be|should be|if|aber"
    r"|pero|zu|demasiado|wish|want|need|than",
)
_OK: Final = (
    r"(?:ok(?:ay)?|k|alright|all right|fine|good|right|sure|understood|got it|gotcha|will do"
    r"|makes sense|i see|i get it|i understand|fair enough|good idea|good plan|great|cool|nice"
    r"|good to know|that figures|roger|copy that|on it|ah|aha|oh|so|then|well|yes|yeah|thanks|linn"
    r"|(?:the )?ladder(?:'s| is)? (?:done|shot|taken|complete)|(?:did|shot|took) the ladder"
    r"|die reihe ist (?:fertig|gemacht)|reihe gemacht|(?:la )?escalera (?:hecha|lista)"
    r"|(?:i |i'?ve |just )*(?:took|taken|shot|made)"
    r" (?:it|one|that|(?:the|a) (?:frame|shot|picture))|taken|done|i did(?: it| that)?"
    r"|hab ich|hab'?s|gemacht|aufgenommen|hecho|ya está"
    r"|i'?ll (?:do|try) (?:that|it|so)|doing (?:that|it)(?: now)?|trying (?:that|it)(?: now)?"
    r"|in ordnung|alles klar|verstanden|mach ich|gut|de acuerdo|vale|entendido|bien|claro)"
)
_ASSENT: Final = exactly(rf"{_OK}(?:\W+{_OK})*")
_STAYS: Final = any_of(
    r"(?:ok(?:ay)?|fine|alright|all right|good|right)\W+(?:then )?(?:i|we|i'?ll|we'll|i will"
    r"|we will) (?:then )?(?:stay|keep|do|try|leave|listen|stop|go with|use|take)",
)
_NO_WAIT: Final = any_of(r"(?:don't|do not|can't|cannot|won't|no time to|not) (?:\w+ )*wait")
_YES_OR_NO: Final = exactly("yes|yeah|yep")
_THANKS: Final = any_of(r"thank\w*|thx|cheers|danke|gracias")
#: More words than these are no goodbye or assent by the way (own rule).
_MOST_WORDS: Final = 24


@lru_cache(maxsize=8)
def aside_of(text: str) -> Aside | None:
    """What a message is that neither asks nor tells anything of the frame; None for the rest.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = _plain(text)
    if "?" in said or len(said.split()) > _MOST_WORDS:
        return None
    if _BYE.search(said):
        return Aside.BYE
    if _WAIT.search(said) and not _NO_WAIT.search(said):
        return Aside.THANKS if _THANKS.search(said) else Aside.WAIT
    if praises(text):
        return Aside.THANKS if _THANKS.search(said) else Aside.PRAISE
    return Aside.ASSENT if _agrees(said) else None


def _agrees(said: str) -> bool:
    """Assent to what was advised; a bare yes or no answers a question, or fails to."""
    agrees = _ASSENT.match(said) or _STAYS.match(said)
    return agrees is not None and not _YES_OR_NO.match(said)


def praises(text: str) -> bool:
    """Whether a message calls a frame, or what is seen in it, good, and nothing else."""
    said = _plain(text)
    found = _PRAISE.search(said)
    if found is None or "?" in said:
        return False
    return _NOT_GOOD.search(said[: found.start()] + " " + said[found.end() :]) is None


_OFF: Final = any_of(
    r"(?:took|taken|take|taking|screwed) (?:it|that|the filter|mine) off"
    r"|(?:took|taken|taking|screwed) off (?:it|that|the filter)",
    r"^(?:\W*(?:ok(?:ay)?|so|well|now|yes)\W+)*(?:it|that|the filter)(?:'s| is) (?:now )?off"
    r"(?: now)?$",
    r"(?:habe? )?(?:ihn|es|den filter) (?:jetzt |nun )?(?:abgenommen|abgeschraubt)",
    r"ist (?:jetzt )?ab",
    r"(?:lo )?(?:he quitado|quité|quitado)(?: el filtro)?",
)


def took_off(text: str) -> bool:
    """Whether a message says that the filter, without its name, is off now."""
    return _OFF.search(_plain(text)) is not None


def _plain(text: str) -> str:
    return " ".join(re.sub(r"[’`]", "'", text.casefold()).split()).strip(" .!")
