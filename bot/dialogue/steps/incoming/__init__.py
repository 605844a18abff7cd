"""Frames as they come in: shared, measured alone or together, taken back."""
