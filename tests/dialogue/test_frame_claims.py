"""What is said of a frame claims no more than it holds, and the next setting no more than its room.

Numbers are worked by hand: f/11 is 11.31, its neighbours 2^(1/6) away; a click is a third of a
stop; the usual fall of 10 m runs at sqrt(2 · 9.81 · 10) / 2 = 7.0 m/s, seen from 15 m.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from bot.dialogue.actions import Say
from bot.dialogue.events import FrameChecked
from bot.dialogue.texts import measures
from core.frame.report import Advice, AreaKind, Box, CameraSettings, FrameReport
from tests.dialogue.made_frames import area, report
from tests.dialogue.player import Player

NUMBERS = "full frame, 24-70, tripod, 12 m tall, 18 m away, at 24 mm"
WIDE_AT_4 = "full frame, 24-70 f/4, tripod, 12 m tall, 18 m away, at 24 mm"
SIXTH = CameraSettings(1 / 6, 11.0, 100.0, 24.0)


def measured(player: Player, found: FrameReport) -> str:
    """The answer to a frame with this report."""
    player.share()
    origin = player.frames[-1].origin
    said = player.take(FrameChecked(origin=origin, frame_event_id=origin.event_id, report=found))
    return answer_of(said)


def answer_of(said: list[Say]) -> str:
    """The first message, which answers."""
    return said[0].body


def told(*lines: str) -> Player:
    """A person at the water who has said these lines."""
    player = Player()
    for line in ("start", *lines):
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("dial", "room_stops", "brighter"),
    [
        ("thirds", 0.53, "1/3 stop brighter"),  # two clicks would be 0.67
        ("thirds", 0.66, "2/3 stop brighter"),  # within 1/30 of two clicks
        ("thirds", 0.86, "2/3 stop brighter"),  # three clicks would be 1
        ("thirds", 1.3, "1 stop brighter"),
        ("my dials have half stops", 0.86, "1/2 stop brighter"),
    ],
)
def test_a_step_up_is_never_more_than_the_room(dial: str, room_stops: float, brighter: str) -> None:
    """Whole clicks below the room: rounded up they would clip what held."""
    player = told(NUMBERS, dial)
    assert brighter in measured(player, report(Advice.BRIGHTER, room_stops, settings=SIXTH))


def test_room_that_only_iso_would_fill_is_filled_as_far_as_dials_go() -> None:
    """From 1/4 s: one click to 0.3 s, 8.9 % of the look's 10 %; the depth keeps f/5.6."""
    settings = CameraSettings(1 / 4, 5.6, 100.0, 24.0)
    body = measured(told(WIDE_AT_4), report(Advice.BRIGHTER, 2.0, settings=settings))
    assert "Too dark. Next: f/5.6, ISO 100, 0.3 s, 1/3 stop brighter" in body
    assert "More only by ISO" in body


def test_room_that_nothing_but_iso_would_fill_holds() -> None:
    """The lens is wide open, and a click of time more would be another look."""
    settings = CameraSettings(0.3, 4.0, 100.0, 24.0)
    body = measured(told(WIDE_AT_4), report(Advice.BRIGHTER, 1.0, settings=settings))
    assert "The white holds" in body
    assert "More only by ISO" in body


def test_the_sensor_is_known_by_the_two_focal_lengths_of_a_file() -> None:
    """5 mm that look like 26: 7.6 mm of 5 from 15 m are 23 m, of which 0.28 m are 1.2 %.

    Taken for 5 mm on full frame it was 108 m, and the water crisp.
    """
    found = report(Advice.BRIGHTER, 1.0, settings=CameraSettings(1 / 50, 1.8, 125.0, 5.0))
    phone = replace(found, metadata=replace(found.metadata, focal_full_frame_mm=26.0))
    player = Player()
    assert "1/25 s" in measured(player, phone)
    assert "÷ 22.8 m" in answer_of(player.say("why"))


def test_a_told_format_counts_before_a_file() -> None:
    """18 mm on APS-C is what the person says it is."""
    found = report(Advice.BRIGHTER, 1.0, settings=CameraSettings(1 / 50, 8.0, 100.0, 18.0))
    odd = replace(found, metadata=replace(found.metadata, focal_full_frame_mm=90.0))
    player = told("aps-c, 12 m tall, 18 m away")
    measured(player, odd)
    assert "÷ 23.6 m" in answer_of(player.say("why"))  # 18 · 23.6 / 18


def test_lost_white_may_be_neither_water_nor_sky() -> None:
    """A cup, a shirt, the sun: nobody is made to say water or sky."""
    unsure = area("A", AreaKind.UNSURE, Box(0.4, 0.4, 0.2, 0.2), 0.01)
    player = told(NUMBERS)
    assert "3 neither" in measured(player, report(Advice.ASK, None, unsure, settings=SIXTH))
    assert "no fault of the water" in answer_of(player.say("3"))


def test_a_sky_gap_says_nothing_of_water_that_was_not_found() -> None:
    """The whites are what was measured."""
    gap = area("A", AreaKind.SKY_GAP, Box(0.7, 0.0, 0.3, 0.1), 0.02)
    body = measured(told(NUMBERS), report(Advice.REFRAME, None, gap, settings=SIXTH))
    assert "water holds" not in body
    assert "Else the whites hold." in body


def test_with_a_lamp_in_the_frame_something_is_lost() -> None:
    """It may be, and there is room, but nothing lost would be wrong."""
    lamp = area("A", AreaKind.LAMP, Box(0.1, 0.1, 0.05, 0.05), 0.001)
    body = measured(told(NUMBERS), report(Advice.BRIGHTER, 0.7, lamp, settings=SIXTH))
    assert "There is room. Next:" in body
    assert "Nothing lost" not in body


def test_several_pictures_in_one_are_not_judged() -> None:
    """What is measured would be of none of them."""
    found = replace(report(Advice.KEEP, 0.0, settings=SIXTH), several_in_one=True)
    body = measured(told(NUMBERS), found)
    assert body.startswith("That looks like several pictures in one")


@pytest.mark.parametrize("before", [("start", NUMBERS), ("we are home again",)])
def test_a_mat_that_was_left_out_is_told(before: tuple[str, ...]) -> None:
    """At the water and at home."""
    player = Player()
    for line in before:
        player.say(line)
    found = replace(report(Advice.KEEP, 0.0, settings=SIXTH), mat_left_out=True)
    assert "even border around it I left out" in measured(player, found)


def test_a_mat_is_told_of_a_frame_of_then() -> None:
    """Of light that has gone as well."""
    found = replace(report(Advice.KEEP, 0.0, settings=SIXTH), mat_left_out=True)
    stamped = replace(found.metadata, taken_at="2020-05-01T10:00:00")
    body = measured(told(NUMBERS), replace(found, metadata=stamped))
    assert "even border around it I left out" in body


@pytest.mark.parametrize(
    ("share", "words"),
    [(0.0, "0 %"), (0.000004, "under 0.01 %"), (0.00006, "0.01 %"), (0.0006, "0.06 %")],
)
def test_what_is_there_is_never_nothing(share: float, words: str) -> None:
    """A few pixels that clip are few, not 0 %."""
    assert measures.percent(share) == words


@pytest.mark.parametrize(
    ("stamp", "asked"), [("2019-01-01T00:07:00", True), ("2019-03-12T15:36:00", False)]
)
def test_a_clock_at_its_beginning_is_asked_about(stamp: str, *, asked: bool) -> None:
    """Else a camera whose clock was never set would never get a next setting."""
    found = report(Advice.BRIGHTER, 0.7, settings=SIXTH)
    player = told(NUMBERS)
    body = measured(player, replace(found, metadata=replace(found.metadata, taken_at=stamp)))
    assert ("its clock is off" in body) is asked
    if asked:
        assert "2/3 stop brighter" in answer_of(player.say("its clock is off"))


def test_next_time_is_no_brighter_than_the_room_was() -> None:
    """At home as well: 0.86 stops are two clicks, not one stop."""
    player = Player()
    player.say("we are home again")
    found = replace(report(Advice.BRIGHTER, 0.86, settings=SIXTH), borders=())
    assert "2/3 stop brighter" in measured(player, found)


def test_a_border_answer_that_is_put_right_leaves_one_truth() -> None:
    """The person's second answer to a place of a frame takes the place of their first."""
    player = told(NUMBERS)
    player.frame("stick")
    for reply in ("2", "actually 1"):
        player.say(reply)
    assert player.context is not None
    assert [one.said for one in player.context.person.border_answers] == ["yes"]


def test_room_that_only_iso_would_fill_gives_way_to_the_look() -> None:
    """Wide open at 1 s, silky; textured was asked for by name, and ISO is no light."""
    settings = CameraSettings(1.0, 4.0, 100.0, 24.0)
    body = measured(told(WIDE_AT_4, "textured"), report(Advice.BRIGHTER, 0.7, settings=settings))
    assert "For your look:" in body
