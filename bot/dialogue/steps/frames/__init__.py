"""Shared frames: what was measured on them, in words, and the next setting from it."""
