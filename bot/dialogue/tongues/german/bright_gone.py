"""German words: bright things at the frame's edge that are out of it now."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_HELL: Final = (
    r"(?:(?:hell|grell|glanzend|blendend)\w* (?:stein\w*|fels\w*|brocken|fleck\w*|stelle\w*|blatt"
    r"|blatter|ast|aste|ding\w*)|(?:hell|weiss)\w* (?:fleck\w*|stelle\w*|schaum\w*|punkte?))"
)
_WO: Final = r"(?:am rand|an der seite|links|rechts|unten|oben|in der ecke|jetzt|nun|alle|auch)"
_WEG: Final = (
    r"(?:weg|draussen|raus|verschwunden|(?:raus|weg)geschnitten|nicht mehr (?:im bild|drin|da))"
)

WORDS: Final[Mapping[str, str]] = {
    "bright_gone.told": (
        r"(?:(?:so|ok|okay|jetzt|nun|und|gut) )*(?:(?:sind|ist) )?(?:die|der|das|den|alle|meine)"
        rf" {_HELL}(?: (?:ist|sind|hab ich|habe ich|{_WO}))* {_WEG}"
        r"(?: (?:jetzt|nun|aus dem bild))*"
    ),
}
