"""Times the check of a 24-megapixel frame against Pillow's bare decode of the same bytes."""

from __future__ import annotations

import asyncio
import io
import multiprocessing
import resource
import statistics
import sys
import time
from collections.abc import Callable
from multiprocessing.connection import Connection
from typing import Final, NamedTuple

import numpy as np
from numpy.typing import NDArray
from PIL import Image

from bot.pictures.marked_frame import draw_marked_frame
from bot.runtime.frames import FrameServer
from core.frame.check import check_frame

ROUNDS: Final = 7
WIDTH: Final = 6000
HEIGHT: Final = 4000
#: The quality at which cameras commonly store (common practice).
QUALITY: Final = 92


class Taken(NamedTuple):
    """What one run in a fresh child took."""

    seconds: float
    peak_mb: float


def natural_frame(seed: int = 1) -> bytes:
    """A JPEG with the spectrum of a natural scene (amplitude 1/frequency), grain and white water.

    Source: Field (1987), "Relations between the statistics of natural images and the response
    properties of cortical cells", J. Opt. Soc. Am. A 4(12): amplitude falls about as 1/frequency;
    from memory.
    """
    random = np.random.default_rng(seed)
    luma = _cloud(random, HEIGHT, WIDTH)
    # A fall of white water down the middle, clipped in its brightest parts.
    across = np.abs(np.linspace(-1, 1, WIDTH, dtype=np.float32))
    luma += 90 * np.exp(-((across / 0.12) ** 2))[None, :]
    tint = np.array([1.0, 1.02, 0.94], dtype=np.float32)
    grain = random.normal(0, 3, (HEIGHT, WIDTH, 1)).astype(np.float32)
    pixels = np.clip(luma[:, :, None] * tint + grain, 0, 255).astype(np.uint8)
    out = io.BytesIO()
    Image.fromarray(pixels).save(out, "JPEG", quality=QUALITY)
    return out.getvalue()


def _cloud(random: np.random.Generator, height: int, width: int) -> NDArray[np.float32]:
    down = np.fft.fftfreq(height)[:, None]
    across = np.fft.rfftfreq(width)[None, :]
    frequency = np.hypot(down, across)
    frequency[0, 0] = 1.0
    spectrum = np.exp(2j * np.pi * random.random(frequency.shape)) / frequency
    spectrum[0, 0] = 0.0
    cloud = np.fft.irfft2(spectrum, s=(height, width))
    scaled: NDArray[np.float32] = (105 + 45 * cloud / cloud.std()).astype(np.float32)
    return scaled


def bare_decode(data: bytes) -> None:
    """What Pillow alone needs to give the pixels."""
    with Image.open(io.BytesIO(data)) as picture:
        picture.load()


def whole_check(data: bytes) -> None:
    """All that a frame's own process does: bytes to the report and its marked picture."""
    report, pixels = check_frame(data)
    draw_marked_frame(pixels, report)


def in_a_child(work: Callable[[bytes], None], data: bytes) -> Taken:
    """Run the work once in a fresh child that has the libraries loaded, as a frame's process."""
    context = multiprocessing.get_context("forkserver")
    here, there = context.Pipe(duplex=False)
    child = context.Process(target=_timed, args=(work, data, there))
    child.start()
    there.close()
    taken: Taken = here.recv()
    child.join()
    return taken


def _timed(work: Callable[[bytes], None], data: bytes, out: Connection) -> None:
    started = time.perf_counter()
    work(data)
    taken_s = time.perf_counter() - started
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    # Linux counts in KiB, macOS in bytes.
    out.send(Taken(taken_s, peak / 2**20 if sys.platform == "darwin" else peak / 2**10))


async def end_to_end(data: bytes) -> tuple[float, list[float]]:
    """Start of the frame server, and checks through it with all that is around them [s]."""
    server = FrameServer()
    started = time.perf_counter()
    await server.start()
    start_s = time.perf_counter() - started
    checks = []
    for _ in range(ROUNDS):
        started = time.perf_counter()
        outcome = await server.check(data, None)
        checks.append(time.perf_counter() - started)
        if outcome.report is None:
            raise RuntimeError(f"the frame was refused: {outcome.fault}")
    await server.stop()
    return start_s, checks


def nothing(_: bytes) -> None:
    """What starting a child takes by itself."""


def main() -> int:
    """Measure, alternating, and print the table."""
    multiprocessing.set_forkserver_preload(["core.frame.check", "bot.pictures.marked_frame"])
    data = natural_frame()
    in_a_child(nothing, data)  # starts the forkserver itself
    decodes, checks, starts = [], [], []
    for _ in range(ROUNDS):
        decodes.append(in_a_child(bare_decode, data))
        checks.append(in_a_child(whole_check, data))
        started = time.perf_counter()
        in_a_child(nothing, data)
        starts.append(time.perf_counter() - started)
    start_s, through = asyncio.run(end_to_end(data))
    decode_s = statistics.median(taken.seconds for taken in decodes)
    check_s = statistics.median(taken.seconds for taken in checks)
    peak_mb = max(taken.peak_mb for taken in checks)
    print(f"frame of {WIDTH * HEIGHT / 1e6:.0f} megapixels, {len(data) / 1e6:.1f} MB, JPEG")
    print(f"Pillow's bare decode            {decode_s:6.2f} s")
    print(f"check and marked picture        {check_s:6.2f} s")
    print(f"start of a child                {statistics.median(starts):6.2f} s")
    print(f"through the frame server        {statistics.median(through):6.2f} s")
    print(f"start of the frame server       {start_s:6.2f} s")
    print(f"check over bare decode: {check_s / decode_s:.2f} (aim: at most 2.5)")
    print(f"peak memory of the child: {peak_mb:.0f} MB (aim: at most 450)")
    return 0


if __name__ == "__main__":
    sys.exit(main())
