"""German words by which a phone is the camera, and not only carried."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "phone_used.as_camera": (
        r"(?:mit|nur|bloß|bloss|statt\w*|jetzt|nehm\w*|fotografier\w*|knips\w*|wechsl\w*)\b"
        r"[^,;.!?]{0,24}\b(?:handy|smartphone|telefon|natel)\b"
        r"|(?:handy|smartphone)(?:kamera|fotos?|bild\w*)\b"
        r"|(?:handy|smartphone) (?:statt|jetzt|auf dem (?:\w+)?stativ)\b"
        r"|^\W*(?:das |mein )?(?:handy|smartphone)(?= ?(?:[,;.!]|$))"
    ),
}
