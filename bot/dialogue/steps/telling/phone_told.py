"""A phone beside a camera: who has told another one needs more than its mention to change it."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Facts
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading.phrases import plain
from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn

_AS_CAMERA: Final = re.compile(rf"(?<!\w){in_any('phone_used.as_camera')}")
_PHONE: Final = "phone"


def without_mention(turn: Turn, said: Said, facts: Facts) -> Facts:
    """The facts without a phone that is only mentioned by somebody with another camera.

    Args:
        turn: the answer under construction; it knows the kit.
        said: the message.
        facts: what was read in it.
    """
    known = turn.facts
    other = known.camera_format not in {None, _PHONE} or (
        known.camera_format is None and bool(known.lenses)
    )
    if facts.camera_format != _PHONE or not other or _AS_CAMERA.search(plain(said.typed)):
        return facts
    return facts.model_copy(update={"camera_format": None})
