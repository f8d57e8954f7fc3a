"""A session in the window, from the welcome to the saved summary: the director and its parts."""
