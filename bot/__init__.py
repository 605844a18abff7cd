"""The Matrix bot around the core: dialogue, pictures, storage, transport."""
