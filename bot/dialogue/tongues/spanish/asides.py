"""Spanish words of goodbyes, pauses, praise, assent and thanks."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "asides.bye": (
        r"adi[oó]s|hasta (?:luego|mañana|pronto|la próxima)|nos vemos|buenas noches"
        r"|me voy(?! a\b)|nos vamos(?! a\b)|eso es todo|(?:vuelvo|de vuelta) al (?:coche|carro)"
        r"|a dormir"
    ),
    "asides.wait": (
        r"espero|esperamos|un momento|ahora vuelvo|vuelvo enseguida|voy a (?:comer|esperar)"
    ),
    "asides.no_wait": NOTHING,  # not written yet
    "asides.praise": (
        r"mejor(?: ahora)?|(?:queda|se ve|salió) (?:muy )?(?:bien|genial)|perfecto|genial"
        r"|precios[oa]|me encanta|qu[eé] (?:bonit|chul|lind)[oa]|estoy content[oa]"
        r"|(?:se ven|veo|hay) (?:\w+ ){0,2}(?:hilos|hebras)|estupend[oa]|me gusta|ha funcionado"
    ),
    "asides.not_good": r"pero|demasiado",
    "asides.ok": (
        r"(?:la )?escalera (?:hecha|lista)|hecho|ya está|de acuerdo|vale|entendido|bien|claro"
    ),
    "asides.stays": NOTHING,  # not written yet
    "asides.thanks": r"gracias",
    "asides.took_off": r"(?:lo )?(?:he quitado|quité|quitado)(?: el filtro)?",
}
