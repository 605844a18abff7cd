"""What a frame shows beside its whites, most important first: a line each, the rest under why."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.steps.frames import border_said, cast_said, look_said
from bot.dialogue.steps.walk.keep import LOOK_DOUBTS
from bot.dialogue.texts import TEXTS, frames, measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import Note
from core.frame.findings import Contrast, Shake, Sharpness
from core.frame.report import AreaKind, FrameReport, SizeNote
from core.series import nearest, shutter_label, time_marks

#: Lines of findings in one answer (own rule: nobody acts on more at once).
_MOST_LINES: Final = 3
#: Less than this below clipping is at it [stops] (own rule: half a third).
_WORTH_STOPS: Final = 1 / 6
#: Less from white to dark is nothing to hold [stops] (own rule).
_LEAST_CONTRAST: Final = 1.0
#: Names of a direction of movement, by its angle from the horizontal [deg].
_DIRECTIONS: Final = (
    (22.5, "level"),
    (67.5, "rising"),
    (112.5, "upright"),
    (157.5, "falling"),
    (180.0, "level"),
)

#: What `why` begins with after a frame: how much is clipped, and why this time.
_MAIN_REASONS: Final = frozenset(
    {"why.frame", "why.frame_none", "why.frame_exact"} | {"why.raw", "why.raw_stated", "why.share"}
)
#: What the first line of a frame that is no keeper says already.
_IN_UNSHARP: Final = frozenset({"seen.shake", "seen.soft"})
#: The answer's first line tells the look by the numbers already.
_BY_NUMBERS: Final = frozenset({"seen.look.numbers", "seen.look.both"})


@dataclass(frozen=True)
class Line:
    """One sentence; a `first` one stands before what is said of the whites."""

    part: Part
    first: bool = False
    #: For `why` only.
    aside: bool = False


def lines(turn: Turn, report: FrameReport) -> list[Line]:
    """All that is to be said of a frame beside its whites, most important first."""
    found = [*_sharpness(turn, report), *_contrast(turn, report), *_borders(turn, report)]
    found += [*_lamps(report), *_look(turn, report), *_casts(report), *_plain(report)]
    return sorted(
        _each_once(found),
        key=lambda line: (not line.first, line.aside, line.part.key in LOOK_DOUBTS),
    )


def lines_of_then(report: FrameReport) -> list[Line]:
    """The same of a frame of light that has gone: what it shows, and nothing to set."""
    found = [*_sharpness_then(report), *_contrast_then(report), *_borders_then(report)]
    said = look_said.line_of_picture(report)
    if said is not None:
        found.append(_line(*said, aside=said[0] in LOOK_DOUBTS))
    return _each_once([*found, *_lamps(report), *_casts(report)])


def _each_once(found: Sequence[Line]) -> list[Line]:
    """Two things at one place read the same: the sentence stands once."""
    told: list[tuple[str, Mapping[str, str]]] = []
    once = []
    for line in found:
        said = (line.part.key, line.part.values)
        if said not in told:
            told.append(said)
            once.append(line)
    return once


def plain_lines(report: FrameReport) -> list[str]:
    """The same in plain words, for the command line."""
    return [line.part.plain() for line in lines_of_then(report)]


def say(turn: Turn, found: list[Line]) -> None:
    """Say what there is room for beside the answer and its question; the rest is for why."""
    if any(part.key == "seen.unsharp" for part in turn.parts):
        found = [line for line in found if line.part.key not in _IN_UNSHARP]
    for line in [line for line in found if not line.aside][:_MOST_LINES]:
        if line.first:
            _say_first(turn, line.part)
        elif turn.has_room_for(line.part):
            turn.parts.append(line.part)
            if line.part.key in LOOK_DOUBTS:
                turn.change_walk(checks=turn.walk.checks | {line.part.key: "told"})
    _keep_for_why(turn, [line.part for line in found if line.part not in turn.parts])


def _say_first(turn: Turn, part: Part) -> None:
    """What spoils the frame stands before all other checks, and rather than the last of them."""
    checks = [one for one in turn.parts if one.role is Role.CHECK or one.key == "keep.ladder"]
    while checks and not turn.has_room_for(part):
        turn.parts.remove(checks[-1])
        _keep_for_why(turn, [checks.pop()])
    turn.parts.insert(0, part)


def _keep_for_why(turn: Turn, parts: Sequence[Part]) -> None:
    """What an answer has no room for: `why` tells it right behind the main reasons."""
    notes = [Note(key=part.key, values=dict(part.values)) for part in parts]
    main = [place for place, note in enumerate(turn.notes, 1) if note.key in _MAIN_REASONS]
    turn.notes[max(main, default=0) : max(main, default=0)] = notes


def _line(
    key: str, values: Mapping[str, str] | None = None, *, first: bool = False, aside: bool = False
) -> Line:
    return Line(Part(Role.CHECK, key, values or {}), first=first, aside=aside)


# sharpness


def fault_of(turn: Turn, report: FrameReport) -> tuple[str, str] | None:
    """What makes a frame no keeper, in a few words, and what helps; None where nothing does."""
    sharpness = report.sharpness
    if sharpness is None or report.size_note is SizeNote.RESIZED:
        return None
    if sharpness.shake is not None:
        fault = TEXTS["seen.shake_short"].format(direction=_direction(sharpness.shake))
        return fault, _held_still(turn)
    if sharpness.soft_all_over:
        return TEXTS["seen.soft_short"], TEXTS["seen.soft_remedy"]
    return None


def _held_still(turn: Turn) -> str:
    """What keeps the camera still, with a tripod or without one."""
    facts = turn.facts
    by_hand = facts.hand_held or facts.has_tripod is False
    return TEXTS["seen.shake_by_hand" if by_hand else "seen.shake_remedy"]


def _sharpness(turn: Turn, report: FrameReport) -> Iterator[Line]:
    sharpness = report.sharpness
    if sharpness is None or report.size_note is SizeNote.RESIZED:
        return
    if sharpness.shake is not None:
        direction = _direction(sharpness.shake)
        values = {"direction": direction, "remedy": _held_still(turn)}
        yield _line("seen.shake", values, first=True)
    elif sharpness.soft_all_over:
        yield _line("seen.soft", first=True)
    elif sharpness.softest is not None:
        yield _line(f"seen.softer.{sharpness.softest}")


def _direction(shake: Shake) -> str:
    angle = shake.angle_deg % 180
    name = next(name for end, name in _DIRECTIONS if angle <= end)
    return TEXTS[f"direction.{name}"]


def is_soft(sharpness: Sharpness | None) -> bool:
    """Whether a frame is soft all over, so that drops on the glass may be the reason."""
    return sharpness is not None and sharpness.soft_all_over and sharpness.shake is None


def _sharpness_then(report: FrameReport) -> Iterator[Line]:
    sharpness = report.sharpness
    if sharpness is None or report.size_note is SizeNote.RESIZED:
        return
    if sharpness.shake is not None:
        yield _line("seen.then.shake", {"direction": _direction(sharpness.shake)})
    elif sharpness.soft_all_over:
        yield _line("seen.then.soft")
    elif sharpness.softest is not None:
        yield _line(f"seen.softer.{sharpness.softest}")


# whites and darks


def _contrast(turn: Turn, report: FrameReport) -> Iterator[Line]:
    contrast = report.contrast
    if contrast is None or contrast.stops < _LEAST_CONTRAST:
        return
    stops = _range(contrast)
    if len(contrast.offsets_stops) > 1:
        frames_told = _bracket(turn, report, contrast)
        yield _line("seen.bracket", {"stops": stops, "frames": frames_told}, first=True)
    else:
        darker = contrast.offsets_stops[0] < 0
        key = "seen.contrast_darker" if darker else "seen.contrast"
        yield _line(key, {"stops": stops}, aside=True)
    if contrast.white_stops is not None and contrast.white_stops >= _WORTH_STOPS:
        key = "seen.white" if report.water is not None else "seen.brightest"
        yield _line(key, {"stops": measures.stops(contrast.white_stops)}, aside=True)


def _contrast_then(report: FrameReport) -> Iterator[Line]:
    contrast = report.contrast
    if contrast is not None and len(contrast.offsets_stops) > 1:
        yield _line("seen.then.contrast", {"stops": _range(contrast)})


def _range(contrast: Contrast) -> str:
    about = TEXTS["seen.at_least" if contrast.at_least else "seen.about"]
    return about.format(stops=measures.stops(contrast.stops))


def _bracket(turn: Turn, report: FrameReport, contrast: Contrast) -> str:
    """The frames of a bracket by the time alone, as the dial shows them."""
    offsets = contrast.offsets_stops
    camera = turn.camera
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
            yield _line("seen.lamp", frames.area_values(area))


# borders, look, cast


def _borders(turn: Turn, report: FrameReport) -> Iterator[Line]:
    for finding in border_said.stated(report):
        key, values = border_said.line(turn, report, finding)
        yield _line(key, values, aside=border_said.known(turn, finding))


def _borders_then(report: FrameReport) -> Iterator[Line]:
    for finding in border_said.stated(report):
        yield _line(*border_said.line_of_then(finding))


def _look(turn: Turn, report: FrameReport) -> Iterator[Line]:
    said = look_said.line(turn, report)
    if said is not None:
        shown = look_said.in_picture(turn, report)
        in_answer = shown and any(part.values.get("look") == shown for part in turn.parts)
        told = said[0] in _BY_NUMBERS or said[0] in turn.walk.checks or bool(in_answer)
        yield _line(*said, aside=told)


def _casts(report: FrameReport) -> Iterator[Line]:
    """A cast of the rock or of the water; without water to compare with it stands under `why`."""
    said = cast_said.line(report)
    if said is not None and report.cast is not None:
        yield _line(*said, aside=report.cast.water is None)


def _plain(report: FrameReport) -> Iterator[Line]:
    if report.sharpness is not None and report.sharpness.noisy:
        yield _line("seen.noise")
