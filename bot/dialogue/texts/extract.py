"""Brings the translators' files up to date with the English texts.

Run `python -m bot.dialogue.texts.extract` after a text was added or changed: what is translated
stays, a translation whose English has changed is marked as doubtful (`fuzzy`, and then unused).
"""

from __future__ import annotations

import io
import sys
from collections.abc import Sequence
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

from babel import Locale
from babel.messages.catalog import Catalog
from babel.messages.pofile import read_po, write_po

from bot.dialogue.texts.amounts import PLURALS
from bot.dialogue.texts.catalogue import CATALOGUE_FILE
from bot.dialogue.texts.english import IN_ENGLISH
from bot.dialogue.texts.languages import ENGLISH, LANGUAGES

#: One date for all, so that a file changes only where its texts do.
_WRITTEN: Final = datetime(2026, 11, 25, tzinfo=UTC)
_HEADER: Final = """\
# Linn's texts. msgctxt is the key of the text, msgid the English text.
# Keep every {name}; backticks stand around what a person may type.
# `python -m bot.dialogue.texts.extract` brings this file up to date."""


def updated(written: bytes | None, language: str) -> bytes:
    """A translators' file with all texts of now.

    Args:
        written: the file as it is, None for a new language.
        language: its code.
    """
    catalogue = _english(language)
    if written is not None:
        catalogue = read_po(io.BytesIO(written), locale=language)
        catalogue.update(_english(language), update_header_comment=True)
        catalogue.revision_date = _WRITTEN
    for message in catalogue:
        message.flags.discard("python-format")  # "5 % of" is no format
    file = io.BytesIO()
    write_po(file, catalogue, width=96, include_previous=True, ignore_obsolete=True)
    return file.getvalue()


def _english(language: str) -> Catalog:
    """All texts of now, untranslated."""
    catalogue = Catalog(
        locale=language,
        project="Linn",
        version="1",
        creation_date=_WRITTEN,
        revision_date=_WRITTEN,
        msgid_bugs_address="see README.md",
        last_translator="Linn",
        language_team=Locale.parse(language).english_name,
        header_comment=_HEADER,
        fuzzy=False,
    )
    for key, text in IN_ENGLISH.items():
        catalogue.add(text, context=key)
    for key, forms in PLURALS.items():
        catalogue.add(forms, context=key)
    return catalogue


def main(folder: Path = Path(__file__).parent) -> None:
    """Write the files of all languages anew, and tell how many texts each one still lacks."""
    for language in LANGUAGES:
        if language == ENGLISH:
            continue
        path = folder / CATALOGUE_FILE.format(language=language)
        path.parent.mkdir(parents=True, exist_ok=True)
        written = updated(path.read_bytes() if path.exists() else None, language)
        path.write_bytes(written)
        sys.stdout.write(f"{language}: {missing(written)} to translate\n")


def missing(written: bytes) -> int:
    """How many texts of a translators' file are empty or doubtful."""
    messages = (message for message in read_po(io.BytesIO(written)) if message.id)
    return sum(message.fuzzy or not _is_filled(message.string) for message in messages)


def _is_filled(string: str | Sequence[str] | None) -> bool:
    forms = [string] if isinstance(string, str) else string or [""]
    return all(forms)


if __name__ == "__main__":
    main()
