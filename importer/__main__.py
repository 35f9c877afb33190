"""``python -m importer`` is the same as ``onebasis``."""

from importer.cli import main

main()
