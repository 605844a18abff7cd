"""`linn keys` where no homeserver is needed: what is asked, refused and said."""

from __future__ import annotations

import io
import os
from collections.abc import Callable
from pathlib import Path

import pytest

from bot.__main__ import main
from bot.exits import MEANINGS, Exit
from bot.matrix import identity_export
from bot.matrix.identity import Identity, own_master_key
from bot.matrix.private_file import write_private

USER = "@linn:example.org"
PASSPHRASE = "gravel bar and alder"

Run = Callable[..., tuple[int, str]]


class Terminal(io.StringIO):
    """An input that somebody types into."""

    def isatty(self) -> bool:
        """Somebody is there."""
        return True


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A data folder that the settings name, with an identity in it."""
    for name in [name for name in os.environ if name.startswith("LINN_")]:
        monkeypatch.delenv(name)
    monkeypatch.setenv("LINN_HOMESERVER", "http://127.0.0.1:9")
    monkeypatch.setenv("LINN_USER", USER)
    monkeypatch.setenv("LINN_PASSWORD", "quartz")
    monkeypatch.setenv("LINN_DATA_DIR", str(tmp_path))
    monkeypatch.setattr(identity_export, "_WORK", 2**4)
    monkeypatch.setattr("sys.stdin", io.StringIO())
    Identity.generate(USER).save(tmp_path / "matrix_identity.json")
    return tmp_path


@pytest.fixture
def run(folder: Path, capsys: pytest.CaptureFixture[str]) -> Run:
    """The command; returns its exit code and all that it printed."""
    del folder

    def keys(*words: object) -> tuple[int, str]:
        code = main(["keys", *map(str, words)])
        printed = capsys.readouterr()
        return code, printed.out + printed.err

    return keys


def _types(monkeypatch: pytest.MonkeyPatch, *lines: str) -> None:
    """Somebody types these, unseen or seen."""
    waiting = list(lines)
    monkeypatch.setattr("sys.stdin", Terminal("\n".join(lines)))
    monkeypatch.setattr("getpass.getpass", lambda _: waiting.pop(0))


def test_every_exit_code_is_told() -> None:
    """`linn --help` lists them all."""
    assert set(MEANINGS) == set(Exit)


def test_an_unused_folder_is_told(run: Run) -> None:
    """Nothing to be afraid of: the first start makes the keys."""
    code, said = run()
    assert code == Exit.NO_DEVICE
    assert "linn serve" in said


def test_a_folder_that_cannot_be_is_a_sentence(
    run: Run, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A slip in LINN_DATA_DIR shows no traceback when an identity is to be kept there."""
    (folder / "passphrase").write_text(PASSPHRASE)
    code, _ = run("export", folder / "export", "--passphrase-file", folder / "passphrase")
    assert code == Exit.DONE
    monkeypatch.setenv("LINN_DATA_DIR", str(folder / "passphrase" / "below"))
    code, said = run("import", folder / "export", "--passphrase-file", folder / "passphrase")
    assert code == Exit.FAILED
    assert said.endswith("below/matrix_identity.json: Not a directory.\n")


def test_a_passphrase_is_typed_twice(
    run: Run, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A slip would make the export worthless."""
    export = folder / "export"
    _types(monkeypatch, PASSPHRASE, "gravel bar and elder")
    assert run("export", export)[0] == Exit.NOT_CONFIRMED
    _types(monkeypatch, "short", "short")
    code, said = run("export", export)
    assert (code, "12 characters" in said) == (Exit.NOT_CONFIRMED, True)
    assert not export.exists()
    _types(monkeypatch, PASSPHRASE, PASSPHRASE)
    assert run("export", export)[0] == Exit.DONE
    _types(monkeypatch, PASSPHRASE, PASSPHRASE)
    code, said = run("export", export)
    assert (code, "there already" in said) == (Exit.NOT_CONFIRMED, True)


def test_a_passphrase_comes_from_the_standard_input(
    run: Run, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Its first line; a passphrase that nobody can type is asked for otherwise."""
    export = folder / "export"
    code, said = run("export", export)
    assert (code, "--passphrase-file" in said) == (Exit.USAGE, True)
    monkeypatch.setattr("sys.stdin", io.StringIO(f"{PASSPHRASE}\r\n"))
    assert run("export", export, "--passphrase-file", "-")[0] == Exit.DONE
    monkeypatch.setattr("sys.stdin", io.StringIO(PASSPHRASE))
    code, said = run("import", export, "--passphrase-file", "-")
    assert (code, "here already" in said) == (Exit.DONE, True)
    assert run("import", export, "--passphrase-file", folder / "none")[0] == Exit.USAGE


@pytest.fixture
def export(run: Run, folder: Path) -> Path:
    """An export, and a file with its passphrase."""
    (folder / "passphrase").write_text(PASSPHRASE)
    path = folder / "export"
    assert run("export", path, "--passphrase-file", folder / "passphrase")[0] == Exit.DONE
    return path


def test_another_identity_is_not_replaced_unless_told(run: Run, folder: Path, export: Path) -> None:
    """Only with the full user id; what was there is kept."""
    words = ("import", export, "--passphrase-file", folder / "passphrase")
    path = folder / "matrix_identity.json"
    exported = own_master_key(path, USER)
    Identity.generate(USER).save(path)
    kept = own_master_key(path, USER)
    code, said = run(*words)
    assert (code, f"--yes-replace {USER}" in said) == (Exit.OTHER_IDENTITY, True)
    assert run(*words, "--yes-replace", "@other:example.org")[0] == Exit.OTHER_IDENTITY
    assert own_master_key(path, USER) == kept
    assert run(*words, "--yes-replace", USER)[0] == Exit.DONE
    assert own_master_key(path, USER) == exported
    assert own_master_key(folder / "matrix_identity.before.json", USER) == kept


def test_a_damaged_file_gives_way_to_an_export(run: Run, folder: Path, export: Path) -> None:
    """There is nothing in it to lose."""
    (folder / "matrix_identity.json").write_text("{")
    code, _ = run("import", export, "--passphrase-file", folder / "passphrase")
    assert code == Exit.DONE
    assert own_master_key(folder / "matrix_identity.json", USER) is not None


def test_what_cannot_be_imported_is_told(
    run: Run, folder: Path, export: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Wrong passphrase, damaged file, no file, the export of another account."""
    right, wrong = folder / "passphrase", folder / "wrong"
    wrong.write_text("something else")
    torn = folder / "torn"
    torn.write_bytes(export.read_bytes()[:-20])
    cases = [(export, wrong), (torn, right), (folder / "none", right)]
    codes = [run("import", file, "--passphrase-file", source)[0] for file, source in cases]
    assert codes == [Exit.WRONG_PASSPHRASE, Exit.EXPORT_DAMAGED, Exit.EXPORT_DAMAGED]
    monkeypatch.setenv("LINN_USER", "@other:example.org")
    code, said = run("import", export, "--passphrase-file", right)
    assert (code, USER in said) == (Exit.OTHER_IDENTITY, True)


def test_what_cannot_be_exported_is_told(run: Run, folder: Path) -> None:
    """No place for it, no identity, a damaged one."""
    passphrase = folder / "passphrase"
    passphrase.write_text(PASSPHRASE)
    words = ("--passphrase-file", passphrase)
    assert run("export", folder / "no" / "where", *words)[0] == Exit.FAILED
    (folder / "matrix_identity.json").write_text("{")
    assert run("export", folder / "export", *words)[0] == Exit.IDENTITY_DAMAGED
    (folder / "matrix_identity.json").unlink()
    assert run("export", folder / "export", *words)[0] == Exit.IDENTITY_LOST


def test_a_reset_is_confirmed_by_the_full_user_id(
    run: Run, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Typed or given; anything else changes nothing. Without a device it cannot be done."""
    kept = (folder / "matrix_identity.json").read_text()
    _types(monkeypatch, "yes")
    assert run("reset")[0] == Exit.NOT_CONFIRMED
    assert run("reset", "--yes-replace", "linn")[0] == Exit.NOT_CONFIRMED
    _types(monkeypatch, USER)
    assert run("reset")[0] == Exit.NO_DEVICE
    assert (folder / "matrix_identity.json").read_text() == kept


def test_a_new_device_needs_a_way_to_sign_in(
    run: Run, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The password; a configured token has to be replaced where it was made."""
    assert run("new-device") == (Exit.DONE, "There is no login here; nothing was changed.\n")
    session = {"access_token": "t", "device_id": "D"}
    write_private(folder / "matrix_session.json", session)
    monkeypatch.delenv("LINN_PASSWORD")
    monkeypatch.setenv("LINN_ACCESS_TOKEN", "t")
    monkeypatch.setenv("LINN_DEVICE_ID", "D")
    code, said = run("new-device")
    assert (code, "LINN_PASSWORD" in said) == (Exit.CONFIG, True)
    (folder / "matrix_session.json").unlink()
    code, said = run("new-device")
    assert (code, "LINN_ACCESS_TOKEN" in said) == (Exit.CONFIG, True)


def test_damaged_logins_and_settings_are_told(
    run: Run, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """With the command that helps."""
    (folder / "matrix_session.json").write_text("{")
    code, said = run()
    assert (code, "linn keys new-device" in said) == (Exit.CONFIG, True)
    monkeypatch.setenv("LINN_USER", "linn")
    assert run()[0] == Exit.CONFIG
