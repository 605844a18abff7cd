"""Spanish wordings: caught by the dark, lost, off the path."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

DARK: Final[Mapping[str, str]] = {
    "dark": """
        (oscuro|oscuras|oscuridad|noche|anochece|anocheciendo|anochecio|anochecido|oscurece|
        oscureciendo|oscurecio|oscurecido|negro como|boca de lobo|sin luz|penumbra|se fue la
        luz|se fue el sol|se ha ido el sol|se ha ido la luz|de noche|nochecito|hora azul|
        tinieblas|crepusculo|no queda luz)""",
    "blind": """
        no (se ve|veo|vemos|distingo|distinguimos|se distingue|encuentro|encontramos|se ven|ve|
        alcanzo a ver|podemos ver|puedo ver|se ve ni) ~ (nada|ni|el|donde|las|los|senales|por|
        un|tres)*, ni (torta|gota|papa|el sendero|el camino|las manos|donde)""",
    "still_out": """
        (seguimos|sigo|estamos|estoy|quedan|queda|falta|faltan|aun|todavia) ~ (en el|en la|
        barranco|bosque|sendero|desfiladero|garganta|canon|kilometros|km|bajada|vuelta|arriba|
        medio|horas|hora|camino|monte|cascada|abajo|coche|lejos|bajar), (como|por donde) (bajo|
        bajamos|salgo|salimos|vuelvo|volvemos|se baja|se sale|bajar|salir|volver), a (medio|
        mitad de) (camino|barranco|bajada|sendero|descenso|monte|subida)""",
    "light_gone": """
        (linterna|frontal|luz|bateria|pila|pilas|movil|linternas|frontales|foco) ~ (muerto|
        murio|apagado|apago|sin bateria|gastada|gastado|agotada|agoto|rota|roto|agotado|olvid*|
        se ha ido|parpadea|acaba|acabado|dejado|en el coche|en casa|descargad*|fallando|no
        funciona|no va|se acabo|fundid*), (sin|no (tengo|tenemos|traje|trajimos|hay|traemos|
        llevo|llevamos|trae)|ni|olvide|olvidamos) ~ (linterna|frontal|linternas|frontales|luces|
        luz)""",
    "light_low": """
        (movil|bateria|linterna|frontal|celular|luz del movil) ~ (por ciento|\\d+|queda|poca|
        ultima|unica|acaba|poco|casi|al|unico), (unica|unico|ultima|sola|un solo|una sola|solo
        un) (luz|linterna|frontal|movil)""",
    "night_caught": """
        (pillo|pillado|cogio|agarro|cogido|alcanzo|echo|sorprendio|cayo|pilla|coge|agarrado|
        echado|caido|va a pillar|echando|cayendo) ~ (noche|oscuridad), (pasar|dormir|hacer)
        (la)? noche (aqui|fuera|en el monte|al raso|en la montana), (noche) ~ (encima|cayo|
        caido|pillo)""",
    "way": """
        (camino|sendero|senda|bajada|vuelta|salida|escalera|escaleras|precipicio|coche|puente|
        ruta|descenso|marcas|senales|volver|bajar|salir|pista)""",
    "scared": """
        (miedo|panico|llora|llorando|asustad*|ayuda|socorro|acojonad*|nerviosos|susto)""",
    "lost_self": """
        (estoy|estamos|nos hemos|me he|nos|me|ando|andamos|completamente|totalmente|creo que)
        (completamente|totalmente|muy|un poco|algo|del todo|bastante|mas que)? (perdido|perdida|
        perdidos|perdidas|perdimos|perdi|extravi*|desorientad*|extraviad*) (en el|en la|,|.|y|
        por|ayuda|desde|sin|hace|con)*, no (se|sabemos|sabe|tengo ni idea|tenemos ni idea|
        tenemos idea|tengo idea) (de)? (donde|por donde|ni donde|como (volver|salir|bajar|
        llegar|se vuelve|se sale)), ni idea de (donde|por donde|como volver), no (encuentro|
        encontramos|doy con|damos con|veo|vemos) ~ (camino|sendero|salida|senda|vuelta|ruta|
        marcas|pista), donde (estoy|estamos) .""",
    "lost_word": """
        (perdidos|perdidas|perdido|perdida|ni idea|donde|hacia donde|equivocad*|nos perdimos)""",
    "circles": """
        en circulo, vueltas en circulo, vueltas y vueltas, (mismo|misma) (arbol|piedra|roca|
        cruce|puente|tronco|sitio|lugar|poste|caseta|cartel|curva|valla|fuente|cabana) (otra|de
        nuevo|por tercera|tres|ya|dos|otra vez|que), en circulos, dando vueltas ~ (mismo|horas|
        rato|sin|y|.), (ya hemos|hemos|ya he|he) pasado ~ (por aqui|antes|dos veces|tres veces|
        mismo|tercera), (otra vez|de nuevo|tercera vez) ~ (en el mismo|por el mismo|mismo)""",
    "wrong_way": """
        (camino|valle|sendero|desvio|lado|ladera|barranco|cruce|ruta|pista|senda) (equivocad*|
        que no era|que no es|erroneo|incorrecto), (equivocado|equivocamos|equivoque|confundido|
        pasado) (de|del|el) (camino|valle|sendero|desvio|cruce|lado|ladera), por aqui no (hemos|
        era|es|vinimos|habiamos|pasamos|he|veniamos), (no|nada) (me|nos) suena (nada|esto|este|
        el)*, (tendriamos|deberiamos|tendria|deberia) ~ (haber|estar|ver) ~ (llegado|coche|
        aparcamiento|ya|puente|cruce), esto no es (el|por donde), nos hemos (desviado|salido|
        pasado)""",
    "path_gone": """
        (todo|solo|puro|pura) (es|hay)? (maleza|zarzas|matorral|monte|bosque|espesura|selva),
        (camino|sendero|senda|marcas|hitos|senales|pista|ruta|trocha|vereda|huella) ~ (se acaba|
        se acabo|acabo|acaba|termina|termino|desaparece|desaparecio|desaparecido|se pierde|se
        borra|borrado|perdido|se perdio|ya no|no sigue|no hay|muere|cortado de|zarzal|se corta),
        (no hay|no queda|ya no hay|sin|perdimos|perdi|hemos perdido|he perdido|se acabo|se
        acaba) (el|la|las|los|ni)? (camino|sendero|senda|marcas|hitos|senales|pista|ruta)""",
    "map_fails": """
        (mapa|gps|brujula|app|punto azul|punto|navegador|aplicacion) ~ (no|dice|parado|
        congelado|quieto|loco|muerto|sin|mal|se ha|marca|mitad|raro|cuadra|carga), (sin|no hay|
        no tengo|no tenemos|ni) ~ (cobertura|senal|mapa|gps|brujula)""",
    "whereabouts_own": """
        donde (estoy|estamos), (por donde|hacia donde|para donde|que lado|que direccion) ~ (es|
        voy|vamos|tiro|tiramos|se va|se sale|salgo|queda|volver|ir|esta|cojo|seguimos|sigo)""",
    "fog": """
        (niebla|nube|neblina|nevando|ventisca|bruma|nieve)""",
}
