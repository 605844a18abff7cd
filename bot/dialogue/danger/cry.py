"""A bare call for help: it may be a cry, or ask what can be typed."""

from __future__ import annotations

import re
from enum import Enum
from typing import Final

from bot.dialogue.folding import folded


class Cry(Enum):
    """How a bare call for help sounds."""

    #: Like a cry: in capitals, drawn out, with several exclamation marks, or by its word.
    SHOUTED = "shouted"
    #: It may be that, or a word that is looked up.
    PLAIN = "plain"


#: Nobody looks up what can be typed with these.
_OF_NEED: Final = (
    r"(?:socorro|auxilio|sos|mayday|notfall|notruf|emergency|emergencia|urgencia"
    r"|rette\w* (?:mich|uns)|save (?:me|us)"
    r"|(?:it is an|its an|das ist ein|es una) (?:notfall|emergency|emergencia))"
)
_HELP: Final = (
    r"(?:(?:i|we) need(?: your| some)? help|need help|send help|get help|help(?: me| us)?"
    r"|(?:ich|wir) brauchen? hilfe|brauche hilfe|hilfe|hilf (?:mir|uns)|helft (?:mir|uns)"
    r"|(?:necesito|necesitamos|pido)(?: de)? ayuda|ayuda(?:me|nos|d|dme|dnos|nme|nnos)?)"
)
_BESIDE: Final = (
    r"(?:please|pls|plz|now|quick|quickly|fast|linn|hey|oh|god|bitte|schnell|jetzt|sofort|por favor"
    r"|rapido|ya|ahora|and|und|y|a|somebody|someone|anybody|anyone|jemand|alguien|can|you|oh no"
    r"|kannst du|puedes)"
)
_WHOLE: Final = re.compile(rf"(?:(?:{_OF_NEED}|{_HELP}|{_BESIDE})(?: |$|, |\. )*)+")
_NEED: Final = re.compile(rf"\b{_OF_NEED}\b")
_CALL: Final = re.compile(rf"\b(?:{_OF_NEED}|{_HELP})\b")
_HURRY: Final = re.compile(
    r"\b(?:now|quick|quickly|fast|schnell|jetzt|sofort|rapido|ya|ahora|oh god)\b"
)
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
