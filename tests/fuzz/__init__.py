"""Input by chance, bounded so that it runs with the other tests."""
