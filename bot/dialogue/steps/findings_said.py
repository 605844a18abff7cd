"""What a frame shows beside its whites, most important first: a line each, the rest under why."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.steps import border_said, look_said
from bot.dialogue.texts import TEXTS, frames, measures
from bot.dialogue.turn import Turn
from core.frame.findings import Contrast, Shake, Sharpness, SurfaceCast, Tint
from core.frame.report import AreaKind, FrameReport, SizeNote
from core.series import nearest, shutter_label, time_marks

#: Lines of findings in one answer (own rule: nobody acts on more at once).
_MOST_LINES: Final = 3
#: A cast of the rock and of the water from which on it is worth a line [mired] (own rules: 25 is
#: seen side by side; water may stay slightly cool, common practice).
_ROCK_MIRED: Final = 25.0
_WATER_MIRED: Final = 40.0
#: Names of a direction of movement, by its angle from the horizontal [deg].
_DIRECTIONS: Final = (
    (22.5, "level"),
    (67.5, "rising"),
    (112.5, "upright"),
    (157.5, "falling"),
    (180.0, "level"),
)


@dataclass(frozen=True)
class Line:
    """A sentence by its key; the first ones stand before what is said of the whites."""

    key: str
    values: dict[str, str] = field(default_factory=dict)
    first: bool = False
    #: Said only where there is nothing else to say, else under `why`.
    aside: bool = False


def lines(turn: Turn, report: FrameReport) -> list[Line]:
    """All that is to be said of a frame beside its whites, most important first."""
    found = [*_sharpness(report), *_contrast(turn, report), *_borders(turn, report)]
    found += [*_lamps(report), *_look(turn, report), *_cast(report), *_plain(report)]
    return sorted(found, key=lambda line: (not line.first, line.aside))


def say(turn: Turn, found: list[Line], *, first: bool) -> None:
    """Say those that stand before, or behind, what is said of the whites; the rest is for why."""
    said = [line for line in found if not line.aside][:_MOST_LINES]
    for line in said:
        if line.first is first:
            turn.say(Role.CHECK, line.key, **line.values)
    if not first:
        for line in found:
            if line not in said:
                turn.reason(line.key, **line.values)


# sharpness


def fault_of(report: FrameReport) -> tuple[str, str] | None:
    """What makes a frame no keeper, in a few words, and what helps; None where nothing does."""
    sharpness = report.sharpness
    if sharpness is None or report.size_note is SizeNote.RESIZED:
        return None
    if sharpness.shake is not None:
        fault = TEXTS["seen.shake_short"].format(direction=_direction(sharpness.shake))
        return fault, "seen.shake_remedy_sentence"
    if sharpness.soft_all_over:
        return TEXTS["seen.soft_short"], "seen.soft_remedy_sentence"
    return None


def _sharpness(report: FrameReport) -> Iterator[Line]:
    sharpness = report.sharpness
    if sharpness is None or report.size_note is SizeNote.RESIZED:
        return
    if sharpness.shake is not None:
        values = {
            "direction": _direction(sharpness.shake),
            "remedy": TEXTS["seen.shake_remedy"],
        }
        yield Line("seen.shake", values, first=True)
    elif sharpness.soft_all_over:
        yield Line("seen.soft", first=True)
    elif sharpness.softest is not None:
        yield Line(f"seen.softer.{sharpness.softest}")


def _direction(shake: Shake) -> str:
    angle = shake.angle_deg % 180
    name = next(name for end, name in _DIRECTIONS if angle <= end)
    return TEXTS[f"direction.{name}"]


def is_soft(sharpness: Sharpness | None) -> bool:
    """Whether a frame is soft all over, so that drops on the glass may be the reason."""
    return sharpness is not None and sharpness.soft_all_over and sharpness.shake is None


# whites and darks


def _contrast(turn: Turn, report: FrameReport) -> Iterator[Line]:
    contrast = report.contrast
    if contrast is None:
        return
    stops = measures.stops(contrast.stops)
    if len(contrast.offsets_stops) > 1:
        frames_told = _bracket(turn, report, contrast)
        yield Line("seen.bracket", {"stops": stops, "frames": frames_told}, first=True)
    else:
        yield Line("seen.contrast", {"stops": stops}, aside=True)
    if contrast.white_stops is not None:
        yield Line("seen.white", {"stops": measures.stops(contrast.white_stops)}, aside=True)


def _bracket(turn: Turn, report: FrameReport, contrast: Contrast) -> str:
    """The frames of a bracket by the time alone, as the dial shows them."""
    offsets = contrast.offsets_stops
    camera = reckoning.camera_of(turn.facts, reckoning.Assumed())
    shutter_s = report.metadata.settings.shutter_s
    times = [(shutter_s or 0.0) * 2**offset for offset in offsets]
    if all(camera.shortest_s <= time <= camera.longest_s for time in times):
        marks = [nearest(time_marks(camera.dial), time).exact for time in times]
        labels = [shutter_label(mark, camera.dial) for mark in marks]
        return TEXTS["seen.bracket_times"].format(times=", ".join(labels))
    step = measures.stops((offsets[-1] - offsets[0]) / (len(offsets) - 1))
    return TEXTS["seen.bracket_frames"].format(number=str(len(offsets)), step=step)


def _lamps(report: FrameReport) -> Iterator[Line]:
    for area in report.clipping.areas:
        if area.kind is AreaKind.LAMP:
            yield Line("seen.lamp", frames.area_values(area))


# borders, look, cast


def _borders(turn: Turn, report: FrameReport) -> Iterator[Line]:
    for finding in border_said.stated(report):
        key, values = border_said.line(turn, report, finding)
        yield Line(key, values, aside=border_said.known(turn, finding))


def _look(turn: Turn, report: FrameReport) -> Iterator[Line]:
    said = look_said.line(turn, report)
    if said is not None:
        yield Line(*said, aside=said[0] == "seen.look.numbers")


def _cast(report: FrameReport) -> Iterator[Line]:
    if report.cast is None:
        return
    for name, surface, least in (
        ("rock", report.cast.rock, _ROCK_MIRED),
        ("water", report.cast.water, _WATER_MIRED),
    ):
        if surface is None or surface.tint is Tint.NEUTRAL:
            continue
        if surface.mired is None or abs(surface.mired) >= least:
            yield _cast_line(name, surface)
            return


def _cast_line(name: str, surface: SurfaceCast) -> Line:
    values = {"surface": TEXTS[f"surface.{name}"], "tint": TEXTS[f"tint.{surface.tint.value}"]}
    if surface.mired is None:
        return Line("seen.cast.tint", values)
    values["mired"] = measures.plain(round(abs(surface.mired), -1), 0)
    return Line(f"seen.cast.{'cold' if surface.mired > 0 else 'warm'}", values)


def _plain(report: FrameReport) -> Iterator[Line]:
    if report.sharpness is not None and report.sharpness.noisy:
        yield Line("seen.noise")
