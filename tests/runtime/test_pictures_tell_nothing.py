"""Pictures that the bot makes of a frame tell nothing of its file: no place, name or number."""

from __future__ import annotations

import io
from collections.abc import Callable

import numpy as np
import pillow_heif
import pytest
from PIL import Image, ImageCms, PngImagePlugin

from bot.pictures.thumbnail import thumbnail
from bot.runtime.frame_child import check_and_draw
from bot.runtime.orders import Order

#: Planted one by one, so that a leak names where it came from.
MARKERS = {
    "owner": "Otter Reedmace",
    "serial": "SN-7741093",
    "lens": "Brook 17-28 of Reedmace",
    "comment": "behind the alder spring",
    "xmp": "xmp-otterholt",
    "icc": "Profile of Otterholt",
    "keyword": "kingfisher-nest",
    "date": "2027:06:18 12:34:56",
}
#: A place as Exif writes it: degrees, minutes and seconds as fractions.
_LATITUDE = (44.0, 9.0, 4.32)


def _exif() -> bytes:
    exif = Image.Exif()
    exif[0x013B] = MARKERS["owner"]  # artist
    exif[0x010E] = MARKERS["comment"]  # description
    exif[0x8298] = MARKERS["owner"]  # copyright
    exif[0x0132] = MARKERS["date"]
    inner = exif.get_ifd(0x8769)
    inner[0xA430] = MARKERS["owner"]  # owner of the camera
    inner[0xA431] = MARKERS["serial"]
    inner[0xA434] = MARKERS["lens"]
    inner[0x9003] = MARKERS["date"]
    place = exif.get_ifd(0x8825)
    place[1], place[2] = "N", _LATITUDE
    place[3], place[4] = "W", (71.0, 20.0, 59.28)
    return exif.tobytes()


def _profile() -> bytes:
    profile = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB"))
    plain = profile.tobytes()
    name = "sRGB built-in".encode("utf-16-be")
    assert name in plain
    return plain.replace(name, MARKERS["icc"][:13].encode("utf-16-be"))


def _pixels() -> Image.Image:
    random = np.random.default_rng(7)
    grey = random.integers(60, 190, (300, 400, 3), dtype=np.uint8)
    grey[100:200, 150:250] = 255  # an area to be outlined
    return Image.fromarray(grey)


def _xmp() -> bytes:
    return f'<x:xmpmeta xmlns:x="adobe:ns:meta/">{MARKERS["xmp"]}</x:xmpmeta>'.encode()


def _jpeg() -> bytes:
    file = io.BytesIO()
    _pixels().save(
        file,
        "JPEG",
        exif=_exif(),
        icc_profile=_profile(),
        xmp=_xmp(),
        comment=MARKERS["keyword"].encode(),
    )
    return file.getvalue()


def _png() -> bytes:
    told = PngImagePlugin.PngInfo()
    told.add_text("Author", MARKERS["owner"])
    told.add_itxt("XML:com.adobe.xmp", _xmp().decode())
    told.add_text("Comment", MARKERS["keyword"])
    file = io.BytesIO()
    _pixels().save(file, "PNG", pnginfo=told, exif=_exif(), icc_profile=_profile())
    return file.getvalue()


def _tiff() -> bytes:
    exif = Image.Exif()
    exif.load(_exif())
    exif[700] = _xmp()
    exif[0x9C9E] = MARKERS["keyword"].encode()
    file = io.BytesIO()
    _pixels().save(file, "TIFF", exif=exif, icc_profile=_profile())
    return file.getvalue()


def _heic() -> bytes:
    heif = pillow_heif.from_pillow(_pixels())
    file = io.BytesIO()
    heif.save(file, exif=_exif(), xmp=_xmp(), icc_profile=_profile())
    return file.getvalue()


@pytest.mark.parametrize("make", [_jpeg, _png, _tiff, _heic], ids=lambda make: make.__name__[1:])
def test_marked_pictures_and_thumbnails_tell_nothing_of_the_file(
    make: Callable[[], bytes],
) -> None:
    """None of the planted words is in their bytes, and they have no metadata at all."""
    data = make()
    planted = [name for name, words in MARKERS.items() if words[:13].encode() in data]
    assert {"owner", "serial", "lens", "comment", "date"} <= set(planted)
    assert len(planted) >= 6
    answer, (marked,) = check_and_draw(data, Order())
    assert answer.report is not None
    for picture in (marked, thumbnail(marked).data):
        for name, words in MARKERS.items():
            assert words[:13].encode() not in picture, name
            for coding in ("utf-16-le", "utf-16-be"):
                assert words[:13].encode(coding) not in picture, name
        for mark in (b"Exif", b"GPS", b"http://ns.adobe.com", b"ICC_PROFILE", b"iCCP", b"eXIf"):
            assert mark not in picture, mark
        for chunk in (b"tEXt", b"iTXt", b"zTXt", b"tIME"):
            assert chunk not in picture, chunk
        with Image.open(io.BytesIO(picture)) as image:
            assert not image.getexif()
            assert set(image.info) <= {"jfif", "jfif_version", "jfif_unit", "jfif_density", "dpi"}
