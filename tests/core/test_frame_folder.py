"""Pictures from outside: real cameras' files and hostile ones, in the folder of FRAMES_DIR."""

from __future__ import annotations

import os
import re
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest

from core.errors import UnreadableFrameError
from core.frame.check import check_frame
from core.frame.decode import decode
from core.frame.report import FrameMetadata

pytestmark = pytest.mark.frames


@pytest.fixture(scope="module")
def folder() -> Path:
    """The folder with pictures; without it these tests are left out, and say so."""
    name = os.environ.get("FRAMES_DIR")
    if not name:
        pytest.skip("0 pictures looked at: FRAMES_DIR names no folder")
    return Path(name)


def files(folder: Path, *names: str) -> list[Path]:
    found = [
        path for name in names for path in sorted((folder / name).rglob("*")) if path.is_file()
    ]
    print(f"{len(found)} files in {', '.join(names)}")  # noqa: T201  # how many were looked at
    assert found
    return found


def listed(folder: Path) -> Iterator[tuple[str, str]]:
    """File and summary of each line of the folder's list."""
    lines = (folder / "MANIFEST.tsv").read_text("utf-8").splitlines()
    for line in lines[1:]:
        cells = line.split("\t")
        yield cells[0], cells[5]


def test_orientations(folder: Path) -> None:
    """The same photograph with orientation 0, 1, 3 and 6 comes out the same."""
    upright = decode((folder / "water/Landscape_1.jpg").read_bytes()).pixels
    for orientation in (0, 3, 6):
        other = decode((folder / f"water/Landscape_{orientation}.jpg").read_bytes()).pixels
        assert other.shape == upright.shape
        # The number that is printed in the middle differs, and the JPEG's rounding.
        far = np.abs(other.astype(int) - upright.astype(int)).mean()
        assert far < 12


def test_heic_is_upright(folder: Path) -> None:
    """Three phones' HEIC are taller than wide, as they were held."""
    for path in files(folder, "heic"):
        frame = decode(path.read_bytes())
        assert frame.pixels.shape == (4032, 3024, 3)
        assert frame.metadata.from_phone


def stated(summary: str, pattern: str) -> float | None:
    match = re.search(rf"(?:^|; ){pattern}=?(-?[\d.]+)(?:/(-?[\d.]+))?(?:;|$)", summary)
    return None if match is None else float(match[1]) / float(match[2] or 1)


#: What the list says and no camera can have meant: an f-number of 0.2, a sensitivity of 0.
ODD = {("camera/FujiFilm_FinePixS2Pro.jpg", "f"), ("camera/FujiFilm_FinePixS2Pro.jpg", "ISO")}


def test_settings_of_real_cameras(folder: Path) -> None:
    """Time, f-number, sensitivity and focal length are those that another reader listed."""
    seen = 0
    for name, summary in listed(folder):
        if not name.startswith(("camera/", "heic/", "odd/", "water/")) or name.endswith(".dng"):
            continue
        metadata: FrameMetadata = decode((folder / name).read_bytes()).metadata
        settings = metadata.settings
        for key, pattern, value in (
            ("t", "t", settings.shutter_s),
            ("f", "f/", settings.f_number),
            ("ISO", "ISO", settings.iso),
            ("fl", "fl", settings.focal_mm),
        ):
            expected = stated(summary, pattern)
            if expected is not None and (name, key) not in ODD:
                assert value == pytest.approx(expected, rel=1e-4), (name, key)
                seen += 1
    print(f"{seen} settings compared")  # noqa: T201  # how many were looked at
    assert seen > 30


def test_the_clipped_share_of_raw_files_with_a_known_one(folder: Path) -> None:
    """Files made with an exact share of full photosites: it is found within 0.05 % of the frame.

    The share stands in the file's name, in thousandths of a percent.
    """
    known = [path for path in files(folder, "raw") if path.stem.startswith("synth_")]
    assert len(known) >= 3
    for path in known:
        share = int(path.stem[-5:]) / 100_000
        report, _ = check_frame(path.read_bytes())
        assert report.clipping.share == pytest.approx(share, abs=0.0005), path.name
        assert (report.room_stops is None) == (share > 0), path.name


def test_raw_files_of_cameras(folder: Path) -> None:
    """Real raws are measured; the list says of one that its lamps are blown, of one nothing is."""
    reports = {path.name: check_frame(path.read_bytes())[0] for path in files(folder, "raw")}
    assert all(report.file_kind == "raw" for report in reports.values())
    assert reports["CRW.CRW"].clipping.share > 0.005
    assert reports["colorchart.dng"].clipping.share == 0
    assert reports["colorchart.dng"].room_stops == pytest.approx(
        0.8, abs=1 / 6
    )  # pins current behaviour


def test_half_a_raw_file_is_refused(folder: Path) -> None:
    """A cut raw is never reported as black or as clipped all over, as a decoder may render it."""
    for path in files(folder, "raw"):
        data = path.read_bytes()
        with pytest.raises(UnreadableFrameError):
            check_frame(data[: len(data) // 2])


def test_hostile_files(folder: Path) -> None:
    """Each damaged or hostile file ends in a report or in a clear fault."""
    outcomes: Counter[tuple[str, str]] = Counter()
    for path in files(folder, "hostile", "odd"):
        try:
            check_frame(path.read_bytes())
            outcome = "report"
        except UnreadableFrameError as error:
            outcome = error.fault.value
        outcomes[path.parent.name, outcome] += 1
    for (group, outcome), number in sorted(outcomes.items()):
        print(f"{group:20} {outcome:15} {number:4}")  # noqa: T201  # the table of outcomes
    assert sum(outcomes.values()) > 100
