"""German wordings of danger, as cues; without umlauts, as `folding` writes them."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.german.against import AGAINST
from bot.dialogue.danger.german.body import BODY
from bot.dialogue.danger.german.dark import DARK
from bot.dialogue.danger.german.everyday import EVERYDAY
from bot.dialogue.danger.german.illness import ILLNESS
from bot.dialogue.danger.german.overdue import OVERDUE
from bot.dialogue.danger.german.people import PEOPLE
from bot.dialogue.danger.german.places import PLACES
from bot.dialogue.danger.german.storm import STORM
from bot.dialogue.danger.german.water import WATER
from bot.dialogue.danger.lexicon import Lexicon
from bot.dialogue.folding import folded

GERMAN: Final = Lexicon(
    common="""
        der das und ist nicht ich wir ein eine einen mit auf den dem zu sich von wie wo noch schon
        hab habe haben sind bin im ins am auch aber oder kann mein meine mir mich uns er ihn ihm
        grad nur jetzt beim vom zum zur bei da wenn unser unsere kein keine keiner hat wird
        sie es""",
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
