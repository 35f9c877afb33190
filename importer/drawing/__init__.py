"""Pages of the originals as pictures, and what stands in a part of one."""
