"""Spanish words: where nobody may stand, the note left at home, and that nobody is hurt."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_FEW: Final = r"(?: (?!and\b|but\b|und\b|aber\b|y\b|pero\b)[^ ,.]+)"
_PONERSE: Final = (
    r"(?:poner\w*|parar\w*|estar|ir|pisar|colocar\w*|entrar|subir\w*|pasar|meter\w*|quedar\w*"
    r"|acercar\w*|sentar\w*|caminar|andar)"
)
_SITIOS: Final = (
    r"(?:a?donde|(?:en |a )?(?:que|cuales) (?:sitios?|lugares?|zonas?|rocas?)(?: son)?|hay algun "
    r"(?:sitio|lugar) (?:donde|en que|en el que))"
)
_NO_VUELVO: Final = (
    r"(?:si (?:no (?:vuelvo|volvemos|he vuelto|hemos vuelto|estoy|estamos|llego|llegamos|aviso"
    r"|avisamos|regreso|regresamos|he llegado|hemos llegado|he regresado|llamo)|(?:me"
    r"|nos) retras\w+|(?:llego|llegamos) tarde)(?: (?!y\b|pero\b|llam|avis)[^ ,.]+){0,7}?)"
)
_LLAMA: Final = (
    r"(?:(?:que |por favor |ella |el |tiene que |debe )*(?:llam\w+|avis\w+|alert\w+|contact\w+)"
    r"(?: (?:a|al|la|el|los|las|de))*(?: (?!y\b|pero\b)[^ ,.]+)?(?: de \w+)?)"
)

WORDS: Final[Mapping[str, str]] = {
    # Who is late, who calls whom; and that somebody knows where they are.
    "spoken_of.note_home": (
        rf"{_NO_VUELVO}(?: ,)?(?: entonces)? {_LLAMA}"
        rf"|{_LLAMA}(?: ,)? {_NO_VUELVO}(?= [.,]|$)"
        r"|(?:nota|mensaje|le dije|les dije|he dicho|le escribi|les escribi|avise|he avisado"
        r"|(?:mujer|marido|hermana|hermano|madre|padre|amigo|amiga|hotel|alguien|ella"
        r"|el) sabe)(?: (?!no\b|nadie\b|ni\b|idea\b)[^ .]+){0,6}?(?: \.)? donde (?:estoy|estamos"
        r"|voy|vamos|estare|estaremos)"
    ),
    "spoken_of.where_not": (
        rf"{_SITIOS} no (?:se )?(?:puedo|podemos|puede|puede uno|debo|debemos|debe|deberia\w*"
        rf"|hay que|esta permitido|es seguro)(?: uno)? {_PONERSE}{_FEW}{{0,3}}"
        rf"|{_SITIOS} (?:esta|es|seria) (?:prohibido|peligroso|demasiado peligroso){_FEW}{{0,4}}"
    ),
    # That nobody is hurt or out there.
    "spoken_of.nobody": (
        r"(?:nadie (?:esta|hay|resulto|ha resultado|se ha)|no hay nadie|ninguno (?:esta|resulto))"
        r"(?: ya)? (?:en (?:el|la) (?:agua|rio|arroyo|poza|orilla|borde|precipicio|filo)"
        r"|herid\w+|lastimad\w+|en peligro|(?:ahi|alli|alla)? ?fuera|perdid\w+|hecho dano)"
    ),
    # They focus or meter on the lip.
    "spoken_of.picture": (
        r"(?:enfoc\w+|medir|mido|midiendo|expon\w+)(?: (?:en|a|al|el|hacia|sobre))*"
        r" (?:borde|labio|filo)(?: de la cascada)?"
    ),
    # A message holds one of these where any of that can be found.
    "spoken_of.gate": r"a?donde|que|cuales|hay|si|nadie|ningun\w*|\w*(?:enfoc|medir|mid|expon)\w*",
}
