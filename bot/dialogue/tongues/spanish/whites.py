"""Spanish words of what the white of the water does in a frame, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # The camera's warning.
    "whites.blinks": r"parpade\w*|titil\w*|cebras?",
    # "It won't stop blinking" denies nothing.
    "whites.on_and_on": r"no (?:para|deja|paran|dejan) de",
    "whites.nothing": r"nada|no|ningun\w*|sin|nunca|ni",
    "whites.gone": r"nada|no|ningun\w*|desaparec\w+",
    # "Nothing blinks except the sky".
    "whites.except": r"excepto|menos|salvo|aparte de",
    "whites.only": r"solo|solamente|nomas|unicamente|nada mas|apenas",
    # "Not only sky, the water too".
    "whites.not_only": r"no (?:es |son )?(?:solo|solamente|nomas)",
    "whites.denied": r"no|ni|sin|ningun\w*|nada de",
    # The size of what blinks.
    "whites.dots": (
        r"puntos(?! (?:menos|mas|de luz|arriba|abajo|por))|puntit[oa]s?|chispas?|chispitas?"
        r"|destell\w+|motas?|motitas?|pixeles|brillitos"
    ),
    "whites.patches": (
        r"manchas?|manchit[oa]s?|manchon\w*|parches?|zonas?|trozos?|trozazo|pedaz\w+|cachos?"
        r"|areas?|franjas?"
    ),
    "whites.sheet": r"todo|toda|enter[oa]|complet[oa]|por todas partes|por todos lados",
    "whites.sized": (
        r"(?:como|del tamano de|tamano|casi) (?:un|una|mi|el|la) (?:puno|mano|pulgar|palma|dedo"
        r"|moneda|huevo)"
    ),
    # A part of it: the rest is another thing.
    "whites.part": (
        r"arriba|abajo|mitad|parte|lado|izquierd\w+|derech\w+|superior|inferior|medio|centro|borde|resto|demas"
    ),
    "whites.holds": r"bien|ok|limpi[oa]|nada|no|aguanta|perfect[oa]|tranquil[oa]",
    # What is no more: two frames ago, or only thought of.
    "whites.past": r"antes|al principio|la primera|hace un rato|la otra vez",
    # Who asks where the warning is, or how it looks, tells of no frame.
    "whites.how_to_see": (
        r"(?:como|donde) (?:se|veo|noto|puedo|activo|pongo|encuentro|hago para)"
        r"|que (?:es|significa|quiere decir)"
    ),
    # What was told before, and was not heard, it seems.
    "whites.said": (
        r"te (?:lo )?(?:dije|digo)|ya (?:te )?(?:lo )?(?:he dicho|dije)|como (?:te )?dije"
    ),
    "whites.if": r"si|hasta que|en caso de",
    "whites.sky": r"cielo",
    "whites.water": r"agua|chorro|cascada|caida|espuma|salto|cortina|arroyo",
    # What else has patches and dots.
    "whites.else": (
        r"lente|cristal|filtro|objetivo|musgo|nieve|hielo|rocas?|piedras?|hojas?|helechos?|hierba"
        r"|camino|lluvia|gotas?|gotitas?|redond\w+|palid\w+|borros\w+|sensor|polvo|luz|ramas?"
        r"|rocio|salpic\w+|mojad\w+|viento|brisa|bordes|esquinas|lados|manos?|dedos"
        r"|niebla|arbol\w*|bosque|chaqueta|nitid\w+|enfoque|foco|sombra"
    ),
    "whites.white": r"blanc\w+|clar\w+|quemad\w+|sobreexpuest\w+",
    # A frame that is too bright, whatever else is said of it.
    "whites.pale": r"palid\w+|blanc\w+|deslavad\w+|lavad\w+|quemad\w+|muy clar\w+",
    # White that is lost, told beside its size.
    "whites.lost": r"sin (?:nada de |ningun )?(?:textura|detalles?|hilos|estructura)",
    # While, or where, the sun is on it; while it is not.
    "whites.in_sun": (
        r"(?:cuando|donde|mientras|en cuanto|solo con|con)(?: \w+){0,3}? sol|al sol|solead\w+"
        r"|le da el sol"
    ),
    "whites.in_shade": (
        r"(?:cuando|donde|mientras|bajo|con)(?: \w+){0,3}? (?:nubes?|sombra)|a la sombra"
        r"|pasa (?:la|una) nube"
    ),
    # Small words beside the size of what blinks, as a whole clause of its own.
    "whites.small": (
        r"aun|todavia|solo|sigue|siguen|un|una|uno|unos|unas|el|la|los|las|hay|veo|se|ve|ven|es|son"
        r"|era|eran|sale|salen|ya|ahora|si|no|ni|pero|y|en|de|del|al|por|pequen\w+|grande|grandes"
        r"|gord[oa]s?|mas|menos|como|te|lo|le|dije|dicho|digo|que|q|algun\w*|par|sueltos?|sueltas?"
        r"|aislad\w+|foto|imagen|pantalla|tambien|otra|vez|igual|casi|unicos?|chic[oa]s?|tan|muy"
        r"|perdon|perdona|bueno|pues|ok|practicamente|creo|supongo|nada|esta|estan|hago|dos|tres|ahi|aqui|donde|cae|golpea"
    ),
}
