"""German words of what is told of somebody by a name."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Who a name is read as.
    "names.he": "er",
    "names.asks": r"ist|sind",
    # What may begin a message in the place of a name.
    "names.no_name": r"niemand|keiner|es|das|was|wer|wo|wie|wann|warum|wieso|alles|nichts",
    "names.does": r"ist|hat|kann|liegt|blutet|kommt|ging|war",
}
