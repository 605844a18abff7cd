"""What runs in a terminal, without a homeserver: talk, frame, check-config."""
