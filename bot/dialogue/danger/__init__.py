"""What counts as danger in a message, and how far it goes; read before anything else."""

from __future__ import annotations

from functools import lru_cache
from typing import Final

from bot.dialogue.danger.asked_first import only_noise, wants_question
from bot.dialogue.danger.beside import heard_beside
from bot.dialogue.danger.bright_gone import only_bright_gone
from bot.dialogue.danger.calm_parts import without_calm, without_idle, without_last_word
from bot.dialogue.danger.cold_child import child_cools_out, child_is_cold
from bot.dialogue.danger.cold_hands import beside_cold_hands, only_cold, only_cold_hands
from bot.dialogue.danger.covered import is_covered
from bot.dialogue.danger.despair import is_despair
from bot.dialogue.danger.explained import explained
from bot.dialogue.danger.features import Heard, heard_in
from bot.dialogue.danger.flash_to_bang import is_storm_of_now, is_storm_supposed
from bot.dialogue.danger.frame_talk import without_frame_talk
from bot.dialogue.danger.high_things import without_high_things
from bot.dialogue.danger.judged import judged
from bot.dialogue.danger.kinds import LEVELS, Danger, DangerKind, Level, gravest
from bot.dialogue.danger.leaps import wishes_to_leap
from bot.dialogue.danger.likelihood import Likely
from bot.dialogue.danger.murky import is_murky
from bot.dialogue.danger.names import asks, is_short, without_name
from bot.dialogue.danger.other_edges import without_other_edges
from bot.dialogue.danger.permission import leave_asked
from bot.dialogue.danger.replies import (
    Safe,
    anyone_out_there,
    in_danger,
    speaks_for_everybody,
    tells_only_where,
    who_is_safe,
)
from bot.dialogue.danger.rising import is_rising
from bot.dialogue.danger.slips import mended
from bot.dialogue.danger.spoken_of import without_talk
from bot.dialogue.danger.whose import Whose, whose
from bot.dialogue.danger.wished_look import only_wishes_look
from bot.dialogue.reading.foreign.dialects import in_plain_german

__all__ = [
    "Danger",
    "DangerKind",
    "Level",
    "Safe",
    "Whose",
    "anyone_out_there",
    "explained",
    "gravest",
    "in_danger",
    "read_danger",
    "speaks_for_everybody",
    "tells_only_where",
    "who_is_safe",
    "whose",
]

#: Log odds from which on a message is a danger; its likeliest kind is told outright with a known
#: wording from the second odds on, or from surer ones, if so much of the likelihood is of that
#: kind. Own rules: from strangers' files left out in turn; a danger that is missed is worse than a
#: warning too many.
_HEARD: Final = -1.25
_WORDED: Final = -0.9
_SURE: Final = 0.5
_MOSTLY: Final = 0.5
#: What is heard only once slips of the thumb are mended: a word of its own that nobody has typed
#: before may have been mended, too. Own rule, from files that were left out, with a slip in each
#: message and without.
_HEARD_MENDED: Final = -1.0
#: What is taken back in a message counts for nothing from such odds on, and likeness alone is as
#: sure as a wording. Own rule.
_CERTAIN: Final = 2.9
#: From such odds on what is taken back is asked about: among files that were left out as many of
#: these messages were dangers as not. Own rule.
_DOUBTED: Final = 2.2
#: What only sounds like danger, and has lower odds, is a hint.
_HINTED: Final = 0.5
#: What a storm that is only supposed, or of yesterday, may sound like.
_OF_STORM: Final = frozenset({None, DangerKind.THUNDER, DangerKind.UNCLEAR})
#: In a few words so much [log odds] is enough for rising and brown water. Own rule.
_FLOODED: Final = -4.1


@lru_cache(maxsize=16)  # parts of a message are asked about from several sides
def read_danger(text: str) -> Danger | None:
    """The gravest danger in a message.

    Args:
        text: any text as typed or dictated; case, punctuation and small slips of the thumb do
            not matter. What is denied, long past or only supposed is no danger. English, German
            and Spanish are heard, whatever language the person has set.

    Returns:
        The kind and its level, None where there is none; what only sounds like danger is
        `UNCLEAR`, and no more than a hint where most such words tell of none.
    """
    found = _of_a_leap(text, _found(text))
    sounds = found is not None and found.level is not Level.HINT
    if not (child_cools_out(text) or (sounds and child_is_cold(text))):
        return found
    cold = Danger(DangerKind.COLD, Level.EMERGENCY)
    return found if found is not None and _is_graver_than_cold(found) else cold


def _of_a_leap(text: str, found: Danger | None) -> Danger | None:
    """A leap from a height that is only wished for, where no emergency is told beside it."""
    if not wishes_to_leap(text):
        return found
    likely = found is not None and found.kind is DangerKind.IN_WATER and not found.certain
    if found is not None and found.is_told and not likely:
        return found
    return Danger(DangerKind.LIP, Level.STOP)


def _is_graver_than_cold(found: Danger) -> bool:
    return found.is_told and gravest(found.kind.value, DangerKind.COLD.value) == found.kind.value


def _found(text: str) -> Danger | None:
    """The gravest danger in a message, but for a child that only is cold."""
    if only_cold_hands(text) or only_cold(text) or _of_the_picture(text):
        return None
    beside = beside_cold_hands(text)
    return _told_or_weighed(text) if not beside or _found(beside) is not None else None


def _told_or_weighed(text: str) -> Danger | None:
    """The gravest danger in a message, by words that need no weighing, else by all of them."""
    if is_despair(text):
        return Danger(DangerKind.DESPAIR, Level.EMERGENCY)
    if is_covered(text) or is_rising(text):
        return Danger(DangerKind.FLOOD, Level.EMERGENCY)
    if only_noise(text):
        return Danger(DangerKind.UNCLEAR, LEVELS[DangerKind.UNCLEAR])
    found, right = _heard(text, _HEARD), mended(text)
    told = found is not None and found.is_told
    if not told and (standard := in_plain_german(text)) != text:
        return _found(standard) or found
    if told or right == text or only_cold_hands(right) or only_cold(right):
        return found
    return _meant(right, found)


def _of_the_picture(text: str) -> bool:
    """Whether a message speaks of a look, or of a bright thing that left the frame, alone."""
    return only_wishes_look(text) or only_bright_gone(text)


def _meant(right: str, found: Danger | None) -> Danger | None:
    """What a mended message tells of: asked about, as what was found before, unless certain."""
    meant, odds = _heard(right, _HEARD_MENDED), judged(right).odds
    if meant is None or odds >= _CERTAIN:
        return meant or found
    return found or Danger(DangerKind.UNCLEAR, _unsure(odds), certain=False)


def _unsure(odds: float) -> Level:
    """How far what only sounds like danger goes."""
    return Level.UNSURE if odds >= _HINTED else Level.HINT


def _heard(text: str, least: float) -> Danger | None:
    """The gravest danger in a message, which holds without what it says of the frame, too."""
    found, bare = _read(text, least), without_frame_talk(text)
    if found is not None and bare != text:
        return _read(bare, least)
    if found is None or found.certain or LEVELS[found.kind] is Level.EMERGENCY:
        return found
    idle = without_idle(text)  # who is bored is not lost
    return found if idle == text else _read(idle, least)


def _read(text: str, least: float) -> Danger | None:
    """The gravest danger in a message as it stands, heard from such odds on."""
    bare = without_last_word(without_calm(text))
    text, _ = without_talk(without_high_things(without_other_edges(bare)))
    heard = heard_in(text)
    likely = judged(text, heard)
    kind = _kind_of(text, heard, likely, least)
    level = _unclear(text, heard, likely, kind) if kind in {None, DangerKind.UNCLEAR} else None
    kind = kind if level is None else DangerKind.UNCLEAR
    if kind in _OF_STORM and is_storm_supposed(text):
        return None
    if is_storm_of_now(text):
        kind = DangerKind(gravest(DangerKind.THUNDER.value, (kind or DangerKind.UNCLEAR).value))
        return Danger(kind, LEVELS[kind])
    if kind is None:
        return None
    if kind is DangerKind.UNCLEAR and level is Level.HINT:
        return Danger(kind, level, certain=False)
    likely_too = LEVELS[kind] is Level.EMERGENCY and likely.odds >= _CERTAIN
    return Danger(kind, LEVELS[kind], bool(heard.worded.kind or heard.meant) or likely_too)


def _unclear(text: str, heard: Heard, likely: Likely, kind: DangerKind | None) -> Level | None:
    """How far words go that only sound like danger, as a whole or in a part; None: they don't."""
    if wants_question(text) or any(map(_is_danger, without_name(text))):
        return Level.UNSURE
    whole = [] if kind is None else [likely.odds]
    beside = None if heard.worded.taken_back else heard_beside(text, likely.odds)
    odds = whole if beside is None else [*whole, beside]
    return _unsure(max(odds)) if odds else None


def _is_danger(text: str) -> bool:
    """Whether a danger is heard by what is found, not by likeness that is not sure."""
    heard = heard_in(text)
    likely = judged(text, heard)
    found = bool(heard.worded.kind or heard.meant) or likely.odds >= _SURE
    return found and _kind_of(text, heard, likely) is not None


def _kind_of(text: str, heard: Heard, likely: Likely, least: float = _HEARD) -> DangerKind | None:
    """The kind of danger, by all that is found in a message, or asked leave for."""
    taken_back = heard.worded.taken_back and not heard.worded.kind and likely.odds < _CERTAIN
    if likely.odds >= least and not taken_back:
        return _likeliest(text, heard, likely)
    if is_short(text) and (heard.worded.alone or _is_flood(heard, likely)):
        return heard.worded.kind or heard.meant
    if taken_back:
        return DangerKind.UNCLEAR if likely.odds >= _DOUBTED else None
    if is_murky(text):
        return DangerKind.FLOOD
    return leave_asked(text)


def _is_flood(heard: Heard, likely: Likely) -> bool:
    """Whether a few words tell of brown or rising water, in any language."""
    return heard.meant is DangerKind.FLOOD and likely.odds >= _FLOODED


def _likeliest(text: str, heard: Heard, likely: Likely) -> DangerKind:
    """The kind of a danger that is heard: what it most likely is, if that is sure enough."""
    if likely.part >= _MOSTLY and likely.odds >= _SURE:
        return likely.kind
    if heard.worded.kind and likely.odds >= _WORDED and not asks(text):
        return likely.kind if likely.part >= _MOSTLY else heard.worded.kind
    return leave_asked(text) or DangerKind.UNCLEAR
