"""Languages: complete and true to the English, numbers as the CLDR has them, each person's own."""

from __future__ import annotations

import re
from datetime import UTC, datetime
from pathlib import Path
from string import Formatter
from typing import Final

import pytest
from babel.dates import format_date
from babel.lists import format_list
from babel.numbers import format_percent
from babel.units import format_unit

from bot.dialogue import texts
from bot.dialogue.compose import FIRST_LINE, LONG, Part, Role, by_length
from bot.dialogue.facts import Facts, Units
from bot.dialogue.reading.tongue import language_of
from bot.dialogue.texts import TEXTS, extract, measures, speaking
from bot.dialogue.texts.catalogue import CATALOGUE_FILE, load_all
from bot.dialogue.texts.commands import BY_LANGUAGE, folded
from bot.dialogue.texts.english import IN_ENGLISH
from bot.dialogue.texts.languages import LANGUAGES
from tests.dialogue.player import Player
from tests.dialogue.walked import walked

_FOLDER: Final = Path(texts.__file__).parent
_OTHERS: Final = [language for language in LANGUAGES if language != "en"]


def _written(language: str) -> bytes:
    return (_FOLDER / CATALOGUE_FILE.format(language=language)).read_bytes()


def _places(text: str) -> set[str | None]:
    return {name for _, name, _, _ in Formatter().parse(text) if name is not None}


@pytest.mark.parametrize("language", _OTHERS)
def test_nothing_is_left_to_translate(language: str) -> None:
    """Every text stands in every language, and the file is the one that the texts make."""
    assert extract.missing(_written(language)) == 0
    assert extract.updated(_written(language), language) == _written(language)


def test_a_new_language_begins_with_everything_to_translate() -> None:
    """A file that does not exist yet is made, and counted as empty."""
    assert extract.missing(extract.updated(None, "fr")) > len(IN_ENGLISH) / 2


def test_the_files_are_written_where_they_are_read(tmp_path: Path) -> None:
    """The command makes a file for each language beside the texts."""
    extract.main(tmp_path)
    extract.main(tmp_path)
    assert all((tmp_path / CATALOGUE_FILE.format(language=one)).exists() for one in _OTHERS)


@pytest.mark.parametrize("language", _OTHERS)
def test_translations_keep_what_is_filled_in(language: str) -> None:
    """Each place to fill in is there, and marks of code spans stand in pairs."""
    with speaking(language):
        for key, english in IN_ENGLISH.items():
            assert _places(TEXTS[key]) == _places(english), key
            assert TEXTS[key].count("`") % 2 == 0, key


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_command_has_words_in_every_language(language: str) -> None:
    """Whoever speaks a language can say in it whatever can be said in English."""
    assert BY_LANGUAGE[language].keys() == BY_LANGUAGE["en"].keys()


def test_a_word_is_one_command_in_all_languages() -> None:
    """All words are read at any time, so none may mean two things."""
    meant: dict[str, set[str]] = {}
    for commands in BY_LANGUAGE.values():
        for command, words in commands.items():
            for word in words:
                meant.setdefault(folded(word), set()).add(command)
    assert {word: found for word, found in meant.items() if len(found) > 1} == {}


def _spaced(text: str) -> str:
    """The CLDR writes spaces that do not break where Linn writes plain ones."""
    return re.sub(r"[\u00a0\u202f]", " ", text)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("value", [1.5, 2.8, 9.0, 12.0, 250.0])
def test_lengths_are_written_as_in_the_cldr(language: str, value: float) -> None:
    """Decimal mark and unit of a length, against Babel's own writing of it."""
    locale = LANGUAGES[language]
    with speaking(language):
        written = measures.length(value, Units.METRIC)
    cldr = format_unit(value, "length-meter", "short", locale=locale)
    assert written.replace(" ", "") == _spaced(cldr).replace(" ", "")


@pytest.mark.parametrize("language", _OTHERS)
@pytest.mark.parametrize("share", [0.05, 0.11, 0.5])
def test_shares_are_written_as_in_the_cldr(language: str, share: float) -> None:
    """German and Spanish part the sign from its number; the SI brochure has it so for English."""
    with speaking(language):
        assert measures.percent(share) == _spaced(format_percent(share, locale=language))


@pytest.mark.parametrize(
    ("language", "percent", "length", "day", "moment", "gain", "names", "third", "two"),
    [
        ("en", "5.3 %", "1.5 m", "18 June 2027", "14 July, 14:05 UTC", "+0.7", "a, b and c",
         "1/3 stop", "1 2/3 stops"),
        ("de", "5,3 %", "1,5 m", "18. Juni 2027", "14. Juli, 14:05 UTC", "+0,7", "a, b und c",
         None, None),
        ("es", "5,3 %", "1,5 m", "18 de junio de 2027", "14 de julio, 14:05 UTC", "+0,7",
         "a, b y c", None, None),
    ],
)  # fmt: skip
def test_the_same_numbers_in_each_language(
    language: str,
    percent: str,
    length: str,
    day: str,
    moment: str,
    gain: str,
    names: str,
    third: str | None,
    two: str | None,
) -> None:
    """Marks, names of months, lists and plurals follow the language (CLDR, by Babel)."""
    june, july = datetime(2027, 6, 18, tzinfo=UTC), datetime(2027, 7, 14, 14, 5, tzinfo=UTC)
    locale = LANGUAGES[language]
    with speaking(language):
        assert measures.percent(0.053) == percent
        assert measures.length(1.5, Units.METRIC) == length
        assert measures.date(june) == day == format_date(june, "long", locale=locale)
        assert measures.day_and_clock(july) == moment
        assert measures.fixed(0.7, sign=True) == gain
        listed = measures.listing(["a", "b", "c"], TEXTS["and"])
        assert listed == names == format_list(["a", "b", "c"], locale=locale)
        if third is not None:
            assert (measures.stops(1 / 3), measures.stops(5 / 3)) == (third, two)
        assert measures.stops(1).startswith("1 ")
        assert measures.stops(1) != measures.stops(2).replace("2", "1") or language == "es"


def test_an_unknown_language_is_english() -> None:
    """A row that names a language which is gone does no harm."""
    load_all()
    with speaking("xx"):
        assert TEXTS["and"] == "and"


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("hallo", "de"),
        ("ich bin am Wasser und habe ein Stativ", "de"),
        ("hola", "es"),
        ("estoy con el trípode", "es"),
        ("I'm at the fall and it's bright", "en"),
        ("f/11 1/4 s iso 100", None),
        ("the Wasser und ich", None),
        ("die", None),
        ("", None),
    ],
)
def test_language_by_small_words(text: str, language: str | None) -> None:
    """A message is of a language only where that is clear (own rule)."""
    assert language_of(text) == language


def test_the_other_language_is_offered_once() -> None:
    """Later nothing switches by itself; the word for it is told with the answer, once."""
    player = Player()
    player.say("what are the settings for my frame?")
    assert "‘deutsch’" in player.say("hallo")[0].body
    assert "‘deutsch’" not in player.say("ich bin mit der Kamera am Bach")[0].body
    assert player.context is not None
    assert player.context.person.language == "en"
    player.say("deutsch")
    assert player.say("danke")[0].body != TEXTS["thanks"]
    with speaking("de"):
        assert player.say("danke")[0].body.startswith(TEXTS["thanks"])


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("Guten Tag, ich stehe mit einer Gruppe am Bach", "de"),
        ("Buenas! Estoy en una cascada con la cámara, me das una mano?", "es"),
        ("grüezi", "de"),
        ("start", "en"),
        ("12 m hoch, 15 m weg, Fels bei 1,5 m, Vollformat 24-70", "de"),
        ("Wasserfall 15 m, Stativ dabei", "de"),
        ("servus, i bin bei an Foi, is ned hoch, so 6 m ca", "de"),
        ("i steh so 10 m weg, vorn is a stoa bei an meter", "de"),
        ("12 m de alto, a 15 m, roca a 1,5 m, full frame 24-70", "es"),
        ("cascada 10 metros, tripode si", "es"),
        ("12 m tall, 18 m away, rock at 1.5 m", "en"),
        ("the stativ is 3 m away", "en"),
        ("f/11, 1/4 s, iso 100", "en"),
    ],
)
def test_who_begins_in_a_language_is_spoken_to_in_it(text: str, language: str) -> None:
    """The first caution is of use in one's own language; the word for English stands beside it."""
    player = Player()
    said = player.say(text)[0].body
    assert player.context is not None
    assert player.context.person.language == language
    assert ("‘english’" in said) == (language != "en")


def test_an_emergency_is_answered_in_the_language_in_which_it_is_told() -> None:
    """Nobody shall have to read English while somebody is in the water."""
    said = Player().say("Hilfe, mein Freund ist in den Fluss gefallen und wird abgetrieben")
    assert "Notruf" in said[0].body


def test_nothing_switches_within_a_walk() -> None:
    """A walk in numbers alone goes on in its language: a quoted sentence would switch it, too."""
    player = Player()
    player.say("12 m tall, 18 m away")
    player.say("Guten Tag, ich bin mit der Kamera am Bach")
    assert player.context is not None
    assert player.context.person.language == "en"


@pytest.mark.parametrize("word", ["language", "Sprache", "idioma"])
def test_languages_are_listed_by_their_own_names(word: str) -> None:
    """Who can't read the present language finds the own one."""
    (said,) = Player().say(word)
    assert all(name in said.body for name in ("English", "Deutsch", "español"))


def test_each_length_of_messages() -> None:
    """Short is the first line and the question, long brings reasons; `why` has what is left out."""
    told = {}
    for length in ("short", "usual", "long"):
        player = Player()
        player.say(length)
        player.say("12 m tall, 18 m away, rock at 1.5 m, full frame, 16-35, tripod")
        player.say("1")
        player.say("1")
        (told[length],) = player.say("1")
    bodies = {length: said.body for length, said in told.items()}
    assert len(bodies["short"]) <= len(bodies["usual"]) < len(bodies["long"]) <= LONG
    assert all(len(body.split("\n")[0]) <= FIRST_LINE for body in bodies.values())
    assert len({said.question for said in told.values()}) == 1


@pytest.mark.parametrize("length", ["short", "long"])
def test_danger_has_the_usual_length(length: str) -> None:
    """What is said in danger does not depend on the wish for short or long messages."""
    plain, other = Player(), Player()
    other.say(length)
    assert other.say("my friend fell in")[0].body == plain.say("my friend fell in")[0].body


def test_the_kit_of_a_long_talker_says_no_reasons_that_are_not_there() -> None:
    """An answer without reasons is as long as ever."""
    player = Player()
    usual = player.say("kit")[0].body
    player.say("long")
    assert player.say("kit")[0].body == usual


def test_a_long_message_leaves_out_a_reason_that_is_too_long() -> None:
    """Reasons come in their order; one that does not fit makes room for the next."""
    said = [Part(Role.SETTINGS, "begin")]
    reasons = [
        Part(Role.CHECK, "unread", {"pieces": "x" * LONG}),
        Part(Role.CHECK, "unread", {"pieces": "f/11"}),
    ]
    kept, left = by_length(said, "long", reasons)
    assert kept == [*said, reasons[1]]
    assert left == []


def test_no_filter_on_is_told_as_such() -> None:
    """A filter of nothing is no filter."""
    assert texts.known(Facts(nd_on_stops=0.0), None) == TEXTS["known.no_nd_on"]


@pytest.mark.parametrize(
    ("command", "time"), [("sprache deutsch", "0,3 s"), ("idioma español", "0,3 s"), ("", "0.3 s")]
)
def test_parts_of_a_second_follow_the_language(command: str, time: str) -> None:
    """A time on the dial, in a line of settings and in its reasons."""
    player = walked(*filter(None, [command]))
    said = player.say("f/8, ISO 100, 0.3 s, 6-stop ND on")[0].body
    assert time in said
