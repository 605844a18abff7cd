"""Raw files: saturation from the data, room, clipped shares, the preview's error; never a guess."""

from __future__ import annotations

import io
from dataclasses import replace

import numpy as np
import pytest
import rawpy
from hypothesis import given, settings
from hypothesis import strategies as st
from numpy.typing import NDArray
from PIL import Image

from core.errors import FrameFault, UnreadableFrameError
from core.frame import decode as decoding
from core.frame import raw as reading
from core.frame.check import check_frame
from core.frame.metadata import completed, read_metadata
from core.frame.photosites import COLOURS, Plane, count
from core.frame.pixels import shrunk
from core.frame.raw import read_raw, render
from core.frame.raw_extents import raw_is_whole
from core.frame.raw_saturation import find_saturation
from core.frame.report import Advice, CameraSettings, FrameMetadata, FrameReport, SizeNote
from tests.scenes.dng import Photosites, dng, mosaic

#: Own rule: what the aims ask for.
SIXTH_STOP = 1 / 6
CLIPPED_WITHIN = 5e-4

SIDES = (400, 600)


def water(level: tuple[float, float, float], clipped: float = 0.0) -> NDArray[np.float64]:
    """Dark rock with a white band of known light, and rows of it beyond saturation."""
    rng = np.random.default_rng(3)
    light = 0.03 * (1 + 0.2 * rng.standard_normal((*SIDES, 1))) * np.ones(3)
    light[100:300, 200:400] = level
    light[100 : 100 + round(clipped * SIDES[0] * SIDES[1] / 200), 200:400] = 3.0
    return np.asarray(light)


def measured(
    light: NDArray[np.float64],
    *,
    saturation: tuple[int, int, int] = (15_800, 15_800, 15_800),
    black: int = 512,
    stated: int = 16_383,
    noise: float = 8.0,
    preview: bytes | None = None,
    orientation: int = 1,
) -> FrameReport:
    codes = mosaic(light, saturation, black, noise)
    sites = Photosites(codes, black, stated, preview=preview, orientation=orientation)
    report, _ = check_frame(dng(sites))
    return report


@pytest.mark.parametrize("room", [0.33, 1.0, 2.5])
def test_room_is_the_sensors(room: float) -> None:
    """The room of each channel is the distance of the white water from the stated white level."""
    level = 2.0**-room
    report = measured(water((level * 0.5, level, level * 0.7)), stated=15_800)
    assert report.raw is not None
    wanted = {"red": room + 1.0, "green": room, "blue": room + np.log2(1 / 0.7)}
    for colour in COLOURS:
        assert report.raw.room_stops[colour] == pytest.approx(wanted[colour], abs=SIXTH_STOP)
    assert report.room_stops == pytest.approx(room, abs=SIXTH_STOP)
    assert not report.raw.saturation_found


@pytest.mark.parametrize(
    ("saturation", "stated"),
    [
        ((15_800, 15_800, 15_800), 16_383),  # ends below what is stated
        ((3_860, 3_860, 3_860), 4_095),
        ((65_472, 65_472, 65_472), 65_535),
        ((40_000, 40_000, 40_000), 255),  # nonsense is stated
        ((16_383, 16_383, 16_383), 65_535),  # the container's word, not the converter's
        ((13_000, 15_300, 15_000), 16_383),  # each channel ends elsewhere
    ],
)
@pytest.mark.parametrize("noise", [0.0, 12.0], ids=["sharp", "spread"])
def test_saturation_comes_from_the_data(
    saturation: tuple[int, int, int], stated: int, noise: float
) -> None:
    """Clipped shares are exact wherever a sensor ends, sharply or spread by noise."""
    if noise and stated == 65_535 > 2 * saturation[0]:
        noise = 0.0  # converters end sharply
    clipped = 0.05
    report = measured(
        water((0.4, 0.4, 0.4), clipped), saturation=saturation, stated=stated, noise=noise
    )
    assert report.raw is not None
    assert report.raw.saturation_found
    for colour in COLOURS:
        assert report.raw.clipped[colour] == pytest.approx(clipped, abs=CLIPPED_WITHIN)
        assert report.raw.room_stops[colour] == pytest.approx(0.0, abs=0.05)
    assert report.clipping.share == pytest.approx(clipped, abs=CLIPPED_WITHIN)
    assert report.clipping.by_channel == report.raw.clipped


def test_one_channel_alone() -> None:
    """A blue channel that clips alone is told, and the others keep their room."""
    light = water((0.25, 0.5, 0.4))
    light[150:250, 250:350, 2] = 2.0
    report = measured(light)
    assert report.raw is not None
    assert report.raw.clipped["blue"] == pytest.approx(100 * 100 / 240_000, abs=CLIPPED_WITHIN)
    assert (report.raw.clipped["red"], report.raw.clipped["green"]) == (0, 0)
    assert report.raw.room_stops["green"] == pytest.approx(1.0, abs=SIXTH_STOP)


def test_a_white_board_is_no_saturation() -> None:
    """An evenly lit surface makes a pile of its own in each colour, and none of them counts."""
    report = measured(water((0.31, 0.5, 0.42)), noise=20.0)
    assert report.raw is not None
    assert not report.raw.saturation_found
    assert report.clipping.share == 0
    assert report.advice is Advice.BRIGHTER


def test_hot_photosites_are_no_saturation() -> None:
    """Single photosites far above all others neither clip nor move the end of the scale."""
    codes = mosaic(water((0.5, 0.5, 0.5)), (15_800,) * 3, 512)
    codes[7, 9] = codes[301, 44] = 16_383
    found, _ = check_frame(dng(Photosites(codes, 512, 16_383)))
    assert found.raw is not None
    assert max(found.raw.clipped.values()) <= 2 / 60_000
    assert found.raw.room_stops["green"] == pytest.approx(1.0, abs=SIXTH_STOP)


def _preview(light: NDArray[np.float64], over_stops: float) -> bytes:
    """A camera's own picture that is brighter than its raw by so many stops."""
    values = np.clip(light * 2.0**over_stops, 0, 1)
    curved = np.where(values <= 0.0031308, 12.92 * values, 1.055 * values ** (1 / 2.4) - 0.055)
    picture = Image.fromarray((curved * 255).round().astype(np.uint8)).resize((1200, 800))
    file = io.BytesIO()
    picture.save(file, "JPEG", quality=95)
    return file.getvalue()


@pytest.mark.parametrize("over", [0.0, 0.5, 1.0])
def test_preview_overstates(over: float) -> None:
    """A preview that clips earlier than the sensor is found out, by how much."""
    ramp = np.linspace(0.02, 1.1, SIDES[1])[None, :, None] * np.ones((*SIDES, 3))
    report = measured(ramp, preview=_preview(ramp, over))
    assert report.raw is not None
    assert report.raw.preview_over_stops == pytest.approx(over, abs=SIXTH_STOP)


@pytest.mark.parametrize(
    "light",
    [water((0.2, 0.2, 0.2)), water((0.4, 0.4, 0.4), 0.05)],
    ids=["nothing clipped", "nothing nearly clipped"],
)
def test_a_preview_that_tells_nothing(light: NDArray[np.float64]) -> None:
    """Where nothing is near saturation, nothing is said of the preview."""
    report = measured(light, preview=_preview(light, 0.7))
    assert report.raw is not None
    assert report.raw.preview_over_stops is None


@pytest.mark.parametrize("broken", [b"\xff\xd8\xff\xe0 no picture", _preview(water((1,) * 3), 0)])
def test_a_broken_or_small_preview_harms_nothing(broken: bytes) -> None:
    """A preview that can't be read, or is too small to compare, is left out."""
    small = io.BytesIO()
    if broken.startswith(b"\xff\xd8\xff\xe0 "):
        small.write(broken)
    else:
        Image.open(io.BytesIO(broken)).resize((300, 200)).save(small, "JPEG")
    report = measured(water((0.9, 0.9, 0.9), 0.01), preview=small.getvalue())
    assert report.raw is not None
    assert report.raw.preview_over_stops is None


def test_a_preview_that_is_no_jpeg() -> None:
    """Whatever a raw file calls its preview is left out when it can't be read."""
    assert decoding._preview(b"\xff\xd8\xff\xe0 no picture") == (None, {})


@pytest.mark.parametrize("orientation", [1, 3, 6, 8])
def test_upright(orientation: int) -> None:
    """A raw is turned as its file says; its size is that of the photosites."""
    light = water((0.4, 0.4, 0.4))
    light[:50, :75] = (2.0, 0.05, 0.05)
    turns = {1: 0, 3: 2, 6: 1, 8: 3}[orientation]
    stored = np.rot90(light, turns)
    sites = Photosites(mosaic(stored, (15_800,) * 3, 512), 512, 16_383, orientation=orientation)
    report, pixels = check_frame(dng(sites))
    assert (report.width, report.height) == (SIDES[1], SIDES[0])
    assert pixels.shape == (SIDES[0] // 2, SIDES[1] // 2, 3)
    assert pixels[10, 10, 0] == 255 > pixels[10, 10, 1]
    assert report.size_note is SizeNote.FULL


def test_what_another_reader_fills_in() -> None:
    """LibRaw's values fill what the tags leave open; without a sensitivity they are defaults."""
    known = FrameMetadata(settings=CameraSettings(f_number=8.0))
    values = {"shutter_s": 0.5, "f_number": 11.0, "iso": 200.0, "focal_mm": 0.0}
    found = completed(known, **values, taken_at="2026-10-03T09:00:00")
    assert found.settings == CameraSettings(shutter_s=0.5, f_number=8.0, iso=200.0)
    assert (found.taken_at, found.present) == ("2026-10-03T09:00:00", True)
    assert completed(known, **(values | {"iso": 0.0}), taken_at="2026-10-03T09:00:00") == known
    assert read_metadata({33434: 0.0, 37377: 0.0}).settings.shutter_s is None


def test_what_the_file_says() -> None:
    """Settings and camera come from the directories of the file."""
    report = measured(water((0.4, 0.4, 0.4)))
    said = report.metadata.settings
    assert (said.shutter_s, said.f_number, said.iso) == (0.25, 8.0, 100)
    assert (report.metadata.maker, report.metadata.model) == ("Alder", "Alder One")
    assert report.file_kind == "raw"


def test_a_large_raw() -> None:
    """Sparkle vanishes in the blocks of a large raw, and its room is the white water's."""
    light = np.repeat(np.repeat(water((0.2, 0.4, 0.3)), 4, axis=0), 4, axis=1)
    light[::97, ::89] = 3.0
    report = measured(light)
    assert report.raw is not None
    assert report.raw.room_stops["green"] == pytest.approx(np.log2(1 / 0.4), abs=SIXTH_STOP)
    assert 0 < report.raw.clipped["green"] < 1e-3


@pytest.mark.parametrize("multipliers", [[2.0, -1.0, 1.0], [40.0, 1.0, 1.0]])
def test_nonsense_for_a_white_balance(multipliers: list[float]) -> None:
    """A white balance that no camera means is left out."""
    assert set(reading._gains(multipliers).values()) == {1.0}


@pytest.mark.parametrize("sixteenths", range(1, 16))
def test_cut_off_is_damaged(sixteenths: int) -> None:
    """A raw that was cut off is refused, never called black or clipped."""
    data = dng(Photosites(mosaic(water((0.9,) * 3, 0.05), (15_800,) * 3, 512), 512))
    with pytest.raises(UnreadableFrameError) as caught:
        check_frame(data[: len(data) * sixteenths // 16])
    assert caught.value.fault in {FrameFault.DAMAGED, FrameFault.NOT_A_PICTURE}


def test_a_hole_at_the_foot_is_damaged() -> None:
    """Rows that were never read are zeros; a raw that ends in them is refused."""
    codes = mosaic(water((0.9, 0.9, 0.9)), (15_800,) * 3, 512)
    codes[-40:] = 0
    with pytest.raises(UnreadableFrameError) as caught:
        check_frame(dng(Photosites(codes, 512)))
    assert caught.value.fault is FrameFault.DAMAGED


@pytest.mark.parametrize("lost_rows", [0, 2, 40])
def test_a_hole_in_the_middle_is_damaged(lost_rows: int) -> None:
    """Rows without any code were never read; black rows of a sensor have its noise, or no run."""
    codes = mosaic(water((0.5, 0.5, 0.5)), (16383,) * 3, noise=3.0)
    middle = codes.shape[0] // 2 // 2 * 2
    codes[middle : middle + lost_rows] = 0
    codes[:, :4] = 0  # columns alone are none
    file = dng(Photosites(codes, stated_white=16383))
    if lost_rows < 40:
        assert check_frame(file)[0].raw is not None
    else:
        with pytest.raises(UnreadableFrameError) as caught:
            check_frame(file)
        assert caught.value.fault is FrameFault.DAMAGED


@pytest.mark.parametrize("every", [2, 4])
def test_areas_hold_no_more_than_the_photosites(every: int) -> None:
    """One saturated green of a place, or of four places, is not the whole of it.

    Of the band of a sixth of the frame every second green of a row is saturated, a quarter of all
    photosites there and half of the green ones; or a sixteenth and an eighth.
    """
    codes = mosaic(water((0.4, 0.4, 0.4)), (15_800,) * 3, 512)
    codes[100:300:every, 201:400:every] = 15_800
    found = check_frame(dng(Photosites(codes, 512, 15_800)))[0].clipping
    assert found.by_channel["green"] == pytest.approx(1 / 6 * 2 / every**2, rel=0.02)
    assert sum(area.share for area in found.areas) <= found.by_channel["green"] + 1e-6


def test_limits() -> None:
    """A raw that is too large or too small gets its numbers."""
    data = dng(Photosites(mosaic(water((0.4, 0.4, 0.4)), (15_800,) * 3, 512), 512))
    with pytest.raises(UnreadableFrameError) as large:
        check_frame(data, max_pixels=100_000)
    assert large.value.numbers == {"pixels": 240_000, "limit": 100_000}
    tiny = dng(Photosites(np.full((64, 64), 900, np.uint16), 512))
    with pytest.raises(UnreadableFrameError) as small:
        check_frame(tiny)
    assert small.value.fault is FrameFault.TOO_SMALL


def test_an_unknown_raw() -> None:
    """A camera's raw that the decoder does not know is named as such."""
    with pytest.raises(UnreadableFrameError) as caught:
        check_frame(b"FOVb" + bytes(4000))
    assert (caught.value.fault, caught.value.numbers) == (FrameFault.KIND_NOT_READ, {"raw": 1})


def test_grey_and_three_layers() -> None:
    """A sensor without colours gives three equal planes, an interpolated raw one each."""

    class Opened:
        """What LibRaw gives for such files, as far as it is asked."""

        black_level_per_channel = (64, 64, 64, 64)
        color_desc = b"RGBG"
        raw_pattern = None

        def __init__(self, image: NDArray[np.uint16], colours: int) -> None:
            self.raw_image_visible = image
            self.num_colors = colours

    layers = np.arange(240, dtype=np.uint16).reshape(8, 10, 3)
    three = reading._planes(Opened(layers, 3))  # type: ignore[arg-type]
    assert [int(three[colour][0].sites[0, 0]) for colour in COLOURS] == [0, 1, 2]
    grey = reading._planes(Opened(layers[..., 0], 1))  # type: ignore[arg-type]
    assert grey["red"] is grey["blue"]
    with pytest.raises(UnreadableFrameError):
        reading._planes(Opened(layers[..., 0], 4))  # type: ignore[arg-type]


def test_a_pattern_of_six() -> None:
    """The places of a larger pattern are gathered under their colours."""
    pattern = np.array([[1, 1, 0, 1, 1, 2], [1, 1, 2, 1, 1, 0], [2, 0, 1, 0, 2, 1]] * 2, np.uint8)
    image = np.tile(pattern.astype(np.uint16) * 100 + 5, (3, 4))
    planes = reading._by_colour(image, pattern, ["red", "green", "blue", "green"], [0.0] * 4)
    for index, colour in enumerate(COLOURS):
        assert {int(plane.sites[0, 0]) for plane in planes[colour]} == {index * 100 + 5}
    assert sum(map(len, planes.values())) == 36


def test_the_rendering_is_255_only_where_photosites_saturate() -> None:
    """Strong white balance pushes a channel to the end of the scale, and it is not clipped."""
    light = water((0.45, 0.5, 0.45))
    sites = Photosites(mosaic(light, (15_800,) * 3, 512), 512, 15_800, neutral=(0.3, 1.0, 0.3))
    frame = read_raw(dng(sites), 10**7)
    assert frame.gains["red"] == pytest.approx(1 / 0.3, rel=1e-3)
    assert render(frame).max() < 250


def test_libraws_own_linear_development_agrees() -> None:
    """Means of the photosites are those of LibRaw's own half-size development without a curve."""
    light = water((0.2, 0.5, 0.3))
    data = dng(Photosites(mosaic(light, (15_800,) * 3, 512, noise=0), 512, 15_800))
    with rawpy.imread(io.BytesIO(data)) as raw:
        developed = raw.postprocess(
            half_size=True, gamma=(1, 1), no_auto_bright=True, output_bps=16,
            output_color=rawpy.ColorSpace.raw, user_wb=[1, 1, 1, 1], adjust_maximum_thr=0,
        ).astype(np.float64)  # fmt: skip
    frame = read_raw(data, 10**7)
    for index, colour in enumerate(COLOURS):
        saturation = frame.saturation[colour]
        ours = np.mean([plane.sites[60:140, 110:190].mean() for plane in frame.planes[colour]])
        share = (ours - saturation.black) / (saturation.code - saturation.black)
        theirs = developed[60:140, 110:190, index].mean() / 65535
        assert share == pytest.approx(theirs, rel=0.01)


def test_compressed_without_loss() -> None:
    """A compressed raw says what the same photosites say as they are; cut off it is refused."""
    codes = mosaic(water((0.6, 0.9, 0.7), 0.02), (15_800,) * 3, 512, noise=8)
    plain = Photosites(codes, 512, preview=_preview(water((0.9,) * 3), 0.5))
    packed = dng(replace(plain, compressed=True))
    assert len(packed) < len(dng(plain))
    assert check_frame(packed)[0] == check_frame(dng(plain))[0]
    with pytest.raises(UnreadableFrameError) as caught:
        check_frame(packed[: len(packed) // 2])
    assert caught.value.fault is FrameFault.DAMAGED


def test_a_large_preview_is_compared_at_a_smaller_scale() -> None:
    """A preview of all the sensor's pixels tells as much as a small one, and is read faster."""
    ramp = np.linspace(0.02, 1.1, 3600)[None, :, None] * np.ones((2400, 3600, 3))
    file = io.BytesIO()
    Image.open(io.BytesIO(_preview(ramp, 0.5))).resize((3600, 2400)).save(file, "JPEG")
    pixels, _ = decoding._preview(file.getvalue())
    assert pixels is not None
    assert pixels.shape == (1200, 1800, 3)
    report = measured(ramp, preview=file.getvalue())
    assert report.raw is not None
    assert report.raw.preview_over_stops == pytest.approx(0.5, abs=SIXTH_STOP)


# laws


@given(
    rows=st.integers(1, 1300),
    columns=st.integers(1, 40),
    pattern=st.sampled_from([(1, 1), (2, 2), (6, 6)]),
    halvings=st.integers(0, 3),
)
@settings(max_examples=30)
def test_strips_say_what_the_whole_says(
    rows: int, columns: int, pattern: tuple[int, int], halvings: int
) -> None:
    """Counted and averaged strip by strip, photosites give what they give at once."""
    down, across = pattern
    rng = np.random.default_rng(rows * columns)
    lines = rng.integers(0, 65536, (down, rows, columns, across)).astype(np.uint16)
    several = [Plane(line, at, 0.0) for line in lines for at in range(across)]
    planes = {colour: tuple(several[at::3]) or (several[0],) for at, colour in enumerate(COLOURS)}
    side = max(rows, columns) / 2**halvings
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("core.frame.photosites._SMALL_SIDE_PX", side)
        counted = count(planes)
    for colour, same in planes.items():
        codes = np.concatenate([plane.sites.ravel() for plane in same])
        assert (counted.counts[colour] == np.bincount(codes, minlength=65536)).all()
        for plane, small in zip(same, counted.small[colour], strict=True):
            if min(small.shape):
                whole = np.ascontiguousarray(plane.sites)
                assert (small == shrunk(whole, counted.halvings)).all()


@given(end=st.integers(3_000, 60_000), clipped=st.integers(2_000, 20_000), width=st.integers(0, 12))
def test_saturation_is_where_the_pile_is(end: int, clipped: int, width: int) -> None:
    """Whatever is stated, a pile at the top is found, and its photosites count as clipped."""
    counts = np.zeros(65536, np.int64)
    counts[600 : end - 400] = 1
    counts[end - width : end + 1] = clipped
    found = find_saturation(
        dict.fromkeys(COLOURS, counts), dict.fromkeys(COLOURS, 512.0), float(end + 100)
    )["green"]
    assert found.found
    assert end - 0.03 * end <= found.clipped_from <= end - width
    assert found.code == pytest.approx(end - width / 2, abs=1)


@pytest.mark.parametrize(
    ("codes", "stated", "code"),
    [
        ({0: 900, 1: 900}, 4000.0, 4000.0),  # black alone
        ({900: 900, 950: 90, 990: 9}, 4000.0, 4000.0),  # a scene that falls off
        ({900: 900, 950: 90, 990: 9}, 255.0, 1023.0),  # and nonsense is stated
    ],
)
def test_nothing_to_find(codes: dict[int, int], stated: float, code: float) -> None:
    """Without a pile at the top, what is stated counts, or the whole word."""
    counts = np.zeros(65536, np.int64)
    for value, number in codes.items():
        counts[value] = number
    found = find_saturation(dict.fromkeys(COLOURS, counts), dict.fromkeys(COLOURS, 0.0), stated)[
        "red"
    ]
    assert (found.found, found.code) == (False, code)


def test_a_directory_that_breaks_its_reader(monkeypatch: pytest.MonkeyPatch) -> None:
    """What can't be read of a directory promises nothing; the decoder finds the damage."""

    def broken(*_: object) -> None:
        raise ValueError

    monkeypatch.setattr("PIL.TiffImagePlugin.ImageFileDirectory_v2.load", broken)
    assert raw_is_whole(b"II*\x00\x08\x00\x00\x00" + bytes(40))


@given(data=st.binary(max_size=400))
def test_any_bytes_get_an_answer(data: bytes) -> None:
    """Whether a file is whole can be asked of anything."""
    for start in (b"II*\x00", b"MM\x00*", b"FUJIFILMCCD-RAW", b"\x00\x00\x00\x18ftypcrx "):
        raw_is_whole(start + data)


def test_parts_and_boxes() -> None:
    """Files that say where their parts end must hold them."""
    head = b"FUJIFILMCCD-RAW".ljust(84, b"\0")
    numbers = b"".join(n.to_bytes(4, "big") for n in (120, 10, 130, 10, 140, 60))
    whole = (head + numbers).ljust(200, b"\1")
    assert raw_is_whole(whole)
    assert not raw_is_whole(whole[:-1])
    boxes = b"\x00\x00\x00\x18ftypcrx " + bytes(12) + b"\x00\x00\x00\x10mdat" + bytes(8)
    long_box = b"\x00\x00\x00\x01mdat" + (24).to_bytes(8, "big") + bytes(8)
    assert raw_is_whole(boxes)
    assert raw_is_whole(boxes + long_box)
    assert raw_is_whole(boxes + b"\x00\x00\x00\x00free" + bytes(3))
    assert not raw_is_whole(boxes[:-1])
    assert not raw_is_whole(boxes + b"\x00\x00\x00\x04free")
