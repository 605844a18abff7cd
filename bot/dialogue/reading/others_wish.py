"""A look of the water that somebody else wishes: who it is, and what they wish."""

from __future__ import annotations

import re
from typing import Final, NamedTuple

from bot.dialogue.tongues import in_any
from bot.dialogue.tongues.english.people import KIN, STRANGER

#: What only others do, and what they do as well as who writes.
_THIRD: Final = r"(?:wants|prefers|likes|needs|wishes|asks for|asked for|is after|goes for|loves)"
_PLAIN: Final = (
    r"(?:want|prefer|like|need|wish|ask for|are after|go for|love|wanted|liked|preferred)"
)
#: For them the picture is made: what they wish is wished.
_MADE_FOR: Final = (
    r"(?!(?:my|our) (?:\w+ )?(?:wife|husband|girlfriend|boyfriend|partner|mum|mom|mother|dad|father"
    r"|client|customer|boss|editor|fianc\w+|gran\w*)\b)"
)
#: Those of a workshop or a family, together.
_ONES: Final = r"participant|children|other|group|beginner"
_PEOPLE: Final = (
    r"(?:he|she|they|others|people|somebody|someone"
    rf"|{_MADE_FOR}(?:my |our |the |a |one |another |some |two |three )+(?:\w+ )?"
    rf"(?:{KIN}|{STRANGER}|{_ONES})s?"
    r"|(?:one|some|two|three|both|most|all) of (?:them|us|mine|my \w+))"
)
_NAME: Final = (
    r"(?!(?:i|we|you|it|who|what|which|that|this|nobody|water|camera|phone|lens)\b)[a-z]{2,12}"
)
_BEGINS: Final = (
    r"(?:^|(?<=[,.;!?] )|(?<= and )|(?<= but )|(?<= though ))"
    r"(?:(?:and|but|so|ok|now|well|then|because)\W+)*"
)
_SUBJECT: Final = (
    rf"(?P<who>(?:{_PEOPLE}|{_NAME})(?= {_THIRD}\b)"
    rf"|{_PEOPLE}(?=(?:'d| would)? (?:rather |really |all )?{_PLAIN}\b))"
)
#: Who is told to do it does it: "she wants me to make it silky".
_WISHES: Final = (
    rf"(?:'d| would)? (?:rather |really |all |now |also )*(?:{_THIRD}|{_PLAIN})\b"
    r"(?! (?:me|us|to know|my|our)\b)"
)
_WISH: Final = re.compile(
    rf"{_BEGINS}{_SUBJECT}{_WISHES}"
    r"(?P<wish>(?:(?!(?:,| and| but) ?(?:and |but )?(?:i|i'm|i'd|my|we|what|how|which|can"
    r"|should)\b)[^.;!?])*)"
)
_WHO: Final = re.compile(rf"\b{in_any('wishers.who')}", re.IGNORECASE)


class Wish(NamedTuple):
    """Who wishes, what, and what else the message says."""

    who: str
    wish: str
    rest: str


def wish_of_another(said: str) -> Wish | None:
    """The wish of somebody else that a message tells; None where it tells none.

    Args:
        said: the message in English.
    """
    text = " ".join(said.replace("’", "'").split())
    found = _WISH.search(text.casefold())
    if found is None:
        return None
    rest = (text[: found.start()] + " " + text[found.end() :]).strip(" .,;!")
    return Wish(text[found.start("who") : found.end("who")], found["wish"], rest)


def wisher_as_typed(typed: str) -> str | None:
    """Who wishes, in the words of a message in another language; None where they stand in it not.

    Args:
        typed: the message as it came.
    """
    found = _WHO.search(typed)
    return None if found is None else found.group()


def without_wish(said: str) -> str:
    """A message in lower case without what others wish."""
    return _WISH.sub(" ", said)
