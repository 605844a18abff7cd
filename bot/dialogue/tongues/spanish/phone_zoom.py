"""Spanish words: the camera of a phone that is used, by its button."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "phone_zoom.used": (r"con|en|a|uso|usando|puse|estoy en|esta en"),
    "phone_zoom.the": r"el|la|mi|lente|camara",
    "phone_zoom.not": r"no|sin|nunca|en vez",
}
