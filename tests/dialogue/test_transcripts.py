"""Whole conversations, read like a play; `tests.dialogue.player` says how they are written."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.dialogue.player import play

TRANSCRIPTS = sorted((Path(__file__).parent / "transcripts").glob("*.txt"))


@pytest.mark.parametrize("path", TRANSCRIPTS, ids=lambda path: path.stem)
def test_conversation_goes_as_written(path: Path) -> None:
    """Every word of the bot is the one in the transcript (pins current behaviour)."""
    written = path.read_text(encoding="utf-8").splitlines()
    assert play(written) == written


def test_there_are_transcripts() -> None:
    """The folder was found and holds more than a few conversations."""
    assert len(TRANSCRIPTS) >= 8
