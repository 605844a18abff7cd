"""Times the check of frames against the bare decode of Pillow, and of a raw against LibRaw's."""

from __future__ import annotations

import asyncio
import io
import resource
import statistics
import sys
import time
from collections.abc import Sequence
from dataclasses import replace
from typing import Final, NamedTuple

import numpy as np
import rawpy
from numpy.typing import NDArray
from PIL import Image

from bot.runtime.frame_child import Found, Work, check_and_draw
from bot.runtime.frames import FrameServer
from bot.runtime.orders import Answer, Order
from core.frame.clipping import find_clipping
from core.frame.decode import decode
from core.frame.histogram import brightest_channel
from core.frame.raw import SATURATED_CODE
from core.frame.room import room_and_advice
from core.frame.working import LINEAR_OF_CODE
from tests.scenes.dng import Photosites, dng, mosaic

ROUNDS: Final = 7
WIDTH: Final = 6000
HEIGHT: Final = 4000
#: Sides of the larger frame, 45 megapixels [px].
LARGE: Final = (8192, 5464)
#: Black level, saturation and noise of the raw file's photosites [codes], and how far its light
#: is pushed: a sensor of 14 bits with a little clipped (common practice).
RAW_BLACK: Final = 512
RAW_SATURATION: Final = 16_383
RAW_NOISE: Final = 8.0
RAW_PUSH: Final = 1.02
#: The quality at which cameras commonly store (common practice).
QUALITY: Final = 92


class Taken(NamedTuple):
    """What one frame took: inside its process, as a whole, and the most memory it had."""

    inside_s: float
    whole_s: float
    peak_mb: float


def natural_frame(seed: int = 1, size: tuple[int, int] = (WIDTH, HEIGHT)) -> bytes:
    """A JPEG with the spectrum of a natural scene (amplitude 1/frequency), grain and white water.

    Source: Field (1987), "Relations between the statistics of natural images and the response
    properties of cortical cells", J. Opt. Soc. Am. A 4(12): amplitude falls about as 1/frequency;
    from memory. A frame larger than 24 megapixels goes on as its own mirror image.

    Args:
        seed: of all that is random.
        size: width and height [px], at least `WIDTH` and `HEIGHT`.
    """
    random = np.random.default_rng(seed)
    luma = _cloud(random, HEIGHT, WIDTH)
    # A fall of white water down the middle, clipped in its brightest parts.
    across = np.abs(np.linspace(-1, 1, WIDTH, dtype=np.float32))
    luma += 90 * np.exp(-((across / 0.12) ** 2))[None, :]
    tint = np.array([1.0, 1.02, 0.94], dtype=np.float32)
    grain = random.normal(0, 3, (HEIGHT, WIDTH, 1)).astype(np.float32)
    pixels = np.clip(luma[:, :, None] * tint + grain, 0, 255).astype(np.uint8)
    more = (size[1] - HEIGHT, size[0] - WIDTH)
    pixels = np.pad(pixels, ((0, more[0]), (0, more[1]), (0, 0)), mode="reflect")
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


def raw_frame(jpeg: bytes, *, compressed: bool) -> bytes:
    """The photosites under a JPEG's light as a DNG.

    Uncompressed, LibRaw only copies them; compressed without loss, as most cameras store them, it
    has to decode.
    """
    with Image.open(io.BytesIO(jpeg)) as picture:
        light = LINEAR_OF_CODE[np.asarray(picture)] * np.float32(RAW_PUSH)
    codes = mosaic(light, (RAW_SATURATION,) * 3, black=RAW_BLACK, noise=RAW_NOISE)
    return dng(
        Photosites(codes, black=RAW_BLACK, stated_white=RAW_SATURATION, compressed=compressed)
    )


def bare_decode(data: bytes, _: Order) -> Found:
    """What Pillow alone needs to give the pixels."""
    started = time.perf_counter()
    with Image.open(io.BytesIO(data)) as picture:
        picture.load()
    return Answer(numbers=_numbers(started)), ()


def bare_unpack(data: bytes, _: Order) -> Found:
    """What LibRaw alone needs to give the photosites."""
    started = time.perf_counter()
    with rawpy.RawPy() as raw:
        raw.open_buffer(io.BytesIO(data))
        raw.unpack()
    return Answer(numbers=_numbers(started)), ()


def clipping_check(data: bytes, _: Order) -> Found:
    """What the clipping alone needs: bytes to areas with their kinds, the room and the advice."""
    started = time.perf_counter()
    frame = decode(data)
    brightest = brightest_channel(frame.pixels)
    clipping = find_clipping(
        frame.pixels,
        jpeg_quality=frame.jpeg_quality,
        brightest=brightest,
        level=SATURATED_CODE if frame.raw else None,
    )
    room_and_advice(clipping, brightest, frame.raw.exposure if frame.raw else None)
    if not clipping.areas:
        raise RuntimeError("nothing was clipped")
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


async def measure(data: bytes, pixels: int) -> str:
    """The three works in turn, so that all meet the same load; the figures as text."""
    start_s = await FrameServer().start()
    works = (bare_decode, clipping_check, whole_check)
    rounds = [[await once(work, data) for work in works] for _ in range(ROUNDS)]
    decodes, clippings, checks = zip(*rounds, strict=True)
    decode_s, clipping_s, check_s = (
        statistics.median(taken.inside_s for taken in work) for work in (decodes, clippings, checks)
    )
    around_s = statistics.median(taken.whole_s - taken.inside_s for taken in checks)
    whole_s = statistics.median(taken.whole_s for taken in checks)
    peak_mb = max(taken.peak_mb for taken in checks)
    times = peak_mb * 2**20 / (3 * pixels)
    clipping_ratio, check_ratio = (_ratio(work, decodes) for work in (clippings, checks))
    rows = (
        f"frame of {pixels / 1e6:.0f} megapixels, {len(data) / 1e6:.1f} MB, JPEG",
        f"Pillow's bare decode        {decode_s:6.2f} s",
        f"clipping alone              {clipping_s:6.2f} s",
        f"check and marked picture    {check_s:6.2f} s",
        f"process and transport       {around_s:6.2f} s",
        f"from bytes to answer        {whole_s:6.2f} s",
        f"start of the frame server   {start_s:6.2f} s",
        f"clipping over bare decode: {clipping_ratio:.2f} (aim: at most 1.8)",
        f"check over bare decode: {check_ratio:.2f} (aim: at most 5)",
        f"peak memory: {peak_mb:.0f} MB, {times:.1f} times the pixels (aim: at most 6)",
    )
    return "\n".join(rows)


def _ratio(works: Sequence[Taken], yardsticks: Sequence[Taken]) -> float:
    """Of each round on its own: what else the machine does changes from round to round."""
    return statistics.median(
        taken.inside_s / one.inside_s for taken, one in zip(works, yardsticks, strict=True)
    )


async def measure_raw(data: bytes, kind: str) -> str:
    """A raw file through LibRaw alone and through the clipping check, in turn; as text."""
    await FrameServer().start()
    works = (bare_unpack, clipping_check)
    rounds = [[await once(work, data) for work in works] for _ in range(ROUNDS)]
    unpacks, clippings = zip(*rounds, strict=True)
    unpack_s, clipping_s = (
        statistics.median(taken.inside_s for taken in work) for work in (unpacks, clippings)
    )
    rows = (
        f"raw of {WIDTH * HEIGHT / 1e6:.0f} megapixels, {len(data) / 1e6:.1f} MB, {kind} DNG",
        f"LibRaw's bare unpacking     {unpack_s:6.2f} s",
        f"clipping alone              {clipping_s:6.2f} s",
        f"clipping over bare unpacking: {_ratio(clippings, unpacks):.2f} (aim: at most 2)",
    )
    return "\n".join(rows)


def main() -> int:
    """Measure and print the tables."""
    for size in ((WIDTH, HEIGHT), LARGE):
        print(asyncio.run(measure(natural_frame(size=size), size[0] * size[1])))
    for kind, compressed in (("uncompressed", False), ("losslessly compressed", True)):
        data = raw_frame(natural_frame(), compressed=compressed)
        print(asyncio.run(measure_raw(data, kind)))
    return 0


if __name__ == "__main__":
    sys.exit(main())
