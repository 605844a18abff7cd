"""How the property tests run: a busy machine is no failure, and each run draws the same.

`HYPOTHESIS_PROFILE=search` draws anew each time, to look for what nobody has thought of.
"""

from __future__ import annotations

import os

from hypothesis import settings

settings.register_profile("same", deadline=None, derandomize=True)
settings.register_profile("search", deadline=None)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "same"))
