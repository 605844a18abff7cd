"""Questions that want one number back: an f-number, how far to go, the hour of shade."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.meaning.values_named import named_in, plainly
from bot.dialogue.reading import read
from bot.dialogue.steps.walk import reasons
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from core.framing import stand_back_m
from core.series import f_number_label

_F_NUMBER: Final = re.compile(
    r"^(?:(?:and|so|ok|then) )*(?:what|which) (?:f[ /-]?(?:number|stop)|f|aperture)\b"
    r"|^(?:f[ -]?(?:number|stop)|aperture) (?:for|with|at)\b"
)
_HOW_FAR: Final = re.compile(
    r"^(?:(?:and|so|ok|then) )*(?:(?:what )?distance|how far(?: back| away| off)?|where)\b"
    r".*\b(?:level|fits?|holds?|whole|stand)\b"
    r"|\b(?:how far(?: back| away| off)?|where) (?:[^?.]{0,24} )?(?:would|do|should|must|can|could)"
    r" (?:i|we)\b[^?.]*\b(?:stand|go|be|step)\b[^?.]*\b(?:level|fit|holds?|whole|all)\b"
)
#: Who asks so wants the whole fall in, whatever its height is called.
_ALL_OF_IT: Final = re.compile(r"\b(?:fit|holds?|whole|all|level|tilt\w*)\b")
_FALL: Final = re.compile(r"\b(?:water)?falls?\b")
_LENGTHS: Final = frozenset({"fall_height_m", "distance_m", "nearest_m"})
#: The shortest end of a lens by its name.
_WIDE_END: Final = re.compile(
    r"\b(?:wide(?:st)?(?: angle)? end|wide open end|at its widest|widest)\b"
)
_ABOUT: Final = re.compile(
    r"\b(?:about|around|at|by|from|after|till|until) "
    r"(\d{1,2}(?:[:.]\d\d)?(?: ?[ap]m)?)(?![\d/]| ?m\b)"
)
#: Which way a fall faces, where that alone tells the half of the day.
_FACES: Final = re.compile(r"\b(?:fac(?:es|ing)|looks|open to the) (?:\w+ )?(east|west)\b")
#: What a question about the f-number may tell of itself, and one about the distance.
_OF_DEPTH: Final = frozenset(
    {"nearest_m", "farthest_m", "focal_mm", "camera_format", "units", "portrait"}
)
_OF_VIEW: Final = frozenset(
    {"fall_height_m", "focal_mm", "camera_format", "portrait", "camera_height_m", "units"}
)


def answer(turn: Turn, text: str) -> bool:
    """Answer such a question from its own numbers, which are not kept; whether it was one.

    Args:
        turn: the answer under construction.
        text: the message in English.
    """
    return any(_answered(turn, sentence) for sentence in (text, *sentences_of(text)[-1:]))


def _answered(turn: Turn, text: str) -> bool:
    said = text.casefold().strip()
    if not (_F_NUMBER.search(said) or _HOW_FAR.search(said)):
        return False  # most messages: nothing is read then
    told = _with_height(read(text, units=turn.units), text)
    named, facts = told.known().keys(), turn.facts.updated(told)
    focal_mm = told.focal_mm or _widest(turn, said) or reckoning.focal_of(turn.facts)
    if focal_mm is None or reckoning.is_phone(facts):
        return False
    if _F_NUMBER.search(said) and told.nearest_m is not None and named <= _OF_DEPTH:
        _say_f_number(turn, facts, focal_mm)
    elif _HOW_FAR.search(said) and _names_fall(told, facts, said) and named <= _OF_VIEW:
        _say_how_far(turn, facts, focal_mm)
    else:
        return False
    return True


def _with_height(told: Facts, text: str) -> Facts:
    """What is told, with the one length of a question as the height of the fall that it names."""
    lengths = [one.value for one in named_in(plainly(text)) if one.slot == "length"]
    if told.known().keys() & _LENGTHS or len(lengths) != 1 or not _FALL.search(text.casefold()):
        return told
    return told.updated(Facts(fall_height_m=lengths[0]))


def _names_fall(told: Facts, facts: Facts, said: str) -> bool:
    """Whether the height is told, or known where the whole fall is asked about."""
    known = facts.fall_height_m is not None and _ALL_OF_IT.search(said) is not None
    return told.fall_height_m is not None or known


def _widest(turn: Turn, said: str) -> float | None:
    """The shortest focal length in the bag, where it is named so [mm]."""
    ends = [lens.shortest_mm for lens in turn.facts.lenses]
    return min(ends) if ends and _WIDE_END.search(said) else None


def _say_f_number(turn: Turn, facts: Facts, focal_mm: float) -> None:
    """The f-number that holds the depth, and the focus for it."""
    # The nearest thing is asked about with all behind it: how far the fall is does not count.
    facts = facts.model_copy(update={"distance_m": None, "stream": None})
    depth = reckoning.depth_of(facts, focal_mm)
    turn.say(
        Role.SETTINGS,
        "one.f_number" if depth.stack is None else "one.f_number_stack",
        f_number=f_number_label(depth.exact, reckoning.dial_of(facts)),
        needed=measures.plain(depth.needed),
        focus=measures.length(reckoning.focus_of(facts) or 0.0, turn.units),
        frames=str(depth.stack),
    )
    reasons.explain_depth(turn, facts, focal_mm, depth)
    reasons.explain_focus(turn, facts)


def _say_how_far(turn: Turn, facts: Facts, focal_mm: float) -> None:
    """How far back a level camera holds the top."""
    sensor = reckoning.sensor_of(facts)
    side_mm = sensor.short_mm if facts.portrait is False else sensor.long_mm
    above_m = max((facts.fall_height_m or 0.0) - reckoning.camera_height_of(facts), 0.1)
    turn.say(
        Role.SETTINGS,
        "one.how_far",
        distance=measures.length(stand_back_m(above_m, focal_mm, side_mm), turn.units),
        focal=measures.focal(focal_mm, sensor.crop_factor),
    )
    reasons.explain_stand_back(turn, above_m, focal_mm, side_mm)


def say_shade(turn: Turn, text: str) -> None:
    """When the sun leaves the fall: by the hour that is told, else by fist and wall."""
    told, faces = _ABOUT.search(text.casefold()), _FACES.search(text.casefold())
    if told is None and faces is not None:
        turn.say(Role.SETTINGS, f"asked.shade_{faces[1]}")
    elif told is None:
        turn.say(Role.SETTINGS, "asked.shade")
    else:
        turn.say(Role.SETTINGS, "asked.shade_told", time=told[1])
