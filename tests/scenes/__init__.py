"""Scenes with known truth: a waterfall rendered in linear light, and the camera that takes it.

Nothing here imports the packages under test; the formulas are plain and its own.
"""
