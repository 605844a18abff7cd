"""Spanish words by which a phone is the camera, and not only carried."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "phone_used.as_camera": (
        r"(?:con|s[oó]lo|uso|usando|cambio|ahora|en vez)\b[^,;.!?]{0,24}\b(?:m[oó]vil|celular"
        r"|tel[eé]fono|celu|cel)\b|(?:m[oó]vil|celular) (?:solo|ahora|en vez|en el trípode)\b"
        r"|^\W*(?:el |mi )?(?:m[oó]vil|celular)(?= ?(?:[,;.!]|$))"
    ),
}
