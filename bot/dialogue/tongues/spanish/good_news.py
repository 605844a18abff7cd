"""Spanish words that may stand beside good news without making it doubtful."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

# Words that tell of nobody's trouble; own list.
_KNOWN: Final = """
    y e muy ya ahora otra vez todos todas todo ambos los las el la lo un una nosotros yo tu ella
    ellos ellas nos me te se mi mis nuestro nuestra su sus es son era estoy esta estan estamos soy
    somos fuimos he ha han hemos en al a de del por para con desde coche carro camino sendero pista
    carretera refugio hotel casa autobus bus furgoneta aparcamiento parking tienda puente mirador
    plataforma prado banco sol sombra orilla manta mantas cafe cacao sopa ropa calcetines chaqueta
    seco secos seca secas mojado mojada mojados mojadas cansado cansada cansados cansadas hambre
    asustado asustada asustados susto contentos contenta contento feliz gracias uf menos mal suerte
    jaja lol dios perdon si vale ok bien bueno salvo sanos sana sano sanas fin tambien aqui ahi alli
    arriba vuelta volvimos regreso juntos juntas amigo amiga amigos mujer marido hijo hija hermano
    hermana papa mama ninos ninas nino nina perro grupo gente pero no nada nadie paso pasado fuera
    salimos sentados sentado sentada esperando vamos minuto minutos hace dos tres cuatro cinco seis
    siete ocho nueve diez que solo poco calefaccion contados completos tormenta lluvia tranquilos
    horas hora rato mediodia tiempo toalla toallas
    guante guantes gorro puestos puesto moreton moretones raspon rasguno rasgunos aranazo
    tranquilo tranquila linn muchas mucho equipo clase seguros seguras
    alumnos alumnas estudiantes chicos chicas contadas barranco
"""

WORDS: Final[Mapping[str, str]] = {
    "good_news.known": _KNOWN,
    # What they came away from, and where they went themselves.
    "good_news.left_behind": (
        r"(?:fuera|lejos|salido|salimos) (?:del|de la)"
        r" (?:agua|rio|arroyo|poza|borde|canon|barranco)|fue (?:un|el) susto"
    ),
    # What warms, beside the news that somebody is warm again.
    "good_news.warmth": """
        manos dedos pies chaqueta puesta mejor caliente bebida bebi mapa""",
}
