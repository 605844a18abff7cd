"""Tests of torture."""
