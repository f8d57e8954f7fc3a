"""Views of the director: each shows its state and sends it commands."""
