"""Emoji verification: people check in their own client that the bot's keys are the bot's."""
