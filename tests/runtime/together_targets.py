"""What the process of several frames is made to do in tests; imported by the process."""

from __future__ import annotations

import os
import sys
import time
from collections.abc import Sequence

import numpy as np

from bot.runtime.frame_child import Found
from bot.runtime.orders import Answer, Order
from bot.runtime.together import ReadFrame


def put(frames: Sequence[ReadFrame], order: Order) -> Found:
    """Do what the first time to illustrate stands for."""
    deed = DEEDS[int(order.options.times_s[0])]
    return deed(frames)


def tell(frames: Sequence[ReadFrame]) -> Found:
    """Which frames there are, and how this process came to them."""
    numbers = {f"mean {frame.place}": float(frame.pixels.mean()) for frame in frames}
    numbers |= {f"height {frame.place}": float(frame.pixels.shape[0]) for frame in frames}
    numbers["decoders"] = float("PIL.GifImagePlugin" in sys.modules)
    numbers["pid"] = float(os.getpid())
    return Answer(numbers=numbers), ()


def hang(_: Sequence[ReadFrame]) -> Found:
    """Do nothing for long."""
    time.sleep(600)
    return Answer(), ()


def swallow_memory(_: Sequence[ReadFrame]) -> Found:
    """Take more than there is."""
    kept = [np.ones(50_000_000, np.uint8) for _ in range(200)]
    return Answer(numbers={"kept": float(len(kept))}), ()


def crash(_: Sequence[ReadFrame]) -> Found:
    """End without a word."""
    os._exit(3)


TELL, HANG, SWALLOW, CRASH = range(4)
DEEDS = (tell, hang, swallow_memory, crash)
