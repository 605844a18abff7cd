"""Print all rates: `python -m tests.people [--half NAME] [--topic NAME …] [--misses]`."""

from __future__ import annotations

import argparse
import importlib
import pkgutil
import sys
from collections.abc import Sequence
from pathlib import Path

from tests.people.rate import HALVES, Half, Rate, table

#: Modules of this folder that are no topic.
_OTHERS = frozenset({"__main__", "rate"})


def topics() -> list[str]:
    """Names of the topics: the modules of this folder with a function `figures(half)`.

    A topic may also have `misses()`: what comes out wrong in the even half, as lines.
    """
    found = (module.name for module in pkgutil.iter_modules([str(Path(__file__).parent)]))
    return sorted(name for name in found if name not in _OTHERS and not name.startswith("test_"))


def measure(topic: str, half: Half) -> list[Rate]:
    """The rates of a topic in one half."""
    return list(importlib.import_module(f"tests.people.{topic}").figures(half))


def misses(topic: str) -> list[str]:
    """What comes out wrong in the half on which rules may be written."""
    return list(importlib.import_module(f"tests.people.{topic}").misses())


def main(arguments: Sequence[str]) -> int:
    """Print the table; 1 when an aim is not reached."""
    parser = argparse.ArgumentParser(prog="python -m tests.people", description=__doc__)
    parser.add_argument("--half", choices=HALVES, help="all without it")
    parser.add_argument("--topic", action="append", choices=topics())
    parser.add_argument("--misses", action="store_true", help="of the even half, before the table")
    given = parser.parse_args(arguments)
    chosen: list[str] = given.topic or topics()
    if given.misses:
        print("\n".join(line for topic in chosen for line in misses(topic)))  # noqa: T201
    halves: Sequence[Half] = (given.half,) if given.half else HALVES
    rates = [rate for topic in chosen for half in halves for rate in measure(topic, half)]
    print("\n".join(table(rates)))  # noqa: T201
    return 0 if all(rate.reached is not False for rate in rates) else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
