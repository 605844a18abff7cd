"""Words of storms, flashes and thunder, of all languages together."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.all_languages import in_any, whole_words
from bot.dialogue.danger.english.thunder import THUNDER as ENGLISH
from bot.dialogue.danger.german.thunder import THUNDER as GERMAN
from bot.dialogue.danger.spanish.thunder import THUNDER as SPANISH

_LANGUAGES: Final = (ENGLISH, GERMAN, SPANISH)


def _of_all(name: str) -> str:
    return in_any(_LANGUAGES, name)


_FLASH, _BANG = rf"\b(?:{_of_all('flash')})\b", rf"\b(?:{_of_all('bang')})\b"
NAMED: Final = whole_words(_of_all("storm"))
#: A flash may be a camera's, and a rumble the water's, while nobody sits in shelter.
GOES_ON: Final = whole_words(_of_all("storm"), _of_all("goes_on"))
FLASH_AND_BANG: Final = re.compile(rf"{_FLASH}.*{_BANG}|{_BANG}.*{_FLASH}")
FLASH_OR_BANG: Final = re.compile(rf"{_FLASH}|{_BANG}")
#: A number of seconds; the number is the first group.
SECONDS: Final = re.compile(rf"(?<![\d/])(\d{{1,3}}(?:[.,]\d)?) ?(?:{_of_all('seconds')})\b")
#: No storm of now: supposed, or of another day.
SUPPOSED: Final = re.compile(
    rf"^(?:(?:{_of_all('and')}) )*(?:{_of_all('if')})\b|\b(?:{_of_all('supposed')})\b"
)
