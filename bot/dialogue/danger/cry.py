"""A bare call for help: it may be a cry, or ask what can be typed."""

from __future__ import annotations

import re
from enum import Enum
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words


class Cry(Enum):
    """How a bare call for help sounds."""

    #: Like a cry: in capitals, drawn out, with several exclamation marks, or by its word.
    SHOUTED = "shouted"
    #: It may be that, or a word that is looked up.
    PLAIN = "plain"


#: Nobody looks up what can be typed with these.
_OF_NEED: Final = in_any("cry.of_need")
_HELP: Final = in_any("cry.help")
_WHOLE: Final = re.compile(rf"(?:(?:{_OF_NEED}|{_HELP}|{in_any('cry.beside')})(?: |$|, |\. )*)+")
_NEED: Final = whole_words("cry.of_need")
_CALL: Final = whole_words("cry.of_need", "cry.help")
_HURRY: Final = whole_words("cry.hurry")
_TWICE: Final = re.compile(rf"\b{_HELP}\b.*\b{_HELP}\b")
_LOUD: Final = re.compile(r"[!¡](?:\s*[!¡1])+|([^\W\d_])\1\1", re.IGNORECASE)


def cry_of(text: str) -> Cry | None:
    """How a call for help sounds that says nothing else.

    Args:
        text: the message as typed, in any of Linn's languages.

    Returns:
        None for anything that says more, or something else; "help with my settings" is no cry.
    """
    said = folded(text)
    if _WHOLE.fullmatch(said) is None or _CALL.search(said) is None:
        return None
    loud = _LOUD.search(text) is not None or text.isupper()
    if loud or any(sign.search(said) for sign in (_NEED, _TWICE, _HURRY)):
        return Cry.SHOUTED
    return Cry.PLAIN
