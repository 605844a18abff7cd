"""What a worker of a Dask cluster does: it decodes nothing, but starts confined processes."""

from __future__ import annotations

import threading
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace
from typing import Final

from distributed import Worker, get_worker
from pydantic import TypeAdapter

from bot.runtime.child import Family
from bot.runtime.exchange import TASKS, measure
from bot.runtime.orders import ORDERS, Shown
from bot.runtime.outcomes import Outcome
from bot.runtime.plain_process import PlainProcess

#: How often a worker looks whether anybody still wants what it measures [s]. Own rule.
_LOOK_S: Final = 0.25

#: Between an outcome without its pictures, what they show, and the JSON that is sent.
OUTCOMES: Final = TypeAdapter(tuple[Outcome, tuple[Shown, ...]])

#: That JSON, and the pictures.
Reply = tuple[bytes, list[bytes]]


def measure_there(order: bytes, files: Sequence[bytes]) -> Reply:
    """Measure files in processes of their own; runs on a worker of the cluster.

    Args:
        order: in JSON.
        files: of one person.

    Raises:
        pydantic.ValidationError: the order is of another version of Linn.
        NoProcessError: no process can be started here.
    """
    family = Family(PlainProcess)
    with _ended_when_unwanted(family):
        outcome = measure(family, files, ORDERS.validate_json(order), TASKS, lambda _: None)
    shown = tuple(picture.shown for picture in outcome.pictures)
    words = OUTCOMES.dump_json((replace(outcome, pictures=()), shown))
    return words, [picture.data for picture in outcome.pictures]


@contextmanager
def _ended_when_unwanted(family: Family) -> Iterator[None]:
    """End the processes when nobody wants their result any more."""
    over = threading.Event()
    worker = get_worker()
    watcher = threading.Thread(
        target=_watch, args=(family, over, worker, worker.get_current_task()), daemon=True
    )
    watcher.start()
    try:
        yield
    finally:
        over.set()
        watcher.join()
        family.end()


def _watch(family: Family, over: threading.Event, worker: Worker, key: str) -> None:
    while not over.wait(_LOOK_S):
        task = worker.state.tasks.get(key)
        if task is None or task.state != "executing":  # cancelled, or taken over by another
            family.end()
            return
