"""`linn backup` and `linn restore` as an operator types them."""

from __future__ import annotations

import asyncio
from pathlib import Path

import pytest

from bot.__main__ import main
from bot.exits import Exit
from bot.store.database import Database
from bot.store.store import Store
from tests.backup.conftest import USER
from tests.postgres import PostgresServer
from tests.store.examples import NOW


@pytest.fixture(autouse=True)
def data_dir(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The settings of a bot whose data folder is not there yet."""
    values = {"HOMESERVER": "http://mill.example", "USER": USER, "PASSWORD": "quartz"}
    for name, value in (values | {"DATA_DIR": str(tmp_path / "data")}).items():
        monkeypatch.setenv(f"LINN_{name}", value)
    return tmp_path / "data"


async def _run(data_dir: Path, change: str = "") -> None:
    database = Database(f"sqlite:///{data_dir / 'linn.db'}")
    store = Store(database)
    await store.open()
    await store.take_in([], "token", NOW)
    if change:
        await database.write(lambda connection: connection.exec_driver_sql(change).close())
    await store.close()


def test_there_and_back(
    data_dir: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    """Each says in a sentence what it did and what is to be known."""
    asyncio.run(_run(data_dir))
    archive = tmp_path / "backup"
    assert main(["backup", str(archive)]) == Exit.DONE
    assert "keep it where only you can read it" in capsys.readouterr().out
    monkeypatch.setenv("LINN_DATA_DIR", str(tmp_path / "new"))
    assert main(["restore", str(archive), "--answer-old"]) == Exit.DONE
    assert "as a new device" in capsys.readouterr().out
    assert main(["restore", str(archive)]) == Exit.CANNOT_CREATE
    assert "is not empty" in capsys.readouterr().err


def test_what_can_not_be_done_is_said(
    data_dir: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """One sentence and an exit code of its own, and nothing is left behind."""
    (tmp_path / "rubbish").write_text("rubbish")
    for words, code, sentence in (
        (["backup", str(tmp_path / "a")], Exit.CANNOT_CREATE, "the bot has never run"),
        (["restore", str(tmp_path / "none")], Exit.FAILED, "No such file"),
        (["restore", str(tmp_path / "rubbish")], Exit.ARCHIVE_DAMAGED, "no backup of Linn"),
    ):
        assert main(words) == code
        assert sentence in capsys.readouterr().err
    assert not data_dir.exists() or list(data_dir.iterdir()) == []
    data_dir.mkdir(exist_ok=True)
    (data_dir / "linn.db").write_text("rubbish" * 1000)
    assert main(["backup", str(tmp_path / "a")]) == Exit.FAILED
    assert "The database failed" in capsys.readouterr().err
    assert sorted(found.name for found in tmp_path.iterdir()) == ["data", "rubbish"]


def test_a_database_server_that_refuses_is_a_sentence(
    data_dir: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    postgres: PostgresServer,
) -> None:
    """A wrong name in the settings shows no traceback."""
    del data_dir
    monkeypatch.setenv("LINN_DATABASE_URL", postgres._address("nowhere"))
    assert main(["backup", str(tmp_path / "a")]) == Exit.FAILED
    assert "refuses the bot (InvalidCatalogNameError)" in capsys.readouterr().err


def test_a_newer_version_is_named(
    data_dir: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    """The archive's schema is unknown here."""
    asyncio.run(_run(data_dir, "UPDATE alembic_version SET version_num = '9999'"))
    assert main(["backup", str(tmp_path / "a")]) == Exit.DONE
    monkeypatch.setenv("LINN_DATA_DIR", str(tmp_path / "new"))
    assert main(["restore", str(tmp_path / "a")]) == Exit.SCHEMA_NEWER
    assert "run the newer version again" in capsys.readouterr().err


def test_settings_come_first(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Without them nobody knows which bot is meant."""
    monkeypatch.delenv("LINN_USER")
    assert main(["backup", str(tmp_path / "a")]) == Exit.CONFIG
    assert "LINN_USER is missing" in capsys.readouterr().err
