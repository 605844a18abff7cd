"""Rules are left out only where a text holds nothing that they could match."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dialogue.reading.foreign import _gloss
from bot.dialogue.reading.needed import may_match, needed_by, pieces_of
from bot.dialogue.reading.rewriting import Rewriting
from bot.dialogue.reading.symptoms import _COMPLAINTS

CORPUS = Path(__file__).parent / "corpus"


@pytest.mark.parametrize(
    ("pattern", "pieces"),
    [
        (r"\bpol\b", {"pol"}),
        (r"zqx|zj", {"zqx", "zj"}),
        (r"\b(?:a )?zq(?!x)\d+", {" zq", "zq"}),
        (r"\d+ ?(?:m|ft)?", {"\\d"}),
        (r"[\d.]+", set()),
        (r"[^a]b*", set()),
        (r"(?:ab|\w)", set()),
        (r"[a-c]", {"a", "b", "c"}),
        (r"[a-z]", set()),
        (r"(?>zq)+\w", {"zq"}),
        (r"(?<=zq)\w(?=.)", {"zq"}),
        (r"(?:zqx)?\w", set()),
        (r"(?:zqx){0,3}\w", set()),
        (r"(?:zqx){2,3}", {"zqx"}),
        (r"(?:.zq|.xj)", {"zq", "xj"}),
        (r"(?:zq|)", set()),
        (r"(?i:zq)", set()),
        (r".", set()),
    ],
)
def test_pieces_are_found_in_the_pattern(pattern: str, pieces: set[str]) -> None:
    """What a pattern can't match without; nothing where that is not known."""
    assert needed_by(re.compile(pattern)) == pieces


def test_nothing_is_known_of_patterns_for_capitals_too() -> None:
    """A text has small letters where such a pattern has capitals."""
    assert needed_by(re.compile("Zq", re.IGNORECASE)) == frozenset()
    assert may_match(frozenset(), "")


def test_too_many_wordings_are_not_written_out() -> None:
    """Parts with many wordings stand for themselves, and too many pieces tell nothing."""
    few = "(?:a|e|i|o|u|x|y|z|q|k|w)"
    assert needed_by(re.compile(f"{few}{few}{few} zqx")) == {"zqx"}
    many = "|".join(f"{one}{two}q." for one in "abcdefghijklmn" for two in "opqrstuvwxyz")
    assert needed_by(re.compile(f"(?:{many})")) == frozenset()


def test_rules_follow_each_other() -> None:
    """What one rule writes, the next one finds; what tidies does so after each."""
    rules = [(re.compile("rock"), "stone"), (re.compile("stone"), "moss "), (re.compile("zq"), "")]
    assert Rewriting(rules).of("a rock") == "a moss "
    assert Rewriting(rules, str.strip).of(" a rock") == "a moss"
    assert Rewriting([(re.compile("a(?=x)"), "b")]).of("a") == "a"


def _texts(name: str) -> list[str]:
    lines = (CORPUS / name).read_text("utf-8").splitlines()
    return [json.loads(line)["text"].casefold() for line in lines[::3]]


@pytest.mark.parametrize("language", ["de", "es"])
def test_no_wording_that_matches_is_left_out(language: str) -> None:
    """Of every wording of a language, on messages of that language."""
    rules = _gloss(language).phrases._rules
    for text in _texts(f"thumbs_{language}_facts.jsonl"):
        pieces = pieces_of(text)
        for needed, pattern, _ in rules:
            if needed and needed.isdisjoint(pieces):
                assert pattern.search(text) is None, (pattern.pattern, text)


@given(st.text("abdefhiklmnorstuw '", max_size=40))
def test_no_complaint_that_matches_is_left_out(text: str) -> None:
    """Of every complaint, on any letters."""
    for _, pattern, needed in _COMPLAINTS:
        assert may_match(needed, text) or pattern.search(text) is None
