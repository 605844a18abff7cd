"""A bot's data folder with something in it, on a file and on a server."""

from __future__ import annotations

from collections.abc import AsyncIterator
from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path

import pytest

from bot.matrix.private_file import write_private
from bot.store.database import Database
from bot.store.pictures import PictureFiles
from bot.store.rows import JobKind, Part, PictureRow, Result, TakeBack
from bot.store.store import Store
from tests.store.conftest import postgres_url, sqlite_url, url
from tests.store.examples import KEY, NOW, PERSON, job, message, row_of, text, timer

__all__ = ["postgres_url", "sqlite_url", "url"]

USER = "@linn:mill.example"
KIT = '{"kit": "full frame, 24-105 – Ü"}'
PICTURE = b"\x89PNG\r\n\x1a\n of a leaf"


@dataclass(frozen=True)
class House:
    """A bot's data folder and database, with a person's kit, a picture and work that waits."""

    store: Store
    database: str
    data_dir: Path
    picture: str


@pytest.fixture
async def house(url: str, tmp_path: Path) -> AsyncIterator[House]:
    """A bot that is running: its database is open."""
    folder = tmp_path / "data"
    store = Store(Database(url))
    await store.open()
    picture = PictureFiles(folder / "pictures").write(PICTURE)
    write_private(folder / "matrix_identity.json", {"user_id": USER, "master": "secret"})
    await _fill(store, picture)
    yield House(store, url, folder, picture)
    await store.close()


async def _fill(store: Store, picture: str) -> None:
    """One of everything: sent and waiting, due and not, kept and to be taken back."""
    drawn = job(JobKind.DRAW_CARD)
    back = job(JobKind.TAKE_BACK, input=TakeBack(pictures=("old.png",)).model_dump_json())
    soon, late = timer("soon"), timer("late")
    object.__setattr__(soon, "due", NOW + timedelta(days=40_000))
    object.__setattr__(late, "due", NOW - timedelta(days=4_000))
    result = Result(
        row_of(await store.take_in([text("f/11")], "token", NOW)),
        {},
        {Part.PERSON: KIT},
        messages=(message("sent", urgent=True, question="flow"), message("waits")),
        jobs=(drawn, back, job()),
        timers=(soon, late),
    )
    written = await store.finish_event(result)
    await store.message_sent(written.messages[0], "$sent")
    kept = PictureRow(picture, PERSON, NOW + timedelta(days=900))
    await store.finish_job(drawn, NOW, pictures=(kept,))
    await store.take_in([text("waits")], None, NOW)
    assert await store.question_of(KEY, "$sent") == "flow"
