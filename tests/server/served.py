"""The bot as operators run it: `linn serve` in a process of its own, to be killed at will."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path
from typing import Final

from bot.matrix.session import Account

#: How long a start or a stop may take before the test gives up [s].
GRACE_S: Final = 20.0


class ServedBot:
    """One bot whose process comes and goes while its data folder stays.

    Args:
        account: the bot's account; its folder is the data folder.
        allowed: who is answered.
        program: what the interpreter is given to run.
        settings: more of them, by the names of their variables.
    """

    def __init__(
        self,
        account: Account,
        allowed: str,
        *,
        program: tuple[str, ...] = ("-m", "bot", "serve"),
        **settings: str,
    ) -> None:
        self.account = account
        self._program = program
        self._environment = {
            **{name: value for name, value in os.environ.items() if not name.startswith("LINN_")},
            "LINN_HOMESERVER": account.homeserver,
            "LINN_USER": account.user_id,
            "LINN_PASSWORD": account.password or "",
            "LINN_DATA_DIR": str(account.data_dir),
            "LINN_ALLOWED": allowed,
            **settings,
        }
        self._process: subprocess.Popen[bytes] | None = None

    @property
    def log_path(self) -> Path:
        """Where the bot's log goes; starts are appended."""
        return self.account.data_dir / "log"

    def start(self) -> None:
        """Start the process; it answers as soon as it is up."""
        with self.log_path.open("ab") as log:
            self._process = subprocess.Popen(
                [sys.executable, *self._program],
                env=self._environment,
                stderr=log,
                stdout=log,
                start_new_session=True,
            )

    def does(self, *words: str) -> subprocess.CompletedProcess[str]:
        """Another command of the same program with the same settings, to its end."""
        return subprocess.run(
            [sys.executable, "-m", "bot", *words],
            env=self._environment,
            check=False,
            capture_output=True,
            text=True,
            timeout=GRACE_S,
        )

    def kill(self) -> None:
        """SIGKILL for the process and all its children: no time to finish anything."""
        if self._process is not None:
            os.killpg(self._process.pid, signal.SIGKILL)
            self._process.wait(GRACE_S)
            self._process = None

    def stop(self) -> int:
        """SIGTERM; returns the exit code."""
        if self._process is None:
            return 0
        self._process.terminate()
        code = self._process.wait(GRACE_S)
        self._process = None
        return code
