"""Workers, timers, the outbox and the frame server."""
