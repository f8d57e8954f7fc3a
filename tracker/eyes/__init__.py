"""Where the eyes look, and whether they are open."""
