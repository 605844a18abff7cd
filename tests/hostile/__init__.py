"""Hostile files through the real process of a frame: none harms the bot, each gets a sentence."""
