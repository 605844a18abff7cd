"""German words that readers look for."""
