"""German wordings: a storm by its name, a flash and its thunder, and what is only supposed."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

THUNDER: Final[Mapping[str, str]] = {
    "storm": r"\w*gewitter\w*|blitz und donner|unwetter\w*",
    "goes_on": r"donner\w*|grummel\w*|grollt?|blitz\w*",
    "flash": r"blitz\w*",
    "bang": r"donner\w*|knall\w*",
    "seconds": r"sek\w*",
    "and": r"und|aber",
    "if": r"wenn|falls",
    "supposed": r"gestern|letzte\w*|angenommen|allgemein",
}
