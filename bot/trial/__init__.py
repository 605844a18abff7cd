"""A trial on one machine: a throwaway homeserver and what `linn try` needs."""
