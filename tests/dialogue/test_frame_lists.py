"""Frames told in a list: their times in words, and which setting holds for which of them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dialogue.kept import ToldFrame
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.frame_list import MOST_FRAMES, is_same_time, laid, told_in
from bot.dialogue.reading.frame_times import plain_times, times_in

FIVE = ((1 / 15, 11), (1 / 8, 11), (1 / 4, 11), (1 / 2, 11), (2, 22))


def listed(text: str, language: str = "en") -> tuple[ToldFrame, ...]:
    """The frames that a message tells of."""
    return laid((), told_in(plain_times(glossed(text, language))))


def times_and_f(text: str, language: str = "en") -> tuple[tuple[float, float | None], ...]:
    """Their times and f-numbers."""
    return tuple((frame.shutter_s, frame.f_number) for frame in listed(text, language))


@pytest.mark.parametrize(
    ("language", "text"),
    [
        (
            "en",
            (
                "five times the same view: a fifteenth, an eighth, a quarter, a half, and two "
                "whole seconds, all f/11 except the last at f/22"
            ),
        ),
        (
            "en",
            (
                "a fifteenth, an eighth, a quarter, a half, two seconds, all at f/11, the two "
                "second one at f/22"
            ),
        ),
        ("en", "1/15, 1/8, 1/4, 1/2 and 2 s: f/11 for all but the last, which was f/22"),
        ("en", "1/15 1/8 1/4 1/2 2, f/22 for the last, f/11 for the others"),
        (
            "de",
            (
                "fünfmal derselbe Ausschnitt: ein Fünfzehntel, ein Achtel, ein Viertel, eine "
                "halbe und zwei ganze Sekunden, alle mit Blende 11, nur das letzte mit Blende 22"
            ),
        ),
        (
            "es",
            (
                "cinco veces la misma vista: un quinceavo, un octavo, un cuarto, medio y dos "
                "segundos enteros, todas a f/11 menos la última a f/22"
            ),
        ),
    ],
)
def test_five_frames_however_they_are_told(language: str, text: str) -> None:
    """Each of five frames has its time, and the last one its own f-number."""
    assert times_and_f(text, language) == FIVE


@pytest.mark.parametrize(
    ("text", "frames"),
    [
        ("1/15 f/11, 1/8 f/11, 1/2 f/16", ((1 / 15, 11), (1 / 8, 11), (1 / 2, 16))),
        ("1/15 and 1/8 at f/8, 1/4 at f/11", ((1 / 15, 8), (1 / 8, 8), (1 / 4, 11))),
        (
            "1/60, 1/8 and 1 s, f/8 the first two and f/16 the long one",
            ((1 / 60, 8), (1 / 8, 8), (1, 16)),
        ),
        ("1/60 and 1 s, f/16 the long one, f/8 the short one", ((1 / 60, 8), (1, 16))),
        ("1/60 and 1 s, the long one at f/16, the short one at f/8", ((1 / 60, 8), (1, 16))),
        ("f/11: 1/15, 1/8; f/22: 2 s", ((1 / 15, 11), (1 / 8, 11), (2, 22))),
        (
            "the first two at f/8, the rest f/11: 1/30, 1/8, 1/2",
            ((1 / 30, 8), (1 / 8, 8), (0.5, 11)),
        ),
        (
            "1/60, 1/8 and 1 s, the second at f/8, the rest at f/11",
            ((1 / 60, 11), (1 / 8, 8), (1, 11)),
        ),
        ("1/8 and 2 s, f/22 for the 2 s one, f/11 for the others", ((1 / 8, 11), (2, 22))),
        ("1/4 at f/11 and 1/4 at f/22", ((1 / 4, 11), (1 / 4, 22))),
        ("0.4 s and 0.8 s", ((0.4, None), (0.8, None))),
        ("1/4, 1/2, 1 and 2 s, f/16", ((1 / 4, 16), (1 / 2, 16), (1, 16), (2, 16))),
        ("half a second and a second, both f/16", ((1 / 2, 16), (1, 16))),
        ("a half and two seconds", ((1 / 2, None), (2, None))),
        ("1/60th and 1/15th of a second", ((1 / 60, None), (1 / 15, None))),
        # no times
        ("a metre and a half away", ()),
        ("2/3 stop darker", ()),
        ("a third of the frame is white", ()),
        ("the leaf took 3 s for 2 m", ()),
        ("timer 2 s", ()),
        ("1/0 and 0 s", ()),
    ],
)
def test_settings_of_a_list(text: str, frames: tuple[tuple[float, float | None], ...]) -> None:
    """A setting holds for the times before it, for those that are named, or for all."""
    assert times_and_f(text) == frames


def test_iso_and_focal_length_of_a_list() -> None:
    """ISO by frame; one focal length is told of the place, several of their frames."""
    by_iso = listed("1/8 iso 400, 1/4 iso 200, 1/2 iso 100, all f/8")
    assert [(frame.iso, frame.f_number) for frame in by_iso] == [(400, 8), (200, 8), (100, 8)]
    assert [one.focal_mm for one in listed("1/8 and 1/4 at 24 mm")] == [None, None]
    two = listed("1/4 and 1/2, the first at 24 mm, the second on the 50")
    assert [one.focal_mm for one in two] == [24, 50]
    third = listed("1/8, 1/4, 1/2, 1 s: the third at f/16, the fourth at f/22, others f/8")
    assert [one.f_number for one in third] == [8, 8, 16, 22]


def test_a_list_goes_on() -> None:
    """What is told later belongs to the frames that are there, until new ones come."""
    frames = listed("1/15, 1/4 and 2 s at f/11")
    later = laid(frames, told_in("iso 100 all of them"))
    assert [frame.iso for frame in later] == [100, 100, 100]
    later = laid(later, told_in("the 2 s one at f/22"))
    assert [frame.f_number for frame in later] == [11, 11, 22]
    later = laid(later, told_in("the last two at f/16"))
    assert [frame.f_number for frame in later] == [11, 16, 16]
    later = laid(later, told_in("and 1/30 at f/8"))
    assert [(frame.shutter_s, frame.f_number) for frame in later][3:] == [(1 / 30, 8)]


def test_a_list_is_bounded() -> None:
    """Nobody goes through more frames in words."""
    frames = listed(", ".join(f"1/{number}" for number in range(2, 90)))
    assert len(frames) == MOST_FRAMES
    assert laid(frames, told_in("5 s")) == frames


def test_the_same_time_by_another_name() -> None:
    """A third of a second is the mark 0.3 s; 1/4 s is another one."""
    assert is_same_time(1 / 3, 0.3)
    assert not is_same_time(1 / 4, 0.3)


@pytest.mark.parametrize(
    ("text", "place"), [("the third one", 3), ("the 8th", 8), ("the quarter", None)]
)
def test_words_that_name_a_place_too(text: str, place: int | None) -> None:
    """The words of a place may name a third of a second or the third frame."""
    assert [time.place for time in times_in(text)] == [place]


@given(st.text(alphabet='1234567890/.,;:s fiso andtheall"', max_size=60))
def test_any_list_is_read(text: str) -> None:
    """Whatever is typed, every frame has a time that a camera makes."""
    for frame in laid((), told_in(plain_times(text))):
        assert 1 / 16_000 <= frame.shutter_s <= 3600
