"""Whether a phone took a frame, by the names and the optics that its file states."""

from __future__ import annotations

import re
from typing import Final

from core.frame.report import CameraSettings

#: Makers of whom only phones are known, as they write themselves; from memory.
_PHONE_MAKERS: Final = frozenset(
    {
        "apple",
        "asus",
        "fairphone",
        "google",
        "hmd global",
        "honor",
        "htc",
        "huawei",
        "infinix",
        "lge",
        "meizu",
        "motorola",
        "nokia",
        "nothing",
        "oneplus",
        "oppo",
        "poco",
        "realme",
        "redmi",
        "tecno",
        "vivo",
        "xiaomi",
        "zte",
    }
)
#: Models of phones by makers of cameras too; how their names begin, from memory.
_PHONE_MODELS: Final = re.compile(r"(sm-|gt-|galaxy|xq-|so-\d|xperia|leitz phone)", re.IGNORECASE)
#: How phones call their lenses.
_PHONE_LENS: Final = re.compile(r"\b(back|front|rear)\b.*\bcamera\b", re.IGNORECASE)
#: The main camera of a phone, when nothing else tells: a short, fast lens with the view of
#: 20 to 30 mm; pocket cameras with as small a sensor open less wide. Own rule.
_PHONE_LONGEST_MM: Final = 8.0
_PHONE_FULL_FRAME_MM: Final = (20.0, 30.0)
_PHONE_SLOWEST_F: Final = 2.4


def is_phone(
    maker: str,
    model: str,
    lens: str,
    settings: CameraSettings,
    focal_full_frame_mm: float | None,
) -> bool:
    """Whether maker, model, lens or the optics are those of a phone.

    Args:
        maker: as the file says it, "" where it says none; the same for the next two.
        model: of the camera.
        lens: of the lens.
        settings: of the frame.
        focal_full_frame_mm: focal length as on 36x24 mm [mm]; None if unknown.
    """
    if maker.casefold() in _PHONE_MAKERS or _PHONE_MODELS.match(model) or _PHONE_LENS.search(lens):
        return True
    focal_mm, f_number = settings.focal_mm, settings.f_number
    if focal_mm is None or f_number is None or focal_full_frame_mm is None:
        return False
    low, high = _PHONE_FULL_FRAME_MM
    return (
        focal_mm < _PHONE_LONGEST_MM
        and f_number <= _PHONE_SLOWEST_F
        and low <= focal_full_frame_mm <= high
    )
