"""Spanish wordings: where nobody stands, ways that nobody takes, stones that fall."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

PLACES: Final[Mapping[str, str]] = {
    "brink": """
        (borde|filo|orilla|labio|canto) (de|del|de la|mismo|mismisimo|de arriba|superior) ~
        (cascada|salto|precipicio|abismo|acantilado|vacio|barranco|caida|risco|penasco|corte|
        cortado), (mismo|mismisimo) (borde|filo), donde (cae|salta|rompe|se despena|empieza a
        caer|se precipita|se tira|se descuelga|se cae) (el agua|la cascada|el rio|el salto)?,
        donde el agua (cae|salta|se cae|se despena|se tira|rompe|se precipita|empieza a caer),
        (arriba|encima|cabecera|alto|cima|parte de arriba|parte alta|coronacion) (del|de la|de)
        (salto|cascada|caida|catarata|precipicio), (la cabecera|lo alto|lo mas alto|todo lo
        alto), (al|sobre el|hacia el|junto al) (vacio|abismo|precipicio), (cornisa|repisa|
        saliente|pena|voladizo|espolon) ~ (sobre|encima|vacio|del salto|cascada|caida|abismo),
        (saliente|roca|piedra|losa) (que)? (vuela|sobresale|cuelga) ~ , por encima (del|de la)
        (salto|cascada|caida)""",
    "goes": """
        (estoy|estamos|esta|estan|pongo|ponemos|poner|ponerme|ponernos|ponga|pone|ponen|ponerse|
        ponemos|puesto|siento|sentarme|sentarnos|sentados|sentado|sentada|sienta|sientan|tumbo|
        tumbarme|tumbado|tumbada|arrodillo|paro|pararme|parado|parada|planto|plantado|plantar|
        coloco|colocar|colocarme|subo|subir|subimos|subirme|voy|vamos|ir|va|van|paso|pasar|
        pasamos|pasa|cruzo|cruzar|cruzamos|cruzan|salto|saltar|saltamos|saltan|salta|trepo|
        trepar|trepando|camino|caminar|caminando|andar|andando|acerco|acercarme|acercamos|
        acercarnos|asomo|asomarme|asomar|asoma|asoman|meto|meterme|metemos|meternos|meter|
        metido|metida|entro|entrar|entramos|banarse|banarnos|banarme|bano|nado|nadar|juegan|
        jugando|bailar|bailando|posar|posando|monto|montar|montado|baja|bajo|bajar|quedo|
        quedarme|llego|agacho|apoyo|equilibrio|gateo|gateando|arrastro|arrastrarme|cuelo|
        colarme|colar|colamos), (puedo|podemos|se puede|podria|podriamos|puede|pueden|quiero|
        queremos|quiere|quieren|quisiera|me gustaria|dejo|deja|debo|deberia), (selfie|foto|
        sitio|toma|tripode) (perfecta|perfecto|genial|desde|de|ideal|en|ahi|buenisima|increible|
        brutal)""",
    "sits": """
        (sentado|sentada|sentados|sentadas|de pie|parados|jugando|juegan|pies|piernas|colgando|
        chapoteando|bailando|posando|saltando|corriendo|cruzando|apoyado)""",
    "look_down": """
        (mirar|mirando|miro|asomo|asomar|asomarme|asomada|asomado|asomamos|hacia abajo|desde
        arriba|para abajo|al vacio|abajo)""",
    "lean_out": """
        (asomo|asomarme|asomar|asomada|asomado|asomamos|asoma|inclino|inclinarme|cuelgo|
        colgarme|colgado|estiro|estirarme|saco|sacar|descuelgo) ~ (vacio|abismo|precipicio|
        borde|fuera|por encima|afuera|barranco|caida|camara|cuerpo), (agarrame|sujetame|
        aguantame|agarra|sujeta|agarrarme|sujetarme|me agarra|me sujeta|sujetas|agarras|cogeme|
        coge|me coges|sosten|sostenme) ~ (mochila|cinturon|chaqueta|pies|tobillos|arnes|piernas|
        correa|mano|cintura) ~ (que|mientras|y|para|cuando)""",
    "dangle": """
        (pies|piernas) ~ (colgando|cuelgan|al vacio|sobre el vacio|por fuera|al aire)""",
    "drop_below": """
        (caida|vacio|abismo|cortado|metros|precipicio) (de|debajo|abajo|al lado|a mis pies|a un
        paso|hasta abajo|\\d+)""",
    "tripod": """
        (tripode|camara)""",
    "ice": """
        (hielo|helado|helada|helados|heladas|carambano|carambanos|congelado|congelada|
        congelados|congeladas|escarcha|placa de hielo|cortina de hielo|nevero|puente de nieve|
        carambanos)""",
    "goes_on": """
        (sobre|por|encima|en|cruzar|cruzo|pisar|piso|cruzando|andar|caminar|camino|pisando|subo|
        sube|subirse|mitad|medio|patinar|patinando) ~ (el|la|del|de)? (hielo|lago|laguna|poza|
        charca|helado|helada|congelado|congelada|nevero|placa|rio|cascada|puente de nieve),
        (aguanta|aguantara|resiste|resistira|soporta|soportara|aguante) ~ (peso|bien|creo|de
        momento|parece|.|nos|me|si|el hielo)*, sin (crampones|grampones)""",
    "creaks": """
        (cruje|crujen|crujio|crujido|grieta|grietas|raja|rajas|se raja|se rompe|quiebra|cede|
        crujiendo|suena|agrieta|resquebraja|gotea|se mueve)""",
    "below": """
        (debajo|bajo|abajo|justo debajo|detras|encima|sobre mi|sobre nosotros|al lado|a mis
        pies|alrededor|a mi lado|por detras|al pie|cerca)""",
    "chunks": """
        (trozos|trozo|bloques|bloque|pedazos|cachos|carambanos|placas|carambano|cacho) ~ (cae|
        caen|cayendo|desprende*|sueltan|cayo|cayeron|soltando|caido|rompen)""",
    "behind_fall": """
        detras (de|del|de la) (cortina|cascada|salto|agua|chorro|caida|velo), (detras|debajo|
        bajo|dentro) (de la|del|de|el|la) (cortina|cascada|salto|chorro|caida|velo|catarata),
        (cueva|hueco|gruta|pasillo|repisa|espacio|abrigo) ~ (detras|debajo|tras|dentro), tras la
        (cortina|cascada), detras del agua, desde dentro de la (cortina|cascada)""",
    "ask": """
        (se puede|puedo|podemos|podria|podriamos|hay manera|hay paso|hay forma|es posible|como|
        quiero|queremos|voy a|vamos a|dejan|me meto|deberia|quisiera|nos metemos)""",
    "landing": """
        debajo donde (golpea|cae|pega|rompe), donde (golpea|cae|pega|rompe) ., debajo de donde
        (golpea|cae|pega), donde (golpea|rompe|cae|pega|aterriza|impacta|revienta) (el agua|la
        cascada|el chorro|el salto), (al|en el) (mismo)? pie (mismo)? (del|de la) (salto|
        cascada|chorro) ~ (debajo|mojar*|golpe)*, bajo el chorro, debajo del chorro""",
    "overhang": """
        (extraplomo|desplome|voladizo|techo de roca|visera|saliente|pared que desploma|abrigo de
        roca), (debajo|bajo|al pie) (de la|del|de|la|el) ~ (pared|roca|risco|pena|penasco|
        bloque|cornisa|extraplomo|acantilado|saliente|cortado|farallon|canchal), (roca|rocas|
        piedras|bloque|bloques|losa) (suelta|sueltas|suelto|sueltos|inestable*)""",
    "fresh_rock": """
        (rocas|piedras|bloques|desprendimiento|derrumbe|cicatriz|marcas) ~ (frescas|fresco|
        frescos|recientes|reciente|nuevas|recien|blancas), desprendimiento*, derrumbe*, caida de
        (piedras|rocas)""",
    "stonefall": """
        (caen|cae|cayendo|estan cayendo|cayo|cayeron|sueltan|ruedan|bajan|llueven|va cayendo|
        caian) ~ (piedras|piedra|rocas|piedrecitas|pedruscos|chinas|guijarros|gravilla|
        piedrecillas|cascotes|pedrusco), (piedras|piedra|rocas|piedrecitas|pedruscos|guijarros|
        gravilla|piedrecillas|cascotes) ~ (caen|cae|cayendo|sueltan|ruedan|rebotan|cayo|caido|
        cayeron) ~ (arriba|cerca|lado|encima|pared|cada|alrededor|de|.)""",
    "wade_in": """
        (vadeo|vadear|vadeamos|vadeando|vadean), (meto|meterme|metemos|meternos|meter|metido|
        metida|entro|entrar|entramos|entrando|metiendome|pongo|ponerme|poner|plantarme|planto|
        plantar|camino|bajo|me meto|cruzo|cruzar|cruzamos|cruzando|paso|pasar|de pie|parado|
        metete|metanse|posar|pararme) ~ (en el|al|en la|dentro del|dentro de la|en medio del|en
        mitad del|a mitad del|a la|el|por el) (agua|rio|arroyo|corriente|poza|cauce|rapido|
        rapidos|torrente|centro del rio|riachuelo), (pies|tripode|patas|botas|piernas) (en|
        dentro) (del|el|la) (agua|rio|arroyo|corriente|cauce), estoy dentro y""",
    "waders": """
        (vadeador|vadeadores|botas de agua|neopreno|descalzo|descalza|descalzos|pantalon
        remangado|banador|escarpines|chanclas|sandalias|botas altas|wader|waders)""",
    "go_in": """
        (entro|entrar|dentro|cruzo|cruzar|meterme|meto|paso|pasar|por el medio|al medio|al
        centro|adentro|al agua|al rio|hasta el centro|me voy)""",
    "deep": """
        (hasta|por) (la|las|el|los|mas arriba de la|encima de la) (rodilla|rodillas|cintura|
        muslo|muslos|pecho|cadera|cuello|tobillo|tobillos|ombligo|barriga|pantorrilla|ingle),
        (hondo|honda|profundo|profunda|cubre), metro* de (profundidad|agua|hondo)""",
    "deep_in": """
        (agua|rio|me llega|nos llega|llega|estoy|metido|metida|dentro|con|corriente|cubre) ~
        (por|hasta|a) (la|las|el|los|encima de la|encima de las) (rodilla|rodillas|cintura|
        muslo|muslos|pecho|cadera|caderas|cuello|ombligo|barriga|ingle), (no (hago|hace|hacemos)
        pie)""",
    "water_speed": """
        (metros por segundo|m s|km h|velocidad de (la corriente|agua))""",
    "bottom_unseen": """
        no (se ve|veo|vemos|se distingue|toco|se toca) el (fondo|suelo), sin ver el fondo""",
    "island_target": """
        (islote|isla|isleta|otra orilla|otro lado|orilla de enfrente|enfrente|roca del medio|
        roca del centro|piedra del medio|piedra del centro|peña del medio|roca de en medio|en
        medio del rio|medio de la corriente|centro del rio|mitad del rio)""",
    "swim_in": """
        (nado|nadar|nadando|nadamos|bano|banarse|banarnos|banarme|banamos|bana|baño|zambull*|
        chapuzon|tiro|tirarme|tirarnos|tirarse|salto|saltar|saltamos|saltan|bucear|cruzar a
        nado) ~ (en la|a la|al|en el|hasta|bajo|desde|debajo|por|hacia|por la|de la) ~ (poza|
        agua|rio|cascada|salto|roca|otro lado|otra orilla|remolino|charca|laguna|orilla|cortina|
        chorro|isla|islote|piscina|pozo|corriente), a nado""",
    "pushes_me": """
        (corriente|agua|rio|que|y|me|fuerza) (me|nos|lo|la) (empuja|tira|arrastra|mueve|tumba|
        jala|lleva|desequilibra|tambalea|zarandea), me (empuja|tira|arrastra|tumba|jala|tumbo)
        (la corriente|el agua|mucho|.|fuerte|hacia|de)*, casi me (caigo|tumba|lleva|tira|
        arrastra|tiro|llevo|tumbo), me tiemblan las piernas""",
    "climb_up": """
        (trepo|trepar|trepando|trepamos|trepa|escalo|escalar|escalando|escalamos|escala|subo|
        subir|subiendo|subimos|sube|subi|gateo|encaramo|encaramarme|encaramar|encarame|
        destrepar|destrepo|remonto|remontar|trepe)""",
    "climb_bad": """
        (trepo|trepar|trepando|trepamos|trepa|trepan|escalo|escalar|escalando|escalamos|
        encaramarme|encaramo|gatear|gateo|destrepar|destrepo|trepe) ~ (pared|roca|rocas|cascada|
        salto|risco|losa|placa|canal|chimenea|bloques|pena|penasco|piedras|acantilado|muro|
        musgo|cortado|arriba)""",
    "wet_rock": """
        (roca|rocas|pared|losa|losas|piedra|piedras|placa|canal|cornisa|repisa|pasos|escalones)
        ~ (mojada|mojadas|resbaladiza|resbaladizas|resbalosa|resbalosas|humeda|humedas|musgo|
        verdin|resbala|resbalan|lisa|jabon|algas|limo|patina), (lo mojado|musgo|verdin|
        resbaladizo|resbaloso|roca lisa)""",
    "fall_side": """
        (junto|al lado|pegado|lateral|costado|derecha|izquierda|lado|por el lado|por la) ~
        (salto|cascada|agua|caida|chorro|catarata), por (la|el) (izquierda|derecha|lateral|
        costado|lado|pared|canal|roca|mojado|cascada), por lo mojado""",
    "no_rope": """
        (sin|no (tengo|llevo|tenemos|hay)) (cuerda|cuerdas|arnes|casco|seguro|asegurar|
        asegurarme|asegurarnos), en (chanclas|sandalias|zapatillas), con una (sola)? mano""",
    "solo": """
        (escalada|solo) libre (integral)?, en solo integral, a pelo""",
    "next_step": """
        (segundo|siguiente|tercer|primer|otro) (escalon|nivel|salto|piso|tramo|rellano|balcon|
        cuerpo), (segunda|siguiente|tercera|primera|otra) (poza|terraza|repisa|cascada|grada|
        caida), (nivel|escalon|salto|piso) (superior|de arriba|intermedio|de en medio), media
        altura""",
    "stuck_up": """
        no (se|puedo|puede|podemos|sabe|sabemos|me atrevo|se atreve|hay como|consigo|consigue) ~
        (bajar|subir|ni bajar|seguir|bajarme|bajarse|destrepar|moverme), (enriscad*|atascad*|
        bloquead*|atrapad* en la (pared|repisa)|colgad* en la pared)""",
    "bar": """
        (barandilla|barandillas|barandal|valla|vallas|vallado|cadena|cadenas|cinta|cuerda|reja|
        verja|puerta|porton|cartel|carteles|senal|letrero|prohibido|prohibida|prohibicion|
        murete|muro|barrera|baranda|cerca|alambrada|quitamiedos|precinto|precintado|acordonad*|
        no pasar|peligro|cancela|cordon|pretil|petril)""",
    "closed": """
        (cerrado|cerrada|cerrados|cerradas|prohibido el paso|prohibida|prohibido|cortado|
        cortada|precintado|precintada|clausurad*|vallado|no pasar|acceso prohibido|vetado|
        restringid*)""",
    "pass_it": """
        (salto|saltar|saltamos|salte|saltarse|saltarme|saltarnos|salta|saltan|cruzo|cruzar|paso|
        pasar|pasamos|pasado|pasan|trepo|brinco|brincar|cuelo|colarme|colarnos|colamos|colado|
        cuelan|me subo|subirme|subo|agacho|meto|meterme|escalo|quito|aparto|pasarme|pasarnos|
        pasarse|rodeo|rodear|me pongo|ponerme|ponernos) ~ (por encima|por debajo|por fuera|por
        detras|por el lado|al otro lado|del otro lado|barandilla|barandal|valla|cadena|cinta|
        cuerda|reja|verja|puerta|porton|murete|muro|barrera|baranda|cerca|alambrada|quitamiedos|
        precinto|cancela|pretil|el cartel|debajo|encima|igual|detras|fuera|ahi), (por fuera|al
        otro lado|del otro lado|por encima|por debajo|mas alla|por detras|fuera) (de|del|de la|
        la|el) ~ (barandilla|barandal|valla|cadena|cinta|cuerda|reja|verja|mirador|murete|muro|
        barrera|baranda|cerca|alambrada|quitamiedos|pretil|precinto|vallado), un momento""",
    "go_anyway": """
        (igual|igualmente|de todas formas|de todos modos|aun asi|total|no pasa nada), (nadie|no
        hay nadie) ~ (mira|vigila|ve|hace caso|respeta|dice|entera|controla|mirando|vigilando)*,
        todo el mundo (pasa|lo|se|entra|va|la|salta|sigue), todos (pasan|lo hacen|entran|se la
        saltan|la saltan|la cruzan|se lo saltan), (solo|nada mas|solo es) (un|una|es un|sera un|
        sera una|un ratito) (momento|segundo|minuto|foto|ratito|momentito|rato|toma)*, (paso|
        pasamos|entro|entramos|pasar|entrar|seguimos|sigo|cuela|colamos|colarnos|me meto|nos
        metemos|voy|vamos|sigo|hago) (igual|de largo|un momento|y|rapido|rapidito|de todas|por|
        a)*, (puedo|podemos|se puede|podria|pasa algo si) ~ (pasar|entrar|cruzar|saltar|
        saltarla|saltarnos|ir|seguir|salto|paso|entro), no (sera|es|creo que sea) para tanto,
        (hago|hacemos|haciendo) caso, ignor*, seguro que (es|era|ya|no), sera (viejo|antiguo|de|
        por)""",
    "in_picture": """
        (sale|salga|salir|molesta|estorba|tapa|estropea) ~ (foto|encuadre|toma|imagen|vista|
        plano), mejor (vista|angulo|toma|foto|encuadre|sitio), no sale""",
}
