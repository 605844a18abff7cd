"""Spanish words that readers look for."""
