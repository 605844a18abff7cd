"""Keeps the numeric libraries of this process to one thread; to be imported before them."""

from __future__ import annotations

import os

#: numpy's linear algebra starts its threads when it is imported; a process that forks must have
#: one thread only. The variable is numpy's own and is set, not read.
os.environ["OPENBLAS_NUM_THREADS"] = "1"
