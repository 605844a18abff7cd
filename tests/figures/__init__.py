"""Figures of the frame check: how well each measurement does on known truth."""
