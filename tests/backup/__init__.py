"""Tests of backup."""
