"""German words by which somebody asks whether a camera that moved was to blame."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "shake_asked.asks": (
        r"(?:lag|liegt|kam|kommt) (?:es|das) (?:also |dann |wohl |doch )?(?:an|am|vom|von)"
        r"|(?:war|wars|ist) (?:es|das|s)?(?: also| dann| wohl| doch)?"
    ),
    # What moves a camera.
    "shake_asked.moves": (
        r"(?:das |der |die |dem |den |ein )?(?:wackeln\w*|wackler|gewackel|verwackel\w*"
        r"|stativ|mittelsaule|kies|erschutterung\w*|bewegung)"
    ),
    # A frame that came out better since.
    "shake_asked.sharper": r"scharfer|jetzt scharf|besser jetzt",
}
