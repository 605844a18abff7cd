"""What the processes of several frames do: each reads one file, a last one puts them together."""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from dataclasses import replace
from multiprocessing.connection import Connection
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from bot.dialogue.texts import speaking
from bot.runtime.frame_child import Found, checked, found_by, send, shut_in
from bot.runtime.orders import ORDER_BYTES, ORDERS, PIXELS, Answer, Order, Pixels
from bot.runtime.together import ReadFrame, put_together
from core.errors import FrameFault

#: Bytes of a pixel: red, green, blue.
_CHANNELS: Final = 3

#: With fewer there is nothing to put together.
FEWEST_TOGETHER: Final = 2

#: What is done with the frames that could be read.
Together = Callable[[Sequence[ReadFrame], Order], Found]


def read_one(connection: Connection, out: Connection) -> None:
    """Take an order and a file from the connection; send the pixels out, and say how it went.

    Runs in a process of its own, which ends with it.
    """
    order = ORDERS.validate_json(connection.recv_bytes(ORDER_BYTES))
    shut_in(order.limits)
    data = connection.recv_bytes(order.limits.file_bytes)
    answer, pictures = found_by(lambda: _read(data, order, out))
    send(connection, answer, pictures)


def _read(data: bytes, order: Order, out: Connection) -> Found:
    report, pixels = checked(data, order)
    pixels = _fitting(pixels, order.limits.together_pixels // order.files)
    height, width = pixels.shape[:2]
    out.send_bytes(PIXELS.dump_json(Pixels(height, width, report)))
    _write_all(out, pixels)
    return Answer(), ()


def _fitting(pixels: NDArray[np.uint8], most: int) -> NDArray[np.uint8]:
    """The frame, made smaller when it has more pixels than it may."""
    height, width = pixels.shape[:2]
    if height * width <= most:
        return np.ascontiguousarray(pixels)
    scale = (most / (height * width)) ** 0.5
    size = (max(1, int(width * scale)), max(1, int(height * scale)))
    return np.asarray(cv2.resize(pixels, size, interpolation=cv2.INTER_AREA), np.uint8)


def _write_all(out: Connection, pixels: NDArray[np.uint8]) -> None:
    rest = pixels.data.cast("B")
    while rest:
        rest = rest[os.write(out.fileno(), rest) :]


def answer_together(
    connection: Connection, *inputs: Connection, work: Together = put_together
) -> None:
    """Take an order, and frames from those who read them; send an answer and its pictures.

    This process alone has more than one frame, and it decodes nothing: it gets bare pixels. A
    frame whose reader ends without a word is left out. Runs in a process of its own, which ends
    with it.
    """
    order = ORDERS.validate_json(connection.recv_bytes(ORDER_BYTES))
    shut_in(order.limits)
    with speaking(order.options.language):
        answer, pictures = found_by(lambda: _put(inputs, order, work))
    send(connection, answer, pictures)


def _put(inputs: Sequence[Connection], order: Order, work: Together) -> Found:
    most = order.limits.together_pixels // order.files
    frames = [_taken(place, source, order, most) for place, source in enumerate(inputs)]
    read = [frame for frame in frames if frame is not None]
    if len(read) < FEWEST_TOGETHER:
        # What was wrong with the others is known where they were ordered.
        return Answer(fault=FrameFault.CRASHED), ()
    answer, pictures = work(read, order)
    places = tuple(frame.place for frame in read)
    return replace(answer, read=places), pictures


def _taken(place: int, source: Connection, order: Order, most: int) -> ReadFrame | None:
    """One frame; None when it could not be read."""
    try:
        head = PIXELS.validate_json(source.recv_bytes(order.limits.report_bytes))
        if not 0 < head.height * head.width <= most:
            return None
        pixels = np.empty((head.height, head.width, _CHANNELS), np.uint8)
        _fill(source, pixels)
    except EOFError:
        return None
    return ReadFrame(place, head.report, pixels)


def _fill(source: Connection, pixels: NDArray[np.uint8]) -> None:
    rest = pixels.data.cast("B")
    while rest:
        number = os.readv(source.fileno(), [rest])
        if number == 0:
            raise EOFError
        rest = rest[number:]
