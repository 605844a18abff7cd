"""What files say of their taking, odd values included."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image
from PIL.TiffImagePlugin import IFDRational

from core.frame.metadata import exif_tags, read_metadata, stated_size
from core.frame.report import CameraSettings, FrameMetadata
from tests.core.frame_files import exif_block

TIME, F_NUMBER, ISO, REI, SOS, SPEED = 33434, 33437, 34855, 34866, 34865, 34867
TV, AV, BIAS, FOCAL, FOCAL_35, TAKEN, DIGITISED = 37377, 37378, 37380, 37386, 41989, 36867, 36868
TAKEN_OFFSET, DIGITISED_OFFSET = 36881, 36882
MAKER, MODEL, LENS, WIDTH, HEIGHT = 271, 272, 42036, 40962, 40963


def ratio(above: int, below: int) -> IFDRational:
    return IFDRational(above, below)


@pytest.mark.parametrize(
    ("tags", "shutter_s"),
    [
        # As cameras were seen to write them.
        ({TIME: ratio(1543209, 100_000_000)}, 0.01543209),
        ({TIME: ratio(512, 6967)}, 512 / 6967),
        ({TIME: ratio(2, 1)}, 2.0),
        ({TIME: ratio(0, 1)}, None),
        ({TIME: ratio(0, 0)}, None),
        ({TIME: ratio(5, 0)}, None),
        ({TIME: (ratio(1, 4), ratio(1, 8))}, 0.25),
        ({TIME: "1/60"}, None),
        ({TIME: ()}, None),
        ({TIME: ratio(100_000, 1)}, None),
        # APEX where the time itself is missing or nonsense: t = 2^-Tv (CIPA DC-008 annex C);
        # 6.906891 is 1/120 s, computed.
        ({TV: ratio(6906891, 1_000_000)}, 2**-6.906891),
        ({TIME: ratio(0, 1), TV: ratio(3, 1)}, 1 / 8),
        ({TIME: ratio(1, 4), TV: ratio(9, 1)}, 0.25),
        ({TV: ratio(900, 1)}, None),
        ({}, None),
    ],
)
def test_shutter(tags: dict[int, Any], shutter_s: float | None) -> None:
    """The time comes from its own tag or from APEX, and nonsense is left out."""
    assert read_metadata(tags).settings.shutter_s == pytest.approx(shutter_s)


@pytest.mark.parametrize(
    ("tags", "f_number"),
    [
        ({F_NUMBER: ratio(56, 10)}, 5.6),
        ({F_NUMBER: ratio(205, 1024)}, None),
        ({F_NUMBER: ratio(0, 1)}, None),
        # f = 2^(Av/2) (CIPA DC-008 annex C): Av 5 is f/5.66, computed.
        ({AV: ratio(5, 1)}, 5.656854249),
        ({F_NUMBER: ratio(205, 1024), AV: ratio(238, 100)}, 2**1.19),
        ({AV: ratio(0, 1)}, None),
    ],
)
def test_f_number(tags: dict[int, Any], f_number: float | None) -> None:
    """The f-number comes from its own tag or from APEX; f/0.2 and f/0 are nonsense."""
    assert read_metadata(tags).settings.f_number == pytest.approx(f_number)


@pytest.mark.parametrize(
    ("tags", "iso"),
    [
        ({ISO: 200}, 200),
        ({ISO: (400, 0)}, 400),
        ({ISO: 65535, REI: 102_400}, 102_400),  # the tag holds two bytes (Exif 2.3)
        ({ISO: 65535, SOS: 204_800}, 204_800),
        ({ISO: 65535, SPEED: 80_000}, 80_000),
        ({ISO: 65535}, None),
        ({ISO: 0}, None),
        ({ISO: 0, REI: 125}, 125),
        ({}, None),
        ({TIME: ratio(2, 1)}, None),  # two seconds, and nothing on sensitivity
    ],
)
def test_iso(tags: dict[int, Any], iso: float | None) -> None:
    """A sensitivity too large for its tag is found beside it; zero is none."""
    assert read_metadata(tags).settings.iso == iso


@pytest.mark.parametrize(
    ("value", "taken_at"),
    [
        ("2026:06:21 18:30:05", "2026-06-21T18:30:05"),
        ("2026-06-21T18:30:05+02:00", "2026-06-21T18:30:05"),
        ("2026:06:21 18:30:05\x00", "2026-06-21T18:30:05"),
        ("0000:00:00 00:00:00", None),
        ("    :  :     :  :  ", None),
        ("2026:02:30 18:30:05", None),
        ("2026:02:20 18:61:05", None),
        ("1904:01:01 00:00:00", None),
        ("", None),
        (b"2026:06:21 18:30:05", None),
        (17, None),
    ],
)
def test_taken_at(value: object, taken_at: str | None) -> None:
    """A stamp becomes ISO 8601; zeros, blanks and impossible days are left out."""
    assert read_metadata({TAKEN: value}).taken_at == taken_at


@pytest.mark.parametrize(
    ("value", "offset_min"),
    [
        ("+02:00", 120),
        ("-04:00", -240),
        ("+05:45", 345),
        ("+00:00\x00", 0),
        ("+14:00", 840),
        ("+14:30", None),
        ("-12:30", None),
        ("+02:75", None),
        ("   :  ", None),
        ("Z", None),
        (b"+02:00", None),
        (2, None),
    ],
)
def test_offset_from_utc(value: object, offset_min: int | None) -> None:
    """A stated zone becomes minutes east of UTC; blanks and zones of no place are left out."""
    tags = {TAKEN: "2026:06:21 18:30:05", TAKEN_OFFSET: value}
    assert read_metadata(tags).taken_offset_min == offset_min


def test_the_offset_belongs_to_its_stamp() -> None:
    """That of digitising does not say in which zone a frame was taken."""
    both = {TAKEN: "2026:06:21 18:30:05", DIGITISED: "2026:06:21 18:30:05"}
    assert read_metadata({**both, DIGITISED_OFFSET: "+02:00"}).taken_offset_min is None
    only = {DIGITISED: "2026:06:21 18:30:05", DIGITISED_OFFSET: "+02:00"}
    assert read_metadata(only).taken_offset_min == 120


def test_digitised_stands_in() -> None:
    """Without a time of taking, that of digitising is used; the time of editing never is."""
    tags = {306: "2027:01:01 00:00:00", TAKEN: "0000:00:00 00:00:00"}
    assert read_metadata(tags).taken_at is None
    assert (
        read_metadata({**tags, DIGITISED: "2026:06:21 18:30:05"}).taken_at == "2026-06-21T18:30:05"
    )


def test_bias_focal_and_names() -> None:
    """Odd ratios are taken as they are; names lose zeros, blanks and line ends."""
    metadata = read_metadata(
        {
            BIAS: ratio(2946, 2221),
            FOCAL: ratio(1229, 512),
            FOCAL_35: 26,
            MAKER: b"Alder \x00\x00",
            MODEL: "Reed\n One  " + "x" * 200,
        }
    )
    assert metadata.bias_stops == pytest.approx(2946 / 2221)
    assert metadata.settings.focal_mm == pytest.approx(2.40039, abs=1e-5)
    assert metadata.focal_full_frame_mm == 26
    assert metadata.maker == "Alder"
    assert metadata.model == "Reed One " + "x" * 55
    assert metadata.present


def test_nothing_is_absent() -> None:
    """A file without metadata, or with none that says anything, is marked so."""
    assert read_metadata({}) == FrameMetadata()
    assert read_metadata({MAKER: " \x00", MODEL: 7, 274: 6}) == FrameMetadata()


@pytest.mark.parametrize(
    ("tags", "phone"),
    [
        ({MAKER: "Apple", MODEL: "x"}, True),
        ({MAKER: "samsung", MODEL: "SM-X1"}, True),
        ({MAKER: "SAMSUNG", MODEL: "NX9"}, False),
        ({LENS: "Reed 2 back triple camera 4.2mm f/1.8"}, True),
        ({LENS: "24-105mm f/4"}, False),
        ({FOCAL: ratio(42, 10), FOCAL_35: 26, F_NUMBER: ratio(18, 10)}, True),
        ({FOCAL: ratio(42, 10), FOCAL_35: 24, F_NUMBER: ratio(35, 10)}, False),
        ({FOCAL: ratio(42, 10), FOCAL_35: 200, F_NUMBER: ratio(18, 10)}, False),
        ({FOCAL: ratio(24, 1), FOCAL_35: 24, F_NUMBER: ratio(14, 10)}, False),
        ({FOCAL: ratio(42, 10), F_NUMBER: ratio(18, 10)}, False),
    ],
)
def test_from_phone(tags: dict[int, Any], phone: bool) -> None:
    """A phone is known by maker, model, lens, or a tiny fast wide lens; own rule."""
    assert read_metadata(tags).from_phone is phone


def test_tags_of_both_directories() -> None:
    """Settings are found in the Exif directory, and in the first one when only that has them."""
    both = exif_block({MAKER: "Alder", TIME: ratio(1, 2)}, {TIME: ratio(1, 4)})
    first_only = exif_block({TIME: ratio(1, 2)})
    assert read_metadata(exif_tags(lambda: both)).settings.shutter_s == 0.25
    assert read_metadata(exif_tags(lambda: first_only)).settings.shutter_s == 0.5


def test_unreadable_block_is_none() -> None:
    """Whatever a reader raises, a broken block is no block."""

    def broken() -> Image.Exif:
        raise UnicodeDecodeError("ascii", b"", 0, 1, "broken")

    assert exif_tags(broken) == {}


def test_one_unreadable_tag_leaves_the_others() -> None:
    """A tag that cannot be decoded does not take the others with it."""

    class Half(Image.Exif):
        def __getitem__(self, tag: int) -> Any:
            if tag == MODEL:
                raise EOFError
            return super().__getitem__(tag)

    exif = Half()
    exif.update({MAKER: "Alder", MODEL: "Reed"})
    assert exif_tags(lambda: exif)[MAKER] == "Alder"
    assert MODEL not in exif_tags(lambda: exif)


@pytest.mark.parametrize(
    ("tags", "size"),
    [
        ({WIDTH: 6000, HEIGHT: 4000}, (6000, 4000)),
        ({WIDTH: 0, HEIGHT: 0}, None),
        ({WIDTH: 6000}, None),
    ],
)
def test_stated_size(tags: dict[int, Any], size: tuple[int, int] | None) -> None:
    """The size that the camera stamped; zeros count as none."""
    assert stated_size(tags) == size


@given(
    st.dictionaries(
        st.sampled_from(
            [TIME, F_NUMBER, ISO, REI, TV, AV, BIAS, FOCAL, FOCAL_35, TAKEN, MAKER, LENS]
        ),
        st.one_of(
            st.none(),
            st.text(),
            st.binary(),
            st.integers(),
            st.floats(),
            st.tuples(st.integers(), st.floats()),
            st.builds(IFDRational, st.integers(), st.integers()),
        ),
    )
)
def test_any_value_is_survived(tags: dict[int, Any]) -> None:
    """Whatever a tag holds, each setting is a finite positive number or None."""
    settings = read_metadata(tags).settings
    for value in vars(settings).values():
        assert value is None or (math.isfinite(value) and value > 0)
    assert isinstance(settings, CameraSettings)


def test_all_that_is_asked_for_is_read_from_a_file() -> None:
    """No tag that metadata come from is missing among those that are taken out of a block."""

    class Asked(dict[int, object]):
        def get(self, tag: int, default: object = None) -> object:
            asked.add(tag)
            return super().get(tag, default)

    asked: set[int] = set()
    read_metadata(Asked())
    read_metadata(Asked({36867: "2027:06:21 09:14:00"}))
    stated_size(Asked())
    block = exif_block(inner=dict.fromkeys(asked, 7))
    assert len(asked) > 15
    assert set(exif_tags(lambda: block)) == asked
