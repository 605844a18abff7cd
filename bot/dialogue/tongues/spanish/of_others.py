"""Spanish words of scenes and frames that are somebody else's, told to ask about them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_LEARNER: Final = r"alumn[oa]s?|estudiantes?|participantes?|principiantes?|aprendiz\w*"

WORDS: Final[Mapping[str, str]] = {
    # Who is taught, and what comes of it.
    "of_others.learner": rf"{_LEARNER}|clase|curso|taller|un[oa] de (?:ell[oa]s|mis \w+|l[oa]s)",
    # One of them, as the one whose scene is told.
    "of_others.one": (
        rf"(?:(?:un|una|el|la|mi|otr[oa]) )?(?:{_LEARNER})|un[oa] de (?:ell[oa]s|mis \w+)"
    ),
    "of_others.alone": (
        r"(?:un|una|el|la|mi|otr[oa]) (?:alumn[oa]|estudiante|participante|principiante)"
        r"|un[oa] de (?:ell[oa]s|mis \w+)"
    ),
    "of_others.they": r"ella|él",
    "of_others.their": r"sus?",
    # A further case behind the last one.
    "of_others.next": r"(?:y |ahora )*(?:otr[oa](?: (?:foto|caso|una))?|other|la siguiente)",
    # Asks for the cause of what went wrong.
    "of_others.cause": (
        r"qu[eé] (?:fall[oó]|pas[oó]|sali[oó] mal|ha fallado)|por ?qu[eé]|causa|motivo"
        r"|(?:sobre|sub)expuest[oa]|c[oó]mo (?:lo )?(?:sabe|distingue|nota)"
    ),
    # "Sobreexpuesta o demasiado tiempo": each of two causes of white without lines.
    "of_others.blown": r"sobreexpuest[oa]|quemad[oa]|too bright|reventad[oa]",
    "of_others.long": r"demasiado (?:tiempo|larg[oa])|time too long|movid[oa]",
}
