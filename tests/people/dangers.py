"""Dangers that are heard and false alarms, in all, by kind or tempting word, per language."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from bot.dialogue.danger import Danger, Level, read_danger
from tests.people.rate import Half, Rate, lines_of

#: A danger that is not heard is worse than a warning too many.
RECALL: Final = 0.99
FALSE_ALARMS: Final = 0.02
LANGUAGES: Final = {"English": "", "German": "de_", "Spanish": "es_"}


def figures(half: Half) -> Iterable[Rate]:
    """Recall and false alarms of each language, then the recall of each kind."""
    for language, prefix in LANGUAGES.items():
        dangers, harmless = dangers_of(prefix, half), harmless_of(prefix, half)
        found = [read_danger(text) for _, _, text in dangers]
        fired = [read_danger(text) for _, text in harmless]
        heard = [danger is not None for danger in found]
        alarms = sum(danger is not None for danger in fired)
        yield _rate(half, f"{language}: recall", sum(heard), len(heard), RECALL)
        yield Rate(
            "dangers",
            half,
            f"{language}: false alarms",
            alarms,
            len(harmless),
            FALSE_ALARMS,
            at_least=False,
        )
        outright, stopped = sum(map(_is_outright, found)), sum(map(_is_outright, fired))
        yield _rate(half, f"{language}: answered outright, the rest asked", outright, len(heard))
        yield Rate(
            "dangers",
            half,
            f"{language}: harmless answered outright",
            stopped,
            len(harmless),
            at_least=False,
        )
        for kind in sorted({row[0] for row in dangers}):
            of_kind = [hears for row, hears in zip(dangers, heard, strict=True) if row[0] == kind]
            yield _rate(half, f"{language}: {kind}", sum(of_kind), len(of_kind))


def _is_outright(danger: Danger | None) -> bool:
    """Whether a message is answered as a danger without being asked about."""
    return danger is not None and danger.level is not Level.UNSURE


def misses() -> Iterable[str]:
    """Dangers of the even half that are not heard or taken for another kind, and false alarms."""
    for prefix in LANGUAGES.values():
        for kind, _, text in dangers_of(prefix, "even"):
            found = read_danger(text)
            if found is None or found.kind.value != kind:
                yield f"{kind}, heard as {found.kind.value if found else 'nothing'}: {text}"
        for word, text in harmless_of(prefix, "even"):
            found = read_danger(text)
            if found is not None:
                yield f"harmless ({word}), heard as {found.kind.value}: {text}"


def dangers_of(prefix: str, half: Half) -> list[list[str]]:
    """Kind, level and text of each danger in one half of a language."""
    return _rows(f"{prefix}dangers.tsv", half)


def harmless_of(prefix: str, half: Half) -> list[list[str]]:
    """Tempting word and text of each harmless message in one half of a language."""
    return _rows(f"{prefix}harmless.tsv", half)


def _rows(name: str, half: Half) -> list[list[str]]:
    return [line.split("\t") for line in lines_of(name, half, header=True)]


def _rate(half: Half, name: str, hits: int, cases: int, aim: float | None = None) -> Rate:
    return Rate("dangers", half, name, hits, cases, aim)
