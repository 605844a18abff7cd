"""A Dask cluster on this machine for the tests, in processes of its own.

`python -m tests.runtime.local_cluster WORKERS` prints the scheduler's address, then obeys each line
of its input: a number of workers to have. It ends with its input.
"""

# ruff: noqa: T201  what it prints is what it is for

from __future__ import annotations

import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import IO


@dataclass
class LocalCluster:
    """A running cluster: its address, and its workers' number as it was last ordered."""

    address: str
    process: subprocess.Popen[str]

    def scale(self, workers: int) -> None:
        """Have so many workers, and wait until they are there."""
        stdin, stdout = _pipes(self.process)
        print(workers, file=stdin, flush=True)
        assert stdout.readline().strip() == str(workers)

    def kill(self) -> None:
        """End the scheduler, as a machine that fails does."""
        self.process.kill()
        self.process.wait()


@contextmanager
def local_cluster(workers: int) -> Iterator[LocalCluster]:
    """A cluster with so many workers, ended with the block."""
    command = [sys.executable, "-m", "tests.runtime.local_cluster", str(workers)]
    with subprocess.Popen(
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True
    ) as process:
        stdin, stdout = _pipes(process)
        try:
            yield LocalCluster(stdout.readline().strip(), process)
        finally:
            stdin.close()
            process.wait(20)


def _pipes(process: subprocess.Popen[str]) -> tuple[IO[str], IO[str]]:
    assert process.stdin is not None
    assert process.stdout is not None
    return process.stdin, process.stdout


def main() -> None:
    """Run a cluster until the input ends."""
    import distributed  # noqa: PLC0415  the tests' own process does without it

    with (
        tempfile.TemporaryDirectory() as folder,
        distributed.LocalCluster(
            n_workers=int(sys.argv[1]),
            threads_per_worker=1,
            host="127.0.0.1",
            dashboard_address=":0",
            local_directory=folder,
        ) as cluster,
    ):
        print(cluster.scheduler_address, flush=True)
        for line in sys.stdin:
            cluster.scale(int(line))
            while len(cluster.scheduler_info["workers"]) != int(line):
                time.sleep(0.05)
            print(line.strip(), flush=True)


if __name__ == "__main__":
    main()
