"""Spanish wordings of danger, as cues; without accents, as `folding` writes them."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.lexicon import Lexicon
from bot.dialogue.danger.spanish.against import AGAINST
from bot.dialogue.danger.spanish.body import BODY
from bot.dialogue.danger.spanish.dark import DARK
from bot.dialogue.danger.spanish.everyday import EVERYDAY
from bot.dialogue.danger.spanish.illness import ILLNESS
from bot.dialogue.danger.spanish.overdue import OVERDUE
from bot.dialogue.danger.spanish.people import PEOPLE
from bot.dialogue.danger.spanish.places import PLACES
from bot.dialogue.danger.spanish.storm import STORM
from bot.dialogue.danger.spanish.water import WATER
from bot.dialogue.folding import folded

SPANISH: Final = Lexicon(
    common="""
        el la los las que de en un una por con para se lo del al y es esta estoy estamos hay muy mas
        como pero ya le nos mi donde cuando desde sin su sus ha he yo si porque hasta""",
    wordings={
        **PEOPLE,
        **WATER,
        **BODY,
        **ILLNESS,
        **STORM,
        **OVERDUE,
        **DARK,
        **PLACES,
        **AGAINST,
        **EVERYDAY,
    },
    spelling=folded,
)
