"""A read-only answer over HTTP on this machine, for spreadsheets and scripts."""
