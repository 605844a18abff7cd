"""German words by which somebody contradicts what was said, and tells nothing else."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "contradicts.said": (
        r"(?:ganz |genau )?(?:im gegenteil|das gegenteil)|(?:das|es) kann (?:doch |so |ja )?nicht"
        r" (?:sein|stimmen)|(?:das|es) stimmt (?:doch |so |ja )?nicht|(?:das ist )?unmoglich"
    ),
}
