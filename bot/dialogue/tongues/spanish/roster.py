"""Spanish words of who leads and asks how far the others are."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_ALL: Final = r"(?:tod[oa]s|los demás|las demás|los alumnos|las alumnas|el grupo|el resto)"

WORDS: Final[Mapping[str, str]] = {
    "roster.friend": r"mi amigo",
    "roster.before": r"(?:ok|y|a ver|dime|por favor)[ ,]+",
    "roster.after": r" (?:ahora|por favor|todavía|aún)",
    "roster.asked": (
        rf"qui[eé]n(?:es)? (?:est[aá]n?|sigue|se ha quedado) (?:atascad[oa]s?|parad[oa]s?"
        rf"|esperando|bloquead[oa]s?)|qui[eé]n(?:es)? esperan?|qui[eé]n(?:es)? (?:necesitan?"
        rf"|me necesitan?)(?: ayuda)?|qui[eé]n(?:es)? (?:todavía |aún )?no (?:ha|han"
        rf"|tienen?) (?:empezado|(?:(?:guardado|hecho|enviado|compartido) )?(?:una "
        rf"|ninguna )?(?:foto|toma)s?)|d[oó]nde est[aá]n? {_ALL}|c[oó]mo (?:van?|est[aá]n?) {_ALL}"
        rf"|por d[oó]nde van?(?: {_ALL})?|resumen del grupo"
    ),
}
