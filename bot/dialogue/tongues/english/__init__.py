"""English words that readers look for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.english.access import ACCESS
from bot.dialogue.tongues.english.all_well import ALL_WELL
from bot.dialogue.tongues.english.arrival import ARRIVAL
from bot.dialogue.tongues.english.asides import ASIDES
from bot.dialogue.tongues.english.asked_first import ASKED_FIRST
from bot.dialogue.tongues.english.asking import ASKING
from bot.dialogue.tongues.english.at_home import AT_HOME
from bot.dialogue.tongues.english.away import AWAY
from bot.dialogue.tongues.english.beside import BESIDE
from bot.dialogue.tongues.english.bright_gone import BRIGHT_GONE
from bot.dialogue.tongues.english.cold_hands import COLD_HANDS
from bot.dialogue.tongues.english.cold_numbers import COLD_NUMBERS
from bot.dialogue.tongues.english.command_words import COMMAND_WORDS
from bot.dialogue.tongues.english.cry import CRY
from bot.dialogue.tongues.english.frame_list import FRAME_LIST
from bot.dialogue.tongues.english.frame_named import FRAME_NAMED
from bot.dialogue.tongues.english.frame_owner import FRAME_OWNER
from bot.dialogue.tongues.english.good_news import GOOD_NEWS
from bot.dialogue.tongues.english.group import GROUP
from bot.dialogue.tongues.english.hands import HANDS
from bot.dialogue.tongues.english.left_open import LEFT_OPEN
from bot.dialogue.tongues.english.look_wished import LOOK_WISHED
from bot.dialogue.tongues.english.marks import MARKS
from bot.dialogue.tongues.english.moves import MOVES
from bot.dialogue.tongues.english.murky import MURKY
from bot.dialogue.tongues.english.names import NAMES
from bot.dialogue.tongues.english.ordinals import ORDINALS
from bot.dialogue.tongues.english.other_edges import OTHER_EDGES
from bot.dialogue.tongues.english.party import PARTY
from bot.dialogue.tongues.english.permission import PERMISSION
from bot.dialogue.tongues.english.replies import REPLIES
from bot.dialogue.tongues.english.review_words import REVIEW_WORDS
from bot.dialogue.tongues.english.roster import ROSTER
from bot.dialogue.tongues.english.spoken_of import SPOKEN_OF
from bot.dialogue.tongues.english.standing import STANDING
from bot.dialogue.tongues.english.thunder import THUNDER
from bot.dialogue.tongues.english.told_facts import TOLD_FACTS
from bot.dialogue.tongues.english.told_sights import TOLD_SIGHTS
from bot.dialogue.tongues.english.trials import TRIALS
from bot.dialogue.tongues.english.visit_words import VISIT_WORDS
from bot.dialogue.tongues.english.weather import WEATHER
from bot.dialogue.tongues.english.whereabouts import WHEREABOUTS
from bot.dialogue.tongues.english.whose import WHOSE
from bot.dialogue.tongues.english.wishers import WISHERS

ENGLISH: Final[Mapping[str, str]] = {
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
