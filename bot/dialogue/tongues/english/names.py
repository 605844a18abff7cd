"""English words of what is told of somebody by a name."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Who a name is read as.
    "names.he": "he",
    "names.asks": r"is|are|was|does|did|can|could|may",
    # What may begin a message in the place of a name.
    "names.no_name": (
        r"no|nobody|none|it|that|this|there|what|who|where|which|how|why|when|everything|something"
        r"|nothing|all"
    ),
    "names.does": (
        r"is|has|got|fell|slipped|went|slid|jumped|broke|hurt|collapsed|disappeared|cant|can't|does"
        r"|isn't|isnt|was"
    ),
}
