"""What a message at home tells of the place and of all frames together."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Facts
from bot.dialogue.reading import read
from bot.dialogue.reading.frame_list import Told
from bot.dialogue.tongues import in_any, whole_words

#: Settings belong to the frames that are told, never to a walk.
_OF_FRAMES: Final = frozenset({"f_number", "shutter_s", "iso"})
#: About one frame, or about a walk: not kept at home.
_NOT_KEPT: Final = _OF_FRAMES | {
    *("symptoms", "meter_stops", "change_stops", "blink", "histogram_at_right", "keep"),
    *("small_steps", "walk_km", "climb_m", "group_mixed", "sunset", "automatic"),
}
#: Beside what is seen only these are facts: words like "between the trees" tell no light then.
_WITH_SIGHTS: Final = frozenset({"fall_height_m", "distance_m", "nearest_m", "camera_format"})
_WAS: Final = re.compile(rf"\b{in_any('told_facts.was')}\b", re.IGNORECASE)
#: What is asked of a print: its size is none of the fall.
_PRINT: Final = whole_words("told_facts.print")
_LENGTHS: Final = frozenset({"fall_width_m", "fall_height_m", "distance_m", "nearest_m"})


def kept_of(facts: Facts, told: Told, said: str, *, says: bool, focused: bool) -> Facts:
    """What holds for the place and all frames.

    Args:
        facts: what was read in the message.
        told: its times and settings of frames.
        said: the message in English.
        says: it tells what is seen in frames.
        focused: it tells where the lens was focused.
    """
    if facts.light is not None:  # at home all light is past, none of it is over
        facts = facts.model_copy(update={"light": read(_WAS.sub("is", said)).light})
    known = set(facts.known()) - _NOT_KEPT
    if _PRINT.search(said):
        known -= _LENGTHS
    if focused:
        known.discard("distance_m")  # of the focus, not of the water
    if says:
        known &= _WITH_SIGHTS
    if told.times:
        known -= {"section", "look", "portrait"} if says else {"look"}
    if any(slot == "nd_on_stops" for slot, _, _ in told.settings):
        known -= {"nd_on_stops", "nd_stops"}  # of single frames
    return facts.only(known)
