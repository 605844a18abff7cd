"""Spanish wordings: what speaks against a danger: over, supposed, denied, of the picture."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

AGAINST: Final[Mapping[str, str]] = {
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
