"""How the property tests run everywhere: a busy machine is no failure."""

from __future__ import annotations

from hypothesis import settings

settings.register_profile("no_deadline", deadline=None)
settings.load_profile("no_deadline")
