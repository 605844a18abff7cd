"""Every text in English, the language of the source, by its key."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

from bot.dialogue.texts.access import ACCESS
from bot.dialogue.texts.adjusting import ADJUSTING
from bot.dialogue.texts.amounts import AMOUNTS
from bot.dialogue.texts.answers import ANSWERS
from bot.dialogue.texts.around import AROUND
from bot.dialogue.texts.arrival import ARRIVAL
from bot.dialogue.texts.asked import ASKED
from bot.dialogue.texts.base_settings import BASE_SETTINGS
from bot.dialogue.texts.everywhere import EVERYWHERE
from bot.dialogue.texts.explaining import EXPLAINING
from bot.dialogue.texts.frame_texts import FRAMES
from bot.dialogue.texts.framing import FRAMING
from bot.dialogue.texts.handy import HANDY
from bot.dialogue.texts.home_texts import HOME
from bot.dialogue.texts.keeping import KEEPING
from bot.dialogue.texts.late_texts import LATE
from bot.dialogue.texts.levers import LEVERS
from bot.dialogue.texts.nature import NATURE
from bot.dialogue.texts.numbers_asked import NUMBERS_ASKED
from bot.dialogue.texts.packing import PACKING
from bot.dialogue.texts.privacy import PRIVACY
from bot.dialogue.texts.reasons import REASONS
from bot.dialogue.texts.safety import SAFETY
from bot.dialogue.texts.seen import SEEN
from bot.dialogue.texts.terms import TERMS
from bot.dialogue.texts.together import TOGETHER
from bot.dialogue.texts.visits import VISITS

#: All texts by their keys; `{name}` is filled in, code spans stand in backticks.
IN_ENGLISH: Final[Mapping[str, str]] = MappingProxyType(
    {
        **ARRIVAL,
        **FRAMING,
        **BASE_SETTINGS,
        **ADJUSTING,
        **KEEPING,
        **EXPLAINING,
        **LEVERS,
        **ACCESS,
        **EVERYWHERE,
        **AMOUNTS,
        **ANSWERS,
        **AROUND,
        **ASKED,
        **FRAMES,
        **HANDY,
        **HOME,
        **LATE,
        **NATURE,
        **NUMBERS_ASKED,
        **PACKING,
        **PRIVACY,
        **REASONS,
        **SAFETY,
        **SEEN,
        **TERMS,
        **TOGETHER,
        **VISITS,
    }
)
