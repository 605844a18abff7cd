"""The optics, exposure and water arithmetic; no bot, no clock, no network."""
