"""Steps from one schema to the next, run when the store is opened."""
