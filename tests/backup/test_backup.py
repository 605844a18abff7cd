"""A backup of a bot that runs, and what comes back of it."""

from __future__ import annotations

import json
import stat
import tarfile
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot.backup.archive import writing
from bot.backup.errors import ArchiveError, BackupError
from bot.backup.making import make_backup
from bot.backup.marker import not_before
from bot.backup.restoring import restore_backup
from bot.store.database import Database, SchemaNewerError, migrate
from bot.store.pictures import PictureFiles
from bot.store.rows import Part, Result, StoredText
from bot.store.store import Store
from tests.backup.conftest import KIT, PICTURE, USER, House
from tests.postgres import PostgresServer
from tests.store.examples import KEY, NOW, message, row_of, text


async def saved(house: House, tmp_path: Path, name: str = "backup") -> Path:
    """A backup of the house."""
    path = tmp_path / name
    await make_backup(path, database=house.database, data_dir=house.data_dir, user_id=USER)
    return path


def names(folder: Path) -> list[str]:
    """What is in a folder."""
    return sorted(found.name for found in folder.iterdir())


def elsewhere(tmp_path: Path) -> tuple[Path, str]:
    """A data folder that is not there yet, and the usual database in it."""
    folder = tmp_path / "new"
    return folder, f"sqlite:///{folder / 'linn.db'}"


async def restored(path: Path, folder: Path, database: str, *, answer_old: bool = False) -> Store:
    """A store on what was brought back."""
    await restore_backup(
        path, database=database, data_dir=folder, user_id=USER, answer_old=answer_old
    )
    store = Store(Database(database))
    await store.open()
    return store


async def test_an_archive_is_for_its_owner_alone_and_holds_no_key_store(
    house: House, tmp_path: Path
) -> None:
    """Database, identity, the picture and the list of them; nothing else is left beside it."""
    (house.data_dir / "matrix_keys").mkdir()
    (house.data_dir / "matrix_keys" / "olm.db").write_text("ratchets")
    path = await saved(house, tmp_path)
    assert stat.S_IMODE(path.stat().st_mode) == 0o600
    with tarfile.open(path) as tar:
        assert tar.getnames() == [
            "linn.db",
            "matrix_identity.json",
            f"pictures/{house.picture}",
            "manifest.json",
        ]
    assert names(tmp_path) == ["backup", "data"]


@pytest.mark.parametrize("target", ["sqlite", "postgres"])
async def test_each_kind_of_database_comes_back_into_either(
    house: House, tmp_path: Path, target: str, postgres: PostgresServer
) -> None:
    """Kit, sent message, picture and identity are there; the new rows get numbers of their own."""
    path = await saved(house, tmp_path)
    folder, file = elsewhere(tmp_path)
    async with postgres.database() as server:
        store = await restored(path, folder, file if target == "sqlite" else server)
        assert (await store.read_context(KEY))[Part.PERSON] == StoredText(KIT, 1)
        assert await store.sync_token() == "token"
        assert await store.question_of(KEY, "$sent") == "flow"
        assert PictureFiles(folder / "pictures").read(house.picture) == PICTURE
        assert await store.picture_names() == (house.picture,)
        row = row_of(await store.take_in([text("new")], None, NOW))
        more = await store.finish_event(
            Result(row, {Part.PERSON: 1}, {}, messages=(message("new"),))
        )
        await store.message_sent(more.messages[0], "$new")
        assert await store.own_message(KEY.room_id, "$new") is not None
        await store.close()
    identity = json.loads((folder / "matrix_identity.json").read_text())
    assert identity == {"user_id": USER, "master": "secret"}
    assert not (folder / "matrix_session.json").exists()
    assert not [found for found in folder.iterdir() if found.name.startswith(".")]


async def test_what_waited_is_left_alone(house: House, tmp_path: Path) -> None:
    """The bot before may have answered it; taking back goes on, and so do reminders to come."""
    began = datetime.now(UTC)
    folder, file = elsewhere(tmp_path)
    store = await restored(await saved(house, tmp_path), folder, file)
    backlog = await store.backlog()
    await store.close()
    assert (backlog.inbox, backlog.messages) == ((), ())
    assert [job.kind.value for job in backlog.jobs] == ["take_back"]
    assert [timer.name for timer in backlog.timers] == ["soon"]
    mark = not_before(folder)
    assert mark is not None
    assert began <= mark <= datetime.now(UTC)


async def test_what_waited_is_answered_when_asked_for(house: House, tmp_path: Path) -> None:
    """All that waited at the backup goes on."""
    folder, file = elsewhere(tmp_path)
    store = await restored(await saved(house, tmp_path), folder, file, answer_old=True)
    backlog = await store.backlog()
    await store.close()
    counts = (backlog.inbox, backlog.messages, backlog.jobs, backlog.timers)
    assert [len(rows) for rows in counts] == [1, 1, 2, 2]
    assert not_before(folder) is None


async def test_the_bot_goes_on_while_it_is_saved(house: House, tmp_path: Path) -> None:
    """Writes between and after backups go through; each backup has the state of its moment."""
    first = await saved(house, tmp_path, "first")
    await house.store.take_in([], "later", NOW)
    second = await saved(house, tmp_path, "second")
    await house.store.take_in([], "latest", NOW)
    for path, token in ((first, "token"), (second, "later")):
        folder = tmp_path / f"{path.name}-new"
        store = await restored(path, folder, f"sqlite:///{folder / 'linn.db'}")
        assert await store.sync_token() == token
        await store.close()


async def test_a_picture_that_is_gone_meanwhile_is_left_out(house: House, tmp_path: Path) -> None:
    """A picture may be deleted between the copy of the database and its own."""
    PictureFiles(house.data_dir / "pictures").delete([house.picture])
    path = await saved(house, tmp_path)
    folder, file = elsewhere(tmp_path)
    done = await restore_backup(path, database=file, data_dir=folder, user_id=USER)
    assert done.pictures == 0


async def test_nothing_is_overwritten(house: House, tmp_path: Path) -> None:
    """Neither a file by a backup, nor a folder or a database by a restore."""
    path = await saved(house, tmp_path)
    before = path.read_bytes()
    with pytest.raises(BackupError, match="there already"):
        await saved(house, tmp_path)
    with pytest.raises(BackupError, match="no folder"):
        await saved(house, tmp_path, "nowhere/backup")
    assert path.read_bytes() == before
    folder, file = elsewhere(tmp_path)
    for at in (house.data_dir, path):
        with pytest.raises(BackupError, match=r"not empty|no folder"):
            await restore_backup(path, database=file, data_dir=at, user_id=USER)
    with pytest.raises(BackupError, match=r"database .*(already|not empty)"):
        await restore_backup(path, database=house.database, data_dir=folder, user_id=USER)
    assert (await house.store.read_context(KEY))[Part.PERSON] == StoredText(KIT, 1)


async def test_a_stopped_restore_can_be_made_again(house: House, tmp_path: Path) -> None:
    """What a killed restore left is cleared away; so is what a failed one leaves."""
    path = await saved(house, tmp_path)
    folder, file = elsewhere(tmp_path)
    (folder / ".restoring-abc").mkdir(parents=True)
    (folder / "lost+found").mkdir()
    with pytest.raises(BackupError, match="settings say @other"):
        await restore_backup(path, database=file, data_dir=folder, user_id="@other:mill.example")
    assert [found.name for found in folder.iterdir()] == ["lost+found"]
    await (await restored(path, folder, file)).close()


async def test_a_bot_that_never_ran_has_nothing_to_save(url: str, tmp_path: Path) -> None:
    """Said so, and no file is left."""
    with pytest.raises(BackupError, match="never run"):
        await make_backup(tmp_path / "backup", database=url, data_dir=tmp_path, user_id=USER)
    assert names(tmp_path) == []


async def test_a_backup_of_the_first_version_is_brought_to_the_newest(
    url: str, tmp_path: Path
) -> None:
    """A database at the first schema is saved as it is, and opened with the newest."""
    database = Database(url)
    (tmp_path / "data").mkdir()
    await database.write(lambda connection: migrate(connection, "0001"))
    await database.write(
        lambda connection: connection.exec_driver_sql(
            "INSERT INTO people (person_id, version, body) VALUES ('@fern:mill.example', 3, 'kit')"
        )
    )
    await database.close()
    path = tmp_path / "backup"
    await make_backup(path, database=url, data_dir=tmp_path / "data", user_id=USER)
    folder, file = elsewhere(tmp_path)
    store = await restored(path, folder, file)
    assert await store.read_context(KEY) == {Part.PERSON: StoredText("kit", 3)}
    await store.close()


async def test_a_backup_of_a_newer_version_is_refused(house: House, tmp_path: Path) -> None:
    """With both numbers; nothing is left in the folder."""
    database = Database(house.database)
    await database.write(
        lambda connection: connection.exec_driver_sql(
            "UPDATE alembic_version SET version_num = '9999'"
        )
    )
    await database.close()
    folder, file = elsewhere(tmp_path)
    with pytest.raises(SchemaNewerError, match="9999"):
        await restored(await saved(house, tmp_path), folder, file)
    assert not folder.exists() or list(folder.iterdir()) == []


async def test_a_database_that_is_none_is_refused(tmp_path: Path) -> None:
    """The list may fit, the database in the archive be rubbish all the same, or empty."""
    for number, content in enumerate((b"rubbish" * 1000, b"")):
        (tmp_path / "rubbish").write_bytes(content)
        path = tmp_path / f"archive-{number}"
        with writing(path) as archive:
            archive.add("linn.db", tmp_path / "rubbish")
            archive.finish(USER, NOW)
        folder, file = elsewhere(tmp_path)
        with pytest.raises(ArchiveError, match=r"damaged|no tables"):
            await restored(path, folder, file)
        assert list(folder.iterdir()) == []
