"""A shared frame put into words: its areas, its room, its fault; and what its picture shows."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.texts import measures
from bot.dialogue.texts.borders import border_place, spoken_of
from bot.dialogue.texts.catalogue import TEXTS
from core.errors import FrameFault
from core.frame.report import Box, ClippedArea, FrameReport, SizeNote
from core.frame.room import is_capped, is_lost

#: Names of the thirds of a frame, across and down.
_COLUMNS: Final = ("left", "centre", "right")
_ROWS: Final = ("top", "middle", "bottom")

#: Step for a clipped water area by its share of the frame [stops] (own rule; how far over a JPEG
#: is cannot be known, so the next frame decides).
_STEPS: Final = ((0.05, 1.0), (0.01, 2 / 3), (0.0, 1 / 3))

#: Less is not worth a line [stops] (own rule: half a click).
_WORTH_STOPS: Final = 1 / 6


def position(box: Box) -> str:
    """Where an area lies, as seen in the frame: `top right`, `centre`."""
    across = min(2, int((box.left + box.width / 2) * 3))
    down = min(2, int((box.top + box.height / 2) * 3))
    return TEXTS[f"position.{_ROWS[down]}_{_COLUMNS[across]}"]


def channels(area: ClippedArea) -> str:
    """Which channels are clipped: `all channels`, `blue only`."""
    if len(area.channels) == 3 or not area.channels:
        return TEXTS["channels.all"]
    return TEXTS["channels.one"].format(
        names=measures.listing([TEXTS[name] for name in area.channels], TEXTS["and"])
    )


def area_values(area: ClippedArea) -> dict[str, str]:
    """What the sentences about an area need."""
    return {
        "letter": area.letter,
        "position": position(area.box),
        "share": measures.percent(area.share),
        "channels": channels(area),
        "kind": TEXTS[f"kind.{area.kind.name.lower()}"],
    }


def of_part(area: ClippedArea) -> str:
    """Ends the name of the sentence about an area that is lost in a part of its channels."""
    return "" if len(area.channels) == 3 or not area.channels else "_part"


def or_more(report: FrameReport) -> str:
    """Ends the name of the sentence about a frame's room where it is at least so much."""
    return "_or_more" if is_capped(report) else ""


def step_for_share(share: float) -> float:
    """How much darker the next frame shall be for water clipped over this share [stops]."""
    return next(step for least, step in _STEPS if share >= least)


def fault_values(numbers: Mapping[str, float]) -> dict[str, str]:
    """The limits that the sentence about a fault may name."""
    limit = numbers.get("limit", 0.0)
    return {
        "limit_mb": measures.plain(limit / 1e6, 0),
        "limit_megapixels": measures.plain(limit / 1e6, 0),
    }


def fault_key(fault: FrameFault, numbers: Mapping[str, float]) -> str:
    """Name of the sentence for a file that can't be read."""
    if fault is FrameFault.KIND_NOT_READ and numbers.get("raw"):
        return "fault.raw_not_read"
    if fault is FrameFault.KIND_NOT_READ and numbers.get("stored"):
        return "fault.stored_not_read"
    return f"fault.{fault.value}"


def fault_line(fault: FrameFault, numbers: Mapping[str, float]) -> str:
    """The sentence for a file that can't be read."""
    return TEXTS[fault_key(fault, numbers)].format(**fault_values(numbers))


def caption(report: FrameReport) -> str:
    """One line beside the marked picture."""
    return TEXTS["caption.areas" if report.clipping.areas else "caption.none"]


def alternative_text(report: FrameReport) -> str:
    """What the marked picture shows, for who can't see it."""
    areas = [TEXTS["alt.area"].format(**area_values(area)) for area in report.clipping.areas]
    histograms = [
        TEXTS["alt.channel"].format(name=TEXTS[name], share=measures.percent(share))
        for name, share in report.clipping.by_channel.items()
    ]
    frame = TEXTS["alt.frame"].format(
        areas="; ".join(areas) or TEXTS["alt.no_area"], histograms=", ".join(histograms)
    )
    brackets = [border_place(finding) for finding in spoken_of(report.borders or ())]
    if not brackets:
        return frame
    return f"{frame} {TEXTS['alt.borders'].format(places='; '.join(brackets))}"


def frame_lines(report: FrameReport) -> list[str]:
    """A frame's report in plain lines, for the command line."""
    by = report.clipping.by_channel
    lines = [
        TEXTS["line.head"].format(kind=report.file_kind, width=report.width, height=report.height),
        _settings_line(report),
        TEXTS["line.clipped"].format(
            share=measures.percent(report.clipping.share),
            **{name: measures.percent(by.get(name, 0.0)) for name in ("red", "green", "blue")},
        ),
        *(TEXTS["line.area"].format(**area_values(area)) for area in report.clipping.areas),
        *_raw_lines(report),
        _room_line(report),
        TEXTS["advice.lost" if is_lost(report) else f"advice.{report.advice.value}"],
    ]
    if report.size_note is SizeNote.RESIZED:
        lines.append(TEXTS["frame.resized"])
    if report.of_screen:
        lines.append(TEXTS["frame.screenshot"])
    return lines


def _settings_line(report: FrameReport) -> str:
    settings = report.metadata.settings
    told = []
    if settings.focal_mm:
        told.append(f"{measures.plain(settings.focal_mm)} mm")
    if settings.f_number:
        told.append(f"f/{measures.plain(settings.f_number)}")
    if settings.shutter_s:
        short = settings.shutter_s < 0.3
        told.append(
            f"1/{round(1 / settings.shutter_s)} s"
            if short
            else f"{measures.plain(settings.shutter_s)} s"
        )
    if settings.iso:
        told.append(f"ISO {measures.plain(settings.iso, 0)}")
    if not told:
        return TEXTS["line.no_settings"]
    return TEXTS["line.settings"].format(settings=", ".join(told))


def _raw_lines(report: FrameReport) -> list[str]:
    if report.raw is None:
        return []
    room = {colour: measures.stops(stops) for colour, stops in report.raw.room_stops.items()}
    lines = [TEXTS["line.raw_room"].format(**room)]
    over = report.raw.preview_over_stops or 0.0
    if over >= _WORTH_STOPS:
        stops = measures.stops(over)
        lines.append(TEXTS["line.preview_over"].format(stops=stops))
    return lines


def _room_line(report: FrameReport) -> str:
    if report.room_stops is None:
        return TEXTS["line.no_room"]
    key = f"line.room{or_more(report)}" if report.room_stops >= 0 else "line.step"
    return TEXTS[key].format(stops=measures.stops(report.room_stops))
