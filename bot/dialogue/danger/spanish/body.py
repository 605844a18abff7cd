"""Spanish wordings: what hurts, bleeds, or is too cold."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

BODY: Final[Mapping[str, str]] = {
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
