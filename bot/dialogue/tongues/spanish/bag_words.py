"""Spanish words of what goes into the bag, and of what may stay at home."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "Can I leave the 14 at home?"
    "bag_words.leave": (
        r"(?:dejar|dejo|dejamos|se queda|queda) (?:\S+ ){0,5}?en (?:casa|el coche)"
        r"|(?:puedo|podría|debería) (?:dejar|prescindir|ahorrarme)|prescindir"
    ),
    # "Do I need the 10 stop?", "is the 70-200 worth carrying?"
    "bag_words.bring": (
        r"(?:necesito|necesitamos|hace falta|hacen falta|vale la pena|merece la pena)"
        r"|(?:debo|debería|tengo que|conviene) (?:llevar|traer|cargar)|(?:me )?basta(?: con)?"
    ),
    "bag_words.which_filters": (
        r"qué (?:de mis )?filtros?\b[^?.;!]*\b(?:llevo|llevar|llevamos|meto|traigo|necesito)"
        r"|filtros?\b[^?.;!]*\bcuáles?\b[^?.;!]*\b(?:llevo|llevar|meto|traigo|necesito)"
    ),
    "bag_words.list": (
        r"lista (?:de (?:equipaje|cosas|material)|para la mochila)|qué (?:más )?(?:meto|llevo"
        r"|pongo|hay que llevar|debo llevar|va)\b(?! en la cámara)"
    ),
    # What speaks of packing, before any visit is planned.
    "bag_words.packs": r"llev\w+|met\w+|traig\w+|mochila|en casa",
    "bag_words.the": r"el|la|mi",
    "bag_words.stop": r"pasos?|stops?|ev|diafragmas?",
    # What a permit may be needed for.
    "bag_words.tripod": r"trípodes?|tripodes?",
    "bag_words.selling": r"vend\w+|ventas?|copias|comercial\w*|clientes?",
    "bag_words.group": r"talleres|taller|cursos?|grupo|alumnos",
    "bag_words.drone": r"drones?|dron",
    # Who names what they own.
    "bag_words.owns": r"(?:yo )?(?:tengo|llevo|traigo)",
}
