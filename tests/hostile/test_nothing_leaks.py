"""Nothing of one file is ever in the report or the picture of another."""

from __future__ import annotations

import asyncio
import hashlib
import json
import random
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from bot.runtime.frames import FrameServer
from bot.runtime.orders import ANSWERS, Answer
from tests.core.frame_files import exif_block, heic, jpeg, natural, saved

#: A fresh interpreter: it decodes nothing itself, and for each file there is a process that has
#: seen no other. Prints an answer and the hash of a picture for each.
ALONE = """
import bot.runtime.one_thread
import hashlib, os, sys
from pathlib import Path
from bot.runtime.frame_child import check_and_draw
from bot.runtime.orders import ANSWERS, Answer, Order
from core.errors import UnreadableFrameError
for name in sys.argv[1:]:
    if os.fork():
        os.wait()
        continue
    try:
        answer, pictures = check_and_draw(Path(name).read_bytes(), Order())
    except UnreadableFrameError as error:
        answer, pictures = Answer(fault=error.fault, numbers=error.numbers), ()
    print(ANSWERS.dump_json(answer).decode())
    print(hashlib.sha256(b"".join(pictures)).hexdigest())
    sys.exit()
"""
SEED = 20260621


def marked(number: int) -> np.ndarray[tuple[int, int, int], np.dtype[np.uint8]]:
    """A picture with a white patch that no other number has."""
    pixels = natural()[200:500, 300:700].copy()
    pixels[40 * number : 40 * number + 30, 30 : 60 + 40 * number] = 255
    return pixels


def files() -> Iterator[bytes]:
    """Good files of each kind with a mark of their own, and the same ones broken."""
    for number, maker in enumerate(("Alder", "Birch", "Cedar", "Dogwood")):
        pixels = marked(number)
        exif = exif_block({271: maker, 272: maker * 2}, {33434: 1 / (2 + number)})
        image = Image.fromarray(pixels)
        data = (
            jpeg(pixels, exif=exif),
            saved(image, "PNG", exif=exif),
            saved(image, "TIFF", compression="tiff_lzw", exif=exif),
            heic(pixels, exif),
        )[number]
        yield data
        yield data[: len(data) * 2 // 3]


@pytest.fixture(scope="module")
def expected(tmp_path_factory: pytest.TempPathFactory) -> dict[bytes, tuple[Answer, str]]:
    """What a fresh process says of each file."""
    folder = tmp_path_factory.mktemp("alone")
    made = list(files())
    for number, data in enumerate(made):
        (folder / str(number)).write_bytes(data)
    names = [str(folder / str(number)) for number in range(len(made))]
    done = subprocess.run(
        [sys.executable, "-c", ALONE, *names],
        capture_output=True,
        check=True,
        cwd=Path(__file__).parents[2],
    )
    lines = done.stdout.decode().splitlines()
    answers = [ANSWERS.validate_json(line) for line in lines[::2]]
    return dict(zip(made, zip(answers, lines[1::2], strict=True), strict=True))


def test_the_marks_differ(expected: dict[bytes, tuple[Answer, str]]) -> None:
    """Each good file has a report and a picture of its own, each broken one a fault."""
    reports = [answer.report for answer, _ in expected.values() if answer.report]
    assert len({json.dumps(report.clipping.share) for report in reports}) == 4
    assert {report.metadata.maker for report in reports} == {"Alder", "Birch", "Cedar", "Dogwood"}
    assert len({picture for answer, picture in expected.values() if answer.report}) == 4
    assert sum(answer.fault is not None for answer, _ in expected.values()) == 4


async def test_marked_and_broken_files_in_turn(
    expected: dict[bytes, tuple[Answer, str]],
) -> None:
    """Measured over and over, three at a time, each says what it says in a fresh process."""
    order = [data for data in expected for _ in range(6)]
    random.Random(SEED).shuffle(order)
    server = FrameServer(workers=3)
    await server.start()
    outcomes = await asyncio.gather(*(server.check(data) for data in order))
    await server.stop()
    for data, outcome in zip(order, outcomes, strict=True):
        answer, picture = expected[data]
        assert (outcome.report, outcome.fault) == (answer.report, answer.fault)
        assert hashlib.sha256(outcome.picture or b"").hexdigest() == picture
