"""Spanish words that choose a lens of the bag by its number, where the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What stands before the number of a lens that is taken.
    "lens_named.taken": (
        r"(?:voy con|vamos con|uso|usare|usando|pongo|puse|me quedo con|sigo con|tomo|con|en)"
    ),
    # What stands before the lens that is on from now.
    "lens_named.put_on": (
        r"(?:(?:cambio|cambie|cambiando|vuelvo|volvi|paso|pase) (?:al?|to)|otra vez (?:con|el)|puse"
        r"|pongo|de nuevo (?:con|el))"
    ),
    "lens_named.the": r"el|mi",
    # What stands behind the number of a lens that is enough.
    "lens_named.enough": r"(?:basta|alcanza|sirve|va bien|es suficiente|esta puesto|puesto)",
    "lens_named.not": r"(?:no|nunca|sin|si|en vez de|en lugar de)",
}
