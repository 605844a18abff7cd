"""Which frames are of one view, which of them are compared, and which are averaged."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest

from bot.dialogue.kept import Measured
from bot.dialogue.steps.frames import views
from tests.dialogue.player import START


def _frame(minute: float, shutter_s: float | None = 0.25, **more: object) -> Measured:
    values: dict[str, object] = {"width": 4000, "height": 6000, "focal_mm": 27.0} | more
    sent_at = START + timedelta(minutes=minute)
    return Measured.model_validate(values | {"sent_at": sent_at, "shutter_s": shutter_s})


def _frames(*frames: Measured) -> dict[str, Measured]:
    return {f"f{number}": frame for number, frame in enumerate(frames)}


@pytest.mark.parametrize(
    ("other", "alike"),
    [
        (_frame(9), True),
        (_frame(11), False),  # ten minutes (own rule)
        (_frame(1, focal_mm=27.4), True),
        (_frame(1, focal_mm=35.0), False),
        (_frame(1, focal_mm=None), True),  # not known: the pictures decide
        (_frame(1, width=6000, height=4000), False),
        (_frame(60, stamped_at=None), False),
    ],
)
def test_views(other: Measured, alike: bool) -> None:
    """Near in time, one shape, one focal length as far as it is known."""
    assert views.alike(_frame(0), other) is alike


def test_the_cameras_stamps_decide_where_both_have_one() -> None:
    """Frames that were sent together in the evening were taken when their files say."""
    noon = datetime(2027, 6, 18, 12, 0)  # noqa: DTZ001  # cameras state none
    one = _frame(0, stamped_at=noon)
    assert views.alike(one, _frame(300, stamped_at=noon + timedelta(minutes=3)))
    assert not views.alike(one, _frame(0, stamped_at=noon + timedelta(hours=3)))


@pytest.mark.parametrize(
    ("times", "compared"),
    [
        ([1 / 15], ["f0"]),
        ([1 / 15, 1 / 8], ["f0", "f1"]),
        ([1 / 15, 1 / 8, 1 / 4], ["f0", "f1", "f2"]),
        ([1 / 8, 1 / 15, 1 / 8, 1 / 4], ["f1", "f2", "f3"]),  # each time once: the newest
        ([1 / 8, 1 / 4, 1 / 4], ["f1", "f2"]),  # no ladder: the last two
        ([1 / 60, 1 / 30, 1 / 15, 1 / 8, 1 / 4, 0.5, 1.0], ["f1", "f2", "f3", "f4", "f5", "f6"]),
        ([None, None, None], ["f1", "f2"]),
    ],
)
def test_what_compare_means(times: list[float | None], compared: list[str]) -> None:
    """A row of different times is compared as a ladder of at most six, else the last two."""
    frames = _frames(*(_frame(number, time) for number, time in enumerate(times)))
    assert list(views.to_compare(frames)) == compared


def test_what_average_means() -> None:
    """The newest frames of one view and one time, at most twelve."""
    frames = _frames(_frame(0, 1.0), *(_frame(1 + number / 10) for number in range(14)))
    assert list(views.to_average(frames)) == [f"f{number}" for number in range(3, 15)]
    assert views.to_average({}) == ()


def test_the_shortest_needs_all_times() -> None:
    """Without one of the times nobody says which is the shortest."""
    assert views.shortest([_frame(0, 1.0), _frame(0, 0.1)]) == 1
    assert views.shortest([_frame(0, 1.0), _frame(0, None)]) is None
    assert views.shortest([]) is None
