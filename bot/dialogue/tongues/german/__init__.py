"""German words that readers look for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.german.access import ACCESS
from bot.dialogue.tongues.german.all_well import ALL_WELL
from bot.dialogue.tongues.german.arrival import ARRIVAL
from bot.dialogue.tongues.german.asides import ASIDES
from bot.dialogue.tongues.german.asked_first import ASKED_FIRST
from bot.dialogue.tongues.german.asking import ASKING
from bot.dialogue.tongues.german.at_home import AT_HOME
from bot.dialogue.tongues.german.away import AWAY
from bot.dialogue.tongues.german.beside import BESIDE
from bot.dialogue.tongues.german.bright_gone import BRIGHT_GONE
from bot.dialogue.tongues.german.cold_hands import COLD_HANDS
from bot.dialogue.tongues.german.cold_numbers import COLD_NUMBERS
from bot.dialogue.tongues.german.command_words import COMMAND_WORDS
from bot.dialogue.tongues.german.cry import CRY
from bot.dialogue.tongues.german.frame_list import FRAME_LIST
from bot.dialogue.tongues.german.frame_named import FRAME_NAMED
from bot.dialogue.tongues.german.frame_owner import FRAME_OWNER
from bot.dialogue.tongues.german.good_news import GOOD_NEWS
from bot.dialogue.tongues.german.group import GROUP
from bot.dialogue.tongues.german.hands import HANDS
from bot.dialogue.tongues.german.left_open import LEFT_OPEN
from bot.dialogue.tongues.german.look_wished import LOOK_WISHED
from bot.dialogue.tongues.german.marks import MARKS
from bot.dialogue.tongues.german.moves import MOVES
from bot.dialogue.tongues.german.murky import MURKY
from bot.dialogue.tongues.german.names import NAMES
from bot.dialogue.tongues.german.ordinals import ORDINALS
from bot.dialogue.tongues.german.other_edges import OTHER_EDGES
from bot.dialogue.tongues.german.party import PARTY
from bot.dialogue.tongues.german.permission import PERMISSION
from bot.dialogue.tongues.german.replies import REPLIES
from bot.dialogue.tongues.german.review_words import REVIEW_WORDS
from bot.dialogue.tongues.german.roster import ROSTER
from bot.dialogue.tongues.german.spoken_of import SPOKEN_OF
from bot.dialogue.tongues.german.standing import STANDING
from bot.dialogue.tongues.german.thunder import THUNDER
from bot.dialogue.tongues.german.told_facts import TOLD_FACTS
from bot.dialogue.tongues.german.told_sights import TOLD_SIGHTS
from bot.dialogue.tongues.german.trials import TRIALS
from bot.dialogue.tongues.german.visit_words import VISIT_WORDS
from bot.dialogue.tongues.german.weather import WEATHER
from bot.dialogue.tongues.german.whereabouts import WHEREABOUTS
from bot.dialogue.tongues.german.whose import WHOSE
from bot.dialogue.tongues.german.wishers import WISHERS

GERMAN: Final[Mapping[str, str]] = {
    **ACCESS,
    **ALL_WELL,
    **ARRIVAL,
    **ASIDES,
    **ASKED_FIRST,
    **ASKING,
    **AT_HOME,
    **AWAY,
    **BESIDE,
    **BRIGHT_GONE,
    **COLD_HANDS,
    **COLD_NUMBERS,
    **COMMAND_WORDS,
    **CRY,
    **FRAME_LIST,
    **FRAME_NAMED,
    **FRAME_OWNER,
    **GOOD_NEWS,
    **GROUP,
    **HANDS,
    **LEFT_OPEN,
    **LOOK_WISHED,
    **MARKS,
    **MOVES,
    **MURKY,
    **NAMES,
    **ORDINALS,
    **OTHER_EDGES,
    **PARTY,
    **PERMISSION,
    **REPLIES,
    **REVIEW_WORDS,
    **ROSTER,
    **SPOKEN_OF,
    **STANDING,
    **THUNDER,
    **TOLD_FACTS,
    **TOLD_SIGHTS,
    **TRIALS,
    **VISIT_WORDS,
    **WEATHER,
    **WHEREABOUTS,
    **WHOSE,
    **WISHERS,
}
