"""Times the check of a 24-megapixel frame against Pillow's bare decode of the same bytes."""

from __future__ import annotations

import asyncio
import io
import resource
import statistics
import sys
import time
from dataclasses import replace
from typing import Final, NamedTuple

import numpy as np
from numpy.typing import NDArray
from PIL import Image

from bot.runtime.frame_child import Found, Work, check_and_draw
from bot.runtime.frames import FrameServer
from bot.runtime.orders import Answer, Order

ROUNDS: Final = 7
WIDTH: Final = 6000
HEIGHT: Final = 4000
#: The quality at which cameras commonly store (common practice).
QUALITY: Final = 92


class Taken(NamedTuple):
    """What one frame took: inside its process, as a whole, and the most memory it had."""

    inside_s: float
    whole_s: float
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


def bare_decode(data: bytes, _: Order) -> Found:
    """What Pillow alone needs to give the pixels."""
    started = time.perf_counter()
    with Image.open(io.BytesIO(data)) as picture:
        picture.load()
    return Answer(numbers=_numbers(started)), ()


def whole_check(data: bytes, order: Order) -> Found:
    """All that a frame's process does: bytes to the report and its marked picture."""
    started = time.perf_counter()
    answer, pictures = check_and_draw(data, order)
    if answer.report is None or not pictures:
        raise RuntimeError("the frame was not measured")
    return replace(answer, numbers=_numbers(started)), pictures


def _numbers(started: float) -> dict[str, float]:
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    # Linux counts in KiB, macOS in bytes.
    peak_mb = peak / 2**20 if sys.platform == "darwin" else peak / 2**10
    return {"inside_s": time.perf_counter() - started, "peak_mb": peak_mb}


async def once(work: Work, data: bytes) -> Taken:
    """One frame through the real frame server, in a process of its own."""
    started = time.perf_counter()
    outcome = await FrameServer(work=work).check(data)
    numbers = outcome.numbers
    return Taken(numbers["inside_s"], time.perf_counter() - started, numbers["peak_mb"])


async def measure(data: bytes) -> str:
    """Both works in turn; the figures as text."""
    start_s = await FrameServer().start()
    decodes, checks = [], []
    for _ in range(ROUNDS):
        decodes.append(await once(bare_decode, data))
        checks.append(await once(whole_check, data))
    decode_s = statistics.median(taken.inside_s for taken in decodes)
    check_s = statistics.median(taken.inside_s for taken in checks)
    around_s = statistics.median(taken.whole_s - taken.inside_s for taken in checks)
    whole_s = statistics.median(taken.whole_s for taken in checks)
    rows = (
        f"frame of {WIDTH * HEIGHT / 1e6:.0f} megapixels, {len(data) / 1e6:.1f} MB, JPEG",
        f"Pillow's bare decode        {decode_s:6.2f} s",
        f"check and marked picture    {check_s:6.2f} s",
        f"process and transport       {around_s:6.2f} s",
        f"from bytes to answer        {whole_s:6.2f} s",
        f"start of the frame server   {start_s:6.2f} s",
        f"check over bare decode: {check_s / decode_s:.2f} (aim: at most 2.5)",
        f"peak memory: {max(taken.peak_mb for taken in checks):.0f} MB (aim: at most 450)",
    )
    return "\n".join(rows)


def main() -> int:
    """Measure and print the table."""
    print(asyncio.run(measure(natural_frame())))
    return 0


if __name__ == "__main__":
    sys.exit(main())
