"""What a message tells of water that somebody would stand in, in any language."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.reading.cold_numbers import cold_water
from bot.dialogue.reading.numbers import METRES_A_SECOND
from bot.dialogue.tongues import in_any, whole_words
from core.wading import KNEE_M, WaterToStandIn

_LEAVE: Final = in_any("standing.leave")
_IN_IT: Final = re.compile(rf"\b{_LEAVE}{in_any('standing.into')}")
#: Beside a depth: "knee deep, can I stand there?".
_STAND: Final = re.compile(rf"\b{_LEAVE}{in_any('standing.stand')}\b")
_WADING: Final = whole_words("standing.wading")
#: Children who paddle and dogs that swim: whoever is in the water is asked about alike.
_PLAY: Final = whole_words("standing.play")
_NO_PLAY: Final = re.compile(rf"\b{in_any('standing.no_play')}{in_any('standing.play')}\b")
_MAY: Final = whole_words("standing.may")
#: A picture of it, or a thing that is put there, is no leave to do it.
_ELSE: Final = whole_words("permission.picture", "standing.thing")
#: Where nothing is denied, leave at the beginning of a message is all that it tells.
_LEAVE_FIRST: Final = re.compile(
    rf"(?:(?:and|ok|so|und|y) )*(?:{_LEAVE}|{in_any('standing.may')})\b"
)
_DENIED: Final = whole_words("rising.denied", "standing.out")
#: Heights of a body's marks [m]; own rule, on the deep side of what they mean.
_MARKS: Final[Mapping[str, float]] = {
    "standing.ankle": 0.15,
    "standing.shin": 0.35,
    "standing.knee": KNEE_M,
    "standing.thigh": 0.7,
    "standing.hip": 1.0,
    "standing.chest": 1.3,
}
_MARK_PATTERNS: Final = tuple((whole_words(mark), depth) for mark, depth in _MARKS.items())
_DEPTH: Final = re.compile(
    r"(?<![\d/.,])(?P<number>\d{1,3}(?:[.,]\d{1,2})?) ?"
    rf"(?P<unit>{in_any('standing.unit')})(?: of)? {in_any('standing.deep')}\b"
)
_LENGTHS: Final[Mapping[str, float]] = {"c": 0.01, "z": 0.01, "m": 1.0, "f": 0.3048, "i": 0.0254}
_SPEED: Final = re.compile(
    r"(?<![\d/.,])(?P<number>\d{1,2}(?:[.,]\d{1,2})?) ?"
    rf"(?P<unit>m ?/ ?s|m/sec|met\w+ {in_any('standing.per')} {in_any('standing.second')}"
    r"|ft ?/ ?s|km ?/ ?h|kmh|mph)\b"
)
_LEAF_UNIT: Final = rf"m|met\w+|ft|feet|{in_any('standing.in_seconds')}"
_LEAF: Final = re.compile(
    rf"(?P<first>\d{{1,2}}(?:[.,]\d)?) ?(?P<one>{_LEAF_UNIT})\b"
    rf"(?: (?!\d)\w+){{0,4}} (?P<second>\d{{1,2}}(?:[.,]\d)?) ?(?P<two>{_LEAF_UNIT})\b"
)
_LEAF_WORD: Final = whole_words("standing.leaf")
#: "Fast" where no number is told [m/s]: a quick walk, own rule.
_FAST_MPS: Final = 2.0
_FAST: Final = whole_words("standing.fast")
_SEEN: Final = whole_words("standing.seen")
_HIDDEN: Final = whole_words("standing.hidden")
_FLAGS: Final[Mapping[str, re.Pattern[str]]] = {
    "above_a_drop": whole_words("standing.above_a_drop"),
    "brown": whole_words("standing.brown"),
    "rising": whole_words("standing.rising"),
    "alone": whole_words("standing.alone"),
    "child_or_frail": whole_words("standing.child_or_frail"),
}
#: What takes a danger of the water away, where it is told.
_HARMLESS: Final[Mapping[str, re.Pattern[str]]] = {
    "above_a_drop": whole_words("standing.nothing_below"),
    "brown": whole_words("standing.not_brown"),
    "rising": whole_words("standing.not_rising"),
    "alone": whole_words("standing.not_alone"),
}
_DRY: Final = whole_words("standing.dry_clothes")


def asks_to_stand(text: str) -> bool:
    """Whether a message asks to stand in water, or to wade.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = folded(text)
    if _IN_IT.search(said) or _WADING.search(said) or any(map(_asks_to_play, said.split(" . "))):
        return True
    return _STAND.search(said) is not None and _depth(said) is not None


def only_asks_to_stand(text: str) -> bool:
    """Whether a message asks that and tells nothing: nobody in it is in the water yet.

    Args:
        text: as typed; one clause that begins with leave, and denies nothing.
    """
    said = folded(text)
    one = not re.search(r"[,.] ", said) and _LEAVE_FIRST.match(said) is not None
    return one and _DENIED.search(said) is None and asks_to_stand(text)


def _asks_to_play(said: str) -> bool:
    """Whether one sentence asks whether somebody may play, paddle or swim in water."""
    playing = _PLAY.search(said) and _MAY.search(said)
    if _NO_PLAY.search(said):
        return False
    return bool(playing) and _ELSE.search(said) is None


def water_to_stand_in(text: str) -> WaterToStandIn:
    """All that a message tells of water that somebody would stand in.

    Args:
        text: as typed; where a depth or a speed has no number its word counts.
    """
    said = folded(text)
    flags = {name: False for name, found in _HARMLESS.items() if found.search(said)}
    flags |= {name: True for name, found in _FLAGS.items() if found.search(said)}
    cold = cold_water(text)
    return WaterToStandIn(
        depth_m=_depth(said),
        speed_mps=speed_told(text) or (_FAST_MPS if _FAST.search(said) else None),
        bottom_visible=_bottom(said),
        water_c=cold.water_c if cold else None,
        dry_clothes=True if _DRY.search(said) else None,
        **flags,
    )


def _bottom(said: str) -> bool | None:
    if _HIDDEN.search(said):
        return False
    return True if _SEEN.search(said) else None


def _depth(said: str) -> float | None:
    found = _DEPTH.search(said)
    if found is not None:
        return min(_number(found["number"]) * _LENGTHS[found["unit"][0]], 20.0)
    return next((depth for mark, depth in _MARK_PATTERNS if mark.search(said)), None)


def speed_told(text: str) -> float | None:
    """The speed that a message tells by a number, or by a leaf [m/s]; None without one."""
    said = text.casefold()
    found = _SPEED.search(said)
    if found is not None:
        unit = found["unit"].replace(" ", "")
        known = {"km/h": "km/h", "kmh": "km/h", "mph": "mph", "ft/s": "ft/s"}.get(unit, "m/s")
        return min(_number(found["number"]) * METRES_A_SECOND[known], 40.0)
    return _of_leaf(said)


def _of_leaf(said: str) -> float | None:
    found = _LEAF.search(said) if _LEAF_WORD.search(said) else None
    if found is None:
        return None
    told = {found["one"][0]: found["first"], found["two"][0]: found["second"]}
    way = next((unit for unit in told if unit in "mf"), None)
    if way is None or "s" not in told or _number(told["s"]) == 0:
        return None
    return min(_number(told[way]) * _LENGTHS[way] / _number(told["s"]), 40.0)


def _number(said: str) -> float:
    return float(said.replace(",", "."))
