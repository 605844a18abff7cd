"""What the process of one shared file does: sets its limits, measures, draws, answers, ends."""

from __future__ import annotations

import math
import os
import resource
import signal
from collections.abc import Callable
from multiprocessing.connection import Connection
from pathlib import Path
from typing import Final

import cv2
import numpy as np
import pillow_heif
from numpy.typing import NDArray

from bot.dialogue.texts import speaking
from bot.faults import where_it_broke
from bot.pictures.marked_frame import draw_marked_frame
from bot.runtime.confinement import confine
from bot.runtime.orders import ANSWERS, ORDER_BYTES, ORDERS, Answer, FrameLimits, Order, Shown
from core.errors import FrameFault, UnreadableFrameError
from core.frame.check import check_frame
from core.frame.report import FrameReport

#: Linux tells a process here how many pages of address space it has.
_PAGES: Final = Path("/proc/self/statm")
#: Standard error output of a process.
_ERROR_OUTPUT: Final = 2
#: By how much processes of frames stand back behind the bot, which may have an emergency to
#: answer [nice]. Own rule.
_STAND_BACK: Final = 10

#: What comes of a file: an answer, and the pictures that it lists.
Found = tuple[Answer, tuple[bytes, ...]]
#: What is done with a file.
Work = Callable[[bytes, Order], Found]


def check_and_draw(data: bytes, order: Order) -> Found:
    """Measure a file and draw what was found onto a small copy."""
    report, pixels = checked(data, order)
    try:
        return Answer(report, pictures=(Shown("marked"),)), (draw_marked_frame(pixels, report),)
    except Exception as error:  # the report is worth sending without its picture
        return Answer(report, broke=where_it_broke(error)), ()


def checked(data: bytes, order: Order) -> tuple[FrameReport, NDArray[np.uint8]]:
    """The report of a file, as it was ordered, and its pixels.

    Raises:
        UnreadableFrameError: it is no picture that can be measured.
    """
    limits, options = order.limits, order.options
    return check_frame(
        data,
        options.camera_pixels,
        max_pixels=limits.pixels,
        max_bytes=limits.file_bytes,
        water_cells=options.water_cells or None,
        axis_deg=options.axis_deg,
    )


def answer_one(connection: Connection, work: Work) -> None:
    """Take an order and a file from the connection; send an answer in JSON, and its pictures.

    Runs in a process of its own, which ends with it.
    """
    order = ORDERS.validate_json(connection.recv_bytes(ORDER_BYTES))
    shut_in(order.limits)
    data = connection.recv_bytes(order.limits.file_bytes)
    with speaking(order.options.language):
        answer, pictures = found_by(lambda: work(data, order))
    send(connection, answer, pictures)


def send(connection: Connection, answer: Answer, pictures: tuple[bytes, ...]) -> None:
    """Send all that was found; nothing comes after it."""
    connection.send_bytes(ANSWERS.dump_json(answer))
    for picture in pictures:
        connection.send_bytes(picture)
    connection.close()


def found_by(work: Callable[[], Found]) -> Found:
    """What comes of it; whatever it raises becomes a fault."""
    try:
        return work()
    except UnreadableFrameError as error:
        return Answer(fault=error.fault, numbers=error.numbers), ()
    except MemoryError:
        return Answer(fault=FrameFault.TOO_MUCH_MEMORY), ()
    except Exception as error:  # a bug; the parent logs where
        out_of_memory = isinstance(error, cv2.error) and error.code == cv2.Error.StsNoMem
        fault = FrameFault.TOO_MUCH_MEMORY if out_of_memory else FrameFault.CRASHED
        return Answer(fault=fault, broke=where_it_broke(error)), ()


def shut_in(limits: FrameLimits) -> None:
    """Let this process say nothing, use no more than it may, and reach only its connections."""
    _be_quiet()
    _limit(limits)
    confine()


def _be_quiet() -> None:
    """Print nothing: decoders write about a file's content; leave Ctrl-C to the parent."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, _ERROR_OUTPUT)
    os.close(nowhere)
    signal.signal(signal.SIGINT, signal.SIG_IGN)


def _limit(limits: FrameLimits) -> None:
    """Bound memory, processor time and threads; open and write no file and leave no core."""
    os.nice(_STAND_BACK)
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
