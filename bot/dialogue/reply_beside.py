"""A reply to the open question, and more beside it: "dots only. But why no filter?"."""

from __future__ import annotations

import re
from typing import Final, NamedTuple

from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import SENTENCE_ENDS
from bot.dialogue.questions import Asked
from bot.dialogue.reading import read
from bot.dialogue.reading.edges import things_told
from bot.dialogue.reading.not_known import is_no_answer
from bot.dialogue.replies import ABOUT_OPTIONS, OF_WATER, chosen, meant, says_yes_or_no
from bot.dialogue.reply_sense import option_of
from bot.dialogue.tongues import in_any

#: Where one sentence ends, or a question begins behind an "and".
_SENTENCE: Final = re.compile(
    rf"{SENTENCE_ENDS}|,?\s+{in_any('asking.and')}\s+(?={in_any('asking.begins_behind')})",
    re.IGNORECASE,
)
_TWO: Final = 2
#: What is told beside their answers is of another edge, or of the kit; of a frame that was taken
#: all belongs together.
_EDGES: Final = frozenset({"top", "sides", "anchor"})


class Beside(NamedTuple):
    """What one message says to the open question, and what it tells or asks besides.

    Args:
        value: the option that is chosen.
        reply: the words that choose it, in English.
        rest: all other words.
    """

    value: str
    reply: str
    rest: Said


def parted(asked: Asked, said: Said) -> Beside | None:
    """The sentence of a message that answers the open question, apart from all else.

    Args:
        asked: the open question.
        said: the message.

    Returns:
        None where no sentence answers, or nothing else is told or asked.
    """
    sentences = _sentences(said)
    for place, one in enumerate(sentences):
        if asks(one):
            continue
        value = _value(asked, one)
        if value is None:
            continue
        others = sentences[:place] + sentences[place + 1 :]
        rest = said._replace(
            english=" ".join(other.english for other in others),
            typed=" ".join(other.typed for other in others),
        )
        more = asks(rest) or (
            asked.name in _EDGES and _by_words(asked, one) and _tells(asked, rest)
        )
        return Beside(value, one.english, rest) if more else None
    return None


def _tells(asked: Asked, rest: Said) -> bool:
    """Whether words beside a reply tell of something else, and nothing more of its own edge."""
    edges = {name for name, _ in things_told(rest.english, asked.name)}
    if asked.name in edges:
        return False  # "leaves at the top. actually there's a bit of white sky"
    return bool(edges or read(rest.english).known().keys() - ABOUT_OPTIONS)


def _by_words(asked: Asked, one: Said) -> str | None:
    """The option that a sentence names, where it is no bare "no" that may deny anything."""
    if says_yes_or_no(one.english):
        return None
    return chosen(asked, one.typed) or meant(asked, one.english)


def _value(asked: Asked, one: Said) -> str | None:
    """The option that one sentence chooses."""
    if asked.name in OF_WATER and is_no_answer(one.typed):
        return None  # "Nein, im Gegenteil": its gloss may say less
    value = chosen(asked, one.typed) or meant(asked, one.english)
    return value or option_of(asked, one, read(one.english))


def _sentences(said: Said) -> list[Said]:
    """The sentences of a message, each with its gloss; none where both part otherwise."""
    english, typed = _SENTENCE.split(said.english), _SENTENCE.split(said.typed)
    if len(english) < _TWO or len(english) != len(typed):
        return []
    return [said._replace(english=one, typed=own) for one, own in zip(english, typed, strict=True)]
