"""Spanish words of water that somebody would stand in."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "Can I", and "stand in the water" behind it.
    "standing.leave": r"puedo|podemos|se puede|puede(?: mi \w+)?",
    "standing.into": (
        r" (?:estar|meterme|meternos|entrar|pararme|ponerme|caminar)(?: de pie)? (?:en|por)"
        r" (?:el |la )?(?:agua|rio|arroyo)\b| (?:vadear|meterme en)"
    ),
    # What else somebody may do in water, and how leave is asked for it in the same sentence.
    "standing.play": (
        r"chapotear|banar(?:se|me|nos|lo|la)?|nadar|jugar (?:en|con|junto) (?:a |al "
        r"|el )?(?:agua|rio"
        r"|arroyo|orilla)|meter(?:se|me|nos)? (?:\w+ ){0,2}(?:en|al) (?:el )?(?:agua|rio|arroyo)"
        r"|(?:meter|poner|mojar)(?:se|me)? (?:los |sus |mis )?pies"
    ),
    "standing.may": (
        r"puedo|podemos|puede|pueden|podria\w*|dejo|ok|seguro|permitido|quiere|quieren|se puede"
        r"|esta bien"
    ),
    # Things that may be put there.
    "standing.thing": r"tripode|movil|celular|camara|filtro|objetivo|mochila",
    # Somebody who is in it already.
    "standing.out": r"ayuda|salir|cayo|caido|ahog\w*|arrastr\w*|ya|todavia|atrapad\w*",
    "standing.no_play": r"(?:nada de|sin|no) (?:\w+ )?",
    # Beside a depth: "knee deep, can I stand there?".
    "standing.stand": r" (?:estar|pararme)",
    "standing.wading": r"es vadear",
    # Marks of a body, by which a depth is told.
    "standing.ankle": r"tobillos?",
    "standing.shin": r"pantorrillas?",
    "standing.knee": r"rodillas?",
    "standing.thigh": r"muslos?",
    "standing.hip": r"cintura|caderas?",
    "standing.chest": r"pecho",
    # "40 cm deep", "2 metres per second".
    "standing.unit": r"centimetros?",
    "standing.deep": r"de profundidad|de hondo|hond[oa]|profund[oa]|(?:de )?agua",
    "standing.per": r"a|por",
    "standing.second": r"segundo",
    "standing.in_seconds": r"seg\w*",
    # A leaf that drifts shows the speed.
    "standing.leaf": r"hoja|ramita",
    "standing.fast": r"(?<!no es )(?:rapid[oa]|fuerte)",
    # The bottom.
    "standing.seen": r"veo el fondo|fondo visible|transparente|cristalina|(?:agua )?clara",
    "standing.hidden": r"no (?:se )?ve\w* el fondo|turbi[oa]",
    # What makes it a danger, and what takes that away.
    "standing.above_a_drop": (
        r"(?:encima|arriba) de (?:la|una) (?:cascada|caida)|rio arriba de la cascada"
    ),
    "standing.brown": r"marron|barro\w*",
    "standing.rising": r"(?<!no )(?:sube|subiendo|crece)",
    "standing.alone": r"(?<!no )(?:sol[oa](?= [.,]|$)|a solas)",
    "standing.child_or_frail": r"nin[oa]s?|hij[oa]s?|abuel[oa]",
    "standing.nothing_below": r"nada (?:abajo|rio abajo)",
    "standing.not_brown": r"clara|cristalina",
    "standing.not_rising": r"no sube",
    "standing.not_alone": r"no (?:estoy )?sol[oa]|con (?:mi|una?) \w+",
    "standing.dry_clothes": r"ropa seca",
}
