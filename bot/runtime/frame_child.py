"""What the process of one shared file does: sets its limits, measures, draws, answers, ends."""

from __future__ import annotations

import math
import os
import resource
import signal
from collections.abc import Callable
from dataclasses import dataclass, field
from multiprocessing.connection import Connection
from pathlib import Path
from typing import Final

import cv2
import pillow_heif
from pydantic import TypeAdapter

from bot.pictures.marked_frame import draw_marked_frame
from bot.runtime.confinement import confine
from bot.runtime.faults import where_it_broke
from core.errors import FrameFault, UnreadableFrameError
from core.frame.check import check_frame
from core.frame.decode import MAX_BYTES, MAX_PIXELS
from core.frame.report import FrameReport

#: Linux tells a process here how many pages of address space it has.
_PAGES: Final = Path("/proc/self/statm")
#: Standard error output of a process.
_ERROR_OUTPUT: Final = 2


@dataclass(frozen=True)
class FrameLimits:
    """What the process of one file may use.

    Attributes:
        time_s: from the start of the process to its answer, and the processor time [s].
        memory_bytes: on top of what the libraries occupy. A 200-megapixel phone's HEIC needs
            0.9 GiB (measured); a 24-megapixel JPEG needs 0.2.
        file_bytes: largest file.
        pixels: largest picture, width times height.
        report_bytes: largest report that is taken from the process.
        picture_bytes: largest picture that is taken from it.
    """

    time_s: float = 30.0
    memory_bytes: int = 1280 * 2**20
    file_bytes: int = MAX_BYTES
    pixels: int = MAX_PIXELS
    report_bytes: int = 100_000
    picture_bytes: int = 8_000_000


@dataclass(frozen=True)
class Answer:
    """What the process says of a file: a report, or a fault with its numbers.

    `broke` tells the log where a bug showed; it holds no words of the file.
    """

    report: FrameReport | None = None
    fault: FrameFault | None = None
    numbers: dict[str, float] = field(default_factory=dict)
    broke: str = ""


#: Between an answer and the JSON that is sent.
ANSWERS: Final = TypeAdapter(Answer)

#: What is done with a file: its bytes, pixels of the camera, largest picture; out come an answer
#: and a picture, empty when there is none.
Work = Callable[[bytes, tuple[int, int] | None, int], tuple[Answer, bytes]]


def check_and_draw(
    data: bytes, camera_pixels: tuple[int, int] | None, max_pixels: int
) -> tuple[Answer, bytes]:
    """Measure a file and draw what was found onto a small copy."""
    report, pixels = check_frame(data, camera_pixels, max_pixels=max_pixels)
    try:
        return Answer(report), draw_marked_frame(pixels, report)
    except Exception as error:  # the report is worth sending without its picture
        return Answer(report, broke=where_it_broke(error)), b""


def answer_one(
    connection: Connection,
    work: Work,
    camera_pixels: tuple[int, int] | None,
    limits: FrameLimits,
) -> None:
    """Take one file from the connection, send two messages: an answer in JSON, and a picture.

    Runs in a process of its own, which ends with it.
    """
    _be_quiet()
    _limit(limits)
    confine()
    data = connection.recv_bytes(limits.file_bytes)
    answer, picture = _found(work, data, camera_pixels, limits.pixels)
    connection.send_bytes(ANSWERS.dump_json(answer))
    connection.send_bytes(picture)
    connection.close()


def _found(
    work: Work, data: bytes, camera_pixels: tuple[int, int] | None, max_pixels: int
) -> tuple[Answer, bytes]:
    try:
        return work(data, camera_pixels, max_pixels)
    except UnreadableFrameError as error:
        return Answer(fault=error.fault, numbers=error.numbers), b""
    except MemoryError:
        return Answer(fault=FrameFault.TOO_MUCH_MEMORY), b""
    except Exception as error:  # a bug; the parent logs where
        out_of_memory = isinstance(error, cv2.error) and error.code == cv2.Error.StsNoMem
        fault = FrameFault.TOO_MUCH_MEMORY if out_of_memory else FrameFault.CRASHED
        return Answer(fault=fault, broke=where_it_broke(error)), b""


def _be_quiet() -> None:
    """Print nothing: decoders write about a file's content; leave Ctrl-C to the parent."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, _ERROR_OUTPUT)
    os.close(nowhere)
    signal.signal(signal.SIGINT, signal.SIG_IGN)


def _limit(limits: FrameLimits) -> None:
    """Bound memory, processor time and threads; open and write no file and leave no core."""
    cv2.setNumThreads(1)
    pillow_heif.options.DECODE_THREADS = 1
    # Libraries take address space at will when they are loaded; only what comes on top is bound.
    occupied = int(_PAGES.read_text("ascii").split()[0]) * resource.getpagesize()
    memory, cpu_s = occupied + limits.memory_bytes, math.ceil(limits.time_s)
    for kind, soft, hard in (
        (resource.RLIMIT_AS, memory, memory),
        # At the soft limit the kernel sends SIGXCPU, which tells the parent what it was. At the
        # hard one it sends SIGKILL, as it does when memory is out: so that one must come later.
        (resource.RLIMIT_CPU, cpu_s, cpu_s + 1),
        (resource.RLIMIT_FSIZE, 0, 0),
        (resource.RLIMIT_CORE, 0, 0),
        (resource.RLIMIT_NOFILE, 0, 0),
    ):
        resource.setrlimit(kind, (soft, hard))
