"""English words that readers look for."""
