"""`why` after every answer of many walks: formula, numbers and source, on one screen."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Final

import pytest

from bot.dialogue.actions import Say
from bot.dialogue.engine import handle
from bot.dialogue.events import Event, TextReceived
from tests.dialogue.player import Player, play

TRANSCRIPTS: Final = sorted((Path(__file__).parent / "transcripts").glob("people_*.txt"))
#: An answer that rests on numbers holds a setting: f-number, time or focal length.
_SETTING: Final = re.compile(r"\bf/\d|\d s\b|\d mm\b")
#: These hold settings as examples of what to type, or say again what is known.
_EXAMPLES: Final = frozenset({"help", "kit", "ask", "caution", "where", "unread", "not_understood"})
#: One screen of a phone (own rule).
MOST_LINES: Final = 5


class Curious(Player):
    """Asks `why` after each message, beside the conversation, which goes on as if not."""

    def __init__(self) -> None:
        super().__init__()
        self.answers: list[tuple[tuple[str, ...], list[Say]]] = []

    def take(self, event: Event) -> list[Say]:
        """Answer, and keep what `why` would say of it."""
        said = super().take(event)
        keys = tuple(key for one in said for key in one.keys)
        numbers = any(_SETTING.search(one.body) for one in said)
        if self.context is not None and numbers and not _are_examples(keys):
            asked = TextReceived(origin=self.origin(), text="why")
            _, actions = handle(self.context, asked, self.now)
            self.answers.append((keys, [one for one in actions if isinstance(one, Say)]))
        return said


def _are_examples(keys: tuple[str, ...]) -> bool:
    if "ask.out_there" in keys:  # nobody is told more of a place that is closed
        return True
    return all(key.split(".")[0] in _EXAMPLES for key in keys)


@pytest.mark.parametrize("path", TRANSCRIPTS, ids=lambda path: path.stem)
def test_why_at_every_step(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Whatever number was given, there is a reason for it, in five lines at most."""
    curious = Curious()
    monkeypatch.setattr("tests.dialogue.player.Player", lambda: curious)
    play(path.read_text(encoding="utf-8").splitlines())
    assert curious.answers
    for keys, said in curious.answers:
        told = tuple(key for one in said for key in one.keys)
        assert "why.nothing" not in told, keys
        assert any(key.startswith(("why.", "asked.")) for key in told), (keys, told)
        lines = [line for one in said for line in one.body.splitlines()]
        assert len(lines) <= MOST_LINES + 1, keys  # and the question that stands open
