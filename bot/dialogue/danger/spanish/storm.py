"""Spanish wordings: thunder and storms, near and far."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

STORM: Final[Mapping[str, str]] = {
    "thunder": """
        (ya|cielo|y|que) retumba, retumba (el cielo|ya|en|cada|cerca), trueno, truenos,
        tronando, trueno*, truena, trono, tronado, (oigo|oimos|se oyen|se oye|suenan|escucho) ~
        (truenos|retumbar|tronar)""",
    "lightning": """
        relampago, relampagos, relampaguea*, (cayo|caido|cae|caen|cayendo|caer|ha caido) ~
        (rayo|rayos), rayos (y|por|cada|sobre|encima|detras|cerca), rayo (cerca|aqui|ahi|en la
        cresta|detras|que|y), (un|otro|primer) rayo (cayo|ha|detras|encima|en el monte|sobre|
        cae|cerca)""",
    "storm": """
        (tormenta|tormentas|tronada|temporal|tempestad|nubarron|nubarrones|aparato electrico|
        granizo|electrica)""",
    "near": """
        (encima|se acerca|acercando|viene|llega|cerca|se nos echa|aproxima|sobre la cresta|sobre
        nosotros|empieza|empezando|formando|llegando|detras del|avanza|entrando|a punto|aqui ya|
        nos pilla|nos ha pillado|nos cae|ya esta|se esta poniendo|por la cresta|esta aqui)""",
    "shelter": """
        (debajo|bajo|refugi*|meternos|metemos|metidos|esperar|esperamos|resguard*|cobij*|
        aguantar|aguantamos|protegernos) ~ (arbol|pino|encina|roble|pinos|arboles|saliente|
        cueva|pase|paraguas|abeto|paso|roca)""",
    "flash": """
        (flash|destello|fogonazo|resplandor|relampago|rayo|destellos|resplandores|luz)""",
    "bang": """
        (segundos|estruendo|retumba|retumbo|trueno|bum|ruido|estampido|explosion|contar|contado|
        cuento) ~ (despues|luego|entre|y|mas tarde|trueno|detras|cinco|seis|siete|ocho|diez|
        tres|cuatro|hasta)""",
    "hair_stands": """
        (pelo|pelos|vello|cabello) ~ (de punta|eriza*|levanta*|se me pone|se nos pone|erizado),
        (tripode|bastones|baston|metal|rocas|piolet|paraguas|cable|barandilla|aire) ~ (zumba|
        zumban|chisporrotea|chisporrotean|vibra solo|cosquillea|zumbando|chispea|crepita),
        (zumba|zumban|chisporrotea|zumbido) ~ (tripode|bastones|metal|aire|barandilla)""",
    "sky_black": """
        cielo ~ (negro|negrisimo|morado|verde|oscurec*) ~ (granizo|viento|viene|.|acerca|encima|
        rapido|ruge), (nube|nubes|nubarrones) ~ (negras|negra|negrisimas|enorme|torre) ~
        (encima|acerca|viene|vienen|rapido|retumb*|sobre|detras), graniza, granizando""",
}
