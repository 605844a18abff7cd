"""How the property tests run: a busy machine is no failure; in CI each run draws the same."""

from __future__ import annotations

import os

from hypothesis import settings

settings.register_profile("no_deadline", deadline=None)
settings.register_profile("ci", deadline=None, derandomize=True)
settings.load_profile("ci" if os.environ.get("CI") else "no_deadline")
