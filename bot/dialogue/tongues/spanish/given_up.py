"""Spanish words: leave that was only asked, and what is let be."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "given_up.left": (
        r"(?:(?:me|nos) (?:quedo|quedamos)(?: (?:aqu[ií]|ac[aá]|fuera|abajo|atr[aá]s|donde (?:estoy"
        r"|estamos)|en (?:la orilla|el sendero|el camino|tierra)))*"
        r"|no (?:voy|vamos|entro|entramos|subo|subimos|cruzo|cruzamos|me meto|nos metemos|salto)"
        r"(?: (?:a (?:entrar|subir|cruzar|ir|meterme)|ah[ií]|all[ií]|ni loco))*"
        r"|lo (?:dejo|dejamos)|olv[ií]dalo|mejor no|entonces no|ni hablar"
        r"|(?:era )?(?:s[oó]lo|nada m[aá]s) (?:era )?(?:una pregunta|preguntaba)"
        r"|demasiado (?:peligroso|arriesgado))"
    ),
    "given_up.small": (
        r"(?:ok|vale|no|bueno|bien|ya|entonces|pues|y|pero|gracias|perd[oó]n|claro|entiendo)"
    ),
    # Who only wishes to go there.
    "given_up.wishes": (
        r"quisier\w*|me gustar[íi]a|nos gustar[íi]a|quier[eo]n?|queremos|tengo ganas de"
        r"|estoy pensando en"
    ),
}
