"""German words by which somebody disputes settings of the bot, or holds a sum against them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "disputed.disputes": (
        r"warum|wieso|weshalb|statt|anstatt|anstelle|nach meiner rechnung|begrund\w*"
        r"|springst|springen|wie kommst|wie kommen"
    ),
    # Who has reckoned themselves.
    "disputed.own_sum": r"nach meiner rechnung|nach meinen zahlen",
    # Between settings and those that they come to.
    "disputed.makes": r"ergibt|ergeben|macht|wird|werden|ist|sind|entspricht|waren|ware|gibt",
}
