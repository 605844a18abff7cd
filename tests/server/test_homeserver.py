"""The homeserver that the tests and the trial start themselves."""

from __future__ import annotations

import stat
import subprocess
import sys
from pathlib import Path

import pytest

from bot.trial.homeserver import Homeserver, HomeserverError
from tests.server.homeserver import PASSWORD, Town

pytestmark = pytest.mark.server


def test_an_account_is_made_once(town: Town) -> None:
    """The same name again gives the same id; a name that the server refuses is an error."""
    assert town.server.register("twice", PASSWORD) == "@twice:localhost"
    assert town.server.register("twice", PASSWORD) == "@twice:localhost"
    with pytest.raises(HomeserverError, match="No account"):
        town.server.register("No Such Name", PASSWORD)


def test_its_secrets_are_for_the_owner_alone(town: Town) -> None:
    """Configuration and shared secret have mode 0600."""
    for name in ("homeserver.yaml", "registration_secret"):
        assert stat.S_IMODE((town.server.folder / name).stat().st_mode) == 0o600


def test_a_server_that_does_not_come_up_is_ended(tmp_path: Path) -> None:
    """The error names the log, and no process is left behind; to stop again does nothing."""
    server = Homeserver(tmp_path / "late")
    with pytest.raises(HomeserverError, match=r"homeserver\.log"):
        server.start(within_s=0)
    server.stop()
    assert server._process is None


def test_a_process_that_does_not_end_is_ended_by_force(tmp_path: Path) -> None:
    """After the grace it is killed."""
    server = Homeserver(tmp_path)
    deaf = "import signal, time; signal.signal(signal.SIGTERM, signal.SIG_IGN); time.sleep(60)"
    process = subprocess.Popen([sys.executable, "-c", deaf])
    server._process = process
    server.stop(grace_s=0)
    assert process.returncode is not None
