"""Who asked for leave says that it was only asked, or that they let it be."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.phrases import plain

_LEFT: Final = (
    r"(?:nvm|never ?mind|forget (?:it|that|about it)|(?:i|we|they|he|she)(?:'ll"
    r"| will)? ?(?:won't|wont"
    r"|will not|not)(?: (?:do|go|try|risk)(?: (?:it|that|there|in|up))?)?|(?:i'll|i will|we'll"
    r"|we will"
    r"|i'm|im|i am|we're|we are)? ?(?:stay|staying|keep|keeping|remain|remaining) (?:here|put"
    r"|back|away"
    r"|off(?: it)?|where (?:i am|we are)|down(?: here)?|on the (?:path|trail|bank))|(?:he|she"
    r"|they)(?:'s| is|'re| are) staying(?: (?:here|back|with (?:me|us)|put))?"
    r"|(?:nobody|no one|none of us|(?:he|she|they|we)(?:'s| is|'re| are) not|(?:he|she|they|we)"
    r" (?:isn't|aren't))(?:'s| is)? (?:crossing|going|climbing|wading|doing it)"
    r"(?: (?:there|it|up|in|anywhere))?(?: now| today)?"
    r"|not (?:going"
    r"|doing"
    r"|worth it)(?: (?:it|there|in|up|then))?|(?:i was |it was )?(?:just|only) (?:asking|wondering"
    r"|checking|curious|a question)|too (?:risky|dangerous)|fair enough|better not|rather not"
    r"|then not)"
)
_SMALL: Final = (
    r"(?:ok(?:ay)?|no|nope|nah|fine|alright|well|then|so|and|but|sorry|thanks|good|right|i see)"
)
_GIVEN_UP: Final = re.compile(rf"(?:{_SMALL}\W+)*{_LEFT}(?:\W+(?:{_SMALL}|{_LEFT}))*\W*")


def gives_up(text: str) -> bool:
    """Whether a message says in few words that nobody goes where leave was asked, and nothing else.

    Args:
        text: as typed, in English.
    """
    return _GIVEN_UP.fullmatch(plain(text)) is not None


_WISHES: Final = re.compile(
    r"\b(?:want(?:s|ed)? to|would like to|'d like to|(?:is |am |are |'m |'s "
    r"|'re )?(?:thinking (?:of|about)"
    r"|hoping to|tempted to)|wonder(?:s|ing)?)\b"
)


def wishes(text: str) -> bool:
    """Whether a message only wishes to go somewhere, for its writer or another one.

    Args:
        text: as typed, in English.
    """
    return _WISHES.search(plain(text)) is not None
