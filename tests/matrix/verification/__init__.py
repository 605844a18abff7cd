"""Emoji verification: the protocol without a network."""
