"""What a message says of frames that were told: of which, what, and against which other."""

from __future__ import annotations

import pytest

from bot.dialogue.kept import ToldFrame
from bot.dialogue.meaning.frame_named import named_in
from bot.dialogue.meaning.review_words import (
    asks_for_equal,
    asks_for_log,
    asks_for_next_time,
    asks_to_choose,
    drops,
    focus_told,
    intent_of,
    looks_ahead,
    place_named,
)
from bot.dialogue.meaning.told_sights import remarks
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.frame_times import plain_times

FRAMES = tuple(
    ToldFrame(shutter_s=time_s, f_number=f_number)
    for time_s, f_number in ((1 / 15, 11), (1 / 8, 11), (1 / 4, 11), (1 / 2, 11), (2, 22))
)

Said = tuple[tuple[int, ...], tuple[str, ...], int | None, bool]


def said(text: str, language: str = "en") -> list[Said]:
    """The remarks of a message."""
    found = remarks(plain_times(glossed(text, language)), FRAMES)
    return [(one.places, one.seen, one.against, one.in_all) for one in found]


@pytest.mark.parametrize(
    ("language", "text", "expected"),
    [
        (
            "en",
            "the two second one is mush, and a bit soft even on the rocks",
            [((4,), ("mush",), None, False), ((), ("soft",), None, False)],
        ),
        (
            "de",
            "das mit zwei Sekunden ist Matsch und sogar an den Felsen etwas weich",
            [((4,), ("mush", "soft"), None, False)],
        ),
        (
            "es",
            "la de dos segundos es papilla, y algo blanda hasta en las rocas",
            [((4,), ("mush",), None, False), ((), ("soft",), None, False)],
        ),
        (
            "en",
            (
                "In the quarter one the threads are really there, I like that one best, but it's "
                "darker than the half"
            ),
            [((2,), ("good",), None, False), ((), ("best",), None, False), ((), (), 3, False)],
        ),
        (
            "de",
            (
                "im Viertel sind die Fäden wirklich da, das mag ich am liebsten, aber es ist "
                "dunkler als das halbe"
            ),
            [((2,), ("good",), None, False), ((), ("best",), None, False), ((), (), 3, False)],
        ),
        (
            "es",
            (
                "en la de un cuarto los hilos están, es la que más me gusta, pero más oscura que "
                "la de medio"
            ),
            [((2,), ("good",), None, False), ((), ("best",), None, False), ((), (), 3, False)],
        ),
        ("en", "the eighth has soft pale discs", [((1,), ("drops",), None, False)]),
        ("de", "das Achtel hat weiche helle Scheiben", [((1,), ("drops",), None, False)]),
        ("es", "la del octavo tiene discos blandos y pálidos", [((1,), ("drops",), None, False)]),
        ("en", "a white triangle top right in all five", [((), ("sky",), None, True)]),
        ("de", "oben rechts in allen fünf ein weißes Dreieck", [((), ("sky",), None, True)]),
        ("es", "arriba un triángulo blanco en las cinco", [((), ("sky",), None, True)]),
        ("en", "nothing blinked on the camera", [((), ("holds",), None, False)]),
        ("de", "nichts hat geblinkt", [((), ("holds",), None, False)]),
        ("de", "die zweite ist knallhart", [((1,), ("hard",), None, False)]),
        ("es", "la segunda me encanta", [((1,), ("best",), None, False)]),
        ("es", "no parpadeó nada", [((), ("holds",), None, False)]),
    ],
)
def test_what_is_said_of_frames(language: str, text: str, expected: list[Said]) -> None:
    """Each part names its frames and what is seen; "than" names the one it is compared with."""
    assert said(text, language) == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("the quarter is lovely and the half is mush", [((2,), ("good",)), ((3,), ("mush",))]),
        ("the 1/15 and the 1/8 are too dark", [((0, 1), ("dark",))]),
        ("the first three are hard as ice", [((0, 1, 2), ("hard",))]),
        ("the last two are soft", [((3, 4), ("soft",))]),
        ("the two longest are soup", [((4, 3), ("mush",))]),
        ("the shortest is too crunchy", [((0,), ("hard",))]),
        ("the middle one is my favourite", [((2,), ("best",))]),
        ("the second one has drops on it", [((1,), ("drops",))]),
        ("the third one has drops on it", [((2,), ("drops",))]),
        ("frame 2 is soft", [((1,), ("soft",))]),
        ("the fourth and fifth are soft", [((3, 4), ("soft",))]),
        ("the sixth is soft", [((), ("soft",))]),
        ("the 2 one is soft", [((3,), ("soft",))]),
        ("the 2.0 is soft", [((4,), ("soft",))]),
        ("first is lovely", [((0,), ("good",))]),
        ("the f/22 one is soft all over", [((4,), ("soft",))]),
        ("the 15 one is too dark", [((0,), ("dark",))]),
        ("the half second is blown in patches", [((3,), ("clipped",))]),
        ("the half only blinked in a few dots", [((3,), ("holds",))]),
        (
            "drops in the eighth, mush in the two second one",
            [((1,), ("drops",)), ((4,), ("mush",))],
        ),
        ("leaves are smeared in the half and the two second one", [((3, 4), ("leaves",))]),
        ("the half was what the meter said", [((3,), ("metered",))]),
        ("the quarter", [((2,), ())]),
        ("the quarter is from the left bank", [((2,), ())]),
        ("the water sat on the front glass in the quarter", [((2,), ("drops",))]),
        ("my lens was wet in the quarter", [((2,), ("drops",))]),
        ("a twig comes in at the left", [((), ("clutter",))]),
        ("lovely evening it was", []),
        ("focused on 3", []),
        ("the rock is 2 m away", []),
        ("the 6th is soft", [((), ("soft",))]),
        ("frame 9 is soft", [((), ("soft",))]),
    ],
)
def test_frames_by_their_names(
    text: str, expected: list[tuple[tuple[int, ...], tuple[str, ...]]]
) -> None:
    """By time, f-number, place or length of the time; frames in a row share what follows."""
    assert [(places, seen) for places, seen, *_ in said(text)] == expected


def test_the_second_may_be_one_of_time() -> None:
    """Where a frame took a second, "the second" is that one, "the second one" is counted."""
    frames = (ToldFrame(shutter_s=1 / 8), ToldFrame(shutter_s=1 / 4), ToldFrame(shutter_s=1))
    assert named_in("the second is mush", frames).places == (2,)
    assert named_in("the second one is mush", frames).places == (1,)
    assert named_in("die zweite ist matsch", frames).places == (1,)


def test_no_middle_of_an_even_number() -> None:
    """Four frames have no middle one."""
    assert named_in("the middle one", FRAMES[:4]).places == ()


@pytest.mark.parametrize(
    ("text", "intent"),
    [
        (
            "what I wanted to show is how the water splits round the black stone",
            "how the water splits round the black stone",
        ),
        ("the idea was the bend of the stream.", "the bend of the stream"),
        (
            "Ich wollte zeigen, wie sich das Wasser am Stein teilt",
            "wie sich das Wasser am Stein teilt",
        ),
        ("mir ging es um den Bogen", "den Bogen"),
        ("Lo que quería mostrar es cómo se parte el agua", "cómo se parte el agua"),
        ("it is about 10 m tall", None),
        ("what did I want to show?", None),
        ("my idea was " + "to show " * 20, "to show " * 10 + "to show …"),
    ],
)
def test_what_a_picture_was_to_show(text: str, intent: str | None) -> None:
    """An intent is kept in the person's own words, on one line."""
    found = intent_of(text)
    assert (found and found[:60]) == (intent and intent[:60])
    assert found is None or len(found) <= 92


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("so which would you keep?", True),
        ("which is better, the quarter or the half?", True),
        ("pick one for me", True),
        ("welches würdest du behalten?", True),
        ("¿con cuál te quedarías?", True),
        ("which filter is best?", False),
        ("what shall I do next time", False),
    ],
)
def test_who_asks_to_choose(text: str, *, meant: bool) -> None:
    """Which frame to keep, in three languages; not which filter."""
    assert asks_to_choose(text) is meant


def test_what_else_is_asked_at_home() -> None:
    """Next time, the log, equal brightness, frames taken back, and a walk to come."""
    assert asks_for_next_time("was mache ich nächstes Mal anders?")
    assert asks_for_log("a log line please")
    assert asks_for_equal("how do I make them equally bright?")
    assert drops("delete the 8 second one")
    assert looks_ahead("tomorrow: 20 m fall")
    assert looks_ahead("übermorgen an den 20 m Fall")
    assert not looks_ahead("heute Morgen 1/4 s, f/11")
    assert not looks_ahead("esta mañana 1/4 s, f/11")


@pytest.mark.parametrize(
    ("text", "focus"),
    [
        ("focus on three", (3, "")),
        ("focused at 2.5 m", (2.5, "m")),
        ("focus was at 6 ft", (6, "ft")),
        ("fokussiert auf drei", (3, "")),
        ("enfoqué a tres", (3, "")),
        ("focus on the rock", None),
    ],
)
def test_where_it_was_focused(text: str, focus: tuple[float, str] | None) -> None:
    """The number as it was said, with its unit where there is one."""
    language = {"fok": "de", "enf": "es"}.get(text[:3], "en")
    assert focus_told(plain_times(glossed(text, language))) == focus


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("it's Ambry Force, the ten metre one", "Ambry Force"),
        ("At Grey Linn this morning", "Grey Linn"),
        ("das war der Obere Eschenfall", "Obere Eschenfall"),
        ("en Salto del Roble", "Salto del Roble"),
        ("a ten metre fall", None),
    ],
)
def test_the_name_of_a_fall(text: str, place: str | None) -> None:
    """A name that ends, or begins, with a word for falling or running water."""
    assert place_named(text) == place
