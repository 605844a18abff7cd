"""Damaged and made-up files end in a report or in a clear fault, never in anything else."""

from __future__ import annotations

import random

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from core.errors import FrameFault, UnreadableFrameError
from core.frame.check import check_frame
from tests.core.frame_files import jpeg, natural, png_header
from tests.hostile.good_files import good

KINDS = ("JPEG", "progressive JPEG", "PNG", "TIFF", "LZW TIFF", "HEIC")


def outcome(data: bytes) -> FrameFault | None:
    """The fault of a file, None when there is a report."""
    try:
        report, pixels = check_frame(data)
    except UnreadableFrameError as error:
        return error.fault
    assert pixels.shape == (report.height, report.width, 3)
    assert 0 <= report.clipping.share <= 1
    return None


@pytest.mark.parametrize("kind", KINDS)
def test_whole(kind: str) -> None:
    """A file that is whole has a report: what is wrong with its parts is that they are parts."""
    assert outcome(good(kind)) is None


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("sixteenths", range(1, 16))
def test_truncated(kind: str, sixteenths: int) -> None:
    """A file cut off anywhere is damaged, whatever part of it is left."""
    data = good(kind)
    assert outcome(data[: len(data) * sixteenths // 16]) is FrameFault.DAMAGED


@pytest.mark.parametrize("kind", KINDS)
def test_flipped_bits(kind: str) -> None:
    """A few flipped bits give a report or a fault of the file, no other error."""
    seed = 20260621
    print(f"seed {seed}")  # noqa: T201  # so that a failure can be repeated
    chance = random.Random(f"{seed} {kind}")
    whole = good(kind)
    for _ in range(24):
        data = bytearray(whole)
        for _ in range(chance.choice((1, 4, 16))):
            data[chance.randrange(len(data))] ^= 1 << chance.randrange(8)
        fault = outcome(bytes(data))
        assert fault in {
            None,
            FrameFault.DAMAGED,
            FrameFault.NOT_A_PICTURE,
            FrameFault.KIND_NOT_READ,
            FrameFault.TOO_SMALL,
            FrameFault.TOO_MANY_PIXELS,
            FrameFault.TOO_MUCH_MEMORY,
        }


STARTS = st.sampled_from(
    [b"", b"\xff\xd8\xff", b"\x89PNG\r\n\x1a\n", b"II*\x00", b"MM\x00*", b"II+\x00",
     b"\x00\x00\x00\x18ftypheic", b"\x00\x00\x00\x18ftypmif1"]
)  # fmt: skip


@settings(max_examples=300)
@given(STARTS, st.binary(max_size=600))
@example(b"\x00\x00\x00\x18ftypheic", b"\x00" * 12)
@example(b"\xff\xd8\xff", b"\xda\x00\x00\xff\xd9")
def test_random_bytes(start: bytes, rest: bytes) -> None:
    """Random bytes, with or without the first bytes of a picture, are a clear fault."""
    assert isinstance(outcome(start + rest), FrameFault)


@pytest.mark.parametrize("side", [20_000, 100_000, 2**31 - 1])
def test_stated_giants(side: int) -> None:
    """A small file that states a huge picture is refused before anything is decoded."""
    assert outcome(png_header(side, side)) in {FrameFault.TOO_MANY_PIXELS, FrameFault.DAMAGED}
    giant = bytearray(jpeg(natural()[:120, :120]))
    at = giant.index(b"\xff\xc0")  # start of frame: length, precision, height, width
    giant[at + 5 : at + 9] = b"\xff\xdc\xff\xdc"
    assert outcome(bytes(giant)) is FrameFault.TOO_MANY_PIXELS


def test_trailing_bytes_are_ignored() -> None:
    """What stands behind a whole picture, a short film for instance, does no harm."""
    assert outcome(good("JPEG") + b"\x00\x00\x00\x18ftypmp42" * 100) is None
