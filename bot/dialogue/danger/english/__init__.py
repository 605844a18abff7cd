"""English wordings of danger, as cues."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.english.against import AGAINST
from bot.dialogue.danger.english.body import BODY
from bot.dialogue.danger.english.dark import DARK
from bot.dialogue.danger.english.everyday import EVERYDAY
from bot.dialogue.danger.english.illness import ILLNESS
from bot.dialogue.danger.english.overdue import OVERDUE
from bot.dialogue.danger.english.people import PEOPLE
from bot.dialogue.danger.english.places import PLACES
from bot.dialogue.danger.english.storm import STORM
from bot.dialogue.danger.english.water import WATER
from bot.dialogue.danger.lexicon import Lexicon
from bot.dialogue.danger.spelling import sentences

ENGLISH: Final = Lexicon(
    common="""
        the is i my and to of at we it you are was this that they have not with for she his her from
        what how your our but""",
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
    spelling=lambda text: " . ".join(sentences(text)),
)
