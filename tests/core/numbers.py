"""What the tests of the arithmetic share: published numbers, bad ones, ranges of good ones."""

from __future__ import annotations

import math
from typing import Final, NamedTuple

from hypothesis import strategies as st


class Ref(NamedTuple):
    """A number that was published, or computed apart, beside the one that we find."""

    what: str
    found: float
    expected: float
    tolerance: float  # from the digits that the source prints
    source: str


#: What no length, time, speed or f-number can be.
NEVER_POSITIVE: Final = (0.0, -1.0, math.nan, math.inf, -math.inf)
#: What no level in stops can be.
NEVER_A_LEVEL: Final = (math.nan, math.inf, -math.inf)

f_numbers = st.floats(1.0, 64.0)
shutters_s = st.floats(1 / 8000, 900.0)
isos = st.floats(25.0, 102_400.0)
speeds_mps = st.floats(0.05, 40.0)
coverages_m = st.floats(0.1, 500.0)
angles_deg = st.floats(1.0, 179.0)
focals_mm = st.floats(4.0, 600.0)
