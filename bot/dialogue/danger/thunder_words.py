"""Words of storms, flashes and thunder, of all languages together."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.tongues import in_any, whole_words

_FLASH, _BANG = rf"\b{in_any('thunder.flash')}\b", rf"\b{in_any('thunder.bang')}\b"
NAMED: Final = whole_words("thunder.storm")
#: A flash may be a camera's, and a rumble the water's, while nobody sits in shelter.
GOES_ON: Final = whole_words("thunder.storm", "thunder.goes_on")
FLASH_AND_BANG: Final = re.compile(rf"{_FLASH}.*{_BANG}|{_BANG}.*{_FLASH}")
FLASH_OR_BANG: Final = re.compile(rf"{_FLASH}|{_BANG}")
#: A number of seconds; the number is the first group.
SECONDS: Final = re.compile(rf"(?<![\d/])(\d{{1,3}}(?:[.,]\d)?) ?{in_any('thunder.seconds')}\b")
#: No storm of now: supposed, or of another day.
SUPPOSED: Final = re.compile(
    rf"^(?:{in_any('thunder.and')} )*{in_any('thunder.if')}\b|\b{in_any('thunder.supposed')}\b"
)
