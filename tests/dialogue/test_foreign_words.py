"""Numbers, times of day and slips of German and Spanish messages."""

from __future__ import annotations

import re
from importlib.resources import files

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dialogue.reading import foreign, read
from bot.dialogue.reading.foreign import GLOSSED, glossed
from bot.dialogue.reading.foreign.clocks import with_clocks
from bot.dialogue.reading.foreign.dialects import in_standard
from bot.dialogue.reading.foreign.german_numbers import german_number
from bot.dialogue.reading.foreign.number_words import in_english
from bot.dialogue.reading.foreign.slips import mended

GERMAN_WORDS = [
    ("null", 0), ("zwo", 2), ("elf", 11), ("fuffzehn", 15), ("zwoelf", 12), ("fünfzig", 50),
    ("siebzich", 70), ("zwanzg", 20), ("achtundzwanzig", 28), ("hundert", 100),
    ("einhundertfünfundzwanzig", 125), ("zweihundertfuenfzig", 250), ("tausend", 1000),
    ("zweitausendfünfhundert", 2500), ("ein", None), ("und", None), ("stein", None),
    ("achtung", None), ("", None), ("drissg", 30), ("zwöi", 2), ("vierasechzig", 64),
    ("sechzehnhundert", 1600), ("zwölfhundertfünfzig", 1250),
]  # fmt: skip


@pytest.mark.parametrize(("word", "value"), GERMAN_WORDS)
def test_german_number_words_have_their_value(word: str, value: int | None) -> None:
    """Whole words alone are numbers; an article is none."""
    assert german_number(word) == value


NUMBERS = [
    ("de", "brennweite achtundzwanzig", "brennweite 28"),
    ("de", "drei leute", "three leute"),
    ("de", "blende zweikommaacht", "blende 2.8"),
    ("de", "kommaware", "kommaware"),
    ("de", "f 13 halbe sekunde", "f 13 1/2 s"),
    ("de", "13 1/2 meter", "13.5 meter"),
    ("de", "eins durch sechzig", "1/60 s"),
    ("de", "zwei meter zwanzig, blende acht", "2.20 m, blende eight"),
    ("de", "blende fünf komma sechs", "blende 5.6"),
    ("de", "ein sechzigstel", "1/60 s"),
    ("de", "eine viertelsekunde", "1/4 s"),
    ("de", "ein viertel", "1/4"),
    ("de", "zwei zehntel", "0.2 s"),
    ("de", "1/125stel", "1/125 s"),
    ("de", "ein mantel", "ein mantel"),
    ("de", "ein eintel", "ein eintel"),
    ("de", "anderthalb meter", "1.5 meter"),
    ("de", "zwoeinhalb meter", "2.5 meter"),
    ("de", "eineinhalb", "1.5"),
    ("de", "einhalb", "1/2"),
    ("de", "soeinhalb", "soeinhalb"),
    ("de", "ein drittel drunter", "1/3 stufe drunter"),
    ("de", "ein drittel blende", "1/3 blende"),
    ("de", "ein drittel vom bild", "ein drittel vom bild"),
    ("de", "der achter", "der 8er"),
    ("de", "der dreier", "der dreier"),
    ("de", "zwei meter fuffzig hoch", "2.50 m hoch"),
    ("de", "zwei fuffzig", "2.50"),
    ("de", "an meter zwanzg", "1.20 m"),
    ("de", "ein meter zehn hoch", "1.1 m hoch"),
    ("de", "a viertl sekund, ein sechstel", "1/4 s, 1/6 s"),
    (
        "de",
        "sechserstopper, zwölfmeterfall, klarerstopper",
        "six stopper, 12 meterfall, klarerstopper",
    ),
    ("de", "acht bis zehn meter", "8-10 meter"),
    ("de", "14-24 2,8, 35er 1,4", "14-24 2.8, 35er 1.4"),
    ("de", "iso 100,24mm", "iso 100,24mm"),
    ("es", "iso ciento sesenta", "iso 160"),
    ("es", "treinta y cinco", "35"),
    ("es", "cuarenta y un metros", "41 metros"),
    ("es", "dos pasos", "two pasos"),
    ("es", "f dos punto ocho", "f 2.8"),
    ("es", "un quinceavo de segundo", "1/15 s"),
    ("es", "un octavo", "1/8 s"),
    ("es", "un cuarto", "1/4"),
    ("es", "1/60avo", "1/60 s"),
    ("es", "un 125avo", "1/125 s"),
    ("es", "dos decimas de segundo", "0.2 s"),
    ("es", "un tercio por debajo", "1/3 stop por debajo"),
    ("es", "un tercio de segundo", "1/3 s"),
    ("es", "un tercio de la foto", "1/3 de la foto"),
    ("es", "dos tercios de paso", "2/3 paso"),
    ("es", "paso y medio", "1.5 pasos"),
    ("es", "un paso y un tercio", "1 1/3 pasos"),
    ("es", "metro y medio", "1.5 metros"),
    ("es", "a pie y medio", "a 1.5 pies"),
    ("es", "a metro y cuarto", "a 1.25 metros"),
    ("es", "dos metros y cuarto", "2.25 metros"),
    ("es", "un metro diez", "1.1 m"),
    ("es", "3 km y medio", "3.5 km"),
    ("es", "menos dos y medio", "menos 2.5"),
    ("es", "metro ochenta, mi hijo", "1.80 m, mi hijo"),
    ("es", "un dos mil avos", "1/2000 s"),
    ("es", "uno entre ocho", "1/8 s"),
    ("es", "la tercera parte de un segundo", "1/3 s"),
    ("es", "la mitad de un segundo", "1/2 s"),
    ("es", "entre ocho y diez metros", "8-10 metros"),
]


@pytest.mark.parametrize(("language", "text", "turned"), NUMBERS)
def test_number_words_become_numbers(language: str, text: str, turned: str) -> None:
    """Large ones are digits, small ones English words, fractions and decimals are both."""
    assert " ".join(in_english(text, language).replace(" stop stop", " stop").split()) == turned


CLOCKS = [
    ("de", "halb nine", "08:30"),
    ("de", "five vor halb nine abends", "20:25"),
    ("de", "ten nach halb nine", "08:40"),
    ("de", "1/4 vor eight", "07:45"),
    ("de", "1/4 nach eight abends", "20:15"),
    ("de", "dreiviertel eight", "07:45"),
    ("de", "1/4 eight", "07:15"),
    ("de", "ten nach eight abends", "20:10"),
    ("de", "20 vor nine", "08:40"),
    ("de", "19 uhr 12", "19:12"),
    ("de", "19.12 uhr", "19:12"),
    ("de", "eight uhr abends", "20:00"),
    ("de", "halb nine m hoch", "halb nine m hoch"),
    ("es", "a las seven y media de la tarde", "a las 19:30"),
    ("es", "las eight menos cuarto", "las 07:45"),
    ("es", "ten y cuarto de la noche", "22:15"),
    ("es", "las una y ten", "las 01:10"),
    ("es", "las 21 horas", "las 21:00"),
    ("es", "a las eight de la noche", "a las 20:00"),
    ("es", "a las five", "a las five"),
    ("es", "puesta es eight y cuarto", "puesta es 08:15"),
    ("es", "cuarto para las eight", "07:45"),
    ("es", "ten para las eight de la noche", "19:50"),
]


@pytest.mark.parametrize(("language", "text", "clock"), CLOCKS)
def test_spoken_times_of_day_become_digits(language: str, text: str, clock: str) -> None:
    """Halves, quarters and minutes, before and after; a bare hour stays."""
    assert with_clocks(text, language) == clock


DIALECTS = [
    ("da foi is acht meter, hab i gmessen", "da fall is acht meter, hab ich gemessen"),
    ("runtergschraubt und gnommen", "runtergeschraubt und genommen"),
    (
        "d kamera isch uf em stativ, es 35er han i druf",
        "d kamera ist auf dem stativ, es 35er hab ich drauf",
    ),
    ("stativ aufbaut, an nd8 drauf", "stativ aufgebaut, ein nd8 drauf"),
    ("grad gut, an der wand", "grad gut, an der wand"),
    ("wos soi i eistelln", "was soll ich einstellen"),
    ("wia lang soi i belichtn", "wie lang soll ich belichten"),
    ("mei linsn is noss vo da gischt", "mei linse is nass von da gischt"),
    ("obn is da himme", "oben is da himmel"),
    ("das blatt, der stein, ein turm", "das blatt, der stein, ein turm"),
]


@pytest.mark.parametrize(("text", "standard"), DIALECTS)
def test_dialects_become_standard_german(text: str, standard: str) -> None:
    """What the south and the Swiss write is put into the words that wordings know."""
    assert in_standard(text) == standard


SLIPS = [
    ("de", "stattiv und polfiltr", "stativ und polfilter"),
    ("de", "das stativs licht blendet", "das stativs licht blendet"),
    ("de", "wasserfälle", "wasserfälle"),
    ("es", "el tripde y la casacda", "el tripode y la cascada"),
    ("es", "la segunda cascadas", "la segunda cascadas"),
]


@pytest.mark.parametrize(("language", "text", "right"), SLIPS)
def test_slips_in_the_trades_words_are_mended(language: str, text: str, right: str) -> None:
    """One letter off is the word; its own forms and other words stay."""
    assert mended(text, language) == right


@pytest.mark.parametrize("language", sorted(GLOSSED))
def test_no_english_of_a_wording_is_a_word_of_the_language(language: str) -> None:
    """What a wording became is not turned a second time."""
    text = files(foreign).joinpath(f"{language}.tsv").read_text("utf-8")
    lines = [line.split("\t") for line in text.splitlines() if line and line[0] not in "#@"]
    words = {said: english for said, english in lines if re.fullmatch(r"[^\W\d_]+", said)}
    turned = {
        word: english
        for said, english in lines
        if said not in words
        for word in re.findall(r"[a-z]+", re.sub(r"\\\d", "", english))
        if words.get(word, word) != word
    }
    assert turned == {}


@pytest.mark.parametrize(
    ("language", "plain", "hurried"),
    [
        ("de", "Kamera auf Augenhöhe, zwölf Meter", "kamera auf augenhoehe, zwoelf meter"),
        ("de", "über dem Boden 40 cm, drüber", "ueber dem boden 40 cm, druber"),
        ("es", "trípode sí, la cámara a 40 cm", "tripode si, la camara a 40 cm"),
    ],
)
def test_umlauts_and_accents_may_be_left_out(language: str, plain: str, hurried: str) -> None:
    """Two letters or none for an umlaut, no accent: the gloss has the same numbers and words."""
    known = re.findall(r"[\d.]+ ?\w+|camera|height|tripod|over", glossed(plain, language))
    assert known == re.findall(r"[\d.]+ ?\w+|camera|height|tripod|over", glossed(hurried, language))


@pytest.mark.parametrize(
    ("language", "text", "told"),
    [
        ("es", "iso mil seiscientos", {"iso": 1600}),
        ("es", "iso tres mil doscientos", {"iso": 3200}),
        ("es", "iso mil", {"iso": 1000}),
        ("de", "fünf zehntel sekunden", {"shutter_s": 0.5}),
        ("de", "sieben zehntel", {"shutter_s": 0.7}),
        ("de", "zwei zehntel", {"shutter_s": 0.2}),
    ],
)
def test_thousands_and_tenths(language: str, text: str, told: dict[str, float]) -> None:
    """Several words make one number, whatever the number of thousands or tenths."""
    assert read(glossed(text, language)).known() == pytest.approx(told)


@given(st.text(max_size=60), st.sampled_from(sorted(GLOSSED)))
def test_any_text_can_be_turned(text: str, language: str) -> None:
    """No message breaks the number words, the clocks or the slips."""
    said = text.casefold()
    assert isinstance(with_clocks(in_english(mended(said, language), language), language), str)
