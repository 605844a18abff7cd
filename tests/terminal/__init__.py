"""Tests of bot.terminal."""
