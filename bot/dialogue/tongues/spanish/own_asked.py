"""Spanish words by which somebody asks of the bot's own numbers."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Asks where a number comes from, or doubts it.
    "own_asked.whence": (
        r"por ?qu[eé](?! no)|c[oó]mo (?:llegas|sale|salen|calculas|sacas|lo sacas|puede ser)"
        r"|de d[oó]nde|no (?:puede ser|cuadra|me cuadra|sale)|(?:a m[ií] )?me (?:da|sale|salen)"
        r"|est[aá]s segur\w+|segur[oa]|explica\w*"
    ),
    # Right in front of a number: "¿por qué 20?", "¿por qué dijiste f/13?".
    "own_asked.why": r"por ?qu[eé]|de d[oó]nde|c[oó]mo (?:llegas|sacas|calculas)",
    "own_asked.between": (
        r"el|la|los|las|ese|esos|ese|esa|tu|tus|ahora|solo|dijiste|dices|das|a|un|una|sale|salen"
        r"|sacas|vienen?|son"
    ),
    # Between a value and the one that was not chosen.
    "own_asked.not": r"no|not|en vez de|instead of",
    # Asks for what was taken.
    "own_asked.what": r"qu[eé]|cu[aá]l(?:es)?|cu[aá]nt\w+|c[oó]mo|d[oó]nde",
    # What is asked about that the bot reckons from.
    "own_asked.height": r"altura|(?:c[oó]mo|cu[aá]n) alta|cu[aá]nto mide",
    "own_asked.distance": r"distancia|a qu[eé] distancia|cu[aá]n lejos|lejos",
    "own_asked.focal": r"focal|objetivo|lente",
    "own_asked.speed": r"velocidad|cu[aá]n r[aá]pido",
    "own_asked.light": r"luz|ev",
    "own_asked.nearest": r"m[aá]s cercan[oa]|primer plano|roca",
    "own_asked.format": r"formato|sensor|c[aá]mara",
    "own_asked.all": r"n[uú]meros|datos|valores|cifras|supuestos?",
    # Points at a number that was said.
    "own_asked.pointed": r"ese|esos|esa|esas|tu|tus|este|estos|dijiste|has dicho|pusiste",
    # Of the bot's reckoning, whatever of it: "¿qué supusiste?", "¿con qué focal calculas?".
    "own_asked.reckons": (
        r"supusiste|supones|asumes|asumiste|has (?:supuesto|asumido|usado|tomado|puesto)|usaste"
        r"|tomaste|calculas|calculaste|partes|te basas|pusiste|tienes (?:puest|apuntad)\w+"
        r"|est[aá]s (?:usando|tomando|asumiendo|suponiendo|calculando)"
        r"|(?:salen|sacas|vienen) (?:esos|los|tus) (?:n[uú]meros|datos|valores)"
    ),
}
