"""Spanish words: who wishes to jump, dive or slide into the water from a height."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_JUMP: Final = (
    r"(?:salt(?:ar|ara|en|emos|e|a|an|ando|arnos|arse|arme)"
    r"|(?:tirar|lanzar|zambullir|desliz|arrojar|echar|desliza)(?:se|nos|me|te|r?se|r?nos|r?me)"
    r"|(?:se|nos|me) (?:\w+ )?(?:tir|lanc|lanz|zambull|desliz)\w+|hacer (?:un )?clavado\w*"
    r"|clavados?)"
)
_HEIGHT: Final = (
    r"(?:(?:desde|de|del) (?:(?:lo )?(?:mas )?(?:alto|arriba)|la parte de arriba|ahi|alli|alla"
    r"|(?:(?:el|la|los|las|esa|ese|esta|este|una|un) )?(?:\w+ )?(?:rocas?|piedras?|penas?|penasco"
    r"|puente|cascada|salto|borde|repisa|risco|acantilado|cornisa|cima|saliente)))"
)
_POOL: Final = r"(?:al|a la|a el|en la|en el) (?:\w+ )?(?:poza|agua|rio|charca|pozo|arroyo|hoya)"

WORDS: Final[Mapping[str, str]] = {
    "leaps.wish": (
        r"quier(?:o|e|en|es)|queremos|quisier\w*|gustaria|podemos|se puede|puedo|pueden?|podrian?"
        r"|podriamos|van? a|vamos a|voy a|piensan?|pensamos|planean?|ganas de|apetece|seguro"
        r"|permitido|deja\w*|que tal|estan?|bien si|pasa si|bastante hondo para|hondo para"
    ),
    "leaps.leap": (rf"{_JUMP}(?: (?!no )(?:\w+)){{0,3}}? (?:{_HEIGHT}|{_POOL})"),
    "leaps.noun": rf"(?:un )?(?:clavado|salto|chapuzon) {_HEIGHT}",
    "leaps.denied": r"no|nunca|nadie|ninguno|sin|tampoco",
    "leaps.after": r"tras (?:el|ella)|a por (?:el|ella)|para (?:sacar|ayudar|salvar|rescatar)\w*",
    "leaps.else": r"ajustes?|paso a paso",
    # What may stand before it, from the start of a clause on: no person.
    "leaps.before_wild": (
        r"y|pero|ok|si|no|ahora|hay|aqui|cuando|que|mira|un|una|unos|unas|el|la|los|las"
        r"|dos|tres|muchas|muchos"
    ),
    "leaps.caught": (
        r"(?:puedo|como) (?:congelo|congelar|fotografio|fotografiar|captar|capto)(?: a)?"
    ),
    # What leaps by nature: an animal, a leaf or light, named right before its leap.
    "leaps.wild": (
        r"(?:pe(?:z|ces)|truchas?|salmon(?:es)?|pajar(?:o|os|ito|itos)|aves?|mirlos?"
        r"|martin pescador"
        r"|patos?|patitos?|garzas?|nutrias?|ranas?|sapos?|libelulas?|ardillas?|hojas?|hojitas?|luz"
        r"|reflejos?|sombras?)(?: (?:acuatic[oa]s?|que|se|esta|estan|siempre|a veces"
        r"|quiere|quieren"
        r"|puede|pueden|va|van|a|ya|tambien|sigue|siguen|de vez en cuando|ahora|no para de))*"
    ),
    # What parts two clauses without a sign.
    "leaps.joint": r"y ademas|ademas|por cierto|pero",
}
