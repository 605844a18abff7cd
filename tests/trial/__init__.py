"""Tests of bot.trial."""
