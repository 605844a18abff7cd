"""Fixtures of the tests that talk to a real homeserver."""

from tests.server.homeserver import town

__all__ = ["town"]
