"""What a frame's process is made to do in tests instead of measuring; imported by the process."""

from __future__ import annotations

import ctypes
import errno
import os
import resource
import signal
import socket
import sys
import tempfile
import threading
import time
from collections.abc import Callable
from pathlib import Path

import cv2
import numpy as np

from bot.runtime.frame_child import Found, check_and_draw
from bot.runtime.orders import Answer, Order
from core.errors import FrameFault
from core.frame.texture_trees import trained

#: What the process is like when it has just been forked; later it may open no file.
_STATUS = Path("/proc/self/status").read_text("ascii")
#: A file that is open already.
_OPEN_FILE = tempfile.TemporaryFile()  # noqa: SIM115  # for as long as the process


def say(**numbers: float) -> Found:
    """An answer that carries numbers out of the process."""
    return Answer(fault=FrameFault.DAMAGED, numbers=numbers), ()


def do(data: bytes, order: Order) -> Found:
    """Do what the file's bytes name; measure it when they name nothing."""
    deed = DEEDS.get(data[:40].decode("latin-1"))
    return check_and_draw(data, order) if deed is None else deed()


def hang() -> Found:
    time.sleep(600)
    return say()


def spin() -> Found:
    while True:
        pass


def swallow_memory() -> Found:
    kept = [np.ones(50_000_000, np.uint8) for _ in range(200)]
    return say(kept=len(kept))


def swallow_memory_in_opencv() -> Found:
    cv2.resize(np.zeros((10, 10), np.uint8), (40_000, 40_000), interpolation=cv2.INTER_NEAREST)
    return say()


def crash() -> Found:
    ctypes.string_at(0)
    return say()


def be_killed() -> Found:
    os.kill(os.getpid(), signal.SIGKILL)
    return say()


def bug() -> Found:
    raise RuntimeError("words of a private file")


def talk_too_much() -> Found:
    return Answer(broke="x" * 1_000_000), ()


def refused(deed: Callable[[], object]) -> Found:
    """Try a thing, and say with which error it was refused; 0: it was done."""
    try:
        deed()
    except OSError as error:
        return say(errno=error.errno or -1)
    return say(errno=0)


def write_a_file() -> Found:
    return refused(lambda: Path("never.bin").write_bytes(b"x" * 10))


def write_past_the_confinement() -> Found:
    """What the limits alone refuse, where a process cannot be confined."""
    return refused(lambda: os.write(_OPEN_FILE.fileno(), b"x" * 10))


def read_a_file() -> Found:
    return refused(lambda: Path(__file__).read_bytes())


def delete_a_file() -> Found:
    return refused(lambda: Path("never.bin").unlink())


def reach_the_network() -> Found:
    return refused(lambda: socket.socket(socket.AF_INET, socket.SOCK_STREAM))


def start_a_program() -> Found:
    return refused(lambda: os.execv(sys.executable, [sys.executable]))  # noqa: S606


def fork() -> Found:
    return refused(os.fork)


def kill_its_server() -> Found:
    return refused(lambda: os.kill(os.getppid(), signal.SIGKILL))


def lift_its_limits() -> Found:
    def lift() -> None:
        try:
            resource.setrlimit(resource.RLIMIT_CPU, (1000, 1000))
        except ValueError as error:  # the library's word for EPERM
            raise PermissionError(errno.EPERM, "") from error

    return refused(lift)


def start_a_thread() -> Found:
    thread = threading.Thread(target=time.sleep, args=(0,))
    thread.start()
    thread.join()
    return say(errno=0)


def use_what_was_trained() -> Found:
    """Numbers that come from a file, which the process can't open any more."""
    return say(errno=0.0 if trained().mean.size else -1.0)


def nap() -> Found:
    time.sleep(1)
    return say(slept=1)


def refuse_confinement() -> None:
    """The first process on a system that cannot confine one."""
    sys.exit(1)


def tell_of_myself() -> Found:
    """Whether this process has decoded anything before, prints, and how many threads it has."""
    os.write(2, b"this must not be seen")
    threads = int(_STATUS.split("Threads:")[1].split()[0])
    warm = float("core.frame.check" in sys.modules and "bot.pictures.marked_frame" in sys.modules)
    return say(
        pid=os.getpid(),
        parent=os.getppid(),
        threads=threads,
        warm=warm,
        decoded=float("PIL.GifImagePlugin" in sys.modules),
    )


DEEDS = {
    deed.__name__: deed
    for deed in (
        hang, spin, swallow_memory, swallow_memory_in_opencv, crash, be_killed, bug,
        talk_too_much, write_a_file, write_past_the_confinement, read_a_file, delete_a_file,
        reach_the_network, start_a_program, fork, kill_its_server, lift_its_limits,
        start_a_thread, use_what_was_trained, nap, tell_of_myself,
    )
}  # fmt: skip
