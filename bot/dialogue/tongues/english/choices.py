"""English words that choose between going on and a new walk, and small words around a choice."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_FROM: Final = r"from (?:scratch|zero|the (?:very )?(?:start|beginning|top))"

WORDS: Final[Mapping[str, str]] = {
    # A new walk, whatever stands open.
    "choices.new_walk": (
        r"(?:new|fresh) (?:walk|tour|trip|hike)"
        rf"|(?:start|begin)(?:ning|ing)? (?:over|again|afresh|fresh|anew|{_FROM})"
    ),
    # The same where it is offered.
    "choices.new": r"new(?: one)?|begin|start|restart|fresh(?: one)?",
    "choices.go_on": (
        r"go(?:ing)? on(?! (?:a|the) (?:new|fresh))|carry(?:ing)? on|continu(?:e|ing)|resume|"
        r"keep going"
        r"|(?:the )?(?:same|old|last|this) (?:walk|one)|where (?:i|we) (?:was|were|left off)"
    ),
    "choices.around": (
        "a an the my our please pls plz yes yea yeah yep yup ok okay so well then just i i'd i'll"
        " we we'd we'll would rather like want wanna to let's lets let us can could may me with now"
        " thanks thank you one this that is all properly it do go for of option take choose pick"
        " tbh or"
    ),
    # What takes back some of it, right behind.
    "choices.but": r"but|except|apart|only|besides|or|though|until|no longer|not",
}
