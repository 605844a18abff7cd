"""All texts in the language that is being spoken, English where a translation is missing."""

from __future__ import annotations

import io
from collections.abc import Iterator, Mapping
from functools import cache
from importlib.resources import files
from typing import Final

from babel.messages.catalog import Catalog
from babel.messages.mofile import write_mo
from babel.messages.pofile import read_po
from babel.numbers import get_decimal_symbol
from babel.support import NullTranslations, Translations

from bot.dialogue.texts.amounts import PLURALS
from bot.dialogue.texts.english import IN_ENGLISH
from bot.dialogue.texts.languages import (
    ENGLISH,
    LANGUAGES,
    speaking,
    spoken_language,
    spoken_locale,
    with_hours_spoken,
)

#: Where a language's texts lie, as gettext lays them out, within this package.
CATALOGUE_FILE: Final = "locales/{language}/LC_MESSAGES/linn.po"


def read_catalogue(language: str) -> Catalog:
    """A language's texts as they lie in the package."""
    path = files(__package__) / CATALOGUE_FILE.format(language=language)
    return read_po(io.BytesIO(path.read_bytes()), locale=language)


@cache
def translations(language: str) -> NullTranslations:
    """A language's texts, to be looked up by key and English text; doubtful ones are left out.

    Args:
        language: a code of `LANGUAGES`.
    """
    if language == ENGLISH:
        return NullTranslations()
    compiled = io.BytesIO()
    write_mo(compiled, read_catalogue(language))
    compiled.seek(0)
    return Translations(compiled)


def load_all() -> None:
    """Read all languages now: for processes that can open no file later."""
    for language in LANGUAGES:
        translations(language)
        with speaking(language):
            get_decimal_symbol(spoken_locale())  # Babel reads a locale's file when it is first used


class Catalogue(Mapping[str, str]):
    """The texts by their keys, each in the language that is being spoken when it is asked for."""

    def __getitem__(self, key: str) -> str:
        english = IN_ENGLISH[key]
        return with_hours_spoken(str(translations(spoken_language()).pgettext(key, english)))

    def __iter__(self) -> Iterator[str]:
        return iter(IN_ENGLISH)

    def __len__(self) -> int:
        return len(IN_ENGLISH)


#: All texts by their keys; `{name}` is filled in, code spans stand in backticks.
TEXTS: Final = Catalogue()


def counted(key: str, number: int) -> str:
    """The form of a text that goes with a number, by the plural rules of the language spoken.

    Args:
        key: one of `PLURALS`.
        number: what stands before the word; a broken number counts as the next whole one.
    """
    one, more = PLURALS[key]
    return translations(spoken_language()).npgettext(key, one, more, number)
