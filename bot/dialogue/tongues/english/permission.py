"""English words: who asks for, or tells of, a place where nobody stands."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

_BRINK: Final = r"(?:rim|edge|lip|brink|ledge|drop ?off|cliff ?top|crest)"
_OK: Final = r"(?:ok|okay|safe|allowed|alright|all right|fine|permitted|off limits)"
_FRAME: Final = r"(?! (?:of (?:the|my|a) (?:frame|picture|photo|image|shot|path|trail|pool|water)))"
_SETTINGS_THERE: Final = (
    r"(?:settings?|lens|shutter|exposure|iso|aperture|shoot|shooting|shots?|photos?|pictures?"
    r"|photograph|f \d+|view)(?: \w+)? (?:from|on|at) (?:the |that )?(?:very |actual )?"
    rf"(?:lip|brink|precipice|edge of the (?:fall|falls|drop|cliff))\b{_FRAME}"
)
_KIN: Final = (
    r"(?:kids?|child|children|son|daughter|friends?|wife|husband|brother|sister|mum|mom|dad|partner"
    r"|he|she|they|somebody|someone|people)"
)
_STANDS: Final = (
    rf"{_KIN} (?:is|are|hes|shes|stands?|sits?|plays?|walks?|runs?|went|goes)(?: (?!not\b"
    rf"|never\b)\w+)? (?:near|at|on|by|close to|over|to) the (?:very )?(?:edge|lip|brink|drop ?off"
    rf"|cliff edge)\b{_FRAME}"
)

WORDS: Final[Mapping[str, str]] = {
    # Talk of the picture: there an edge is an edge of the frame, or something to focus on.
    "permission.picture": (
        r"frame|picture|photo|focus\w*|crop\w*|sharp|exposed?|meter(?:s|ed|ing)?|in the shot"
    ),
    # Beside what the wordings of danger know.
    "permission.to_lip": (
        rf"(?:is|are) (?:the |that |this )?{_BRINK}(?: of the \w+)? {_OK}"
        r"(?: to (?:stand|shoot|sit|go|walk)(?: \w+)?)?"
    ),
    "permission.into_water": NOTHING,  # the wordings of danger know it
    # Somebody who is there.
    "permission.stands": _STANDS,
    "permission.settings": _SETTINGS_THERE,
}
