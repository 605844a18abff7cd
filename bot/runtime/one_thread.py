"""Keeps the numeric libraries of this process to one thread; to be imported before them."""

from __future__ import annotations

import os

#: numpy's linear algebra starts its threads when it is imported, and the raw decoder when it
#: works; a process that forks must have one thread only. The variables are the libraries' own and
#: are set, not read.
os.environ["OPENBLAS_NUM_THREADS"] = "1"
os.environ["OMP_NUM_THREADS"] = "1"
