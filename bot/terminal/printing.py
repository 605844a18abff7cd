"""How messages stand in the terminal: a blank line between two, none inside one."""

from __future__ import annotations

import tempfile
from pathlib import Path
from typing import TextIO


class Printer:
    """Prints messages and saves the pictures that come with them.

    Args:
        out: where messages are printed.
        pictures: folder of the saved pictures; None makes one when the first picture comes.
        bot_mark: put before each line of the bot.
        person_mark: put before each line of the person.
    """

    def __init__(
        self,
        out: TextIO,
        pictures: Path | None = None,
        *,
        bot_mark: str = "",
        person_mark: str = "> ",
    ) -> None:
        self._out = out
        self._pictures = pictures
        self._bot_mark = bot_mark
        self._person_mark = person_mark
        self._empty = True

    @property
    def pictures(self) -> Path | None:
        """The folder of the saved pictures, None as long as there is none."""
        return self._pictures

    def bot(
        self, body: str, picture: tuple[str, bytes] | None = None, *, kind: str = "picture"
    ) -> None:
        """Print a message of the bot; its picture or file is saved and named under the caption."""
        saved = [] if picture is None else [f"[{kind}: {self._save(*picture)}]"]
        self._print(self._bot_mark, [*body.splitlines(), *saved])

    def person(self, text: str) -> None:
        """Print what the person said."""
        self._print(self._person_mark, text.splitlines())

    def _print(self, mark: str, lines: list[str]) -> None:
        if not self._empty:
            print(file=self._out)
        self._empty = False
        shown = "\n".join(mark + line for line in lines if line.strip())
        print(shown, file=self._out, flush=True)

    def _save(self, name: str, data: bytes) -> Path:
        if self._pictures is None:
            self._pictures = Path(tempfile.mkdtemp(prefix="linn-pictures-"))
        self._pictures.mkdir(parents=True, exist_ok=True)
        number = sum(1 for _ in self._pictures.iterdir()) + 1
        # The name came in a message: only its last part may become a path.
        path = self._pictures / f"{number:02}-{Path(name).name or 'picture'}"
        path.write_bytes(data)
        return path.resolve()
