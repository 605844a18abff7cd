"""Whether a message asks something, by how it begins or ends, in each language."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Final

from bot.dialogue.meaning.said import OWN_TABLES, Said

#: Words that ask, but not in "what a shot", "wie schön", "qué bonito".
_WHAT: Final = r"what(?! (?:now|an?|für)\b)|how(?! (?:lovely|nice|beautiful|cool|great|pretty))"
_WAS: Final = r"was(?! (?:jetzt|nun|für ein\w*)\b)|wie(?! (?:schön|geil|cool|toll))"
_QUE: Final = (
    r"qu[eé](?! (?:(?:hago )?ahora\b|bien|lind|bonit|genial|chul|buen|guap|maravilla|pasada))"
)
#: What stands before an "ich" in a sentence that only lacks its first word: "hab ich gemacht".
_TOLD_FIRST: Final = (
    r"(?:hab|habe|hatte|hätt\w*|mach|mache|wei(?:ss|ß)|glaub|glaube|denk|denke|seh|sehe|sah|find"
    r"|finde|versteh|verstehe|probier|probiere|schick|schicke|bin|bleib|bleibe|war|wär\w*|würd\w*"
    r"|will|wollt\w*|möcht\w*|da|dann|jetzt|hier|wenn|weil|dass|ob|als|heute|gestern|morgen|und"
    r"|also|aber|oben|unten|vorn|vorne|hinten|links|rechts|so|nun|nur|auch|leider|damit|falls)\b"
)
#: How a question begins when it lacks its mark, by language.
_ASKING: Final[Mapping[str, re.Pattern[str]]] = {
    "en": re.compile(
        r"(?:(?:and|so|but|ok|okay|hi|hey|linn|please)\W+)*"
        rf"(?:whats|{_WHAT}|which|where|does?"
        r"|do(?= (?:i|we|you|they)\b)|should|can|could|is|are|am i|why|when|may|raw"
        r"|white balance|wb)\b"
    ),
    "de": re.compile(
        r"(?:(?:und|also|aber|ok|okay|hallo|hi|hey|moin|servus|linn|bitte|du|sag mal)\W+)*"
        rf"(?:(?:(?:in|auf|mit|bei|ab|bis|für|von|zu|um|aus|an|nach) )?(?:{_WAS}|welche\w*)"
        r"|wo|wohin|woran|worauf"
        r"|wieso|warum|weshalb|wann|wozu"
        r"|(?:ab|bis) wann|von wo|um wie ?viel|soll\w*|kann|könn\w*|darf|dürf\w*|muss|müss\w*"
        r"|brauch\w*|geht|gehts|gibts?|hilft|reicht|lohnt|bringt|ist|sind|hast du"
        r"|wei(?:ss|ß)t du|taugt|funktioniert|beißt sich|genügt|goht|cha[n]?"
        rf"|(?!{_TOLD_FIRST})\w+ (?:ich|man|es|mich|uns))\b"
    ),
    "es": re.compile(
        r"(?:(?:y|o|pero|ok|okay|hola|oye|linn|por favor|perdona|una pregunta)\W+)*¿?"
        r"(?:(?:(?:por|para|en|a|de|desde|hasta|con|hacia) ?)?(?:cu[aá]l\w*|c[oó]mo|a?d[oó]nde"
        rf"|cu[aá]ndo|cu[aá]nt\w+|{_QUE})"
        r"|se puede\w*|puedo|podemos|puede\w*|debo|debemos|deber[ií]a\w*|necesit(?:o|amos)"
        r"|hace falta|hay que|tengo que|tenemos que|conviene|sirven?|vale la pena|es mejor"
        r"|sabes)\b"
    ),
}
#: How a question begins behind something told: "no tripod, can it be done".
_ASKING_BEHIND: Final[Mapping[str, re.Pattern[str]]] = {
    "en": re.compile(
        rf"(?:{_WHAT}|which|where|why|when|can|could|should|shall|may|will|would"
        r"|do (?:i|we|you)|does|is (?:it|that|this|there|the)|are (?:there|the|they)"
        r"|any (?:way|use|point|good|trouble|chance|harm|tips?)|worth|ok(?:ay)? (?:to|if)"
        r"|or what)\b"
    ),
    "de": re.compile(
        rf"(?:{_WAS}|welche\w*|wo|wohin|woran|worauf|wieso|warum|weshalb|wann"
        r"|(?:soll(?:te)?|kann|darf|muss|brauch[et]?) (?:ich|man|ma|i|wir)"
        r"|(?:geht|reicht|ist) (?:das|des|es)|hilft|lohnt|oder was)\b"
    ),
    "es": re.compile(
        rf"¿?(?:(?:(?:por|para|en|a|de|con) )?(?:{_QUE}|cu[aá]l\w*|c[oó]mo"
        r"|d[oó]nde|cu[aá]ndo|cu[aá]nt\w+)|se puede|puedo|podemos|debo|debemos|sirve|hace falta"
        r"|conviene|vale la pena|es mejor|o qu[eé])\b"
    ),
}
#: What asks wherever it stands, in each language: "the pola eats how many stops", "cpl vs nd".
_ASKING_ANYWHERE: Final = re.compile(
    r"\b(?:how (?:many|much|long|slow)|wie ?viele?|wie lange?|woran liegt|cu[aá]nt[oa]s?|vs|versus"
    r"|yes or no|ja oder nein|s[ií] o no|or not|oder nicht|or what|possible|möglich|posible"
    r"|geht (?:das|des|trotzdem)|bringt (?:das|des|es|der)|vertragen sich|sinnvoll|bis wann"
    r"|stimmt (?:das|des)|se puede|goht (?:das|des)|beißt sich|ja nein|welche (?:zeit|blende|iso)"
    r"|hab (?:ich|i) (?:eine?|ne|a) chance|(?:en|con|a|de) qué \w+"
    r"|qu[eé] (?:tiempo|f|iso|diafragma|velocidad))\b|\b(?:oder|or)\W*$"
    r"|\bwas (?:jetzt|nun|tun)\W*$|\bqu[eé] (?:hago|hacemos|se hace)(?: ahora)?\W*$",
    re.IGNORECASE,
)
#: In so few words two things with an "or" between them are a question (own rule).
_OR: Final = re.compile(r"\w (?:or|oder|o) \w", re.IGNORECASE)
_FEW: Final = 9
#: Two numbers of which one is to be chosen: "f/8 or f/11".
_EITHER: Final = re.compile(
    r"\d[^.;?!]{0,16}?\b(?:or|oder|o|ó|vs)\b(?: \w+){0,3} ?[a-z]?/?\d"
    r"|\bstop(?:per)?s? (?:or|oder|o|vs) (?:\w+ ){0,3}stop",
    re.IGNORECASE,
)
_GLOSS_ASKS: Final = re.compile(r"(?:and |so |but )*(?:what|which|where|why|when|how)\b")
#: Who asks what a word means: "was heißt …", "qué es …", "no sé qué es …".
_OF_A_WORD: Final = re.compile(
    r"\bwas (?:ist|sind|heißt|heisst|bedeutet|bedeuten|meinst du|verstehst du)\b"
    r"|\bwas du (?:\w+ )?meinst\b|\bqu[eé] (?:es|son|significa|quiere decir|quieres decir)\b"
    r"|\ba qu[eé] te refieres\b|\bwhat (?:is|are|does|do you mean|is meant)\b",
    re.IGNORECASE,
)
#: Where something else begins.
_CLAUSE: Final = re.compile(
    r"[?!.;:,…()\n]+\s*|\s+(?=(?:or|oder|o) )|\s+(?:but|and|und|aber|y|pero)\s+"
)

#: A bare name of what is set, as a whole message, asks for it.
_BARE: Final = re.compile(
    r"(?:and |ok |so )?(?:the )?(?:iso|aperture|f-?stop|f[- ]number|shutter(?: speed)?|focus"
    r"|white balance)\W*"
)


def is_asking(text: str, language: str = "en") -> bool:
    """Whether words have a question's mark or beginning.

    Args:
        text: as typed, or glossed in English.
        language: of the text, by its code; English for those without rules.
    """
    said = text.casefold().strip()
    begins = _ASKING.get(language, _ASKING["en"]).match(said)
    return said.endswith("?") or bool(begins or _BARE.fullmatch(said))


def asks_at_once(said: Said) -> bool:
    """Whether a message begins or ends as a question, in its own words or in English.

    A gloss asks only with a word that asks: "ist alles sauber" and "está limpio" tell.
    """
    if said.language in OWN_TABLES and not _GLOSS_ASKS.match(said.english.casefold()):
        return is_asking(said.typed, said.language)
    return is_asking(said.english) or is_asking(said.typed, said.language)


def asks(said: Said) -> bool:
    """Whether a message asks in whatever part of it."""
    if asks_at_once(said) or _OF_A_WORD.search(said.typed):
        return True
    if "?" in said.typed or _ASKING_ANYWHERE.search(said.typed) or offers_two(said):
        return True
    if _OR.search(said.typed) and len(said.typed.split()) <= _FEW:
        return True
    return any(map(_asks_behind(said.language), _CLAUSE.split(said.typed)))


def offers_two(said: Said) -> bool:
    """Whether a message names two numbers to choose from."""
    return _EITHER.search(said.typed) is not None


def told_beside(said: Said) -> str:
    """What a message that asks tells beside its question, in English: "no tripod" of the above."""
    parts = _CLAUSE.split(said.english)
    asking = _ASKING_BEHIND["en"]
    return ". ".join(part for part in parts if part and not asking.match(part.casefold()))


def _asks_behind(language: str) -> Callable[[str], bool]:
    asking = _ASKING_BEHIND.get(language, _ASKING_BEHIND["en"])
    return lambda part: asking.match(part.casefold()) is not None
