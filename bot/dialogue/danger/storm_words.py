"""Whether a message names a thunderstorm, or tells that one goes on."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.folding import folded

_NAMES: Final = (
    r"thunder\w*|lightning|storms?|stormy|\w*gewitter\w*|blitz und donner|unwetter\w*"
    r"|tormentas?|truenos?|tronadas?"
)
_NAMED: Final = re.compile(rf"\b(?:{_NAMES})\b")
#: A flash may be a camera's, and a rumble the water's, while nobody sits in shelter.
_GOES_ON: Final = re.compile(
    rf"\b(?:{_NAMES}|rumbl\w*|donner\w*|grummel\w*|grollt?|blitz\w*|truena\w*|relampago\w*|rayos?)\b"
)


def names_storm(text: str) -> bool:
    """Whether a message names a thunderstorm, as people write of a forecast.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _NAMED.search(folded(text)) is not None


def tells_of_storm(text: str) -> bool:
    """Whether a message of people in shelter tells of the storm that sent them there.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _GOES_ON.search(folded(text)) is not None
