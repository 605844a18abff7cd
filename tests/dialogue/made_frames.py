"""Reports of frames with made-up but possible numbers, by the names that transcripts use."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from core.errors import FrameFault
from core.frame.findings import (
    Border,
    BorderFinding,
    BorderKind,
    Cast,
    Contrast,
    Doubt,
    LookSeen,
    RawExposure,
    Shake,
    Sharpness,
    SurfaceCast,
    Tint,
    WaterArea,
)
from core.frame.report import (
    Advice,
    AreaKind,
    Box,
    CameraSettings,
    ClippedArea,
    Clipping,
    FrameMetadata,
    FrameReport,
    SizeNote,
)
from core.water import Look

_EIGHTH: Final = CameraSettings(1 / 8, 13.0, 100.0, 27.0)


def report(
    advice: Advice,
    room_stops: float | None,
    *areas: ClippedArea,
    settings: CameraSettings = _EIGHTH,
    from_phone: bool = False,
    size_note: SizeNote = SizeNote.FULL,
) -> FrameReport:
    """A frame's report with made-up but possible numbers."""
    share = sum(area.share for area in areas)
    return FrameReport(
        file_kind="JPEG",
        width=4000,
        height=6000,
        metadata=FrameMetadata(
            settings=settings, maker="Alder", from_phone=from_phone, present=True
        ),
        size_note=size_note,
        clipping=Clipping(share, {"red": share, "green": share, "blue": share}, tuple(areas)),
        room_stops=room_stops,
        advice=advice,
    )


def area(letter: str, kind: AreaKind, box: Box, share: float) -> ClippedArea:
    """A clipped area, all channels."""
    return ClippedArea(letter, kind, box, share, 0.1, ("red", "green", "blue"), 0.9)


_DROP: Final = area("A", AreaKind.WHITE_WATER, Box(0.4, 0.35, 0.2, 0.3), 0.014)
_SPARKLE: Final = area("B", AreaKind.SPARKLE, Box(0.1, 0.7, 0.6, 0.2), 0.0004)
_GAP: Final = area("A", AreaKind.SKY_GAP, Box(0.7, 0.0, 0.3, 0.1), 0.02)
_UNSURE: Final = area("A", AreaKind.UNSURE, Box(0.7, 0.0, 0.2, 0.2), 0.02)
_DARKER_SETTINGS: Final = CameraSettings(1 / 13, 13.0, 100.0, 27.0)

REPORTS: Final[dict[str, FrameReport]] = {
    "clipped": report(Advice.DARKER, -2 / 3, _DROP, _SPARKLE),
    "clean": report(Advice.KEEP, 0.0, _SPARKLE, settings=_DARKER_SETTINGS),
    "dark": report(Advice.BRIGHTER, 1.2),
    "very_dark": replace(report(Advice.BRIGHTER, 2.0), borders=()),
    "sky": report(Advice.REFRAME, None, _GAP),
    "unsure": report(Advice.ASK, None, _UNSURE),
    "unsure_blue": report(Advice.ASK, None, replace(_UNSURE, channels=("blue",))),
    "mostly_white": replace(report(Advice.DARKER, -2.0, replace(_UNSURE, share=0.78)), borders=()),
    "screen": report(
        Advice.DARKER,
        -1.0,
        _DROP,
        settings=CameraSettings(1 / 60, 1.8, 400.0, 5.6),
        from_phone=True,
    ),
    "nothing_known": FrameReport(
        file_kind="JPEG",
        width=2000,
        height=3000,
        metadata=FrameMetadata(),
        size_note=SizeNote.FULL,
        clipping=Clipping(0.014, {"red": 0.014, "green": 0.014, "blue": 0.014}, (_DROP,)),
        room_stops=-2 / 3,
        advice=Advice.DARKER,
    ),
    "dark_without_data": FrameReport(
        file_kind="JPEG",
        width=2000,
        height=3000,
        metadata=FrameMetadata(),
        size_note=SizeNote.FULL,
        clipping=Clipping(0.0, {"red": 0.0, "green": 0.0, "blue": 0.0}),
        room_stops=1.0,
        advice=Advice.BRIGHTER,
    ),
    "raw": replace(
        report(Advice.BRIGHTER, 1.3),
        file_kind="raw",
        raw=RawExposure(
            {"red": 2.1, "green": 1.3, "blue": 1.7},
            {"red": 0.0, "green": 0.0, "blue": 0.0},
            preview_over_stops=0.7,
            saturation_found=True,
        ),
    ),
    "raw_by_its_word": replace(
        report(Advice.BRIGHTER, 0.7),
        file_kind="raw",
        raw=RawExposure(
            {"red": 1.4, "green": 0.7, "blue": 1.1}, {"red": 0.0, "green": 0.0, "blue": 0.0}
        ),
    ),
    "raw_as_shown": replace(
        report(Advice.BRIGHTER, 1.3),
        file_kind="raw",
        raw=RawExposure(
            {"red": 2.1, "green": 1.3, "blue": 1.7},
            {"red": 0.0, "green": 0.0, "blue": 0.0},
            preview_over_stops=0.05,
            saturation_found=True,
        ),
    ),
    "sparkling": report(Advice.DARKER, -1 / 3, _SPARKLE),
    "time_alone": report(Advice.KEEP, 0.0, settings=CameraSettings(1 / 8)),
    "copy": report(Advice.KEEP, 0.0, settings=CameraSettings(), size_note=SizeNote.RESIZED),
}


def _border(
    border: Border, kind: BorderKind, position: float, *, stated: bool, width: float = 0.05
) -> BorderFinding:
    """A thing at a border, dark where it is asked about."""
    confidence = 0.9 if stated else 0.5
    return BorderFinding(border, kind, position, width, 0.03, not stated, confidence, stated)


_BRIGHT: Final = _border(Border.RIGHT, BorderKind.BRIGHT, 0.67, stated=True)
_SKY: Final = _border(Border.TOP, BorderKind.SKY, 0.5, stated=True, width=0.7)
_STICK: Final = _border(Border.LEFT, BorderKind.LINE, 0.66, stated=False)
_STONE: Final = _border(Border.BOTTOM, BorderKind.CUT, 0.2, stated=False, width=0.2)
_TWIG: Final = _border(Border.RIGHT, BorderKind.LINE, 0.05, stated=True, width=0.01)
_SHARP: Final = Sharpness((1.1, 1.1, 1.1))
_WATER: Final = WaterArea(("B2", "B3", "C2"), 90.0)
_HELD: Final = report(Advice.KEEP, 0.0)


def _timed(shutter_s: float, **found: object) -> FrameReport:
    """A frame that holds, at another time."""
    settings = CameraSettings(shutter_s, 13.0, 100.0, 27.0)
    return replace(report(Advice.KEEP, 0.0, settings=settings), **found)  # type: ignore[arg-type]


def _doubtful(doubt: Doubt) -> FrameReport:
    return replace(_HELD, look=LookSeen(doubt=doubt))


#: What frames show beside their whites.
REPORTS.update(
    {
        "shaken": replace(_HELD, sharpness=Sharpness((2.0, 2.1, 2.0), shake=Shake(88.0, 0.9))),
        "shaken_rising": replace(_HELD, sharpness=Sharpness((2.0,) * 3, shake=Shake(45.0, 0.9))),
        "shaken_level": replace(_HELD, sharpness=Sharpness((2.0,) * 3, shake=Shake(178.0, 0.9))),
        "shaken_clipped": replace(
            report(Advice.DARKER, -2 / 3, _DROP),
            sharpness=Sharpness((2.0,) * 3, shake=Shake(40, 0.9)),
        ),
        "soft": replace(_HELD, sharpness=Sharpness((2.5, 2.5, 2.5), soft_all_over=True)),
        "soft_without_data": replace(
            _HELD,
            metadata=FrameMetadata(),
            sharpness=Sharpness((2.5, 2.5, 2.5), soft_all_over=True),
        ),
        "soft_copy": replace(
            _HELD,
            size_note=SizeNote.RESIZED,
            sharpness=Sharpness((2.5, 2.5, 2.5), soft_all_over=True),
        ),
        "soft_top": replace(_HELD, sharpness=Sharpness((2.0, 1.1, 1.1), softest=0, noisy=True)),
        "bordered": replace(_HELD, borders=(_BRIGHT, _SKY, _STICK, _STONE), sharpness=_SHARP),
        "deep_border": replace(_HELD, borders=(replace(_BRIGHT, depth=0.3), _TWIG)),
        "full_frame_border": replace(
            _HELD, metadata=replace(_HELD.metadata, focal_full_frame_mm=24.0), borders=(_BRIGHT,)
        ),
        "borders_without_data": replace(_HELD, metadata=FrameMetadata(), borders=(_BRIGHT,)),
        "sky_borders": replace(report(Advice.REFRAME, None, _GAP), borders=(_SKY,)),
        "clean_borders": replace(_HELD, borders=()),
        "bright_borders": replace(report(Advice.DARKER, -2 / 3, _DROP), borders=(_BRIGHT,)),
        "stick": replace(_HELD, borders=(_STICK,)),
        "lamp": replace(
            report(Advice.KEEP, 0.0, area("A", AreaKind.LAMP, Box(0.8, 0.1, 0.1, 0.1), 0.002))
        ),
        "bracket": replace(_HELD, contrast=Contrast(None, 9.0, (-2.0, 0.0, 2.0))),
        "bracket_long": replace(
            _timed(20.0), contrast=Contrast(None, 9.0, (-2.0, 0.0, 2.0), at_least=True)
        ),
        "one_darker": replace(_HELD, contrast=Contrast(0.0, 6.0, (-0.7,))),
        "even": replace(_HELD, contrast=Contrast(0.4, 4.0)),
        "cold": replace(
            _HELD, cast=Cast(SurfaceCast(Tint.BLUE, 62.0), SurfaceCast(Tint.NEUTRAL, 0.0))
        ),
        "warm_rock": replace(_HELD, cast=Cast(None, SurfaceCast(Tint.WARM, -61.0))),
        "green": replace(_HELD, cast=Cast(SurfaceCast(Tint.GREEN, None), None)),
        "slightly_blue": replace(_HELD, cast=Cast(SurfaceCast(Tint.BLUE, 20.0), None)),
        "looks_silky": replace(
            _HELD, look=LookSeen(Look.SILKY, None, 0.15, 0.3), water=_WATER, sharpness=_SHARP
        ),
        "looks_textured": replace(_HELD, look=LookSeen(Look.TEXTURED, Look.SILKY, 0.03, 0.15)),
        "looks_nothing": replace(_HELD, look=LookSeen()),
        "no_water": _doubtful(Doubt.NO_WATER),
        "tiny_water": _doubtful(Doubt.TINY),
        "black": replace(
            report(Advice.BRIGHTER, 2.0), borders=(), sharpness=Sharpness((None, None, None))
        ),
        "night": replace(
            report(Advice.BRIGHTER, 2.0),
            borders=(),
            sharpness=replace(_SHARP, noisy=True),
            contrast=Contrast(7.3, 2.0, at_least=True),
        ),
        "grainy": replace(_HELD, borders=(), sharpness=replace(_SHARP, noisy=True)),
        "dusk": replace(report(Advice.BRIGHTER, 2.0), borders=(), sharpness=_SHARP),
        "street": replace(
            _HELD,
            borders=(),
            sharpness=_SHARP,
            contrast=Contrast(0.4, 4.0),
            cast=Cast(None, SurfaceCast(Tint.WARM, -80.0)),
            look=LookSeen(doubt=Doubt.NO_WATER),
        ),
        "creek": replace(
            _HELD,
            borders=(),
            sharpness=_SHARP,
            contrast=Contrast(0.4, 4.0),
            cast=Cast(SurfaceCast(Tint.NEUTRAL, 0.0), SurfaceCast(Tint.WARM, -80.0)),
            water=_WATER,
        ),
        "one_tone": replace(_HELD, contrast=Contrast(0.4, 0.2)),
        "small_png": replace(
            report(Advice.ASK, None, _UNSURE, settings=CameraSettings()),
            file_kind="PNG",
            metadata=FrameMetadata(),
            size_note=SizeNote.RESIZED,
        ),
        "page": replace(report(Advice.ASK, None, _UNSURE), of_screen=True),
        "minutes": _timed(30.0),
        "minutes_clipped": replace(
            report(Advice.DARKER, -2 / 3, _DROP, settings=CameraSettings(30.0, 13.0, 100.0, 27.0))
        ),
        "quick": _timed(
            1 / 500,
            look=LookSeen(Look.FROZEN, Look.CRISP, 0.0, 0.002),
            water=_WATER,
            sharpness=_SHARP,
        ),
        "fifteenth": _timed(1 / 15),
        "quarter": _timed(1 / 4),
        "quick_dark": report(
            Advice.BRIGHTER, 1.2, settings=CameraSettings(1 / 125, 13.0, 3200.0, 27.0)
        ),
        "half": _timed(1 / 2),
        "second": _timed(1.0),
        "untimed": replace(_HELD, metadata=FrameMetadata(maker="Alder", present=True)),
        "wide": replace(_HELD, width=6000, height=4000),
    }
)
FAULTS: Final = {"broken": FrameFault.DAMAGED, "text": FrameFault.NOT_A_PICTURE}
