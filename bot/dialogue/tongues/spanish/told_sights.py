"""Spanish words of what is seen in single frames, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "told_sights.but": r"pero|mientras|sino",
    "told_sights.and": r"y",
    "told_sights.soft": r"bland[oa]s?|borros[oa]s?|desenfocad\w+|movid[oa]s?",
    # What makes soft things the drops on a glass.
    "told_sights.discs": r"manchas|discos",
    "told_sights.drops": r"gotas?",
    # Drops of the fall itself, that a short time holds.
    "told_sights.in_air": r"(?:en|por) el aire|colgand\w+|congelad\w+|suspendid\w+",
    "told_sights.leaves": r"hojas|ramas|helechos?",
    "told_sights.moved": r"barrid[oa]s|movid[oa]s",
    # "A white triangle at the top".
    "told_sights.white": r"blanc[oa]s?|clar[oa]s?",
    "told_sights.gap": r"triangulo|esquina|hueco|franja",
    "told_sights.gap_of_sky": (
        r"triangulo of (?:sky|light|white)"
        r"|(?:triangulo|esquina|hueco|franja|trozo) (?:white|blanc\w+|clar\w+|de cielo)"
    ),
    # "Nothing blinked".
    "told_sights.nothing": r"nada",
    "told_sights.blinks": r"parpade\w*",
    "told_sights.holds": NOTHING,
    # "The threads are there".
    "told_sights.threads": r"hilos",
    "told_sights.seen": r"estan|ahi",
    "told_sights.good": r"bonit[oa]|precios[oa]|perfect[oa]|genial",
    "told_sights.best": (
        r"favorit[oa]|prefier\w*|(?:la|lo|el|the) mejor|(?:mas me|me) (?:gusta|like) mas"
        r"|(?:mas|more) me (?:gusta|like)|me encantan?"
    ),
    # "I like … most".
    "told_sights.like": NOTHING,
    "told_sights.most": r"mas",
    # "Lovely evening", "good light": praise, but of no frame.
    "told_sights.of_else": r"tarde|luz|dia",
    "told_sights.no": NOTHING,
    "told_sights.metered": r"fotometro|exposimetro",
    "told_sights.all": r"tod[oa]s|cada|amb[oa]s",
    "told_sights.hard": r"congelad[oa]s?",
    "told_sights.clipped": r"quemad[oa]s?|parpade\w+",
    "told_sights.sparks": r"chispas?|puntos?",
    # A part with none of these only names frames, for the next part to speak of.
    "told_sights.says": r"son|estan?|tienen?|parec\w+",
    # White of the water that has no shape.
    "told_sights.white_blobs": (
        r"manchas? blancas?|zonas? blancas?|white (?:patches|blobs|areas)|(?:patches|areas) white"
    ),
}
