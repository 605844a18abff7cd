"""Spanish wordings: replies to whether all are safe, and to whether anybody is out there."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_CAMINO: Final = (
    r"(?:camino|sendero|mirador|plataforma|puente|pasarela|carretera|terraza|aparcamiento|coche"
    r"|carro|hotel|refugio)"
)
_GOOD: Final = (
    r"(?:bien|a salvo|fuera|seguros?|seguras?|sanos?|sanas?|salvos?|de vuelta|secos?|secas?|ilesos?"
    r"|ilesas?|ok|en (?:la orilla|tierra|casa)|rescatad\w+|lejos del borde)\b"
)
_ALLI: Final = rf"en (?:el|la) {_CAMINO}\b"
_DONDE: Final = rf"(?:{_GOOD}|{_ALLI})"
_SALIO: Final = r"(?:salio|ha salido|volvio|ha vuelto|aparecio|ha aparecido|llego|subio)"
_SACAMOS: Final = (
    r"(?:sacamos|sacaron|hemos sacado|han sacado|saque|he sacado|encontramos|encontraron"
    r"|hemos encontrado|han encontrado|encontre|rescatamos|rescataron|tenemos|tienen)\b"
)

REPLIES: Final[Mapping[str, tuple[str, ...]]] = {
    "all": (
        (
            r"\b(?:todos|todas|ambos|ambas|los dos|las dos|los tres)"
            rf"(?: \w+){{0,2}}? {_DONDE}"
        ),
        rf"\b(?:nosotros|nosotras|estamos)(?: \w+){{0,2}}? {_GOOD}",
        r"^(?:a salvo|sanos y salvos)$",
        (
            r"(?:^|, )(?:(?:si|ya|estamos) )*(?:a salvo|bien|sanas? y salvas?|san[oa]s y salv[oa]s)"
            r" (?:tod[oa]s|amb[oa]s|l[oa]s (?:dos|tres|cuatro))(?= ,|$)"
        ),
        r"\btodo (?:esta )?(?:muy )?(?:bien|en orden|ok|tranquilo|perfecto|controlado)\b",
        r"\b(?:ya )?(?:salimos|hemos salido|volvimos|hemos vuelto|regresamos|hemos regresado)\b",
        r"\bno (?:paso|ha pasado|pasa) nada\b",
        r"\bnadie (?:esta |resulto |ha resultado )?(?:herid\w+|lastimad\w+|en peligro|perdid\w+)\b",
        r"\b(?:no hay|sin) peligro\b",
        r"\b(?:no falta(?: ya)? nadie|nadie falta|nadie se (?:hizo|ha hecho) (?:nada|dano))\b",
        r"\b(?:(?:todos|todas) contad[oa]s|estamos (?:complet[oa]s|tod[oa]s))(?= ,|$)",
        (
            r"\b(?:todos|todas|estamos)"
            r"(?: (?:ya|todos|todas|estamos|bien|juntos|juntas|a salvo|ahora))*"
            r" arriba en (?:el (?:camino|sendero|coche"
            r"|refugio|aparcamiento)|la (?:pista|carretera))\b"
        ),
    ),
    "here": (
        rf"\b(?:nosotros|nosotras|estamos)(?: \w+){{0,2}}? {_ALLI}",
        rf"\bde (?:vuelta|nuevo) {_ALLI}",
        r"\bencontramos el (?:camino|sendero)\b",
    ),
    "here_again": (
        r"\b(?:ya )?esta(?:n)? (?:ya )?(?:aqui|conmigo|con nosotros|con nosotras|de vuelta)\b",
    ),
    "warm_again": (
        (
            r"\b(?:entre en calor|entramos en calor|ya no (?:tiemblo|temblamos|tiembla)|sin frio"
            r"|calentit\w+|ya no tengo frio)\b"
        ),
    ),
    "found_way": (r"\b(?:ya )?(?:se|sabemos) donde (?:estoy|estamos)\b",),
    "mended": (
        (
            r"\b(?:(?:ya )?no sangra(?: mas)?|dejo de sangrar|(?:herida )?vendad[oa]"
            r"|(?:ya )?(?:puedo|puede) (?:andar|caminar)"
            r"|(?:tirita|venda) puesta|con (?:una )?(?:tirita|venda))\b"
        ),
    ),
    "they": (
        rf"\b(?:ellos|ellas|estan)(?: \w+){{0,2}}? {_DONDE}",
        rf"\b(?:los|las) {_SACAMOS}",
        r"\b(?:ya )?(?:salieron|han salido|volvieron|han vuelto|aparecieron)\b",
    ),
    "one": (
        rf"\b(?:el|ella|mi \w+)(?: ya)? (?:esta|se encuentra)(?: \w+)? {_DONDE}",
        rf"\b(?:lo|la|le) {_SACAMOS}",
        rf"\b(?:ya )?{_SALIO}\b",
        (
            r"\b(?:ambulancia|rescate|rescatistas|bomberos|sanitarios|helicoptero|guardas?)(?: ya)?"
            r" (?:esta|estan|llego|llegaron|ha llegado|han llegado|se l[oa] llev\w+)\b"
        ),
        r"\b(?:ya )?esta (?:fuera|a salvo|con nosotros)\b",
        r", (?:ya )?esta (?:muy )?bien\b",
    ),
    "own": (
        rf"\b(?:estoy|me encuentro)(?: \w+)? {_DONDE}",
        r"\b(?:ya sali|he salido|sali sol\w)\b",
    ),
    "but_fine": (
        (
            r"\b(?:mojad\w+|empapad\w+|suci\w+|cansad\w+|con frio|asustad\w+) pero"
            r" (?:bien|ok|a salvo|san\w+|segur\w+|content\w+)\b"
        ),
    ),
    "back_by_themselves": (
        (
            r"\b(?:solo|nada mas) (?:estaba|habia ido|fue|se habia)\b|\bestaba (?:solo )?(?:en"
            r"|detras)\b"
        ),
    ),
    "always_so": (r"\bsiempre (?:asi|marron)\b|\b(?:es|eso es) normal\b|\bturba\b",),
    "clear_water": (r"\b(?:transparente|clara|cristalina|limpia|se ve el fondo)\b",),
    "not_rising": (
        (
            r"\bno (?:\w+ )?(?:sube|subio|ha subido|esta subiendo|crece|crecio|ha crecido)\b"
            r"|\b(?:ni|sin|no hay|no trae) (?:palos|palitos|ramas|barro|lodo|hojas)\b"
        ),
    ),
    "not_dark": (
        (
            r"\bno (?:es|esta) (?:de )?(?:noche|oscuro|oscureciendo)\b|\bde la (?:manana"
            r"|tarde)\b|\b(?:mediodia|pleno dia)\b"
        ),
    ),
    "retracted": (
        r"\bfalsa alarma\b",
        r"\b(?:era|fue|es|solo|una|de) (?:una )?(?:broma|chiste|prueba)\b",
        r"\bbromeaba\b|\bestaba (?:bromeando|probando)\b",
        r"\bme equivoque\b|\bmalentendido\b|\bchat equivocado\b",
        r"\bninguna persona\b",
    ),
    "meant": (r"\b(?:queria decir|quise decir|quiero decir|me referia|me refiero|hablaba d\w+)\b",),
    "only": (
        r"\b(?:solo|solamente|era|fue) (?:se (?:me )?cayo )?(?:el|la|los|las|mi|mis|un|una)\b",
        r"\bsolo se\b",
    ),
    "heard": (
        r"ok|okay|vale|de acuerdo|bien|muy bien|entendido|claro|gracias|listo|esta bien|hecho|voy",
        r"recibido|perfecto|ya|pues",
    ),
    "fine": (r"bien|todo bien|muy bien",),
    "nobody": (
        (
            r"(?:nadie|ninguno|ya no|no hay nadie)"
            r"\b(?! (?:mas que|ve|mira|se entera|salvo|excepto|ayuda|contesta|responde"
            r"|viene|nos|me|sabe|esta aqui|puede))"
        ),
    ),
    "stepped_back": (
        r"\b(?:me he|nos hemos|se ha|se han) (?:apartado|alejado|retirado|quitado|echado atras)\b",
        (
            r"(?<!no )(?<!nunca )\b(?:me|se|nos)"
            r" (?:quedo|queda|quedan|quedamos|quedare)(?: (?!no\b)\w+){0,2}"
            r" (?:en (?:la orilla|tierra|seco)|fuera del (?:agua|arroyo|rio))\b"
        ),
        (
            r"\b(?:me|nos) (?:aparte|aleje|retire|quite|apartamos|alejamos)\b"
            r"|\bya (?:baje|bajamos)\b(?! (?:al|a la|por)\b(?! (?:coche|carro|camino|sendero)\b))"
        ),
        (
            r"\b(?:me vuelvo|volvemos|vuelvo|nos vamos|me voy|voy|vamos)(?: ya)?"
            r" (?:al|hacia el) (?:coche|carro|auto|hotel|refugio)\b"
        ),
        r"\b(?:no (?:voy|vamos|ire|iremos)|mejor no|entonces no|olvidalo)(?= ,|$)",
    ),
    "somebody": (
        r"yo|nosotros|uno|una|dos|tres|alguien|el esta|ella esta|estan|estamos|estoy",
        r"mi \w+(?: esta)?",
    ),
    "place": (
        (
            r"\b(?:estoy|estamos|esta|sentad\w+)(?: (?!no\b)\w+){0,2}? en (?:casa|la cama"
            r"|(?:el|la|un|una)"
            r" (?:jardin|cocina|sofa|salon|bar|cafeteria|restaurante|banco|tren|autobus|oficina))\b"
        ),
        (
            r"\b(?:me quedo|nos quedamos|estoy|estamos|sigo|seguimos|volvemos|vuelta|otra vez"
            r"|solo|esta)"
            rf"(?: (?!no\b)\w+){{0,2}}? (?:en|detras de|tras)(?: (?:el|la))?"
            rf"(?: otr[oa])? (?:{_CAMINO}"
            rf"|barandilla"
            r"|valla|baranda)\b"
        ),
    ),
    "yes": (r"si|sip|claro que si",),
    "after_yes": (
        (
            r"mi|mis|el|ella|yo|nosotros|alguien|uno|una|dos|tres|ayuda|por favor|herid\w+"
            r"|perdid\w+|en"
            r"|cerca|hay|pero|esta|estoy|estamos|un|la|se|me|si"
        ),
    ),
    "no": (r"no|nop",),
    "not_yet": (r"todavia no|aun no",),
    "unsure": (
        (
            r"\b(?:no|nadie|nunca|pero|aun|todavia|casi|ojala|espero|cuando|creo|quizas?|tal vez"
            r"|menos"
            r"|excepto|salvo que|faltan?|espera\w*|ayuda|pronto|(?<!^)si|mientras|hasta)\b"
        ),
        # Somebody is elsewhere, or looked for.
        r"\b(?:busca\w*|llamandol\w*|(?:sigue|esta) (?:(?:ahi|alli) )?(?:abajo|dentro))\b",
    ),
    "after_no": (
        r"todo|todos|todas|estamos|estoy|nadie|era|fue|solo|gracias|ya|paso|ha pasado|hay peligro",
        r"hay nadie|pasa|tranquil\w+|falsa|ella|el|perdon",
    ),
}
