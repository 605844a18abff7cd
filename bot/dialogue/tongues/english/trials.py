"""English words by which somebody only tries a change."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # How a message begins that only tries something.
    "trials.begins": (
        r"(?:(?:ok(?:ay)?|so|but|hmm?|and|now)\W+)*(?:what if|what about|how about|suppose"
        r"|supposing|imagine|say|if)"
    ),
    # How one goes on that builds on what was tried just before.
    "trials.goes_on": r"and|or|plus|then|at|with|without|from|in|if|same (?:at|with|from)",
    # Steps away from the water, and towards it.
    "trials.unit": r"m|met(?:er|re)s?|ft|feet|foot",
    "trials.back": r"(?:further |farther |more )?(?:back|backwards)",
    "trials.closer": r"(?:further |farther |more )?(?:closer|nearer|forward)",
    # Without the filter that was tried, or is on.
    "trials.without": r"without (?:it|that|them|one|(?:the |any )?filters?)",
}
