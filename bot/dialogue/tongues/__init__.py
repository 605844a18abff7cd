"""The words of each language that readers look for, one folder a language, joined by their idea."""

from __future__ import annotations

import re
from collections.abc import Mapping
from importlib import import_module
from pkgutil import iter_modules
from types import ModuleType
from typing import Final

from bot.dialogue.tongues import english, german, spanish


def _words_in(folder: ModuleType) -> Mapping[str, str]:
    """What all modules of a language's folder have in their `WORDS`."""
    names = [f"{folder.__name__}.{module.name}" for module in iter_modules(folder.__path__)]
    lists = [getattr(import_module(name), "WORDS", {}) for name in names]
    return {idea: said for words in lists for idea, said in words.items()}


#: The words of each language by its code (ISO 639-1): of each idea one expression, or one list. An
#: idea is called by the module that it stands in, and by a name: `away.reached`. An expression may
#: hold another idea in any language: `<arrival.water>`.
TONGUES: Final[Mapping[str, Mapping[str, str]]] = {
    "en": _words_in(english),
    "de": _words_in(german),
    "es": _words_in(spanish),
}

_IDEA: Final = re.compile(r"<(\w+\.\w+)>")


def of_each(name: str) -> Mapping[str, str]:
    """What tells one idea, by the codes of the languages, where it matters which one it is."""
    return {language: words[name] for language, words in TONGUES.items()}


def in_any(name: str) -> str:
    """What tells one idea in any language, as one group of an expression."""
    said = "|".join(of_each(name).values())
    return f"(?:{_IDEA.sub(lambda idea: in_any(idea[1]), said)})"


def whole_words(*names: str) -> re.Pattern[str]:
    """A pattern of what tells one of some ideas in any language, in whole words."""
    return re.compile(rf"\b(?:{'|'.join(map(in_any, names))})\b")


def each_once(name: str) -> str:
    """Plain words of one idea in any language as one group, each once, for a run of such words.

    A word that stood in it for two languages, or was two others of it in a row, would let a long
    run of them be read in a number of ways that doubles with each.
    """
    said = {word for words in of_each(name).values() for word in words.split("|")}
    single = {word for word in said if not _is_run(word, said)}
    return f"(?:{'|'.join(sorted(single))})"


def _is_run(word: str, said: set[str]) -> bool:
    parts = word.split()
    return len(parts) > 1 and said.issuperset(parts)


def single_words(name: str) -> frozenset[str]:
    """The single words of one idea in all languages."""
    return frozenset(" ".join(of_each(name).values()).split())
