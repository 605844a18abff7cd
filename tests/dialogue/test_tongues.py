"""The words of each language that readers look for."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from importlib import import_module
from pathlib import Path
from pkgutil import iter_modules

import pytest

import bot.dialogue
from bot.dialogue import tongues
from bot.dialogue.danger.aftermath import has_left, is_over, is_shaken, wonders
from bot.dialogue.danger.calm_parts import denies_rising, without_calm, without_idle
from bot.dialogue.danger.with_me import is_with_me, wishes_a_picture
from bot.dialogue.meaning.filters_on import put_on, with_it
from bot.dialogue.texts.languages import LANGUAGES
from bot.dialogue.tongues import TONGUES, each_once, english, in_any, single_words


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


@pytest.mark.parametrize("run", ["ok ", "but and then also ", "and so then ", "1 2 "])
@pytest.mark.parametrize(
    "reads",
    [is_over, has_left, wonders, is_shaken, is_with_me, wishes_a_picture, put_on, with_it],
)
def test_a_long_run_of_small_words_ends(reads: Callable[[str], object], run: str) -> None:
    """Words that three languages share stand once in what is run through: the call comes back."""
    assert not reads(run * 60)


@pytest.mark.parametrize("run", ["ok ", "but and then also ", "no "])
def test_a_long_run_denies_nothing(run: str) -> None:
    """Nothing is taken out, and nothing is denied."""
    text = f"{run * 60}x"
    assert without_calm(text) == without_idle(text) == text
    assert not denies_rising(text)


def test_words_stand_once() -> None:
    """The word of two languages once, a word made of two others not at all."""
    words = each_once("filters_on.small").strip("(?:)").split("|")
    assert len(words) == len(set(words))
    assert "and with" not in words
    assert {"ok", "esta vez"} <= set(words)
