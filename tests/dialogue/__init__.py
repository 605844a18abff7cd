"""Tests of dialogue."""
