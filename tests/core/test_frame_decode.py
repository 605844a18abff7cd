"""Files become upright pixels in their own codes, or a clear fault."""

from __future__ import annotations

import io
import struct

import cv2
import numpy as np
import pillow_heif
import pytest
from PIL import Image

from core.errors import FrameFault, UnreadableFrameError
from core.frame import decode as decoding
from core.frame import limits as size_limits
from core.frame.decode import decode
from core.frame.pixels import halvings_to, shrunk
from tests.core.frame_files import (
    Pixels,
    exif_block,
    heic,
    jpeg,
    natural,
    png_header,
    saved,
    tiff_directory,
)

PACKED = {"raw": 0, "stored": 1}
ORIENTATION, WIDTH, HEIGHT = 274, 40962, 40963


def corners() -> Pixels:
    """A picture whose corners tell which way it stands: red at the top left, green at its right."""
    pixels = np.full((200, 300, 3), 40, np.uint8)
    pixels[:50, :50] = (230, 20, 20)
    pixels[:50, -50:] = (20, 230, 20)
    return pixels


#: What a camera stores for an upright `corners()`, by orientation (CIPA DC-008, from memory).
STORED = {
    1: lambda p: p,
    2: lambda p: p[:, ::-1],
    3: lambda p: p[::-1, ::-1],
    4: lambda p: p[::-1],
    5: lambda p: p.transpose(1, 0, 2),
    6: lambda p: np.rot90(p, 1),
    7: lambda p: p[::-1, ::-1].transpose(1, 0, 2),
    8: lambda p: np.rot90(p, -1),
}


def assert_upright(pixels: Pixels) -> None:
    assert pixels.shape == (200, 300, 3)
    assert pixels.flags.c_contiguous
    np.testing.assert_allclose(pixels[25, 25], (230, 20, 20), atol=12)
    np.testing.assert_allclose(pixels[25, -25], (20, 230, 20), atol=12)
    np.testing.assert_allclose(pixels[-25, 25], (40, 40, 40), atol=12)


@pytest.mark.parametrize("orientation", range(1, 9))
@pytest.mark.parametrize("kind", ["JPEG", "PNG", "TIFF"])
def test_orientation(kind: str, orientation: int) -> None:
    """All eight orientations come out upright, whoever turns the picture."""
    stored = Image.fromarray(np.ascontiguousarray(STORED[orientation](corners())))
    data = saved(stored, kind, exif=exif_block({ORIENTATION: orientation}))
    frame = decode(data)
    assert frame.file_kind == kind
    assert_upright(frame.pixels)


@pytest.mark.parametrize("orientation", [0, 9, 65535])
def test_invalid_orientation_is_upright(orientation: int) -> None:
    """An orientation outside 1 to 8 means nothing."""
    assert_upright(decode(jpeg(corners(), exif=exif_block({ORIENTATION: orientation}))).pixels)


def test_heic_is_not_turned_twice() -> None:
    """A HEIC's reader turns by the container; the Exif orientation is not applied again."""
    stored = np.ascontiguousarray(STORED[6](corners()))
    assert_upright(decode(heic(stored, exif_block({ORIENTATION: 6}))).pixels)


def test_heic_metadata() -> None:
    """A HEIC's Exif block is read; without one there is none."""
    block = exif_block({271: "Alder"}, {33434: 0.25})
    assert decode(heic(corners(), block)).metadata.settings.shutter_s == 0.25
    assert not decode(heic(corners())).metadata.present


def grey_heic() -> bytes:
    stream = io.BytesIO()
    pillow_heif.from_pillow(Image.fromarray(natural()).convert("L")).save(stream, quality=90)
    return stream.getvalue()


def alpha_heic() -> bytes:
    alpha = np.full((200, 300), 255, np.uint8)
    alpha[100:] = 0
    stream = io.BytesIO()
    image = Image.fromarray(np.dstack([corners(), alpha]))
    pillow_heif.from_pillow(image).save(stream, quality=-1)
    return stream.getvalue()


def test_grey_and_alpha_heic() -> None:
    """A grey HEIC has three equal channels; transparent parts are black."""
    grey = decode(grey_heic()).pixels
    np.testing.assert_allclose(grey.max(axis=2), grey.min(axis=2), atol=2)
    assert decode(alpha_heic()).pixels[150:].max() <= 3


def sixteen_bit(kind: str) -> bytes:
    ramp = np.linspace(0, 65535, 300).astype(np.uint16)[np.newaxis].repeat(200, axis=0)
    return saved(Image.fromarray(ramp), kind)


@pytest.mark.parametrize("kind", ["PNG", "TIFF"])
def test_sixteen_bits_keep_the_high_byte(kind: str) -> None:
    """A 16-bit grey ramp comes out as its high byte, white as 255."""
    pixels = decode(sixteen_bit(kind)).pixels
    expected = (np.linspace(0, 65535, 300).astype(np.uint16) >> 8).astype(np.uint8)
    np.testing.assert_array_equal(pixels[100, :, 1], expected)
    assert pixels[0, -1].tolist() == [255, 255, 255]


@pytest.mark.parametrize("mode", ["1", "L", "P", "LA", "RGBA"])
@pytest.mark.parametrize("kind", ["PNG", "TIFF"])
def test_modes(kind: str, mode: str) -> None:
    """Bilevel, grey, palette and alpha pictures become what a viewer shows."""
    image = Image.fromarray(corners()).convert(mode)
    pixels = decode(saved(image, kind)).pixels
    np.testing.assert_array_equal(pixels, np.asarray(image.convert("RGB")))


def test_cmyk_jpeg() -> None:
    """A CMYK JPEG is turned into red, green, blue."""
    data = saved(Image.fromarray(corners()).convert("CMYK"), "JPEG", quality=95)
    assert_upright(decode(data).pixels)


def test_grey_jpeg() -> None:
    """A grey JPEG has three equal channels."""
    pixels = decode(saved(Image.fromarray(corners()).convert("L"), "JPEG")).pixels
    np.testing.assert_array_equal(pixels[..., 0], pixels[..., 2])


def test_transparent_white_is_not_seen() -> None:
    """What is fully transparent is black, whatever colour it holds; the rest keeps its codes."""
    rgba = np.full((200, 300, 4), 255, np.uint8)
    rgba[:, 150:, 3] = 0
    rgba[:, :50, 3] = 128
    palette = Image.fromarray(corners()).quantize(4)
    pixels = decode(saved(Image.fromarray(rgba), "PNG")).pixels
    assert pixels[:, :150].min() == 255
    assert pixels[:, 150:].max() == 0
    with_hole = decode(saved(palette, "PNG", transparency=palette.getpixel((150, 100)))).pixels
    assert with_hole[100, 150].tolist() == [0, 0, 0]
    assert with_hole[10, 10, 0] > 200


def unusual_sampling(pixels: Pixels) -> bytes:
    """A JPEG that says of its third channel that it is sampled more finely than the first."""
    data = bytearray(jpeg(pixels))
    components = data.index(b"\xff\xc0") + 10  # of the frame: number, sampling, table of each
    data[components + 7] = 0x12
    return bytes(data)


def test_jpeg_pixels_are_the_files_own() -> None:
    """The strict reader and Pillow give the same pixels."""
    data = jpeg(natural(), quality=85)
    np.testing.assert_array_equal(decode(data).pixels, np.asarray(Image.open(io.BytesIO(data))))


@pytest.mark.parametrize("quality", [30, 50, 75, 80, 92, 98])
def test_quality(quality: int) -> None:
    """The quality is read from the tables."""
    assert decode(jpeg(corners(), quality)).jpeg_quality == quality


def test_quality_of_other_tables() -> None:
    """Tables of ones are quality 100; a PNG has none."""
    ones = decode(saved(Image.fromarray(corners()), "JPEG", qtables=[[1] * 64]))
    assert ones.jpeg_quality == 99  # 200 - 100 * 64 / 3688, over 2
    assert decode(saved(Image.fromarray(corners()), "PNG")).jpeg_quality is None


def test_embedded_preview_does_not_hide_a_truncation() -> None:
    """The end mark of a preview inside the metadata is not taken for the picture's own."""
    preview = jpeg(corners()[:100, :100])
    whole = jpeg(natural(), comment=preview)
    assert decode(whole).pixels.shape == (800, 1200, 3)
    with pytest.raises(UnreadableFrameError) as caught:
        decode(whole[: len(whole) // 2])
    assert caught.value.fault is FrameFault.DAMAGED


def test_break_in_the_middle_is_damage() -> None:
    """A file whose data break off in the middle, end mark or not, is damaged."""
    data = jpeg(natural())
    middle = len(data) // 2
    unsupported = b"\xff\xc3"  # a mark that cannot stand inside a scan
    with pytest.raises(UnreadableFrameError) as caught:
        decode(data[:middle] + unsupported + data[middle + 2 :])
    assert caught.value.fault is FrameFault.DAMAGED


def test_unusual_sampling_is_read_by_another_reader(monkeypatch: pytest.MonkeyPatch) -> None:
    """Colour sampled as the strict reader does not know it is read all the same, scaled too."""
    data = unusual_sampling(natural())
    assert decode(data).pixels.shape == (800, 1200, 3)
    monkeypatch.setattr(size_limits, "FULL_SCALE_PIXELS", 400_000)
    assert decode(data).pixels.shape == (400, 600, 3)


def test_unusual_sampling_with_a_blank_foot_is_damaged() -> None:
    """Where nobody looks at the codes, a last row without any detail counts as made up."""
    data = unusual_sampling(natural())
    with pytest.raises(UnreadableFrameError) as caught:
        decode(data[: len(data) // 3] + b"\xff\xd9")
    assert caught.value.fault is FrameFault.DAMAGED


def test_huge_jpeg_is_scaled_down(monkeypatch: pytest.MonkeyPatch) -> None:
    """Above the full scale a JPEG is decoded at half its size, and says so."""
    monkeypatch.setattr(size_limits, "FULL_SCALE_PIXELS", 400_000)
    frame = decode(jpeg(natural()))
    assert frame.pixels.shape == (400, 600, 3)
    assert frame.reduced
    monkeypatch.setattr(size_limits, "FULL_SCALE_PIXELS", 100_000)
    assert decode(jpeg(natural())).pixels.shape == (200, 300, 3)


def test_huge_heic_is_averaged_down(monkeypatch: pytest.MonkeyPatch) -> None:
    """Above the full scale a HEIC is averaged down after decoding, and says so."""
    monkeypatch.setattr(size_limits, "FULL_SCALE_PIXELS", 400_000)
    frame = decode(heic(natural()))
    assert frame.pixels.shape == (400, 600, 3)
    assert frame.reduced


def test_stated_size_tells_a_copy() -> None:
    """A file that states a larger size than it has is a copy."""
    copy = jpeg(corners(), exif=exif_block({}, {WIDTH: 6000, HEIGHT: 4000}))
    original = jpeg(corners(), exif=exif_block({}, {WIDTH: 300, HEIGHT: 200}))
    assert decode(copy).reduced
    assert not decode(original).reduced


@pytest.mark.parametrize(
    ("data", "fault", "numbers"),
    [
        (b"", FrameFault.EMPTY, {}),
        (b"no picture at all", FrameFault.NOT_A_PICTURE, {}),
        (
            jpeg(natural()[:90, :300]),
            FrameFault.TOO_SMALL,
            {"width": 300, "height": 90, "limit": 100},
        ),
        (
            png_header(60_000, 60_000),
            FrameFault.TOO_MANY_PIXELS,
            {"pixels": 3_600_000_000, "limit": 110_000_000},
        ),
        (png_header(3000, 3000)[:-30], FrameFault.DAMAGED, {}),
        (saved(Image.new("F", (200, 200)), "TIFF"), FrameFault.KIND_NOT_READ, PACKED),
        (saved(Image.new("I", (200, 200)), "TIFF"), FrameFault.KIND_NOT_READ, PACKED),
        (
            tiff_directory({256: (4, 1, 200), 257: (4, 1, 200), 258: (3, 1, 7), 262: (3, 1, 2)}),
            FrameFault.KIND_NOT_READ,
            PACKED,
        ),
        (b"II*\x00\xff\xff\xff\xff", FrameFault.DAMAGED, {}),
        (b"\xff\xd8\xff\xe0", FrameFault.DAMAGED, {}),
        (b"\xff\xd8\xff\xd9", FrameFault.DAMAGED, {}),
    ],
    ids=lambda value: "bytes" if isinstance(value, bytes) else None,
)
def test_faults(data: bytes, fault: FrameFault, numbers: dict[str, float]) -> None:
    """Each kind of trouble has its fault, with the numbers that a sentence needs."""
    with pytest.raises(UnreadableFrameError) as caught:
        decode(data)
    assert (caught.value.fault, caught.value.numbers) == (fault, numbers)


@pytest.mark.parametrize("bits", [8, 16])
def test_planes_of_16_bits_are_no_planes_of_8(bits: int) -> None:
    """A TIFF whose channels lie apart is read with 8 bits, and refused where it is garbled."""
    codes = corners().transpose(2, 0, 1)
    planes = codes.astype("<u2") * 257 if bits == 16 else codes
    size, at = planes[0].nbytes, 8 + 2 + 10 * 12 + 4
    tags = {
        256: (4, 1, 300), 257: (4, 1, 200), 258: (3, 3, at), 259: (3, 1, 1), 262: (3, 1, 2),
        273: (4, 3, at + 6), 277: (3, 1, 3), 278: (4, 1, 200), 279: (4, 3, at + 18),
        284: (3, 1, 2),
    }  # fmt: skip
    head = bytearray(tiff_directory(tags))
    head[8 + 2 + 2 * 12 + 8 : 8 + 2 + 2 * 12 + 12] = struct.pack("<I", at)  # three bits' place
    starts = [at + 30 + number * size for number in range(3)]
    data = bytes(head) + struct.pack("<3H3I3I", *[bits] * 3, *starts, *[size] * 3)
    data += planes.tobytes()
    if bits == 8:
        assert_upright(decode(data).pixels)
        return
    with pytest.raises(UnreadableFrameError) as caught:
        decode(data)
    assert (caught.value.fault, caught.value.numbers) == (FrameFault.KIND_NOT_READ, PACKED)


def test_limits_can_be_set() -> None:
    """Limits on bytes and pixels are the caller's."""
    data = jpeg(corners())
    for limits, fault in (
        ({"max_bytes": 1000}, FrameFault.TOO_MANY_BYTES),
        ({"max_pixels": 59_999}, FrameFault.TOO_MANY_PIXELS),
    ):
        with pytest.raises(UnreadableFrameError) as caught:
            decode(data, **limits)
        assert caught.value.fault is fault
        assert caught.value.numbers["limit"] == next(iter(limits.values()))
    assert decode(data, max_pixels=60_000).pixels.size == 180_000


def no_memory_of_opencv() -> cv2.error:
    error = cv2.error("no memory")
    error.code = cv2.Error.StsNoMem
    return error


@pytest.mark.parametrize(
    "error",
    [MemoryError(), no_memory_of_opencv(), RuntimeError("Memory allocation error: 72 bytes")],
    ids=["Python", "OpenCV", "libheif"],
)
def test_out_of_memory(monkeypatch: pytest.MonkeyPatch, error: Exception) -> None:
    """A decoder that finds no memory is no sign of damage."""

    def hungry(*_: object, **__: object) -> None:
        raise error

    monkeypatch.setattr(decoding, "jpeg_pixels", hungry)
    with pytest.raises(UnreadableFrameError) as caught:
        decode(jpeg(corners()))
    assert caught.value.fault is FrameFault.TOO_MUCH_MEMORY


def test_halving() -> None:
    """Halving averages blocks and leaves out what fills none."""
    pixels = np.arange(5 * 7, dtype=np.uint8).reshape(5, 7)
    once = shrunk(pixels, 1)
    assert once.shape == (2, 3)
    assert once[0, 0] == (0 + 1 + 7 + 8) // 4
    assert shrunk(pixels, 0) is pixels
    assert [halvings_to(side, 1600) for side in (300, 1600, 2200, 6000, 12_000)] == [0, 0, 0, 2, 3]
