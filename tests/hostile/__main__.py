"""Runs a folder of files through the real process of a frame and prints what became of them.

`python -m tests.hostile FOLDER`: each file as it is; with `--cuts` and `--flips N` also those that
were read or are raw, cut off and with flipped bits; with `--made` the tests' own hostile files too.
"""

# ruff: noqa: T201  what it prints is what it is for

from __future__ import annotations

import argparse
import asyncio
import sys
import time
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path
from typing import Final

from bot.runtime.frames import FrameServer
from bot.runtime.orders import FrameLimits
from core.errors import UnreadableFrameError
from core.frame.limits import MAX_BYTES
from core.frame.sniff import file_kind
from tests.hostile.cases import REPORT, Case, Seen, measure_all, table
from tests.hostile.good_files import READ, REFUSED, good
from tests.hostile.made_files import NOT_READ, large_bombs, made
from tests.hostile.spoiled import CUT, FLIPPED, cuts, flips

#: Makes files.
Maker = Callable[[], Iterator[Case]]

#: Files taken up at a time: they are in memory meanwhile.
_PORTION: Final = 64
#: What a process may need to end, on top of its own time limit [s].
_TO_END_S: Final = 3.0
#: Outcomes that are right and still worth a look at the file.
_WORTH_A_LOOK: Final = frozenset({"crashed", "too_slow", "too_much_memory"})


def main(arguments: Sequence[str] | None = None) -> int:
    """Measure, print the table, and say what was wrong.

    Returns:
        0 when every promise was kept: each file has a report or a sentence, none takes longer
        than its limits, none that is cut off is judged.
    """
    parser = argparse.ArgumentParser(prog="python -m tests.hostile", description=__doc__)
    parser.add_argument("folder", nargs="?", type=Path, help="files of any kind, in any folders")
    parser.add_argument("--made", action="store_true", help="the tests' own hostile files too")
    parser.add_argument("--cuts", action="store_true", help="cut every such file, too")
    parser.add_argument("--flips", type=int, default=0, metavar="N", help="and flip bits, N times")
    parser.add_argument("--seed", type=int, default=time.time_ns() % 10**9, help="of the flips")
    parser.add_argument("--at-once", type=int, default=2, metavar="N", help="processes at once")
    options = parser.parse_args(arguments)
    if options.folder is None and not options.made:
        parser.error("name a folder, or --made")
    print(f"seed {options.seed}")
    seen = asyncio.run(_run(options))
    print("\n".join(table(seen)))
    return verdict(seen)


async def _run(options: argparse.Namespace) -> list[Seen]:
    server = FrameServer(workers=options.at_once)
    await server.start()
    seen: list[Seen] = []
    try:
        for portion in _portions(_cases(options)):
            found = await measure_all(server, portion, options.at_once)
            seen += [_light(one) for one in found]
            for one in found:
                for further in _portions(_further(one, options)):
                    seen += map(_light, await measure_all(server, further, options.at_once))
    finally:
        await server.stop()
    return seen


def _cases(options: argparse.Namespace) -> Iterator[Case]:
    if options.folder is not None:
        for path in sorted(options.folder.rglob("*")):
            if path.is_file():
                with path.open("rb") as file:
                    data = file.read(MAX_BYTES + 1)
                yield Case(_kind(data), str(path.relative_to(options.folder)), data)
    if options.made:
        yield from made()
        yield from large_bombs()
        for kind in READ:
            yield Case(kind, "good", good(kind), frozenset({REPORT}))
        for kind in REFUSED:
            yield from cuts(kind, good(kind), frozenset({NOT_READ}))


def _further(one: Seen, options: argparse.Namespace) -> Iterator[Case]:
    """Cuts and flips of a file that was read or is raw; a cut may fall behind a picture's end."""
    kind, data = one.case.kind, one.case.data
    if kind not in {*READ, "raw"} or one.outcome not in {REPORT, NOT_READ}:
        return
    own = one.case.name == "good"
    if options.cuts:
        for case in cuts(kind, data, CUT if own else frozenset()):
            yield Case(case.kind, f"{one.case.name}, {case.name}", case.data, case.allowed)
    for case in flips(kind, data, options.flips, options.seed, FLIPPED if own else frozenset()):
        yield Case(case.kind, f"{one.case.name}, {case.name}", case.data, case.allowed)


def _portions(cases: Iterator[Case]) -> Iterator[list[Case]]:
    portion: list[Case] = []
    for case in cases:
        portion.append(case)
        if len(portion) == _PORTION:
            yield portion
            portion = []
    yield portion


def _kind(data: bytes) -> str:
    """Kind by content."""
    try:
        return file_kind(data)
    except UnreadableFrameError as error:
        return "raw" if error.numbers.get("raw") else error.fault.value.replace("_", " ")


def _light(one: Seen) -> Seen:
    """Without its bytes: a large corpus would not fit into memory."""
    case = Case(one.case.kind, one.case.name, b"", one.case.allowed)
    return Seen(case, one.outcome, one.took_s, one.report, one.sentence)


def verdict(seen: Sequence[Seen]) -> int:
    """Print what is worth a look and what is wrong; 1 when something is."""
    latest_s = FrameLimits().time_s + _TO_END_S
    wrong = [(one, one.wrong) for one in seen if one.wrong]
    wrong += [(one, f"took {one.took_s:.1f} s") for one in seen if one.took_s > latest_s]
    for one in seen:
        if one.outcome in _WORTH_A_LOOK:
            print(f"look at: {one.case.kind}: {one.case.name}: {one.outcome}, {one.took_s:.1f} s")
    for one, why in wrong:
        print(f"WRONG: {one.case.kind}: {one.case.name}: {why}")
    print(f"{len(seen)} files, {len(wrong)} wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
