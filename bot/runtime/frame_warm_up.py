"""Lets the libraries finish loading in the fork server, once; to be imported there only."""

from __future__ import annotations

import cv2
import numpy as np

# numpy loads these when they are first used, and a confined process can open no file.
import numpy.fft
import numpy.linalg
import numpy.ma
import numpy.random

from bot.dialogue.texts.catalogue import load_all
from core.frame import border_trees, kind_trees, sight, sight_kinds, texture_trees

__all__ = ["cv2", "numpy"]

# Whatever is worked on here already must leave no threads behind: they would be missing, and waited
# for, in the processes that are forked.
cv2.setNumThreads(1)
# What water, clipped areas and things at borders are told by lies in files, too.
border_trees.trained("line")
border_trees.trained("bright")
texture_trees.trained()
kind_trees.trained()
sight.network()
sight_kinds.fitted()
# So do the words and the number formats of the languages.
load_all()

# The first conversion to L*a*b* builds tables for 0.17 s (measured), which each process of a file
# would otherwise do anew. One black pixel is nobody's picture.
cv2.cvtColor(np.zeros((1, 1, 3), np.uint8), cv2.COLOR_RGB2LAB)
