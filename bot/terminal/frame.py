"""`linn frame`: measures frames from the shell, as text or as JSON."""

from __future__ import annotations

import asyncio
import json
import sys
from collections.abc import Sequence
from dataclasses import asdict
from pathlib import Path
from typing import Any

from bot.dialogue.steps.frames.findings_said import plain_lines
from bot.dialogue.texts.frames import fault_line, frame_lines
from bot.exits import Exit
from bot.runtime.frame_child import check_and_draw
from bot.runtime.frames import FrameServer
from bot.runtime.outcomes import Outcome
from bot.runtime.ports import FrameChecker
from bot.terminal.png_picture import check_and_draw_png
from core.frame.limits import MAX_BYTES
from core.frame.report import FrameReport


def measure_files(files: Sequence[Path], *, as_json: bool, picture: Path | None) -> int:
    """Measure each file in a process of its own and print what was found.

    What cannot be read is said on the error output, and the others are measured all the same.

    Args:
        files: the frames.
        as_json: one JSON object per frame and line; else a few plain lines.
        picture: where the marked picture is saved, None for nowhere; a PNG when its name ends so,
            else a JPEG.

    Returns:
        `Exit.DONE`, or `Exit.FAILED` when a file was not measured.
    """
    return asyncio.run(_with_server(files, as_json, picture))


async def _with_server(files: Sequence[Path], as_json: bool, picture: Path | None) -> int:
    as_png = picture is not None and picture.suffix.lower() == ".png"
    server = FrameServer(work=check_and_draw_png if as_png else check_and_draw)
    await server.start()
    try:
        measured = [await _measure(server, path, as_json, picture) for path in files]
    finally:
        await server.stop()
    return Exit.DONE if all(measured) else Exit.FAILED


async def _measure(checker: FrameChecker, path: Path, as_json: bool, picture: Path | None) -> bool:
    try:
        data = _read(path)
    except OSError as error:
        print(f"{path}: {error.strerror}", file=sys.stderr)
        return False
    outcome = await checker.check(data)
    if outcome.fault is not None:
        print(f"{path}: {fault_line(outcome.fault, outcome.numbers)}", file=sys.stderr)
    if outcome.report is None:
        return False
    if as_json:
        print(json.dumps(frame_object(path, outcome.report), ensure_ascii=False), flush=True)
    else:
        lines = [*frame_lines(outcome.report), *plain_lines(outcome.report)]
        print("\n".join([str(path), *("  " + line for line in lines)]))
    return picture is None or _save(outcome, picture)


def _read(path: Path) -> bytes:
    """At most one byte more than may be: enough for the check to see that it is too large."""
    with path.open("rb") as file:
        return file.read(MAX_BYTES + 1)


def _save(outcome: Outcome, picture: Path) -> bool:
    try:
        picture.write_bytes(outcome.picture or b"")
    except OSError as error:
        print(f"{picture}: {error.strerror}", file=sys.stderr)
        return False
    return True


def frame_object(path: Path, report: FrameReport) -> dict[str, Any]:
    """The report as plain JSON values: numbers in the units that the names say, null for unknown.

    Shares count pixels with a clipped channel over all pixels, 0 to 1; boxes are in shares of the
    upright picture.
    """
    values = asdict(report, dict_factory=_plain)
    clipping = values.pop("clipping")
    metadata = values.pop("metadata")
    settings = metadata.pop("settings")
    return {
        "file": str(path),
        "settings": settings,
        "clipped": clipping,
        **values,
        "metadata": metadata,
    }


def _plain(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    return {name: getattr(value, "value", value) for name, value in pairs}
