"""What a frame's process is made to do in tests instead of measuring; imported by the process."""

from __future__ import annotations

import ctypes
import os
import signal
import sys
import time
from pathlib import Path

import cv2
import numpy as np

from bot.runtime.frame_child import Answer, check_and_draw
from core.errors import FrameFault

Camera = tuple[int, int] | None
Result = tuple[Answer, bytes]


def say(**numbers: float) -> Result:
    """An answer that carries numbers out of the process."""
    return Answer(fault=FrameFault.DAMAGED, numbers=numbers), b""


def do(data: bytes, camera_pixels: Camera, max_pixels: int) -> Result:
    """Do what the file's bytes name; measure it when they name nothing."""
    deed = DEEDS.get(data[:40].decode("latin-1"))
    return check_and_draw(data, camera_pixels, max_pixels) if deed is None else deed()


def hang() -> Result:
    time.sleep(600)
    return say()


def spin() -> Result:
    while True:
        pass


def swallow_memory() -> Result:
    kept = [np.ones(50_000_000, np.uint8) for _ in range(200)]
    return say(kept=len(kept))


def swallow_memory_in_opencv() -> Result:
    cv2.resize(np.zeros((10, 10), np.uint8), (40_000, 40_000), interpolation=cv2.INTER_NEAREST)
    return say()


def crash() -> Result:
    ctypes.string_at(0)
    return say()


def be_killed() -> Result:
    os.kill(os.getpid(), signal.SIGKILL)
    return say()


def bug() -> Result:
    raise RuntimeError("words of a private file")


def talk_too_much() -> Result:
    return Answer(broke="x" * 1_000_000), b""


def write_a_file() -> Result:
    try:
        Path("never.bin").write_bytes(b"x" * 10)
    except OSError as error:
        Path("never.bin").unlink(missing_ok=True)
        return say(errno=error.errno or 0)
    return say()


def tell_of_myself() -> Result:
    """Whether this process has decoded anything before, prints, and how many threads it has."""
    os.write(2, b"this must not be seen")
    status = Path("/proc/self/status").read_text("ascii")
    threads = int(status.split("Threads:")[1].split()[0])
    warm = float("core.frame.check" in sys.modules and "bot.pictures.marked_frame" in sys.modules)
    return say(
        pid=os.getpid(),
        threads=threads,
        warm=warm,
        decoded=float("PIL.GifImagePlugin" in sys.modules),
    )


DEEDS = {
    deed.__name__: deed
    for deed in (
        hang, spin, swallow_memory, swallow_memory_in_opencv, crash, be_killed, bug,
        talk_too_much, write_a_file, tell_of_myself,
    )
}  # fmt: skip
