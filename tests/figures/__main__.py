"""`python -m tests.figures [--seed N] [--topic NAME …]` measures and prints all figures."""

from __future__ import annotations

import argparse
import importlib
import pkgutil
import random
import sys
import time
from collections.abc import Sequence
from pathlib import Path

from tests.figures.figure import Figure, table

#: Modules of this folder that are no topic.
_OTHERS = frozenset({"__main__", "figure", "own_things", "photographs"})


def topics() -> list[str]:
    """Names of the topics: the modules of this folder with a function `figures(seed)`."""
    found = (module.name for module in pkgutil.iter_modules([str(Path(__file__).parent)]))
    return sorted(name for name in found if name not in _OTHERS and not name.startswith("test_"))


def measure(topic: str, seed: int) -> list[Figure]:
    """The figures of a topic with scenes drawn by a seed."""
    return list(importlib.import_module(f"tests.figures.{topic}").figures(seed))


def main(arguments: Sequence[str]) -> int:
    """Print the table; 1 when an aim is not reached."""
    parser = argparse.ArgumentParser(prog="python -m tests.figures", description=__doc__)
    parser.add_argument("--seed", type=int, help="without one, scenes are drawn anew each run")
    parser.add_argument("--topic", action="append", choices=topics())
    given = parser.parse_args(arguments)
    seed = random.SystemRandom().randrange(2**32) if given.seed is None else given.seed
    print(f"seed {seed}")  # noqa: T201
    figures: list[Figure] = []
    for topic in given.topic or topics():
        began = time.monotonic()
        figures += measure(topic, seed)
        print(f"{topic}: {time.monotonic() - began:.0f} s", file=sys.stderr)  # noqa: T201
    print("\n".join(table(figures)))  # noqa: T201
    return 0 if all(figure.reached is not False for figure in figures) else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
