"""The words of each language that readers look for."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from importlib import import_module
from pathlib import Path
from pkgutil import iter_modules

import pytest

import bot.dialogue
from bot.dialogue import tongues
from bot.dialogue.texts.languages import LANGUAGES
from bot.dialogue.tongues import TONGUES, english, in_any, single_words


def test_every_language_has_its_words() -> None:
    """Whoever adds a language that is spoken gives it a folder of words, too."""
    assert TONGUES.keys() == LANGUAGES.keys()
    folders = {module.name for module in iter_modules(tongues.__path__) if module.ispkg}
    assert len(folders) == len(TONGUES)


@pytest.mark.parametrize("language", TONGUES)
def test_a_language_lacks_no_idea(language: str) -> None:
    """Each language says something for each idea, and knows none that the others lack."""
    assert TONGUES[language].keys() == TONGUES["en"].keys()
    assert [name for name, said in TONGUES[language].items() if not said.strip()] == []


def test_an_idea_can_be_looked_for() -> None:
    """Each is an expression by itself that no empty message holds, and a list of words."""
    assert [name for name in TONGUES["en"] if re.compile(in_any(name)).fullmatch("")] == []
    assert [name for name in TONGUES["en"] if not single_words(name)] == []


def test_an_idea_is_called_by_its_module_and_used() -> None:
    """So it is found by its name, none covers another, and none is kept in vain."""
    named = [name for module, table in _tables() for name in table if name.startswith(f"{module}.")]
    assert sorted(named) == sorted(TONGUES["en"])
    source = "".join(
        path.read_text("utf-8") for path in Path(bot.dialogue.__path__[0]).rglob("*.py")
    )
    assert [name for name in named if not re.search(_asked_as(name), source)] == []


def _asked_as(name: str) -> str:
    """How an idea is named where it is looked for: in full, or with its end put in."""
    stems = [rf"[\"']{name[: at + 1]}\{{" for at, letter in enumerate(name) if letter in "._"]
    return "|".join([rf"[\"']{name}[\"'](?!:)", f"<{name}>", *stems])


def _tables() -> Iterator[tuple[str, Mapping[str, str]]]:
    """The tables of a language, each with the name of its module."""
    for module in iter_modules(english.__path__):
        found = vars(import_module(f"{english.__name__}.{module.name}"))
        yield from ((module.name, table) for table in found.values() if isinstance(table, dict))
