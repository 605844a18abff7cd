"""Kinds of files are told by their content."""

from __future__ import annotations

import pytest
from PIL import Image

from core.errors import FrameFault, UnreadableFrameError
from core.frame.sniff import RAW, file_kind, has_readable_directory
from tests.core.frame_files import heic, jpeg, natural, saved, tiff_directory

LONG, SHORT = 4, 3  # TIFF 6.0 field types


@pytest.mark.parametrize(
    ("data", "kind"),
    [
        (jpeg(natural()[:120, :120]), "JPEG"),
        (saved(Image.fromarray(natural()[:120, :120]), "PNG"), "PNG"),
        (saved(Image.fromarray(natural()[:120, :120]), "TIFF"), "TIFF"),
        (saved(Image.fromarray(natural()[:120, :120]), "TIFF", big_tiff=True), "TIFF"),
        (heic(natural()[:128, :128]), "HEIC"),
        (b"\x00\x00\x00\x18ftypmif1\x00\x00\x00\x00mif1heic", "HEIC"),
        (b"\x00\x00\x00\x18ftypcrx \x00\x00\x00\x00crx isom", RAW),
        (b"FUJIFILMCCD-RAW 0201", RAW),
        (b"II\x1a\x00\x00\x00HEAPCCDR", RAW),
        (b"II*\x00\x10\x00\x00\x00CR\x02\x00", RAW),
        (tiff_directory({50706: (LONG, 1, 1)}), RAW),
        (tiff_directory({262: (SHORT, 1, 32803)}), RAW),
        (tiff_directory({259: (SHORT, 1, 34713)}, ">"), RAW),
        (tiff_directory({254: (LONG, 1, 1), 330: (LONG, 1, 400)}), RAW),
    ],
)
def test_read_kinds(data: bytes, kind: str) -> None:
    """Each kind that is read is known by its first bytes."""
    assert file_kind(data) == kind


OTHER = {"raw": 0}


@pytest.mark.parametrize(
    ("data", "fault", "numbers"),
    [
        (b"", FrameFault.EMPTY, {}),
        (b"hello, here is my frame", FrameFault.NOT_A_PICTURE, {}),
        (b"\x00\x00\x00\x18ftypmp42\x00\x00\x00\x00isommp42", FrameFault.NOT_A_PICTURE, {}),
        (b"\x00\x00\x00\x18ftypavif\x00\x00\x00\x00mif1avif", FrameFault.KIND_NOT_READ, OTHER),
        (b"GIF89a\x01\x00\x01\x00", FrameFault.KIND_NOT_READ, OTHER),
        (b"RIFF\x10\x00\x00\x00WEBPVP8 ", FrameFault.KIND_NOT_READ, OTHER),
        (b"RIFF\x10\x00\x00\x00WAVEfmt ", FrameFault.NOT_A_PICTURE, {}),
    ],
)
def test_refused_kinds(data: bytes, fault: FrameFault, numbers: dict[str, float]) -> None:
    """Another kind of picture, a video and a text each get their own fault."""
    with pytest.raises(UnreadableFrameError) as caught:
        file_kind(data)
    assert (caught.value.fault, caught.value.numbers) == (fault, numbers)


def test_small_copy_alone_is_no_raw() -> None:
    """A TIFF that calls itself a small copy is a raw file only with a directory below."""
    assert file_kind(tiff_directory({254: (LONG, 1, 1)})) == "TIFF"


@pytest.mark.parametrize(
    "data", [b"II*\x00", b"II*\x00\xff\xff\xff\xff", b"MM\x00*\x00\x00\x00\x08\xff"]
)
def test_broken_directory_is_no_raw(data: bytes) -> None:
    """A directory that cannot be read says nothing; the decoder finds the damage."""
    assert file_kind(data) == "TIFF"
    assert not has_readable_directory(data)
