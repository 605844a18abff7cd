"""What a reply to a question of safety says by its sense, and how far that is believed."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning import options
from bot.dialogue.meaning.options import OTHER, Meant, meant_of_safety, question_of
from bot.dialogue.meaning.said import Said, in_english
from bot.dialogue.safety_sense import says_safe
from tests.dialogue.unsure import FEW, MANY, Sense

IN_NONE = pytest.mark.parametrize(
    ("question", "safe", "unsafe"),
    [("in_danger", "no", "yes"), ("out_there", "no", "yes"), ("safe", "yes", "not_yet")],
)


@pytest.fixture
def sense(monkeypatch: pytest.MonkeyPatch) -> Sense:
    """Nothing is meant until a test says so."""
    return Sense(monkeypatch)


def heard(question: str, text: str, by_words: bool | None = None) -> bool | None:
    return says_safe(question, in_english(text), by_words)


@pytest.mark.parametrize("by_words", [True, False, None])
@pytest.mark.parametrize("text", ["1", "2", "no", "yes"])
def test_numbers_and_a_bare_yes_are_for_the_words(
    sense: Sense, text: str, by_words: bool | None
) -> None:
    """Whatever they are like; so is a reply that is like nothing, or like other talk."""
    sense.is_of("no", 0.9)
    assert heard("in_danger", text, by_words) is by_words
    for meant in (None, Meant(OTHER, 0.9, 0.9)):
        sense.meant = meant
        assert heard("in_danger", MANY, by_words) is by_words


@IN_NONE
def test_the_sense_alone_says_that_all_are_safe(
    sense: Sense, question: str, safe: str, unsafe: str
) -> None:
    """Where it is far ahead, and only just ahead it says nothing."""
    assert unsafe != safe
    sense.is_of(safe, 0.9)
    assert heard(question, MANY) is True
    sense.is_of(safe, 0.2)
    assert heard(question, MANY) is None


@IN_NONE
def test_words_that_sound_of_danger_need_more(
    sense: Sense, question: str, safe: str, unsafe: str
) -> None:
    """What is enough of quiet words is not of these."""
    del unsafe
    sense.is_of(safe, 0.46)
    assert heard(question, MANY) is True
    sense.sounds = True
    assert heard(question, MANY) is None


@IN_NONE
def test_a_few_words_are_proof_of_a_doubt_only(
    sense: Sense, question: str, safe: str, unsafe: str
) -> None:
    """They open no closed place and end no emergency."""
    del unsafe
    sense.is_of(safe, 0.9)
    assert heard(question, FEW) is (True if question == "in_danger" else None)


@IN_NONE
def test_that_somebody_is_in_danger_is_heard_of_a_doubt_only(
    sense: Sense, question: str, safe: str, unsafe: str
) -> None:
    """A closed place stays closed, and an emergency held, whatever is said of it."""
    del safe
    sense.is_of(unsafe, 0.9)
    assert heard(question, MANY) is (False if question == "in_danger" else None)
    sense.is_of(unsafe, 0.2)
    assert heard(question, MANY) is None


@IN_NONE
def test_a_long_message_takes_back_what_its_words_seem_to_say(
    sense: Sense, question: str, safe: str, unsafe: str
) -> None:
    """An all clear is unsure where the rest of it is not; a short one is not, nor an alarm."""
    sense.is_of(unsafe, 0.2)
    assert heard(question, MANY, True) is None
    assert heard(question, FEW, True) is True
    assert heard(question, MANY, False) is False
    sense.is_of(unsafe, 0.05)
    assert heard(question, MANY, True) is True
    sense.is_of(safe, 0.9)
    assert heard(question, MANY, True) is True
    assert heard(question, MANY, False) is False


# the nearest option


class _Near:
    """Nearness to a few labels, whatever is said."""

    def nearness(self, text: str) -> dict[str, float]:
        assert text
        return {"in_danger.no": 0.2, "in_danger.yes": 0.7, "in_danger.other": 0.4, "safe.yes": 1.0}


def test_the_nearest_option_and_how_far_it_is_ahead(monkeypatch: pytest.MonkeyPatch) -> None:
    """Among those that are offered, of that question and from the table of safety."""
    tables: list[str] = []

    def learned(table: str) -> _Near:
        tables.append(table)
        return _Near()

    monkeypatch.setattr(options, "learned", learned)
    found = meant_of_safety("in_danger", ("no", "yes", OTHER, "unheard"), in_english(FEW))
    assert found is not None
    assert (found.option, found.near) == ("yes", 0.7)
    assert found.ahead == pytest.approx(0.3)
    assert meant_of_safety("blink", ("dots", OTHER), in_english(FEW)) is None
    assert tables == ["safety", "safety"]
    assert {question_of(label) for label in _Near().nearness(FEW)} == {"in_danger", "safe"}


@pytest.mark.parametrize("language", ["en", "de", "es"])
def test_every_question_of_safety_has_examples(language: str) -> None:
    """What has been learned hears the options of all three, and other talk, in each language."""
    for question, options_of in (
        ("in_danger", ("no", "yes")),
        ("out_there", ("no", "yes")),
        ("safe", ("not_yet", "yes")),
    ):
        found = meant_of_safety(question, (*options_of, OTHER), Said(FEW, FEW, language))
        assert found is not None
        assert found.option in {*options_of, OTHER}
        assert found.ahead >= 0
