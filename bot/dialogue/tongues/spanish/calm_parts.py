"""Spanish words: parts of a message that sound of the danger that they deny."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

_EL_AGUA: Final = r"(?:(?:el |la )?(?:agua|arroyo|rio|nivel|caudal) )"

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
        r"(?:ya )?(?:l[aoe]s? )(?:he |hemos )?(?:aparte|apartado|agarre|agarrado|jale|jalado|retire"
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
        r"(?:puedo )?poner(?:le)? (?:mi|la|el|una?|los) (?:\w+ )?(?:sudadera|chaqueta|mochila|bolsa"
        r"|bufanda|toalla|guantes?|gorro|camisa|libro|piedra) (?:debajo|abajo|encima)(?: del? \w+)?"
    ),
}
