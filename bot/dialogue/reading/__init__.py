"""Text to facts: forgiving in form, strict in meaning; a wrongly read number is worse than none."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Final

from bot.dialogue.facts import Facts, Units
from bot.dialogue.reading import (
    bare_times,
    blinking,
    conditions,
    corrections,
    filters,
    focal,
    framing,
    kit,
    lengths,
    lenses,
    light,
    look,
    settings,
    stops,
    sunset,
    support,
    symptoms,
    weighed_lengths,
    wishes,
    withdrawn,
    yes_no,
)
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.normal import normalise
from bot.dialogue.reading.rest import tell_unread

__all__ = ["number_answer", "read"]

#: Each reader claims what is its own; earlier ones have the first say. Filters wait for the
#: settings because "f/11 1 s nd8" is a filter that is on; lengths that only the question explains
#: wait until all others have found theirs.
_READERS: Final = (
    withdrawn.withdraw,
    lengths.note_units,
    sunset.read_sunset,
    light.read_level,
    support.read_dial,
    lengths.read_speeds,
    kit.read_camera,
    lenses.read_lenses,
    settings.read_f_numbers,
    settings.read_iso,
    stops.read_stops,
    corrections.read_corrections,
    bare_times.read_bare_times,
    settings.read_times,
    filters.read_nd,
    filters.read_no_filters,
    filters.read_polariser,
    support.read_support,
    lengths.read_lengths,
    lengths.read_bare_lengths,
    corrections.read_corrections,
    focal.read_focal_lengths,
    corrections.read_corrections,
    settings.read_kept_values,
    settings.read_settings_triple,
    framing.read_format,
    framing.read_extent,
    framing.read_kind_of_water,
    framing.read_body_heights,
    lengths.read_asked_lengths,
    weighed_lengths.weigh_lengths,
    settings.read_asked_settings,
    filters.read_asked_filter,
    filters.read_asked_nd,
    wishes.read_keep,
    wishes.read_mode,
    light.read_light,
    blinking.read_blink,
    blinking.read_histogram,
    symptoms.read_symptoms,
    look.read_look,
    look.read_flow,
    conditions.read_wind,
    conditions.read_group,
    wishes.read_what_if,
    yes_no.read_yes_no,
    tell_unread,
)


def read(
    text: str, *, units: Units | None = None, expecting: frozenset[str] = frozenset()
) -> Facts:
    """All facts that a message tells; a message is read once while it is answered.

    Args:
        text: the message as typed, of any length and kind.
        units: the person's units, for numbers without any; None: not known.
        expecting: names of the slots that the open question asks for; a bare number goes there.

    Returns:
        The facts; lengths in metres, times in seconds as marked, stops signed. Numbers that
        look meant and found no place are in `unread`; values beyond `draft.RANGES` too.
    """
    return _read(text, units, expecting)


#: What is left out and what is told as it is by default are one key.
@lru_cache(maxsize=32)
def _read(text: str, units: Units | None, expecting: frozenset[str]) -> Facts:
    draft = Draft(text, expecting, units)
    for reader in _READERS:
        reader(draft)
    return draft.facts()


_ANSWER: Final = re.compile(
    r"(?:(?:no|nr|number|option|answer|choice|#)\W{0,2})?(\d{1,2})(?:[.)!:]|st|nd|rd|th)?"
    r"(?: please)?"
)


def number_answer(text: str) -> int | None:
    """The option when a whole message is only that: `2`, `2.`, `(2)`, `two`, `no 2`.

    Args:
        text: the message as typed.

    Returns:
        The number, 0 to 99; None when the message says anything else.
    """
    match = _ANSWER.fullmatch(normalise(text).strip(" ()[]*'\""))
    return int(match.group(1)) if match else None
