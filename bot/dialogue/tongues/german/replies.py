"""German words of replies to a question of danger, where any language may stand beside another."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "This is no joke", "nicht nur ein Test".
    "replies.no": r"kein|keine|keinen|nicht",
    "replies.only_a": r"nur|ein",
    "replies.joke": r"scherz|spass|witz|fehlalarm",
    # What calms without telling anything.
    "replies.comfort": r"keine sorge|kein (?:problem|stress)",
    # Who speaks of all of them, wherever they are.
    "replies.everybody": r"alle|beide|zusammen|vollzahlig",
    # What stands before an answer without telling anything.
    "replies.lead": r"gut|also|na",
    # What a "no" may deny in the same breath: "no, we're not", "no, it was only the light".
    "replies.with_no": r"nicht|nur",
    # What answers a question alone, or before a comma.
    "replies.bare": r"ja|nein|nö|nee",
    # Where nobody is.
    "replies.is": r"ist|sind",
    "replies.out_there": r"unten|drin|draussen",
}
