"""The conversation, pure: an event and a context in, a context and actions out."""
