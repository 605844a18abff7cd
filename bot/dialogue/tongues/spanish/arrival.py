"""Spanish words of who tells where they stand, what they came for, or that they are new to this."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_WATER: Final = "<arrival.water>"
_OK: Final = r"(?:<arrival.ok>\W+)*"
_CON: Final = (
    r"(?: del? (?:(?:la|los|las) )?\w+)?(?: (?:(?:la|el|los|las) )?\w+)?(?: (?:ahora|hoy|aquí))*"
    r"(?: (?:con|cerca) [^,.;]*)?"
)
_QUIERO: Final = (
    r"(?:(?:me|nos) gustar[íi]a|quiero|queremos|quisi[ée]ra(?:mos)?|querr[íi]a"
    r"|(?:vengo|venimos|vine|vinimos) a)"
)
_FOTOGRAFIAR: Final = (
    r"(?:fotografiar(?:l[ao])?|(?:sacar|hacer|tomar|tirar)(?:le|l[ao])? (?:\w+ ){0,3}?"
    r"(?:fotos?|fotitos?|fotograf[íi]as?|im[aá]gen(?:es)?))"
)

WORDS: Final[Mapping[str, str]] = {
    "arrival.water": (
        r"cascadas?|saltos?|arroyos?|r[íi]os?|torrentes?|gargantas?|ca[ñn][óo]n|cataratas?|chorros?"
        r"|quebradas?|barrancos?|riachuelos?"
    ),
    "arrival.ok": r"hola|y|buen[oa]s(?: (?:d[íi]as|tardes|noches))?|qué tal|oye|mira|che",
    "arrival.arrived": (
        rf"{_OK}(?:ya )?(?:estoy|estamos|he llegado|hemos llegado|vine|vinimos|llegu[ée]|llegamos"
        rf"|vengo|venimos|ando|andamos) (?:\w+ )?(?:en|a|al|por|junto|ante"
        rf"|bajo|delante|frente|enfrente)\b(?: [^\W\d]+){{0,6}}? {_WATER}{_CON}"
        rf"|{_OK}(?:ya )?(?:estoy|estamos) (?:aquí|allí)|{_OK}acabo de llegar"
    ),
    # The clause of a longer message that ends a plan: "ok we are here now. It's cloudy".
    "arrival.here": (
        rf"{_OK}(?:ya )?(?:estoy|estamos) (?:ya |ahora )*(?:aquí|allí)(?: ya)?"
        rf"|{_OK}(?:ya )?(?:hemos llegado|he llegado|llegamos)(?: ya)?"
        r"(?: a la (?:cascada|catarata)| al (?:salto|agua))?"
    ),
    # What tells of a frame, or of its fault.
    "arrival.of_a_frame": r"demasiado|imagen|toma|perdid\w+|parece|casa",
    "arrival.new": (
        rf"{_OK}(?:(?:estoy|estamos|ando) (?:\w+ )?(?:aprendiendo|empezando)"
        r"(?: (?:en|con|a) [^,.;]*)?"
        rf"|(?:reci[ée]n|apenas) (?:empiezo|estoy empezando|aprendo)[^,.;]*)"
        rf"|{_OK}(?:soy|somos) (?:principiantes?|nuev[oa]s?(?: en esto)?)"
        r"|nunca (?:lo )?he hecho(?: esto)?|es mi primera vez|cómo funciona(?: esto)?"
    ),
    # A greeting, and what everybody comes for: they tell of no frame.
    "arrival.wished": (
        r"(?:me|nos) gustaría fotografiarl[ao]|(?:quiero|queremos|quisiera) fotografiarl[ao]"
        r"|(?:hay|trae|lleva|viene con)(?: (?:muy|bastante|re))?"
        r" (?:poc[ao]|much[ao]|bastante|harta) (?:agua|caudal)|(?:hola )?qu[ée] tal"
        r"|(?:con|tengo|traigo|llevo) (?:mi|una) (?:c[áa]mara|camarita)"
        r"(?: (?:nueva|sin espejo|vieja))?"
        rf"|{_QUIERO} {_FOTOGRAFIAR}(?: (?:de|del?|a|al|la|el|una?|esta|este|aqu[íi]|hoy"
        rf"|{_WATER}))*"
    ),
    # Who wants to photograph water, wherever they stand, is asked what a beginner is.
    "arrival.wished_fall": (
        rf"{_OK}{_QUIERO} {_FOTOGRAFIAR}(?: (?:de|del?|a|al|la|el|una?|esta|este))* {_WATER}"
        r"(?: (?:aqu[íi]|hoy|ahora))*"
    ),
    # Where a clause begins that may tell of the place, or ask what comes first.
    "arrival.and": r"y",
    "arrival.next_clause": r"qué|me gustaría|quiero|queremos|quisi[ée]ra(?:mos)?|vengo",
}
