"""The camera of a phone that is used, told by its button: "on the 1x", "zoomed to 3x"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.facts import Facts
from bot.dialogue.folding import folded
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn

_FACTOR: Final = r"(?:0?[.,]\d|10|[1-9](?:[.,]\d)?)"
_TIMES: Final = rf"(?P<times>{_FACTOR})"
_USED: Final = re.compile(
    rf"\b{in_any('phone_zoom.used')} (?:{in_any('phone_zoom.the')} )*{_TIMES} ?x\b"
)
_ALONE: Final = re.compile(rf"(?:{in_any('phone_zoom.the')} )*{_TIMES} ?x(?: zoom)?")
_NOT: Final = re.compile(rf"\b{in_any('phone_zoom.not')}\b")
_BUTTON: Final = re.compile(_FACTOR)


def with_zoom(turn: Turn, said: Said, told: Facts) -> Facts:
    """What was read, with the focal length of the button that is used.

    Args:
        turn: the answer under construction; it knows whether the person has a phone.
        said: the message.
        told: what was read in it.

    Returns:
        The facts, the focal length as on full frame; buttons that are only listed set nothing
        and are no number that found no place. A button of a phone names no other format: "1.5x".
    """
    if not (reckoning.is_phone(turn.facts) or reckoning.is_phone(told)):
        return told
    text = folded(said.typed)
    if re.search(r"\dx\b", text) is not None:
        unread = tuple(piece for piece in told.unread if not _BUTTON.fullmatch(piece))
        camera = None if reckoning.is_phone(turn.facts) else told.camera_format
        told = told.model_copy(update={"unread": unread, "camera_format": camera})
    found = _ALONE.fullmatch(text) or _USED.search(text)
    if found is None or told.focal_mm is not None or _NOT.search(text) or asks(said):
        return told
    times = float(found["times"].replace(",", "."))
    return told.updated(Facts(focal_mm=times * reckoning.PHONE_FULL_FRAME_MM))
