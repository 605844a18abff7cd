"""Whole messages that are one of the words which work anywhere, as a word or asked for in a few."""

from __future__ import annotations

from typing import Final

from bot.dialogue.texts import COMMAND_WORDS
from bot.dialogue.texts.commands import command_word, folded
from bot.dialogue.tongues import single_words

#: Commands whose words name a language that can be spoken.
_SPOKEN: Final = frozenset({"english", "german", "spanish"})
#: Names of languages, folded, each with its command.
_NAMES: Final = {
    word: command
    for word, command in COMMAND_WORDS.items()
    if command in _SPOKEN and " " not in word
}
#: What may stand around the name of a language where it is asked for, in any of the languages.
_AROUND_A_NAME: Final = single_words("command_words.around_a_name")

#: Who has lost the thread asks for the next step: a word that asks, one of time or of doing, and
#: nothing else than small words. All folded, in any of the languages.
_ASKING: Final = single_words("command_words.asking")
_NEXT: Final = single_words("command_words.next")
_DOING: Final = single_words("command_words.doing")
_AND: Final = single_words("command_words.and")
_BY_THE_WAY: Final = single_words("command_words.by_the_way")
_SMALL: Final = single_words("command_words.small")
_OF_THE_STEP: Final = _ASKING | _NEXT | _DOING | _AND | _BY_THE_WAY | _SMALL

#: Who does not understand what is asked: a word for that, or one that asks with what is asked of.
_UNCLEAR: Final = single_words("command_words.unclear")
_OF_A_QUESTION: Final = single_words("command_words.of_a_question")
_ABOUT_IT: Final = single_words("command_words.about_it")

#: Who wants to see what was taken in: a word for that and one that asks, nothing but small words.
_TAKEN_IN: Final = single_words("command_words.taken_in")
_TELLER: Final = single_words("command_words.teller")
_SO_FAR: Final = single_words("command_words.so_far")

#: What may stand around a word of keeping: praise, assent, small words.
_AROUND_KEEPING: Final = single_words("command_words.around_keeping")
_KEEPING: Final = frozenset(
    word
    for phrase, command in COMMAND_WORDS.items()
    if command == "keep"
    for word in phrase.split()
    if word not in _AROUND_KEEPING
)


def command_of(text: str) -> str | None:
    """The command that a whole message is, None for anything else.

    Args:
        text: the message as typed.
    """
    words = folded(text).split()
    named = command_word(text) or _language(words)
    if named is not None:
        return named
    if _asks_now(words):
        return "now"
    if _asks_what_is_known(words):
        return "where"
    if "?" not in text and _keeps(words):
        return "keep"
    return "unclear" if _is_unclear(words) else None


def _language(words: list[str]) -> str | None:
    """The one language that a message asks for, with nothing else in it."""
    named = {_NAMES[word] for word in words if word in _NAMES}
    rest = {word for word in words if word not in _NAMES}
    return named.pop() if len(named) == 1 and rest <= _AROUND_A_NAME else None


def _keeps(words: list[str]) -> bool:
    """Whether a message keeps the frame, whatever praise stands beside it: "great, keep it"."""
    said = set(words)
    return bool(said & _KEEPING) and said <= _KEEPING | _AROUND_KEEPING


def _asks_what_is_known(words: list[str]) -> bool:
    """Whether a message asks what was understood, and nothing else: "what have you got so far"."""
    said = set(words)
    asks = bool(said & {"what", "was", "que"})
    return bool(
        asks and said & _TAKEN_IN and said & _TELLER and said <= _TAKEN_IN | _TELLER | _SO_FAR
    )


def _is_unclear(words: list[str]) -> bool:
    """Whether a message asks what is meant, and tells nothing: "what is blinking"."""
    said = set(words)
    if not said <= _UNCLEAR | _OF_A_QUESTION | _ABOUT_IT | _BY_THE_WAY:
        return False
    asks = bool(said & _ASKING - {"was"}) or words[:1] == ["was"] or bool(said & {"wo", "donde"})
    return bool(said & _UNCLEAR) or (asks and bool(said & (_OF_A_QUESTION | {"that", "this"})))


def _asks_now(words: list[str]) -> bool:
    """Whether a message asks for the next step and for nothing of it: "what do i do now"."""
    said = set(words)
    if said & _NEXT and said & _AND and said <= _NEXT | _AND | _BY_THE_WAY:
        return True
    return bool(said <= _OF_THE_STEP and said & _ASKING and said & (_NEXT | _DOING))
