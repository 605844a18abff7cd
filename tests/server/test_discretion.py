"""What people send stays out of the log, and never reaches anybody else: on a real homeserver."""

from __future__ import annotations

import io
import json
from collections.abc import AsyncIterator
from pathlib import Path
from typing import Final

import pytest
from PIL import Image

from tests.server.homeserver import Town
from tests.server.person import Content, Person
from tests.server.served import ServedBot

pytestmark = pytest.mark.server

#: What a person sends: words, lens, caption, file name, place, and what breaks the bot.
ADAS: Final = {
    "words": "otterholt",
    "lens": "17-28",
    "caption": "merganser",
    "file": "dipper-nest",
    "latitude": "44.1512",
    "longitude": "71.3498",
    "broken": "sandpiper",
    "malformed": "goosander",
    "said to all": "wagtailbeck",
}
BOS: Final = {
    "words": "reedmace",
    "lens": "21-33",
    "caption": "gallinule",
    "file": "heron-roost",
    "latitude": "47.8123",
    "longitude": "13.0456",
    "broken": "sandpiper by the reeds",
    "malformed": "goosander by the reeds",
    "said to all": "moorhenbeck",
}

#: `linn serve`, with a dialogue that breaks on a word and quotes it.
_BREAKING: Final = """
import bot.app as app
whole = app.handle
def handle(context, event, now):
    if "sandpiper" in getattr(event, "text", ""):
        raise ValueError(event.text)
    return whole(context, event, now)
app.handle = handle
raise SystemExit(app.serve())
"""


def _picture() -> bytes:
    file = io.BytesIO()
    Image.effect_noise((600, 400), 60).convert("RGB").save(file, "PNG")
    return file.getvalue()


async def _answered(person: Person, bot_id: str, room_id: str, body_part: str) -> None:
    """Wait until the bot has said this in the room."""
    await person.waits(
        lambda: any(body_part in str(c.get("body")) for c in _from(person, bot_id, room_id))
    )


def _from(person: Person, bot_id: str, room_id: str | None = None) -> list[Content]:
    """Contents of all messages of the bot that this person has received."""
    return [
        event.source["content"]
        for where, event in person.heard
        if event.sender == bot_id and room_id in {None, where}
    ]


async def _tell(person: Person, room_id: str, told: dict[str, str]) -> None:
    """All that a person may tell the bot, good and bad, in the direct room."""
    await person.say(room_id, f"full frame, {told['lens']}, {told['words']}")
    await person.say(room_id, f"{told['words']} f/11 1/4 s iso 100")
    await person.share_place(room_id, f"geo:{told['latitude']},-{told['longitude']}")
    await person.share_picture(room_id, _picture(), "image/png", told["caption"])
    await person.share_picture(room_id, b"no picture", "image/png", told["caption"])
    name = f"{told['file']}.jpg"
    await person.send(
        room_id,
        {"msgtype": "m.file", "body": name, "filename": name, "url": "mxc://localhost/none"},
    )
    await person.say(room_id, told["broken"])
    unformed = {"format": "org.matrix.custom.html", "formatted_body": [told["malformed"]]}
    await person.say(room_id, "thanks", **unformed)
    await person.say(room_id, "my data")


async def _talk_to_all(
    person: Person, bot_id: str, room_id: str, told: dict[str, str], other: Person
) -> None:
    """In the group room: aside, addressed, and in the thread that the answer starts."""
    await person.say(room_id, f"{told['said to all']} is lovely today")
    call = {"m.mentions": {"user_ids": [bot_id]}}
    root = await person.say(room_id, "kit", **call)
    await other.waits(lambda: _in_thread(other, bot_id, root) >= 1)
    await person.say_in_thread(room_id, root, "where am i")
    await person.say_in_thread(room_id, root, "3 km walk out, 150 m climb")
    await person.say_in_thread(room_id, root, "my data")
    await other.waits(lambda: _in_thread(other, bot_id, root) >= 4)


def _in_thread(person: Person, bot_id: str, root: str) -> int:
    relations = (c.get("m.relates_to", {}) for c in _from(person, bot_id))
    return sum(relation.get("event_id") == root for relation in relations)


async def _everything(person: Person, bot_id: str) -> str:
    """All that the bot has sent to where this person reads: contents and files."""
    contents = _from(person, bot_id)
    files = [
        await person.fetch(c.get("url"), c.get("file"))
        for c in contents
        if c.get("url") or c.get("file")
    ]
    return json.dumps(contents, ensure_ascii=False) + b"".join(files).decode("latin-1")


@pytest.fixture
async def people(town: Town) -> AsyncIterator[tuple[Person, Person]]:
    """Two people with clients of their own."""
    async with Person(town.account("ada")) as ada, Person(town.account("bo")) as bo:
        yield ada, bo


async def test_nothing_of_one_person_reaches_another_or_the_log(
    town: Town, people: tuple[Person, Person]
) -> None:
    """Two direct rooms, a group room, all kinds of failures, DEBUG: each marker stays where it is.

    A message that breaks the dialogue, a file that is gone, one that is no picture and an event
    that is not formed as it should be are among them.
    """
    ada, bo = people
    account = town.account("bot")
    bot_id = account.user_id
    served = ServedBot(
        account,
        f"{ada.user_id},{bo.user_id}",
        program=("-c", _BREAKING),
        LINN_LOG_LEVEL="DEBUG",
    )
    served.start()
    try:
        adas = await ada.direct_room(bot_id, encrypted=True)
        bos = await bo.direct_room(bot_id, encrypted=False)
        group = await ada.direct_room(bot_id, bo.user_id, encrypted=True)
        await bo.joins(group)
        for person, room_id in ((ada, adas), (bo, bos), (ada, group), (bo, group)):
            await person.meets(room_id, bot_id)
        for person, room_id, told in ((ada, adas, ADAS), (bo, bos, BOS)):
            await _tell(person, room_id, told)
            await _answered(person, bot_id, room_id, "linn-my-data.json")
            await person.waits(
                lambda person=person, room_id=room_id: any(  # type: ignore[misc]
                    c.get("filename") == "linn-my-data.json" for c in _from(person, bot_id, room_id)
                )
            )
        await _talk_to_all(ada, bot_id, group, ADAS, bo)
        await _talk_to_all(bo, bot_id, group, BOS, ada)
        _check(await _everything(bo, bot_id), BOS, ADAS)
        _check(await _everything(ada, bot_id), ADAS, BOS)
    finally:
        served.stop()
    _check_log(served.log_path)


def _check(received: str, own: dict[str, str], others: dict[str, str]) -> None:
    """The person's own data came; of the other person's there is nothing."""
    assert own["latitude"] in received, "the own data came as a file"
    for kind, marker in others.items():
        assert marker not in received or marker in own[kind], kind


def _check_log(path: Path) -> None:
    log = path.read_text("utf-8")
    assert log.count("reference") == 2, "the dialogue broke once for each"
    for told in (ADAS, BOS):
        for kind, marker in told.items():
            assert marker not in log, kind
