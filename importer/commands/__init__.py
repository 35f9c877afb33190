"""What the commands do."""

import os

# Looking for plug-ins of the data models takes a third of the time that loading them does, and there are none.
os.environ.setdefault("PYDANTIC_DISABLE_PLUGINS", "1")
