"""The plan editor, a window of its own."""
