"""One module per step or topic of the walk."""
