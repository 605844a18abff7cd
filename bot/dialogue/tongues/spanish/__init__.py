"""Spanish words that readers look for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.spanish.access import ACCESS
from bot.dialogue.tongues.spanish.all_well import ALL_WELL
from bot.dialogue.tongues.spanish.arrival import ARRIVAL
from bot.dialogue.tongues.spanish.asides import ASIDES
from bot.dialogue.tongues.spanish.asked_first import ASKED_FIRST
from bot.dialogue.tongues.spanish.asking import ASKING
from bot.dialogue.tongues.spanish.at_home import AT_HOME
from bot.dialogue.tongues.spanish.away import AWAY
from bot.dialogue.tongues.spanish.beside import BESIDE
from bot.dialogue.tongues.spanish.bright_gone import BRIGHT_GONE
from bot.dialogue.tongues.spanish.cold_hands import COLD_HANDS
from bot.dialogue.tongues.spanish.cold_numbers import COLD_NUMBERS
from bot.dialogue.tongues.spanish.command_words import COMMAND_WORDS
from bot.dialogue.tongues.spanish.cry import CRY
from bot.dialogue.tongues.spanish.frame_list import FRAME_LIST
from bot.dialogue.tongues.spanish.frame_named import FRAME_NAMED
from bot.dialogue.tongues.spanish.frame_owner import FRAME_OWNER
from bot.dialogue.tongues.spanish.good_news import GOOD_NEWS
from bot.dialogue.tongues.spanish.group import GROUP
from bot.dialogue.tongues.spanish.hands import HANDS
from bot.dialogue.tongues.spanish.left_open import LEFT_OPEN
from bot.dialogue.tongues.spanish.look_wished import LOOK_WISHED
from bot.dialogue.tongues.spanish.marks import MARKS
from bot.dialogue.tongues.spanish.moves import MOVES
from bot.dialogue.tongues.spanish.murky import MURKY
from bot.dialogue.tongues.spanish.names import NAMES
from bot.dialogue.tongues.spanish.ordinals import ORDINALS
from bot.dialogue.tongues.spanish.other_edges import OTHER_EDGES
from bot.dialogue.tongues.spanish.party import PARTY
from bot.dialogue.tongues.spanish.permission import PERMISSION
from bot.dialogue.tongues.spanish.replies import REPLIES
from bot.dialogue.tongues.spanish.review_words import REVIEW_WORDS
from bot.dialogue.tongues.spanish.roster import ROSTER
from bot.dialogue.tongues.spanish.spoken_of import SPOKEN_OF
from bot.dialogue.tongues.spanish.standing import STANDING
from bot.dialogue.tongues.spanish.thunder import THUNDER
from bot.dialogue.tongues.spanish.told_facts import TOLD_FACTS
from bot.dialogue.tongues.spanish.told_sights import TOLD_SIGHTS
from bot.dialogue.tongues.spanish.trials import TRIALS
from bot.dialogue.tongues.spanish.visit_words import VISIT_WORDS
from bot.dialogue.tongues.spanish.weather import WEATHER
from bot.dialogue.tongues.spanish.whereabouts import WHEREABOUTS
from bot.dialogue.tongues.spanish.whose import WHOSE
from bot.dialogue.tongues.spanish.wishers import WISHERS

SPANISH: Final[Mapping[str, str]] = {
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
