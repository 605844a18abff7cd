"""Files handed to processes of their own, and what comes back, trusted no more than the files."""

from __future__ import annotations

import logging
from collections.abc import Callable, Sequence
from contextlib import ExitStack
from dataclasses import dataclass, field, replace
from functools import partial
from multiprocessing.connection import Connection, Pipe
from typing import Final

from pydantic import ValidationError

from bot.runtime.child import DiedError, Family, Task
from bot.runtime.frame_child import answer_one
from bot.runtime.one_file import measure_file
from bot.runtime.orders import ANSWERS, MOST_PICTURES, ORDERS, Answer, Order
from bot.runtime.outcomes import Outcome, Picture, is_picture
from bot.runtime.together_child import FEWEST_TOGETHER, answer_together, read_one
from core.errors import FrameFault

_LOG: Final = logging.getLogger(__name__)

#: As much of a process's words as is logged [letters]. Own rule.
_LONGEST_TRACE: Final = 500


@dataclass(frozen=True)
class Tasks:
    """What the processes do; others only for tests."""

    one: Task = field(default=partial(answer_one, work=measure_file))
    read: Task = read_one
    together: Task = answer_together


#: What they do outside of tests; processes that are not forked find it here by name.
TASKS: Final = Tasks()

#: These are of several frames together, the others of one file.
_TOGETHER: Final = frozenset({"compare", "average"})


def measure(
    family: Family,
    files: Sequence[bytes],
    order: Order,
    tasks: Tasks,
    tell: Callable[[int], None],
) -> Outcome:
    """Do what was ordered with files of one person; arguments as of `measure_together`.

    Raises:
        NoProcessError: no process could be started.
    """
    if order.what in _TOGETHER:
        return measure_together(family, files, order, tasks, tell)
    return measure_one(family, files[0], order, tasks)


def measure_one(family: Family, data: bytes, order: Order, tasks: Tasks) -> Outcome:
    """Have one file measured.

    Raises:
        NoProcessError: no process could be started.
    """
    refused = _too_large(data, order)
    if refused is not None:
        return refused
    child = family.child(order.limits.time_s)
    try:
        child.start(tasks.one)
        return replace(child.ask(lambda connection: _asked(connection, order, data)), read=(0,))
    except DiedError as error:
        return Outcome(fault=error.fault)
    finally:
        child.put_away()


def _too_large(data: bytes, order: Order) -> Outcome | None:
    limit = order.limits.file_bytes
    if len(data) <= limit:
        return None
    numbers = {"bytes": float(len(data)), "limit": float(limit)}
    return Outcome(fault=FrameFault.TOO_MANY_BYTES, numbers=numbers)


def measure_together(
    family: Family,
    files: Sequence[bytes],
    order: Order,
    tasks: Tasks,
    tell: Callable[[int], None],
) -> Outcome:
    """Have several files read, each by its own process, and put together by one that reads none.

    Args:
        family: the processes belong to it.
        files: one person's.
        order: what to do.
        tasks: what the processes do.
        tell: is told how many files are done.

    Raises:
        NoProcessError: no process could be started.
    """
    with ExitStack() as stack:
        pipes = [Pipe(duplex=False) for _ in files]
        for reader, writer in pipes:
            stack.enter_context(reader)
            stack.enter_context(writer)
        last = family.child(order.limits.time_s)
        stack.callback(last.put_away)
        outcomes: list[Outcome] = []
        try:
            last.start(tasks.together, [reader for reader, _ in pipes])
            last.send(ORDERS.dump_json(order))  # it takes frames from here on
        except DiedError as error:
            return Outcome(fault=error.fault)
        for data, (_, writer) in zip(files, pipes, strict=True):
            outcomes.append(_read(family, data, order, tasks, writer))
            tell(len(outcomes))
        try:
            return _joined(last.ask(lambda connection: _answered(connection, order)), outcomes)
        except DiedError as error:
            return Outcome(fault=error.fault)


def _read(family: Family, data: bytes, order: Order, tasks: Tasks, out: Connection) -> Outcome:
    """Have one of several files read; its pixels go on from process to process."""
    refused = _too_large(data, order)
    if refused is not None:
        out.close()
        return refused
    child = family.child(order.limits.time_s)
    try:
        child.start(tasks.read, [out])
        return child.ask(lambda connection: _asked(connection, order, data))
    except DiedError as error:
        return Outcome(fault=error.fault)
    finally:
        child.put_away()


def _joined(outcome: Outcome, outcomes: Sequence[Outcome]) -> Outcome:
    """The outcome, with what was wrong with single files.

    When too few could be read, what was wrong with the first of the others is the fault of all.
    """
    wrong = {place: one for place, one in enumerate(outcomes) if one.fault is not None}
    left_out = {place: one.fault or FrameFault.CRASHED for place, one in wrong.items()}
    if outcome.fault is None:
        missing = sorted(set(range(len(outcomes))) - set(outcome.read))
        left_out = {place: left_out.get(place, FrameFault.CRASHED) for place in missing}
        return replace(outcome, left_out=left_out)
    if len(outcomes) - len(wrong) >= FEWEST_TOGETHER or not wrong:
        return replace(outcome, left_out=left_out)
    first = wrong[min(wrong)]
    return Outcome(fault=first.fault, numbers=first.numbers, left_out=left_out)


def _asked(connection: Connection, order: Order, data: bytes) -> Outcome:
    """Send the order and a file, take the answer and its pictures."""
    connection.send_bytes(ORDERS.dump_json(order))
    connection.send_bytes(data)
    return _answered(connection, order)


def _answered(connection: Connection, order: Order) -> Outcome:
    answer = read_answer(connection.recv_bytes(order.limits.report_bytes), order)
    if answer is None:
        return Outcome(fault=FrameFault.CRASHED)
    pictures = tuple(
        Picture(shown, connection.recv_bytes(order.limits.picture_bytes))
        for shown in answer.pictures
    )
    return outcome_of(answer, pictures)


def read_answer(text: bytes, order: Order) -> Answer | None:
    """A process's answer; None when it is not what a process sends."""
    try:
        answer = ANSWERS.validate_json(text)
    except ValidationError:
        return None
    places = {shown.frame for shown in answer.pictures} - {None} | set(answer.read)
    if len(answer.pictures) > MOST_PICTURES or not places <= set(range(order.files)):
        return None
    return answer


def outcome_of(answer: Answer, pictures: tuple[Picture, ...]) -> Outcome:
    """The outcome that an answer and its pictures make."""
    if answer.broke:
        _LOG.error("the process of a frame met a bug: %s", answer.broke[:_LONGEST_TRACE])
    if not all(is_picture(picture.data) for picture in pictures):
        return Outcome(fault=FrameFault.CRASHED)
    return Outcome(
        answer.report,
        answer.fault,
        answer.numbers,
        pictures,
        answer.comparison,
        answer.read,
    )
