"""What a process of frames is asked, and what it answers: both in JSON."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Final, Literal

from pydantic import TypeAdapter

from bot.dialogue.actions import MeasureOptions
from bot.dialogue.events import MeasuredKind
from core.errors import FrameFault
from core.frame.comparison import Comparison
from core.frame.limits import MAX_BYTES, MAX_PIXELS
from core.frame.report import FrameReport
from core.frame.several import Wishes

#: Most pictures of one answer: the whole, the water and the leaves of six frames (own rule).
MOST_PICTURES: Final = 18
#: Longest order [bytes]: it holds a few names and numbers (own rule).
ORDER_BYTES: Final = 10_000


@dataclass(frozen=True)
class FrameLimits:
    """What a process of frames may use.

    Attributes:
        time_s: until its answer, and of the processor [s].
        memory_bytes: on top of what the libraries occupy. A 200-megapixel phone's HEIC needs
            0.9 GiB (measured); a 24-megapixel JPEG needs 0.2.
        file_bytes: largest file.
        pixels: largest picture, width times height.
        report_bytes: largest report that is taken from the process.
        picture_bytes: largest picture that is taken from it.
        together_bytes: of all files that are measured together.
        together_pixels: of all frames that are measured together; larger ones are made smaller.
            The process that has them all needs three bytes a pixel, and as much again.
    """

    time_s: float = 30.0
    memory_bytes: int = 1280 * 2**20
    file_bytes: int = MAX_BYTES
    pixels: int = MAX_PIXELS
    report_bytes: int = 100_000
    picture_bytes: int = 8_000_000
    together_bytes: int = 250_000_000
    together_pixels: int = 160_000_000


@dataclass(frozen=True)
class Order:
    """What is to be done with a file or with several.

    `files` is how many frames there are in all.
    """

    what: Literal["check"] | MeasuredKind = "check"
    options: MeasureOptions = field(default_factory=MeasureOptions)
    limits: FrameLimits = FrameLimits()
    files: int = 1


def wishes_of(order: Order, places: Sequence[int]) -> Wishes:
    """What is wished of frames, as the measuring takes it.

    Args:
        order: the whole order.
        places: of the frames that could be read, among all that were ordered.
    """
    options = order.options
    return Wishes(
        wished=options.wished,
        aim=options.aim,
        times_s=options.times_s,
        cells=options.water_cells,
        axis_deg=options.axis_deg,
        share_per_s=options.share_per_s,
        leaf=places.index(options.leaf) if options.leaf in places else None,
    )


@dataclass(frozen=True)
class Shown:
    """What a picture shows, and of which frame (from 0), if of one; see `NamedPicture`."""

    shows: str
    frame: int | None = None


@dataclass(frozen=True)
class Answer:
    """What a process says: a report or a comparison, or a fault with its numbers.

    As many pictures follow it as `pictures` lists. `read` are the places of the frames that took
    part, where several were asked for. `broke` tells the log where a bug showed; it holds no words
    of a file.
    """

    report: FrameReport | None = None
    fault: FrameFault | None = None
    numbers: dict[str, float] = field(default_factory=dict)
    broke: str = ""
    comparison: Comparison | None = None
    pictures: tuple[Shown, ...] = ()
    read: tuple[int, ...] = ()


@dataclass(frozen=True)
class Pixels:
    """What a process that has read a frame says of it to the one that puts frames together.

    The picture follows: height × width × 3 bytes, red, green, blue.
    """

    height: int
    width: int
    report: FrameReport


#: Between an order, an answer, a picture's head and the JSON that is sent.
ORDERS: Final = TypeAdapter(Order)
ANSWERS: Final = TypeAdapter(Answer)
PIXELS: Final = TypeAdapter(Pixels)
