"""Spanish wordings: people in the water, and water that rises."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WATER: Final[Mapping[str, str]] = {
    "drowning": """
        se (esta|estan|estaba)? (ahogando|ahoga|ahogan|ahogo), (esta|estan|estoy|se) ~ ahog*,
        (tragando|traga|trago|tragado) ~ agua, boca abajo en (el agua|la poza|el rio), flota*
        boca abajo""",
    "submerged": """
        (solo|apenas|nada mas) (le|se le|les) (veo|vemos|ve|asoma) ~ (gorra|cabeza|mano|brazo|
        pelo|sombrero|casco), esta bajo (el agua|la espuma), (se|acaba|acaba de|ha) ~ (hundio|
        hundido|hundirse|sumergido|hunde|hundiendo), hundirse, (no|ni) ~ (sale|salio|ha salido|
        asoma|vuelve|aparece|ha subido|sube) ~ (a flote|a la superficie|del agua|del fondo|de la
        poza|de debajo|a respirar), (debajo|bajo) (del|el) agua y no, se fue al fondo,
        desaparecio (en|bajo|debajo) (el|la|del) (agua|poza|remolino|corriente), (solo|apenas)
        se le ve* (la cabeza|la mano|el brazo|el pelo)""",
    "adrift": """
        (se la|se lo|se los|se las|nos|me|lo|la|los|le) (lleva|llevo|esta llevando|llevaba|
        arrastra|arrastro|esta arrastrando|llevan|ha llevado|ha arrastrado|va llevando), se (lo|
        la|los|las) (ha)? (llevado|llevo|lleva), (arrastrado|arrastrada|llevado|llevada|
        arrastrando) (por|rio|a|la|corriente|al)*, a la deriva, (corriente|agua|rio) ~ (lleva|
        llevo|arrastra|arrastro|tumbo|tiro|tumbado|arrastrado|llevado), (flotando|bajando|baja|
        va) ~ (rio abajo|corriente abajo|hacia la caida|hacia el salto|hacia la cascada), rio
        abajo, corriente abajo""",
    "into_water": """
        hay (alguien|gente|uno|una|un|dos) ~ (remolino|agua|rio|poza|corriente), (persona|
        hombre|mujer|nino|nina|perro|alguien) en (el|la) (agua|rio|poza|corriente|remolino), se
        (metio|tiro|lanzo) ~ (detras|a por|agua|rio|y no), se ha roto el hielo, se rompio el
        hielo, (cayo|caido|cayeron|cai|caer|resbalo|resbale|resbalado|metido|tirado|cae|fue|fui|
        callo|caerse|tropezo) ~ (al|a la|en el|en la|dentro del|dentro de la|adentro del) (agua|
        rio|arroyo|poza|corriente|charca|laguna|lago|remolino|torrente|cauce|rapidos|quebrada|
        pozo), (esta|estan|estoy|sigue|siguen|quedo) ~ (en el|en la|dentro del) (rio|agua|poza|
        corriente|remolino|arroyo) (y|,|no|ayuda)*, al agua (y|se|,|.), hay (alguien|un hombre|
        una mujer|un nino|una nina|una persona|uno|una chica|un chico) en (el|la) (agua|rio|
        poza|corriente)""",
    "out_of_reach": """
        no (puede|puedo|pueden|podemos|consigue|consigo|logra|logramos|alcanzo|alcanzamos|llego|
        llegamos|conseguimos|logro|hay forma de) ~ (salir|sacarlo|sacarla|sacarle|alcanzarlo|
        alcanzarla|agarrarlo|agarrarla|llegar|cogerlo|cogerla|sacar|moverse|soltarse|nadar|
        volver a la orilla|hacer pie), no (sabe|se|saben) nadar, no (lo|la|le|los) (alcanz*|
        vemos|veo|ve nadie|encontramos|podemos (sacar|alcanzar|coger|agarrar)), no (hace pie|
        hago pie|llega a la orilla), no sale (del|de|a), (tira*|echa*|lanza*|necesitamos|hace
        falta) ~ (cuerda|palo|rama), pide (ayuda|socorro), sin fuerzas, no aguanta mas""",
    "fell": """
        (cayo|caido|cayeron|cai|resbalo|resbale|resbalado|tropezo|tropece|cae|caida|caida|fue de
        espaldas|fui de espaldas|despeno|despenado|perdio el equilibrio|perdio pie|se callo|se
        cai|golpe|desplomo|bajo rodando|rodo|caerse)""",
    "clinging": """
        (agarrado|agarrada|agarrados|sujeto|sujeta|colgado|colgada|aferrado|aferrada|cogido|
        cogida|agarrandose|agarro|abrazado|abrazada|enganchado|enganchada) ~ (a|al|de|del|en) ~
        (rama|tronco|roca|piedra|raiz|cuerda|palo|arbol|orilla)""",
    "jammed": """
        (pie|pierna|bota|brazo|tobillo|mano|zapato) ~ (atascado|atascada|atrapado|atrapada|
        enganchado|enganchada|encajado|encajada|pillado|pillada|trabado|trabada|atorado),
        (atrapado|atrapada|atascado|atascada|encajado|encajada|atorado|atorada|pillado) ~
        (entre|bajo|debajo|en|con) ~ (rocas|piedras|troncos|roca|piedra|tronco|ramas|rio|
        corriente)""",
    "midstream": """
        (en|a) (medio|mitad|la mitad) (del|de la) (rio|arroyo|corriente|vado|cauce|agua|poza), a
        medio (rio|cruzar|vadear|vado), cruzando (el|la)""",
    "struggling": """
        (manotea|manoteando|chapotea|patalea|gritando|grita|pide socorro|pidiendo (ayuda|
        socorro)|agitando los brazos|moviendo los brazos|lucha|asustada|panico)""",
    "flooding": """
        riada, crecida (repentina|subita|del rio|viene|que viene|ya|aqui|.), inunda*, inundado,
        desbord*, (viene|baja|llega) ~ (riada|crecida|avenida|ola|tromba), avenida de agua,
        (ola|muro|pared|tromba) de (agua|barro|lodo), cabeza de agua, golpe de agua, (agua|rio)
        (marron|sucia|chocolate|turbia|color chocolate|color cafe) ~ (baja|viene|de repente|
        ahora|cada vez|con)*""",
    "rising": """
        (sube|suben|subiendo|subio|subido|crece|creciendo|crecido|crecio|subia|aumenta|
        aumentando), mas (alto|alta|hondo|honda|arriba), va subiendo, viene ~ crecido""",
    "siren": """
        (sirena|sirenas|bocina|alarma|pitido) ~ (presa|embalse|suena|sonando|sono|sonado|rio|
        arriba|central|pantano|sonaron), (suena|sono|sonado|oigo|oimos|ha sonado) ~ (sirena|
        bocina|alarma de la presa|pitido), (presa|embalse|pantano|central) ~ (abre|abrio|
        abierto|suelta|soltando|desembals*|sirena|compuertas), desembalse, compuertas""",
    "dirty": """
        (marron|turbia|turbio|sucia|sucio|barro|lodo|chocolate|cafe|cafe con leche|color tierra|
        fangosa|enlodada|barrosa|cacao|achocolatada|embarrada)""",
    "sudden": """
        (de repente|de pronto|de golpe|ahora|ya|cada vez|antes|venia|bajaba|estaba|se ha puesto|
        se puso|se volvio|se esta poniendo|viene|baja|hace un rato|hace un momento|hace (cinco|
        diez|dos) minutos|en (cinco|diez|dos) minutos|rapido|hasta hace|esta manana|desde que|
        acaba de|se esta|por momentos|ha cambiado|cambio)""",
    "debris": """
        (palo|palos|ramas|rama|troncos|tronco|hojas|espuma|arboles|arbol|madera|maderas|basura|
        ramitas|piedras|lena|maleza)""",
    "coming": """
        (baja|bajan|bajando|viene|vienen|viniendo|llegan|pasa|pasan|pasando|arrastra|
        arrastrando|trae|flotando|cae|caen) ~ (un|una|muchos|muchas|mas|tras|rio|por|con|y|
        abajo|de|palo|ramas|troncos|tronco|flotando|a toda|cada vez|hojas|,)*, tras otro, un
        monton de""",
    "cut_off": """
        (aislados|aisladas|aislado|aislada|incomunicad*|atrapad* (en la isla|en el islote|en la
        orilla|por el agua|por la crecida|en la otra|al otro)), (cortado|cortada) ~ (paso|
        camino|vado|sendero|salida), no podemos (cruzar|volver|pasar) (de vuelta|ya|el|al|
        porque|por|a la)*, sin (salida|paso|poder cruzar)""",
    "swallowed": """
        (arroyo|rio|agua|riachuelo|torrente) ~ (pasando|pasa|va|corre|corriendo) por encima,
        (piedra|marca|roca|vado|piedras) ~ (ya no se ve*|ya no esta*|desaparec*|tapad*|
        cubiert*), cada vez (es)? mas (pequeno|pequena|chico|estrecho|chica), (camino|sendero|
        puente|piedras|vado|piedra|orilla|pasarela|isla|islote|tripode|marca|pista|roca|mochila|
        paso) ~ (bajo el agua|debajo del agua|cubierto|cubierta|cubiertas|inundado|inundada|
        desaparecido|desaparecio|desaparecieron|tapado|tapadas|ha tapado|ya no se ve*|ya no
        esta*|tragado|en el agua|es un rio|con agua|sumergid*), (me|nos) (llega|moja|alcanza) ~
        (a los pies|las botas|la mochila|al tripode), (agua|rio) ~ (cubre|tapa|tapo|cubierto|
        tapado|por encima|pasa por encima|se come|se ha comido) ~ (camino|sendero|piedras|
        puente|vado|botas|pies|rocas|orilla|islote|pasarela|paso)*""",
    "bigger": """
        (mas fuerte|mas ruido|mas rapido|con fuerza|mas grande|mas ancho|mas agua|mucha mas|con
        mas fuerza|ruge|rugiendo|furioso|enfadado|bravo|brava|mas caudal)""",
    "roar_new": """
        (ruido|rugido|estruendo|retumbo|trueno sordo|rumor|bramido) ~ (rio arriba|aguas arriba|
        de arriba|de mas arriba|barranco arriba|cada vez|acerca|que viene|raro|fuerte|extrano|
        nuevo), (retumba|ruge|rugiendo|retumbando) ~ (arriba|rio|barranco|garganta|canon)""",
    "was_dry": """
        (en seco|seco|estaba seca|estaban secas|estaba seco|en lo seco|estaban secos)""",
}
