"""The Matrix side: sync in, messages and media out, keys, who may speak."""
