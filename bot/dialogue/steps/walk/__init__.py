"""The walk itself: its six steps, from where not to stand to the note of what worked."""
