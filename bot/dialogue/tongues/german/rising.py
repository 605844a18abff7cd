"""German words: water that is browner or higher than it was."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "rising.water": r"wasser|bach|bachl|fluss|wildbach|pegel|wasserstand|gumpe|becken",
    "rising.more": r"brauner|truber|schlammiger|hoher|tiefer|dreckiger",
    "rising.than": (
        r"(?:als|wie) (?:vorhin|eben|vorher|zuvor|fruher|am anfang|anfangs|heute? fruh"
        r"|bei (?:meiner|unserer|der) ankunft"
        r"|(?:ich|wir) (?:hier )?(?:kam\w*|ankam\w*|angekommen|gekommen|hergekommen)"
        r"|vor (?:\w+ )?\w+ (?:minuten?|stunden?|min))"
    ),
    # What takes it back, or only asks or supposes it.
    "rising.denied": (
        r"nicht|nich|nit|net|ned|nie|kaum|weder|kein\w*|wenn|falls|ob|ist (?:das|der|die|es)"
    ),
    "rising.picture": r"display|histogramm|polfilter|pol|kamera|objektiv|bildschirm|belichtung",
}
