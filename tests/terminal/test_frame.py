"""`linn frame`: frames measured from the shell."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from bot.__main__ import main
from bot.exits import Exit
from bot.terminal.frame import frame_object
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
from tests.terminal.pictures import small_jpeg

REPORT = FrameReport(
    file_kind="JPEG",
    width=6000,
    height=4000,
    metadata=FrameMetadata(CameraSettings(0.25, 11.0, 100.0, None), present=True),
    size_note=SizeNote.FULL,
    clipping=Clipping(
        share=0.02,
        by_channel={"red": 0.01, "green": 0.015, "blue": 0.02},
        areas=(
            ClippedArea(
                letter="A",
                kind=AreaKind.WHITE_WATER,
                box=Box(0.25, 0.5, 0.125, 0.25),
                share=0.0195,
                widest=0.125,
                channels=("blue",),
                confidence=0.9,
            ),
        ),
    ),
    room_stops=None,
    advice=Advice.DARKER,
)


def test_object_of_a_report() -> None:
    """Names and values of a report are plain JSON, null for what is not known."""
    value = json.loads(json.dumps(frame_object(Path("a.jpg"), REPORT)))
    assert value["file"] == "a.jpg"
    assert value["settings"] == {
        "shutter_s": 0.25,
        "f_number": 11.0,
        "iso": 100.0,
        "focal_mm": None,
    }
    assert value["clipped"]["share"] == 0.02
    assert value["clipped"]["by_channel"] == {"red": 0.01, "green": 0.015, "blue": 0.02}
    (area,) = value["clipped"]["areas"]
    assert (area["letter"], area["kind"], area["share"]) == ("A", "white water", 0.0195)
    assert area["box"] == {"left": 0.25, "top": 0.5, "width": 0.125, "height": 0.25}
    assert area["channels"] == ["blue"]
    assert (value["room_stops"], value["advice"]) == (None, "darker")
    assert (value["width"], value["size_note"]) == (6000, "full")


@pytest.fixture
def frames(tmp_path: Path) -> list[str]:
    """Paths of a frame, a text, a missing file and another frame, in this order."""
    (tmp_path / "a.jpg").write_bytes(small_jpeg())
    (tmp_path / "text.jpg").write_text("no picture")
    (tmp_path / "b.jpg").write_bytes(small_jpeg(200, 300))
    return [str(tmp_path / name) for name in ("a.jpg", "text.jpg", "none.jpg", "b.jpg")]


def test_json_of_several_files(frames: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    """One line for each frame; what cannot be read is said elsewhere and fails in the end."""
    assert main(["frame", "--json", *frames]) == Exit.FAILED
    said = capsys.readouterr()
    values = [json.loads(line) for line in said.out.splitlines()]
    assert [value["file"] for value in values] == [frames[0], frames[3]]
    assert [(value["width"], value["height"]) for value in values] == [(300, 200), (200, 300)]
    text, missing = said.err.splitlines()
    assert text.startswith(frames[1])
    assert missing == f"{frames[2]}: No such file or directory"


@pytest.mark.parametrize(
    ("name", "head"),
    [("marked.png", b"\x89PNG"), ("other.PNG", b"\x89PNG"), ("marked.jpg", b"\xff\xd8")],
)
def test_lines_and_picture_of_one_file(
    frames: list[str], tmp_path: Path, capsys: pytest.CaptureFixture[str], name: str, head: bytes
) -> None:
    """Without `--json` there are a few plain lines; the marked picture goes where it is told."""
    picture = tmp_path / name
    assert main(["frame", frames[0], "--picture", str(picture)]) == Exit.DONE
    said = capsys.readouterr()
    assert said.out.startswith(f"{frames[0]}\n  JPEG, 300 × 200\n")
    assert "clipped: " in said.out
    assert said.err == ""
    assert picture.read_bytes().startswith(head)


def test_a_picture_that_cannot_be_saved(
    frames: list[str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A folder that is missing is named, and the command fails."""
    picture = tmp_path / "missing" / "marked.png"
    assert main(["frame", frames[0], "--picture", str(picture)]) == Exit.FAILED
    assert f"{picture}: No such file or directory" in capsys.readouterr().err
