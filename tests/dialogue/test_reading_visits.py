"""Who walks, when it starts, how long the way is, and own words for it, in three languages."""

from __future__ import annotations

import pytest

from bot.dialogue.facts import Facts
from bot.dialogue.meaning.visit_words import (
    car_in,
    days_ahead,
    party_in,
    place_in,
    speaks_of_day_to_come,
)
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.normal import normalise
from bot.dialogue.reading.party import is_only_party
from bot.dialogue.reading.visit import read_visit, with_pace


@pytest.mark.parametrize(
    ("language", "text", "people", "slowest"),
    [
        (
            "en",
            "There's two of us, me and my father, he's 71 and slow when it's slippery",
            2,
            "old",
        ),
        ("en", "we've two kids along", None, "child"),
        ("en", "my wife and I and two kids", 4, "child"),
        ("en", "my knee is bad", None, "lame"),
        ("en", "we're four, one has a dodgy hip", 4, "lame"),
        ("en", "eight students", 9, "students"),
        ("en", "a group of 6, one slow", 6, "slow"),
        ("en", "my daughter is 7 and comes along", None, "child"),
        ("en", "my grandma comes along", 2, "old"),
        ("en", "my partner walks slowly", None, "slow"),
        ("en", "a dozen people", 12, None),
        ("en", "7 of us, all fit", 7, None),
        ("en", "I go alone", 1, None),
        ("en", "my wife and I", 2, None),
        ("en", "there's 3 of us, my dad has a bad hip", 3, "lame"),
        ("en", "my wife has a sore knee", None, "lame"),
        ("de", "mein Vater hat ein schlechtes Knie", None, "lame"),
        ("en", "two friends and I hike there", 3, None),
        ("en", "I go with three others", 4, None),
        ("en", "me and my two kids", 3, "child"),
        ("en", "a workshop of eight", 8, "students"),
        ("en", "my kids love this picture", None, None),
        ("en", "two children play on the bridge", None, None),
        ("en", "my grandfather built this camera", None, None),
        ("en", "an elderly couple stands in my frame", None, None),
        ("en", "20 people on the bridge", None, None),
        ("en", "the tripod leg is weak", None, None),
        ("en", "I'm at 8, and my wife comes along", 2, None),
        ("en", "I'm so slow with the filters", None, None),
        ("en", "I need more time", None, None),
        ("en", "we go without the kids", None, None),
        ("en", "my son is 12", None, None),
        ("en", "the stream is slow", None, None),
        ("en", "a slow shutter please", None, None),
        ("en", "no kids, my wife and I with two friends", 4, None),
        ("de", "wir sind zu zweit, mein Vater und ich, er ist 71 und langsam", 2, "old"),
        ("de", "zwei Kinder sind dabei", None, "child"),
        ("de", "mein Knie macht Probleme", None, "lame"),
        ("de", "acht Schüler", 9, "students"),
        ("de", "meine Oma kommt mit", 2, "old"),
        ("de", "vier Personen, davon zwei Kinder", 4, "child"),
        ("de", "wir sind zu fünft, alle fit", 5, None),
        ("de", "es wird langsam dunkel", None, None),
        ("de", "der Bach ist langsam", None, None),
        ("es", "somos dos, mi padre y yo, tiene 71 años y va lento", 2, "old"),
        ("es", "vienen dos niños", None, "child"),
        ("es", "me duele la rodilla", None, "lame"),
        ("es", "ocho alumnos", 9, "students"),
        ("es", "mi mujer y yo", 2, None),
        ("es", "voy con dos amigos", 3, None),
        ("de", "mit zwei Freunden", 3, None),
        ("es", "el agua va lenta", None, None),
        ("en", "I'm 58 and not the fastest", None, "slow"),
        ("en", "my lens is not the fastest", None, None),
        ("en", "my friend Odile comes along, she had her knee done in spring", 2, "lame"),
        ("en", "hip replacement last year", None, "lame"),
        ("en", "his knee was operated", None, "lame"),
        ("de", "bin 58 und nicht die Schnellste", None, "slow"),
        ("de", "er wurde am Knie operiert", None, "lame"),
        ("es", "vamos cinco a la Cascada del Olmo, mi hija tiene 9 años", 5, "child"),
        ("es", "mi hija tiene 9 años", None, None),
        ("es", "está operada de la rodilla", None, "lame"),
    ],
)
def test_who_walks(language: str, text: str, people: int | None, slowest: str | None) -> None:
    """How many walk, and who of them sets the pace; talk of water and shutters is none."""
    told = read_visit(glossed(text, language))
    assert (told.people, told.slowest) == (people, slowest)


@pytest.mark.parametrize(
    ("text", "mixed"),
    [
        ("two of us, one slow", True),
        ("my knee is fine again", False),
        ("she isn't coming", False),
        ("two of us", None),
    ],
)
def test_the_slowest_sets_the_pace(text: str, *, mixed: bool | None) -> None:
    """Somebody slow makes the group a mixed one; who does not come makes it none."""
    assert with_pace(read(text), text).group_mixed is mixed


def test_a_pace_that_is_told_stays() -> None:
    """What the reader of facts found is not read a second time."""
    assert with_pace(Facts(group_mixed=False), "everyone is fit").group_mixed is False


@pytest.mark.parametrize(
    ("language", "text", "start"),
    [
        ("en", "we'd start at half past nine", "09:30"),
        ("en", "start at 9:30, sunset 18:40", "09:30"),
        ("en", "we set off at 8 am", "08:00"),
        ("en", "start around 2", "14:00"),
        ("en", "start at 12:15 pm", "12:15"),
        ("en", "we start at 15:10 pm", "15:10"),
        ("en", "we start at seven in the evening", "19:00"),
        ("en", "start at 5 in the afternoon", "17:00"),
        ("en", "7:15 am start", "07:15"),
        ("en", "quarter to eight is our start", "07:45"),
        ("en", "start at 25", None),
        ("en", "we leave the car park at quarter past six", "06:15"),
        ("en", "when should we start?", None),
        ("en", "the rain starts at 9:30", None),
        ("de", "wir starten um halb zehn", "09:30"),
        ("de", "wir gehen um 9 Uhr los", "09:00"),
        ("es", "salimos a las nueve y media", "09:30"),
        ("es", "salimos a las 10", "10:00"),
        ("de", "3 km hin, 220 Höhenmeter, Start um 10, Sonnenuntergang 17:20", "10:00"),
        ("de", "Abmarsch um 9", "09:00"),
        ("de", "der Film startet um 10 Bilder später", None),
        ("en", "meeting at 8, walking from 8:30", "08:30"),
    ],
)
def test_when_it_starts(language: str, text: str, start: str | None) -> None:
    """Hours as they are typed and said; a bare hour before four is one after noon (own rule)."""
    assert read_visit(glossed(text, language)).start_at == start


@pytest.mark.parametrize(
    ("text", "start"),
    [("9:30", "09:30"), ("half past eight", "08:30"), ("at 7", "07:00"), ("sunset 18:40", None)],
)
def test_a_start_that_was_asked_for(text: str, start: str | None) -> None:
    """The time may stand alone, unless it is one of something else."""
    assert read_visit(text, start_asked=True).start_at == start
    assert read_visit(text).start_at is None


@pytest.mark.parametrize(
    ("language", "example"),
    [
        ("en", "9:30, two of us, one slow"),
        ("de", "9:30 Uhr, zu zweit, einer langsam"),
        ("es", "salimos a las 9:30, somos dos, uno lento"),
    ],
)
def test_the_example_is_read(language: str, example: str) -> None:
    """What the question shows, in each language, tells all that it asks for."""
    told = read_visit(glossed(example, language), start_asked=True)
    assert (told.start_at, told.people, told.slowest) == ("09:30", 2, "slow")


@pytest.mark.parametrize(
    ("language", "text", "minutes"),
    [
        ("en", "it's a 45 minute walk in", 45),
        ("en", "an hour and a half each way", 90),
        ("en", "1 h 20 min each way", 80),
        ("en", "1.5 hours each way", 90),
        ("en", "an hour and a quarter each way", 75),
        ("en", "half an hour to the car", 30),
        ("en", "a quarter of an hour to the car", 15),
        ("en", "three quarters of an hour to the car park", 45),
        ("en", "the way in took us two hours", 120),
        ("en", "it takes about 40 minutes to walk in", 40),
        ("en", "2 hours round trip", 60),
        ("en", "We have 25 minutes to walk to the car", 25),
        ("en", "ten minutes in my jacket", None),
        ("en", "a 45 minute drive, then a walk", None),
        ("en", "1 minute walk", None),
        ("de", "Der Zustieg dauert 45 Minuten", 45),
        ("de", "eine Stunde Fußweg", 60),
        ("de", "noch 25 Minuten zum Auto", 25),
        ("es", "45 minutos a pie", 45),
        ("es", "tenemos 25 minutos hasta el coche", 25),
    ],
)
def test_a_way_told_in_time(language: str, text: str, minutes: float | None) -> None:
    """One way in minutes; drives, waits and exposures are none."""
    assert read_visit(glossed(text, language)).walk_min == minutes


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "8 km round trip, 300 m up"),
        ("de", "8 km hin und zurück, 300 Höhenmeter"),
        ("es", "8 km ida y vuelta, 300 m de desnivel"),
    ],
)
def test_a_round_trip(language: str, text: str) -> None:
    """The length stays as it was told, and is known to be that of both ways."""
    said = glossed(text, language)
    assert read(said).walk_km == 8
    assert read_visit(said).round_trip is True


@pytest.mark.parametrize(
    ("text", "only"),
    [
        ("we've two kids along", True),
        ("my wife and two children", True),
        ("my hip is sore so we walk slowly", True),
        ("we've two kids along and one fell in", False),
        ("two kids are gone", False),
        ("two frames are enough", False),
    ],
)
def test_who_walks_is_no_danger(text: str, *, only: bool) -> None:
    """A message that says who walks, and nothing that happened to them."""
    assert is_only_party(normalise(text)) is only


@pytest.mark.parametrize(
    ("text", "to_come", "ahead"),
    [  # 18 June 2027, where these days are counted from, is a Friday: weekday 4
        ("We go to Thornwick Spout tomorrow, I'd like to plan it properly", True, 1),
        ("Am Sonntag gehen wir zur Hohen Klamm", True, 2),
        ("pasado mañana vamos a la Cascada del Silbo", True, 2),
        ("on friday we go again", True, 7),
        ("next weekend we hike to Brandy Gill", True, None),
        ("guten Morgen, wir gehen jetzt los", False, None),
        ("esta mañana fuimos a la cascada", False, None),
        ("yesterday we went, tomorrow we go home", False, 1),
        ("it is bright tomorrow", False, 1),
    ],
)
def test_a_day_to_come(text: str, *, to_come: bool, ahead: int | None) -> None:
    """A visit on another day is planned; a good morning is none."""
    assert speaks_of_day_to_come(text) is to_come
    assert days_ahead(text, 4) == ahead


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("We go to Thornwick Spout tomorrow", "Thornwick Spout"),
        ("we go to the Alder fall on saturday", "Alder fall"),
        ("Morgen wollen wir zum Silberfall", "Silberfall"),
        ("Mañana vamos a la Cascada del Silbo", "Cascada del Silbo"),
        ("planning for saturday: Cold Linn, 3 mi", "Cold Linn"),
        ("we go on Saturday", ""),
        ("Morgen geht es zum Wasserfall", ""),
        ("plan please", ""),
        ("we go to Mayfield Falls tomorrow", "Mayfield Falls"),
    ],
)
def test_the_name_of_a_place(text: str, place: str) -> None:
    """As it was typed; days and plain falls are no names."""
    assert place_in(text) == place


@pytest.mark.parametrize(
    ("text", "party"),
    [
        ("There's two of us, me and my father", "me and my father"),
        ("going with Tom and Ada on Friday", "with Tom and Ada"),
        ("mein Vater und ich", "mein Vater und ich"),
        ("somos dos, mi padre y yo", "mi padre y yo"),
        ("I'll go with my new tripod", ""),
        ("I leave a note with my sister at home", ""),
        ("four of us", ""),
    ],
)
def test_who_goes_in_own_words(text: str, party: str) -> None:
    """Who goes along; kit, and who stays at home, do not."""
    assert party_in(text) == party


@pytest.mark.parametrize(
    ("text", "car"),
    [
        (
            "car stands at the old quarry car park, small grey van",
            "at the old quarry car park, small grey van",
        ),
        ("we'll park at the dam, blue hatchback AB 123", "at the dam, blue hatchback AB 123"),
        ("the car is at the dam, 4 km each way", "at the dam"),
        (
            "Das Auto steht am alten Steinbruch, kleiner grauer Kombi",
            "am alten Steinbruch, kleiner grauer Kombi",
        ),
        ("el coche queda en la cantera, furgoneta gris", "en la cantera, furgoneta gris"),
        ("blauer Kleinwagen, Parkplatz Klammwirt", "blauer Kleinwagen, Parkplatz Klammwirt"),
        (
            "coche gris en el aparcamiento del molino",
            "coche gris en el aparcamiento del molino",
        ),
        ("the tripod is in the car at the trailhead", ""),
        ("25 minutes to walk to the car", ""),
        ("no car today", ""),
    ],
)
def test_where_the_car_stands(text: str, car: str) -> None:
    """Its place and looks in the person's words; what lies in it says nothing of that."""
    assert car_in(text) == car
