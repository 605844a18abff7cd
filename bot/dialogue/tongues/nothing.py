"""What stands for an idea that a language has no words for, or none yet: it is never found."""

from __future__ import annotations

from typing import Final

NOTHING: Final = r"(?!)"
