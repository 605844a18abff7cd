"""Render the frames of the demonstration walk: `python -m tests.scenes OUT_DIR`."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

from tests.scenes.camera import Exposure
from tests.scenes.picture_file import PHONE, Stamp, jpeg
from tests.scenes.rear_screen import photograph_screen
from tests.scenes.waterfall import Kind, Plan, Taken, compose, take, with_clipped_share

#: White water that clips in the first frame, share of the frame.
FIRST_SHARE = 0.02


def frames(long_side: int, seed: int) -> Iterator[tuple[str, bytes, str]]:
    """Name, file and truth of each frame of the walk, in the order in which they are taken."""
    tall = (round(long_side * 2 / 3), long_side)
    first = Plan(*tall, seed=seed, light_ev100=9.0, exposure=Exposure(2**3.5, 2**-2))
    scene = with_clipped_share(compose(first), FIRST_SHARE)
    one = take(scene)
    yield "frame1.jpg", jpeg(one.pixels, Stamp()), truth(one)
    # Two thirds darker by the time, which the dial calls 1/6 s.
    darker = replace(scene.plan, moment=1, exposure=Exposure(2**3.5, 2 ** (-8 / 3)))
    two = take(compose(darker))
    stamp = Stamp(shutter=(1, 6))
    yield "frame2.jpg", jpeg(two.pixels, stamp), truth(two)
    wide = replace(darker, width=tall[1], height=tall[0], sky_gap=True, coverage_m=14.0, moment=2)
    three = take(compose(wide))
    stamp = replace(stamp, focal_mm=24.0, focal_full_frame_mm=24)
    yield "frame3.jpg", jpeg(three.pixels, stamp), truth(three)
    screen = photograph_screen(one.pixels, seed)
    yield "screen.jpg", jpeg(screen.pixels, PHONE, 88), "a phone's picture of a camera's screen"


def truth(taken: Taken) -> str:
    """What clips in a frame, in one line."""
    shares = ", ".join(f"{kind.value} {taken.share(kind):.3%}" for kind in Kind)
    return f"clipped: {shares}; white water {taken.stops_over:+.2f} stops from saturation"


def main(words: list[str] | None = None) -> int:
    """Write the files and print their names with what is true of them."""
    parser = argparse.ArgumentParser(prog="python -m tests.scenes", description=__doc__)
    parser.add_argument("folder", type=Path, help="where the files go; made if missing")
    parser.add_argument("--long-side", type=int, default=3000, help="of the frames [px]")
    parser.add_argument("--seed", type=int, default=1)
    asked = parser.parse_args(words)
    asked.folder.mkdir(parents=True, exist_ok=True)
    for name, data, true in frames(asked.long_side, asked.seed):
        path = asked.folder / name
        path.write_bytes(data)
        sys.stdout.write(f"{path}  {true}\n")
    return 0


if __name__ == "__main__":
    sys.exit(main())
