"""Backups: one archive of database, pictures and signing identity, and back from it."""
