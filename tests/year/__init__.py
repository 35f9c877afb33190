"""A year of an invented brewery: what its maltsters send, what it agreed with them, and what went wrong."""
