"""Tests of matrix."""
