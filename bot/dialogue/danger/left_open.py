"""A "no" that leaves it open whether anybody is out there: things there, a later, a refusal."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.came_away import things_came_along
from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words

#: Where a camera is, pictures are made; and somebody goes for it, or after a dog.
_LEFT_THERE: Final = whole_words("left_open.things")
_STILL: Final = whole_words("left_open.still")
_FROM_THERE: Final = whole_words("left_open.from_there")
_LATER: Final = whole_words("left_open.later")
#: Down from there, but where to: the path, or a ledge.
_CLIMBED: Final = whole_words("left_open.climbed")
#: A Spanish "si" before a few words is an "if".
_BOTH: Final = re.compile(
    rf"^{in_any('left_open.no')}\b.*\b{in_any('left_open.yes')}\b(?! (?:es|no|se|la|el)\b)"
)
_REFUSED: Final = re.compile(
    rf"^{in_any('left_open.refusal')}(?: ,| [.])?(?: no)? {in_any('left_open.refused')}"
    rf"(?: {in_any('left_open.here')})?[ .,]*$"
)
#: A thing that is still there is told in fewer words than these (own rule).
_MANY: Final = 7
_ABANDONED: Final = whole_words("left_open.abandoned")
_IS_THERE: Final = whole_words("left_open.is_there")
_LEAVING_IT: Final = (_LATER, _CLIMBED, _BOTH, _REFUSED, _IS_THERE)


#: A setting that is asked for behind an answer: "back on the path, which shutter?"
_SETTING_ASKED: Final = re.compile(
    rf"[.,;!\n-]+\s*(?:{in_any('left_open.and')}\s*)*"
    rf"(?:{in_any('left_open.which')}\b[^.,;!?\n]{{0,40}}\b)?"
    rf"(?:{in_any('left_open.setting')}|f|iso|f/?\d[\d.]*|1/\d+(?: ?s)?)\s*\?+\s*$",
    re.IGNORECASE,
)


def without_setting_asked(text: str) -> str:
    """A reply without the setting that is asked for behind it.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _SETTING_ASKED.sub("", text)


def asks_from_there(text: str) -> bool:
    """Whether a message speaks of a picture from the place itself: that gets no settings.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _FROM_THERE.search(folded(text)) is not None


def leaves_open(text: str) -> bool:
    """Whether words that sound like "nobody" leave something there, or refuse to come.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return "?" in text or leaves_something(text)


def leaves_it_there(part: str) -> bool:
    """Whether one part of a reply says that a thing is there, or somebody goes on there.

    Args:
        part: as typed; a few words of a thing, or a longer part that says "still there": "tripod on
            soft leaves, and I press with a finger" is of a picture.
    """
    if asks_from_there(part) or any(words.search(folded(part)) for words in _LEAVING_IT):
        return True
    few = len(part.split()) < _MANY
    return _thing(part) and (few or _STILL.search(folded(part)) is not None)


def refuses(text: str) -> bool:
    """Whether a whole reply refuses to come away, or to answer.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _REFUSED.search(folded(text)) is not None


def left_a_thing(part: str) -> bool:
    """Whether a part only says that a thing was left behind: nobody goes for it.

    Args:
        part: as typed, in any of Linn's languages.
    """
    said = folded(part)
    fetched = any(words.search(said) for words in (_FROM_THERE, *_LEAVING_IT))
    return _thing(part) and not fetched and _ABANDONED.search(said) is not None


def _thing(text: str) -> bool:
    return _LEFT_THERE.search(things_came_along(folded(text).replace(" . ", " , "))) is not None


def leaves_something(text: str) -> bool:
    """The same of a message that may ask something beside it.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = folded(text)
    return _thing(text) or any(words.search(said) for words in _LEAVING_IT)
