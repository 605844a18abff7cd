"""German words: a storm by its name, a flash and its thunder, and what is only supposed."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "thunder.storm": r"\w*gewitter\w*|blitz und donner|unwetter\w*",
    "thunder.goes_on": r"donner\w*|grummel\w*|grollt?|blitz\w*",
    "thunder.flash": r"blitz\w*",
    "thunder.bang": r"donner\w*|knall\w*",
    "thunder.seconds": r"sek\w*",
    "thunder.and": r"und|aber",
    "thunder.if": r"wenn|falls",
    "thunder.supposed": r"gestern|letzte\w*|angenommen|allgemein",
}
