"""Pieces of expressions that are the same in every language: nothing, a name, a few words."""

from __future__ import annotations

from typing import Final

#: What stands for an idea that a language has no words for, or none yet: it is never found.
NOTHING: Final = r"(?!)"
#: A word that begins like a name.
NAME: Final = r"[A-ZÄÖÜÁÉÍÓÚÑ][\w'’-]+"
#: One to three words of whatever kind.
FEW_WORDS: Final = r"(?:[\w'’-]+ ){0,2}[\w'’-]+"
