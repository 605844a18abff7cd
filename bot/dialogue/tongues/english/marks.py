"""English words by which the language of a message is known; own lists."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    # Small words and greetings that mark the language: none is a word of another one here.
    "marks.small": """
        the and with what how my is are from have i'm it's please which should does""",
    # Words of the trade, and of dialects, that no other language here has.
    "marks.trade": NOTHING,
    # Greetings are enough alone.
    "marks.greetings": NOTHING,
}
