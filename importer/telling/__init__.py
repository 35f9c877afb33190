"""What was decided, as a table, a page, a picture and a file for a recipe."""
