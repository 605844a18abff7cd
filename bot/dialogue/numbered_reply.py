"""The number of an option with more words behind or before it: "3. as I said", "2 yes we are"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.questions import Asked
from bot.dialogue.reading import number_answer
from bot.dialogue.reading.edges import edges_told
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.phrases import straight
from bot.dialogue.replies import chosen, meant
from bot.dialogue.reply_beside import Beside
from bot.dialogue.tongues import in_any

#: Questions of danger hear nothing but their own words; what is deleted is asked for alone.
_APART: Final = frozenset({"safe", "out_there", "in_danger", "forget"})
_WORDS: Final = ("one", "two", "three", "four", "five")
_NUMBER: Final = rf"(?:[1-9]|{'|'.join(in_any(f'numbered.{word}') for word in _WORDS)})"
#: What stands before the number: "option", "no.", "it's", a bracket.
_BEFORE: Final = (
    rf"(?:(?:{in_any('numbered.option')}|{in_any('numbered.before')})[.:]? *"
    rf"|{in_any('numbered.unsure')}[.:,…]* +)*#?"
)
#: "3. as i said", "2, the twig", "1 - nothing there", "(2) yes"; but "3-stop" is one word.
_SIGNED: Final = re.compile(
    rf"\W*{_BEFORE}(?P<number>{_NUMBER})(?:(?P<sign>[.,:;)\]!]+)(?=\s|$)|(?P<dash>\s*[-–—/=]+)\s)"
    r"\s*(?P<rest>.*)",
    re.IGNORECASE | re.DOTALL,
)
#: "2 yes we are", "3 as i said": nothing that is counted stands behind the digit.
_PLAIN: Final = re.compile(
    rf"\W*{_BEFORE}(?P<number>[1-9])"
    rf"(?: (?P<rest>(?P<goes_on>{in_any('numbered.goes_on')}\b)?.*)|$)",
    re.IGNORECASE | re.DOTALL,
)
#: "Meant the lip in the picture. Option 3".
_NAMED: Final = re.compile(
    rf"(?P<before>.*?)\b(?:{in_any('numbered.option')})[.:]? *#?"
    rf"(?P<number>{_NUMBER})\b(?![.,/:]?\d)(?P<rest>.*)",
    re.IGNORECASE | re.DOTALL,
)
#: Another bare number: "2, no 3", "1 and 3"; what stands before a unit is a value.
_ANOTHER: Final = re.compile(
    r"(?<![\d.,/:])\b\d\b(?![.,/:]?\d)(?=\W*$|[.,;!?]|\s+(?:or|and|und|oder|o|y)\b)"
)
_AS_SAID: Final = re.compile(rf"\b{in_any('numbered.as_said')}\b", re.IGNORECASE)
#: "3. and a branch on the left": more than the option, and no other one.
_ALSO: Final = re.compile(rf"{in_any('numbered.also')}\b", re.IGNORECASE)
#: Behind these a number goes on as a value or a list: "2, 3 m", "1-2".
_LISTS: Final = frozenset(",-–—/=")


def numbered(asked: Asked, said: Said) -> Beside | None:
    """The option that a number among other words chooses.

    Args:
        asked: the open question.
        said: the message.

    Returns:
        None where the number is no option, counts or measures something, or where the words name
        another option than it does.
    """
    text = straight(said.typed).strip()
    if asked.name in _APART or number_answer(text) is not None:
        return None
    found = _SIGNED.fullmatch(text) or _PLAIN.fullmatch(text) or _NAMED.fullmatch(text)
    if found is None or not _is_alone(found):
        return None
    number = _number(found["number"].casefold())
    if number > len(asked.options):
        return None
    words = _words_around(found, said)
    value, named = asked.options[number - 1], _named(asked, words)
    sure = found.re is not _PLAIN or found["goes_on"] or not words.typed
    more = found.re is _SIGNED and _ALSO.match(words.typed)
    if not (named == value or more or (sure and named is None)):
        return None
    return Beside(value, words.english, _without_reply(asked, words, value))


def _is_alone(found: re.Match[str]) -> bool:
    """Whether no other bare number stands behind it, and it begins neither a list nor a value."""
    rest = found["rest"] or ""
    listed = found.re is _SIGNED and (found["sign"] or found["dash"]).strip()[:1] in _LISTS
    return not (_ANOTHER.search(rest) or (listed and rest[:1].isdigit()))


def _number(spelled: str) -> int:
    if spelled.isdigit():
        return int(spelled)
    return next(
        number
        for number, word in enumerate(_WORDS, 1)
        if re.fullmatch(in_any(f"numbered.{word}"), spelled)
    )


def _words_around(found: re.Match[str], said: Said) -> Said:
    """The words around the number, glossed anew; that it was said before tells nothing."""
    before = found["before"] if found.re is _NAMED else ""
    typed = _AS_SAID.sub("", f"{before} {found['rest'] or ''}")
    return _glossed(said, typed)


def _glossed(said: Said, typed: str) -> Said:
    typed = " ".join(typed.split()).strip(" ,;:-").lstrip(".")
    return said._replace(typed=typed, english=glossed(typed, said.language))


def _without_reply(asked: Asked, words: Said, value: str) -> Said:
    """The words without the sentences that name the option itself: it is answered once."""
    told = [one for one in _sentences(words) if asks(one) or _named(asked, one) != value]
    return _glossed(words, " ".join(one.typed for one in told))


def _sentences(words: Said) -> list[Said]:
    """The sentences, a question behind a comma apart: "nothing blinks, which ISO?"."""
    found: list[Said] = []
    for sentence in sentences_of(words.typed):
        told, _, asked = sentence.rpartition(", ")
        apart = bool(told) and asks(_glossed(words, asked))
        found += [_glossed(words, one) for one in ((told, asked) if apart else (sentence,))]
    return found


def _named(asked: Asked, rest: Said) -> str | None:
    """The option that the words name."""
    edge = edges_told(rest.english).get(asked.name)
    return edge or chosen(asked, rest.typed) or meant(asked, rest.english)
