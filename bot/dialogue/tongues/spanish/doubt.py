"""Spanish words that begin a "no" to whether anybody is in danger."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "No, es sólo la foto": the rest is read for danger by itself.
    "doubt.no": (
        r"(?:1\W+)?(?:(?:no+|qu[eé] va|para nada)(?=\W*$|\s*[,.!;:]|\s+(?:es s[oó]lo"
        r"|s[oó]lo|todo|estamos|tranqui\w*|gracias|pasa nada|hay (?:peligro|problema))\b)"
        r"|(?:nadie|ninguno)(?: est[aá])? (?:herido|en peligro|perdido|mal)|todo (?:bien"
        r"|tranquilo|ok|en orden))"
    ),
    # "No, no hay nadie", asked whether anybody is where nobody should be.
    "doubt.nobody_there": (
        r"(?:no+\W+)?(?:(?:nadie|ninguno)(?: est[aá]| hay)?"
        r" (?:ah[ií]|all[ií]|dentro|fuera|en el agua)|no hay nadie)"
        r"|no+\W+(?:(?:ya|est[aá]n|estamos|todos|todas|los dos) )+"
        r"(?:en (?:la orilla|el sendero|el camino|el coche)|con(?:migo| nosotros))"
    ),
    # "Sigo en la orilla", of oneself.
    "doubt.on_the_bank": (
        r"(?:no+\W+)?(?:estoy|estamos|sigo|seguimos)(?: \w+)?"
        r" en (?:la orilla|el sendero|el camino|el mirador)"
    ),
    # Who is left out of it, behind it.
    "doubt.left_out": r"pero|solo|todavia|aun|alla arriba|menos",
}
