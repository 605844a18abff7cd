"""Spanish wordings: who is overdue, does not answer, or went off alone."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

OVERDUE: Final[Mapping[str, str]] = {
    "overdue": """
        (tenia|tenian|deberia|deberian|debia|debian|iba|iban|quedo|quedamos|habiamos|habia|
        tendria|tendrian) ~ (que)? (haber|volver|estar|llegar|vuelto|llegado|a las|quedado|
        regresar|regresado) ~ (ya|hace|a las|rato|aqui|vuelto|llegado|y no|no|y|media|hora),
        (no|ni|nunca|todavia no|aun no|sigue sin|siguen sin) (ha|han|a)? (vuelto|vuelve|vuelven|
        volvio|volvieron|regresa|regreso|regresado|llegado|llega|llegan|aparece|aparecen|
        aparecido|aparecio|volver|aparecer|llegar|llego|llegaron|regresar|bajado|subido), no ~
        (ha|han) (vuelto|regresado|aparecido|llegado|bajado), ahora no vuelve""",
    "whereabouts": """
        punto de encuentro no (esta|hay), (iba|venia|estaba|andaba) ~ (detras|al lado|delante|
        aqui|conmigo|a mi lado) ~ (ya no|no esta|no), ya no esta, y el no (esta|aparece|.), pero
        (el|ella) no, no esta (en el|en la|aqui|ahi|con nosotros|donde), todos (menos|excepto),
        (saben|sabeis|sabe alguien|sabe) donde (esta|estan), sin (el|ella|ellos) ., no
        (encuentro|encontramos|encuentra|encuentran|veo|vemos|localizo|localizamos|la veo|lo
        veo|aparece|los veo|lo encuentro|la encuentro|lo encontramos|la encontramos|los
        encontramos|sabemos donde esta*|se donde esta*) ~ (a|al|mi|por|ninguna|ningun|,|.|el|la|
        nadie|desde)*, (ha|han|se ha|ha) (desaparecido|perdido de vista|esfumado), (desaparecio|
        desaparecieron|desaparecido|desaparecida|desaparecidos|esfumo), donde (esta|estan|anda|
        andan|se ha metido|se han metido|se metio|se habra metido) (mi|el|la|los|ella|mis|
        nuestro|nuestra|todo el)?, (alguien|nadie|habeis|han|has) (ha)? (visto|vio) (a|al), ni
        rastro, ni rastro de, sin rastro, perdido de vista, (la|lo|los) (perdi|perdimos|hemos
        perdido|he perdido) (de vista|de|.)?, (buscando|buscamos|busco|buscar) (a|al|a mi|lo|
        la), (falta|faltan) (uno|una|un|alguien|dos|mi|tres)""",
    "gone_off": """
        (se fue|se fueron|fue|ido|se ha ido|se han ido|salio|salieron|se marcho|marcho|adelanto|
        subio|bajo|se alejo|volvio a|se metio|se separo|se aparto|tiro por|camino|iba|fueron|
        quedo atras|se adelanto|se escapo|escapo|echo a andar)""",
    "long_since": """
        hace (mas de)? (un|una|dos|tres|media|casi|rato|mucho|horas|como|\\d+|ya|cuarenta|
        veinte|treinta) (hora|horas|media|rato|minutos|mucho)*, desde (hace|las|antes|la|el|que|
        mediodia), (media|una|dos|tres) (hora|horas), (mucho|largo|buen) (rato|tiempo), antes de
        (comer|la comida|almorzar), un buen rato, hace rato, lleva* (media|una|mas|horas|un|
        rato)""",
    "no_answer": """
        no (contesta|contestan|responde|responden|coge|cogen|atiende|atienden|me contesta|nos
        contesta|nos responde|da senal*|lo coge|la coge|se oye nada|hay respuesta|tenemos
        respuesta) (el|al|a|nadie|,|.|las|los|ni|y)*, (nadie|nada|solo el eco|silencio|apagado|
        buzon) ~ (contesta|responde|.|oye|de vuelta|movil|telefono|respuesta)*, (movil|telefono|
        celular) (apagado|fuera|esta apagado|da apagado|sin|no), sin (respuesta|noticias|
        senales), buzon de voz""",
    "calling": """
        (llamo|llamamos|gritamos|grito|gritar|gritado|silbamos|silbo|silbato|silbar|silbado|
        voces|gritos|pitamos|pito|llamado|llamar|llamando|movil|telefono|hemos|pitado|pitidos|
        wasap|mensajes|radio)""",
    "abandoned": """
        (tripode|camara|mochila|chaqueta|zapatos|botas|bolsa|cosas|ropa|movil|bastones|
        zapatillas|toalla) ~ (solo|sola|abandonad*|pero|sin|y|tirad*|nadie|vacia) ~ (ella|el|
        nadie|dueno|no|rastro|esta|el no|ella no|ni|sin|por ningun|solo|alli)* ~ (nadie|no|ni
        rastro|sin|dueno|ningun lado|esta|rastro|aparece), sin nadie (cerca|al lado|alrededor)""",
    "one_short": """
        (falta|faltan) (uno|una|un|alguien|dos|tres|gente|mi), (somos|eramos|cuento|contamos|
        conte|salimos|he contado|hemos contado|me salen|nos salen|solo hay) ~ (dos|tres|cuatro|
        cinco|seis|siete|ocho|nueve|diez|once|doce|trece|\\d+) ~ (eramos|y|ahora|y ahora|de|
        somos|deberiamos|salimos|habia|en vez|falta), no (salen|cuadran|me salen|nos salen) las
        cuentas, uno menos, una menos""",
    "search": """
        (equipo|grupo|partida) de (rescate|busqueda), (buscando|busca|busqueda) ~ (desde hace|
        guardia civil|bomberos|policia), (guardia civil|proteccion civil|bomberos) ~ (llam*|
        avis*)""",
    "wandered": """
        (se escapo|se perdio|se ha perdido|se alejo|se ha escapado|se separo del grupo|perdido|
        desaparecido|se despisto)""",
}
