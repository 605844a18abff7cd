"""Spanish words: who asks, before they set out, of a gorge after rain."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_RIO: Final = r"(?:arroyos?|rios?|agua|nivel|caudal|barrancos?|quebradas?)"

WORDS: Final[Mapping[str, str]] = {
    "rain_asked.rain": r"lluvias?|llovido|llovio|llueve|llover|lloviendo|diluvi\w+|aguacero\w*",
    "rain_asked.narrow": r"barrancos?|canon(?:es)?|garganta|desfiladero|quebrada|hoz",
    "rain_asked.place": r"arroyo|rio|cascada|salto|catarata",
    "rain_asked.safe": r"peligros[oa]s?|peligro|segur[oa]s?|arriesgad[oa]|riesgo|crecidas?|riadas?",
    "rain_asked.child": (
        r"nin[oa]s?|hij[oa]s?|peques?|pequen[oa]s?|niet[oa]s?|bebe|chic[oa]s|alumn[oa]s|sobrin[oa]s?"
    ),
    "rain_asked.ask": (
        r"puedo|podemos|se puede|es|esta|sera|debo|debemos|como|si|conviene|vale|que tal"
    ),
    "rain_asked.plan": (
        r"quiero ir|queremos ir|vamos a|voy a|pienso ir|salimos|salgo|saldremos|manana|luego|hoy"
        r"|llevar|ir con"
    ),
    "rain_asked.rises": (
        rf"(?:(?:un|los|el|estos) (?:\w+ )?{_RIO} )?(?:sigue|siguen|sube|suben|crece|crecen|subira"
        rf"|puede|pueden)(?: (?:subiendo|creciendo|subir|crecer|un|el|los|mas|todavia|aun|{_RIO}))*"
        r" (?:despues|cuando|tras|aunque)(?: \w+){0,5}? (?:lluvia|llover|llueve|pare|para|parado)"
        r"|lo peor (?:ya )?(?:ha pasado|paso|pasado)"
    ),
    "rain_asked.signs": (
        r"(?:como (?:se|sabemos|noto|notamos|puedo saber|vamos a saber)|en que (?:noto|notamos)"
        r"|cuando (?:hay|tenemos|debemos|debo))(?: \w+){0,5}?"
        r" (?:dar(?:nos)? (?:la )?(?:media )?vuelta|volver(?:nos)?|salir(?:nos)?)"
    ),
    "rain_asked.again": (
        r"(?:contesta\w*|responde\w*|que hay de|dime)(?: \w+){0,6} (?:crecidas?|riadas?)"
    ),
    "rain_asked.there": (
        r"(?:estoy|estamos) (?:\w+ )?(?:en el|dentro del|en la) (?:barranco|canon|garganta"
        r"|arroyo|rio)"
        r"|(?:agua|arroyo|rio|nivel)(?: \w+){0,3}? (?:esta subiendo|esta creciendo|ha subido|subio)"
        r"|marron|turbi[oa]|ruidos[oa]"
    ),
    # Who cannot get away, or is down there while it pours; not what is only supposed.
    "rain_asked.trouble": (
        r"aislad[oa]s?|atrapad[oa]s?|incomunicad[oa]s?|atascad[oa]s?"
        r"|(?<!si )no (?:podemos|puedo|pueden|puede|hay (?:como|forma de|manera de))"
        r" (?:\w+ )?(?:cruzar|volver|regresar|salir|pasar)\w*"
        r"|(?:estoy|estamos|esta|estan|quedamos|quede)(?: \w+){0,2}? en (?:el|la|una?|esta|este)"
        r" (?:isla|islote|roca|piedra|penasco)"
        r"|(?<!si los )(?<!si mis )(?<!si mi )(?:nin[oa]s?|hij[oa]s?|niet[oa]s?|espos[oa]|marido"
        r"|mujer|amig[oa]s?|sobrin[oa]s?|chic[oa]s|peques?)(?: \w+)?? (?:esta|estan|siguen|sigue)"
        r"(?: (?:ahora|aun|todavia|ya|abajo|alla|ahi|alli|sol[oa]s?|todos|metid[oa]s?))*"
        r" (?:en|dentro de) (?:el|la|un|una) (?:barranco|canon|garganta|desfiladero|quebrada|hoz"
        r"|rio|arroyo|agua)"
        r"|(?:se )?(?:llevo|arraso|arrastro|ha llevado) (?:el|la|los|nuestr\w+|mi)"
        r" (?:puente|pasarela|camino|sendero|carro|coche|tienda)"
    ),
}
