"""Spanish wordings of danger, as cues; without accents, as `folding` writes them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.danger.folding import folded
from bot.dialogue.danger.lexicon import Lexicon

_PEOPLE: Final[Mapping[str, str]] = {
    "person": """
        (yo|me|mi|nos|nosotros|nosotras|el|ella|ellos|ellas|le|les|lo|la|los|alguien|uno|una|
        todos|se|estoy|estamos|voy|vamos), (nino|nina|ninos|ninas|chico|chica|chicos|chicas|
        hombre|mujer|hijo|hija|hermano|hermana|madre|padre|mama|papa), (abuelo|abuela|tio|tia|
        primo|prima|amigo|amiga|amigos|companero|companera|pareja|marido|novio|novia|alumno|
        alumna), (alumnos|profe|profesor|profesora|maestra|seno|guia|senor|senora|grupo|gente|
        excursionista|turista|turistas|perro|bebe|peque|esposa|mujer|muchacho|muchacha|chaval|
        chavales|crio|crios)""",
    "other": """
        (ella|ellos|ellas|alguien|otro|otra|nino|nina|ninos|ninas|chico|chica|chicos|chicas|
        hombre|mujer|hijo|hija|hermano|hermana|madre|padre|mama|papa), (abuelo|abuela|tio|tia|
        primo|prima|amigo|amiga|amigos|companero|companera|pareja|marido|novio|novia|alumno|
        alumna|alumnos|profe|profesor|profesora|maestra|seno|guia|senor|senora|excursionista|
        turista|perro|peque|esposa|muchacho|muchacha|chaval|crio|uno de|una de|dos de|(mi|mis|
        nuestro|nuestra)), los (dos|tres|demas|otros), la (otra|seno|profe), el (profe|otro|
        guia)""",
    "thing": """
        (tapa|gorra|sombrero|objetivo|tripode|camara|movil|hoja|hojas|rama|pato|filtro|anillo|
        histograma|foto|fotos|archivo|archivos|luz|sombra|pata)""",
    "thing_adrift": """
        (tapa|gorra|sombrero|hoja|pato|filtro|botella|espuma|niebla|burbujas|anillo|enfoque)""",
    "water": """
        (agua|aguas|rio|arroyo|corriente|poza|charca|laguna|lago|remolino|cascada|salto|
        torrente|cauce|riachuelo|vado|rapidos|rapido|quebrada|riera|crecida|caudal|nivel|caida)""",
}
_WATER: Final[Mapping[str, str]] = {
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
_BODY: Final[Mapping[str, str]] = {
    "limb": """
        (tobillo|rodilla|muneca|codo|hombro|espinilla|muslo|costilla|costillas|dedo|dedos|mano|
        manos|brazo|brazos|pierna|piernas|pie|pies|cuello|nariz|ojo|ojos|craneo|cadera|
        pantorrilla|cara|frente|barbilla|labio|diente|dientes|cabeza|espalda|ceja|oreja|orejas|
        talon|pulgar|clavicula|gemelo|ingle|nuca|cabeza|yemas)""",
    "damaged": """
        (roto|rota|rotos|fracturado|fracturada|torcido|torcida|torcio|torci|hinchado|hinchada|
        hincha|hinchando|dislocado|dislocada|sangra|sangrando|sangre|abierto|abierta|abrio|
        cortado|cortada|corte|herida|aplastado|aplastada|quemado|quemada|quema|crujido|crujio|
        chasco|chasquido|doblado|doblada|duele|dolor|no ~ (mover|apoyar|doblar|estirar)|raja|
        rajado|rajo|morado|morada|partido|partio|se rompio|se ha roto|atravesado|atraveso|
        clavado|clavo|machacado|astillado|brecha|salido|salio|para atras|del reves)""",
    "injured": """
        (clave|clavo|clavado|clavada|corte|cortado|quemo|queme|quemado|machaque|pille|pillo|
        reviento|rompi) ~ (pie|mano|pierna|dedo|brazo|cabeza|ojo|cara|rodilla|muslo|palma|
        cuello|ceja|mejilla), grita* de dolor, (brecha|herida|raja|corte|agujero) (en|de) ~
        (cabeza|frente|pierna|mano|ceja|brazo|cara|rodilla|pie), (piedra|rama|roca|carambano) le
        (dio|ha dado|pego|golpeo|cayo), algo roto, (sono|oi|escuche) ~ (crac|crack|chasquido),
        herido, herida, heridos, lesionad*, malherid*, no (puedo|puede) ~ (apoyar|caminar|andar|
        levantarme|levantarse|moverme|moverse|pisar|ponerse de pie|ponerme de pie|levantar|
        mover|mover el|mover la|estirar), (torcio|torci|torcido|rompio|rompi|roto|fracturo|
        fracturado|dislocado|disloco|partio|partido|abierto|abrio) ~ (tobillo|pierna|brazo|
        muneca|rodilla|cabeza|ceja|hombro|costilla|nariz|dedo|mano|cadera|frente|clavicula|pie|
        barbilla), (se me|se le) (ha)? (sale|salio|rompio|torcio|doblo|hincha|ha hinchado|fue
        el|esta hinchando|ha roto|cierra|duerme|quedo) (el|la|un|una)? (tobillo|rodilla|hombro|
        muneca|pie|brazo|garganta|lengua|cara|pierna|mano|labio|dedo|codo)*, infarto, ictus,
        alergi*, reaccion alergica, epinefrina, adrenalina, conmocion, ambulancia, (necesitamos|
        necesito|llam*|pid*|hace falta|manden) ~ (medico|ambulancia|rescate|112|socorro|
        helicoptero|emergencias|doctor|auxilio), asma, (crisis|ataque) ~ (asma|ansiedad|epilep*|
        azucar), hipoglucemia, insulina, diabetic*, (picado|picadura|mordido|mordedura|mordio|
        pico|picaron|muerde) ~ (serpiente|vibora|avispa|avispas|culebra|abeja|alacran|escorpion|
        arana|garganta|cuello|perro|lengua|cara), no (para|deja) de sangrar, (sangra|sangrando)
        ~ (mucho|mucha|por|de|a chorro|bastante|la|el), (hueso) ~ (fuera|asoma|se ve|salido),
        quemadura*, se le (duerme|cae|tuerce|va) (el|la) ~ (brazo|boca|cara|cabeza|lado)""",
    "collapsed": """
        (desmayado|desmayada|desmayo|desmaya|desvanecido|desvanecida|desvanecio|inconsciente|
        desplomo|desplomado|desplomada|sin conocimiento|perdio el conocimiento|perdido el
        conocimiento|convulsiona|convulsionando|convulsiones|convulsion|ataque epileptico|no
        respira|no reacciona|no responde|no se mueve|no despierta|sin pulso|los ojos en blanco|
        se ha caido redondo|redonda|echa espuma|se asfixia|se atraganta|no le encuentro pulso)""",
    "heavy_blood": """
        (mucha|mucho|lleno de|llena de|llenos de|pierde|perdiendo|tanta|charco de|chorro de|
        cubierto de|cubierta de|chorrea|chorreando|echa|todo) ~ sangre, sangre (por todas|por
        todos|en la cabeza|en la cara|por la|por el|de la|del|no|a chorro|que no|y no), sangra,
        sangrando""",
    "chest": """
        (pecho|corazon|brazo izquierdo|mandibula)""",
    "pain": """
        (dolor|duele|presion|opresion|punzada|punzadas|aprieta|duerme|hormigueo|palido|gris|
        sudor|sudando|agarra|oprime|taquicardia)""",
    "breath_hard": """
        (cuesta|costando|no puede|no puedo|no consigue|dificultad para|le falta|me falta|sin|
        apenas) (mucho)? (respirar|el aire|aire|respira|aliento), se (ahoga|asfixia), respira
        (mal|raro|con dificultad|fatal|muy)""",
    "no_standing": """
        no (puede|puedo|se puede|me puedo|logra|consigue|aguanta) ~ (levantarse|levantar|
        caminar|andar|apoyar|mover|moverse|ponerse|seguir|pie|bajar|pisar|apoyarlo), (cojea|
        cojeando|cojeo), (tirado|tirada|tumbado|tumbada) (en el|en la|y|entre)""",
    "fell_far": """
        (despeno|despenado|despenada|precipitado|precipitada|precipito), (cayo|caido|cai|cae|
        resbalo|rodo|bajo rodando|resbalado|caida) ~ (metros|barranco|ladera|terraplen|
        precipicio|desde|de lo alto|roca|repisa|pared|mirador|puente|escaleras|acantilado|vacio|
        arriba|cortado), de espaldas, caida (de|fuerte|mala|muy)""",
    "head_hit": """
        (golpe|golpeo|golpeado|dio|dado|pego|pegado|abrio|abierto|choco) ~ (cabeza|nuca|frente|
        craneo|coco), (piedra|roca|rama|tronco|hielo|carambano) ~ (cayo|caido|dio|golpeo|dado|
        cae) ~ (encima|cabeza|espalda|pie|brazo|mano|hombro|pierna)*, (cayo|caido|cae) (encima|
        una (piedra|roca|rama) ) ~ (encima|a|en|sobre)*""",
    "bitten": """
        (mordio|mordido|mordida|picado|pico|picadura|mordedura|vibora|serpiente)""",
    "dazed": """
        (mareado|mareada|mareo|aturdido|aturdida|confuso|confusa|vomita|vomitando|vomitado|
        vomito|desorientado|desorientada|no sabe (que|donde|quien|como)|no se acuerda|no
        recuerda|delira|incoherencias|palido|palida|ve doble|dice cosas raras|atontado|atontada)""",
    "hypothermic": """
        dedos blancos, dedos ~ blancos y no siento, hipotermia, congelacion, castanetea*,
        (dientes|dientes) ~ (castanetean|castanete*|chocan), castanete* ~ dientes, ha dejado de
        (tiritar|temblar), ya no (tirita|tiembla), (no|sin) (para|paro|deja|dejo|dejar|parar) de
        (tiritar|temblar), (quiere|solo quiere|queria|se quiere) ~ (dormir|dormirse|tumbarse|
        echarse), (dice|diciendo) que tiene calor, (me muero|nos morimos|muerto|muerta|muertos)
        de frio, (tengo|tiene|tenemos|tienen|hace|pasando|pasa) (mucho|muchisimo|tanto|un)
        frio*, (estoy|esta|estamos|estan) (helad*|congelad*|aterid*|muert* de frio)""",
    "shivers": """
        (tirita|tiritando|tirito|tiritan|tiembla|temblando|tiemblo|tiemblan|tiritona|
        escalofrios|temblores|tiritamos|temblamos)""",
    "numb": """
        (dedos|manos|pies|orejas) ~ (blancos|blancas|azules|morados|dormidos|dormidas|
        insensibles|sin sentir|no siento|no los siento|no las siento), no siento nada,
        (dormidos|dormidas|dormido|dormida|entumecid*|insensible*|morados|moradas|blancos|
        blancas|azules|tiesos|tiesas|helados|heladas|agarrotad*|congelad*|como hielo|como palos|
        rigidos|acorchad*|engarrotad*), no (siento|siente|sentimos|me siento|noto|nota|notamos|
        puedo cerrar|puedo mover|responden|me responden|puede mover|puedo abrir|puedo doblar|
        puedo apretar), sin (sensibilidad|sentir|tacto)""",
    "lips_blue": """
        labios ~ (azules|morados|azulados|amoratados|violetas|lilas|blancos), (unas|dedos|manos)
        ~ (azules|moradas|morados|azuladas|cera)""",
    "soaked": """
        (empapado|empapada|empapados|empapadas|mojado|mojada|mojados|mojadas|calado|calada|
        calados|caladas|chorreando|hasta los huesos|ropa mojada|ensopado|ensopada|cayo al agua|
        cai al agua|se cayo al rio)""",
    "freezing": """
        (frio|fria|friisimo|heladas|helado|helada|helados|congelado|congelada|viento|congelados|
        helando|gelido|pelando|fresco)""",
    "dull": """
        (torpe|torpes|balbucea|tropieza|tropezando|tambalea|tambaleando|somnolient*|dormido|
        dormida|sueno|confuso|confusa|apatic*|callado|callada|ausente|atontad*|no habla|no
        contesta|habla raro|habla lento|arrastra las palabras|no coordina|se le traba|ido|ida|
        floj*|agotad*|tiembla|temblando|dice tonterias|no atina|no dice nada|sin fuerzas|debil|
        se quiere sentar|se duerme|se le caen)""",
    "pale": """
        (palido|palida|fria|frio|mojada|mojado|blanca|gris|azul|cera|como la cera)""",
}
_ALONE: Final[Mapping[str, str]] = {
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
_DARK: Final[Mapping[str, str]] = {
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
_PLACES: Final[Mapping[str, str]] = {
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
_AGAINST: Final[Mapping[str, str]] = {
    "past": """
        (el|la) (ano|mes|semana|verano|invierno|otono|primavera|vez|finde|temporada|martes|
        lunes|miercoles|jueves|viernes|sabado|domingo) (pasado|pasada|anterior|paso), (paso|
        vino|fue|cayo|hubo) el (martes|lunes|miercoles|jueves|viernes|sabado|domingo), el
        (martes|lunes|miercoles|jueves|viernes|sabado|domingo) (cayo|hubo|fue|paso|se), hace
        (anos|meses|semanas|dias|tiempo|mucho tiempo), hace ~ (anos|meses|semanas|dias), ayer,
        anteayer, antano, en (los)? (ochenta|noventa|setenta|19*|20*), en su dia, de (nino|nina|
        pequeno|pequena|joven|crio), una vez, aquella vez, la ultima vez, cada (ano|navidad|vez
        que)""",
    "told": """
        (visita|guerra|viaje|cremallera|pregunta) relampago, como truenos, (mirlo|pajaro|ave|
        pato|trucha|nutria|pez|garza|martin pescador) ~ (bucea|nada|salta|bajo|vuela|detras|
        entra), aplauso*, otra en la mochila, (pelicula|peli|libro|novela|cuento|historia|poema|
        cancion|chiste|leyenda|noticia|noticias|articulo|periodico|documental|podcast|titulo|
        sueno con|sone|sonado|pesadilla|exposicion|charla|concurso|sinopsis|traduccion|cuenta
        que|cuentan|cuenta la|dicen que|lei|leido|vi en|serie|cuadro|frase|quiz|lluvia de ideas|
        placa|mote|apodo|banda sonora|refran|poster|folleto), (como|igual que|parece) (un|una|
        el|los)? (rayo|trueno|relampago|hielo|tormenta)""",
    "editing": """
        (que|cual) ~ mas alta, sube la niebla, niebla ~ sube, sube* ~ (iso|sombras|exposicion|
        contraste), (sol|luna|luz) esta (detras|debajo|bajo), (falta|faltan) (un|una|el|la)?
        (trozo|foto|fotos|pedazo|parte|cielo|primer plano|espacio|aire|chispa), (perdido|perdi|
        pierdo) (la|el|mi|un) (tapa|tapon|filtro|cargador|paraguas|gorra|detalle|cable|trapo|
        disparador), tiembla el pulso, el pulso, foto desde la (orilla|carretera|pasarela|
        terraza|calle), no vadeamos, a 1 \\d+, (histograma|recorte|recortar|recorto|luces|
        sombras|saturacion|claridad|deslizador|contraste|textura|pixeles|raw|jpeg|ruido digital|
        nitidez|vineteo|curva|capa|capas|mascara|clonar|clono|miniatura|copia|copias|impresion|
        imprimo|imprimir|album|galeria|votacion|voto|votos|critica|jurado|concurso|balance de
        blancos|kelvin|magenta|dominante|medios tonos|blancos|negros|fotometro|autoenfoque|menu|
        composicion|encuadre equilibrado|revelado|revelar|editado|editar|edicion|procesado|
        primer plano|diagonal|apilado|panoramica|trama|enfoque|desenfoque|borroso|movida|
        quemado|quemadas|subexpuesta|sobreexpuesta|esquina|marco|lienzo|postal|calendario|visor|
        pantalla|tarjeta|tarjetas|archivo|archivos|bordes|tele|f 22|iso|anillo|objetivo|luz
        natural|rayo de (sol|luz)|rayos de (sol|luz)|mata la foto|de relleno), (foto|imagen|
        toma|cielo) (mata|muere|muerta|nada|corriente|sosa|plana)""",
    "over": """
        (todos|todas|estamos|ya estamos|esta|estan|llegamos) (bien|a salvo|sanos|en casa|en el
        coche|en el bus|de vuelta) ~ (y|ya|.|,|gracias|en|aqui)*, falsa alarma, sano* y salvo*,
        no paso nada, sin (heridos|novedad|incidentes), (aparecio|aparecieron|encontramos|
        encontraron|la encontramos|lo encontramos) (ya|al final|bien|sano|sana|en|a), dimos
        (la)? (vuelta|media vuelta), en el sofa, en el hotel""",
    "supposed": """
        (si|por si|en caso de que|imagina|supongamos|que pasa si) (alguien|alguno|se|uno|hay|el|
        la|un|una|hubiera|hubiese) ~ (cae|cayera|pierde|perdiera|sube|hubiera|viene|lastima|
        resbala|resbalara|moja|rompe), (riesgo|peligro|probabilidad) de, (simulacro|practica|
        practicas|cursillo|entrenamiento|seguro de|ensayo), (miedo|temor) (a|de) (que|las|los|
        la)""",
    "denied": """
        (nadie|ninguno|nunca|jamas) (se|ha|nos|pasa|cruza|salta|sube|va|entra|cayo|resbalo|
        cruzo|paso|se acerco|se acerca), (desde|en) (el|la|un|una) ~ (puente|mirador|plataforma|
        pasarela|aparcamiento|camino|carretera|terraza|merendero|balcon), (sin) (salir|salirnos|
        salirme|pasar|cruzar|saltar|acercar*) , nos quedamos (detras|en|fuera|de este), me quedo
        (detras|en el|fuera|de este), (no hay|sin) (tormenta|truenos|rayos|peligro|hielo),
        (permite|permitido|permiten)""",
    "plan": """
        (manana|pasado manana) (hay|va|dan|por|no|anuncian|.), (para|dan|anuncian|anunciaban|
        pronostico|prevision|previsto) ~ (manana|el fin de semana|viernes|sabado|domingo|lunes),
        (dan|anuncian|anunciaban|pronostico|prevision) ~ (tormenta|lluvia), la (semana|vez|
        temporada) (que viene|proxima), el (proximo|viernes que|sabado que), aplazad*,
        cancelad*, suspendid*, se vende, vendo, en venta""",
    "now": """
        (ahora mismo|ahora|en este momento|ya|acaba de|acaban de|hace (un|unos) (minuto|minutos|
        momento|rato|segundos)|justo ahora|recien)""",
    "help": """
        (ayuda|auxilio|socorro|sos|emergencia|urgente|112|que hacemos|que hago|por favor rapido|
        rapido por favor)""",
}

SPANISH: Final = Lexicon(
    common="""
        el la los las que de en un una por con para se lo del al y es esta estoy estamos hay muy mas
        como pero ya le nos mi donde cuando desde sin su sus ha he yo si porque hasta""",
    wordings={**_PEOPLE, **_WATER, **_BODY, **_ALONE, **_DARK, **_PLACES, **_AGAINST},
    spelling=folded,
)
