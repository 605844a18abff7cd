"""What is said of a shared frame: areas, room, faults; and the words beside its picture."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.texts import measures
from core.errors import FrameFault
from core.frame.report import Box, ClippedArea, FrameReport, SizeNote

FRAMES: Final[dict[str, str]] = {
    "frame.white_water": (
        "Area {letter}, {position}: white water without texture, {share} of the frame, {channels}."
    ),
    "frame.holds": "The whites hold.",
    "frame.for_look": "The white holds. For your look: {settings}{look}.",
    "frame.next": "Next: {settings}{look}.",
    "frame.sparkle": "{letters}: sparkle, fine.",
    "frame.sky": "Area {letter}, {position}: a sky gap, {share} of the frame. The water holds.",
    "frame.unsure": "Area {letter}, {position}, {share} of the frame, is white without detail.",
    "ask.area": "Is {letter} water or sky?",
    "ask.area.water": "water",
    "ask.area.sky": "sky",
    "frame.room": "About {stops} of room to the right, from a JPEG.",
    "raw.room": "The raw has {stops} of room to the right; {channel} ends first.",
    "raw.room_stated": (
        "By its stated white the raw has {stops} of room to the right; {channel} ends first."
    ),
    "raw.preview_over": "Your camera's own warning overstates by about {stops}.",
    "raw.counted_on": "Counted for your raw: your camera's pictures clip about {stops} early.",
    "raw.holds": "Lost in the picture, but the raw should hold it.",
    "frame.resized": "A small copy: tiny sparkle is lost in it and shares read low.",
    "frame.no_metadata": "No camera data in the file: I take your last settings.",
    "frame.from_phone": "A phone took this picture, but your kit has a camera.",
    "ask.rear_screen": "Is this a picture of your camera's screen?",
    "ask.rear_screen.yes": "yes",
    "ask.rear_screen.no": "no, the frame itself",
    "frame.screen_unusable": (
        "Its brightness is the screen's, not the frame's, so I don't measure it."
    ),
    "ask.screen_says": "What does the screen show in the water?",
    "ask.screen_says.nothing": "no blinking",
    "ask.screen_says.dots": "dots blink",
    "ask.screen_says.patches": "patches",
    "ask.screen_says.sheet": "all of it",
    "ask.screen_says.histogram": "histogram at the right edge",
    "ask.screen_says.histogram.tap": "histogram at the right",
    "highlights.histogram": "It touches the right edge: a third back. Next: {settings}{look}.",
    "highlights.new_frame": "Good. Take the new frame.",
    "highlights.look_is": "{look} by your numbers, water crosses {share} of the frame",
    "highlights.look_is_usual": "{look} for a usual view",
    "channels.all": "all channels",
    "channels.one": "{names} only",
    "red": "red",
    "green": "green",
    "blue": "blue",
    "fault.empty": "That file is empty. Send the picture again.",
    "fault.not_a_picture": (
        "I can't find a picture in that file. Send a raw file, JPEG, HEIC, PNG or TIFF."
    ),
    "fault.kind_not_read": (
        "I can't read that kind of file. Send a raw file, JPEG, HEIC, PNG or TIFF."
    ),
    "fault.raw_not_read": (
        "That raw file is cut off, or of a camera I don't know. Send it again, or its JPEG."
    ),
    "fault.damaged": "That picture is cut off or damaged, so I don't judge it. Send it again.",
    "fault.too_many_bytes": (
        "That file is too large ({limit_mb} MB is the limit). Send a JPEG instead."
    ),
    "fault.too_many_pixels": (
        "That picture has too many pixels ({limit_megapixels} million is the limit). "
        "Send a smaller copy."
    ),
    "fault.too_small": "That picture is too small to judge. Send the file from the camera.",
    "fault.too_slow": "That picture took too long to read, so I stopped. Send it as a JPEG.",
    "fault.too_much_memory": "That picture needs more memory than I may use. Send a smaller copy.",
    "fault.crashed": "That file broke its reader; nothing else was harmed. Send it as a JPEG.",
    "fault.gone": "That file can't be fetched any more. Send it again.",
    # linn frame, on the command line
    "line.clipped": "clipped: {share} of the frame (red {red}, green {green}, blue {blue})",
    "line.area": "{letter}: {kind}, {position}, {share}, {channels}",
    "line.room": "room to the right: about {stops}",
    "line.raw_room": "room to the right, by the sensor: red {red}, green {green}, blue {blue}",
    "line.preview_over": "the embedded preview clips {stops} early",
    "line.step": "next frame: {stops} darker",
    "line.no_room": "how far to move can't be said",
    "line.settings": "settings: {settings}",
    "line.no_settings": "settings: not in the file",
    "line.head": "{kind}, {width} × {height}",
    "advice.keep": "the whites hold",
    "advice.brighter": "there is room: brighter",
    "advice.darker": "white water is lost: darker",
    "advice.reframe": "a sky gap: move, tilt, or bracket",
    "advice.ask": "water or sky? look at the marked area",
    "caption.areas": "Clipped areas outlined and lettered; below, red, green, blue.",
    "caption.none": "Nothing clipped; below, red, green, blue.",
    "alt.frame": "Your frame, {areas}. Below it three histograms: {histograms}.",
    "alt.area": "area {letter}, {kind}, {position}",
    "alt.no_area": "no clipped area",
    "alt.channel": "{name} {share} at the right edge",
}

#: Names of the thirds of a frame, across and down.
_COLUMNS: Final = ("left", "centre", "right")
_ROWS: Final = ("top", "middle", "bottom")

#: Step for a clipped water area by its share of the frame [stops] (own rule; how far over a JPEG
#: is cannot be known, so the next frame decides).
_STEPS: Final = ((0.05, 1.0), (0.01, 2 / 3), (0.0, 1 / 3))


def position(box: Box) -> str:
    """Where an area lies, as seen in the frame: `top right`, `centre`."""
    across = min(2, int((box.left + box.width / 2) * 3))
    down = min(2, int((box.top + box.height / 2) * 3))
    if (across, down) == (1, 1):
        return "centre"
    return f"{_ROWS[down]} {_COLUMNS[across]}"


def channels(area: ClippedArea) -> str:
    """Which channels are clipped: `all channels`, `blue only`."""
    if len(area.channels) == 3 or not area.channels:
        return FRAMES["channels.all"]
    return FRAMES["channels.one"].format(names=measures.listing(list(area.channels), "and"))


def area_values(area: ClippedArea) -> dict[str, str]:
    """What the sentences about an area need."""
    return {
        "letter": area.letter,
        "position": position(area.box),
        "share": measures.percent(area.share),
        "channels": channels(area),
        "kind": area.kind.value,
    }


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
    return f"fault.{fault.value}"


def fault_line(fault: FrameFault, numbers: Mapping[str, float]) -> str:
    """The sentence for a file that can't be read."""
    return FRAMES[fault_key(fault, numbers)].format(**fault_values(numbers))


def caption(report: FrameReport) -> str:
    """One line beside the marked picture."""
    return FRAMES["caption.areas" if report.clipping.areas else "caption.none"]


def alternative_text(report: FrameReport) -> str:
    """What the marked picture shows, for who can't see it."""
    areas = [FRAMES["alt.area"].format(**area_values(area)) for area in report.clipping.areas]
    histograms = [
        FRAMES["alt.channel"].format(name=FRAMES[name], share=measures.percent(share))
        for name, share in report.clipping.by_channel.items()
    ]
    return FRAMES["alt.frame"].format(
        areas="; ".join(areas) or FRAMES["alt.no_area"], histograms=", ".join(histograms)
    )


def frame_lines(report: FrameReport) -> list[str]:
    """A frame's report in plain lines, for the command line."""
    by = report.clipping.by_channel
    lines = [
        FRAMES["line.head"].format(kind=report.file_kind, width=report.width, height=report.height),
        _settings_line(report),
        FRAMES["line.clipped"].format(
            share=measures.percent(report.clipping.share),
            **{name: measures.percent(by.get(name, 0.0)) for name in ("red", "green", "blue")},
        ),
        *(FRAMES["line.area"].format(**area_values(area)) for area in report.clipping.areas),
        *_raw_lines(report),
        _room_line(report),
        FRAMES[f"advice.{report.advice.value}"],
    ]
    if report.size_note is SizeNote.RESIZED:
        lines.append(FRAMES["frame.resized"])
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
        return FRAMES["line.no_settings"]
    return FRAMES["line.settings"].format(settings=", ".join(told))


def _raw_lines(report: FrameReport) -> list[str]:
    if report.raw is None:
        return []
    room = {colour: measures.stops(stops) for colour, stops in report.raw.room_stops.items()}
    lines = [FRAMES["line.raw_room"].format(**room)]
    if report.raw.preview_over_stops is not None:
        stops = measures.stops(report.raw.preview_over_stops)
        lines.append(FRAMES["line.preview_over"].format(stops=stops))
    return lines


def _room_line(report: FrameReport) -> str:
    if report.room_stops is None:
        return FRAMES["line.no_room"]
    key = "line.room" if report.room_stops >= 0 else "line.step"
    return FRAMES[key].format(stops=measures.stops(report.room_stops))
