"""Spanish words: parts of a message that sound of the danger that they deny."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

_EL_AGUA: Final = r"(?:(?:el |la )?(?:agua|arroyo|rio|nivel|caudal) )"

_POCO: Final = r"(?:(?:solo|todavia|aun|un|poco|algo|sigue|se|que) )*"

WORDS: Final[Mapping[str, str]] = {
    "calm_parts.last": NOTHING,
    "calm_parts.joined": r"y|pero|que|ademas|porque",
    "calm_parts.lead": r"y|pero|que|ademas|bueno|vale|ok|porque",
    # "No está subiendo", which "ya no" or "todavía no" would take back.
    "calm_parts.not_rising": (
        # Who fell in and does not come up has the same verb, without the water.
        rf"{_EL_AGUA}(?:tampoco|no) (?:esta (?:subiendo|creciendo|mas alt[oa])|sube|crece"
        r"|ha (?:subido|crecido)|subio|crecio)(?: nada| para nada| que antes)*"
        r"|no (?:esta creciendo|crece|ha crecido|crecio)"
    ),
    "calm_parts.pulled_back": (
        r"(?:ya )?(?:l[aoe]s? )(?:he |hemos )?(?:aparte|apartado|agarre|agarrado|jale"
        r"|jalado|retire"
        r"|retirado|traje|traido)(?: (?:hacia|para) atras| de (?:la|el|ahi|alli|borde|baranda"
        r"|barandilla|orilla)| del borde| a mi lado| conmigo| enseguida| ya)*"
    ),
    # What tells that nothing is the matter, where danger only is likely by other words.
    "calm_parts.idle": (
        r"(?:(?:el|la|los|las|mi|mis|ya|se|todos) )*\w+(?: (?:ya|esta|estan|tiene|tienen|se|mucha"
        r"|solo|ahora|que|va|van|quiere|quieren))* (?:hambre|sed|aburrid[oa]s?|aburren?|hacer pis)"
        r"(?: (?:ya|ahora|jaja))*"
    ),
    # A thing that is put under the camera: nobody stands under anything.
    "calm_parts.put_under": (
        r"(?:puedo )?poner(?:le)? (?:mi|la|el|una?|los) (?:\w+ )?(?:sudadera|chaqueta"
        r"|mochila|bolsa"
        r"|bufanda|toalla|guantes?|gorro|camisa|libro|piedra) (?:debajo|abajo"
        r"|encima)(?: del? \w+)?"
    ),
    # What a camera or phone shows, that nobody finds: no way is lost.
    "calm_parts.where_shown": (
        r"(?:(?:yo|la verdad) )*(?:no se|ni idea|no tengo (?:ni )?idea|no encuentro"
        r"|no veo)(?: de)?"
        r" (?:por )?donde (?:(?:se|puedo|puede|debo|podria) )*(?:(?:ve|ver|veo|mira|mirar"
        r"|miro|pone"
        r"|poner|pongo|encuentra|encontrar|sale|aparece|muestra|ajusta|ajustar|activa|activar"
        r"|cambia|cambiar) (?:eso|esto|el (?:aviso|valor|numero|menu|iso|histograma)"
        r"|la (?:opcion|alerta))|(?:sale|aparece)|se (?:ve|pone|muestra|mira))"
        r"(?: en (?:la|mi|el) (?:camara|movil|pantalla|menu))?"
    ),
    # Where the water lands, in a picture that blinks: nobody stands there.
    "calm_parts.blinks": (
        rf"{_POCO}(?:abajo )?donde (?:cae|golpea|rompe) (?:el agua|la cascada) {_POCO}"
        rf"(?:parpadea\w*|sale quemad[oa])(?: (?:algo|todavia|aun|un|poco|poquito|abajo))*"
        rf"|{_POCO}(?:parpadea\w*|sale quemad[oa]) {_POCO}(?:abajo )?donde (?:cae|golpea|rompe)"
        r" (?:el agua|la cascada)"
    ),
    # Under trees is shade.
    "calm_parts.trees": (
        r"(?:(?:ya|ahora|nos|me|hemos|he) )*(?:movimos|movi|movido|fuimos|estamos|estoy|puesto"
        r"|pusimos|metimos) (?:bajo|debajo de) (?:los |unos )?(?:arboles|hojas|ramas)"
        r"(?: (?:un|poco|mas|arriba|alla|en el camino))*"
    ),
    # Water that looks as a short time makes it.
    "calm_parts.looks_crisp": (
        r"(?:el )?agua (?:se ve|sale|salio|queda|parece)(?: (?:muy|toda|como|tan))*"
        r" (?:congelada|helada|dura|puntiaguda)(?: y (?:dura|puntiaguda|nitida|fea))+"
    ),
    # A deck that moves the tripod.
    "calm_parts.wobbles": (
        r"(?:el |la )?(?:puente|pasarela|plataforma|tablas) (?:tambien )?(?:tiembla\w*|se mueve\w*"
        r"|vibra\w*)(?: (?:un|poco|algo))* (?:cuando|si) (?:\w+ ){1,3}?"
        r"(?:salta|camina|pasa|corre|brinca|anda)\w*"
    ),
    # The bot's own word: a ladder of times.
    "calm_parts.own_words": (
        r"que es (?:una|la|esa|eso de la) escalera(?: de tiempos)?"
        r"|no (?:te refieres|querras decir|dices)(?: (?:a|que))* (?:tengo que |debo |yo )*"
        r"(?:trepar|escalar|subir|trepe|escale|suba) \w+"
        r"|no (?:entiendo|sigo|capto|le entiendo a) (?:la|tu|lo de la) (?:serie|escalera)"
    ),
    # Dry ground some metres from the fall.
    "calm_parts.dry_ground": (
        r"(?:(?:yo|ya|ahora) )*(?:estoy|estamos)(?: de pie| parad[oa])? (?:en|sobre)"
        r" (?:(?:un|una|el|la|grava|llano|llana|sec[oa]) )*"
        r"(?:grava|gravilla|hierba|camino|sendero|prado|orilla|arena)(?: (?:llana|seca|plana))?"
        r"(?: (?:como|unos|a))* \d{1,3}(?:[.,]\d)? ?(?:m|metros)"
        r"(?: (?:de|del) (?:la )?(?:cascada|salto|agua))?"
    ),
    # Who is bored by the water: what is thrown goes in, not over an edge.
    "calm_parts.stones": (
        r"(?:(?:el|la|los|las|mi|mis|nuestr\w+) )*\w+ (?:(?:esta|estan|anda|andan|solo"
        r"|nomas|ya) )*"
        r"(?:tira|tiran|tirando|avienta|avientan|aventando|lanza|lanzan|lanzando|arroja|arrojando)"
        r" (?:piedras?|piedritas?|palos?|palitos?|ramitas)"
        r" (?:al (?:agua|rio|arroyo)|a la poza|adentro|dentro)"
    ),
    # Who walks along, and for which meal they are back.
    "calm_parts.planned": (
        r"(?:(?:solo|nomas) )?(?:camino|voy)(?: yo)? sol[oa]|(?:solo|nomas) (?:voy|camino) yo"
        r"|(?:regreso|regresamos|vuelvo|volvemos|estoy de vuelta|estamos de vuelta)"
        r" (?:para|antes de)(?: (?:la|el))? (?:comida|comer|almuerzo|almorzar|cena|cenar|mediodia)"
    ),
    # How long somebody has been there.
    "calm_parts.waited": (
        r"(?:ya )?(?:llevo|llevamos)(?: (?:casi|como|ya|aqui|cerca de|mas de))*"
        r" (?:una|un|dos|tres|\d+|media) ?(?:horas?|minutos?|min|h)"
        r"(?: (?:aqui|ya|creo|mas o menos))*"
    ),
    # Nobody has looked up when the sun sets.
    "calm_parts.sunset": (
        r"(?:(?:yo|la verdad) )*(?:ni idea|no se|no tengo (?:ni )?idea)(?: (?:de|a que hora|cuando"
        r"|del|es|se))* (?:atardecer|puesta(?: de sol| del sol)?|(?:pone|mete|oculta) el sol)"
    ),
    # Beside a storm, or a way over ice, none of what is seen is harmless.
    "calm_parts.unsafe": (
        r"tormentas?|trueno\w*|truena|retumb\w*|estruendos?|nubarrones|nubes (?:negras|oscuras)"
        r"|relampag\w*|rayos?|encima|cruzar\w*"
    ),
}
