"""Spanish words of a question that no answer of the walk is about, and of those that one is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What a sentence with a question's mark begins with, or holds, that surely asks.
    "left_unanswered.asks": (
        r"(?:por |para |a |de |en |con )?(?:qu[eé]|c[oó]mo|cu[aá]l\w*|cu[aá]nt\w+|cu[aá]ndo"
        r"|d[oó]nde"
        r"|qui[eé]n\w*)\b|(?:es|est[aá]n?|son|se puede|puedo|podemos|debo|debemos|tengo que|hay"
        r"|hace falta|sirve|vale|conviene|cambia|afecta)\b|[oó]\b"
    ),
    # What a clause begins with that asks, its mark left out.
    "left_unanswered.opens": (
        r"¿|(?:puedo|podemos|debo|debemos|tengo que|hace falta|vale la pena|se puede|conviene"
        r"|est[aá] bien|voy) (?:usar|poner|dejar|ir|subir|bajar|quitar|llevar|seguir|hacer|si|el|la"
        r"|un|una|con|tarde)"
        r"|(?:qu[eé] (?:hago|pongo|tiempo|velocidad|apertura|uso|lente|objetivo)|c[oó]mo (?:hago|lo"
        r"|puedo|se)|cu[aá]nto (?:tiempo|es|falta)|por qu[eé] (?:no|me|se|sale))"
    ),
    # Who ends so wants a nod.
    "left_unanswered.tag": (
        r"(?:no|s[ií]|vale|verdad|cierto|correcto|ok(?:ay)?|de acuerdo|o no|est[aá] bien"
        r"|(?:no )?es as[ií]|entendido|sabes)"
    ),
    # Words that what is set answers; what a border, a lens, or the way there answers.
    "left_unanswered.of_settings": (
        r"ajust\w*|tiempos?|velocidad\w*|diafragma\w*|iso|f ?/? ?\d[\d.,]*|seg\w*|larg\w*|cort\w*"
        r"|r[aá]pid\w*|lent\w*|clar[oa]s?|oscur\w*|expo\w*|blanc\w*|parpade\w*|quemad\w*|sed\w*"
        r"|suave\w*|foco|enfo\w*|enfoqu\w*|n[ií]tid\w*|borros\w*|movid\w*|filtros?|polari\w*|nds?"
        r"|tr[ií]pode"
        r"|mano|ruido|grano|valores|n[uú]meros?|pongo|uso|qu[eé] (?:hago|hacemos|ahora|sigue)"
        r"|propon\w*|suger\w*|sugier\w*|recom\w*|aconsej\w*"
        r"|parte\w*|sol\w*|sombra\w*"
        r"|c[oó]mo (?:lo |se |la )?(?:hago|hace|hizo|consig\w+|logr\w+)"
    ),
    # What answers it at once, or takes it back.
    "left_unanswered.yes_no": r"s[ií]|no|da igual|olv[ií]dalo",
    "left_unanswered.of_view": (
        r"objetivo\w*|lente\w*|zoom|angular|focal|mm|encuadr\w*|cabe|vertical\w*|horizontal\w*"
        r"|borde\w*|rama\w*|esquina\w*|lados?|cielo|arriba|recort\w*|mov\w+|cerca|atr[aá]s|lejos"
        r"|[aá]ngulo"
    ),
}
