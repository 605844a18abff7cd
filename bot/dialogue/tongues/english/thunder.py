"""English words: a storm by its name, a flash and its thunder, and what is only supposed."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "thunder.storm": r"thunder\w*|lightning|storms?|stormy",
    "thunder.goes_on": r"rumbl\w*",
    "thunder.flash": r"flash|lightning|bolt",
    "thunder.bang": r"thunder\w*|bang|boom|rumble",
    "thunder.seconds": r"s|secs?|seconds?",
    "thunder.and": r"and|so|what|but",
    "thunder.if": r"if|when",
    "thunder.supposed": (
        r"whenever|suppose|yesterday|last (?:\w+ )?(?:night|week|month|year|time|summer)"
        r"|generally|in general"
    ),
}
