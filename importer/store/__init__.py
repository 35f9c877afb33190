"""The store: what was taken in, where it came from, what was read, and where the original is."""
