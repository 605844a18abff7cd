"""What must hold after a torture, each breach as one line of words."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path

from bot.store.rows import ConversationKey
from tests.torture.oracle import Answer, Known, Oracle, answers_of
from tests.torture.people import Sent
from tests.torture.record import Heard, Row, Rows, waiting_events


def messages_and_rows(rows: Rows, heard: Sequence[Heard]) -> Iterator[str]:
    """Each message of the bot stands in its room once, and each row was sent once."""
    times = Counter(message.row_id for message in heard)
    known = {row.row_id: row for row in rows.outbox}
    for message in heard:
        if message.row_id not in known:
            yield f"no row for {message.event_id}: {message.body!r}"
    for row_id, number in times.items():
        if number > 1:
            yield f"row {row_id} stands {number} times in its room"
    for row in rows.outbox:
        if row.row_id not in times:
            yield f"row {row.row_id} of {row.key} was never sent"


def order_in_rooms(rows: Rows, heard: Sequence[Heard]) -> Iterator[str]:
    """In each conversation, and of the urgent and the others each, the rows' order holds."""
    known = {row.row_id: row for row in rows.outbox}
    lanes: defaultdict[tuple[ConversationKey, bool], list[Row]] = defaultdict(list)
    for message in heard:
        if row := known.get(message.row_id):
            lanes[row.key, row.urgent].append(row)
    for (key, _), lane in lanes.items():
        positions = [row.position for row in lane]
        if positions != sorted(positions):
            yield f"out of order in {key}: rows {positions}"


def threads(rows: Rows, heard: Sequence[Heard]) -> Iterator[str]:
    """In a group, what is said to a person stands in the thread of the conversation."""
    known = {row.row_id: row for row in rows.outbox}
    for message in heard:
        row = known.get(message.row_id)
        if row is not None and row.key.thread_key and message.thread_id != row.key.thread_key:
            yield f"{message.event_id} stands in {message.thread_id}, not in {row.key.thread_key}"


def work_left(rows: Rows, data_dir: Path, scratch: Path) -> Iterator[str]:
    """No row and no file of work is left."""
    for table, number in rows.work.items():
        if number:
            yield f"{number} rows of work left in {table}"
    files = {path.name for path in (data_dir / "pictures").iterdir()}
    for name in files ^ rows.pictures:
        yield f"picture {name} has a file or a row, but not both"
    if number := waiting_events(data_dir / "matrix_waiting.json"):
        yield f"{number} events still wait for a key"
    # A killed process cannot take away its socket; it holds nothing.
    for path in scratch.rglob("*"):
        if path.is_file():
            yield f"left in the folder for temporary files: {path.name}"


def taken_in(rows: Rows, sent: Sequence[Sent]) -> Iterator[str]:
    """Everything that was meant for the bot was taken in."""
    for message in sent:
        if message.addressed and message.event_id not in rows.taken_at:
            yield f"never taken in: {message.event_id} ({message.text!r}) in {message.room_id}"


def said_by_dialogue(
    person_id: str, known: Known, sent: Sequence[Sent], said: Sequence[tuple[Row, Heard]]
) -> Iterator[str]:
    """Each message and each frame got the one answer that the pure dialogue gives."""
    answers = answers_of(said)
    best = Oracle(known, sent, answers).explain()
    if best.found is None:
        yield from _unexplained(person_id, answers, best.explained, best.expected)
        return
    for message in sent:
        if message.frame is not None and message.event_id not in best.found.measured:
            yield f"frame {message.frame} of {person_id} ({message.event_id}) got no result"


def _unexplained(
    person_id: str, answers: Sequence[Answer], explained: int, expected: Sequence[tuple[str, ...]]
) -> Iterator[str]:
    yield f"{person_id}: only {explained} of {len(answers)} answers are what the dialogue says"
    if explained < len(answers):
        answer = answers[explained]
        yield f"  then was heard in {answer.key}: {[heard.body for _, heard in answer.said]}"
    for says in dict.fromkeys(expected):
        yield f"  could have been: {list(says)}"


def by_person(rows: Rows, heard: Sequence[Heard]) -> Mapping[str, list[tuple[Row, Heard]]]:
    """What was said to each person, in the order of the rows."""
    messages = {message.row_id: message for message in heard}
    said: defaultdict[str, list[tuple[Row, Heard]]] = defaultdict(list)
    for row in rows.outbox:
        if row.row_id in messages:
            said[row.key.person_id].append((row, messages[row.row_id]))
    return said
