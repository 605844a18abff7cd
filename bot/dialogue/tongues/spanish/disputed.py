"""Spanish words by which somebody disputes settings of the bot, or holds a sum against them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "disputed.disputes": (
        r"por que|en vez de|en lugar de|segun mis (?:cuentas|calculos)|saltas|justific\w*"
    ),
    # Who has reckoned themselves.
    "disputed.own_sum": r"segun mis (?:cuentas|calculos)",
    # Between settings and those that they come to.
    "disputed.makes": r"da|dan|es|son|equivale a|equivale|serian|seria|pasa a|queda en",
}
