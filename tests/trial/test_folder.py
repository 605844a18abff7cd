"""The folder of a trial."""

from __future__ import annotations

import socket
from pathlib import Path

import pytest

from bot.trial.folder import FolderInUseError, kept, trial_folder
from bot.trial.homeserver import LOOPBACK


def test_a_second_trial_finds_what_the_first_left(tmp_path: Path) -> None:
    """Passwords and port stay, so that a client that was signed in still fits."""
    with trial_folder(tmp_path / "trial", fresh=False) as folder:
        first = kept(folder)
        (folder / "homeserver").mkdir()
    with trial_folder(tmp_path / "trial", fresh=False) as folder:
        assert kept(folder) == first
        assert (folder / "homeserver").is_dir()


def test_fresh_forgets_everything(tmp_path: Path) -> None:
    """With `fresh` nothing of the earlier trials is left, and what is not theirs stays."""
    with trial_folder(tmp_path, fresh=False) as folder:
        first = kept(folder)
        (folder / "homeserver").mkdir()
        (folder / "holiday.jpg").touch()
    with trial_folder(tmp_path, fresh=True) as folder:
        assert {path.name for path in folder.iterdir()} == {"lock", "holiday.jpg"}
        assert kept(folder).person_password != first.person_password


def test_one_trial_at_a_time(tmp_path: Path) -> None:
    """Two homeservers on one database would destroy it: the second trial is refused."""
    with (
        trial_folder(tmp_path, fresh=False),
        pytest.raises(FolderInUseError, match="Another trial"),
        trial_folder(tmp_path, fresh=True),
    ):
        pass
    with trial_folder(tmp_path, fresh=False) as folder:
        assert folder.is_dir()


def test_a_taken_port_is_replaced(tmp_path: Path) -> None:
    """When somebody else listens on the port by now, another is taken, and all else stays."""
    first = kept(tmp_path)
    with socket.socket() as other:
        other.bind((LOOPBACK, first.port))
        other.listen()
        second = kept(tmp_path)
    assert second.port != first.port
    assert second.person_password == first.person_password


def test_secrets_are_for_the_owner_alone(tmp_path: Path) -> None:
    """The file with the passwords cannot be read by others."""
    kept(tmp_path)
    assert (tmp_path / "trial.json").stat().st_mode & 0o077 == 0
