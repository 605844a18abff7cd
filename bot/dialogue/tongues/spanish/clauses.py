"""Spanish words: parts of a reply to whether all are safe."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # How a question begins behind words without signs.
    "clauses.asking": (
        r"(?:puedo|puede|podemos|debo|deber[ií]a)|(?:qu[eé]|c[oó]mo|cu[aá]nto"
        r"|cu[aá]l) (?:hago|pongo|tiempo|es|velocidad|apertura|uso|tengo)|por qu[eé]"
    ),
    "clauses.opener": "que como cuanto cual y",
    "clauses.option": r"opcion|numero|respuesta",
    "clauses.counted": (r"de|mas|personas|ninos|alumnos|otros|metros|m|s|horas?|minutos?|km|anos"),
    # Who is left out of good news, and how it is said without being sure.
    "clauses.exception": (
        r"excepto|(?<!a )salvo|todos menos|solo \w+ (?:sigue|falta|salta|sube)|no todos"
        r"|la mayoria|falta (?:uno|una|el|ella|mi)"
    ),
    "clauses.hedge": r"no lo se|ni idea|ojala|creo que|supongo|si acaso|quiza",
    # What a part that answers by its sense has in it: of who is safe, and of where nobody is.
    "clauses.safe": (
        r"(?:todos|todas|estamos|estoy|esta|estan|ya|y|los dos"
        r"|las dos) (?:\w+ )?(?:a salvo|bien|seguros?|seguras?|secos?|secas?|calientes?"
        r"|en casa)|a salvo|en el coche|en el carro"
    ),
    "clauses.out_there": (
        r"nadie|ninguno|conmigo|a mi lado|detras de la|en la orilla|abajo|cocina|en casa"
        r"|en el (?:sendero|camino|puente)|me quedo|nos quedamos"
    ),
    # Of a picture that is looked at.
    "clauses.picture": r"borros[oa]s?|movid[oa]s?|desenfocad[oa]s?|portatil|pantalla|me gustan?",
}
