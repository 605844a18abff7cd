"""No hostile file harms the bot: each has a right report or a clear sentence, inside its limits."""

from __future__ import annotations

import os
import random
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.runtime.orders import FrameLimits
from tests.hostile import __main__ as command
from tests.hostile.cases import REPORT, Case, Seen
from tests.hostile.conftest import Measure
from tests.hostile.good_files import READ, REFUSED, good
from tests.hostile.made_files import NOT_READ, bombs, lies, odd_metadata, polyglots, tiny
from tests.hostile.spoiled import CUT, FLIPPED, cuts, flips

#: Fixed, so that a failure can be repeated; the command draws anew each time.
SEED = 20260621


def promised(seen: list[Seen]) -> None:
    """Every promise is kept, and the table of what was wrong is empty."""
    wrong = [f"{one.case.kind}: {one.case.name}: {one.wrong}" for one in seen if one.wrong]
    limit_s = FrameLimits().time_s
    wrong += [f"{one.case.name} took {one.took_s:.1f} s" for one in seen if one.took_s > limit_s]
    assert wrong == []
    assert seen


@pytest.mark.parametrize("kind", READ)
def test_cut_off(measure: Measure, kind: str) -> None:
    """A file that is whole has a report; cut off anywhere it is refused, never half made up."""
    data = good(kind)
    whole = Case(kind, "whole", data, frozenset({REPORT}))
    promised(measure([whole, *cuts(kind, data), Case(f"{kind}, cut", "a byte", data[:-1], CUT)]))


@pytest.mark.parametrize("kind", REFUSED)
def test_cut_off_and_not_read(measure: Measure, kind: str) -> None:
    """A kind that is not read is refused as such, whole or not."""
    promised(measure(cuts(kind, good(kind), frozenset({NOT_READ}))))


@pytest.mark.parametrize("kind", READ)
def test_flipped_bits(measure: Measure, kind: str) -> None:
    """Flipped bits give a report or a fault of the file, nothing else."""
    promised(measure(flips(kind, good(kind), 8, SEED)))


@pytest.mark.parametrize("make", [bombs, lies, polyglots, odd_metadata, tiny])
def test_made_files(measure: Measure, make: command.Maker) -> None:
    """Bombs, lies about sizes, two kinds in one, odd metadata and tiny files."""
    promised(measure(make()))


@settings(max_examples=25)
@given(st.sampled_from(READ), st.sampled_from(READ), st.floats(0, 1), st.floats(0, 1), st.binary())
def test_spliced_files(
    measure: Measure, first: str, second: str, until: float, since: float, between: bytes
) -> None:
    """The beginning of one file, anything, and the end of another."""
    head, tail = good(first), good(second)
    data = head[: int(len(head) * until)] + between + tail[int(len(tail) * since) :]
    allowed = FLIPPED | {"empty"}
    promised(measure([Case("spliced", f"{first}, {second}", data, allowed)]))


def test_good_files_between_hostile_ones(measure: Measure) -> None:
    """In any company, at the same time or before, a good file's report stays what it is."""
    chance = random.Random(SEED)
    alone = {kind: measure([Case(kind, "alone", good(kind))])[0].report for kind in READ[:4]}
    hostile = [case for case in (*lies(), *polyglots()) if case.kind]
    company = [Case(kind, "in company", good(kind)) for kind in alone for _ in range(4)]
    mixed = company + chance.sample(hostile, 20)
    chance.shuffle(mixed)
    for one in measure(mixed):
        if one.case.name == "in company":
            assert one.report == alone[one.case.kind]


@pytest.mark.frames
def test_files_from_outside(measure: Measure) -> None:
    """The same holds for the hostile files in the folder of FRAMES_DIR."""
    name = os.environ.get("FRAMES_DIR")
    if not name:
        pytest.skip("0 hostile files looked at: FRAMES_DIR names no folder")
    paths = [path for path in sorted((Path(name) / "hostile").rglob("*")) if path.is_file()]
    cases = [Case(f"from {path.parent.name}", path.name, path.read_bytes()) for path in paths]
    promised(measure(cases))


@pytest.mark.frames
def test_real_files_cut_off(measure: Measure) -> None:
    """A real phone's HEIC, a real camera's JPEG and a raw, cut off, are refused."""
    name = os.environ.get("FRAMES_DIR")
    if not name:
        pytest.skip("0 real files cut off: FRAMES_DIR names no folder")
    for folder, ending, allowed in (
        ("heic", "heic", CUT),
        ("camera", "jpg", CUT),
        ("raw", "dng", CUT),
        ("raw", "KDC", CUT),
        ("raw", "CRW", CUT | {NOT_READ}),
    ):
        for path in sorted((Path(name) / folder).glob(f"*.{ending}"))[:3]:
            promised(measure(list(cuts(f"real {ending}", path.read_bytes(), allowed))[::3]))


def test_the_command(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """A folder of any files comes out as a table, with the number of broken promises."""
    (tmp_path / "deep").mkdir()
    (tmp_path / "deep/leaf.txt").write_bytes(good("JPEG"))
    (tmp_path / "fern").write_bytes(b"")
    arguments = [str(tmp_path), "--cuts", "--flips", "2", "--seed", "7"]
    assert command.main(arguments) == 0
    printed = capsys.readouterr().out
    assert "seed 7" in printed
    rows = {line[:16].strip(): line.split() for line in printed.splitlines()}
    assert rows["JPEG"][1] == "1"
    assert "JPEG, cut" in rows
    assert "19 files, 0 wrong" in printed


def test_the_command_names_what_is_wrong(capsys: pytest.CaptureFixture[str]) -> None:
    """A promise that is not kept is named, and the exit code tells."""
    late = Seen(Case("JPEG", "slow", b""), "damaged", 40.0, None, "It is damaged.")
    mute = Seen(Case("JPEG", "mute", b""), "damaged", 0.1, None, "")
    judged = Seen(Case("JPEG, cut", "half", b"", CUT), REPORT, 0.1, None, "")
    crashed = Seen(Case("JPEG", "odd", b""), "crashed", 0.1, None, "It broke.")
    assert command.verdict([crashed]) == 0
    assert command.verdict([late, mute, judged, crashed]) == 1
    printed = capsys.readouterr().out
    assert "look at: JPEG: odd: crashed" in printed
    for name in ("slow: took 40.0 s", "mute: no sentence", "half: report, not damaged"):
        assert f"{name}\n" in printed
