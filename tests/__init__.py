"""Tests; they mirror the packages."""

import os

#: OpenBLAS reads it when numpy is loaded.
_THREADS = "OPENBLAS_NUM_THREADS"

# Tests run on every core at once, and the products of small matrices in two threads took eight
# times the processor's time that they take in one (measured while a network was trained). It goes
# again at once: what the tests start must keep to one thread by itself.
_before = os.environ.get(_THREADS)
os.environ[_THREADS] = "1"
import numpy as np  # noqa: E402, F401

del os.environ[_THREADS]
if _before is not None:
    os.environ[_THREADS] = _before
