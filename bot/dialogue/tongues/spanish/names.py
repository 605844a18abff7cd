"""Spanish words of what is told of somebody by a name."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Who a name is read as.
    "names.he": "el ella",
    "names.asks": r"esta|está",
    # What may begin a message in the place of a name.
    "names.no_name": r"nadie|nada|todo|eso|esto|que|quien|como|cuando|donde",
    "names.does": r"se|está|esta|no|ha|cayó|cayo|tiene",
}
