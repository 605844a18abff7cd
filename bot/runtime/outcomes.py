"""What became of frames that were measured: a result with its pictures, or a fault."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Final

from bot.runtime.orders import Shown
from core.errors import FrameFault
from core.frame.comparison import Comparison
from core.frame.report import FrameReport

#: How the files of pictures begin that are taken: PNG and JPEG.
_PICTURES: Final = (b"\x89PNG", b"\xff\xd8\xff")


def is_picture(data: bytes) -> bool:
    """Whether it begins like a picture that may be stored and sent on."""
    return data.startswith(_PICTURES)


@dataclass(frozen=True)
class Picture:
    """A picture without metadata, and what it shows."""

    shown: Shown
    data: bytes


@dataclass(frozen=True)
class Outcome:
    """What became of one file or of several: a result, or a fault with its numbers.

    `read` are the places of the frames that took part, `left_out` what was wrong with the others.
    """

    report: FrameReport | None = None
    fault: FrameFault | None = None
    numbers: dict[str, float] = field(default_factory=dict)
    pictures: tuple[Picture, ...] = ()
    comparison: Comparison | None = None
    read: tuple[int, ...] = ()
    left_out: dict[int, FrameFault] = field(default_factory=dict)

    @property
    def picture(self) -> bytes | None:
        """The first picture, a PNG or a JPEG."""
        return self.pictures[0].data if self.pictures else None
