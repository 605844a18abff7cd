"""English wordings: a storm by its name, a flash and its thunder, and what is only supposed."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

THUNDER: Final[Mapping[str, str]] = {
    "storm": r"thunder\w*|lightning|storms?|stormy",
    "goes_on": r"rumbl\w*",
    "flash": r"flash|lightning|bolt",
    "bang": r"thunder\w*|bang|boom|rumble",
    "seconds": r"s|secs?|seconds?",
    "and": r"and|so|what|but",
    "if": r"if|when",
    "supposed": (
        r"whenever|suppose|yesterday|last (?:\w+ )?(?:night|week|month|year|time|summer)"
        r"|generally|in general"
    ),
}
