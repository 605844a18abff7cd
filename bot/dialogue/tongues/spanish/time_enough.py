"""Spanish words by which somebody asks whether another time would do."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # In front of the time, as the gloss leaves them.
    "time_enough.in_front": (
        r"(?:basta|alcanza|bastar[ií]a|vale|llega|sirve|servir[ií]a)(?: con| with)?"
        r"|can usar|(?:puedo|podr[ií]a|can i) (?:usar|poner|probar|ir a|use)|y con|y si uso"
    ),
    # Behind it.
    "time_enough.behind": r"(?:no )?(?:basta|alcanza|sirve|vale|bastar[ií]a|es suficiente)",
}
