"""Figures of the border check: things planted at borders, and what is said beside them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from itertools import cycle, islice
from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.borders import find_borders
from core.frame.findings import Border, BorderFinding, BorderKind
from core.frame.working import working_copy
from tests.figures.figure import Figure, Material
from tests.figures.own_things import Span, is_told, spans_held_out, spans_outside
from tests.figures.photographs import outside_by_name
from tests.scenes.camera import light_of_codes
from tests.scenes.intruders import Intruder
from tests.scenes.noise import Field
from tests.training.backdrops import backdrop, drawn_backdrop
from tests.training.borders import HELD_OUT, hit, populated
from tests.training.kinds import file_of

#: Frames of each material.
_FRAMES: Final = 60
#: Questions that the dialogue puts about one frame at most (own rule).
_ASKED: Final = 2
_BRIGHT: Final = frozenset({BorderKind.BRIGHT, BorderKind.SKY})


@dataclass
class _Tally:
    """What was planted and found in some frames."""

    frames: int = 0
    planted: list[tuple[Intruder, bool, bool]] = field(default_factory=list)
    stated: list[tuple[BorderFinding, bool]] = field(default_factory=list)
    own: list[bool] = field(default_factory=list)
    questions: int = 0

    def add(
        self, planted: Sequence[Intruder], found: Sequence[BorderFinding], own: Sequence[Span]
    ) -> None:
        stated = [one for one in found if one.stated]
        asked = [one for one in found if not one.stated][:_ASKED]
        self.frames += 1
        self.questions += len(asked)
        self.stated += [(one, any(_meets(thing, one) for thing in planted)) for one in stated]
        self.own += [is_told(own, one) for one in stated]
        self.planted += [
            (thing, any(_meets(thing, one) for one in stated),
             any(_meets(thing, one) for one in (*stated, *asked)))
            for thing in planted
        ]  # fmt: skip


def figures(seed: int) -> Iterator[Figure]:
    """Things planted in pictures and rendered gorges that nothing was trained on.

    Pictures from outside, planted, count as "shifted real". What is said of what pictures show at
    their borders by themselves counts as false first, though it is right: so statements on the
    real ones are counted again with that.
    """
    rng = np.random.default_rng(seed)
    gorges = ((backdrop("unseen gorge", rng), list[Span]()) for _ in range(_FRAMES))
    yield from _told(Material.RENDERED, gorges, rng)
    yield from _told(Material.MADE, _held_out(rng), rng)
    real = outside_by_name()
    copies = [(light_of_codes(working_copy(pixels).pixels), spans_outside(name))
              for name, pixels in real.items()]  # fmt: skip
    shifted = islice(cycle(copies), _FRAMES)
    yield from _told(Material.SHIFTED, shifted, rng) if copies else ()
    yield from _untouched(list(real.values()))


def _held_out(rng: np.random.Generator) -> Iterator[tuple[Field, list[Span]]]:
    """Pieces of the pictures held out, and what their borders cut."""
    for name in islice(cycle(HELD_OUT), _FRAMES):
        drawn = drawn_backdrop(name, rng)
        yield drawn.light, spans_held_out(name, drawn)


def _told(
    material: Material, lights: Iterable[tuple[Field, list[Span]]], rng: np.random.Generator
) -> list[Figure]:
    """Figures of things planted in pictures, each with what it shows by itself, if known."""
    tally = _Tally()
    for light, own in lights:
        laid, planted = populated(light, rng)
        tally.add(planted, find_borders(working_copy(file_of(laid, rng)[0])), own)
    return [*_bright(material, tally), *_lines(material, tally)]


def _bright(material: Material, tally: _Tally) -> Iterator[Figure]:
    planted = [row for row in tally.planted if row[0].kind in _BRIGHT]
    stated = [right for one, right in tally.stated if one.kind in _BRIGHT]
    wrong = len(stated) - sum(stated)
    yield _part(material, "white patches and sky stated", [row[1] for row in planted], 0.9)
    yield Figure(
        "borders", material, "false bright statements a frame", wrong / tally.frames,
        tally.frames, 0.3, at_least=False,
    )  # fmt: skip


def _lines(material: Material, tally: _Tally) -> Iterator[Figure]:
    planted = [row for row in tally.planted if row[0].kind not in _BRIGHT]
    plain = [row for row in planted if row[0].plain]
    right = [right for one, right in tally.stated if one.kind not in _BRIGHT]
    yield _part(material, "plain lines and shapes stated", [row[1] for row in plain], 0.65)
    yield _part(material, "plain lines and shapes stated or asked", [row[2] for row in plain], 0.85)
    yield _part(material, "all lines and shapes stated", [row[1] for row in planted], None)
    yield _part(material, "all lines and shapes stated or asked", [row[2] for row in planted], None)
    yield _part(material, "statements on lines and shapes right", right, 0.8)
    if material is not Material.RENDERED:
        either = [right or own for (one, right), own in zip(tally.stated, tally.own, strict=True)
                  if one.kind not in _BRIGHT]  # fmt: skip
        yield _part(material, "of these or of what the picture shows by itself", either, 0.8)
    yield Figure(
        "borders", material, "questions a frame", tally.questions / tally.frames, tally.frames,
        _ASKED, at_least=False,
    )  # fmt: skip


def _part(material: Material, name: str, found: Sequence[bool], aim: float | None) -> Figure:
    share = sum(found) / max(len(found), 1)
    return Figure("borders", material, name, share, len(found), aim)


def _meets(thing: Intruder, finding: BorderFinding) -> bool:
    """Whether a finding is about a thing; a busy side is about all that touches it."""
    if finding.kind is BorderKind.BUSY:
        return finding.border in thing.spans
    half = finding.width / 2
    return hit(thing, finding.border, finding.position - half, finding.position + half)


def _untouched(pictures: Sequence[NDArray[np.uint8]]) -> Iterator[Figure]:
    """How much is said of real pictures as they are; nobody has judged it."""
    if not pictures:
        return
    found = [find_borders(working_copy(pixels)) for pixels in pictures]
    for name, stated in (("statements a frame", True), ("questions a frame", False)):
        counts = [min(sum(one.stated is stated for one in frame), 99 if stated else _ASKED)
                  for frame in found]  # fmt: skip
        yield Figure("borders", Material.REAL, name, float(np.mean(counts)), len(counts))
    sides = {border: sum(one.border is border for frame in found for one in frame if one.stated)
             for border in Border}  # fmt: skip
    for border, count in sides.items():
        yield Figure("borders", Material.REAL, f"stated at the {border.value}", count / len(found),
                     len(found))  # fmt: skip
