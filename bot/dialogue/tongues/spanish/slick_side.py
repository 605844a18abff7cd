"""Spanish words of slick ground beside who writes, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_LADO: Final = r"(?:a|hacia) (?:la|mi) (?:izquierda|derecha)|(?:a|al|hacia el|de) (?:un )?lado"

WORDS: Final[Mapping[str, str]] = {
    # Where a step could go.
    "slick_side.step": (
        r"(?:(?:me|si) )*(?:puedo|podria|podemos|podriamos)(?: (?:solo|nomas|aun|todavia))*"
        r" (?:ir|irme|mover|moverme|hacerme|correrme|movernos)(?: (?:un|poco|poquito|mas|paso))*"
        rf" (?:{_LADO})|{_LADO}"
    ),
    "slick_side.slick": (
        r"algas?|resbalos[oa]s?|resbaladiz[oa]s?|lamos[oa]s?|resbala"
        r"|(?:suelo|piedras?|rocas?|piso) (?:mojad[oa]s?|humed[oa]s?|con musgo)"
        r"|(?:suelo|piedras?|rocas?|piso|se pone|esta)(?: (?:esta|estan|se pone|muy|todo|ya|mas))*"
        r" (?:mojad[oa]s?|humed[oa]s?)"
    ),
    "slick_side.ground": """
        pero y solo nomas ahi alli alla hay esta estan se pone el la los las un una poco muy todo
        toda ya mas en de suelo piso piedra piedras roca rocas alga algas musgo resbaloso resbalosa
        resbalosas resbaladizo resbaladiza resbaladizas lamosas resbala mojado mojada mojadas humedo
        humeda humedas con lleno llena llenas si como dije tambien""",
}
