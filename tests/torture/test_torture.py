"""A short torture with each run of the tests; `sh deploy/torture.sh` runs the long one."""

from __future__ import annotations

import random
from pathlib import Path

import pytest

from tests.closing import TellAtTheEnd
from tests.torture.torture import SHORT, torture

pytestmark = pytest.mark.server


async def test_nothing_is_lost_or_doubled(tmp_path: Path, tell_at_the_end: TellAtTheEnd) -> None:
    """Four people, kills, a restart of the homeserver, a faulty line; a new plan each run."""
    outcome = await torture(SHORT, random.SystemRandom().randrange(2**32), tmp_path)
    tell_at_the_end("torture", outcome.text().splitlines())
    assert outcome.wrong == []
