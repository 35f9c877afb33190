"""The review desk: a local page where a person settles what is in doubt, once."""
